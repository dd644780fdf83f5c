package dustwright.engine.producer;

import dustwright.engine.producer.Machine.CurveMachine;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.MeasuredCurve;

/**
 * A machine known by its curve, corrected for speed and, where it is dynamic, for density at its inlet (equation PRD-4), else for the
 * barometer it works against (equation PRD-35).
 *
 * <pre>
 * dynamic:       Q ∝ n        Δp ∝ n² ρ      P ∝ n³ ρ
 * displacement:  Q ∝ n        Δp ∝ p_a       P ∝ n
 * </pre>
 *
 * A displacement machine under a lower barometer meets the pressure ratio of its curve at less vacuum: what leaks back and what is
 * left in its pockets goes by the ratio. Its power is not taken to fall with the barometer, as the share of friction, gears and ring is
 * not known from a curve: on the safe side for motor and heat.
 *
 * <p>The slip of a displacement machine does not shrink with its speed; its share is not known from a curve, so below rated speed the
 * flow comes out somewhat high.
 *
 * <p>Beyond its points the curve runs on straight, but the power never falls below that of the end point.
 *
 * @source affinity laws: ASHRAE Handbook, Fans; AMCA 201. Same pressure ratio: Machine Design, Vacuum pumps. Proportional displacement: our
 *     reading
 */
final class CurveLaw implements MachineLaw {
    private static final int STEP_LIMIT = 100;

    private final MeasuredCurve flow_m3PerS;
    private final MeasuredCurve power_W;
    private final double ratedSpeed_perS;
    private final double ratedDensity_kgPerM3;
    private final boolean dynamic;
    private final double toSeaLevel;
    private final boolean sealWaterTakesTheHeat;

    CurveLaw(CurveMachine machine, AbsolutePressure barometer) {
        flow_m3PerS = machine.flow_m3PerS();
        power_W = machine.power_W();
        ratedSpeed_perS = machine.ratedSpeed().revolutionsPerSecond();
        ratedDensity_kgPerM3 = machine.ratedDensity().kgPerCubicMetre();
        dynamic = machine.dynamic();
        toSeaLevel = machine.toSeaLevel(barometer);
        sealWaterTakesTheHeat = machine.sealWaterTakesTheHeat();
    }

    @Override
    public double inletFlow_m3PerS(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
        double speedRatio = speed_perS / ratedSpeed_perS;
        return speedRatio * flow_m3PerS.at(onCurve_Pa(difference_Pa, inletDensity_kgPerM3, speedRatio));
    }

    @Override
    public double perDifference(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
        double speedRatio = speed_perS / ratedSpeed_perS;
        double slope = flow_m3PerS.slopeAt(onCurve_Pa(difference_Pa, inletDensity_kgPerM3, speedRatio));
        return dynamic
                ? slope * ratedDensity_kgPerM3 / (inletDensity_kgPerM3 * speedRatio)
                : slope * speedRatio * toSeaLevel;
    }

    @Override
    public double perDensity(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
        return dynamic
                ? -perDifference(difference_Pa, inletDensity_kgPerM3, speed_perS) * difference_Pa / inletDensity_kgPerM3
                : 0;
    }

    @Override
    public double shaftPower_W(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
        double speedRatio = speed_perS / ratedSpeed_perS;
        double onCurve_Pa = onCurve_Pa(difference_Pa, inletDensity_kgPerM3, speedRatio);
        double nearest_Pa = Math.max(power_W.first(), Math.min(power_W.last(), onCurve_Pa));
        // beyond the points a straight line could fall below what was measured, down to less than nothing
        double onCurve_W = Math.max(power_W.at(onCurve_Pa), power_W.at(nearest_Pa));
        return dynamic
                ? onCurve_W * speedRatio * speedRatio * speedRatio * inletDensity_kgPerM3 / ratedDensity_kgPerM3
                : onCurve_W * speedRatio;
    }

    /** No curve tells bearing losses apart: all shaft power is taken to heat the air, but for a liquid ring, whose water takes it. */
    @Override
    public double airPower_W(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
        return sealWaterTakesTheHeat ? 0 : shaftPower_W(difference_Pa, inletDensity_kgPerM3, speed_perS);
    }

    @Override
    public double measuredFrom_Pa(double inletDensity_kgPerM3, double speed_perS) {
        return inState_Pa(flow_m3PerS.first(), inletDensity_kgPerM3, speed_perS / ratedSpeed_perS);
    }

    @Override
    public double measuredTo_Pa(double inletDensity_kgPerM3, double speed_perS) {
        return inState_Pa(flow_m3PerS.last(), inletDensity_kgPerM3, speed_perS / ratedSpeed_perS);
    }

    /**
     * For a dynamic machine the wanted duty runs along the parabola {@code Q s, Δp s²} with s = rated over wanted speed; found is
     * where it meets the curve. The curve falls and the parabola rises, so there is one such place, and halving a bracket finds it.
     */
    @Override
    public double speed_perS(double inletFlow_m3PerS, double difference_Pa, double inletDensity_kgPerM3) {
        if (!dynamic) {
            return ratedSpeed_perS * inletFlow_m3PerS / flow_m3PerS.at(difference_Pa * toSeaLevel);
        }
        double ratedDifference_Pa = difference_Pa * ratedDensity_kgPerM3 / inletDensity_kgPerM3;
        double low = 0;
        double high = 1;
        while (flow_m3PerS.at(ratedDifference_Pa * high * high) > inletFlow_m3PerS * high && high < 1e3) {
            high *= 2;
        }
        for (int n = 0; n < STEP_LIMIT && high - low > 1e-15 * high; n++) {
            double middle = (low + high) / 2;
            if (flow_m3PerS.at(ratedDifference_Pa * middle * middle) > inletFlow_m3PerS * middle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return ratedSpeed_perS / high;
    }

    /** What a difference on the curve is at a density and a speed, or at the barometer. */
    private double inState_Pa(double onCurve_Pa, double inletDensity_kgPerM3, double speedRatio) {
        return dynamic
                ? onCurve_Pa * inletDensity_kgPerM3 * speedRatio * speedRatio / ratedDensity_kgPerM3
                : onCurve_Pa / toSeaLevel;
    }

    private double onCurve_Pa(double difference_Pa, double inletDensity_kgPerM3, double speedRatio) {
        return dynamic
                ? difference_Pa * ratedDensity_kgPerM3 / (inletDensity_kgPerM3 * speedRatio * speedRatio)
                : difference_Pa * toSeaLevel;
    }
}
