package dustwright.plantfile;

import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
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

/**
 * The parts of a plant file by their paths, written or not: what stands at a path, and what its keys say may stand there. The text is
 * read once.
 */
public final class PlantParts {
    private static final Pattern PLACE = Pattern.compile("\\[([0-9]{1,6})](.*)", Pattern.DOTALL);
    static final String KIND = "kind";

    private final Tree top;

    private PlantParts(Tree top) {
        this.top = top;
    }

    /** Empty where the text can not be read as keys at all. */
    public static Optional<PlantParts> of(String text) {
        return TreeReader.read(text, new Faults()).map(PlantParts::new);
    }

    /** The keys, ids and places a path leads through; empty where no plant file has such a part. */
    public List<String> steps(String path) {
        return at(path).map(Spot::steps).orElse(List.of());
    }

    /** Other parts of the same sort that are written, whose values may be taken over: paths, in the order of the file. */
    public List<String> alike(String path) {
        Map<String, Shape> all = new LinkedHashMap<>();
        walk(whole(), "", all);
        return at(path).map(spot -> all.entrySet().stream()
                        .filter(e -> e.getValue() == spot.shape() && !e.getKey().equals(path))
                        .map(Map.Entry::getKey)
                        .toList())
                .orElse(List.of());
    }

    /** Writes a value at a path that is not written yet in a text, with what must stand around it. */
    public static PlantEditor.Edit add(String text, String path, PlantEditor.Value value) {
        Optional<Spot> spot = of(text).flatMap(parts -> parts.at(path));
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
    record Spot(Shape shape, Optional<Tree> tree, String key, List<String> steps, int there) {
        Spot to(Shape next, Optional<Tree> value, String step) {
            List<String> more = new ArrayList<>(steps);
            more.add(step);
            return new Spot(next, value, step, List.copyOf(more), value.isPresent() ? there + 1 : there);
        }
    }

    /** The whole file. */
    Tree top() {
        return top;
    }

    /** What stands, or would stand, at a path; empty where no plant file has such a part. */
    Optional<Spot> at(String path) {
        return find(whole(), path);
    }

    private Spot whole() {
        return new Spot(new Shape.Keys(PlantKeys.TOP), Optional.of(top), "", List.of(), 0);
    }

    private static Optional<Spot> find(Spot from, String rest) {
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

    static List<Tree.Entry> entries(Optional<Tree> tree) {
        return tree.orElse(null) instanceof Tree.Entries entries ? entries.entries() : List.of();
    }

    static Optional<Tree> entry(Optional<Tree> tree, String key) {
        return entries(tree).stream()
                .filter(e -> e.key().text().equals(key))
                .map(Tree.Entry::value)
                .findFirst();
    }

    static List<Tree> items(Optional<Tree> tree) {
        return tree.orElse(null) instanceof Tree.Items items ? items.items() : List.of();
    }

    static Optional<Tree> item(Optional<Tree> tree, int n) {
        return items(tree).stream().skip(n).findFirst();
    }

    static Group group(Shape.Kinds kinds, Optional<Tree> tree, String asked) {
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

    static List<String> words(Group group) {
        return group.key(KIND)
                .map(Key::shape)
                .filter(Shape.Word.class::isInstance)
                .map(shape -> ((Shape.Word) shape).words())
                .orElse(List.of());
    }

    private static void walk(Spot spot, String path, Map<String, Shape> all) {
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
