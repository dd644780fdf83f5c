package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.interlock.PerformanceLevel.Avoidance;
import dustwright.engine.interlock.PerformanceLevel.Category;
import dustwright.engine.interlock.PerformanceLevel.Exposure;
import dustwright.engine.interlock.PerformanceLevel.Severity;
import dustwright.engine.interlock.SafetyFunction.Part;
import dustwright.engine.interlock.SafetyFunction.Screened;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The level a safety function reaches by the simplified method, as it is built. */
class SafetyFunctionTest {
    /** A drive maker's installation guide, read: 20 million operations, one every 20 s around the clock, 1 577 880 a year: 126.75 years, counted as 100. */
    @Test
    void operations_a_year_give_the_years_of_a_published_guide() {
        Part relay = operated("relay", 20e6, 1_577_880, 0.99);
        assertThat(relay.endurance_years().getAsDouble()).isCloseTo(126.75, within(0.01));
        assertThat(reached(built(Category.ONE, 0, List.of(relay))).mttfd_years())
                .isEqualTo(100);
    }

    /** ISO 13849-1, Annex C, pneumatic valve, from memory: 60 million operations, two shifts on 220 days, one in 5 s: 2.53 million a year, 237 years, worn after 23.7. */
    @Test
    void the_pneumatic_valve_of_the_standard_lasts_as_long_as_there() {
        Part valve = operated("valve", 60e6, 220 * 16 * 3600 / 5.0, 0);
        assertThat(valve.endurance_years().getAsDouble()).isCloseTo(237, within(0.5));
        assertThat(reached(built(Category.ONE, 0, List.of(valve))).remarks())
                .noneSatisfy(r -> assertThat(r).contains("replaced"));
    }

    /** ISO 13849-1, Annex D, from memory: channels of 3 and 100 years count as two of 66 years. */
    @Test
    void two_unequal_channels_are_made_equal() {
        Screened.Reached two =
                reached(built(Category.THREE, 65, List.of(stated("a", 3, 0.6)), List.of(stated("b", 100, 0.9))));
        assertThat(two.mttfd_years()).isCloseTo(66, within(0.8));
        assertThat(two.coverage())
                .as("the part that fails more often weighs more")
                .isCloseTo((0.6 / 3 + 0.9 / 100) / (1.0 / 3 + 1.0 / 100), within(1e-12));
        assertThat(two.level()).isEqualTo(PerformanceLevel.D);
    }

    @Test
    void parts_in_a_row_fail_as_often_as_all_of_them_together() {
        Screened.Reached row =
                reached(built(Category.B, 0, List.of(stated("a", 20, 0), stated("b", 30, 0), stated("c", 60, 0))));
        assertThat(row.mttfd_years()).isCloseTo(10, within(1e-9));
        assertThat(row.level()).isEqualTo(PerformanceLevel.B);
    }

    @Test
    void too_few_points_against_common_cause_reach_nothing() {
        List<Part> channel = List.of(stated("a", 100, 0.9));
        assertThat(built(Category.THREE, 64, channel, channel).reached())
                .isInstanceOfSatisfying(
                        Screened.None.class, n -> assertThat(n.why()).contains("64 points", "65 are needed"));
        assertThat(reached(built(Category.THREE, 65, channel, channel)).level()).isEqualTo(PerformanceLevel.D);
    }

    @Test
    void what_is_left_out_is_asked_for_and_nothing_is_guessed() {
        Part open = new Part(
                "contactor",
                OptionalDouble.of(1.3e6),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        SafetyFunction function = new SafetyFunction(
                "guard",
                "guard",
                Severity.S2,
                Exposure.F1,
                Avoidance.P2,
                Optional.of(Category.TWO),
                OptionalInt.empty(),
                List.of(List.of(open)));
        assertThat(function.reached())
                .isEqualTo(new Screened.Unknown(
                        "common cause; contactor: MTTFd, or B10d with operated; contactor: coverage"));
        assertThat(function.asked()).isEqualTo(PerformanceLevel.D);
        assertThat(SafetyFunction.usual(true))
                .hasSize(4)
                .allSatisfy(f ->
                        assertThat(f.reached()).isEqualTo(new Screened.Unknown("category; channels with their parts")));
    }

    /** What wears out within twenty years has to be replaced before, and says so. */
    @Test
    void a_part_that_wears_out_early_is_to_be_replaced() {
        Screened.Reached worn = reached(built(Category.ONE, 0, List.of(operated("limit switch", 2e6, 400_000, 0))));
        assertThat(worn.remarks())
                .contains("limit switch to be replaced before 5 years")
                .anySatisfy(r -> assertThat(r).contains("well-tried"));
        assertThat(built(Category.ONE, 0, List.of(stated("a", 2.5, 0))).reached())
                .isInstanceOfSatisfying(
                        Screened.None.class, n -> assertThat(n.why()).contains("less than 3 years"));
        assertThat(built(Category.ONE, 0, List.of(stated("a", 20, 0))).reached())
                .as("category 1 asks for the long class")
                .isInstanceOf(Screened.None.class);
    }

    /** More diagnostics than the column of a category shows are counted as that column. */
    @Test
    void more_coverage_never_makes_less() {
        List<Part> channel = List.of(stated("a", 50, 0.99));
        assertThat(reached(built(Category.THREE, 80, channel, channel)).level()).isEqualTo(PerformanceLevel.D);
        assertThat(reached(built(Category.FOUR, 80, channel, channel)).level()).isEqualTo(PerformanceLevel.E);
    }

    private static Part operated(String words, double b10d, double operations_perYear, double coverage) {
        return new Part(
                words,
                OptionalDouble.of(b10d),
                OptionalDouble.of(operations_perYear),
                OptionalDouble.empty(),
                OptionalDouble.of(coverage));
    }

    private static Part stated(String words, double mttfd_years, double coverage) {
        return new Part(
                words,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(mttfd_years),
                OptionalDouble.of(coverage));
    }

    private static SafetyFunction built(Category category, int points, List<Part> channel) {
        return of(category, points, List.of(channel));
    }

    private static SafetyFunction built(Category category, int points, List<Part> first, List<Part> second) {
        return of(category, points, List.of(first, second));
    }

    private static SafetyFunction of(Category category, int points, List<List<Part>> channels) {
        return new SafetyFunction(
                "guard",
                "guard",
                Severity.S2,
                Exposure.F1,
                Avoidance.P2,
                Optional.of(category),
                OptionalInt.of(points),
                channels);
    }

    private static Screened.Reached reached(SafetyFunction function) {
        assertThat(function.reached()).isInstanceOf(Screened.Reached.class);
        return (Screened.Reached) function.reached();
    }
}
