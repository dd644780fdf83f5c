package dustwright.engine.interlock;

import java.util.Arrays;

/**
 * Carries out 64 moves of one state at once, and of each scan only the gates that a move can change there and that are felt: what the state alone fixes was read for 64 states together. Leads to the
 * states that {@link Lanes} leads to and breaks the same watched signals.
 */
final class FeltLanes {
    private final Circuit circuit;
    private final Felt.Reader reader;

    /** Values by literal, so that the inverted ones stand there too; only those that are read are kept up. */
    private final long[] values;

    /** Gates that are open in one of the states that were read, in their order. */
    private final Numbers open;

    /** Gates and memory these read that no state leaves open. */
    private final Numbers edge;

    /** Watched signals that a state may not keep true. */
    private final Numbers doubtful;

    /** Of the state that was taken: its open gates, the memory they change and the watched signals they reach. */
    private final Numbers gates;

    private final Numbers changing;
    private final Numbers reached;

    /** Memory that no move changes, as it is after the scan. */
    private final long[] common;

    private final long[] differing;
    private final int[] differs;

    FeltLanes(Circuit circuit, Felt felt) {
        this.circuit = circuit;
        reader = felt.reader();
        int numbers = circuit.firstGate + circuit.gates();
        values = new long[2 * numbers];
        open = new Numbers(numbers);
        edge = new Numbers(numbers);
        doubtful = new Numbers(circuit.watch.length);
        gates = new Numbers(numbers);
        changing = new Numbers(circuit.next.length);
        reached = new Numbers(circuit.watch.length);
        common = new long[circuit.words()];
        differing = new long[circuit.next.length];
        differs = new int[circuit.next.length];
    }

    /** A list of numbers that can be filled without a branch. */
    private static final class Numbers {
        private final int[] of;
        private int count;

        Numbers(int most) {
            of = new int[most + 1];
        }

        void add(int number, long if1) {
            of[count] = number;
            count += (int) if1;
        }
    }

    /** Reads up to 64 states that stand one after another in an array. */
    void read(long[] states, int at, int count) {
        reader.read(states, at, count);
        listOpen();
        listEdge();
        listDoubtful(count);
    }

    private void listOpen() {
        open.count = 0;
        for (int number = circuit.firstGate; number < circuit.firstGate + circuit.gates(); number++) {
            open.add(number, reader.open(number) != 0 ? 1 : 0);
        }
    }

    private void listEdge() {
        edge.count = 0;
        boolean[] listed = new boolean[circuit.firstGate + circuit.gates()];
        for (int o = 0; o < open.count; o++) {
            int g = open.of[o] - circuit.firstGate;
            edge(circuit.left[g] >> 1, listed);
            edge(circuit.right[g] >> 1, listed);
        }
    }

    private void listDoubtful(int count) {
        doubtful.count = 0;
        for (int p = 0; p < circuit.watch.length; p++) {
            doubtful.add(p, ~reader.fixed(circuit.watch[p]) << (64 - count) != 0 ? 1 : 0);
        }
    }

    private void edge(int number, boolean[] listed) {
        boolean chosen = number > circuit.memory.size() && number < circuit.firstGate;
        if (!chosen && !listed[number] && reader.open(number) == 0) {
            listed[number] = true;
            edge.add(number, 1);
        }
    }

    /** Stands in one of the states that were read; gives what may happen there. */
    Moves stand(int state) {
        fixEdge(state);
        listGates(state);
        listChanging(state);
        listReached(state);
        return reader.moves(state);
    }

    private void fixEdge(int state) {
        for (int e = 0; e < edge.count; e++) {
            fix(edge.of[e], state);
        }
    }

    private void listGates(int state) {
        gates.count = 0;
        for (int o = 0; o < open.count; o++) {
            int number = open.of[o];
            fix(number, state);
            gates.add(number, reader.open(number) >>> state & 1);
        }
    }

    private void listChanging(int state) {
        Arrays.fill(common, 0);
        changing.count = 0;
        for (int i = 0; i < circuit.next.length; i++) {
            int literal = circuit.next[i];
            long on = reader.fixed(literal) >>> state & 1;
            common[i >> 6] |= on << (i & 63);
            changing.add(i, ~(on | reader.fixed(literal ^ 1) >>> state) & 1);
        }
    }

    private void listReached(int state) {
        reached.count = 0;
        for (int d = 0; d < doubtful.count; d++) {
            reached.add(doubtful.of[d], ~(reader.fixed(circuit.watch[doubtful.of[d]]) >>> state) & 1);
        }
    }

    private void fix(int number, int state) {
        values[2 * number] = -(reader.fixed(2 * number) >>> state & 1);
        values[2 * number + 1] = -(reader.fixed(2 * number + 1) >>> state & 1);
    }

    /** Carries out scans with choices in the lanes in which each is made. */
    void evaluate(long[] masks) {
        choose(masks);
        carryOut();
    }

    private void choose(long[] masks) {
        int literal = 2 * (1 + circuit.memory.size());
        for (long mask : masks) {
            values[literal++] = mask;
            values[literal++] = ~mask;
        }
    }

    private void carryOut() {
        long[] v = values;
        int[] left = circuit.left;
        int[] right = circuit.right;
        int[] number = gates.of;
        int first = circuit.firstGate;
        for (int i = 0; i < gates.count; i++) {
            int n = number[i];
            long value = v[left[n - first]] & v[right[n - first]];
            v[2 * n] = value;
            v[2 * n + 1] = ~value;
        }
    }

    /** How many watched signals a scan may have made false. */
    int reached() {
        return reached.count;
    }

    /** One of them. */
    int reached(int index) {
        return reached.of[index];
    }

    /** Lanes in which it is false. */
    long broken(int index, int state) {
        int literal = circuit.watch[reached.of[index]];
        return reader.fixed(literal ^ 1) >>> state << 63 != 0 ? -1L : ~values[literal];
    }

    /**
     * The different states the first lanes lead to. Few bits differ between the lanes of one state, so lanes are told apart by those bits alone.
     *
     * @param used how many lanes count
     * @param into gets the states one after another, in the order of the first lane that leads to each
     * @param lane gets that lane
     * @return how many there are
     */
    int states(int used, long[] into, int[] lane) {
        int words = common.length;
        long valid = -1L >>> (64 - used);
        long[] same = common.clone();
        int count = 0;
        for (int c = 0; c < changing.count; c++) {
            int i = changing.of[c];
            long column = values[circuit.next[i]] & valid;
            if (column == valid) {
                same[i >> 6] |= 1L << (i & 63);
            } else if (column != 0) {
                differing[count] = column;
                differs[count++] = i;
            }
        }
        int distinct = 0;
        for (long left = valid; left != 0; distinct++) {
            lane[distinct] = Long.numberOfTrailingZeros(left);
            left &= ~alike(lane[distinct], count, same, into, distinct * words);
        }
        return distinct;
    }

    /** Writes the state a lane leads to; gives the lanes that lead to it too. */
    private long alike(int lane, int count, long[] same, long[] into, int at) {
        long alike = -1;
        int d = 0;
        for (int w = 0; w < same.length; w++) {
            long bits = same[w];
            for (; d < count && differs[d] >> 6 == w; d++) {
                long bit = differing[d] >>> lane & 1;
                bits |= bit << differs[d];
                alike &= ~(differing[d] ^ -bit);
            }
            into[at + w] = bits;
        }
        return alike;
    }
}
