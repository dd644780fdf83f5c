package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One walk through the steps of a sequence that takes every exit at least once, for the test of the finished panel. From where the walk stands, the shortest
 * way to any exit not yet taken is added, until all are taken; so it is short, though not proven to be the shortest of all.
 *
 * @param acts what is done and what must be seen
 * @param notTaken exits that cannot be taken with healthy devices
 */
public record ShopTest(List<Act> acts, List<Exit> notTaken) {
    public ShopTest {
        acts = List.copyOf(acts);
        notTaken = List.copyOf(notTaken);
    }

    /**
     * One act.
     *
     * @param scan what happens in it and what must change
     * @param takes the exit it takes; none when it prepares one
     */
    public record Act(Story.Scan scan, Optional<Exit> takes) {}

    /**
     * A way out of a step.
     *
     * @param number counted from 1 in the order of the step
     */
    public record Exit(String from, int number, String to) {}

    /** The walk for a sequence. */
    public static ShopTest of(Sequence sequence) {
        World world = World.of(sequence, Optional.empty());
        List<Statement.Assign> lines = new ArrayList<>(world.lines());
        Set<String> open = new LinkedHashSet<>();
        for (Sequence.Step step : sequence.steps()) {
            for (int e = 0; e < step.exits().size(); e++) {
                String exit = ScanProgram.exit(step.name(), e);
                open.add(exit);
                lines.add(
                        new Statement.Assign("untaken_" + exit, Expr.name(exit).not()));
            }
        }
        List<String> watched = open.stream().map(e -> "untaken_" + e).toList();
        List<String> choices = Stream.concat(world.events().stream(), world.contacts().stream())
                .toList();
        Circuit circuit = Circuit.of(lines, choices, world.startOn(), watched);
        List<boolean[]> walk = walk(world, circuit, open);
        Story story = Story.told(sequence, world, Optional.empty(), circuit, walk, -1);
        List<Act> acts = new ArrayList<>();
        Lanes lanes = new Lanes(circuit);
        long[] state = circuit.start.clone();
        for (int i = 0; i < walk.size(); i++) {
            acts.add(new Act(story.scans().get(i), taken(sequence, circuit, lanes, state, walk.get(i))));
        }
        return new ShopTest(acts, open.stream().map(e -> exit(sequence, e)).toList());
    }

    /** Moves of the walk; exits it takes are removed from the open ones. */
    private static List<boolean[]> walk(World world, Circuit circuit, Set<String> open) {
        List<boolean[]> walk = new ArrayList<>();
        Moves moves = world.moves(circuit, 1, 1);
        Lanes lanes = new Lanes(circuit);
        long[] state = circuit.start.clone();
        while (!open.isEmpty()) {
            Optional<List<boolean[]>> way = shortest(circuit.startingAt(state), moves, open);
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

    private static Optional<List<boolean[]>> shortest(Circuit circuit, Moves moves, Set<String> open) {
        boolean[] wanted = new boolean[circuit.watched.size()];
        for (int w = 0; w < wanted.length; w++) {
            wanted[w] = open.contains(circuit.watched.get(w).substring("untaken_".length()));
        }
        Search.Result result = Search.runUntil(circuit, moves, wanted);
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
            if ((lanes.value(circuit.watch[w]) & 1) == 0) {
                return Optional.of(exit(sequence, circuit.watched.get(w).substring("untaken_".length())));
            }
        }
        return Optional.empty();
    }

    private static Exit exit(Sequence sequence, String exit) {
        for (Sequence.Step step : sequence.steps()) {
            for (int e = 0; e < step.exits().size(); e++) {
                if (ScanProgram.exit(step.name(), e).equals(exit)) {
                    return new Exit(step.name(), e + 1, step.exits().get(e).to());
                }
            }
        }
        throw new IllegalArgumentException(exit);
    }
}
