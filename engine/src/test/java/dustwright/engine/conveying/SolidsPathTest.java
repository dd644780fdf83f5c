package dustwright.engine.conveying;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import java.util.List;
import java.util.Optional;
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

    @Test
    void gentle_slopes_count_as_level_but_lift_all_the_same() {
        SolidsPath path = SolidsPath.through(List.of(new Position(0, 0, 0), new Position(10, 0, 2)), false);
        assertClose("level", path.level_m(), Math.sqrt(104), 1e-14);
        assertThat(path.rising_m()).isZero();
        assertClose("lift", path.lift_m(), 2, 1e-15);
        assertThat(path.startLevel() + path.startRising()).isZero();
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
