package dustwright.plantfile;

import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.Price;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is open to choice must point to what the file describes, each part once, in the one currency of the file. */
final class SizingRelations {
    /** More options than this are no choice a person wrote. */
    private static final int MOST_OPTIONS = 60;

    private final Section top;
    private final SourceMap lines;
    private final Faults faults;
    private final Map<String, String> taken = new HashMap<>();
    private Optional<String> currency = Optional.empty();

    SizingRelations(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
    }

    void check() {
        Optional<Section> sizing = top.section("sizing");
        if (sizing.isEmpty()) {
            return;
        }
        currency = top.section("costs").flatMap(SizingRelations::ofCosts);
        for (Section group : sizing.get().namedSections("tubes")) {
            once(group, "runs", "run");
            options(group.path() + ".of", group.named("of"), top.named("tubes").keySet(), "tube");
        }
        for (Section group : sizing.get().namedSections("hoses")) {
            once(group, "inlets", "inlet");
            options(group.path() + ".of", group.named("of"), top.named("hoses").keySet(), "hose");
        }
        sizing.get().named("producers").forEach((station, of) -> producers((String) station, (Map<?, ?>) of));
        sizing.get().named("cloth").forEach((station, of) -> cloth((String) station, (Map<?, ?>) of));
    }

    private static Optional<String> ofCosts(Section costs) {
        return costs.values().values().stream()
                .flatMap(value -> currency(value).stream())
                .findFirst();
    }

    private static Optional<String> currency(Object value) {
        if (value instanceof Money money) {
            return Optional.of(money.currency());
        }
        return value instanceof Price price ? Optional.of(price.currency()) : Optional.empty();
    }

    /** A part has one size, so it stands in one choice. */
    private void once(Section group, String key, String word) {
        List<?> parts = group.items(key);
        for (int n = 0; n < parts.size(); n++) {
            String path = group.path() + "." + key + "." + n;
            String before = taken.putIfAbsent(word + " " + parts.get(n), group.id());
            if (before != null) {
                fault(
                        path,
                        word + " " + Names.shortened((String) parts.get(n))
                                + " is open twice: its size is already chosen by \"" + Names.shortened(before) + "\"",
                        "each " + word + " in one choice");
            }
        }
    }

    private void producers(String station, Map<?, ?> of) {
        String path = "sizing.producers." + station;
        Optional<Section> described = station(path, station);
        if (described.isPresent()) {
            options(path, of, described.get().named("producers").keySet(), "producer of this station");
        }
    }

    private void cloth(String station, Map<?, ?> of) {
        String path = "sizing.cloth." + station;
        station(path, station);
        tooMany(path, of);
        of.forEach((id, value) ->
                money(path + "." + id + ".price", ((Section) value).values().get("price")));
    }

    private Optional<Section> station(String path, String id) {
        Optional<Section> found = top.namedSections("stations").stream()
                .filter(s -> s.id().equals(id))
                .findFirst();
        if (found.isEmpty()) {
            unknown(path, id, top.named("stations").keySet(), "station");
        }
        return found;
    }

    private void options(String path, Map<?, ?> of, Collection<?> known, String word) {
        tooMany(path, of);
        of.forEach((id, value) -> {
            if (!known.contains(id)) {
                unknown(path + "." + id, (String) id, known, word);
            }
            money(path + "." + id, value);
        });
    }

    private void tooMany(String path, Map<?, ?> of) {
        if (of.isEmpty() || of.size() > MOST_OPTIONS) {
            fault(path, of.isEmpty() ? "nothing to choose from" : of.size() + " options", "1 to " + MOST_OPTIONS);
        }
    }

    private void unknown(String path, String id, Collection<?> known, String word) {
        List<String> names = known.stream().map(String.class::cast).toList();
        String nearest = Names.nearest(id, names)
                .map(n -> "\"" + n + "\"?")
                .orElse(names.isEmpty() ? "one that the file describes" : Names.oneOf(names));
        faults.add(
                lines.key(path).orElse(top.span()),
                path,
                "there is no " + word + " called \"" + Names.shortened(id) + "\"",
                nearest);
    }

    private void money(String path, @org.jspecify.annotations.Nullable Object value) {
        if (value == null) {
            return;
        }
        currency(value).ifPresent(named -> {
            if (currency.isEmpty()) {
                currency = Optional.of(named);
            } else if (!currency.get().equals(named)) {
                fault(
                        path,
                        named + " where other prices are in " + currency.get(),
                        "one currency: nothing is converted");
            }
        });
    }

    private void fault(String path, String message, String expected) {
        faults.add(lines.value(path).or(() -> lines.key(path)).orElse(top.span()), path, message, expected);
    }
}
