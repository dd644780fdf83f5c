package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Visits every state a circuit can reach, breadth first, so that the first state found to break a property is one of those reached in the
 * fewest scans. A frontier is expanded by all threads, which only read; what they found is added by one thread in the frontier's order, so
 * that the result does not depend on the number of threads.
 */
final class Search {
    private static final int CHUNK = 512;
    private static final int STATES_LIMIT = 40_000_000;

    private final Circuit circuit;
    private final Felt felt;
    private final int words;
    private long[] states;
    private int[] cameFrom;
    private int[] cameBy;
    private int count;
    private int[] table;
    private long scans;
    private boolean undisturbed;
    private int mostStates;
    private final int[] brokenFrom;
    private final int[] brokenBy;

    private Search(Circuit circuit, Moves moves) {
        this.circuit = circuit;
        felt = new Felt(circuit, moves);
        words = circuit.words();
        states = new long[words << 16];
        cameFrom = new int[1 << 16];
        cameBy = new int[1 << 16];
        table = new int[1 << 17];
        brokenFrom = new int[circuit.watched.size()];
        Arrays.fill(brokenFrom, -1);
        brokenBy = new int[circuit.watched.size()];
    }

    /**
     * What was found.
     *
     * @param states how many states can be reached
     * @param scans how many scans were carried out
     * @param stories for every watched signal the moves that make it false for the first time; empty when it is never false
     * @param visited all states, in the order in which they were found
     * @param ways moves that lead to a state
     */
    record Result(
            int states, long scans, List<List<boolean[]>> stories, States visited, IntFunction<List<boolean[]>> ways) {
        boolean holds(int watched) {
            return stories.get(watched).isEmpty();
        }

        /** Moves from the start to a state. */
        List<boolean[]> way(int state) {
            return ways.apply(state);
        }
    }

    /** States one after another in one array. */
    static final class States {
        final long[] bits;

        States(long[] bits) {
            this.bits = bits;
        }
    }

    /**
     * Visits all states.
     *
     * @param untilBroken end as soon as a watched signal was false
     */
    static Result run(Circuit circuit, Moves moves, boolean untilBroken) {
        boolean[] any = new boolean[circuit.watched.size()];
        Arrays.fill(any, untilBroken);
        return runUntil(circuit, moves, any);
    }

    /**
     * Visits states until one of the wanted signals was false.
     *
     * @param wanted for every watched signal whether it ends the search
     */
    static Result runUntil(Circuit circuit, Moves moves, boolean[] wanted) {
        return runUntil(circuit, moves, wanted, false, STATES_LIMIT);
    }

    /**
     * For finding a way, not for proving: if so asked goes on only from states that undisturbed moves lead to, while the last step to what is wanted may be any; given up without a word when so
     * many states were visited.
     */
    static Result runUntil(Circuit circuit, Moves moves, boolean[] wanted, boolean undisturbed, int mostStates) {
        Search search = new Search(circuit, moves);
        search.undisturbed = undisturbed;
        search.mostStates = mostStates;
        search.visit(wanted);
        List<List<boolean[]>> stories = IntStream.range(0, circuit.watched.size())
                .mapToObj(search::story)
                .toList();
        return new Result(
                search.count,
                search.scans,
                stories,
                new States(Arrays.copyOf(search.states, search.count * search.words)),
                search::way);
    }

    private void visit(boolean[] wanted) {
        add(circuit.start, 0, -1, 0);
        int from = 0;
        while (from < count && count <= mostStates && !anyBroken(wanted)) {
            int to = count;
            int first = from;
            int chunks = (to - from + CHUNK - 1) / CHUNK;
            IntStream ordered = IntStream.range(0, chunks);
            for (int batch = 0; batch < chunks; batch += 256) {
                int begin = batch;
                List<Found> found = (chunks > 1
                                ? IntStream.range(begin, Math.min(chunks, begin + 256))
                                        .parallel()
                                : ordered)
                        .mapToObj(c -> expand(first + c * CHUNK, Math.min(to, first + (c + 1) * CHUNK)))
                        .toList();
                found.forEach(this::take);
            }
            from = to;
        }
    }

    private boolean anyBroken(boolean[] wanted) {
        return IntStream.range(0, wanted.length).anyMatch(w -> wanted[w] && brokenFrom[w] >= 0);
    }

    /** States reached from a part of the frontier that were not known when it began. */
    private final class Found {
        private long[] states = new long[256 * words];
        private int[] from = new int[256];
        private int[] by = new int[256];
        private int count;
        private long scans;
        private final int[] brokenFrom = new int[circuit.watched.size()];
        private final int[] brokenBy = new int[circuit.watched.size()];

        Found() {
            Arrays.fill(brokenFrom, -1);
        }

        void add(long[] source, int at, int cameFrom, int move) {
            if (count == from.length) {
                states = Arrays.copyOf(states, 2 * states.length);
                from = Arrays.copyOf(from, 2 * count);
                by = Arrays.copyOf(by, 2 * count);
            }
            System.arraycopy(source, at, states, count * words, words);
            from[count] = cameFrom;
            by[count] = move;
            count++;
        }
    }

    private void take(Found found) {
        scans += found.scans;
        for (int i = 0; i < found.count; i++) {
            add(found.states, i * words, found.from[i], found.by[i]);
        }
        for (int p = 0; p < brokenFrom.length; p++) {
            if (brokenFrom[p] < 0 && found.brokenFrom[p] >= 0) {
                brokenFrom[p] = found.brokenFrom[p];
                brokenBy[p] = found.brokenBy[p];
            }
        }
    }

    private Found expand(int from, int to) {
        Found found = new Found();
        Lanes lanes = new Lanes(circuit);
        long[] seen = new long[64 * words];
        int[] lane = new int[64];
        Felt.Reader reader = felt.reader();
        for (int group = from; group < to; group += 64) {
            int end = Math.min(to, group + 64);
            reader.read(states, group * words, end - group);
            for (int s = group; s < end; s++) {
                expand(s, reader.moves(s - group), lanes, seen, lane, found);
            }
        }
        return found;
    }

    private void expand(int state, Moves moves, Lanes lanes, long[] seen, int[] lane, Found found) {
        int goesOn = undisturbed ? moves.undisturbed() : moves.count();
        lanes.setState(states, state * words);
        for (int block = 0; block < moves.blocks(); block++) {
            lanes.setChoices(moves.masks(block));
            lanes.evaluate();
            int used = moves.used(block);
            found.scans += used;
            judge(lanes, used, state, block, found);
            int distinct = lanes.states(used, seen, lane);
            for (int d = 0; d < distinct; d++) {
                if (block * 64 + lane[d] < goesOn && find(seen, d * words) < 0) {
                    found.add(seen, d * words, state, block * 64 + lane[d]);
                }
            }
        }
    }

    private void judge(Lanes lanes, int used, int state, int block, Found found) {
        long valid = used == 64 ? -1L : (1L << used) - 1;
        for (int p = 0; p < circuit.watch.length; p++) {
            long bad = ~lanes.value(circuit.watch[p]) & valid;
            if (bad != 0 && found.brokenFrom[p] < 0) {
                found.brokenFrom[p] = state;
                found.brokenBy[p] = (block * 64 + Long.numberOfTrailingZeros(bad));
            }
        }
    }

    private int find(long[] source, int at) {
        int slot = slot(source, at);
        while (table[slot] != 0) {
            if (same(table[slot] - 1, source, at)) {
                return table[slot] - 1;
            }
            slot = (slot + 1) & (table.length - 1);
        }
        return -1 - slot;
    }

    private boolean same(int state, long[] source, int at) {
        for (int w = 0; w < words; w++) {
            if (states[state * words + w] != source[at + w]) {
                return false;
            }
        }
        return true;
    }

    private int slot(long[] source, int at) {
        long mix = 0;
        for (int w = 0; w < words; w++) {
            mix = (mix ^ source[at + w]) * 0x9E3779B97F4A7C15L;
            mix ^= mix >>> 29;
        }
        mix *= 0xBF58476D1CE4E5B9L;
        return (int) (mix >>> 32) & (table.length - 1);
    }

    private void add(long[] source, int at, int from, int by) {
        int known = find(source, at);
        if (known >= 0) {
            return;
        }
        if (count == STATES_LIMIT) {
            throw new IllegalStateException(
                    "more than " + STATES_LIMIT + " states: the search was cut off and proves nothing");
        }
        if (count == cameFrom.length) {
            states = Arrays.copyOf(states, 2 * states.length);
            cameFrom = Arrays.copyOf(cameFrom, 2 * count);
            cameBy = Arrays.copyOf(cameBy, 2 * count);
        }
        System.arraycopy(source, at, states, count * words, words);
        cameFrom[count] = from;
        cameBy[count] = by;
        table[-1 - known] = ++count;
        if (2 * count > table.length) {
            grow();
        }
    }

    private void grow() {
        table = new int[2 * table.length];
        for (int s = 0; s < count; s++) {
            int slot = slot(states, s * words);
            while (table[slot] != 0) {
                slot = (slot + 1) & (table.length - 1);
            }
            table[slot] = s + 1;
        }
    }

    /** Moves from the start to the scan that broke a watched signal. */
    private List<boolean[]> story(int watched) {
        if (brokenFrom[watched] < 0) {
            return List.of();
        }
        List<boolean[]> story = way(brokenFrom[watched]);
        story.add(choices(brokenFrom[watched], brokenBy[watched]));
        return story;
    }

    private List<boolean[]> way(int state) {
        List<boolean[]> way = new ArrayList<>();
        for (int s = state; cameFrom[s] >= 0; s = cameFrom[s]) {
            way.add(0, choices(cameFrom[s], cameBy[s]));
        }
        return way;
    }

    private boolean[] choices(int state, int move) {
        Felt.Reader reader = felt.reader();
        reader.read(states, state * words, 1);
        return reader.moves(0).choices(move);
    }
}
