package dustwright.plantfile;

import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.QuantityText;
import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.Need;
import dustwright.plantfile.keys.Shape;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One part of a plant file as fields to fill in: what is written there, what else may be, and what the keys the reader goes by say of
 * each. A part that is not written yet has a form too, so that it can be filled in before it is added.
 */
public final class PlantForm {
    private static final int LONGEST_SUMMARY = 60;
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9.eE]+(?:[-+][0-9]+)?");

    private final PlantParts parts;

    private PlantForm(PlantParts parts) {
        this.parts = parts;
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
     * @param unit of a bare number, as of a coordinate; empty where there is none
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
            String unit,
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
    public static Optional<Form> of(PlantParts parts, String path, String kind) {
        return parts.at(path).map(spot -> new PlantForm(parts).form(spot, path, kind));
    }

    private Form form(PlantParts.Spot spot, String path, String kind) {
        Shape shape = spot.shape();
        List<String> kinds = List.of();
        if (shape instanceof Shape.Kinds several) {
            kinds = several.groups().stream()
                    .flatMap(g -> PlantParts.words(g).stream())
                    .toList();
            shape = new Shape.Keys(PlantParts.group(several, spot.tree(), kind));
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
            List<Field> fields = PlantParts.entries(spot.tree()).stream()
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
                .map(key -> field(group, key, PlantParts.entry(tree, key.name()), Names.path(path, key.name()), open))
                .toList();
    }

    private Field field(Group group, Key key, Optional<Tree> tree, String path, boolean open) {
        boolean oneOf = group.choices().stream()
                .anyMatch(choice ->
                        choice.required() && choice.ways().stream().anyMatch(way -> way.contains(key.name())));
        return field(key, tree, path, open && (oneOf || key.need() instanceof Need.Required), oneOf);
    }

    private Field field(Key key, Optional<Tree> tree, String path, boolean open) {
        return field(key, tree, path, open, false);
    }

    /** @param open whether the keys of a group are shown with it, as it is not written yet and needed */
    private Field field(Key key, Optional<Tree> tree, String path, boolean open, boolean oneOf) {
        boolean sourced = key.shape() instanceof Shape.Sourced;
        Shape shape = key.shape() instanceof Shape.Sourced said ? said.value() : key.shape();
        boolean longForm = sourced && tree.orElse(null) instanceof Tree.Entries;
        Optional<Tree> value = longForm ? PlantParts.entry(tree, "value") : tree;
        String at = longForm ? Names.path(path, "value") : path;
        Kind kind = kind(shape, value);
        return new Field(
                at,
                key.name(),
                kind,
                key.help(),
                tree.isPresent(),
                key.need() instanceof Need.Required,
                oneOf,
                otherwise(key.need()),
                text(kind, value),
                example(shape),
                range(shape),
                choices(shape),
                sourced,
                longForm ? text(Kind.TEXT, PlantParts.entry(tree, "source")) : "",
                parts(shape, kind, value, at, open),
                kind == Kind.LIST && shape instanceof Shape.ListOf list
                        ? Optional.of(field(described("", list.item()), Optional.empty(), at + "[]", true))
                        : Optional.empty(),
                "",
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
                PlantParts.entries(PlantParts.entry(PlantParts.entry(Optional.of(parts.top()), "usage"), "zones"))
                        .stream()
                        .map(e -> e.key().text())
                        .toList();
            case NODE, START ->
                Stream.of("points", "inlets", "stations")
                        .flatMap(key -> names(key).stream())
                        .toList();
        };
    }

    private List<String> names(String key) {
        return PlantParts.entries(PlantParts.entry(Optional.of(parts.top()), key)).stream()
                .map(e -> e.key().text())
                .toList();
    }

    private List<Field> parts(Shape shape, Kind kind, Optional<Tree> tree, String path, boolean open) {
        if (kind == Kind.PLACE) {
            List<Tree> written = PlantParts.items(tree);
            return IntStream.range(0, 3)
                    .mapToObj(i -> coordinate(
                            List.of("east", "north", "up").get(i),
                            written.stream().skip(i).findFirst(),
                            path + "[" + i + "]"))
                    .toList();
        }
        if (kind == Kind.LIST && shape instanceof Shape.Parts fixed) {
            return IntStream.range(0, fixed.parts().size())
                    .mapToObj(i -> field(
                            described("", fixed.parts().get(i)), PlantParts.item(tree, i), path + "[" + i + "]", true))
                    .toList();
        }
        if (kind == Kind.LIST && shape instanceof Shape.ListOf list) {
            return IntStream.range(0, PlantParts.items(tree).size())
                    .mapToObj(i ->
                            field(described("", list.item()), PlantParts.item(tree, i), path + "[" + i + "]", false))
                    .toList();
        }
        if (kind == Kind.GROUP && open) {
            Group group = shape instanceof Shape.Kinds kinds
                    ? PlantParts.group(kinds, tree, "")
                    : ((Shape.Keys) shape).group();
            return fields(group, tree, path, true);
        }
        return List.of();
    }

    /** A bare number is in the unit of the plant's coordinates, and says so; nought is nought in every unit. */
    private Field coordinate(String name, Optional<Tree> tree, String path) {
        String text = text(Kind.TEXT, tree);
        boolean bare = tree.isEmpty() || NUMBER.matcher(text).matches();
        String unit = bare
                ? text(Kind.TEXT, PlantParts.entry(PlantParts.entry(Optional.of(parts.top()), "plant"), "coordinates"))
                        .strip()
                : "";
        return new Field(
                path,
                name,
                Kind.TEXT,
                "",
                tree.isPresent(),
                false,
                false,
                "",
                text,
                "",
                "",
                List.of(),
                false,
                "",
                List.of(),
                Optional.empty(),
                unit,
                QuantityText.read(bare ? text + " " + unit : text, List.of(Dimension.LENGTH))
                                instanceof QuantityText.Read.Good good
                        ? Optional.of(good.quantity()).filter(q -> q.si() != 0)
                        : Optional.empty());
    }

    private static Optional<Quantity> quantity(Shape shape, Optional<Tree> tree) {
        return shape instanceof Shape.Amount amount
                        && tree.orElse(null) instanceof Tree.Scalar scalar
                        && QuantityText.read(scalar.text(), amount.kinds()) instanceof QuantityText.Read.Good good
                ? Optional.of(good.quantity())
                : Optional.empty();
    }
}
