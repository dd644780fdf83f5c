package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A filter drop vanishes as soon as the vent opens. So what was too high is remembered, START leads to the cleaning, and a cloth that cleaning does not help any more is a fault. Common practice, no
 * source.
 */
class DirtyClothTest {
    private static final int HOUR_s = 3600;

    private final Sequence sequence = DefaultSequence.of("cloth", Options.USUAL);
    private final Cloth cloth = new Cloth(sequence);

    @Test
    void above_the_limit_start_leads_to_the_cleaning_and_back_to_vacuuming() {
        cloth.drop_inWc = 11;
        cloth.until("holding", 10);
        cloth.run(2);
        assertThat(cloth.bench.is("lamp_filter"))
                .as("the drop is gone, why is not")
                .isTrue();
        assertThat(cloth.bench.is("lamp_press_start")).isTrue();

        cloth.bench.push("start");
        cloth.until("pulsing", 60);
        cloth.drop_inWc = 3;
        cloth.until("vacuuming", 60);
        assertThat(cloth.bench.is("lamp_filter")).isFalse();
        cloth.run(60);
        assertThat(cloth.bench.controller.step()).isEqualTo("vacuuming");
    }

    @Test
    void while_air_is_too_low_for_cleaning_start_is_not_asked_for_and_does_nothing() {
        cloth.bench.controller.contact("air_good", false);
        cloth.run(6);
        cloth.drop_inWc = 11;
        cloth.until("holding", 10);
        cloth.run(2);
        cloth.bench.push("start");
        assertThat(cloth.bench.controller.step()).isEqualTo("holding");
        assertThat(cloth.bench.is("lamp_press_start")).isFalse();
        assertThat(cloth.bench.controller.causes())
                .extracting(Sequence.Cause::message)
                .contains("WAIT: FILTER DROP TOO HIGH", "COMPRESSED AIR LOW: NO FILTER CLEANING");

        cloth.bench.controller.contact("air_good", true);
        cloth.run(1);
        assertThat(cloth.bench.is("lamp_press_start")).isTrue();
    }

    /** Whoever comes after the hold has run out still learns what it was. */
    @Test
    void the_message_of_the_filter_outlasts_the_hold() {
        cloth.drop_inWc = 11;
        cloth.until("holding", 10);
        cloth.until("standing", 800);
        assertThat(cloth.bench.is("lamp_filter")).isTrue();
    }

    @Test
    void a_vacuum_that_was_too_deep_is_shown_until_start() {
        cloth.bench.controller.contact("relief_ok", false);
        cloth.run(6);
        cloth.bench.controller.contact("relief_ok", true);
        cloth.run(5);
        assertThat(cloth.bench.is("lamp_relief")).isTrue();
        cloth.bench.push("start");
        cloth.until("vacuuming", 60);
        assertThat(cloth.bench.is("lamp_relief")).isFalse();
    }

    @Test
    void a_cloth_that_does_not_come_back_is_a_fault_the_third_time() {
        assertThat(startsUntilCaked(sequence)).isEqualTo(2);
    }

    @Test
    void a_cloth_that_stays_above_the_cleaning_limit_is_told_and_cleaned_by_time_alone() {
        cloth.drop_inWc = 7;
        int cleanings = 0;
        boolean pulsing = false;
        for (int scan = 0; scan < 10 * HOUR_s; scan++) {
            cloth.run(0.1);
            cleanings += cloth.bench.is("pulses") && !pulsing ? 1 : 0;
            pulsing = cloth.bench.is("pulses");
        }
        assertThat(cleanings).isBetween(4, 6);
        assertThat(cloth.bench.controller.causes())
                .extracting(Sequence.Cause::message)
                .contains("FILTER DOES NOT COME CLEAN");
    }

    @Test
    void counts_of_cleanings_are_right_and_forgotten_with_a_clean_cloth() {
        assertThat(isJudged(sequence)).isTrue();
    }

    /** The proof has a cloth of this kind: a start that is accepted again and again and gains nothing is found. */
    @Test
    void a_start_that_never_leads_to_the_cleaning_is_found_by_the_proof() {
        Sequence forgetful = Mutants.withSteps(
                new Mutants(sequence)
                        .withRule(new Sequence.Rule.Latch(
                                "filter_uncleaned",
                                Expr.of("not filter_ok"),
                                Expr.of("filter_ok"),
                                false,
                                false,
                                "the filter drop is too high")),
                sequence.steps());

        Proof proof = Proof.of(forgetful, Proof.Adversary.PLAIN);
        assertThat(proof.cakedForEver().scans()).isNotEmpty();
        assertThat(proof.deadEnd()).isEqualTo(Story.NONE);
        assertThat(proof.holds()).isFalse();
    }

    /** Whether counts of cleanings that do not help are as they should be; also asked of sequences that are wrong. */
    static boolean isJudged(Sequence sequence) {
        return startsUntilCaked(sequence) == 2
                && !cleanCloth(sequence)
                && returnsAreForgotten(sequence)
                && weakClothIsToldAndForgotten(sequence);
    }

    private static int startsUntilCaked(Sequence sequence) {
        Cloth cloth = new Cloth(sequence);
        cloth.drop_inWc = 11;
        for (int starts = 0; starts < 6; starts++) {
            cloth.until("holding", 10);
            if (cloth.bench.is("cloth_caked")) {
                return starts;
            }
            cloth.run(1);
            cloth.bench.push("start");
            cloth.until("vacuuming", 120);
        }
        return -1;
    }

    private static boolean cleanCloth(Sequence sequence) {
        Cloth cloth = new Cloth(sequence);
        cloth.run(200);
        return cloth.bench.controller.causes().stream()
                .anyMatch(
                        c -> List.of("cloth_caked", "cloth_weak", "filter_torn").contains(c.name()));
    }

    /** A cloth that cleaning leaves above its limit is told after a few cleanings, and no more once it has come back. */
    private static boolean weakClothIsToldAndForgotten(Sequence sequence) {
        if (sequence.rules().stream().noneMatch(r -> r.name().equals("cleaned_in_vain"))) {
            return true;
        }
        Cloth cloth = new Cloth(sequence);
        cloth.drop_inWc = 7;
        cloth.run(HOUR_s);
        boolean told = cloth.isWeak();
        cloth.drop_inWc = 3;
        cloth.run(HOUR_s);
        return told && !cloth.isWeak();
    }

    /** A drop that is too high now and then, with a clean cloth in between, is no fault. */
    private static boolean returnsAreForgotten(Sequence sequence) {
        Cloth cloth = new Cloth(sequence);
        for (int time = 0; time < 5; time++) {
            cloth.drop_inWc = 11;
            cloth.until("holding", 10);
            cloth.run(1);
            cloth.bench.push("start");
            cloth.until("pulsing", 60);
            cloth.drop_inWc = 3;
            cloth.until("vacuuming", 60);
            cloth.run(70);
        }
        return cloth.bench.controller.step().equals("vacuuming");
    }

    /** A bench whose filter drop is there only under vacuum. */
    private static final class Cloth {
        final Bench bench;
        private final boolean drops;
        double drop_inWc = 3;

        Cloth(Sequence sequence) {
            bench = Bench.vacuuming(sequence);
            drops = sequence.inputs().stream().anyMatch(i -> i.name().equals("filter_ok"));
        }

        void run(double time_s) {
            for (int scan = 0; scan < Math.round(10 * time_s); scan++) {
                scan();
            }
        }

        void until(String step, double atMost_s) {
            for (int scan = 0; scan < 10 * atMost_s && !is(step); scan++) {
                scan();
            }
            if (!is(step)) {
                throw new AssertionError("not in " + step + " but in " + bench.controller.step());
            }
        }

        boolean isWeak() {
            return bench.controller.causes().stream().anyMatch(c -> c.name().equals("cloth_weak"));
        }

        /** A trip takes the place of a hold. */
        private boolean is(String step) {
            String now = bench.controller.step();
            return now.equals(step) || (step.equals("holding") && now.equals("tripped"));
        }

        private void scan() {
            double felt_inWc = bench.is("vent_shut") ? drop_inWc : 0;
            if (drops) {
                bench.controller.contact("filter_ok", felt_inWc < 10);
                bench.controller.contact("filter_clean", felt_inWc < 6);
                bench.controller.contact("filter_there", felt_inWc > 0.5);
            }
            bench.scan();
        }
    }
}
