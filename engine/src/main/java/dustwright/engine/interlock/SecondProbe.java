package dustwright.engine.interlock;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a second level probe does what it is there for. As long as both see the same dust it makes no difference which of them is read; so each of them is made blind for ever, in a search of its own, and what
 * the probe stops must still stop.
 */
final class SecondProbe {
    private static final Property PROPERTY = new Property(
            "second-probe",
            Property.Kind.STOPS,
            "Where a level has several probes, with any one of them blind the others still open the vent and hold the valve in time",
            "with that probe reading free for ever: o_container_long -> not vent_shut and valve_off; o_receiver_long -> not vent_shut",
            "",
            "");

    private static final Map<String, List<String>> STOPS = Map.of(
            "container_free",
            List.of("container-high-vent", "container-high-valve"),
            "receiver_free",
            List.of("receiver-high-vent"));

    private SecondProbe() {}

    /** The verdict on a sequence; nothing where no level has a second probe. */
    static Optional<Proof.Verdict> judged(Sequence sequence) {
        List<String> doubled = STOPS.keySet().stream()
                .sorted()
                .filter(first -> Witnesses.alike(sequence, first).size() > 1)
                .toList();
        Story story = doubled.stream()
                .flatMap(first -> Witnesses.alike(sequence, first).stream()
                        .map(probe -> missed(sequence, probe, STOPS.getOrDefault(first, List.of()))))
                .filter(s -> !s.scans().isEmpty())
                .findFirst()
                .orElse(Story.NONE);
        return doubled.isEmpty() ? Optional.empty() : Optional.of(new Proof.Verdict(PROPERTY, story, Set.of()));
    }

    private static Story missed(Sequence sequence, Sequence.Input probe, List<String> stops) {
        DeviceFault blind = new DeviceFault(
                "blind",
                probe.words() + " " + probe.tag() + " reads " + probe.good(),
                probe.name(),
                "as_it_should or broken",
                "");
        World world = World.of(sequence, Optional.of(blind));
        Circuit circuit = world.circuit();
        boolean[] wanted = new boolean[world.properties().size()];
        for (int p = 0; p < wanted.length; p++) {
            wanted[p] = stops.contains(world.properties().get(p).id());
        }
        Search.Result result = Search.runUntil(circuit, world.moves(circuit, 1, 1), wanted);
        for (int p = 0; p < wanted.length; p++) {
            if (wanted[p] && !result.holds(p)) {
                return Story.told(
                        sequence,
                        world,
                        Optional.of(blind),
                        circuit,
                        result.stories().get(p),
                        p);
            }
        }
        return Story.NONE;
    }
}
