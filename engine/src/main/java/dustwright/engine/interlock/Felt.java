package dustwright.engine.interlock;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Which choices can be felt in a state: a time that does not run is out or not without a difference, and so is a button nobody listens to. A choice is felt only when a chain of gates
 * leads from it to memory or to a watched signal and the state alone fixes none of them. Moves with choices that are not felt lead where the same moves without them
 * lead, and those come earlier; so they need not be carried out, and nothing that is found changes.
 */
final class Felt {
    private final Circuit circuit;
    private final Moves all;
    private final Map<BitSet, Moves> known = new ConcurrentHashMap<>();

    Felt(Circuit circuit, Moves all) {
        this.circuit = circuit;
        this.all = all;
    }

    /** For one thread. */
    Reader reader() {
        return new Reader();
    }

    /** Works on 64 states at once: bit i of every long belongs to state i. */
    final class Reader {
        /** By literal: where it is true whatever is chosen. */
        private final long[] fixed = new long[2 * (circuit.firstGate + circuit.gates())];

        private final long[] felt = new long[circuit.firstGate + circuit.gates()];
        private final BitSet choices = new BitSet(circuit.choices.size());

        Reader() {
            fixed[1] = -1;
        }

        /** States in which a literal is true whatever is chosen. */
        long fixed(int literal) {
            return fixed[literal];
        }

        /** States in which a gate is felt and none fixes it. */
        long open(int number) {
            return felt[number] & ~fixed[2 * number] & ~fixed[2 * number + 1];
        }

        /** Takes up so many states from an array. */
        void read(long[] states, int at, int count) {
            for (int i = 0; i < circuit.memory.size(); i++) {
                long column = column(states, at + (i >> 6), i, count);
                fixed[2 * (1 + i)] = column;
                fixed[2 * (1 + i) + 1] = ~column;
            }
            fixGates();
            Arrays.fill(felt, 0);
            feltAt(circuit.next);
            feltAt(circuit.watch);
            feelGates();
        }

        private long column(long[] states, int at, int bit, int count) {
            long column = 0;
            for (int s = 0; s < count; s++) {
                column |= (states[at + s * circuit.words()] >>> bit & 1) << s;
            }
            return column;
        }

        private void fixGates() {
            int[] left = circuit.left;
            int[] right = circuit.right;
            for (int g = 0; g < left.length; g++) {
                int gate = 2 * (circuit.firstGate + g);
                fixed[gate] = fixed[left[g]] & fixed[right[g]];
                fixed[gate + 1] = fixed[left[g] ^ 1] | fixed[right[g] ^ 1];
            }
        }

        private void feltAt(int[] literals) {
            for (int literal : literals) {
                felt[literal >> 1] = -1;
            }
        }

        private void feelGates() {
            int[] left = circuit.left;
            int[] right = circuit.right;
            for (int g = left.length - 1; g >= 0; g--) {
                long where = open(circuit.firstGate + g);
                felt[left[g] >> 1] |= where & ~fixed[right[g] ^ 1];
                felt[right[g] >> 1] |= where & ~fixed[left[g] ^ 1];
            }
        }

        /** What may happen in one of the states. */
        Moves moves(int state) {
            choices.clear();
            int first = 1 + circuit.memory.size();
            for (int c = 0; c < circuit.choices.size(); c++) {
                if ((felt[first + c] >>> state & 1) != 0) {
                    choices.set(c);
                }
            }
            Moves moves = known.get(choices);
            return moves != null ? moves : known.computeIfAbsent((BitSet) choices.clone(), all::among);
        }
    }
}
