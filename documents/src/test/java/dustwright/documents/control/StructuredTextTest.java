package dustwright.documents.control;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.interlock.Controller;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The function block does in every scan what the controller does, on random traces with an operator who mostly follows the lamps. */
class StructuredTextTest {
    private static final int SCANS = 30;

    private static final int USUAL_TRACES = 10_000;

    /** 10 000 traces, 300 000 scans, in every build; {@code -Ddustwright.traces=100000} for a hundred thousand with each kind of discharge. */
    private static final int TRACES = Integer.getInteger("dustwright.traces", USUAL_TRACES);

    @Test
    void random_traces_give_the_same_outputs_lamps_and_messages() {
        Set<String> reached = same(DefaultSequence.of("bag", Options.USUAL), TRACES);
        assertThat(reached)
                .contains(
                        "standing",
                        "warning",
                        "valve_proving",
                        "run_up",
                        "vacuuming",
                        "settling",
                        "pulsing",
                        "dust_fall",
                        "holding",
                        "run_on",
                        "tripped");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 8, 16, 31, 32, 64, 128, 190, 192, 384, 639, 766})
    void other_variants_too(int variant) {
        boolean otherDischarge = variant == 64 || variant == 128;
        same(
                DefaultSequence.of("variant", Options.numbered(variant)),
                otherDischarge && TRACES > USUAL_TRACES ? TRACES : 2_000);
    }

    private static Set<String> same(Sequence sequence, int traces) {
        StructuredTextRunner block = new StructuredTextRunner(StructuredText.of(sequence));
        List<String> compared = Stream.of(
                        sequence.outputs().stream().map(Sequence.Output::name),
                        sequence.lamps().stream().map(Sequence.Lamp::name),
                        sequence.causes().stream().map(Sequence.Cause::name))
                .flatMap(s -> s)
                .toList();
        Set<String> reached = new HashSet<>();
        Controller controller = new Controller(sequence);
        for (int trace = 0; trace < traces; trace++) {
            SplittableRandom random = new SplittableRandom(trace);
            controller.powerLost();
            for (int scan = 0; scan < SCANS; scan++) {
                boolean first = scan == 0;
                long sinceLast_ms =
                        random.nextInt(8) == 0 ? 200_000L * (1 + random.nextInt(9)) : 100L * (1 + random.nextInt(160));
                contacts(sequence, controller, block, random);
                buttons(sequence, controller, block, random, first);
                block.set("first_scan", first);
                block.set("cycle", sinceLast_ms);
                controller.scan(sinceLast_ms);
                block.call(sinceLast_ms);
                for (String name : compared) {
                    if (controller.is(name) != block.is(StructuredText.id(name))) {
                        throw new AssertionError("trace " + trace + ", scan " + scan + ": " + name + " differs");
                    }
                }
                reached.add(controller.step());
            }
        }
        return reached;
    }

    private static void contacts(
            Sequence sequence, Controller controller, StructuredTextRunner block, SplittableRandom random) {
        boolean open = !controller.is("vent_shut");
        boolean pulls =
                sequence.outputs().stream().anyMatch(o -> o.name().startsWith("pump") && controller.is(o.name()))
                        && !open;
        for (Sequence.Input input : sequence.inputs()) {
            boolean usual = switch (input.name()) {
                case "motion" -> controller.is("valve");
                case "vent_open_limit" -> open;
                case "no_vacuum" -> !pulls;
                case "suction" -> pulls;
                case "suction_open" -> !controller.is("suction_shut");
                default -> true;
            };
            boolean good = random.nextInt(100) == 0 ? !usual : usual;
            controller.contact(input.name(), good);
            block.set(StructuredText.contact(input), good);
        }
    }

    private static void buttons(
            Sequence sequence,
            Controller controller,
            StructuredTextRunner block,
            SplittableRandom random,
            boolean first) {
        String wanted = first ? "" : wanted(controller);
        for (Sequence.Button button : sequence.buttons()) {
            boolean pressed = random.nextInt(3) == 0 ? button.name().equals(wanted) : random.nextInt(60) == 0;
            controller.press(button.name(), pressed);
            block.set(StructuredText.id(button.name()), pressed != button.opensWhenPressed());
        }
    }

    private static String wanted(Controller controller) {
        if (controller.step().equals("tripped")) {
            return "reset";
        }
        if (controller.is("container_lock")) {
            return "container_placed";
        }
        return controller.is("container_hold") ? "container_change" : "start";
    }
}
