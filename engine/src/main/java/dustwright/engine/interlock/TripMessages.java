package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Whether each trip is told by its own message. For the search all trips that stop the same are one latch, so it cannot tell a jammed rotor from an open guard; here every cause of a trip is
 * looked at by itself: what brings it about must show it, and no other.
 */
final class TripMessages {
    static final Property PROPERTY = new Property(
            "message-trips",
            Property.Kind.HONEST,
            "Each trip has its own message: what brings it about, with nothing else bad, shows it, and no other trip's",
            "in the scan that reads it: its own cause and no other",
            "",
            "");

    /** What alone brings a cause about; in each line several things at once where it takes several. */
    private static final Map<String, List<String>> OWN = own();

    private final Sequence sequence;
    private final Set<String> given = new TreeSet<>();

    private TripMessages(Sequence sequence) {
        this.sequence = sequence;
        sequence.inputs().forEach(i -> given.add(i.name()));
        sequence.rules().forEach(r -> given.add(r.name()));
        sequence.outputs().forEach(o -> given.add(o.name()));
        given.add("first_scan");
    }

    private static Map<String, List<String>> own() {
        Map<String, List<String>> own = new LinkedHashMap<>();
        own.put("estop", List.of("not estop_ok"));
        own.put("fire", List.of("not fire_ok"));
        own.put("isolation", List.of("not isolation_ready"));
        own.put("power", List.of("first_scan"));
        own.put("rotor_stands", List.of("motion_lost", "motion_not_proved"));
        own.put("rotor_drive", List.of("not valve_drive_ok"));
        own.put("guard", List.of("not guard_shut"));
        own.put("rotor_undriven", List.of("turns_undriven"));
        own.put("overload", List.of("not overload_ok"));
        own.put("winding", List.of("not winding_cool"));
        own.put("discharge", List.of("not discharge_cool"));
        own.put("drive_fault", List.of("not drive_ok"));
        own.put("producers", List.of("pump_lost_1 and pump_lost_2"));
        own.put("drive", List.of("drive_slow"));
        own.put("dust_behind_filter", List.of("not after_filter_ok"));
        own.put("vent_stuck", List.of("vent_not_proved"));
        own.put("cloth_caked", List.of("filter_uncleaned and cloth_lost"));
        own.put("suction_stuck", List.of("suction_not_open", "vent_shut and not suction_open"));
        own.put("blocked", List.of("blocked_long"));
        own.put("high_too_often", List.of("receiver_high and returns_used"));
        return own;
    }

    /** The first trip that is told wrongly; nothing when each is told as itself. */
    static Story judged(Sequence sequence) {
        return new TripMessages(sequence).judged();
    }

    private Story judged() {
        for (Map.Entry<String, List<String>> own : OWN.entrySet()) {
            boolean named = sequence.causes().stream().anyMatch(c -> c.name().equals(own.getKey()));
            for (String when : own.getValue()) {
                Expr alone = Expr.of(when);
                if (named && given.containsAll(alone.names())) {
                    List<Sequence.Cause> shown = shown(alone);
                    if (shown.size() != 1 || !shown.get(0).name().equals(own.getKey())) {
                        return story(alone, shown);
                    }
                }
            }
        }
        return Story.NONE;
    }

    /** Trips that are shown when all is well but this. */
    private List<Sequence.Cause> shown(Expr alone) {
        Map<String, Boolean> values = new LinkedHashMap<>();
        sequence.inputs().forEach(i -> values.put(i.name(), true));
        alone.names().forEach(n -> values.put(n, true));
        bad(alone).forEach(n -> values.put(n, false));
        return sequence.causes().stream()
                .filter(c -> OWN.containsKey(c.name()) && Story.truth(c.when(), values))
                .toList();
    }

    private static Set<String> bad(Expr expr) {
        Set<String> bad = new TreeSet<>();
        if (expr instanceof Expr.Not not) {
            bad.addAll(not.of().names());
        } else {
            expr.terms().forEach(t -> bad.addAll(bad(t)));
        }
        return bad;
    }

    private Story story(Expr alone, List<Sequence.Cause> shown) {
        List<String> happens = new ArrayList<>();
        for (String name : alone.names()) {
            happens.add(words(name));
        }
        List<String> messages = shown.isEmpty()
                ? List.of("no message of a trip")
                : shown.stream().map(c -> "message " + c.message()).toList();
        return new Story(List.of(new Story.Scan(happens, "tripped", messages)));
    }

    private String words(String name) {
        return sequence.inputs().stream()
                .filter(i -> i.name().equals(name))
                .map(i -> i.words() + ": " + i.bad())
                .findFirst()
                .or(() -> sequence.rules().stream()
                        .filter(r -> r.name().equals(name))
                        .map(Sequence.Rule::words)
                        .findFirst())
                .orElse(name.replace('_', ' '));
    }
}
