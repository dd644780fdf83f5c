package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What was found when every state was visited.
 *
 * @param sequence the sequence that was judged
 * @param fault the device that may break, if any
 * @param mostEvents events in one scan
 * @param mostBad bad contacts in one scan
 * @param states states that can be reached
 * @param scans scans that were carried out
 * @param verdicts one for every property that applies
 * @param doNotApply properties that speak of devices the sequence does not have
 * @param absent names that properties speak of and the sequence does not have: taken as healthy and never there
 * @param unjudged contacts, outputs and lamps of the sequence that no property speaks of
 * @param times what the search leaves open: whether times and numbers are as is usual
 * @param stepsNeverReached steps no plant and no operator can bring about
 * @param timelessLoop steps that follow each other for ever without time or event; empty when there is no such loop
 * @param deadEnd how a state is reached from which lamps and RESET, change and START do not lead back to vacuuming; empty when there is none
 * @param cakedForEver how a state is reached from which START is accepted again and again and filters that are too dirty are never cleaned; empty when there is none
 */
public record Proof(
        Sequence sequence,
        Optional<DeviceFault> fault,
        int mostEvents,
        int mostBad,
        int states,
        long scans,
        List<Verdict> verdicts,
        List<Property> doNotApply,
        Set<String> absent,
        Set<String> unjudged,
        List<Times.Judged> times,
        List<String> stepsNeverReached,
        List<String> timelessLoop,
        Story deadEnd,
        Story cakedForEver) {
    /**
     * One property with the shortest story that breaks it; the story is empty when it holds.
     *
     * @param without names the property would judge too, if the sequence had them
     */
    public record Verdict(Property property, Story story, Set<String> without) {
        /** Whether it holds in every state. */
        public boolean holds() {
            return story.scans().isEmpty();
        }
    }

    /** How much may happen in one scan. */
    public enum Adversary {
        /** One event and one bad contact. */
        PLAIN(1, 1),
        /** One event and any two bad contacts. */
        TWO_BAD(1, 2),
        /** Any two events and any two bad contacts. */
        PAIRS(2, 2);

        private final int events;
        private final int bad;

        Adversary(int events, int bad) {
            this.events = events;
            this.bad = bad;
        }
    }

    /** Visits every state of a sequence with healthy devices. */
    public static Proof of(Sequence sequence, Adversary adversary) {
        return of(sequence, Optional.empty(), adversary);
    }

    /** Visits every state of a sequence with a device that may break at any time. */
    public static Proof of(Sequence sequence, Optional<DeviceFault> fault, Adversary adversary) {
        World world = World.of(sequence, fault);
        Circuit circuit = world.circuit();
        Search.Result result = Search.run(circuit, world.moves(circuit, adversary.events, adversary.bad), false);
        List<Verdict> verdicts = new ArrayList<>();
        for (int p = 0; p < world.properties().size(); p++) {
            verdicts.add(new Verdict(
                    world.properties().get(p),
                    Story.told(sequence, world, fault, circuit, result.stories().get(p), p),
                    world.without().get(p)));
        }
        verdicts.add(new Verdict(TripMessages.PROPERTY, TripMessages.judged(sequence), Set.of()));
        if (fault.isEmpty()) {
            SecondProbe.judged(sequence).ifPresent(verdicts::add);
        }
        Recovery recovery = Recovery.of(world, circuit, result);
        return new Proof(
                sequence,
                fault,
                adversary.events,
                adversary.bad,
                result.states(),
                result.scans(),
                verdicts,
                world.doNotApply(),
                world.absent(),
                world.unjudged(),
                Times.judged(sequence),
                neverReached(sequence, circuit, result),
                recovery.timelessLoop(sequence),
                fault.isPresent() ? Story.NONE : recovery.deadEnd(sequence, world, circuit, result),
                fault.isPresent() ? Story.NONE : recovery.cakedForEver(sequence, world, circuit, result));
    }

    /** Whether every property holds, every step can be reached, and no dead end or timeless loop was found. */
    public boolean holds() {
        return verdicts.stream().allMatch(Verdict::holds)
                && stepsNeverReached.isEmpty()
                && timelessLoop.isEmpty()
                && times.stream().allMatch(Times.Judged::holds)
                && deadEnd.scans().isEmpty()
                && cakedForEver.scans().isEmpty();
    }

    /** Properties that do not hold. */
    public Set<String> broken() {
        Set<String> broken = new LinkedHashSet<>();
        verdicts.stream()
                .filter(v -> !v.holds())
                .forEach(v -> broken.add(v.property().id()));
        return broken;
    }

    /** Properties that a device fault defeats; those that are broken with healthy devices too are among them. */
    public static Set<String> defeated(Sequence sequence, DeviceFault fault) {
        World world = World.of(sequence, Optional.of(fault));
        Circuit circuit = world.circuit();
        Search.Result result = Search.run(circuit, world.moves(circuit, 1, 1), false);
        Set<String> lost = new LinkedHashSet<>();
        for (int p = 0; p < world.properties().size(); p++) {
            if (!result.holds(p)) {
                lost.add(world.properties().get(p).id());
            }
        }
        return lost;
    }

    static List<String> neverReached(Sequence sequence, Circuit circuit, Search.Result result) {
        long[] ever = new long[circuit.words()];
        for (int s = 0; s < result.states(); s++) {
            for (int w = 0; w < ever.length; w++) {
                ever[w] |= result.visited().bits[s * ever.length + w];
            }
        }
        List<String> never = new ArrayList<>();
        for (Sequence.Step step : sequence.steps()) {
            Integer bit = circuit.memoryByName.get("in_" + step.name());
            if (bit == null || (ever[bit >> 6] >>> (bit & 63) & 1) == 0) {
                never.add(step.name());
            }
        }
        return never;
    }
}
