package dustwright.plantfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Changes one value of a plant file and leaves every other byte alone: comments, order, spacing, quotes. Each edit is checked before it
 * is handed out: the new text, read again, must differ from the old in that one place only.
 */
public final class PlantEditor {
    private PlantEditor() {}

    /** What an edit came to. */
    public sealed interface Edit {
        /** The new text. */
        record Done(String text) implements Edit {}

        /** Nothing was changed, and why. */
        record Refused(String why) implements Edit {}
    }

    /** A value to write. */
    public sealed interface Value {
        /** A text or a quantity; quoted where YAML asks for it. */
        record Plain(String text) implements Value {}

        /** A list or mapping on one line, {@code {hose: H15, tool: floor}}. */
        record Flow(String yaml) implements Value {}

        /** A mapping of values, on one line. */
        static Value keys(Map<String, Value> values) {
            return new Flow(values.entrySet().stream()
                    .map(e -> Scalars.written(e.getKey()) + ": " + written(e.getValue()))
                    .collect(Collectors.joining(", ", "{", "}")));
        }

        /** A list of values, on one line. */
        static Value list(List<Value> values) {
            return new Flow(values.stream().map(PlantEditor::written).collect(Collectors.joining(", ", "[", "]")));
        }
    }

    /**
     * One value as it is written.
     *
     * @param path by which {@link #set} finds it
     * @param plain the text of a value on its own; empty where it is a list or a mapping, which {@code text} then shows
     * @param onOneLine the value as it would be written beside others on one line
     */
    public record Written(String path, String key, String text, boolean plain, String onOneLine) {}

    /** The values below a path as they are written, in the order of the file; none where there are no keys. */
    public static List<Written> values(String text, String path) {
        Optional<Tree.Entries> top = TreeReader.read(text, new Faults());
        Optional<Tree> there = top.flatMap(t -> Paths.find(t, path)).map(Paths.Found::value);
        if (!(there.orElse(null) instanceof Tree.Entries entries)) {
            return List.of();
        }
        return entries.entries().stream()
                .map(e -> new Written(
                        path + "." + e.key().text(),
                        e.key().text(),
                        e.value() instanceof Tree.Scalar scalar
                                ? scalar.text()
                                : text.substring(
                                                e.value().span().start(),
                                                e.value().span().end())
                                        .strip(),
                        e.value() instanceof Tree.Scalar,
                        onOneLine(e.value())))
                .toList();
    }

    /** What stands at a path, on one line and without comments; empty where nothing is written. */
    public static Optional<String> onOneLine(String text, String path) {
        return TreeReader.read(text, new Faults())
                .flatMap(top -> Paths.find(top, path))
                .map(found -> onOneLine(found.value()));
    }

    static String onOneLine(Tree tree) {
        if (tree instanceof Tree.Entries entries) {
            return entries.entries().stream()
                    .map(e -> Scalars.written(e.key().text()) + ": " + onOneLine(e.value()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (tree instanceof Tree.Items items) {
            return items.items().stream().map(PlantEditor::onOneLine).collect(Collectors.joining(", ", "[", "]"));
        }
        Tree.Scalar scalar = (Tree.Scalar) tree;
        return scalar.isNothing() ? "" : Scalars.written(scalar.text());
    }

    /** The text of the single value at a path; empty where there is none, or a list or mapping. */
    public static Optional<String> scalar(String text, String path) {
        return TreeReader.read(text, new Faults())
                .flatMap(top -> Paths.find(top, path))
                .map(Paths.Found::value)
                .filter(Tree.Scalar.class::isInstance)
                .map(value -> ((Tree.Scalar) value).text());
    }

    /** Replaces the value at a path. */
    public static Edit set(String text, String path, Value value) {
        return edit(text, (top, splice) -> {
            Paths.Found found = Paths.find(top, path).orElseThrow(() -> new Cannot("there is nothing at " + path));
            Tree written = tree(value);
            Tree.Entries after = (Tree.Entries) Paths.replace(top, path, old -> written);
            return new Result(splice.replace(found.value(), written(value)), after);
        });
    }

    /** Adds a key to the mapping at a path; the empty path is the top of the file. */
    public static Edit add(String text, String path, String key, Value value) {
        return edit(text, (top, splice) -> {
            Paths.Found found = Paths.find(top, path).orElseThrow(() -> new Cannot("there is nothing at " + path));
            Tree.Entry entry =
                    new Tree.Entry(new Tree.Scalar(key, true, found.value().span()), tree(value));
            Tree.Entries mapping = mapping(found.value(), path);
            if (mapping.entry(key).isPresent()) {
                throw new Cannot("there is already a \"" + key + "\" at " + path);
            }
            List<Tree.Entry> entries = new ArrayList<>(mapping.entries());
            entries.add(entry);
            Tree.Entries more = new Tree.Entries(List.copyOf(entries), mapping.flow(), mapping.span());
            Tree.Entries after = (Tree.Entries) Paths.replace(top, path, old -> more);
            return new Result(splice.add(found, mapping, Scalars.written(key) + ": " + written(value)), after);
        });
    }

    /** Adds an item at the end of the list at a path. */
    public static Edit append(String text, String path, Value value) {
        return edit(text, (top, splice) -> {
            Paths.Found found = Paths.find(top, path).orElseThrow(() -> new Cannot("there is nothing at " + path));
            if (!(found.value() instanceof Tree.Items list)) {
                throw new Cannot("there is no list at " + path);
            }
            List<Tree> items = new ArrayList<>(list.items());
            items.add(tree(value));
            Tree.Items more = new Tree.Items(List.copyOf(items), list.flow(), list.span());
            Tree.Entries after = (Tree.Entries) Paths.replace(top, path, old -> more);
            return new Result(splice.append(list, written(value)), after);
        });
    }

    /** Removes the key, or the item of a list, at a path. */
    public static Edit remove(String text, String path) {
        return edit(text, (top, splice) -> {
            Paths.Found found = Paths.find(top, path).orElseThrow(() -> new Cannot("there is nothing at " + path));
            Tree parent = Paths.parent(top, path).orElseThrow(() -> new Cannot("the whole file cannot be removed"));
            Tree.Entries after =
                    (Tree.Entries) Paths.replace(top, Paths.parentPath(top, path), p -> without(p, found.value()));
            return new Result(splice.remove(parent, found), after);
        });
    }

    private record Result(String text, Tree.Entries expected) {}

    private interface Change {
        Result apply(Tree.Entries top, Splice splice);
    }

    private static Edit edit(String text, Change change) {
        Faults faults = new Faults();
        Optional<Tree.Entries> top = TreeReader.read(text, faults);
        if (top.isEmpty() || !faults.none()) {
            return new Edit.Refused("the file itself cannot be read: "
                    + faults.inOrderOfTheFile().get(0).text());
        }
        try {
            Result result = change.apply(top.get(), new Splice(text));
            Optional<Tree.Entries> again = TreeReader.read(result.text(), new Faults());
            return again.isPresent() && same(again.get(), result.expected())
                    ? new Edit.Done(result.text())
                    : new Edit.Refused("this place is written in a way that cannot be changed without touching more");
        } catch (Cannot cannot) {
            return new Edit.Refused(String.valueOf(cannot.getMessage()));
        }
    }

    private static Tree.Entries mapping(Tree tree, String path) {
        if (tree instanceof Tree.Entries entries) {
            return entries;
        }
        if (tree instanceof Tree.Scalar scalar && scalar.isNothing()) {
            return new Tree.Entries(List.of(), false, scalar.span());
        }
        throw new Cannot("there are no keys at " + path + ", only " + tree.words());
    }

    private static String written(Value value) {
        return value instanceof Value.Plain plain ? Scalars.written(plain.text()) : ((Value.Flow) value).yaml();
    }

    private static Tree tree(Value value) {
        Span nowhere = new Span(0, 0, 0, 0);
        if (value instanceof Value.Plain plain) {
            return new Tree.Scalar(plain.text(), false, nowhere);
        }
        String yaml = ((Value.Flow) value).yaml();
        return TreeReader.read("value: " + yaml, new Faults())
                .filter(t -> t.entries().size() == 1 && yaml.lines().count() == 1)
                .map(t -> t.entries().get(0).value())
                .orElseThrow(() -> new Cannot("\"" + Names.shortened(yaml) + "\" is no list or mapping on one line"));
    }

    private static Tree without(Tree parent, Tree child) {
        if (parent instanceof Tree.Entries entries) {
            return new Tree.Entries(
                    entries.entries().stream().filter(e -> e.value() != child).toList(),
                    entries.flow(),
                    entries.span());
        }
        Tree.Items items = (Tree.Items) parent;
        return new Tree.Items(items.items().stream().filter(i -> i != child).toList(), items.flow(), items.span());
    }

    /** Whether two trees say the same, wherever they say it; an empty list or mapping is the same as nothing. */
    private static boolean same(Tree a, Tree b) {
        if (isEmpty(a) && isEmpty(b)) {
            return true;
        }
        if (a instanceof Tree.Entries x && b instanceof Tree.Entries y) {
            return x.entries().size() == y.entries().size() && sameEntries(x, y);
        }
        if (a instanceof Tree.Items x && b instanceof Tree.Items y) {
            for (int i = 0; i < Math.min(x.items().size(), y.items().size()); i++) {
                if (!same(x.items().get(i), y.items().get(i))) {
                    return false;
                }
            }
            return x.items().size() == y.items().size();
        }
        return a instanceof Tree.Scalar x
                && b instanceof Tree.Scalar y
                && x.text().equals(y.text())
                && x.isNothing() == y.isNothing();
    }

    private static boolean sameEntries(Tree.Entries x, Tree.Entries y) {
        for (int i = 0; i < x.entries().size(); i++) {
            Tree.Entry e = x.entries().get(i);
            Tree.Entry f = y.entries().get(i);
            if (!e.key().text().equals(f.key().text()) || !same(e.value(), f.value())) {
                return false;
            }
        }
        return true;
    }

    private static boolean isEmpty(Tree tree) {
        return (tree instanceof Tree.Scalar scalar && scalar.isNothing())
                || (tree instanceof Tree.Entries entries && entries.entries().isEmpty())
                || (tree instanceof Tree.Items items && items.items().isEmpty());
    }

    /** An edit that is not possible, with the reason for the user. */
    static final class Cannot extends RuntimeException {
        private static final long serialVersionUID = 1;

        Cannot(String why) {
            super(why, null, false, false);
        }
    }
}
