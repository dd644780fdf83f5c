package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The walk of a shop test carried out with real times, by somebody who does only what its lines say, on a controller with a healthy plant. What the paper tells to see is what is seen here: contacts that a line
 * makes bad stay bad until its end, and times that end meanwhile end in that line.
 */
final class ShopTestByTheWatch {
    /** A button is down so long [scans]. */
    private static final int PRESS = 3;

    /** From the end of what a line asks for until it is read [scans]. */
    private static final int MOMENT = 10;

    private static final double MARGIN_s = 10;

    /** Contacts have followed what is driven [ms]. */
    private static final long FOLLOWED_ms = 5000;

    /** So many lines may have to follow each other at once. */
    private static final int HURRIED = 6;

    private final Sequence sequence;
    private final Controller controller;
    private final HealthyPlant plant;
    private final Map<String, Expr> goals;
    private final Set<String> asked;
    private final Set<String> reached = new HashSet<>();
    private final Set<String> levels = new HashSet<>();
    private final Map<String, Boolean> values = new HashMap<>();
    private final Map<String, Boolean> lost = new HashMap<>();
    private final List<ShopTest.Exit> taken = new ArrayList<>();
    private boolean first = true;
    private boolean cutShort;
    private boolean changed = true;
    private boolean badUntilNow;

    /** At a panel before power comes on; what has to be brought about is known by name. */
    ShopTestByTheWatch(Sequence sequence, Map<String, Expr> goals) {
        this.sequence = sequence;
        this.goals = goals;
        asked = goals.values().stream().flatMap(g -> g.names().stream()).collect(Collectors.toSet());
        controller = new Controller(sequence);
        plant = new HealthyPlant(sequence);
    }

    private ShopTestByTheWatch(ShopTestByTheWatch other) {
        sequence = other.sequence;
        goals = other.goals;
        asked = other.asked;
        controller = other.controller.copy();
        reached.addAll(other.reached);
        levels.addAll(other.levels);
        values.putAll(other.values);
        lost.putAll(other.lost);
        first = other.first;
        cutShort = other.cutShort;
        changed = other.changed;
        badUntilNow = other.badUntilNow;
        plant = new HealthyPlant(other.plant);
    }

    /**
     * The lines as they go by the watch.
     *
     * @param missed names of what was not brought about
     */
    record Played(List<ShopTest.Act> acts, Set<String> missed) {}

    /** A line that was planned, as it went, with the panel before and after it; without a pause the next follows at once. */
    private record Line(
            int planned, ShopTestByTheWatch before, ShopTest.Act went, ShopTestByTheWatch after, boolean pause) {}

    /**
     * Plays planned lines. One whose time is out already, or whose step is there already, is left out; those that would come too late after the pauses in which the lines before are read follow them at once.
     */
    static Played play(Sequence sequence, Map<String, Expr> goals, List<ShopTest.Act> planned) {
        ShopTestByTheWatch panel = new ShopTestByTheWatch(sequence, goals);
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < planned.size(); at++) {
            if (panel.isSoAlready(planned.get(at))) {
                continue;
            }
            Line line = panel.line(planned, at, true);
            for (int hurried = 1; !isAs(planned, line) && hurried <= Math.min(HURRIED, lines.size()); hurried++) {
                int from = lines.size() - hurried;
                List<Line> again =
                        lines.get(from).before().hurry(planned, lines.get(from).planned(), at);
                if (!again.isEmpty()) {
                    lines.subList(from, lines.size()).clear();
                    lines.addAll(again.subList(0, again.size() - 1));
                    line = again.get(again.size() - 1);
                }
            }
            lines.add(line);
            panel = line.after();
        }
        Set<String> missed = new LinkedHashSet<>(goals.keySet());
        missed.removeAll(panel.reached);
        return new Played(joined(lines), missed);
    }

    private static boolean isAs(List<ShopTest.Act> planned, Line line) {
        ShopTest.Act plan = planned.get(line.planned());
        return line.went().scan().step().equals(plan.scan().step())
                && line.went().takes().containsAll(plan.takes());
    }

    /** The lines of the plan without a pause but after the last; none when one of them does not go as planned. */
    private List<Line> hurry(List<ShopTest.Act> planned, int from, int last) {
        List<Line> lines = new ArrayList<>();
        ShopTestByTheWatch panel = this;
        for (int at = from; at <= last; at++) {
            if (!panel.isSoAlready(planned.get(at))) {
                Line line = panel.line(planned, at, at == last);
                if (!isAs(planned, line)) {
                    return List.of();
                }
                lines.add(line);
                panel = line.after();
            }
        }
        return lines;
    }

    private Line line(List<ShopTest.Act> planned, int at, boolean pause) {
        ShopTestByTheWatch after = new ShopTestByTheWatch(this);
        return new Line(at, this, after.carryOut(planned.get(at), pause), after, pause);
    }

    /** Lines that follow each other at once are one. */
    private static List<ShopTest.Act> joined(List<Line> lines) {
        List<ShopTest.Act> acts = new ArrayList<>();
        List<Line> together = new ArrayList<>();
        for (Line line : lines) {
            together.add(line);
            if (line.pause()) {
                ShopTestByTheWatch before = together.get(0).before();
                acts.add(new ShopTest.Act(
                        new Story.Scan(
                                words(together),
                                line.went().scan().step(),
                                changes(before.shown(), line.after().shown())),
                        together.stream()
                                .flatMap(l -> l.went().takes().stream())
                                .toList(),
                        together.stream()
                                .flatMap(l -> l.went().doings().stream())
                                .toList()));
                together.clear();
            }
        }
        return acts;
    }

    private static List<String> words(List<Line> together) {
        List<String> words = new ArrayList<>();
        for (Line line : together) {
            List<String> happens = line.went().scan().happens();
            for (int h = 0; h < happens.size(); h++) {
                words.add((h == 0 && !words.isEmpty() ? ShopTest.AT_ONCE : "") + happens.get(h));
            }
        }
        return words;
    }

    private static List<String> changes(Map<String, String> before, Map<String, String> after) {
        List<String> changes = new ArrayList<>();
        after.forEach((sign, word) -> {
            if (!word.equals(before.get(sign))) {
                changes.add(sign + ": " + word);
            }
        });
        return changes;
    }

    /** One line as it stands on paper, with what is seen at its end. */
    Story.Scan tick(ShopTest.Act act) {
        Map<String, String> before = shown();
        int last = act.doings().size() - 1;
        for (int d = 0; d <= last; d++) {
            carryOut(act.doings().get(d), d == last);
        }
        return new Story.Scan(act.scan().happens(), controller.step(), changes(before, shown()));
    }

    /** What is read at a panel: outputs, lamps, the message line. */
    private Map<String, String> shown() {
        Map<String, String> shown = new LinkedHashMap<>();
        sequence.outputs().forEach(o -> shown.put(o.words(), controller.is(o.name()) ? o.on() : o.off()));
        sequence.lamps().forEach(l -> shown.put("lamp " + l.words(), controller.is(l.name()) ? "on" : "off"));
        sequence.causes()
                .forEach(c -> shown.put("message " + c.message(), controller.is(c.name()) ? "appears" : "goes"));
        return shown;
    }

    private boolean isSoAlready(ShopTest.Act act) {
        ShopTest.Doing doing = act.doings().get(0);
        return !first
                && !badUntilNow
                && !doing.isPressing()
                && doing.moves().stream().allMatch(m -> m.startsWith("out_") || m.equals("flip_start"))
                && isThere(doing);
    }

    /** Times that are named; where nothing is done at all, that contacts follow and lead on. */
    private boolean isWaitedFor(ShopTest.Doing doing, long passed_ms) {
        boolean timed = doing.moves().stream().anyMatch(m -> m.startsWith("out_"));
        return timed
                ? doing.moves().stream().anyMatch(m -> m.startsWith("out_") && !isOut(m.substring(4)))
                : doing.happens().isEmpty() && !controller.step().equals(doing.step()) && passed_ms < FOLLOWED_ms;
    }

    /** In the step, with every time out. */
    private boolean isThere(ShopTest.Doing doing) {
        return controller.step().equals(doing.step())
                && doing.moves().stream().allMatch(m -> !m.startsWith("out_") || isOut(m.substring(4)));
    }

    private boolean isOut(String time) {
        return controller.is(time) || (time.startsWith("time_in_") && !controller.is(time.substring(5)));
    }

    private ShopTest.Act carryOut(ShopTest.Act act, boolean pause) {
        ShopTest.Doing doing = act.doings().get(0);
        String before = controller.step();
        taken.clear();
        carryOut(doing, pause);
        List<String> told = doing.happens().isEmpty() && !controller.step().equals(before)
                ? List.of("wait for " + controller.step().replace('_', ' '))
                : doing.happens();
        return new ShopTest.Act(new Story.Scan(told, controller.step(), List.of()), taken, List.of(doing));
    }

    private void carryOut(ShopTest.Doing doing, boolean pause) {
        List<String> moves = doing.moves();
        changed = true;
        moves.stream()
                .filter(m -> m.startsWith("flip_t_"))
                .map(m -> m.substring(5))
                .forEach(l -> {
                    if (!levels.remove(l)) {
                        levels.add(l);
                    }
                });
        if (moves.contains("dip")) {
            sequence.outputs().forEach(o -> lost.put(o.name(), controller.is(o.name())));
            controller.powerLost();
            first = true;
        }
        String before = controller.step();
        Predicate<String> down = b -> moves.contains("hold_" + b);
        double filter_s = sequence.inputs().stream()
                .filter(i -> moves.contains("bad_" + i.name()))
                .flatMap(i -> i.filter().stream())
                .mapToDouble(f -> sequence.timer(f).time_s())
                .max()
                .orElse(0);
        for (long waited_ms = 0; waited_ms <= 1000 * filter_s; waited_ms += HealthyPlant.SCAN_ms) {
            scan(moves, down);
        }
        for (int scan = 0; scan < PRESS && doing.isPressing(); scan++) {
            scan(moves, b -> down.test(b) || moves.contains("push_" + b) || moves.contains("flip_" + b));
        }
        double atMost_s = MARGIN_s
                + sequence.timers().stream()
                        .mapToDouble(Sequence.Timer::time_s)
                        .max()
                        .orElse(0);
        long passed_ms = 0;
        while (controller.step().equals(before) && isWaitedFor(doing, passed_ms) && passed_ms < 1000 * atMost_s) {
            long next_ms = plant.next_ms(controller);
            scan(moves, down, next_ms);
            passed_ms += next_ms;
        }
        for (int scan = 0; scan < MOMENT && pause; scan++) {
            scan(moves, down);
        }
        badUntilNow = moves.stream().anyMatch(m -> m.startsWith("bad_") || m.startsWith("hold_"));
    }

    private void scan(List<String> moves, Predicate<String> down) {
        scan(moves, down, HealthyPlant.SCAN_ms);
    }

    private void scan(List<String> moves, Predicate<String> down, long sinceLast_ms) {
        asked.stream()
                .filter(n -> n.startsWith("was_") || n.startsWith("told_"))
                .forEach(n -> values.put(n, before(n)));
        values.put("dip_now", first);
        plant.follow(controller, n -> moves.contains("bad_" + n), levels::contains);
        sequence.buttons().forEach(b -> controller.press(b.name(), down.test(b.name())));
        controller.scan(sinceLast_ms);
        if (changed || controller.changed()) {
            taken.addAll(exits());
            asked.stream().filter(controller::has).forEach(n -> values.put(n, controller.is(n)));
            values.put(ShopTest.CUT_SHORT, cutShort);
            goals.forEach((name, goal) -> {
                if (Story.truth(goal, values)) {
                    reached.add(name);
                }
            });
            cutShort = isOn("in_dust_fall") && (cutShort || wasCutShort());
        }
        changed = controller.changed();
        first = false;
    }

    private boolean wasCutShort() {
        return taken.stream()
                .anyMatch(x -> x.from().equals("pulsing") && x.to().equals("dust_fall") && !controller.is("pulsed"));
    }

    private List<ShopTest.Exit> exits() {
        List<ShopTest.Exit> exits = new ArrayList<>();
        for (Sequence.Step step : sequence.steps()) {
            for (int e = 0; e < step.exits().size(); e++) {
                if (controller.is(ScanProgram.exit(step.name(), e))) {
                    exits.add(new ShopTest.Exit(
                            step.name(), e + 1, step.exits().get(e).to()));
                }
            }
        }
        return exits;
    }

    /** What the search calls the value of the scan before: outputs, steps and lamps begin anew where power was away, what devices were told does not. */
    private boolean before(String name) {
        if (name.startsWith("was_")) {
            return isOn(name.substring(4));
        }
        return name.equals("told_open") ? !wasTold("vent_shut") : wasTold(name.substring(5));
    }

    private boolean wasTold(String output) {
        return first ? lost.getOrDefault(output, false) : isOn(output);
    }

    private boolean isOn(String name) {
        return controller.has(name) && controller.is(name);
    }
}
