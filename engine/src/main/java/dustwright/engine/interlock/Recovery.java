package dustwright.engine.interlock;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Whether service can be regained: from every state that was visited, with all contacts good from now on, probes clear, every running time
 * out, and a person who presses what the lamps ask for. And whether steps can follow each other for ever although nothing happens and no time
 * passes.
 */
final class Recovery {
    /** No way back to vacuuming takes more scans than this; a longer one is a loop. */
    private static final int PATIENCE = 200;

    /** So many states are looked at by one thread. */
    private static final int PART = 64 * 64;

    private final Circuit circuit;
    private final Search.Result result;
    private final int reset;
    private final int change;
    private final int placed;
    private final int start;
    private final int containerProbe;
    private final int receiverProbe;
    private final int filterDrop;
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
        filterDrop = choice("bad_filter_ok");
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

    /** Moves that lead to the first state without a way back; told as a story. */
    Story deadEnd(Sequence sequence, World world, Circuit drawn, Search.Result found) {
        return circuit.memoryByName.containsKey("in_vacuuming")
                ? wayToLost(sequence, world, drawn, found, false)
                : Story.NONE;
    }

    /**
     * The same with a cloth whose drop is too high whenever users vacuum, until the filters were pulsed to the end: a START that is accepted and never leads to the cleaning gains nothing, however
     * often it is pressed.
     */
    Story cakedForEver(Sequence sequence, World world, Circuit drawn, Search.Result found) {
        boolean judged =
                filterDrop >= 0 && circuit.memoryByName.keySet().containsAll(Set.of("in_vacuuming", "in_pulsing"));
        return judged ? wayToLost(sequence, world, drawn, found, true) : Story.NONE;
    }

    /** To the start itself there is no way to tell; what follows it is lost as well. */
    private Story wayToLost(Sequence sequence, World world, Circuit drawn, Search.Result found, boolean caked) {
        OptionalInt first = IntStream.range(0, (result.states() + PART - 1) / PART)
                .parallel()
                .map(part -> firstLost(part * PART, Math.min(result.states(), (part + 1) * PART), caked))
                .filter(s -> s >= 0)
                .findFirst();
        return first.isEmpty()
                ? Story.NONE
                : Story.told(sequence, world, Optional.empty(), drawn, found.way(first.getAsInt()), -1);
    }

    /** The first of some states that does not lead back; less than zero when all do. */
    private int firstLost(int from, int to, boolean caked) {
        Lanes lanes = new Lanes(circuit);
        for (int s = from; s < to; s += 64) {
            long lost = lost(lanes, s, Math.min(64, to - s), caked) & (s == 0 ? ~1L : -1L);
            if (lost != 0) {
                return s + Long.numberOfTrailingZeros(lost);
            }
        }
        return -1;
    }

    /** Which of some states do not lead back. */
    private long lost(Lanes lanes, int from, int count, boolean caked) {
        lanes.setStates(result.visited().bits, from * circuit.words(), count);
        long lost = count == 64 ? -1L : (1L << count) - 1;
        long clean = caked ? 0 : -1L;
        for (int scan = 0; scan < PATIENCE; scan++) {
            lost &= ~(lanes.memory("in_vacuuming") & clean);
            if (lost == 0) {
                return 0;
            }
            long[] choices = helpful(lanes);
            long pulsed = 0;
            if (caked) {
                choices[filterDrop] = lanes.memory("in_vacuuming") & ~clean;
                pulsed = lanes.memory("in_pulsing");
            }
            lanes.setChoices(choices);
            lanes.evaluate();
            lanes.advance();
            if (caked) {
                clean |= pulsed & ~lanes.memory("in_pulsing");
            }
        }
        return lost;
    }

    /** All well, times out, and one button as the lamps ask for it. */
    private long[] helpful(Lanes lanes) {
        long[] choices = allTimes.clone();
        press(choices, containerProbe, lanes.memory("t_container_covered"));
        press(choices, receiverProbe, lanes.memory("t_receiver_covered"));
        long tripped = lanes.memory("in_tripped");
        long lock = lanes.memory("container_lock");
        long hold = lanes.memory("container_hold");
        press(choices, reset, tripped);
        press(choices, change, ~tripped & hold & ~lock);
        press(choices, placed, ~tripped & lock);
        press(choices, start, lanes.memory("start") | (~tripped & ~lock & ~hold));
        return choices;
    }

    private static void press(long[] choices, int choice, long pressed) {
        if (choice >= 0) {
            choices[choice] = pressed;
        }
    }

    /** Steps that follow each other for ever while nothing happens; empty when there are none. */
    List<String> timelessLoop(Sequence sequence) {
        Lanes lanes = new Lanes(circuit);
        lanes.setChoices(new long[circuit.choices.size()]);
        int longest = sequence.steps().size() + 2;
        List<String> steps =
                sequence.steps().stream().map(step -> "in_" + step.name()).toList();
        for (int s = 0; s < result.states(); s += 64) {
            int count = Math.min(64, result.states() - s);
            lanes.setStates(result.visited().bits, s * circuit.words(), count);
            long moving = count == 64 ? -1L : (1L << count) - 1;
            for (int scan = 0; scan <= longest && moving != 0; scan++) {
                long[] before = values(steps, lanes);
                lanes.evaluate();
                lanes.advance();
                moving &= changed(before, values(steps, lanes));
            }
            if (moving != 0) {
                return around(sequence, lanes, s + Long.numberOfTrailingZeros(moving), longest);
            }
        }
        return List.of();
    }

    private static long changed(long[] before, long[] after) {
        long changed = 0;
        for (int i = 0; i < before.length; i++) {
            changed |= before[i] ^ after[i];
        }
        return changed;
    }

    private static long[] values(List<String> memory, Lanes lanes) {
        long[] values = new long[memory.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = lanes.memory(memory.get(i));
        }
        return values;
    }

    /** The steps one state goes through. */
    private List<String> around(Sequence sequence, Lanes lanes, int state, int scans) {
        lanes.setState(result.visited().bits, state * circuit.words());
        Set<String> passed = new LinkedHashSet<>();
        for (int scan = 0; scan <= scans; scan++) {
            sequence.steps().stream()
                    .map(Sequence.Step::name)
                    .filter(n -> lanes.memory("in_" + n) != 0)
                    .forEach(passed::add);
            lanes.evaluate();
            lanes.advance();
        }
        return List.copyOf(passed);
    }
}
