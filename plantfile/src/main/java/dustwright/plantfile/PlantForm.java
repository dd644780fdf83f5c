package dustwright.plantfile;

import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.QuantityText;
import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.Need;
import dustwright.plantfile.keys.PlantKeys;
import dustwright.plantfile.keys.Shape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One part of a plant file as fields to fill in: what is written there, what else may be, and what the keys the reader goes by say of
 * each. A part that is not written yet has a form too, so that it can be filled in before it is added.
 */
public final class PlantForm {
    private static final Pattern PLACE = Pattern.compile("\\[([0-9]{1,6})](.*)", Pattern.DOTALL);
    private static final int LONGEST_SUMMARY = 60;
    private static final String KIND = "kind";

    private final Tree top;

    private PlantForm(Tree top) {
        this.top = top;
    }

    /** How a value is filled in. */
    public enum Kind {
        AMOUNT,
        WHOLE,
        TEXT,
        WORD,
        YES_NO,
        ID,
        PLACE,
        LIST,
        GROUP,
        NAMED,
        YAML
    }

    /**
     * A part.
     *
     * @param path where it stands or would stand
     * @param words what it is: "a rotary valve"
     * @param written whether it stands in the file
     * @param kind {@code GROUP} for keys, {@code NAMED} for entries by their ids, else that of the one value it is
     * @param fields its keys, its entries, or itself
     * @param ways which keys exclude or need each other, in words
     * @param kinds words of which one says what keys it has; empty where there is no choice
     * @param entry what one of its entries is called; empty where it has none
     */
    public record Form(
            String path,
            String words,
            boolean written,
            Kind kind,
            List<Field> fields,
            List<String> ways,
            List<String> kinds,
            String entry) {
        public Form {
            fields = List.copyOf(fields);
            ways = List.copyOf(ways);
            kinds = List.copyOf(kinds);
        }
    }

    /**
     * One value.
     *
     * @param help what the key means
     * @param needed whether it must be written; {@code oneOf} whether it is one of several of which one must be
     * @param otherwise what is taken where it is not written; empty for nothing
     * @param text as written; of a group or list a summary
     * @param example as one would write it
     * @param range what is sensible
     * @param choices words or ids that may stand there
     * @param sourced whether it may say where it comes from, and {@code source} what it says
     * @param parts of a place its coordinates, of a list its items, of a group that is needed its keys
     * @param item of a list an empty item; none where its length is fixed
     * @param quantity what was understood, where it is a quantity
     */
    public record Field(
            String path,
            String key,
            Kind kind,
            String help,
            boolean written,
            boolean needed,
            boolean oneOf,
            String otherwise,
            String text,
            String example,
            String range,
            List<String> choices,
            boolean sourced,
            String source,
            List<Field> parts,
            Optional<Field> item,
            Optional<Quantity> quantity) {
        public Field {
            choices = List.copyOf(choices);
            parts = List.copyOf(parts);
        }
    }

    /**
     * The form of a part; empty where no plant file has such a part.
     *
     * @param path empty for the whole file
     * @param kind for a part that is not written yet: which of its kinds; empty for the first
     */
    public static Optional<Form> of(String text, String path, String kind) {
        Optional<Tree.Entries> top = TreeReader.read(text, new Faults());
        if (top.isEmpty()) {
            return Optional.empty();
        }
        PlantForm form = new PlantForm(top.get());
        return form.find(whole(top.get()), path).map(spot -> form.form(spot, path, kind));
    }

    /** The keys, ids and places a path leads through; empty where no plant file has such a part. */
    public static List<String> steps(String text, String path) {
        return TreeReader.read(text, new Faults())
                .flatMap(tree -> new PlantForm(tree).find(whole(tree), path))
                .map(Spot::steps)
                .orElse(List.of());
    }

    /** Writes a value at a path that is not written yet, with what must stand around it. */
    public static PlantEditor.Edit add(String text, String path, PlantEditor.Value value) {
        Optional<Tree.Entries> top = TreeReader.read(text, new Faults());
        Optional<Spot> spot = top.flatMap(tree -> new PlantForm(tree).find(whole(tree), path));
        if (spot.isEmpty()) {
            return new PlantEditor.Edit.Refused("a plant file has nothing at " + path);
        }
        List<String> steps = spot.get().steps();
        int there = spot.get().there();
        if (there == steps.size()) {
            return new PlantEditor.Edit.Refused("there is already something at " + path);
        }
        PlantEditor.Value inner = value;
        for (int i = steps.size() - 1; i > there; i--) {
            inner = PlantEditor.Value.keys(Map.of(steps.get(i), inner));
        }
        return PlantEditor.add(text, String.join(".", steps.subList(0, there)), steps.get(there), inner);
    }

    /** A place in shape and tree at once: {@code there} steps of all are written. */
    private record Spot(Shape shape, Optional<Tree> tree, String key, List<String> steps, int there) {
        Spot to(Shape next, Optional<Tree> value, String step) {
            List<String> more = new ArrayList<>(steps);
            more.add(step);
            return new Spot(next, value, step, List.copyOf(more), value.isPresent() ? there + 1 : there);
        }
    }

    private static Spot whole(Tree top) {
        return new Spot(new Shape.Keys(PlantKeys.TOP), Optional.of(top), "", List.of(), 0);
    }

    private Optional<Spot> find(Spot from, String rest) {
        if (rest.isEmpty()) {
            return Optional.of(from);
        }
        Shape shape = from.shape() instanceof Shape.Kinds kinds
                ? new Shape.Keys(group(kinds, from.tree(), ""))
                : from.shape();
        if (shape instanceof Shape.Keys keys) {
            return keys.group().names().stream()
                    .filter(name -> leadsOn(rest, name))
                    .max(Comparator.comparingInt(String::length))
                    .flatMap(name -> find(
                            from.to(keys.group().key(name).orElseThrow().shape(), entry(from.tree(), name), name),
                            after(rest, name)));
        }
        if (shape instanceof Shape.Named named) {
            String id = entries(from.tree()).stream()
                    .map(e -> e.key().text())
                    .filter(name -> leadsOn(rest, name))
                    .max(Comparator.comparingInt(String::length))
                    .orElse(rest);
            return find(from.to(named.entry(), entry(from.tree(), id), id), after(rest, id));
        }
        Matcher place = PLACE.matcher(rest);
        if (shape instanceof Shape.ListOf list && place.matches()) {
            int n = Integer.parseInt(place.group(1));
            return find(from.to(list.item(), item(from.tree(), n), "[" + n + "]"), after(place.group(2), ""));
        }
        return Optional.empty();
    }

    private static boolean leadsOn(String rest, String key) {
        return rest.startsWith(key)
                && (rest.length() == key.length()
                        || rest.charAt(key.length()) == '.'
                        || rest.charAt(key.length()) == '[');
    }

    private static String after(String rest, String key) {
        String left = rest.substring(key.length());
        return left.startsWith(".") ? left.substring(1) : left;
    }

    private static List<Tree.Entry> entries(Optional<Tree> tree) {
        return tree.orElse(null) instanceof Tree.Entries entries ? entries.entries() : List.of();
    }

    private static Optional<Tree> entry(Optional<Tree> tree, String key) {
        return entries(tree).stream()
                .filter(e -> e.key().text().equals(key))
                .map(Tree.Entry::value)
                .findFirst();
    }

    private static List<Tree> items(Optional<Tree> tree) {
        return tree.orElse(null) instanceof Tree.Items items ? items.items() : List.of();
    }

    private static Optional<Tree> item(Optional<Tree> tree, int n) {
        return items(tree).stream().skip(n).findFirst();
    }

    private static Group group(Shape.Kinds kinds, Optional<Tree> tree, String asked) {
        String kind = entry(tree, KIND)
                .filter(Tree.Scalar.class::isInstance)
                .map(scalar -> ((Tree.Scalar) scalar).text())
                .orElse(asked);
        boolean byModel = !kinds.byModel().isEmpty() && entry(tree, "model").isPresent();
        List<Group> groups = byModel ? kinds.byModel() : kinds.groups();
        return groups.stream()
                .filter(group -> words(group).contains(kind))
                .findFirst()
                .orElse(groups.get(0));
    }

    private static List<String> words(Group group) {
        return group.key(KIND)
                .map(Key::shape)
                .filter(Shape.Word.class::isInstance)
                .map(shape -> ((Shape.Word) shape).words())
                .orElse(List.of());
    }

    private Form form(Spot spot, String path, String kind) {
        Shape shape = spot.shape();
        List<String> kinds = List.of();
        if (shape instanceof Shape.Kinds several) {
            kinds = several.groups().stream().flatMap(g -> words(g).stream()).toList();
            shape = new Shape.Keys(group(several, spot.tree(), kind));
        }
        boolean written = spot.tree().isPresent();
        if (shape instanceof Shape.Keys keys) {
            return new Form(
                    path,
                    keys.group().words(),
                    written,
                    Kind.GROUP,
                    fields(keys.group(), spot.tree(), path, !written),
                    ways(keys.group()),
                    kinds,
                    "");
        }
        if (shape instanceof Shape.Named named) {
            List<Field> fields = entries(spot.tree()).stream()
                    .map(e -> field(
                            described(e.key().text(), named.entry()),
                            Optional.of(e.value()),
                            Names.path(path, e.key().text()),
                            false))
                    .toList();
            return new Form(path, spot.key(), written, Kind.NAMED, fields, List.of(), kinds, named.word());
        }
        Field itself = field(described(spot.key(), shape), spot.tree(), path, !written);
        return new Form(path, spot.key(), written, itself.kind(), List.of(itself), List.of(), kinds, "");
    }

    private static Key described(String key, Shape shape) {
        return new Key(key, shape, new Need.Optional(), "");
    }

    private static List<String> ways(Group group) {
        return group.choices().stream()
                .filter(choice -> !choice.howMany().isEmpty())
                .map(choice -> choice.howMany() + " " + choice.words())
                .toList();
    }

    private List<Field> fields(Group group, Optional<Tree> tree, String path, boolean open) {
        return group.keys().stream()
                .map(key -> field(group, key, entry(tree, key.name()), Names.path(path, key.name()), open))
                .toList();
    }

    private Field field(Group group, Key key, Optional<Tree> tree, String path, boolean open) {
        boolean oneOf = group.choices().stream()
                .anyMatch(choice ->
                        choice.required() && choice.ways().stream().anyMatch(way -> way.contains(key.name())));
        boolean needed = key.need() instanceof Need.Required;
        Field field = field(key, tree, path, open && (needed || oneOf));
        return oneOf ? with(field, true) : field;
    }

    private static Field with(Field f, boolean oneOf) {
        return new Field(
                f.path(),
                f.key(),
                f.kind(),
                f.help(),
                f.written(),
                f.needed(),
                oneOf,
                f.otherwise(),
                f.text(),
                f.example(),
                f.range(),
                f.choices(),
                f.sourced(),
                f.source(),
                f.parts(),
                f.item(),
                f.quantity());
    }

    /** @param open whether the keys of a group are shown with it, as it is not written yet and needed */
    private Field field(Key key, Optional<Tree> tree, String path, boolean open) {
        boolean sourced = key.shape() instanceof Shape.Sourced;
        Shape shape = key.shape() instanceof Shape.Sourced said ? said.value() : key.shape();
        boolean longForm = sourced && tree.orElse(null) instanceof Tree.Entries;
        Optional<Tree> value = longForm ? entry(tree, "value") : tree;
        String at = longForm ? Names.path(path, "value") : path;
        Kind kind = kind(shape, value);
        return new Field(
                at,
                key.name(),
                kind,
                key.help(),
                tree.isPresent(),
                key.need() instanceof Need.Required,
                false,
                otherwise(key.need()),
                text(kind, value),
                example(shape),
                range(shape),
                choices(shape),
                sourced,
                longForm ? text(Kind.TEXT, entry(tree, "source")) : "",
                parts(shape, kind, value, at, open),
                kind == Kind.LIST && shape instanceof Shape.ListOf list
                        ? Optional.of(field(described("", list.item()), Optional.empty(), at + "[]", true))
                        : Optional.empty(),
                quantity(shape, value));
    }

    private static String otherwise(Need need) {
        if (need instanceof Need.Default otherwise) {
            return otherwise.text();
        }
        return need instanceof Need.Derived derived ? derived.words() : "";
    }

    /** What is not written as its shape asks is shown as it stands. */
    private static Kind kind(Shape shape, Optional<Tree> tree) {
        boolean single = tree.map(t -> t instanceof Tree.Scalar).orElse(true);
        boolean listed = tree.map(t -> t instanceof Tree.Items).orElse(true);
        boolean keyed = tree.map(t -> t instanceof Tree.Entries || (t instanceof Tree.Scalar s && s.isNothing()))
                .orElse(true);
        if (shape instanceof Shape.Keys || shape instanceof Shape.Kinds) {
            return keyed ? Kind.GROUP : Kind.YAML;
        }
        if (shape instanceof Shape.Named) {
            return keyed ? Kind.NAMED : Kind.YAML;
        }
        if (shape instanceof Shape.ListOf || shape instanceof Shape.Parts) {
            return listed ? Kind.LIST : Kind.YAML;
        }
        if (shape instanceof Shape.Coordinates || shape instanceof Shape.CoordinatesOrNothing) {
            return listed ? Kind.PLACE : Kind.YAML;
        }
        return single ? single(shape) : Kind.YAML;
    }

    private static Kind single(Shape shape) {
        if (shape instanceof Shape.Amount) {
            return Kind.AMOUNT;
        }
        if (shape instanceof Shape.Whole) {
            return Kind.WHOLE;
        }
        if (shape instanceof Shape.Word) {
            return Kind.WORD;
        }
        if (shape instanceof Shape.YesNo) {
            return Kind.YES_NO;
        }
        return shape instanceof Shape.Id ? Kind.ID : Kind.TEXT;
    }

    private String text(Kind kind, Optional<Tree> tree) {
        if (tree.isEmpty()) {
            return "";
        }
        if (tree.get() instanceof Tree.Scalar scalar) {
            return scalar.isNothing() ? "" : scalar.text();
        }
        if (kind == Kind.YAML) {
            return PlantEditor.onOneLine(tree.get());
        }
        return Names.shortenedTo(summary(tree.get()), LONGEST_SUMMARY);
    }

    private static String summary(Tree tree) {
        if (tree instanceof Tree.Scalar scalar) {
            return scalar.text();
        }
        if (tree instanceof Tree.Items items) {
            return items.items().stream().map(PlantForm::summary).collect(Collectors.joining(", "));
        }
        return ((Tree.Entries) tree)
                .entries().stream()
                        .map(e -> e.value() instanceof Tree.Scalar scalar
                                ? e.key().text() + " " + scalar.text()
                                : e.key().text())
                        .collect(Collectors.joining(", "));
    }

    private static String example(Shape shape) {
        return shape instanceof Shape.Amount || shape instanceof Shape.Whole ? Examples.of(shape) : "";
    }

    private static String range(Shape shape) {
        if (shape instanceof Shape.Amount amount) {
            return amount.ranges().stream()
                    .map(range -> range.least() + " to " + range.greatest())
                    .collect(Collectors.joining(", or "));
        }
        return shape instanceof Shape.Whole whole ? whole.least() + " to " + whole.greatest() : "";
    }

    private List<String> choices(Shape shape) {
        if (shape instanceof Shape.Word word) {
            return word.words();
        }
        return shape instanceof Shape.Id id ? ids(id.target()) : List.of();
    }

    private List<String> ids(Shape.Target target) {
        return switch (target) {
            case DUST -> names("dusts");
            case TUBE -> names("tubes");
            case HOSE -> names("hoses");
            case TOOL -> names("tools");
            case POINT -> names("points");
            case RUN -> names("runs");
            case INLET -> names("inlets");
            case ZONE ->
                entries(entry(entry(Optional.of(top), "usage"), "zones")).stream()
                        .map(e -> e.key().text())
                        .toList();
            case NODE, START ->
                Stream.of("points", "inlets", "stations")
                        .flatMap(key -> names(key).stream())
                        .toList();
        };
    }

    private List<String> names(String key) {
        return entries(entry(Optional.of(top), key)).stream()
                .map(e -> e.key().text())
                .toList();
    }

    private List<Field> parts(Shape shape, Kind kind, Optional<Tree> tree, String path, boolean open) {
        if (kind == Kind.PLACE) {
            List<Tree> written = items(tree);
            return IntStream.range(0, 3)
                    .mapToObj(i -> field(
                            described(List.of("east", "north", "up").get(i), new Shape.Text(LONGEST_SUMMARY)),
                            written.stream().skip(i).findFirst(),
                            path + "[" + i + "]",
                            false))
                    .toList();
        }
        if (kind == Kind.LIST && shape instanceof Shape.Parts fixed) {
            return IntStream.range(0, fixed.parts().size())
                    .mapToObj(
                            i -> field(described("", fixed.parts().get(i)), item(tree, i), path + "[" + i + "]", true))
                    .toList();
        }
        if (kind == Kind.LIST && shape instanceof Shape.ListOf list) {
            return IntStream.range(0, items(tree).size())
                    .mapToObj(i -> field(described("", list.item()), item(tree, i), path + "[" + i + "]", false))
                    .toList();
        }
        if (kind == Kind.GROUP && open) {
            Group group = shape instanceof Shape.Kinds kinds ? group(kinds, tree, "") : ((Shape.Keys) shape).group();
            return fields(group, tree, path, true);
        }
        return List.of();
    }

    private static Optional<Quantity> quantity(Shape shape, Optional<Tree> tree) {
        return shape instanceof Shape.Amount amount
                        && tree.orElse(null) instanceof Tree.Scalar scalar
                        && QuantityText.read(scalar.text(), amount.kinds()) instanceof QuantityText.Read.Good good
                ? Optional.of(good.quantity())
                : Optional.empty();
    }

    /** Forms of other parts of the same sort that are written, whose values may be taken over: paths, in the order of the file. */
    public static List<String> alike(String text, String path) {
        Optional<Tree.Entries> top = TreeReader.read(text, new Faults());
        if (top.isEmpty()) {
            return List.of();
        }
        PlantForm form = new PlantForm(top.get());
        Spot start = whole(top.get());
        Optional<Spot> here = form.find(start, path);
        Map<String, Shape> all = new LinkedHashMap<>();
        form.walk(start, "", all);
        return here.map(spot -> all.entrySet().stream()
                        .filter(e -> e.getValue() == spot.shape() && !e.getKey().equals(path))
                        .map(Map.Entry::getKey)
                        .toList())
                .orElse(List.of());
    }

    private void walk(Spot spot, String path, Map<String, Shape> all) {
        all.put(path, spot.shape());
        Shape shape = spot.shape() instanceof Shape.Kinds kinds
                ? new Shape.Keys(group(kinds, spot.tree(), ""))
                : spot.shape();
        for (Tree.Entry entry : entries(spot.tree())) {
            String key = entry.key().text();
            Optional<Shape> next = shape instanceof Shape.Keys keys
                    ? keys.group().key(key).map(Key::shape)
                    : shape instanceof Shape.Named named ? Optional.of(named.entry()) : Optional.empty();
            next.ifPresent(s -> walk(spot.to(s, Optional.of(entry.value()), key), Names.path(path, key), all));
        }
    }
}
