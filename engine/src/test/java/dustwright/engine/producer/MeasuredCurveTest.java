package dustwright.engine.producer;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.MeasuredCurve;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.ToolCurve;
import java.util.List;
import org.junit.jupiter.api.Test;

class MeasuredCurveTest {
    /** RPN 14 of Fritsch and Carlson 1980: a plateau and a steep rise where ordinary splines overshoot. */
    private static final double[] X = {7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20};

    private static final double[] Y = {
        0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994
    };

    @Test
    void rises_wherever_the_points_rise_and_passes_through_all_of_them() {
        MeasuredCurve curve = new MeasuredCurve(X, Y);
        for (int n = 0; n < X.length; n++) {
            assertClose("point", curve.at(X[n]), Y[n], 1e-14, 1e-15);
        }
        double before = 0;
        for (double x = X[0] + 1e-3; x < 20; x += 1e-3) {
            assertThat(curve.at(x)).isGreaterThanOrEqualTo(before);
            before = curve.at(x);
        }
        assertThat(before).isLessThanOrEqualTo(0.999994);
    }

    @Test
    void slope_is_that_of_the_curve_and_has_no_step() {
        MeasuredCurve curve = new MeasuredCurve(X, Y);
        for (double x = 6; x < 22; x += 0.01003) {
            assertClose("slope", curve.slopeAt(x), (curve.at(x + 1e-6) - curve.at(x - 1e-6)) / 2e-6, 1e-4, 1e-5);
        }
    }

    @Test
    void a_straight_line_stays_straight_also_beyond_its_ends() {
        MeasuredCurve line = new MeasuredCurve(new double[] {0, 1, 4, 5}, new double[] {3, 5, 11, 13});
        for (double x = -2; x < 8; x += 0.1) {
            assertClose("line", line.at(x), 3 + 2 * x, 1e-13, 1e-13);
        }
        assertThat(line.covers(5)).isTrue();
        assertThat(line.covers(5.1)).isFalse();
    }

    @Test
    void points_out_of_order_are_refused() {
        assertThatThrownBy(() -> new MeasuredCurve(new double[] {0, 2, 1}, new double[] {0, 1, 2}))
                .hasMessageContaining("do not rise");
        assertThatThrownBy(() -> new MeasuredCurve(new double[] {0}, new double[] {0}))
                .hasMessageContaining("two points");
    }

    @Test
    void a_tool_passes_what_was_measured_the_root_of_it_beyond_and_the_same_backwards() {
        ToolCurve tool = new ToolCurve(
                new Tool.Law.Curve(List.of(toolPoint(3000, 0.02), toolPoint(6000, 0.03), toolPoint(12_000, 0.042))));
        double unit = FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
        assertThat(tool.massFlow_kgPerS(0)).isZero();
        assertClose("point", tool.massFlow_kgPerS(6000), 0.03 * unit, 1e-12);
        assertClose("beyond", tool.massFlow_kgPerS(48_000), 0.084 * unit, 1e-12);
        assertClose("backwards", tool.massFlow_kgPerS(-6000), -0.03 * unit, 1e-12);
        assertThat(tool.covers(12_001)).isFalse();
        for (double v = -20_000; v < 20_000; v += 333) {
            double numeric = (tool.massFlow_kgPerS(v + 0.01) - tool.massFlow_kgPerS(v - 0.01)) / 0.02;
            assertClose("slope", tool.slope_kgPerSPa(v), numeric, 1e-5);
        }
    }

    private static Tool.CurvePoint toolPoint(double vacuum_Pa, double flow_m3PerS) {
        return new Tool.CurvePoint(new PressureDifference(vacuum_Pa), new FreeAirFlow(flow_m3PerS));
    }
}
