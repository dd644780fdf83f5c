package dustwright.engine.interlock;

import java.util.Arrays;

/** Carries out 64 scans at once: bit i of every long belongs to scan i. */
final class Lanes {
    private final Circuit circuit;
    /** Values by literal, so that the inverted ones stand there too. */
    private final long[] values;

    private final long[] after;

    Lanes(Circuit circuit) {
        this.circuit = circuit;
        values = new long[2 * (circuit.firstGate + circuit.gates())];
        set(0, 0);
        after = new long[circuit.next.length];
    }

    /** The same state in every lane. */
    void setState(long[] states, int at) {
        for (int i = 0; i < circuit.memory.size(); i++) {
            set(1 + i, -((states[at + (i >> 6)] >>> (i & 63)) & 1));
        }
    }

    /** One state after another from an array, one to each lane. */
    void setStates(long[] states, int at, int lanes) {
        int words = circuit.words();
        for (int i = 0; i < circuit.memory.size(); i++) {
            long column = 0;
            for (int lane = 0; lane < lanes; lane++) {
                column |= (states[at + lane * words + (i >> 6)] >>> (i & 63) & 1) << lane;
            }
            set(1 + i, column);
        }
    }

    /** For each choice the lanes in which it is made. */
    void setChoices(long[] masks) {
        for (int c = 0; c < masks.length; c++) {
            set(1 + circuit.memory.size() + c, masks[c]);
        }
    }

    private void set(int number, long value) {
        values[2 * number] = value;
        values[2 * number + 1] = ~value;
    }

    void evaluate() {
        int[] left = circuit.left;
        int[] right = circuit.right;
        long[] v = values;
        int at = 2 * circuit.firstGate;
        for (int g = 0; g < left.length; g++) {
            long value = v[left[g]] & v[right[g]];
            v[at] = value;
            v[at + 1] = ~value;
            at += 2;
        }
    }

    long value(int literal) {
        return values[literal];
    }

    /** Lanes in which memory is true as it was set; none when there is no such memory. */
    long memory(String name) {
        Integer bit = circuit.memoryByName.get(name);
        return bit == null ? 0 : values[2 * (1 + bit)];
    }

    /** The states the lanes lead to become those they stand in. */
    void advance() {
        for (int i = 0; i < circuit.next.length; i++) {
            after[i] = value(circuit.next[i]);
        }
        for (int i = 0; i < after.length; i++) {
            set(1 + i, after[i]);
        }
    }

    /** The state a lane leads to. */
    void state(int lane, long[] into, int at) {
        Arrays.fill(into, at, at + circuit.words(), 0);
        for (int i = 0; i < circuit.next.length; i++) {
            into[at + (i >> 6)] |= (value(circuit.next[i]) >>> lane & 1) << (i & 63);
        }
    }
}
