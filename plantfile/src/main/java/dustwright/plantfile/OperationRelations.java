package dustwright.plantfile;

import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.Price;
import dustwright.engine.quantity.Units;
import dustwright.engine.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What containers, shifts, costs and sound must fulfil together with the rest of the file. */
final class OperationRelations {
    private static final double DAY_s = 24 * 3600;

    private final Section top;
    private final SourceMap lines;
    private final Faults faults;

    OperationRelations(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
    }

    void check() {
        for (Section station : top.namedSections("stations")) {
            station.section("container").ifPresent(this::container);
            station.section("container").ifPresent(this::bag);
        }
        top.section("usage").flatMap(u -> u.section("shifts")).ifPresent(this::shifts);
        top.section("costs").ifPresent(this::costs);
        stationsOf("compressed air");
        stationsOf("sound");
        double shift_s = top.section("usage")
                .flatMap(u -> u.section("shifts"))
                .flatMap(shifts -> shifts.find("length", Duration.class))
                .map(Duration::seconds)
                .orElse(8 * 3600.0);
        for (Section sound : top.namedSections("sound")) {
            sound.find("time there", Duration.class)
                    .filter(there -> there.seconds() > shift_s)
                    .ifPresent(there -> fault(
                            sound, "time there", "more time there than a shift has", "at most the shift's length"));
        }
    }

    private void container(Section container) {
        boolean scale =
                container.find("stop", String.class).filter("scale"::equals).isPresent();
        if (scale && lines.key(container.path() + ".safe working load").isEmpty()) {
            fault(container, "stop", "a scale that has no load to stop at", "\"safe working load\" beside it");
        }
        container
                .find("safe working load", Mass.class)
                .filter(load -> container
                        .find("empty", Mass.class)
                        .filter(empty -> load.compareTo(empty) <= 0)
                        .isPresent())
                .ifPresent(load -> fault(
                        container,
                        "safe working load",
                        "a load that is not above the mass of the empty container",
                        "the marked mass of dust, above \"empty\""));
        container
                .section("stand")
                .flatMap(stand -> stand.section("inflation"))
                .filter(inflation -> inflation.has("motor")
                        && inflation
                                .find("by", String.class)
                                .filter("compressed air"::equals)
                                .isPresent())
                .ifPresent(inflation -> fault(
                        inflation, "motor", "a fan's motor where compressed air blows", "\"by: fan\", or no motor"));
    }

    /** Cloth does not stretch: at most it stands round, with the girth of its flat measures. */
    private void bag(Section container) {
        List<Length> size =
                container.items("size").stream().map(Length.class::cast).toList();
        if (size.size() != 3) {
            return;
        }
        double girth_m = 2 * (size.get(0).metres() + size.get(1).metres());
        double round_m3 = girth_m * girth_m / (4 * Math.PI) * size.get(2).metres();
        container
                .find("volume", Volume.class)
                .filter(volume -> volume.cubicMetres() > round_m3)
                .ifPresent(volume -> fault(
                        container,
                        "volume",
                        String.format(
                                Locale.ROOT,
                                "more than a bag of this \"size\" holds when it stands quite round, %.3g m3 (%.3g ft3)",
                                round_m3,
                                round_m3 / Units.CUBIC_FOOT_m3),
                        "the volume up to the level probe of the bag, or its right \"size\""));
        List<Double> floor = container
                .section("stand")
                .map(stand -> stand.items("bay").stream()
                        .map(side -> ((Length) side).metres())
                        .sorted()
                        .toList())
                .orElse(List.of());
        double narrow_m = Math.min(size.get(0).metres(), size.get(1).metres());
        double wide_m = Math.max(size.get(0).metres(), size.get(1).metres());
        if (floor.size() == 2 && (narrow_m > floor.get(0) || wide_m > floor.get(1))) {
            fault(
                    container,
                    "size",
                    "a bag wider than the clear floor under its stand",
                    "a bag that \"bay\" has room for, or the right \"bay\"");
        }
    }

    private void shifts(Section shifts) {
        Optional<Integer> perDay = shifts.find("per day", Integer.class);
        double length_s =
                shifts.find("length", Duration.class).map(Duration::seconds).orElse(8 * 3600.0);
        perDay.filter(n -> n * length_s > DAY_s * (1 + 1e-9))
                .ifPresent(n -> fault(shifts, "per day", "shifts that are longer together than a day", "at most 24 h"));
        shifts.find("cleaning", Duration.class)
                .filter(cleaning -> cleaning.seconds() > length_s)
                .ifPresent(cleaning -> fault(
                        shifts, "cleaning", "cleaning that is longer than its shift", "at most the shift's length"));
        for (Section pickUp : shifts.sections("picked up")) {
            pickedUpSomewhere(pickUp);
        }
    }

    private void pickedUpSomewhere(Section pickUp) {
        Optional<String> dust = pickUp.find("dust", String.class);
        Optional<String> zone = pickUp.find("zone", String.class);
        boolean somewhere = dust.isEmpty()
                || top.namedSections("inlets").stream()
                        .anyMatch(i -> i.find("dust", String.class).equals(dust)
                                && (zone.isEmpty()
                                        || i.find("zone", String.class).equals(zone)));
        if (!somewhere) {
            fault(
                    pickUp,
                    "dust",
                    "no inlet" + zone.map(z -> " of zone " + z).orElse("") + " picks up \"" + dust.get() + "\"",
                    "a dust that an inlet there names");
        }
    }

    /** Nothing is converted from one currency to another. */
    private void costs(Section costs) {
        List<String> keys = new ArrayList<>();
        List<String> currencies = new ArrayList<>();
        for (Map.Entry<String, Object> value : costs.values().entrySet()) {
            currency(value.getValue()).ifPresent(currency -> {
                keys.add(value.getKey());
                currencies.add(currency);
            });
        }
        residual(costs);
        for (int n = 1; n < keys.size(); n++) {
            if (!currencies.get(n).equals(currencies.get(0))) {
                fault(
                        costs,
                        keys.get(n),
                        currencies.get(n) + " where \"" + keys.get(0) + "\" is in " + currencies.get(0),
                        "one currency: nothing is converted");
            }
        }
    }

    /** What wears is not worth more at its end than when it was new. */
    private void residual(Section costs) {
        Optional<Money> invested = costs.find("investment", Money.class);
        costs.find("residual", Money.class)
                .filter(left -> invested.filter(
                                first -> first.currency().equals(left.currency()) && left.si() > first.si())
                        .isPresent())
                .ifPresent(left -> fault(
                        costs, "residual", "a system worth more at its end than it cost", "at most \"investment\""));
    }

    private static Optional<String> currency(Object value) {
        if (value instanceof Money money) {
            return Optional.of(money.currency());
        }
        return value instanceof Price price ? Optional.of(price.currency()) : Optional.empty();
    }

    private void stationsOf(String key) {
        for (Object id : top.named(key).keySet()) {
            if (!top.named("stations").containsKey(id)) {
                String path = key + "." + id;
                faults.add(
                        lines.key(path).orElse(top.span()),
                        path,
                        "there is no station called \"" + Names.shortened((String) id) + "\"",
                        "the id of a station");
            }
        }
    }

    private void fault(Section section, String key, String message, String expected) {
        String path = Names.path(section.path(), key);
        faults.add(lines.value(path).orElse(section.span()), path, message, expected);
    }
}
