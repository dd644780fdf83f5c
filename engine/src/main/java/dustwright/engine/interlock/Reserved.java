package dustwright.engine.interlock;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Names that a sequence may not give: the scan, the plant that is searched, the observers and the exported block make names of their own out of those of the sequence, and
 * one name for two things would make a proof of something else.
 */
public final class Reserved {
    private static final List<String> BEGINNINGS = List.of(
            "press_",
            "down_",
            "in_",
            "stops_",
            "next_",
            "exit_",
            "time_in_",
            "was_",
            "out_",
            "bad_",
            "flip_",
            "push_",
            "holds_",
            "told_",
            "untaken_",
            "begun_",
            "event_",
            "forget_",
            "t_",
            "o_",
            "c_",
            "r_",
            "n_");

    private static final List<String> ENDINGS =
            List.of("_contact", "_before", "_bad", "_healthy", "_absent", "_fitted", "_");

    private static final Set<String> WHOLE = Set.of(
            "dip",
            "dip_now",
            "powered",
            "first_scan",
            "broken",
            "breaks",
            "coasted",
            "valve_off",
            "as_it_should",
            "cycle",
            "station_sequence");

    private Reserved() {}

    /** What of a name is taken; nothing when it may be given. */
    public static Optional<String> in(String name) {
        if (WHOLE.contains(name)) {
            return Optional.of(name);
        }
        return BEGINNINGS.stream()
                .filter(name::startsWith)
                .findFirst()
                .or(() -> ENDINGS.stream().filter(name::endsWith).findFirst());
    }
}
