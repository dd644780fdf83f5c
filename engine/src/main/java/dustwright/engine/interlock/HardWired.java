package dustwright.engine.interlock;

import java.util.Map;
import java.util.Set;

/** Contacts whose own wiring takes power away beside the program, which reads only a copy of them. */
public final class HardWired {
    private static final Set<String> ALL_THAT_MOVES = Set.of("pump", "pump_1", "pump_2", "valve", "pulses");

    private static final Map<String, Set<String>> CUTS = Map.of(
            "estop_ok",
            Set.of("pump", "pump_1", "pump_2", "valve", "pulses", "vent_shut"),
            "fire_ok",
            ALL_THAT_MOVES,
            "isolation_ready",
            ALL_THAT_MOVES,
            "guard_shut",
            Set.of("valve"));

    /** Outputs of default sequences of which it is known which contact takes their power. */
    private static final Set<String> KNOWN = CUTS.getOrDefault("estop_ok", Set.of());

    private HardWired() {}

    /** Whether a contact has such wiring, as every contact of the same thing has. */
    public static boolean is(String contact) {
        return CUTS.containsKey(Witnesses.unnumbered(contact));
    }

    /**
     * Whether a contact takes the power from an output by it; a vent valve without power is open. An output of the sequence's own loses its power by
     * every such contact that brings about a cause which demands it off.
     */
    public static boolean cuts(Sequence sequence, String contact, Sequence.Output output) {
        if (KNOWN.contains(output.name())) {
            return CUTS.getOrDefault(Witnesses.unnumbered(contact), Set.of()).contains(output.name());
        }
        return is(contact)
                && sequence.causes().stream()
                        .filter(c -> output.stop().equals(c.demands().get(output.name())))
                        .anyMatch(c -> sequence.broughtAboutBy(c).stream()
                                .anyMatch(i -> i.name().equals(contact)));
    }
}
