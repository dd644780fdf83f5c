package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The walk for the panel's test is carried out with real times, by somebody who does only what its lines say, on a controller with a healthy plant: after every line the step is the one that
 * stands there.
 */
class ShopTestInTimeTest {
    private static final long SCAN_ms = 100;
    private static final double MOMENT_s = 2;

    @ParameterizedTest
    @ValueSource(ints = {0, 20, 34, 62, 64, 128, 608})
    void the_walk_can_be_done_with_a_watch(int variant) {
        Sequence sequence = neverCountedOut(DefaultSequence.of("panel", Options.numbered(variant)));
        ShopTest walk = ShopTest.of(sequence);
        Panel panel = new Panel(sequence);
        for (int line = 0; line < walk.acts().size(); line++) {
            ShopTest.Act act = walk.acts().get(line);
            panel.act(act, panel.longest_s + 10);
            assertThat(panel.controller.step())
                    .as("variant %d, line %d: %s", variant, line + 1, act)
                    .isEqualTo(act.scan().step());
        }
    }

    /**
     * Every way is taken but one that would have to be timed within settling; every trip comes while a producer runs; only what needs counting is left, a drive that must already be slow, and what takes longer than
     * the step in which it would end it.
     */
    @ParameterizedTest
    @ValueSource(ints = {0, 62})
    void nothing_is_left_out_but_what_needs_counting(int variant) {
        ShopTest walk = ShopTest.of(DefaultSequence.of("panel", Options.numbered(variant)));
        assertThat(walk.notTaken()).isSubsetOf(new ShopTest.Exit("settling", 4, "dust_fall"));
        assertThat(walk.notSeen())
                .isSubsetOf(Stream.concat(
                                Stream.of(
                                        "high_too_often",
                                        "starts",
                                        "START refused in standing with starts_used",
                                        "drive",
                                        "time out of drive_slow",
                                        "cloth_caked",
                                        "cloth_weak",
                                        "run_up_2 to holding by filter_uncleaned and not air_good",
                                        "run_up_2 to run_on by (container_hold or soft_hold or receiver_high) and not pump"),
                                walk.notSeen().stream()
                                        .filter(s ->
                                                s.matches(".* to run_on by (not air_enough|unloaded_out|not pump)")))
                        .toList());
    }

    /** A panel with one thing wrong shows it somewhere in the walk: step, an output, a lamp or a message is otherwise than at a right panel. */
    @Test
    void a_wrong_panel_is_found_out_by_the_walk() {
        Sequence right = neverCountedOut(DefaultSequence.of("panel", Options.USUAL));
        List<ShopTest.Act> acts = ShopTest.of(right).acts();
        List<Seen> seen = Seen.at(right, acts);
        Map<String, Sequence> wrong = WrongPanels.of(right);
        assertThat(wrong).hasSize(19);
        assertThat(wrong.entrySet().stream()
                        .filter(w -> !isFoundOut(w.getValue(), acts, seen))
                        .map(Map.Entry::getKey))
                .isEmpty();
        assertThat(wrong.values()).doesNotContain(right);
    }

    /** The other panel has as long as the right one for each line, and a moment. */
    private static boolean isFoundOut(Sequence wrong, List<ShopTest.Act> acts, List<Seen> seen) {
        Panel panel = new Panel(wrong);
        for (int line = 0; line < acts.size(); line++) {
            panel.act(acts.get(line), seen.get(line).after_s() + MOMENT_s);
            if (!panel.shown().equals(seen.get(line).shown())) {
                return true;
            }
        }
        return false;
    }

    /** What a right panel shows after a line, and how long that takes. */
    private record Seen(Map<String, Boolean> shown, double after_s) {
        static List<Seen> at(Sequence right, List<ShopTest.Act> acts) {
            Panel panel = new Panel(right);
            return acts.stream()
                    .map(a -> {
                        double after_s = panel.act(a, panel.longest_s + 10);
                        return new Seen(panel.shown(), after_s);
                    })
                    .toList();
        }
    }

    /** For the test of a panel counts are set so high that they never fill. */
    private static Sequence neverCountedOut(Sequence whole) {
        Sequence patient = whole;
        for (Sequence.Rule rule : whole.rules()) {
            if (rule instanceof Sequence.Rule.Times times) {
                patient = new Mutants(patient)
                        .withRule(new Sequence.Rule.Times(
                                times.name(), times.event(), 1000, times.forget(), times.words()));
            }
        }
        return patient;
    }

    /** A panel with somebody at it. */
    private static final class Panel {
        private final Sequence sequence;
        private final Controller controller;
        private final double longest_s;
        private final Set<String> levels = new HashSet<>();

        Panel(Sequence sequence) {
            this.sequence = sequence;
            controller = new Controller(sequence);
            longest_s = sequence.timers().stream()
                    .mapToDouble(Sequence.Timer::time_s)
                    .max()
                    .orElseThrow();
        }

        /** What somebody reads: outputs, lamps, messages. */
        Map<String, Boolean> shown() {
            Map<String, Boolean> shown = new LinkedHashMap<>(controller.outputs());
            sequence.lamps().forEach(l -> shown.put(l.name(), controller.is(l.name())));
            sequence.causes().forEach(c -> shown.put(c.message(), controller.is(c.name())));
            return shown;
        }

        double act(ShopTest.Act act, double atMost_s) {
            List<String> moves = act.moves();
            flip(moves, false);
            double contacts_s = taken_s(moves);
            if (moves.contains("dip")) {
                controller.powerLost();
            }
            String before = controller.step();
            for (double passed_s = 0; passed_s < atMost_s; passed_s += SCAN_ms / 1000.0) {
                boolean press = passed_s <= contacts_s && passed_s + SCAN_ms / 1000.0 > contacts_s;
                if (press) {
                    flip(moves, true);
                }
                scan(moves, press);
                boolean moved = !controller.step().equals(before) || act.takes().isEmpty();
                if (passed_s >= contacts_s
                        && moved
                        && controller.step().equals(act.scan().step())
                        && isDone(moves, before)) {
                    return passed_s;
                }
                if (!controller.step().equals(before)
                        && !controller.step().equals(act.scan().step())) {
                    return passed_s;
                }
            }
            return atMost_s;
        }

        /** Probes at once, buttons when it is their turn. */
        private void flip(List<String> moves, boolean buttons) {
            moves.stream()
                    .filter(m -> m.startsWith("flip_"))
                    .map(m -> m.substring(5))
                    .filter(m -> buttons
                            == sequence.buttons().stream()
                                    .anyMatch(b -> b.name().equals(m)))
                    .forEach(m -> {
                        if (!levels.remove(m)) {
                            levels.add(m);
                        }
                    });
        }

        /** Until contacts that are made bad are taken as bad; a button of the same line is pressed after that. */
        private double taken_s(List<String> moves) {
            return sequence.inputs().stream()
                    .filter(i -> moves.contains("bad_" + i.name()))
                    .flatMap(i -> i.filter().stream())
                    .mapToDouble(f -> sequence.timer(f).time_s() + SCAN_ms / 1000.0)
                    .max()
                    .orElse(0);
        }

        /** A time is out, a contact has been bad for its filter. */
        private boolean isDone(List<String> moves, String before) {
            return moves.stream().allMatch(m -> {
                if (m.startsWith("out_")) {
                    return !controller.step().equals(before) || controller.is(m.substring(4));
                }
                boolean input =
                        m.startsWith("bad_") && sequence.inputs().stream().anyMatch(i -> m.equals("bad_" + i.name()));
                return !input || !controller.is(m.substring(4));
            });
        }

        private void scan(List<String> moves, boolean first) {
            boolean open = !controller.is("vent_shut") || moves.contains("bad_t_vent");
            boolean pulls = pumpRuns() && !open;
            for (Sequence.Input input : sequence.inputs()) {
                boolean good = switch (input.name()) {
                    case "motion" ->
                        (controller.is("valve") && !moves.contains("bad_t_jam")) || moves.contains("bad_t_spins");
                    case "vent_open_limit" -> open;
                    case "no_vacuum" -> !pulls;
                    case "suction" -> pulls;
                    case "suction_open" -> !controller.is("suction_shut");
                    case "container_free" -> !levels.contains("t_container_covered");
                    case "receiver_free" -> !levels.contains("t_receiver_covered");
                    case "container_in_place" -> !moves.contains("bad_t_container_there");
                    default -> true;
                };
                controller.contact(input.name(), good && !moves.contains("bad_" + input.name()));
            }
            sequence.buttons()
                    .forEach(b -> controller.press(
                            b.name(), (first && moves.contains("push_" + b.name())) || levels.contains(b.name())));
            controller.scan(SCAN_ms);
        }

        private boolean pumpRuns() {
            return sequence.outputs().stream().anyMatch(o -> o.name().startsWith("pump") && controller.is(o.name()));
        }
    }
}
