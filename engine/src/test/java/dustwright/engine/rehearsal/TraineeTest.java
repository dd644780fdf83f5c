package dustwright.engine.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Somebody goes through a drill by hand: what is marked, and what a crew that does it right would get. */
class TraineeTest {
    private static final Sequence SEQUENCE = DefaultSequence.of("bag", Options.USUAL);

    private static Rehearsal training() {
        return Rehearsal.training(
                SEQUENCE,
                RehearsalTest.station(1),
                new Script(
                        "chain",
                        3600,
                        3600,
                        1,
                        1,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Script.Answering(60, 300)),
                        List.of(
                                new Script.Act.Users(10, true),
                                new Script.Act.Breaks(300, PlantFault.CHAIN_BROKEN),
                                new Script.Act.Mended(900, PlantFault.CHAIN_BROKEN)),
                        List.of(),
                        List.of(),
                        List.of(new Script.Must(Script.When.AT_THE_END, Expr.of("not trip")))));
    }

    private static List<Boolean> met(Rehearsal rehearsal) {
        return rehearsal.marks().stream().map(Trainee.Mark::met).toList();
    }

    private static void startAndWaitForTheFault(Rehearsal rehearsal) {
        rehearsal.runTo(20_000);
        rehearsal.press("start");
        rehearsal.runTo(400_000);
        assertThat(rehearsal.view().step()).isEqualTo("tripped");
    }

    @Test
    void who_finds_the_chain_resets_and_starts_in_time_meets_every_point() {
        Rehearsal rehearsal = training();
        startAndWaitForTheFault(rehearsal);
        rehearsal.mended(PlantFault.CHAIN_BROKEN);
        rehearsal.press("reset");
        rehearsal.runTo(600_000);
        rehearsal.press("start");
        rehearsal.runTo(3_600_000);
        assertThat(met(rehearsal)).containsOnly(true);
        assertThat(rehearsal.view().step()).isEqualTo("vacuuming");
    }

    @Test
    void the_script_mends_nothing_and_a_fault_nobody_looks_at_is_marked() {
        Rehearsal rehearsal = training();
        startAndWaitForTheFault(rehearsal);
        rehearsal.runTo(3_600_000);
        assertThat(rehearsal.broken()).containsExactly(PlantFault.CHAIN_BROKEN);
        assertThat(rehearsal.marks())
                .filteredOn(m -> !m.met())
                .extracting(Trainee.Mark::asked)
                .containsExactly(
                        "when the drill ends: no trip",
                        "what the panel and users wait for is done within 5 min",
                        "what is wrong is named, nothing else taken apart");
    }

    @Test
    void reset_while_hands_are_in_the_valve_and_a_guess_are_marked() {
        Rehearsal rehearsal = training();
        startAndWaitForTheFault(rehearsal);
        rehearsal.press("reset");
        rehearsal.mended(PlantFault.HOPPER_BRIDGED);
        rehearsal.mended(PlantFault.CHAIN_BROKEN);
        rehearsal.runTo(430_000);
        rehearsal.press("reset");
        rehearsal.runTo(440_000);
        assertThat(rehearsal.marks())
                .filteredOn(m -> !m.met())
                .extracting(Trainee.Mark::went)
                .containsExactly("once a guess", "once pressed");
    }

    @Test
    void an_empty_container_cannot_hang_before_the_change_has_taken_its_time() {
        Rehearsal rehearsal = training();
        rehearsal.press("container_change");
        rehearsal.runTo(100_000);
        rehearsal.press("container_placed");
        assertThat(met(rehearsal)).endsWith(false);
    }

    @Test
    void the_next_thing_that_happens_is_one_step_away() {
        Rehearsal rehearsal = training();
        rehearsal.runToNext(3_600_000);
        assertThat(rehearsal.played().moments())
                .extracting(Played.Moment::words)
                .contains("users take up their hoses");
        long first_ms = rehearsal.now_ms();
        rehearsal.runToNext(3_600_000);
        assertThat(rehearsal.now_ms()).isGreaterThan(first_ms).isLessThanOrEqualTo(3_600_000);
    }

    @Test
    void dust_that_cakes_on_the_containers_probe_takes_the_suction_away() {
        Rehearsal rehearsal = training();
        rehearsal.runTo(20_000);
        rehearsal.press("start");
        rehearsal.runTo(200_000);
        assertThat(rehearsal.view().step()).isEqualTo("vacuuming");
        rehearsal.breaks(PlantFault.CONTAINER_PROBE_CAKED);
        rehearsal.runTo(230_000);
        assertThat(rehearsal.view().step()).isNotEqualTo("vacuuming");
        assertThat(rehearsal.view().lamps()).extracting(Sequence.Lamp::name).contains("lamp_container_high");
    }
}
