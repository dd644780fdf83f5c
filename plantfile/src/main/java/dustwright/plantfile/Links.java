package dustwright.plantfile;

import dustwright.engine.tubing.Run;
import dustwright.plantfile.keys.Shape;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Names that must resolve, ids that must differ, and tubing that must lead somewhere. */
final class Links {
    private final Section top;
    private final SourceMap lines;
    private final Faults faults;
    private final Map<Shape.Target, Set<String>> known = new EnumMap<>(Shape.Target.class);

    Links(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
    }

    void check(List<Checker.Mention> mentions) {
        boolean differ = checkIdsDiffer();
        checkProducersDiffer();
        boolean resolve = true;
        for (Checker.Mention mention : mentions) {
            resolve &= checkResolves(mention);
        }
        for (Object point : top.named("held").keySet()) {
            resolve &= checkHeld((String) point);
        }
        if (resolve && differ && described()) {
            new Reach(top, lines, faults).check();
        }
    }

    /** Ids described, be their description right or not: a wrong one is reported once, not at every mention too. */
    private Set<String> ids(String key) {
        Set<String> ids = new LinkedHashSet<>(lines.keys(key));
        top.named(key).keySet().forEach(id -> ids.add((String) id));
        return ids;
    }

    private Set<String> ids(Shape.Target target) {
        return known.computeIfAbsent(target, this::collect);
    }

    private Set<String> collect(Shape.Target target) {
        return switch (target) {
            case DUST -> ids("dusts");
            case TUBE -> ids("tubes");
            case HOSE -> ids("hoses");
            case TOOL -> ids("tools");
            case POINT -> ids("points");
            case RUN -> ids("runs");
            case INLET -> ids("inlets");
            case ZONE ->
                top.section("usage").map(u -> u.named("zones").keySet()).orElse(Set.of()).stream()
                        .map(String.class::cast)
                        .collect(java.util.stream.Collectors.toCollection(LinkedHashSet::new));
            case NODE -> nodes();
            case START -> {
                Set<String> starts = nodes();
                starts.add(Run.STILL_AIR);
                yield starts;
            }
        };
    }

    private Set<String> nodes() {
        Set<String> nodes = ids("points");
        nodes.addAll(ids("inlets"));
        nodes.addAll(ids("stations"));
        return nodes;
    }

    private boolean checkResolves(Checker.Mention mention) {
        Set<String> ids = ids(mention.target());
        if (ids.contains(mention.id())) {
            return true;
        }
        if (mention.id().equals(Run.STILL_AIR)) {
            faults.add(
                    mention.span(),
                    mention.path(),
                    "\"air\" is where a run may start, not where it ends",
                    "a point held at the site's barometer, such as held: {OUT: {pressure: 101.325 kPa abs}}, for air that leaves");
            return false;
        }
        dangling(mention.span(), mention.path(), mention.id(), mention.target().words(), ids);
        return false;
    }

    private boolean checkHeld(String point) {
        Set<String> points = ids("points");
        if (points.contains(point)) {
            return true;
        }
        String path = "held." + point;
        dangling(lines.key(path).orElse(top.span()), path, point, "point", points);
        return false;
    }

    private void dangling(Span span, String path, String id, String what, Set<String> ids) {
        faults.add(new Fault(
                span.line(),
                span.column(),
                path,
                "there is no " + what + " called \"" + Names.shortened(id) + "\"",
                ids.isEmpty() ? "one that the file describes; it describes none" : "one of " + Names.oneOf(ids),
                faults.many() ? Optional.empty() : Names.nearest(id, ids).map(n -> "\"" + n + "\"")));
    }

    /** Points, inlets and stations are all ends of runs, so one id may stand for one of them only. */
    private boolean checkIdsDiffer() {
        boolean differ = true;
        Map<String, String> first = new LinkedHashMap<>();
        for (String key : List.of("points", "inlets", "stations")) {
            for (String id : ids(key)) {
                String path = key + "." + id;
                if (id.equals(Run.STILL_AIR)) {
                    faults.add(
                            lines.key(path).orElse(top.span()),
                            path,
                            "\"" + Run.STILL_AIR + "\" is the reserved name of the still air of the site",
                            "another id");
                }
                String earlier = first.putIfAbsent(id, path);
                if (earlier != null) {
                    differ = false;
                    faults.add(
                            lines.key(path).orElse(top.span()),
                            path,
                            "\"" + id + "\" is already the id at " + earlier
                                    + lines.key(earlier)
                                            .map(s -> " on line " + s.line())
                                            .orElse(""),
                            "ids that differ among points, inlets and stations");
                }
            }
        }
        return differ;
    }

    /** Whether every point, inlet and station could be read: only then is it known what hangs together. */
    private boolean described() {
        return List.of("points", "inlets", "stations").stream()
                .allMatch(key -> top.named(key).keySet().containsAll(lines.keys(key)));
    }

    /** Findings name a producer by its id alone. */
    private void checkProducersDiffer() {
        Map<String, String> first = new LinkedHashMap<>();
        List<Section> stations = new ArrayList<>(top.namedSections("stations"));
        for (Section station : stations) {
            for (Object id : station.named("producers").keySet()) {
                String path = station.path() + ".producers." + id;
                Optional<String> earlier = Optional.ofNullable(first.putIfAbsent((String) id, path));
                earlier.ifPresent(e -> faults.add(
                        lines.key(path).orElse(top.span()),
                        path,
                        "\"" + id + "\" is already the id of a producer at " + e,
                        "producer ids that differ in the whole plant"));
            }
        }
    }
}
