package dustwright.plantfile;

import dustwright.engine.finding.Place;
import dustwright.engine.plant.ReasonedOverride;
import dustwright.plantfile.keys.PlantKeys;
import dustwright.plantfile.keys.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the values of {@code overrides} in the place of those they replace, before anything is checked. */
final class Overrides {
    private final Faults faults;
    private final List<ReasonedOverride> applied = new ArrayList<>();
    private final List<String> paths = new ArrayList<>();

    Overrides(Faults faults) {
        this.faults = faults;
    }

    List<ReasonedOverride> applied() {
        return applied;
    }

    Tree.Entries apply(Tree.Entries top) {
        Tree.Entries changed = top;
        if (top.entry("overrides").map(Tree.Entry::value).orElse(null) instanceof Tree.Items items) {
            for (int i = 0; i < items.items().size(); i++) {
                if (items.items().get(i) instanceof Tree.Entries override) {
                    changed = apply(changed, override, "overrides[" + i + "].set");
                }
            }
        }
        return changed;
    }

    /** What is replaced must be right as well: a report shows it beside what stands in its place. */
    void checkReplaced(Tree.Entries written) {
        Faults before = new Faults();
        new Checker(before, new Taken(), Optional::empty).group(written, PlantKeys.TOP, "", "");
        before.inOrderOfTheFile().stream()
                .filter(fault -> paths.stream()
                        .anyMatch(path -> fault.path().equals(path)
                                || fault.path().startsWith(path + ".")
                                || fault.path().startsWith(path + "[")))
                .forEach(faults::add);
    }

    private Tree.Entries apply(Tree.Entries top, Tree.Entries override, String at) {
        Optional<Tree.Scalar> set = scalar(override, "set");
        Optional<Tree> to = override.entry("to").map(Tree.Entry::value);
        if (set.isEmpty() || to.isEmpty()) {
            return top;
        }
        String path = set.get().text();
        Paths.Walk walk = Paths.walk(top, path);
        boolean newKey = walk.deepest() instanceof Tree.Entries
                && walk.rest().matches("[^.\\[\\]]+")
                && walk.entry().isPresent();
        boolean reserved = path.isEmpty() || path.startsWith("overrides") || path.startsWith("dustwright");
        if (reserved || (!walk.rest().isEmpty() && !newKey)) {
            faults.add(wrongPath(set.get(), walk, at));
            return top;
        }
        paths.add(path);
        applied.add(new ReasonedOverride(
                place(path),
                path + " is " + shown(to.get()) + (newKey ? "" : " instead of " + shown(walk.deepest())),
                scalar(override, "reason").map(Tree.Scalar::text).orElse(""),
                scalar(override, "by").map(Tree.Scalar::text).orElse("")));
        return (Tree.Entries)
                (newKey
                        ? Paths.replace(
                                top,
                                path.substring(0, path.length() - walk.rest().length() - 1),
                                parent -> with(
                                        (Tree.Entries) parent,
                                        new Tree.Scalar(
                                                walk.rest(), true, set.get().span()),
                                        to.get()))
                        : Paths.replace(top, path, old -> to.get()));
    }

    private static Tree with(Tree.Entries parent, Tree.Scalar key, Tree value) {
        List<Tree.Entry> entries = new ArrayList<>(parent.entries());
        entries.add(new Tree.Entry(key, value));
        return new Tree.Entries(List.copyOf(entries), parent.flow(), parent.span());
    }

    private static Fault wrongPath(Tree.Scalar set, Paths.Walk walk, String at) {
        String step = walk.rest().isEmpty() ? set.text() : walk.rest().split("[.\\[]", 2)[0];
        List<String> names = walk.deepest() instanceof Tree.Entries entries
                ? entries.entries().stream().map(e -> e.key().text()).toList()
                : List.of();
        String reached =
                set.text().substring(0, set.text().length() - walk.rest().length());
        return new Fault(
                set.span().line(),
                set.span().column(),
                at,
                walk.rest().isEmpty()
                        ? "\"" + Names.shortened(step) + "\" cannot be overridden"
                        : "nothing in this file is called \"" + Names.shortened(step) + "\"",
                names.isEmpty() ? "a path such as runs.M1.length" : "one of " + Names.oneOf(names),
                Names.nearest(step, names).map(n -> "\"" + reached + n + "\""));
    }

    private static Optional<Tree.Scalar> scalar(Tree.Entries override, String key) {
        return override.entry(key)
                .map(Tree.Entry::value)
                .filter(Tree.Scalar.class::isInstance)
                .map(Tree.Scalar.class::cast);
    }

    private static String shown(Tree tree) {
        return tree instanceof Tree.Scalar scalar ? Names.shortened(scalar.text()) : tree.words();
    }

    /** The part of the plant a path is about, from the declared keys. */
    private static Place place(String path) {
        for (var key : PlantKeys.TOP.keys()) {
            if (path.startsWith(key.name() + ".")) {
                String rest = path.substring(key.name().length() + 1);
                if (key.shape() instanceof Shape.Named named) {
                    int dot = rest.indexOf('.');
                    return new Place(kind(named.entry()), dot < 0 ? rest : rest.substring(0, dot));
                }
                return new Place(kind(key.shape()), "");
            }
        }
        return new Place(Place.Kind.PLANT, "");
    }

    private static Place.Kind kind(Shape shape) {
        return shape instanceof Shape.Keys keys ? keys.group().place() : Place.Kind.POINT;
    }
}
