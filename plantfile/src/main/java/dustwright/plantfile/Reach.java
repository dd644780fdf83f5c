package dustwright.plantfile;

import dustwright.engine.tubing.Run;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Whether the tubing hangs together: every end is something, every inlet is connected, every run leads to what draws air. */
final class Reach {
    private final Section top;
    private final SourceMap lines;
    private final Faults faults;
    private final Map<String, List<Edge>> edges = new LinkedHashMap<>();

    private record Edge(Section run, String from, String to) {
        String other(String node) {
            return from.equals(node) ? to : from;
        }
    }

    Reach(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
    }

    void check() {
        for (String key : List.of("points", "inlets", "stations")) {
            top.named(key).keySet().forEach(id -> edges.put((String) id, new ArrayList<>()));
        }
        for (Section run : top.namedSections("runs")) {
            Optional<String> from = run.find("from", String.class);
            Optional<String> to = run.find("to", String.class);
            if (from.isPresent() && to.isPresent()) {
                join(new Edge(run, from.get(), to.get()));
            }
        }
        checkEnds();
        top.namedSections("stations").forEach(this::checkMains);
        checkGroups();
        edges.values().stream().flatMap(List::stream).map(Edge::run).distinct().forEach(this::checkWye);
        checkCleanRuns();
    }

    /** What an inlet picks up goes through every run drawn on from there, whatever is said of the run. */
    private void checkCleanRuns() {
        if (top.namedSections("runs").stream().allMatch(Reach::mayPassDust)) {
            return;
        }
        Map<Section, String> through = new LinkedHashMap<>();
        for (Section inlet : top.namedSections("inlets")) {
            if (inlet.has("dust")) {
                drawnOnFrom(inlet.id()).forEach(run -> through.putIfAbsent(run, inlet.id()));
            }
        }
        through.forEach((run, inlet) -> {
            if (!mayPassDust(run)) {
                String path = run.path() + ".dust";
                faults.add(
                        lines.value(path).orElse(run.span()),
                        path,
                        "run " + run.id() + " is said to pass no dust, and what inlet " + inlet
                                + " picks up comes through it",
                        "no \"dust: no\" here; it belongs to runs that lead from no inlet with a dust");
            }
        });
    }

    private static boolean mayPassDust(Section run) {
        return run.find("dust", Boolean.class).orElse(true);
    }

    private Set<Section> drawnOnFrom(String start) {
        Set<Section> runs = new LinkedHashSet<>();
        Set<String> seen = new LinkedHashSet<>();
        Deque<String> next = new ArrayDeque<>(List.of(start));
        while (!next.isEmpty()) {
            String node = next.remove();
            if (seen.add(node)) {
                at(node).stream().filter(edge -> edge.from().equals(node)).forEach(edge -> {
                    runs.add(edge.run());
                    next.add(edge.to());
                });
            }
        }
        return runs;
    }

    private void join(Edge edge) {
        if (edge.from().equals(edge.to())) {
            faults.add(
                    edge.run().span(),
                    edge.run().path(),
                    "run " + edge.run().id() + " ends where it begins, at " + edge.from(),
                    "two different ends");
            return;
        }
        at(edge.to()).add(edge);
        if (!edge.from().equals(Run.STILL_AIR)) {
            at(edge.from()).add(edge);
        }
    }

    private List<Edge> at(String node) {
        return edges.computeIfAbsent(node, k -> new ArrayList<>());
    }

    private void checkEnds() {
        Set<String> bleeds = new LinkedHashSet<>();
        top.namedSections("bleeds").forEach(b -> b.find("at", String.class).ifPresent(bleeds::add));
        for (Object id : top.named("points").keySet()) {
            String point = (String) id;
            boolean deadEnd = at(point).size() == 1
                    && !bleeds.contains(point)
                    && !top.named("held").containsKey(point);
            if (at(point).isEmpty()) {
                fault("points." + point, "no run touches point " + point, "a run from or to it, or no such point");
            } else if (deadEnd) {
                fault(
                        "points." + point,
                        "run " + at(point).get(0).run().id() + " leads nowhere: it ends at " + point
                                + ", which is no inlet, bleed, station or held point",
                        "a further run, an inlet, a bleed or a held pressure there; a capped end is held at \"supply: 0 kg/s\"");
            }
        }
        for (String key : List.of("inlets", "stations")) {
            for (Object id : top.named(key).keySet()) {
                if (at((String) id).isEmpty()) {
                    fault(
                            key + "." + id,
                            "no run touches " + (key.equals("inlets") ? "inlet " : "station ") + id,
                            "a run that connects it");
                }
            }
        }
    }

    private void checkGroups() {
        Set<String> seen = new LinkedHashSet<>();
        for (String start : edges.keySet()) {
            if (!at(start).isEmpty() && !seen.contains(start)) {
                Set<String> group = group(start);
                seen.addAll(group);
                if (!isDriven(group)) {
                    Section run = at(start).get(0).run();
                    fault(
                            run.path(),
                            "run " + run.id() + " and what hangs together with it (" + Names.oneOf(group)
                                    + ") leads nowhere: there is no station and no held pressure",
                            "a run on to a station, or a held pressure");
                }
            }
        }
    }

    /** A wye says how a run enters another, so there must be another that goes on from there. */
    private void checkWye(Section run) {
        if (!run.has("wye")) {
            return;
        }
        String to = run.get("to", String.class);
        boolean goesOn = at(to).stream().anyMatch(e -> e.from().equals(to));
        boolean joins = at(to).size() + (top.named("inlets").containsKey(to) ? 1 : 0) > 2;
        if (!goesOn || !joins) {
            String path = run.path() + ".wye";
            faults.add(
                    lines.value(path).orElse(run.span()),
                    path,
                    goesOn
                            ? "run " + run.id() + " enters no other run at " + to + ": only one goes on from there"
                            : "no run goes on from " + to + ", where run " + run.id() + " ends",
                    "\"wye\" on the run that enters from the side, drawn toward the junction");
        }
    }

    /** A device is counted for a main of the station it is stated at, so that main must end there. */
    private void checkMains(Section station) {
        station.section("receiver")
                .flatMap(receiver -> receiver.section("explosion"))
                .ifPresent(explosion -> {
                    List<String> mains = at(station.id()).stream()
                            .map(edge -> edge.run().id())
                            .toList();
                    List<?> stated = explosion.items("isolated mains");
                    for (int n = 0; n < stated.size(); n++) {
                        if (!mains.contains((String) stated.get(n))) {
                            String path = explosion.path() + ".isolated mains";
                            faults.add(
                                    lines.value(path + "[" + n + "]")
                                            .or(() -> lines.value(path))
                                            .orElse(explosion.span()),
                                    path,
                                    "run " + stated.get(n) + " does not end at station " + station.id(),
                                    "one of the runs that end there: " + Names.oneOf(mains));
                        }
                    }
                });
    }

    private Set<String> group(String start) {
        Set<String> group = new LinkedHashSet<>();
        Deque<String> next = new ArrayDeque<>(List.of(start));
        while (!next.isEmpty()) {
            String node = next.remove();
            if (group.add(node)) {
                at(node).forEach(e -> {
                    if (!e.from().equals(Run.STILL_AIR)) {
                        next.add(e.other(node));
                    }
                });
            }
        }
        return group;
    }

    /** Something draws air, and some pressure is known: a station, a held pressure, or a held flow against the still air of the site. */
    private boolean isDriven(Set<String> group) {
        boolean bleeding = top.namedSections("bleeds").stream()
                .anyMatch(b -> b.find("open", Boolean.class).orElse(false)
                        && b.find("at", String.class).filter(group::contains).isPresent());
        boolean open = bleeding
                || group.stream()
                        .anyMatch(n -> top.named("inlets").containsKey(n)
                                || at(n).stream().anyMatch(e -> e.from().equals(Run.STILL_AIR)));
        return group.stream().anyMatch(n -> {
            if (top.named("stations").containsKey(n)) {
                return true;
            }
            // a pressure that was refused is reported where it stands, not as a missing one too
            boolean pressure = lines.key("held." + n + ".pressure").isPresent()
                    || lines.key("held." + n + ".vacuum").isPresent();
            return top.named("held").containsKey(n) && (pressure || open);
        });
    }

    private void fault(String path, String message, String expected) {
        faults.add(lines.key(path).orElse(top.span()), path, message, expected);
    }
}
