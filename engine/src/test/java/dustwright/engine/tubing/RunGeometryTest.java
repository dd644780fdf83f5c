package dustwright.engine.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RunGeometryTest {
    private static final Tube TUBE =
            new Tube("T", new Length(0.05), Optional.empty(), new Wall.Rough(new Length(4.5e-5)));

    private static RunGeometry drawn(double radius_m, Position... corners) {
        Run.Route route = new Run.Route.Drawn(List.of(corners), new Length(radius_m));
        return RunGeometry.of(new Run("R", "A", "B", "T", route, List.of(), Optional.empty(), true), TUBE);
    }

    @Test
    void a_square_corner_takes_one_radius_from_each_side_and_becomes_one_bend() {
        RunGeometry run = drawn(0.2, new Position(0, 0, 0), new Position(3, 0, 0), new Position(3, 0, 4));
        assertThat(run.developed().metres()).isCloseTo(7, within(1e-12));
        assertThat(run.straight().metres()).isCloseTo(7 - 2 * 0.2, within(1e-12));
        assertThat(run.bends()).hasSize(1);
        assertThat(run.bends().get(0).angle_rad()).isCloseTo(Math.PI / 2, within(1e-12));
        BendLoss bend = BendLoss.rennels(Math.PI / 2, 4);
        assertThat(run.k()).isCloseTo(bend.constant(), within(1e-12));
        assertThat(run.frictionLength(TUBE.bore())).isCloseTo(6.6 / 0.05 + bend.perFriction(), within(1e-9));
    }

    @Test
    void corners_in_line_are_no_bends_and_offsets_of_45_degrees_have_short_tangents() {
        RunGeometry line = drawn(0.2, new Position(0, 0, 0), new Position(1, 1, 1), new Position(4, 4, 4));
        assertThat(line.bends()).isEmpty();
        assertThat(line.straight().metres()).isCloseTo(Math.sqrt(48), within(1e-12));
        RunGeometry offset =
                drawn(0.2, new Position(0, 0, 0), new Position(2, 0, 0), new Position(3, 1, 0), new Position(5, 1, 0));
        assertThat(offset.bends()).hasSize(2).allMatch(b -> Math.abs(b.angle_rad() - Math.PI / 4) < 1e-12);
        double tangents_m = 4 * 0.2 * Math.tan(Math.PI / 8);
        assertThat(offset.straight().metres()).isCloseTo(4 + Math.sqrt(2) - tangents_m, within(1e-12));
    }

    @Test
    void bends_that_do_not_fit_between_their_corners_are_refused_with_the_place() {
        assertThatThrownBy(() -> drawn(
                        0.3,
                        new Position(0, 0, 0),
                        new Position(2, 0, 0),
                        new Position(2, 0.5, 0),
                        new Position(4, 0.5, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("run R: the bends at the ends of stretch 2 need 0.6 m of its 0.5 m");
    }

    @Test
    void a_measured_run_keeps_its_length_and_adds_its_fittings_to_its_k() {
        Run.Route route = new Run.Route.Measured(new Length(12), 1.5);
        List<Fitting> fittings = List.of(new Fitting("cleanout", 0.1, 2, Source.entered()));
        RunGeometry run = RunGeometry.of(new Run("R", "A", "B", "T", route, fittings, Optional.empty(), true), TUBE);
        assertThat(run.straight().metres()).isEqualTo(12);
        assertThat(run.k()).isCloseTo(1.7, within(1e-12));
        assertThat(run.frictionLength(TUBE.bore())).isCloseTo(240, within(1e-9));
    }
}
