package dustwright.engine.rehearsal;

import dustwright.engine.interlock.Controller;
import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.rehearsal.Played.Amount;
import dustwright.engine.rehearsal.Played.Lane;
import dustwright.engine.rehearsal.Played.Moment;
import dustwright.engine.rehearsal.Played.Point;
import dustwright.engine.rehearsal.Played.Span;
import dustwright.engine.rehearsal.Played.Trace;
import dustwright.engine.rehearsal.Played.Verdict;
import dustwright.engine.rehearsal.Played.Who;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Keeps what a rehearsal shows: moments, lanes and traces with their corners only. */
final class Recorder {
    private final Sequence sequence;
    private final Script script;
    private final Controller controller;
    private final List<Moment> moments = new ArrayList<>();
    private final Map<String, Boolean> shown = new HashMap<>();
    private final Map<String, Long> since = new LinkedHashMap<>();
    private final Map<String, List<Span>> spans = new LinkedHashMap<>();
    private final Map<Amount, List<Point>> traces = new EnumMap<>(Amount.class);
    private final boolean[] sometime;

    Recorder(Sequence sequence, Script script, Controller controller) {
        this.sequence = sequence;
        this.script = script;
        this.controller = controller;
        sometime = new boolean[script.must().size()];
        Set<String> known = sequence.names().collect(Collectors.toSet());
        script.must()
                .forEach(m -> m.condition().names().stream()
                        .filter(n -> !known.contains(n))
                        .findFirst()
                        .ifPresent(unknown -> {
                            throw new IllegalArgumentException(
                                    "the script asks for \"" + unknown + "\", which the sequence does not have");
                        }));
        List.of(Amount.values()).forEach(a -> traces.put(a, new ArrayList<>()));
    }

    void happened(long at_ms, Who who, String words) {
        moments.add(new Moment(at_ms, who, words));
    }

    List<Moment> moments() {
        return moments;
    }

    /** What the controller shows after a scan that changed something. */
    void scanned(long at_ms) {
        sequence.steps().forEach(s -> lane(at_ms, "in_" + s.name(), Who.CONTROL, "step " + spaced(s.name()), ""));
        sequence.outputs()
                .forEach(
                        o -> lane(at_ms, o.name(), Who.CONTROL, o.words() + ": " + o.on(), o.words() + ": " + o.off()));
        sequence.causes()
                .forEach(c -> changed(
                        at_ms, c.name(), Who.MESSAGE, c.message() + " — " + c.response(), c.message() + ": gone"));
        sequence.lamps().forEach(l -> lane(at_ms, l.name(), Who.LAMP, l.words() + " lit", l.words() + " dark"));
        for (int m = 0; m < sometime.length; m++) {
            sometime[m] |= truth(script.must().get(m).condition());
        }
    }

    private boolean changed(long at_ms, String name, Who who, String on, String off) {
        boolean is = controller.is(name);
        Boolean was = shown.put(name, is);
        boolean differs = was == null ? is : was != is;
        if (differs && !(is ? on : off).isEmpty()) {
            happened(at_ms, who, is ? on : off);
        }
        return differs;
    }

    private void lane(long at_ms, String name, Who who, String on, String off) {
        if (changed(at_ms, name, who, on, off)) {
            if (controller.is(name)) {
                since.put(name, at_ms);
            } else {
                end(name, at_ms);
            }
        }
    }

    private void end(String name, long at_ms) {
        Long from = since.remove(name);
        if (from != null) {
            spans.computeIfAbsent(name, n -> new ArrayList<>()).add(new Span(from, at_ms));
        }
    }

    /** Without power nothing is lit and nothing runs. */
    void dark(long at_ms) {
        List.copyOf(since.keySet()).forEach(n -> end(n, at_ms));
        shown.clear();
    }

    void amounts(long at_ms, StationPhysics plant) {
        Operating now = plant.operating();
        point(Amount.RECEIVER, at_ms, plant.receiver_kg);
        point(Amount.CONTAINER, at_ms, plant.container_kg);
        point(Amount.VACUUM, at_ms, now.vacuum_Pa());
        point(Amount.FILTER, at_ms, now.drop_Pa());
        point(Amount.CURRENT, at_ms, now.total_A());
    }

    /** A point between two others on one straight line is left out. */
    private void point(Amount amount, long at_ms, double value) {
        List<Point> points = traces.computeIfAbsent(amount, a -> new ArrayList<>());
        int n = points.size();
        if (n >= 2 && onOneLine(points.get(n - 2), points.get(n - 1), at_ms, value)) {
            points.remove(n - 1);
        }
        points.add(new Point(at_ms, value));
    }

    private static boolean onOneLine(Point a, Point b, long at_ms, double value) {
        if (a.at_ms() == b.at_ms() || at_ms == b.at_ms()) {
            return a.value() == b.value() && b.value() == value;
        }
        double expected = b.value() + (b.value() - a.value()) / (b.at_ms() - a.at_ms()) * (at_ms - b.at_ms());
        return Math.abs(expected - value) <= 1e-6 * (1 + Math.abs(value));
    }

    private boolean truth(Expr condition) {
        if (condition instanceof Expr.Constant constant) {
            return constant.value();
        }
        if (condition instanceof Expr.Name name) {
            return controller.is(name.name());
        }
        if (condition instanceof Expr.Not not) {
            return !truth(not.of());
        }
        boolean all = condition instanceof Expr.And;
        return all
                ? condition.terms().stream().allMatch(this::truth)
                : condition.terms().stream().anyMatch(this::truth);
    }

    /** All lanes up to now; what is on stays on. */
    List<Lane> lanes(long now_ms) {
        List<Lane> lanes = new ArrayList<>();
        sequence.steps().forEach(s -> lanes.add(lane(Played.Kind.STEP, "in_" + s.name(), spaced(s.name()), now_ms)));
        sequence.outputs()
                .forEach(o -> lanes.add(lane(Played.Kind.OUTPUT, o.name(), o.words() + " " + o.on(), now_ms)));
        sequence.lamps().forEach(l -> lanes.add(lane(Played.Kind.LAMP, l.name(), l.words(), now_ms)));
        return lanes;
    }

    private Lane lane(Played.Kind kind, String name, String words, long now_ms) {
        List<Span> all = new ArrayList<>(spans.getOrDefault(name, List.of()));
        Long from = since.get(name);
        if (from != null) {
            all.add(new Span(from, now_ms));
        }
        return new Lane(kind, name, words, all);
    }

    List<Trace> traces(StationPhysics plant) {
        return traces.entrySet().stream()
                .filter(t -> t.getValue().stream().anyMatch(p -> p.value() != 0))
                .map(t -> new Trace(t.getKey(), full(t.getKey(), plant), t.getValue()))
                .toList();
    }

    private static double full(Amount amount, StationPhysics plant) {
        return switch (amount) {
            case RECEIVER -> plant.high_kg();
            case CONTAINER -> plant.full_kg();
            case VACUUM, FILTER, CURRENT -> 0;
        };
    }

    List<Verdict> verdicts() {
        List<Verdict> verdicts = new ArrayList<>();
        for (int m = 0; m < sometime.length; m++) {
            Script.Must must = script.must().get(m);
            verdicts.add(new Verdict(
                    must,
                    switch (must.when()) {
                        case SOMETIME -> sometime[m];
                        case NEVER -> !sometime[m];
                        case AT_THE_END -> truth(must.condition());
                    }));
        }
        return verdicts;
    }

    static String spaced(String name) {
        return name.replace('_', ' ');
    }
}
