package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Visits every state a circuit can reach, breadth first, so that the first state found to break a property is one of those reached in the
 * fewest scans. A frontier is expanded by all threads, which only read; what they found is added by one thread in the frontier's order, so
 * that the result does not depend on the number of threads.
 */
final class Search {
    private static final int CHUNK = 512;
    /** No state has this bit of its last word: in the table it tells a state from a free place. */
    private static final long TAKEN = Long.MIN_VALUE;

    private static final long[] NO_TABLE = {};

    /** States met lately that are kept for each state expanded. */
    private static final int LATELY_EACH = 4;

    private static final int STATES_LIMIT = 40_000_000;

    private final Circuit circuit;
    private final Felt felt;
    private final Queue<FeltLanes> idle = new ConcurrentLinkedQueue<>();
    private final int words;
    private long[] states;
    private int[] cameFrom;
    private int[] cameBy;
    private int count;
    /** States again, each where {@link #slot} says or behind it. */
    private long[] table;

    private int slots = 1 << 13;
    private long scans;
    private boolean undisturbed;
    private int mostStates;
    private final int[] brokenFrom;
    private final int[] brokenBy;

    private Search(Circuit circuit, Moves moves) {
        this.circuit = circuit;
        felt = new Felt(circuit, moves);
        words = circuit.words();
        states = new long[words << 12];
        cameFrom = new int[1 << 12];
        cameBy = new int[1 << 12];
        table = new long[slots * words];
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
        table = NO_TABLE;
        idle.clear();
    }

    private boolean anyBroken(boolean[] wanted) {
        return IntStream.range(0, wanted.length).anyMatch(w -> wanted[w] && brokenFrom[w] >= 0);
    }

    /** States reached from a part of the frontier that were not known when it began. */
    private final class Found {
        /** States met lately: most of what one state leads to, its neighbours lead to as well. */
        private final long[] lately;

        private long[] states = new long[256 * words];
        private int[] from = new int[256];
        private int[] by = new int[256];
        private int count;
        private long scans;
        private final int[] brokenFrom = new int[circuit.watched.size()];
        private final int[] brokenBy = new int[circuit.watched.size()];

        Found(int expanded) {
            Arrays.fill(brokenFrom, -1);
            lately = new long[LATELY_EACH * Integer.highestOneBit(expanded) * words];
            for (int at = 0; at < lately.length; at += words) {
                System.arraycopy(circuit.start, 0, lately, at, words);
            }
        }

        /** Whether a state was met lately; from now on it was. */
        boolean lately(long[] source, int at) {
            int slot = (mixed(source, at) >>> 5 & lately.length / words - 1) * words;
            boolean met = true;
            for (int w = 0; w < words; w++) {
                met &= lately[slot + w] == source[at + w];
                lately[slot + w] = source[at + w];
            }
            return met;
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
        Found found = new Found(to - from);
        FeltLanes lanes = Optional.ofNullable(idle.poll()).orElseGet(() -> new FeltLanes(circuit, felt));
        long[] seen = new long[64 * words];
        int[] lane = new int[64];
        for (int group = from; group < to; group += 64) {
            int end = Math.min(to, group + 64);
            lanes.read(states, group * words, end - group);
            for (int s = group; s < end; s++) {
                expand(s, s - group, lanes, seen, lane, found);
            }
        }
        idle.add(lanes);
        return found;
    }

    private void expand(int state, int read, FeltLanes lanes, long[] seen, int[] lane, Found found) {
        Moves moves = lanes.stand(read);
        int goesOn = undisturbed ? moves.undisturbed() : moves.count();
        for (int block = 0; block < moves.blocks(); block++) {
            lanes.evaluate(moves.masks(block));
            int used = moves.used(block);
            found.scans += used;
            judge(lanes, read, used, state, block, found);
            int most = Math.min(64, goesOn - block * 64);
            int news = notLately(lanes.states(used, seen, lane), most, seen, lane, found);
            addUnknown(news, state, block, seen, lane, found);
        }
    }

    /** Keeps those states, at the front, that were not met lately and that moves below so many lead to. */
    private int notLately(int distinct, int most, long[] seen, int[] lane, Found found) {
        int news = 0;
        for (int d = 0; d < distinct; d++) {
            lane[news] = lane[d];
            System.arraycopy(seen, d * words, seen, news * words, words);
            news += lane[d] < most && !found.lately(seen, d * words) ? 1 : 0;
        }
        return news;
    }

    private void addUnknown(int news, int state, int block, long[] seen, int[] lane, Found found) {
        for (int d = 0; d < news; d++) {
            if (find(seen, d * words) < 0) {
                found.add(seen, d * words, state, block * 64 + lane[d]);
            }
        }
    }

    private static void judge(FeltLanes lanes, int read, int used, int state, int block, Found found) {
        for (int r = 0; r < lanes.reached(); r++) {
            int p = lanes.reached(r);
            long bad = lanes.broken(r, read) << (64 - used);
            if (bad != 0 && found.brokenFrom[p] < 0) {
                found.brokenFrom[p] = state;
                found.brokenBy[p] = block * 64 + Long.numberOfTrailingZeros(bad >>> (64 - used));
            }
        }
    }

    /** Where a state stands in the table, or its place there when it is new: then less than zero. */
    private int find(long[] source, int at) {
        int slot = slot(source, at);
        while (table[slot + words - 1] != 0) {
            if (same(slot, source, at)) {
                return slot;
            }
            slot = slot + words == table.length ? 0 : slot + words;
        }
        return -1 - slot;
    }

    private boolean same(int slot, long[] source, int at) {
        for (int w = 0; w < words - 1; w++) {
            if (table[slot + w] != source[at + w]) {
                return false;
            }
        }
        return table[slot + words - 1] == (source[at + words - 1] | TAKEN);
    }

    private int slot(long[] source, int at) {
        return (mixed(source, at) & slots - 1) * words;
    }

    private int mixed(long[] source, int at) {
        long mix = 0;
        for (int w = 0; w < words; w++) {
            mix = (mix ^ source[at + w]) * 0x9E3779B97F4A7C15L;
            mix ^= mix >>> 29;
        }
        mix *= 0xBF58476D1CE4E5B9L;
        return (int) (mix >>> 32);
    }

    private void add(long[] source, int at, int from, int by) {
        int known = find(source, at);
        if (known >= 0) {
            return;
        }
        if (count == STATES_LIMIT) {
            throw cutOff();
        }
        if (count == cameFrom.length) {
            states = Arrays.copyOf(states, 2 * states.length);
            cameFrom = Arrays.copyOf(cameFrom, 2 * count);
            cameBy = Arrays.copyOf(cameBy, 2 * count);
        }
        System.arraycopy(source, at, states, count * words, words);
        cameFrom[count] = from;
        cameBy[count] = by;
        put(-1 - known, source, at);
        count++;
        if (2 * count > slots) {
            grow();
        }
    }

    private void put(int slot, long[] source, int at) {
        System.arraycopy(source, at, table, slot, words);
        table[slot + words - 1] |= TAKEN;
    }

    private void grow() {
        if (2L * slots * words > Integer.MAX_VALUE) {
            throw cutOff();
        }
        slots *= 2;
        table = NO_TABLE; // all of it stands in the states: not both at once
        table = new long[slots * words];
        for (int at = 0; at < count * words; at += words) {
            put(-1 - find(states, at), states, at);
        }
    }

    private IllegalStateException cutOff() {
        return new IllegalStateException("more than " + count + " states: the search was cut off and proves nothing");
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
