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

    private HardWired() {}

    /** Whether a contact has such wiring. */
    public static boolean is(String contact) {
        return CUTS.containsKey(contact);
    }

    /** Whether a contact takes the power from an output by it; a vent valve without power is open. */
    public static boolean cuts(String contact, String output) {
        return CUTS.getOrDefault(contact, Set.of()).contains(output);
    }
}
