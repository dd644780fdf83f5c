package dustwright.engine.tubing;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.quantity.Length;
import org.junit.jupiter.api.Test;

class TubeGeometryTest {
    private static final Length FOUR_INCH_TUBE = new Length(3.87 * 0.0254);

    private static void check(String id, double actual) {
        Row row = Reference.everyRow("equipment-tubing.csv").stream()
                .filter(each -> each.text("id").equals(id))
                .findFirst()
                .orElseThrow();
        assertClose(id + " " + row.text("case"), actual, row.value("expected"), row.value("tol_rel"));
    }

    @Test
    void flow_area_and_velocity_of_a_four_inch_tube() {
        double area_m2 = FOUR_INCH_TUBE.circle().squareMetres();
        check("TUB-10", area_m2);
        check("TUB-11", 0.18 / area_m2);
    }

    @Test
    void a_long_radius_bend_replaces_more_tangent_than_it_has_arc() {
        double radius_m = 24 * 0.0254;
        double arc_m = radius_m * Math.PI / 2;
        check("TUB-13", arc_m / 0.0254);
        double frictionOfArc = BendLoss.rennels(Math.PI / 2, radius_m / FOUR_INCH_TUBE.metres())
                .perFriction();
        assertClose("two tangents", 2 * BendLoss.tangent_m(Math.PI / 2, radius_m), 4 / Math.PI * arc_m, 1e-12);
        check("TUB-14", radius_m / FOUR_INCH_TUBE.metres());
        assertThat(frictionOfArc).isGreaterThan(arc_m / FOUR_INCH_TUBE.metres());
    }
}
