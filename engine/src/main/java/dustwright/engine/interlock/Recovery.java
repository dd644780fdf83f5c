package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * Whether service can be regained: from every state that was visited, with all contacts good from now on, probes clear, every running time
 * out, and a person who presses what the lamps ask for. And whether steps can follow each other for ever although nothing happens and no time
 * passes.
 */
final class Recovery {
    /** No way back to vacuuming takes more scans than this; a longer one is a loop. */
    private static final int PATIENCE = 200;

    private final Circuit circuit;
    private final Search.Result result;
    private final int reset;
    private final int change;
    private final int placed;
    private final int start;
    private final int containerProbe;
    private final int receiverProbe;
    private final long[] allTimes;

    private Recovery(World world, Circuit circuit, Search.Result result) {
        this.circuit = circuit;
        this.result = result;
        reset = choice("push_reset");
        change = choice("push_container_change");
        placed = choice("push_container_placed");
        start = choice("flip_start");
        containerProbe = choice("flip_t_container_covered");
        receiverProbe = choice("flip_t_receiver_covered");
        allTimes = new long[circuit.choices.size()];
        for (int c = 0; c < allTimes.length; c++) {
            String name = circuit.choices.get(c);
            boolean time = name.startsWith("out_") && !world.contacts().contains(name);
            allTimes[c] = time || name.equals("coasted") ? -1L : 0;
        }
    }

    static Recovery of(World world, Circuit circuit, Search.Result result) {
        return new Recovery(world, circuit, result);
    }

    private int choice(String name) {
        return circuit.choices.indexOf(name);
    }

    private boolean is(long[] state, int at, String name) {
        Integer bit = circuit.memoryByName.get(name);
        return bit != null && (state[at + (bit >> 6)] >>> (bit & 63) & 1) == 1;
    }

    /** Moves that lead to the first state without a way back; told as a story. */
    Story deadEnd(Sequence sequence, World world, Circuit drawn, Search.Result found) {
        if (!circuit.memoryByName.containsKey("in_vacuuming")) {
            return Story.NONE;
        }
        Lanes lanes = new Lanes(circuit);
        int words = circuit.words();
        for (int s = 0; s < result.states(); s++) {
            if (!returns(lanes, Arrays.copyOfRange(result.visited().bits, s * words, (s + 1) * words))) {
                return Story.told(sequence, world, java.util.Optional.empty(), drawn, found.way(s), -1);
            }
        }
        return Story.NONE;
    }

    private boolean returns(Lanes lanes, long[] from) {
        long[] state = from.clone();
        for (int scan = 0; scan < PATIENCE; scan++) {
            if (is(state, 0, "in_vacuuming")) {
                return true;
            }
            step(lanes, state, helpful(state));
        }
        return false;
    }

    /** All well, times out, and one button as the lamps ask for it. */
    private long[] helpful(long[] state) {
        long[] choices = allTimes.clone();
        press(choices, containerProbe, is(state, 0, "t_container_covered"));
        press(choices, receiverProbe, is(state, 0, "t_receiver_covered"));
        boolean held = is(state, 0, "start");
        boolean tripped = is(state, 0, "in_tripped");
        boolean lock = is(state, 0, "container_lock");
        boolean hold = is(state, 0, "container_hold");
        press(choices, reset, tripped);
        press(choices, change, !tripped && hold && !lock);
        press(choices, placed, !tripped && lock);
        press(choices, start, held || (!tripped && !lock && !hold));
        return choices;
    }

    private static void press(long[] choices, int choice, boolean pressed) {
        if (choice >= 0) {
            choices[choice] = pressed ? -1L : 0;
        }
    }

    private void step(Lanes lanes, long[] state, long[] choices) {
        lanes.setState(state, 0);
        lanes.setChoices(choices);
        lanes.evaluate();
        lanes.nextStates();
        lanes.state(0, state, 0);
    }

    /** Steps that follow each other for ever while nothing happens; empty when there are none. */
    List<String> timelessLoop(Sequence sequence) {
        Lanes lanes = new Lanes(circuit);
        int words = circuit.words();
        long[] nothing = new long[circuit.choices.size()];
        int longest = sequence.steps().size() + 2;
        for (int s = 0; s < result.states(); s++) {
            long[] state = Arrays.copyOfRange(result.visited().bits, s * words, (s + 1) * words);
            int changes = 0;
            LinkedHashSet<String> passed = new LinkedHashSet<>();
            for (int scan = 0; scan <= longest; scan++) {
                String before = inStep(sequence, state);
                step(lanes, state, nothing);
                if (inStep(sequence, state).equals(before)) {
                    break;
                }
                passed.add(before);
                changes++;
            }
            if (changes > longest) {
                return new ArrayList<>(passed);
            }
        }
        return List.of();
    }

    private String inStep(Sequence sequence, long[] state) {
        return sequence.steps().stream()
                .map(Sequence.Step::name)
                .filter(n -> is(state, 0, "in_" + n))
                .findFirst()
                .orElse("");
    }
}
