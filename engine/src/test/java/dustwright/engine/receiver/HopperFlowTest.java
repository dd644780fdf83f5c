package dustwright.engine.receiver;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.Stress;
import dustwright.engine.receiver.HopperOutlet.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * The worked example of a cone after Rhodes, Introduction to Particle Technology, as read in a public set of lecture slides: shear-cell
 * points, δ 30°, φ_w 19°, bulk density 1300 kg/m³. Its charts read 30.5° and ff 1.8, its graph σ_crit 0.83 kPa, the answer is 0.16 m.
 */
class HopperFlowTest {
    private static final double DELTA = Math.toRadians(30);
    private static final double WALL = Math.toRadians(19);
    private static final double THETA = Math.toRadians(27.5);
    private static final FlowFunction MEASURED =
            new FlowFunction(List.of(point(1.3, 0.78), point(1.6, 0.85), point(2.0, 0.91), point(2.4, 0.97)));

    private static FlowFunction.Point point(double consolidation_kPa, double strength_kPa) {
        return new FlowFunction.Point(new Stress(consolidation_kPa * 1000), new Stress(strength_kPa * 1000));
    }

    @Test
    void mass_flow_ends_where_the_chart_of_the_worked_example_says() {
        assertClose("limit", Math.toDegrees(HopperFlow.massFlowHalfAngle_rad(DELTA, WALL)), 30.5, 0.015);
    }

    /** From memory, and a chart is read to a tenth: a greater flow factor asks for a wider outlet. */
    @Test
    void the_flow_factor_lies_within_a_tenth_of_the_chart_and_on_the_prudent_side() {
        double factor = HopperFlow.flowFactor(DELTA, WALL, THETA);
        assertClose("flow factor", factor, 1.8, 0.1);
        assertThat(factor).isGreaterThan(1.8);
    }

    @Test
    void the_fitted_strength_lies_on_the_measured_points() {
        FlowFunction.Power power = MEASURED.power();
        for (FlowFunction.Point point : MEASURED.points()) {
            double fitted_kPa =
                    power.coefficient() * Math.pow(point.consolidation().pascals() / 1000, power.exponent());
            assertClose("strength", fitted_kPa, point.strength().pascals() / 1000, 0.02);
        }
        assertThat(MEASURED.covers(1500)).isTrue();
        assertThat(MEASURED.covers(1200)).isFalse();
        assertThat(MEASURED.covers(2500)).isFalse();
    }

    @Test
    void with_the_charts_flow_factor_the_outlet_is_that_of_the_worked_example() {
        FlowFunction.Power power = MEASURED.power();
        double strength_Pa = HopperOutlet.criticalStrength_Pa(power.coefficient(), power.exponent(), 1.8);
        assertClose("critical strength", strength_Pa, 830, 0.02);
        assertClose("outlet", HopperOutlet.archingOutlet_m(Shape.CONE, THETA, strength_Pa, 1300, 9.81), 0.16, 0.02);
    }

    @Test
    void a_rougher_wall_asks_for_a_steeper_cone_and_is_never_a_help() {
        SplittableRandom random = new SplittableRandom(7);
        for (int n = 0; n < 300; n++) {
            double delta = Math.toRadians(random.nextDouble(30, 65));
            double smooth = Math.toRadians(random.nextDouble(5, 20));
            double rough = smooth + Math.toRadians(random.nextDouble(0.1, 5));
            assertThat(HopperFlow.massFlowHalfAngle_rad(delta, rough))
                    .isLessThan(HopperFlow.massFlowHalfAngle_rad(delta, smooth));
        }
    }

    @Test
    void the_flow_factor_is_that_of_a_flowing_cone_everywhere_in_its_range() {
        SplittableRandom random = new SplittableRandom(8);
        for (int n = 0; n < 300; n++) {
            double delta = Math.toRadians(random.nextDouble(30, 65));
            double wall = Math.toRadians(random.nextDouble(8, 25));
            double limit = HopperFlow.massFlowHalfAngle_rad(delta, wall);
            double theta = random.nextDouble(Math.toRadians(5), Math.max(Math.toRadians(6), limit));
            if (theta < limit) {
                assertThat(HopperFlow.flowFactor(delta, wall, theta)).isBetween(1.0, 6.0);
            }
        }
    }

    @Test
    void a_cone_too_flat_for_mass_flow_has_no_flow_factor() {
        assertThatThrownBy(() -> HopperFlow.flowFactor(DELTA, WALL, Math.toRadians(35)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> HopperFlow.massFlowHalfAngle_rad(DELTA, Math.toRadians(31)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new FlowFunction(List.of(point(1, 1)))).hasMessageContaining("two measured points");
    }

    /** By hand: y = 1 kPa + 0.12 x meets y = x/1.396 at y = 1/(1 − 0.12 · 1.396) = 1.2012 kPa; through zero there is no such line. */
    @Test
    void below_the_measured_points_the_straight_line_says_more_than_the_power_law() {
        FlowFunction cohesive = function(5, 1.6, 10, 2.2, 20, 3.4);
        double line_Pa = cohesive.lineStrength_Pa(1.396).orElseThrow();
        assertThat(line_Pa).isCloseTo(1201.2, within(0.1));
        assertThat(cohesive.startsAbove(line_Pa * 1.396)).isTrue();
        FlowFunction.Power power = cohesive.power();
        assertThat(HopperOutlet.criticalStrength_Pa(power.coefficient(), power.exponent(), 1.396))
                .isLessThan(line_Pa);
        assertThat(function(5, 1, 10, 2).lineStrength_Pa(1.4)).isEmpty();
    }

    private static FlowFunction function(double... kPa) {
        List<FlowFunction.Point> points = new ArrayList<>();
        for (int n = 0; n < kPa.length; n += 2) {
            points.add(new FlowFunction.Point(new Stress(1000 * kPa[n]), new Stress(1000 * kPa[n + 1])));
        }
        return new FlowFunction(points);
    }
}
