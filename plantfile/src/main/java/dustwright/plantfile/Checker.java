package dustwright.plantfile;

import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Source;
import dustwright.engine.producer.Model;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.QuantityText;
import dustwright.engine.quantity.Unit;
import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.Need;
import dustwright.plantfile.keys.PlantKeys;
import dustwright.plantfile.keys.Shape;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Holds a tree against the declared keys: typed values come out, and every departure becomes a fault. */
final class Checker {
    private final Faults faults;
    private final Taken taken;
    private final Supplier<Optional<Catalogue>> catalogue;
    private final List<Mention> mentions = new ArrayList<>();
    private final IdentityHashMap<Group, Keys> looked = new IdentityHashMap<>();

    /**
     * A checker of one file.
     *
     * @param catalogue asked only where a model is named; empty where it could not be read, which is told already
     */
    Checker(Faults faults, Taken taken, Supplier<Optional<Catalogue>> catalogue) {
        this.faults = faults;
        this.taken = taken;
        this.catalogue = catalogue;
    }

    /** An id used somewhere, to be looked up when all ids are known. */
    record Mention(Shape.Target target, String id, String path, Span span) {}

    /** Keys of a group as they are looked up. */
    private record Keys(Map<String, Key> byName, List<Key> required) {
        static Keys of(Group group) {
            Map<String, Key> byName = new HashMap<>();
            group.keys().forEach(key -> byName.put(key.name(), key));
            return new Keys(
                    byName,
                    group.keys().stream()
                            .filter(key -> key.need() instanceof Need.Required)
                            .toList());
        }
    }

    /** A requirement's value with where it comes from. */
    record Stated(Quantity value, Source source) {}

    List<Mention> mentions() {
        return mentions;
    }

    Section group(Tree tree, Group group, String id, String path) {
        return group(tree, group, id, path, new LinkedHashMap<>());
    }

    /** The same with values that stand where the tree says nothing else. */
    private Section group(Tree tree, Group group, String id, String path, Map<String, Object> values) {
        if (tree instanceof Tree.Entries entries) {
            for (Tree.Entry entry : entries.entries()) {
                member(entry, group, id, path, values);
            }
            checkNeeds(entries, group, path);
        } else if (isNothing(tree)) {
            checkNeeds(new Tree.Entries(List.of(), false, tree.span()), group, path);
        } else {
            faults.add(
                    tree.span(),
                    path,
                    tree.words() + " where " + group.words() + " is described",
                    "keys such as " + Names.oneOf(group.names()));
        }
        return new Section(group, id, path, tree.span(), values, taken);
    }

    private void member(Tree.Entry entry, Group group, String id, String path, Map<String, Object> values) {
        String name = entry.key().text();
        String at = Names.path(path, name);
        Key key = keys(group).byName().get(name);
        if (key == null) {
            faults.add(new Fault(
                    entry.key().span().line(),
                    entry.key().span().column(),
                    at,
                    "unknown key \"" + Names.shortened(name) + "\" of " + group.words(),
                    "one of " + Names.oneOf(group.names()),
                    Names.nearest(name, group.names()).map(n -> "\"" + n + "\"")));
            return;
        }
        Object value = value(entry.value(), key.shape(), id, at);
        if (value != null) {
            values.put(name, value);
        }
    }

    private void checkNeeds(Tree.Entries entries, Group group, String path) {
        for (Key key : keys(group).required()) {
            if (entries.entry(key.name()).isEmpty()) {
                faults.add(entries.span(), path, group.words() + " without \"" + key.name() + "\"", example(key));
            }
        }
        for (Group.Choice choice : group.choices()) {
            checkChoice(entries, group, choice, path);
        }
    }

    private Keys keys(Group group) {
        return looked.computeIfAbsent(group, Keys::of);
    }

    private void checkChoice(Tree.Entries entries, Group group, Group.Choice choice, String path) {
        List<List<String>> used = new ArrayList<>();
        for (List<String> way : choice.ways()) {
            if (!without(entries, way).equals(way)) {
                used.add(way);
            }
        }
        if (used.isEmpty() && choice.required()) {
            faults.add(entries.span(), path, group.words() + " without " + choice.words(), "one of them");
        } else if (used.size() > 1 && choice.exclusive()) {
            faults.add(
                    entries.span(),
                    path,
                    group.words() + " with both " + used.get(0).get(0) + " and "
                            + used.get(1).get(0),
                    "at most one of " + choice.words());
        } else {
            for (List<String> way : used) {
                without(entries, way)
                        .forEach(key -> faults.add(
                                entries.span(), path, group.words() + " without \"" + key + "\"", choice.words()));
            }
        }
    }

    /** Keys of a way that are not written. */
    private static List<String> without(Tree.Entries entries, List<String> way) {
        List<String> missing = new ArrayList<>(way.size());
        for (String key : way) {
            if (entries.entry(key).isEmpty()) {
                missing.add(key);
            }
        }
        return missing;
    }

    private static String example(Key key) {
        return "\"" + key.name() + ": " + Examples.of(key.shape()) + "\"";
    }

    private @Nullable Object value(Tree tree, Shape shape, String id, String path) {
        if (shape instanceof Shape.Keys keys) {
            return group(tree, keys.group(), id, path);
        }
        if (shape instanceof Shape.Named named) {
            return named(tree, named, path);
        }
        if (shape instanceof Shape.Kinds kinds) {
            return kinds(tree, kinds, id, path);
        }
        if (shape instanceof Shape.ListOf list) {
            return list(tree, list, id, path);
        }
        if (shape instanceof Shape.Parts parts) {
            return parts(tree, parts, id, path);
        }
        if (shape instanceof Shape.Sourced sourced) {
            return sourced(tree, sourced, id, path);
        }
        if (shape instanceof Shape.Coordinates) {
            return Coordinates.read(tree, path, faults);
        }
        if (shape instanceof Shape.CoordinatesOrNothing) {
            boolean unplaced =
                    tree instanceof Tree.Entries entries && entries.entries().isEmpty();
            return unplaced ? Coordinates.NOWHERE : Coordinates.read(tree, path, faults);
        }
        return tree instanceof Tree.Scalar scalar && !scalar.isNothing()
                ? scalar(scalar, shape, path)
                : notScalar(tree, shape, path);
    }

    private @Nullable Object notScalar(Tree tree, Shape shape, String path) {
        if (!(shape instanceof Shape.Anything)) {
            faults.add(tree.span(), path, tree.words() + " where a single value belongs", Examples.expected(shape));
        }
        return null;
    }

    private @Nullable Object scalar(Tree.Scalar scalar, Shape shape, String path) {
        if (shape instanceof Shape.Amount amount) {
            return amount(scalar, amount, path);
        }
        if (shape instanceof Shape.Whole whole) {
            return whole(scalar, whole, path);
        }
        if (shape instanceof Shape.YesNo) {
            return yesNo(scalar, path);
        }
        if (shape instanceof Shape.Word word) {
            return word(scalar, word, path);
        }
        if (shape instanceof Shape.Id id) {
            mentions.add(new Mention(id.target(), scalar.text(), path, scalar.span()));
            return scalar.text();
        }
        return shape instanceof Shape.Text text ? text(scalar, text, path) : scalar.text();
    }

    private @Nullable String text(Tree.Scalar scalar, Shape.Text text, String path) {
        if (scalar.text().length() > text.longest()) {
            faults.add(
                    scalar.span(),
                    path,
                    "a text of " + scalar.text().length() + " characters",
                    "at most " + text.longest());
            return null;
        }
        Optional<String> unseen = scalar.text()
                .codePoints()
                .filter(Checker::steers)
                .mapToObj(sign -> String.format(Locale.ROOT, "U+%04X", sign))
                .findFirst();
        unseen.ifPresent(sign -> faults.add(
                scalar.span(), path, "a sign that is not seen and steers how text is shown, " + sign, "plain text"));
        return unseen.isPresent() ? null : scalar.text();
    }

    /** Control characters, and those that turn the direction of the text after them: a report must not read other than its file. */
    private static boolean steers(int sign) {
        return (Character.isISOControl(sign) && sign != '\n' && sign != '\t')
                || (sign >= 0x2028 && sign <= 0x202E)
                || (sign >= 0x2066 && sign <= 0x2069);
    }

    private @Nullable Quantity amount(Tree.Scalar scalar, Shape.Amount amount, String path) {
        QuantityText.Read read = QuantityText.read(scalar.text(), amount.kinds());
        if (read instanceof QuantityText.Read.Bad bad) {
            faults.add(new Fault(
                    scalar.span().line(),
                    scalar.span().column(),
                    path,
                    bad.message(),
                    Examples.expected(amount),
                    bad.suggestion()));
            return null;
        }
        Quantity quantity = ((QuantityText.Read.Good) read).quantity();
        Shape.Range range = amount.ranges().stream()
                .filter(r -> r.dimension() == quantity.dimension())
                .findFirst()
                .orElseThrow();
        if (range.miss(quantity.si()).isPresent()) {
            faults.add(
                    scalar.span(),
                    path,
                    scalar.text() + " is outside what is sensible here",
                    range.least() + " to " + range.greatest() + inUnit(range, ((QuantityText.Read.Good) read).unit()));
            return null;
        }
        return quantity;
    }

    /** The range once more in the unit that was typed, where it is said in another; rounded inwards, so that both ends may be typed. */
    private static String inUnit(Shape.Range range, Unit typed) {
        return range.least().endsWith(" " + typed.symbol()) || typed.dimension() == Dimension.RATIO
                ? ""
                : " (" + plain(typed.fromSi(range.least_si()), RoundingMode.CEILING) + " to "
                        + plain(typed.fromSi(range.greatest_si()), RoundingMode.FLOOR) + " " + typed.symbol() + ")";
    }

    private static String plain(double number, RoundingMode inwards) {
        return number == 0
                ? "0"
                : BigDecimal.valueOf(number)
                        .round(new MathContext(12))
                        .round(new MathContext(4, inwards))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private @Nullable Integer whole(Tree.Scalar scalar, Shape.Whole whole, String path) {
        if (scalar.text().matches("[0-9]{1,6}")) {
            int number = Integer.parseInt(scalar.text());
            if (number >= whole.least() && number <= whole.greatest()) {
                return number;
            }
        }
        faults.add(scalar.span(), path, scalar.words() + " does not fit", Examples.expected(whole));
        return null;
    }

    private @Nullable Boolean yesNo(Tree.Scalar scalar, String path) {
        return switch (scalar.text()) {
            case "yes", "true" -> Boolean.TRUE;
            case "no", "false" -> Boolean.FALSE;
            default -> {
                faults.add(scalar.span(), path, scalar.words() + " is neither yes nor no", "yes or no");
                yield null;
            }
        };
    }

    private @Nullable String word(Tree.Scalar scalar, Shape.Word word, String path) {
        if (word.words().contains(scalar.text())) {
            return scalar.text();
        }
        faults.add(new Fault(
                scalar.span().line(),
                scalar.span().column(),
                path,
                scalar.words() + " is none of the words known here",
                "one of " + Names.oneOf(word.words()),
                Names.nearest(scalar.text(), word.words()).map(n -> "\"" + n + "\"")));
        return null;
    }

    private Map<String, Object> named(Tree tree, Shape.Named named, String path) {
        Map<String, Object> entries = new LinkedHashMap<>();
        if (tree instanceof Tree.Entries mapping) {
            for (Tree.Entry entry : mapping.entries()) {
                String id = entry.key().text();
                Ids.check(entry.key(), named, Names.path(path, id), faults);
                Object value = value(entry.value(), named.entry(), id, Names.path(path, id));
                if (value != null) {
                    entries.put(id, value);
                }
            }
        } else if (!isNothing(tree)) {
            faults.add(
                    tree.span(),
                    path,
                    tree.words() + " where entries by id belong",
                    "for each " + named.word() + " its id, a colon and its description");
        }
        return entries;
    }

    private @Nullable Section kinds(Tree tree, Shape.Kinds kinds, String id, String path) {
        if (!kinds.byModel().isEmpty()
                && tree instanceof Tree.Entries entries
                && entries.entry("model").isPresent()) {
            return byModel(entries, kinds, id, path);
        }
        Set<String> words = new LinkedHashSet<>();
        Map<String, Group> byWord = new LinkedHashMap<>();
        for (Group group : kinds.groups()) {
            Shape.Word kind = (Shape.Word) group.key("kind").orElseThrow().shape();
            words.addAll(kind.words());
            kind.words().forEach(w -> byWord.put(w, group));
        }
        Optional<Tree> said =
                tree instanceof Tree.Entries entries ? entries.entry("kind").map(Tree.Entry::value) : Optional.empty();
        if (said.isEmpty()) {
            faults.add(
                    tree.span(),
                    path,
                    "no \"kind\" is said",
                    "\"kind: " + words.iterator().next() + "\", or one of " + Names.oneOf(words)
                            + (kinds.byModel().isEmpty() ? "" : "; or \"model\", one of the catalogue"));
            return null;
        }
        Group group = said.get() instanceof Tree.Scalar scalar ? byWord.get(scalar.text()) : null;
        if (group == null) {
            value(said.get(), new Shape.Word(List.copyOf(words)), id, Names.path(path, "kind"));
            return null;
        }
        return group(tree, group, id, path);
    }

    /** A part whose figures a model of the catalogue gives, but for those the tree states itself. */
    private @Nullable Section byModel(Tree.Entries entries, Shape.Kinds kinds, String id, String path) {
        Tree said = entries.entry("model").orElseThrow().value();
        Optional<Catalogue> known = catalogue.get();
        if (!(value(said, new Shape.Text(Ids.LONGEST), id, Names.path(path, "model")) instanceof String name)
                || known.isEmpty()) {
            return null;
        }
        Optional<Section> model = known.get().section(name);
        if (model.isEmpty()) {
            List<String> models = known.get().models();
            faults.add(new Fault(
                    said.span().line(),
                    said.span().column(),
                    Names.path(path, "model"),
                    "there is no model \"" + Names.shortened(name) + "\" in the catalogue",
                    "one of " + Names.oneOf(models),
                    Names.nearest(name, models).map(n -> "\"" + n + "\"")));
            return null;
        }
        String kind = model.get().get("kind", String.class);
        Group group = kinds.byModel().get(place(kinds, kind));
        Map<String, Object> values = new LinkedHashMap<>(model.get().values());
        group.choices().forEach(choice -> leaveOut(choice, entries, values));
        Section section = group(entries, group, id, path, values);
        if (!kind.equals(section.get("kind", String.class))) {
            faults.add(
                    entries.entry("kind").orElseThrow().value().span(),
                    Names.path(path, "kind"),
                    "model " + name + " is a " + kind,
                    "no \"kind\" beside a model");
        }
        List<String> replaced = model.get().values().keySet().stream()
                .filter(key -> !key.equals("model") && entries.entry(key).isPresent())
                .toList();
        List<String> added = group.names().stream()
                .filter(key -> entries.entry(key).isPresent() && !model.get().has(key))
                .toList();
        values.put("model", model.get().get("model", Model.class).with(replaced, added));
        return section;
    }

    private static int place(Shape.Kinds kinds, String kind) {
        for (int n = 0; n < kinds.groups().size(); n++) {
            if (kinds.groups().get(n).key("kind").orElseThrow().shape() instanceof Shape.Word word
                    && word.words().contains(kind)) {
                return n;
            }
        }
        throw new IllegalStateException("no group of kind " + kind);
    }

    /** What a model gives one way does not stand beside another way of saying the same. */
    private static void leaveOut(Group.Choice choice, Tree.Entries entries, Map<String, Object> values) {
        boolean said = choice.ways().stream()
                .flatMap(List::stream)
                .anyMatch(key -> entries.entry(key).isPresent());
        if (said) {
            choice.ways().stream().flatMap(List::stream).forEach(values::remove);
        }
    }

    private List<Object> list(Tree tree, Shape.ListOf shape, String id, String path) {
        List<Object> values = new ArrayList<>();
        if (tree instanceof Tree.Items items) {
            for (int i = 0; i < items.items().size(); i++) {
                Object value = value(items.items().get(i), shape.item(), id, path + "[" + i + "]");
                if (value != null) {
                    values.add(value);
                }
            }
            if (items.items().size() < shape.least()) {
                faults.add(tree.span(), path, "a list of " + items.items().size(), "at least " + shape.least());
            }
        } else if (!isNothing(tree) || shape.least() > 0) {
            faults.add(tree.span(), path, tree.words() + " where a list belongs", Examples.expected(shape));
        }
        return values;
    }

    private @Nullable List<Object> parts(Tree tree, Shape.Parts shape, String id, String path) {
        if (!(tree instanceof Tree.Items items)
                || items.items().size() != shape.parts().size()) {
            faults.add(tree.span(), path, tree.words() + " that does not fit", "a list such as " + Examples.of(shape));
            return null;
        }
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < items.items().size(); i++) {
            Object value = value(items.items().get(i), shape.parts().get(i), id, path + "[" + i + "]");
            if (value == null) {
                return null;
            }
            values.add(value);
        }
        return values;
    }

    private @Nullable Stated sourced(Tree tree, Shape.Sourced shape, String id, String path) {
        if (!(tree instanceof Tree.Entries entries)) {
            Object value = value(tree, shape.value(), id, path);
            return value instanceof Quantity quantity ? new Stated(quantity, Source.entered()) : null;
        }
        Section section = group(entries, PlantKeys.sourced(shape.value()), id, path);
        Optional<Quantity> value = section.find("value", Quantity.class);
        Optional<String> source = section.find("source", String.class);
        return value.isPresent() && source.isPresent()
                ? new Stated(
                        value.get(),
                        source.get().isBlank() ? Source.entered() : new Source(source.get(), Confidence.ENTERED))
                : null;
    }

    private static boolean isNothing(Tree tree) {
        return tree instanceof Tree.Scalar scalar && scalar.isNothing();
    }
}
