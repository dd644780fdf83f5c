package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One walk through a sequence for the test of the finished panel: it takes every way between steps, by each of its conditions alone, brings about every cause (trips while a producer runs, what holds or waits while users vacuum and while filters
 * are pulsed), every lamp, every supervision and limit running out and every START that is refused, makes every contact bad and takes the power away while users vacuum, each at least once. From where the walk stands the shortest way to anything not yet done is added, until all is done; so it is short, though not proven to be the shortest
 * of all. Times end in their order ({@link InTime}), so that the walk can be done with a watch; what is then seen line by line is what a watch shows ({@link ShopTestByTheWatch}).
 *
 * @param acts what is done and what must be seen
 * @param notTaken exits that cannot be taken in that way
 * @param notSeen causes, lamps, contacts, times and conditions that cannot be had in that way
 */
public record ShopTest(List<Act> acts, List<Exit> notTaken, List<String> notSeen) {
    /** What is not found among so many states is called not to be had. */
    private static final int FAR = 60_000;

    /** No count is full so soon. */
    private static final int MANY = 10_000;

    /** Between a cause and the step it is tried in. */
    private static final String WHILE = "_while_";

    private static final String LOST = "power_lost_in_use";

    /** Before the step in which START is refused, and before what stands against it. */
    private static final String REFUSED = "START refused in ";

    public static final String WITH = " with ";

    /** Before a supervision or a limit whose time must have been out once. */
    private static final String RUNS_OUT = "time out of ";

    /** Between a way, or a signal, and the one of its conditions that alone brings it about. */
    public static final String BY = " by ";

    /** Dust falls before the filters were pulsed to the last round. */
    static final String CUT_SHORT = "cut_short";

    private static final String LET_GO = " is let go";

    /** Before what follows the doing before it without a pause. */
    public static final String AT_ONCE = "at once ";

    public ShopTest {
        acts = List.copyOf(acts);
        notTaken = List.copyOf(notTaken);
        notSeen = List.copyOf(notSeen);
    }

    /**
     * One line.
     *
     * @param scan what happens in it and what must change
     * @param takes the exits it takes, in their order; none when it prepares one
     * @param doings what is done, one thing at once after the other
     */
    public record Act(Story.Scan scan, List<Exit> takes, List<Doing> doings) {
        public Act {
            takes = List.copyOf(takes);
            doings = List.copyOf(doings);
        }
    }

    /**
     * What is done at one moment.
     *
     * @param moves names of what happens, as the search calls it
     * @param step the step it leads to or stays in
     */
    public record Doing(List<String> happens, List<String> moves, String step) {
        public Doing {
            happens = List.copyOf(happens);
            moves = List.copyOf(moves);
        }

        /** Whether a button is pressed in it. */
        boolean isPressing() {
            return happens.stream().anyMatch(h -> h.endsWith(" is pressed"));
        }
    }

    /**
     * A way out of a step.
     *
     * @param number counted from 1 in the order of the step
     */
    public record Exit(String from, int number, String to) {}

    /** The walk for a sequence. */
    public static ShopTest of(Sequence sequence) {
        World world = World.inFull(sequence, Optional.empty());
        List<Statement.Assign> lines = new ArrayList<>(InTime.of(sequence, world.lines()));
        Set<String> open = new LinkedHashSet<>();
        Expr byHand = inOneScan(sequence, world).not();
        goals(sequence, world).forEach((goal, reached) -> {
            open.add(goal);
            lines.add(
                    new Statement.Assign("untaken_" + goal, reached.and(byHand).not()));
        });
        lines.add(new Statement.Assign(
                CUT_SHORT, Expr.of("in_dust_fall and (" + CUT_SHORT + " or (was_in_pulsing and not pulsed))")));
        List<String> watched = open.stream().map(e -> "untaken_" + e).toList();
        List<String> choices = Stream.concat(world.events().stream(), world.contacts().stream())
                .toList();
        Circuit circuit = Circuit.of(lines, choices, world.startOn(), watched);
        List<boolean[]> walk = walk(world, circuit, open);
        Story story = Story.walked(sequence, world, lines, circuit, walk);
        List<Act> planned = new ArrayList<>();
        Lanes lanes = new Lanes(circuit);
        long[] state = circuit.start.clone();
        for (int i = 0; i < walk.size(); i++) {
            boolean[] move = walk.get(i);
            planned.add(planned(
                    pressed(story.scans().get(i)),
                    taken(sequence, circuit, lanes, state, move).stream().toList(),
                    IntStream.range(0, move.length)
                            .filter(c -> move[c])
                            .mapToObj(circuit.choices::get)
                            .toList()));
        }
        ShopTestByTheWatch.Played played = ShopTestByTheWatch.play(
                neverCountedOut(sequence), goals(sequence, world), withStopDown(sequence, planned));
        List<Exit> notTaken = played.missed().stream()
                .flatMap(e -> exit(sequence, e).stream())
                .toList();
        return new ShopTest(
                played.acts(),
                notTaken,
                played.missed().stream()
                        .filter(e -> exit(sequence, e).isEmpty()
                                && notTaken.stream().noneMatch(x -> e.startsWith(x.from() + " to " + x.to() + BY)))
                        .toList());
    }

    /** Every button is let go again at once: that a held one does nothing more is nothing to see. */
    private static Story.Scan pressed(Story.Scan scan) {
        return new Story.Scan(
                scan.happens().stream()
                        .filter(h -> !h.endsWith(LET_GO))
                        .map(h -> h.replace(" is pressed and held", " is pressed"))
                        .toList(),
                scan.step(),
                scan.changes());
    }

    /** For the test of a panel counts are set so high that they never fill. */
    static Sequence neverCountedOut(Sequence whole) {
        List<Sequence.Rule> rules = whole.rules().stream()
                .map(r -> r instanceof Sequence.Rule.Times times
                        ? new Sequence.Rule.Times(times.name(), times.event(), MANY, times.forget(), times.words())
                        : r)
                .toList();
        return whole.withRules(rules);
    }

    /** Before START and RESET are pressed for the first time with nothing else in their way, each is pressed while a button that opens is held down, and does nothing. */
    private static List<Act> withStopDown(Sequence sequence, List<Act> acts) {
        List<Act> all = new ArrayList<>(acts);
        sequence.buttons().stream()
                .filter(Sequence.Button::opensWhenPressed)
                .findFirst()
                .ifPresent(stop -> {
                    pressedWhileDown(all, stop, sequence, "start");
                    pressedWhileDown(all, stop, sequence, "reset");
                });
        return all;
    }

    private static void pressedWhileDown(List<Act> acts, Sequence.Button stop, Sequence sequence, String name) {
        Optional<Sequence.Button> button = sequence.buttons().stream()
                .filter(b -> b.name().equals(name) && !b.equals(stop))
                .findFirst();
        for (int at = 1; at < acts.size() && button.isPresent(); at++) {
            Act act = acts.get(at);
            Doing doing = act.doings().get(0);
            boolean alone = doing.moves().equals(List.of("push_" + name))
                    || doing.moves().equals(List.of("flip_" + name));
            if (alone && doing.isPressing() && !act.takes().isEmpty()) {
                String step = act.takes().get(0).from();
                String hold = "hold_" + stop.name();
                String held = stop.words() + " is held down";
                acts.addAll(
                        at,
                        List.of(
                                prepares(step, List.of(held), List.of(hold)),
                                prepares(
                                        step,
                                        List.of(held, "then " + button.get().words() + " is pressed"),
                                        List.of(hold, "push_" + name)),
                                prepares(step, List.of(stop.words() + LET_GO), List.of())));
                return;
            }
        }
    }

    private static Act prepares(String step, List<String> happens, List<String> moves) {
        return planned(new Story.Scan(happens, step, List.of()), List.of(), moves);
    }

    private static Act planned(Story.Scan scan, List<Exit> takes, List<String> moves) {
        return new Act(scan, takes, List.of(new Doing(scan.happens(), moves, scan.step())));
    }

    /** A button is pressed in just the scan in which contacts or times lead on without it: nobody can do that by hand. */
    private static Expr inOneScan(Sequence sequence, World world) {
        Expr pressed = Expr.or(sequence.buttons().stream()
                .flatMap(b -> Stream.of("push_" + b.name(), "flip_" + b.name()))
                .filter(world.events()::contains)
                .map(Expr::name)
                .toList());
        Expr leadsOn = Expr.or(sequence.steps().stream()
                .map(s -> Expr.name("was_in_" + s.name())
                        .and(asDecided(
                                sequence,
                                s,
                                Expr.or(s.exits().stream()
                                        .map(x -> x.when().replace(n -> withoutPress(sequence, (Expr.Name) n)))
                                        .toList()))))
                .toList());
        return pressed.and(leadsOn);
    }

    /** A signal as it would be were no button pressed: a latch that a button sets is not counted in the scan of the press, a trip that RESET clears is. */
    private static Expr withoutPress(Sequence sequence, Expr.Name signal) {
        if (signal.name().startsWith("press_")) {
            return Expr.Constant.NO;
        }
        if (signal.name().equals("trip")
                && sequence.buttons().stream().anyMatch(b -> b.name().equals("reset"))) {
            return signal.or(Expr.name("press_reset"));
        }
        Expr presses = Expr.or(sequence.rules().stream()
                .filter(r -> r.name().equals(signal.name()) && r instanceof Sequence.Rule.Latch)
                .flatMap(r -> ((Sequence.Rule.Latch) r).set().names().stream())
                .filter(n -> n.startsWith("press_"))
                .map(Expr::name)
                .toList());
        return signal.and(presses.not());
    }

    /** What the walk has to bring about, by name. */
    private static Map<String, Expr> goals(Sequence sequence, World world) {
        Map<String, Expr> goals = new LinkedHashMap<>();
        Expr fallen = Expr.of(CUT_SHORT + " and not in_dust_fall and not in_tripped and not dip_now");
        goals.put(CUT_SHORT + BY + "receiver_high", fallen.and(Expr.name("receiver_high")));
        for (Sequence.Step step : sequence.steps()) {
            for (int e = 0; e < step.exits().size(); e++) {
                String exit = ScanProgram.exit(step.name(), e);
                goals.put(exit, Expr.name(exit));
            }
        }
        Expr inUse = Expr.of("told_pump and not was_in_tripped and not dip_now");
        sequence.causes()
                .forEach(c -> goals.put(
                        c.name(),
                        c.latched() && !c.when().names().contains("first_scan")
                                ? Expr.name(c.name()).and(inUse)
                                : Expr.name(c.name())));
        sequence.causes().stream()
                .filter(c -> !c.latched() && !c.demands().isEmpty())
                .forEach(c -> whereItMatters(c)
                        .forEach(s -> goals.put(
                                c.name() + WHILE + s, Expr.of(c.name() + " and was_in_" + s + " and not dip_now"))));
        goals.putAll(refusals(sequence));
        goals.putAll(alternatives(sequence));
        sequence.rules().stream()
                .filter(r -> r instanceof Sequence.Rule.After && !isWindow(sequence, r.name()))
                .forEach(r -> goals.put(RUNS_OUT + r.name(), Expr.name(r.name())));
        sequence.lamps().forEach(l -> goals.put(l.name(), Expr.name(l.name())));
        sequence.inputs().forEach(i -> goals.put(i.name(), Expr.name(i.name()).not()));
        goals.put(LOST, Expr.of("dip_now and not told_open"));
        Set<String> known = new LinkedHashSet<>(Set.of(CUT_SHORT));
        world.lines().forEach(l -> known.add(l.name()));
        goals.values().removeIf(g -> !known.containsAll(g.names()));
        return goals;
    }

    /** Whether a time only ends the window in which something is counted. */
    private static boolean isWindow(Sequence sequence, String time) {
        return sequence.rules().stream()
                .anyMatch(r -> r instanceof Sequence.Rule.Times times
                        && times.forget().names().contains(time));
    }

    /** START pressed while just one thing stands against it. */
    private static Map<String, Expr> refusals(Sequence sequence) {
        Map<String, Expr> refusals = new LinkedHashMap<>();
        Expr start = Expr.name("press_start");
        for (Sequence.Step step : sequence.steps()) {
            for (Sequence.Exit exit : step.exits()) {
                List<Expr> asked = exit.when() instanceof Expr.And ? exit.when().terms() : List.of();
                for (Expr missing : asked.contains(start) ? asked : List.<Expr>of()) {
                    if (!missing.equals(start)) {
                        List<Expr> others = new ArrayList<>(asked);
                        others.remove(missing);
                        others.add(Expr.of("was_in_" + step.name() + " and not dip_now and not in_tripped"));
                        alone(ways(sequence, missing.not()))
                                .forEach((by, against) ->
                                        refusals.put(REFUSED + step.name() + WITH + by, against.and(Expr.and(others))));
                    }
                }
            }
        }
        return refusals;
    }

    /** Each condition of a way, of a signal that ways ask for, and of what keeps an output off, by itself. */
    private static Map<String, Expr> alternatives(Sequence sequence) {
        Map<String, Expr> alternatives = new LinkedHashMap<>();
        Map<String, List<Expr>> asking = new LinkedHashMap<>();
        for (Sequence.Step step : sequence.steps()) {
            List<Sequence.Exit> exits = step.exits();
            for (int e = 0; e < exits.size(); e++) {
                Expr taken = Expr.name(ScanProgram.exit(step.name(), e));
                Expr when = exits.get(e).when();
                Expr elsewhere = asDecided(sequence, step, meanwhile(exits.subList(e + 1, exits.size())));
                String way = step.name() + " to " + exits.get(e).to();
                alone(when instanceof Expr.Or ? when.terms() : List.of()).forEach((by, so) -> {
                    Expr stays = takesTime(sequence, Expr.of(by)) ? elsewhere.not() : Expr.Constant.YES;
                    alternatives.put(way + BY + by, Expr.and(List.of(taken, asDecided(sequence, step, so), stays)));
                });
                when.names()
                        .forEach(n -> asking.computeIfAbsent(n, a -> new ArrayList<>())
                                .add(taken));
            }
        }
        for (Sequence.Rule rule : sequence.rules()) {
            if (rule instanceof Sequence.Rule.Is is && is.when() instanceof Expr.Or && asking.containsKey(is.name())) {
                Expr used = Expr.or(asking.get(is.name()));
                alone(is.when().terms()).forEach((by, so) -> alternatives.put(is.name() + BY + by, used.and(so)));
            }
        }
        for (Sequence.Output output : sequence.outputs()) {
            Expr dropped = Expr.of("was_" + output.name() + " and not " + output.name() + " and not dip_now");
            alone(output.offWhen() instanceof Expr.Or ? output.offWhen().terms() : List.of())
                    .forEach((by, so) -> alternatives.put(output.name() + " off" + BY + by, dropped.and(so)));
        }
        return alternatives;
    }

    /** Who waits for a time must not be led elsewhere before it is out, also not when what is driven has followed. */
    private static Expr meanwhile(List<Sequence.Exit> exits) {
        Set<String> follow = Set.of("vent_proved", "motion", "suction_open", "receiver_free");
        return Expr.or(exits.stream()
                .map(x -> x.when().replace(n -> {
                    String name = ((Expr.Name) n).name();
                    boolean atTheEnd = name.equals("time_out") || name.startsWith("press_");
                    return atTheEnd ? Expr.Constant.NO : follow.contains(name) ? Expr.Constant.YES : n;
                }))
                .toList());
    }

    /** Whether a condition has a time or a contact with a filter in it. */
    private static boolean takesTime(Sequence sequence, Expr condition) {
        return condition.names().stream()
                .anyMatch(n -> n.endsWith("_out")
                        || sequence.inputs().stream()
                                .anyMatch(i -> i.name().equals(n) && i.filter().isPresent()));
    }

    /** As it stood when the step was decided: outputs and steps of the scan before. */
    private static Expr asDecided(Sequence sequence, Sequence.Step step, Expr condition) {
        return condition.replace(n -> {
            String name = ((Expr.Name) n).name();
            if (name.equals("time_out")) {
                return Expr.name(ScanProgram.timeIn(step.name()));
            }
            boolean changes = name.startsWith("in_")
                    || Stream.concat(
                                    sequence.outputs().stream().map(Sequence.Output::name),
                                    sequence.lamps().stream().map(Sequence.Lamp::name))
                            .anyMatch(name::equals);
            return changes ? Expr.name("was_" + name) : n;
        });
    }

    /** What makes a condition true, a signal that only gives a name to others opened. */
    private static List<Expr> ways(Sequence sequence, Expr condition) {
        Expr opened = condition.replace(n -> sequence.rules().stream()
                .filter(r -> r instanceof Sequence.Rule.Is && n.equals(Expr.name(r.name())))
                .map(r -> ((Sequence.Rule.Is) r).when())
                .findFirst()
                .orElse(n));
        if (opened instanceof Expr.Not not && not.of() instanceof Expr.And all && !condition.equals(opened)) {
            return all.terms().stream().map(Expr::not).toList();
        }
        return opened instanceof Expr.Or ? opened.terms() : List.of(condition);
    }

    /** Each of several conditions while none of the others is so, by its words. */
    private static Map<String, Expr> alone(List<Expr> conditions) {
        Map<String, Expr> alone = new LinkedHashMap<>();
        for (Expr one : conditions) {
            List<Expr> others = conditions.stream().filter(o -> !o.equals(one)).toList();
            alone.put(one.text(), one.and(Expr.or(others).not()));
        }
        return alone;
    }

    /** Users vacuum, filters are pulsed; what is remembered goes with a start until the filters are cleaned; a container is unconfirmed only in the hold that follows. */
    private static List<String> whereItMatters(Sequence.Cause cause) {
        return switch (cause.name()) {
            case "filter_blind" -> List.of("vacuuming", "holding", "warning", "valve_proving", "run_up");
            case "container_unconfirmed" -> List.of();
            default -> List.of("vacuuming", "pulsing");
        };
    }

    /** Moves of the walk; exits it takes are removed from the open ones. */
    private static List<boolean[]> walk(World world, Circuit circuit, Set<String> open) {
        List<boolean[]> walk = new ArrayList<>();
        Moves moves = world.moves(circuit, 1, 1);
        Lanes lanes = new Lanes(circuit);
        long[] state = circuit.start.clone();
        while (!open.isEmpty()) {
            Circuit here = circuit.startingAt(state);
            Optional<List<boolean[]>> way =
                    shortest(here, moves, open, true).or(() -> shortest(here, moves, open, false));
            if (way.isEmpty()) {
                return walk;
            }
            for (boolean[] move : way.get()) {
                step(lanes, state, move);
                walk.add(move);
                for (int w = 0; w < circuit.watched.size(); w++) {
                    if ((lanes.value(circuit.watch[w]) & 1) == 0) {
                        open.remove(circuit.watched.get(w).substring("untaken_".length()));
                    }
                }
            }
        }
        return walk;
    }

    private static Optional<List<boolean[]>> shortest(
            Circuit circuit, Moves moves, Set<String> open, boolean undisturbed) {
        boolean[] wanted = new boolean[circuit.watched.size()];
        for (int w = 0; w < wanted.length; w++) {
            wanted[w] = open.contains(circuit.watched.get(w).substring("untaken_".length()));
        }
        Search.Result result = Search.runUntil(circuit, moves, wanted, undisturbed, FAR);
        List<boolean[]> best = List.of();
        for (int w = 0; w < wanted.length; w++) {
            List<boolean[]> way = result.stories().get(w);
            if (wanted[w] && !way.isEmpty() && (best.isEmpty() || way.size() < best.size())) {
                best = way;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    private static void step(Lanes lanes, long[] state, boolean[] move) {
        long[] choices = new long[move.length];
        for (int c = 0; c < move.length; c++) {
            choices[c] = move[c] ? -1L : 0;
        }
        lanes.setState(state, 0);
        lanes.setChoices(choices);
        lanes.evaluate();
        lanes.state(0, state, 0);
    }

    private static Optional<Exit> taken(Sequence sequence, Circuit circuit, Lanes lanes, long[] state, boolean[] move) {
        step(lanes, state, move);
        for (int w = 0; w < circuit.watched.size(); w++) {
            Optional<Exit> exit = exit(sequence, circuit.watched.get(w).substring("untaken_".length()));
            if (exit.isPresent() && (lanes.value(circuit.watch[w]) & 1) == 0) {
                return exit;
            }
        }
        return Optional.empty();
    }

    private static Optional<Exit> exit(Sequence sequence, String exit) {
        for (Sequence.Step step : sequence.steps()) {
            for (int e = 0; e < step.exits().size(); e++) {
                if (ScanProgram.exit(step.name(), e).equals(exit)) {
                    return Optional.of(
                            new Exit(step.name(), e + 1, step.exits().get(e).to()));
                }
            }
        }
        return Optional.empty();
    }
}
