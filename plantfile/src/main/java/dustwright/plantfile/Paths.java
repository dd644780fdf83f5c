package dustwright.plantfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Paths through the tree: keys joined by dots, places in a list in brackets. Ids may hold dots themselves, so at each step the longest
 * key that fits is taken.
 */
final class Paths {
    private static final Pattern PLACE = Pattern.compile("\\[([0-9]{1,6})](.*)", Pattern.DOTALL);

    private Paths() {}

    /** What a path leads to; {@code entry} when it ends in a key. */
    record Found(Tree value, Optional<Tree.Entry> entry) {}

    /**
     * How far a path goes.
     *
     * @param deepest the last part of the tree it reaches
     * @param rest what is left of the path there; empty when it leads to the end
     */
    record Walk(Tree deepest, Optional<Tree.Entry> entry, String rest) {}

    static Optional<Found> find(Tree top, String path) {
        Walk walk = walk(top, path);
        return walk.rest().isEmpty() ? Optional.of(new Found(walk.deepest(), walk.entry())) : Optional.empty();
    }

    /** What holds the part a path leads to. */
    static Optional<Tree> parent(Tree top, String path) {
        return path.isEmpty()
                ? Optional.empty()
                : find(top, parentPath(top, path)).map(Found::value);
    }

    /** The path without its last step; the path must lead to something. */
    static String parentPath(Tree top, String path) {
        Tree tree = top;
        String rest = path;
        String last = path;
        while (!rest.isEmpty()) {
            last = rest;
            Step step = step(tree, rest).orElseThrow();
            tree = step.value();
            rest = step.rest();
        }
        String parent = path.substring(0, path.length() - last.length());
        return parent.endsWith(".") ? parent.substring(0, parent.length() - 1) : parent;
    }

    static Walk walk(Tree top, String path) {
        Tree tree = top;
        Optional<Tree.Entry> entry = Optional.empty();
        String rest = path;
        while (!rest.isEmpty()) {
            Optional<Step> step = step(tree, rest);
            if (step.isEmpty()) {
                return new Walk(tree, entry, rest);
            }
            tree = step.get().value();
            entry = step.get().entry();
            rest = step.get().rest();
        }
        return new Walk(tree, entry, "");
    }

    /** The tree with another value at a path that leads to something. */
    static Tree replace(Tree tree, String path, UnaryOperator<Tree> change) {
        if (path.isEmpty()) {
            return change.apply(tree);
        }
        Step step = step(tree, path).orElseThrow();
        Tree value = replace(step.value(), step.rest(), change);
        if (tree instanceof Tree.Entries entries) {
            List<Tree.Entry> changed = entries.entries().stream()
                    .map(e -> e.value() == step.value() ? new Tree.Entry(e.key(), value) : e)
                    .toList();
            return new Tree.Entries(changed, entries.flow(), entries.span());
        }
        Tree.Items items = (Tree.Items) tree;
        List<Tree> changed = new ArrayList<>(items.items());
        changed.replaceAll(t -> t == step.value() ? value : t);
        return new Tree.Items(List.copyOf(changed), items.flow(), items.span());
    }

    private record Step(Tree value, Optional<Tree.Entry> entry, String rest) {}

    private static Optional<Step> step(Tree tree, String rest) {
        if (tree instanceof Tree.Entries entries) {
            return entries.entries().stream()
                    .filter(e -> leadsOn(rest, e.key().text()))
                    .max(Comparator.comparingInt(e -> e.key().text().length()))
                    .map(e -> new Step(
                            e.value(),
                            Optional.of(e),
                            withoutDot(rest.substring(e.key().text().length()))));
        }
        Matcher place = PLACE.matcher(rest);
        if (tree instanceof Tree.Items items && place.matches()) {
            int index = Integer.parseInt(place.group(1));
            return index < items.items().size()
                    ? Optional.of(new Step(items.items().get(index), Optional.empty(), withoutDot(place.group(2))))
                    : Optional.empty();
        }
        return Optional.empty();
    }

    private static boolean leadsOn(String rest, String key) {
        return !key.isEmpty()
                && rest.startsWith(key)
                && (rest.length() == key.length()
                        || ((rest.charAt(key.length()) == '.' || rest.charAt(key.length()) == '[')
                                && rest.length() > key.length() + 1));
    }

    private static String withoutDot(String rest) {
        return rest.startsWith(".") ? rest.substring(1) : rest;
    }
}
