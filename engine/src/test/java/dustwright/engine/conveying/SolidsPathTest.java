package dustwright.engine.conveying;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SolidsPathTest {
    /** Up the wall, along the ceiling, round a corner, down to the receiver. */
    private static final List<Position> CORNERS = List.of(
            new Position(0, 0, 1),
            new Position(0, 0, 6),
            new Position(10, 0, 6),
            new Position(10, 4, 6),
            new Position(10, 4, 3));

    @Test
    void a_drawn_run_is_told_apart_by_how_its_stretches_lie() {
        SolidsPath path = SolidsPath.through(CORNERS, true);
        assertClose("level", path.level_m(), 14, 1e-15);
        assertClose("rising", path.rising_m(), 5, 1e-15);
        assertClose("falling", path.falling_m(), 3, 1e-15);
        assertClose("lift", path.lift_m(), 5, 1e-15);
        assertThat(path.startRising()).isEqualTo(1);
        assertThat(path.startLevel()).isZero();
        assertClose("bends", path.bendsLevel(), 0.75, 1e-12);
        assertThat(path.bendsRising()).isZero();
    }

    /** By hand: 10 m along and 2 m up are √104 m of tube, 2 m of it upright and the rest level. */
    @Test
    void a_slope_is_upright_by_its_height_and_level_by_the_rest() {
        SolidsPath path = SolidsPath.through(List.of(new Position(0, 0, 0), new Position(10, 0, 2)), false);
        assertClose("level", path.level_m(), Math.sqrt(104) - 2, 1e-14);
        assertClose("rising", path.rising_m(), 2, 1e-15);
        assertClose("lift", path.lift_m(), 2, 1e-15);
        assertThat(path.startLevel() + path.startRising()).isZero();
        Run measured = new Run(
                "M",
                "A",
                "B",
                "T3",
                new Run.Route.Measured(new Length(Math.sqrt(104)), 0, new Length(2)),
                List.of(),
                Optional.empty(),
                true);
        assertThat(SolidsPath.of(measured, true)).as("the same, measured").isEqualTo(path);
    }

    /** At 45° and on either side of it: nothing jumps, and no stretch has two velocities of dust. */
    @Test
    void nothing_jumps_at_an_angle() {
        SolidsPath below = slope(Math.toRadians(45 - 1e-7));
        SolidsPath at = slope(Math.toRadians(45));
        SolidsPath above = slope(Math.toRadians(45 + 1e-7));
        for (SolidsPath near : List.of(below, above)) {
            assertClose("level", near.level_m(), at.level_m(), 1e-7);
            assertClose("rising", near.rising_m(), at.rising_m(), 1e-7);
            assertClose("bends", near.bendsRising(), at.bendsRising(), 1e-7);
        }
        assertClose("all lift is in rising tube", at.lift_m(), at.rising_m(), 1e-15);
        assertClose("tube", at.level_m() + at.rising_m(), 14, 1e-14);
    }

    /** Four metres level, then ten at an angle. */
    private static SolidsPath slope(double angle_rad) {
        return SolidsPath.through(
                List.of(
                        new Position(0, 0, 0),
                        new Position(4, 0, 0),
                        new Position(4 + 10 * Math.cos(angle_rad), 0, 10 * Math.sin(angle_rad))),
                false);
    }

    @Test
    void a_way_drawn_in_more_pieces_is_the_same_way() {
        SplittableRandom random = new SplittableRandom(5);
        for (int n = 0; n < 1_000; n++) {
            Position from = new Position(0, 0, 0);
            Position to = new Position(
                    random.nextDouble(-9, 9), random.nextDouble(-9, 9), random.nextInt(4) * random.nextDouble(-3, 3));
            Position corner = new Position(12, random.nextDouble(-9, 9), random.nextDouble(-9, 9));
            double share = random.nextDouble(0.1, 0.9);
            Position between = new Position(share * to.x_m(), share * to.y_m(), share * to.z_m());
            SolidsPath one = SolidsPath.through(List.of(from, to, corner), true);
            SolidsPath two = SolidsPath.through(List.of(from, between, to, corner), true);
            assertClose("level", two.level_m(), one.level_m(), 1e-12);
            assertClose("rising", two.rising_m(), one.rising_m(), 1e-12, 1e-12);
            assertClose("falling", two.falling_m(), one.falling_m(), 1e-12, 1e-12);
            assertClose("bends", two.bendsLevel(), one.bendsLevel(), 1e-6, 1e-6);
            assertClose("bends up", two.bendsRising(), one.bendsRising(), 1e-6, 1e-6);
            SolidsPath first = SolidsPath.through(List.of(from, between), false);
            SolidsPath rest = SolidsPath.through(List.of(between, to, corner), false);
            assertClose("two runs", first.level_m() + rest.level_m(), one.level_m(), 1e-12);
            assertClose("two runs up", first.rising_m() + rest.rising_m(), one.rising_m(), 1e-12, 1e-12);
        }
    }

    /** Falling counts as level: after the last bend, square, the tube falls 3 m upright. */
    @Test
    void a_bend_before_falling_tube_sets_dust_in_motion_as_before_level_tube() {
        SolidsPath down =
                SolidsPath.through(List.of(new Position(0, 0, 3), new Position(5, 0, 3), new Position(5, 0, 0)), false);
        assertClose("before falling tube", down.bendsLevel(), 0.25, 1e-12);
        assertThat(down.bendsRising()).isZero();
    }

    @Test
    void two_half_bends_slow_as_one_square_bend_does() {
        double after = (1 - SolidsPath.slowing(Math.PI / 4)) * (1 - SolidsPath.slowing(Math.PI / 4));
        assertClose("after two bends of 45 degrees", after, SolidsPath.AFTER_SQUARE_BEND, 1e-14);
        assertThat(SolidsPath.slowing(0)).isZero();
    }

    @Test
    void the_same_way_backwards_falls_where_it_rose() {
        SolidsPath back = SolidsPath.through(
                List.of(CORNERS.get(4), CORNERS.get(3), CORNERS.get(2), CORNERS.get(1), CORNERS.get(0)), false);
        assertClose("rising", back.rising_m(), 3, 1e-15);
        assertClose("falling", back.falling_m(), 5, 1e-15);
    }

    @Test
    void a_measured_run_lies_level_but_for_its_stated_rise() {
        Run measured = new Run(
                "M1", "A", "B", "T3", new Run.Route.Measured(new Length(24), 1.2), List.of(), Optional.empty(), true);
        assertThat(SolidsPath.of(measured, true)).isEqualTo(SolidsPath.level(24, false));
        Run drawn = new Run(
                "D1", "A", "B", "T3", new Run.Route.Drawn(CORNERS, new Length(0.3)), List.of(), Optional.empty(), true);
        assertThat(SolidsPath.of(drawn, true)).isEqualTo(SolidsPath.through(CORNERS, false));
        Run rising = new Run(
                "M2",
                "A",
                "B",
                "T3",
                new Run.Route.Measured(new Length(24), 1.2, new Length(5)),
                List.of(),
                Optional.empty(),
                true);
        assertThat(SolidsPath.of(rising, true)).isEqualTo(new SolidsPath(19, 5, 0, 5, 0, 0, 0, 0));
        assertThat(SolidsPath.of(rising, false)).isEqualTo(new SolidsPath(19, 0, 5, 0, 0, 0, 0, 0));
    }

    @Test
    void a_start_in_a_rising_stretch_that_is_not_there_is_refused() {
        assertThatThrownBy(() -> new SolidsPath(10, 0, 0, 0, 0, 1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SolidsPath(10, 5, 0, 0, 0, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
