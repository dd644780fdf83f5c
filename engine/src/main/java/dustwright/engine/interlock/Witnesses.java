package dustwright.engine.interlock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Contacts that follow what truly is in the plant; every other contact may change at any scan. A second contact of the same thing bears the name of the first with a number: {@code receiver_free_2} sees the
 * dust that {@code receiver_free} sees.
 */
public final class Witnesses {
    private static final Map<String, String> SEES = sees();
    private static final Pattern NUMBER = Pattern.compile("_[0-9]+$");

    private Witnesses() {}

    private static Map<String, String> sees() {
        Map<String, String> by = new LinkedHashMap<>();
        by.put("motion", "t_rotor");
        by.put("vent_open_limit", "t_vent_open");
        by.put("no_vacuum", "not t_vacuum");
        by.put("suction", "t_vacuum");
        by.put("suction_open", "t_suction_open");
        by.put("container_free", "not t_container_covered");
        by.put("container_in_place", "t_container_there");
        by.put("receiver_free", "not t_receiver_covered");
        return by;
    }

    /** Names of the first contact of each thing. */
    static Set<String> firsts() {
        return SEES.keySet();
    }

    /** The name of the first contact of a thing by that of any; a second bears it with a number. */
    static String unnumbered(String contact) {
        return NUMBER.matcher(contact).replaceFirst("");
    }

    /** The first contact of the thing a contact sees, which may be itself; nothing when it follows nothing that is known. */
    public static Optional<String> first(String input) {
        return Optional.of(unnumbered(input))
                .filter(SEES::containsKey)
                .or(() -> Optional.of(input).filter(SEES::containsKey));
    }

    /** What a contact sees, in logic over the plant's truth; nothing when it follows nothing that is known. */
    static Optional<String> sees(String input) {
        return first(input).map(f -> SEES.getOrDefault(f, f));
    }

    /** All contacts of a sequence that see what this first one sees, itself among them. */
    static List<Sequence.Input> alike(Sequence sequence, String first) {
        return sequence.inputs().stream()
                .filter(i -> first(i.name()).filter(first::equals).isPresent())
                .toList();
    }
}
