package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * What makes a message go and brings vacuuming back, found by trying: on a controller with a healthy plant, while users vacuum, one contact behind the cause is made bad, and good again where the cause comes only then, or one button pressed, until the cause is there; then it is
 * made good again and nobody presses anything; then buttons are pressed.
 *
 * @param goesByItself whether the message goes when the contact is good again, with no button
 * @param interrupts whether vacuuming ends when it comes
 * @param returnsByItself whether vacuuming comes back with no button
 * @param presses words of the buttons that bring back what does not come by itself, in their order
 * @param untilPress how many of them it takes for the message to go
 * @param endOf the step at whose end the message goes, where it stays after the last button
 */
public record WayBack(
        boolean goesByItself,
        boolean interrupts,
        boolean returnsByItself,
        List<String> presses,
        int untilPress,
        Optional<String> endOf) {
    private static final double SECOND_s = 1;

    /** From one button to the next. */
    private static final double REACHES_s = 10;

    /** A contact is bad for longer than any filter or probe takes. */
    private static final double BRINGS_s = 90;

    private static final double LONG_s = 200;
    private static final double LONGEST_s = 1000;

    public WayBack {
        presses = List.copyOf(presses);
    }

    /** For every cause that is not latched and demands something, by name; none where users cannot be brought to vacuum, the cause not be brought about or nothing brings vacuuming back. */
    public static Map<String, WayBack> of(Sequence sequence) {
        Map<String, WayBack> ways = new LinkedHashMap<>();
        Optional<Panel> vacuuming = new Panel(sequence).started();
        vacuuming.ifPresent(panel -> sequence.causes().stream()
                .filter(c -> !c.latched() && !c.demands().isEmpty())
                .forEach(c -> panel.wayBack(c).ifPresent(w -> ways.put(c.name(), w))));
        return ways;
    }

    /** A controller, its plant and somebody in front of it. */
    private static final class Panel {
        private final Sequence sequence;
        private final Controller controller;
        private final HealthyPlant plant;
        private final Set<String> bad = new LinkedHashSet<>();

        Panel(Sequence sequence) {
            this.sequence = sequence;
            controller = new Controller(sequence);
            plant = new HealthyPlant(sequence);
        }

        private Panel(Panel other) {
            sequence = other.sequence;
            controller = other.controller.copy();
            plant = new HealthyPlant(other.plant);
            bad.addAll(other.bad);
        }

        Optional<Panel> started() {
            run(SECOND_s, () -> false);
            press("reset");
            run(LONG_s, () -> false);
            press("start");
            run(LONG_s, this::vacuums);
            return vacuums() ? Optional.of(this) : Optional.empty();
        }

        private boolean vacuums() {
            return controller.has("in_vacuuming") && controller.is("in_vacuuming");
        }

        private boolean rests() {
            return !vacuums() && List.of("standing", "holding").contains(controller.step());
        }

        private void run(double time_s, BooleanSupplier until) {
            scan("", HealthyPlant.SCAN_ms); // contacts that were just changed are read first
            long left_ms = Math.round(1000 * time_s) - HealthyPlant.SCAN_ms;
            while (left_ms > 0 && !until.getAsBoolean()) {
                long next_ms = Math.min(left_ms, plant.next_ms(controller));
                scan("", next_ms);
                left_ms -= next_ms;
            }
        }

        private void press(String button) {
            scan(button, HealthyPlant.SCAN_ms);
            run(SECOND_s, () -> false);
        }

        private void scan(String pressed, long sinceLast_ms) {
            plant.follow(controller, bad::contains, covered -> false);
            sequence.buttons().forEach(b -> controller.press(b.name(), b.name().equals(pressed)));
            controller.scan(sinceLast_ms);
        }

        Optional<WayBack> wayBack(Sequence.Cause cause) {
            List<Panel> tries = new ArrayList<>();
            for (Sequence.Input input : sequence.broughtAboutBy(cause)) {
                Panel panel = new Panel(this);
                panel.bad.add(input.name());
                panel.run(BRINGS_s, () -> panel.controller.is(cause.name()));
                if (!panel.controller.is(cause.name())) {
                    panel.bad.clear();
                    panel.run(SECOND_s, () -> panel.controller.is(cause.name()));
                }
                tries.add(panel);
            }
            for (Sequence.Button button : sequence.buttons()) {
                Panel panel = new Panel(this);
                panel.press(button.name());
                tries.add(panel);
            }
            return tries.stream()
                    .filter(p -> p.controller.is(cause.name()))
                    .findFirst()
                    .flatMap(p -> p.back(cause.name()));
        }

        /** The message stands: all is good again. */
        private Optional<WayBack> back(String cause) {
            run(SECOND_s, () -> false);
            boolean interrupts = !vacuums();
            bad.clear();
            run(LONG_s, () -> vacuums() && !controller.is(cause));
            run(LONGEST_s, () -> vacuums() || rests());
            run(SECOND_s, () -> false);
            boolean goes = !controller.is(cause);
            if (goes && vacuums()) {
                return Optional.of(new WayBack(true, interrupts, true, List.of(), 0, Optional.empty()));
            }
            return ways().stream()
                    .flatMap(way -> new Panel(this).pressed(cause, way).stream())
                    .findFirst()
                    .map(w -> new WayBack(
                            goes,
                            interrupts,
                            false,
                            w.presses(),
                            goes ? 0 : w.untilPress(),
                            goes ? Optional.empty() : w.endOf()));
        }

        /** Fewest buttons first: START; one other button, then START; two others, then START; STOP, RESET at rest, START. */
        private List<List<String>> ways() {
            List<String> others = sequence.buttons().stream()
                    .map(Sequence.Button::name)
                    .filter(b -> !List.of("start", "stop", "reset").contains(b))
                    .toList();
            List<List<String>> ways = new ArrayList<>(List.of(List.of("start")));
            others.forEach(o -> ways.add(List.of(o, "start")));
            others.forEach(
                    a -> others.stream().filter(b -> !b.equals(a)).forEach(b -> ways.add(List.of(a, b, "start"))));
            ways.add(List.of("stop", "reset", "start"));
            return ways;
        }

        private Optional<WayBack> pressed(String cause, List<String> way) {
            String endOf = "";
            int until = way.size();
            for (int n = 1; n <= way.size(); n++) {
                String button = way.get(n - 1);
                press(button);
                until = controller.is(cause) ? way.size() : Math.min(until, n);
                boolean last = n == way.size();
                while (last && controller.is(cause) && endOf.isEmpty()) {
                    String step = controller.step();
                    run(LONG_s, () -> !controller.step().equals(step) || !controller.is(cause));
                    if (controller.step().equals(step) && controller.is(cause)) {
                        return Optional.empty();
                    }
                    endOf = controller.is(cause) ? "" : step;
                }
                run(LONGEST_s, () -> vacuums() || rests());
                run(last ? SECOND_s : REACHES_s, () -> false);
            }
            return vacuums() && !controller.is(cause)
                    ? Optional.of(new WayBack(
                            false,
                            true,
                            false,
                            way.stream().map(this::words).toList(),
                            until,
                            Optional.of(endOf).filter(s -> !s.isEmpty())))
                    : Optional.empty();
        }

        private String words(String button) {
            return sequence.buttons().stream()
                    .filter(b -> b.name().equals(button))
                    .map(Sequence.Button::words)
                    .findFirst()
                    .orElse(button);
        }
    }
}
