package dustwright.engine.interlock;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What contacts say in a plant that does what it is told: vent and vacuum follow at once, the rotor is seen turning, and a drive at its speed, a second and a half after it is driven. */
final class HealthyPlant {
    /** Time from scan to scan [ms]. */
    static final long SCAN_ms = 100;

    /** Longer than any time that is waited for [ms]. */
    private static final long FAR_ms = 100_000_000;

    /** From something being driven until it is seen turning, more than a moment [scans]. */
    private static final int TURNS = 15;

    private final Sequence sequence;
    private final Map<String, String> sees;
    private final Map<String, Integer> driven = new HashMap<>();

    HealthyPlant(Sequence sequence) {
        this.sequence = sequence;
        sees = sequence.inputs().stream()
                .map(Sequence.Input::name)
                .collect(Collectors.toMap(i -> i, i -> Witnesses.first(i).orElse("")));
    }

    HealthyPlant(HealthyPlant other) {
        sequence = other.sequence;
        sees = other.sees;
        driven.putAll(other.driven);
    }

    /** Sets every contact before a scan; what is otherwise goes by its name: a contact that is bad, {@code t_jam}, {@code t_spins}, {@code t_vent}, {@code t_container_there}. */
    void follow(Controller controller, Predicate<String> otherwise, Predicate<String> covered) {
        sequence.outputs().stream()
                .map(Sequence.Output::name)
                .filter(o -> o.equals("valve") || o.startsWith("pump"))
                .forEach(o -> driven.put(o, controller.is(o) ? driven.getOrDefault(o, 0) + 1 : 0));
        boolean open = !isOn(controller, "vent_shut") || otherwise.test("t_vent");
        boolean pulls =
                sequence.outputs().stream().anyMatch(o -> o.name().startsWith("pump") && controller.is(o.name()))
                        && !open;
        for (Sequence.Input input : sequence.inputs()) {
            boolean good = switch (sees.getOrDefault(input.name(), "")) {
                case "motion" -> (turns("valve") && !otherwise.test("t_jam")) || otherwise.test("t_spins");
                case "vent_open_limit" -> open;
                case "no_vacuum" -> !pulls;
                case "suction" -> pulls;
                case "suction_open" -> !isOn(controller, "suction_shut");
                case "container_free" -> !covered.test("t_container_covered");
                case "receiver_free" -> !covered.test("t_receiver_covered");
                case "container_in_place" -> !otherwise.test("t_container_there");
                default ->
                    !input.name().startsWith("at_speed") || turns(input.name().replace("at_speed", "pump"));
            };
            controller.contact(input.name(), good && !otherwise.test(input.name()));
        }
    }

    /** Until the next scan [ms]: many scans in which nothing can change are one. */
    long next_ms(Controller controller) {
        boolean follows = driven.values().stream().anyMatch(d -> d > 0 && d <= TURNS);
        long quiet_ms = follows ? 0 : controller.quiet_ms();
        return quiet_ms > FAR_ms ? FAR_ms : Math.max(1, (quiet_ms + SCAN_ms - 1) / SCAN_ms) * SCAN_ms;
    }

    private boolean turns(String output) {
        return driven.getOrDefault(output, 0) > TURNS;
    }

    private static boolean isOn(Controller controller, String name) {
        return controller.has(name) && controller.is(name);
    }
}
