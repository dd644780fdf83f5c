package dustwright.engine.interlock;

/** Carries out 64 scans at once: bit i of every long belongs to scan i. */
final class Lanes {
    private final Circuit circuit;
    private final long[] values;
    private final long[] rows;

    Lanes(Circuit circuit) {
        this.circuit = circuit;
        values = new long[circuit.firstGate + circuit.gates()];
        rows = new long[64 * circuit.words()];
    }

    /** The same state in every lane. */
    void setState(long[] states, int at) {
        for (int i = 0; i < circuit.memory.size(); i++) {
            values[1 + i] = -((states[at + (i >> 6)] >>> (i & 63)) & 1);
        }
    }

    /** For each choice the lanes in which it is made. */
    void setChoices(long[] masks) {
        System.arraycopy(masks, 0, values, 1 + circuit.memory.size(), masks.length);
    }

    void evaluate() {
        int[] left = circuit.left;
        int[] right = circuit.right;
        long[] v = values;
        int at = circuit.firstGate;
        for (int g = 0; g < left.length; g++) {
            int a = left[g];
            int b = right[g];
            v[at++] = (v[a >> 1] ^ -(a & 1L)) & (v[b >> 1] ^ -(b & 1L));
        }
    }

    long value(int literal) {
        return values[literal >> 1] ^ -(literal & 1L);
    }

    /** Turns the memory's columns into one state per lane. */
    void nextStates() {
        for (int w = 0; w < circuit.words(); w++) {
            for (int i = 0; i < 64; i++) {
                int bit = w * 64 + i;
                rows[w * 64 + i] = bit < circuit.next.length ? value(circuit.next[bit]) : 0;
            }
            transpose(rows, w * 64);
        }
    }

    /** The state a lane leads to. */
    void state(int lane, long[] into, int at) {
        for (int w = 0; w < circuit.words(); w++) {
            into[at + w] = rows[w * 64 + lane];
        }
    }

    /** Bit j of row i becomes bit i of row j; halves are exchanged, then quarters, and so on. */
    static void transpose(long[] rows, int at) {
        long mask = 0x00000000FFFFFFFFL;
        for (int width = 32; width != 0; width >>= 1, mask ^= mask << width) {
            for (int k = 0; k < 64; k = ((k | width) + 1) & ~width) {
                long swap = ((rows[at + k] >>> width) ^ rows[at + (k | width)]) & mask;
                rows[at + k] ^= swap << width;
                rows[at + (k | width)] ^= swap;
            }
        }
    }
}
