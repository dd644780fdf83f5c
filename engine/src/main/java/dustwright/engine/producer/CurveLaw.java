package dustwright.engine.producer;

import dustwright.engine.producer.Machine.CurveMachine;
import dustwright.engine.producer.Machine.CurvePoint;
import dustwright.engine.quantity.MeasuredCurve;

/**
 * A machine known by its curve, corrected for speed and, where it is dynamic, for density at its inlet (equation PRD-4).
 *
 * <pre>
 * dynamic:       Q ∝ n        Δp ∝ n² ρ      P ∝ n³ ρ
 * displacement:  Q ∝ n        Δp as rated    P ∝ n
 * </pre>
 *
 * The slip of a displacement machine does not shrink with its speed; its share is not known from a curve, so below rated speed the
 * flow comes out somewhat high.
 *
 * @source affinity laws: ASHRAE Handbook, Fans; AMCA 201. Proportional displacement: our reading
 */
final class CurveLaw implements MachineLaw {
    private static final int STEP_LIMIT = 100;

    private final MeasuredCurve flow_m3PerS;
    private final MeasuredCurve power_W;
    private final double ratedSpeed_perS;
    private final double ratedDensity_kgPerM3;
    private final boolean dynamic;
    private final boolean sealWaterTakesTheHeat;

    CurveLaw(CurveMachine machine) {
        double[] vacuum_Pa = machine.points().stream()
                .mapToDouble(point -> point.vacuum().pascals())
                .toArray();
        flow_m3PerS = new MeasuredCurve(
                vacuum_Pa,
                machine.points().stream()
                        .mapToDouble(point -> point.flow().cubicMetresPerSecond())
                        .toArray());
        power_W = new MeasuredCurve(
                vacuum_Pa,
                machine.points().stream().mapToDouble(CurveLaw::power_W).toArray());
        ratedSpeed_perS = machine.ratedSpeed().revolutionsPerSecond();
        ratedDensity_kgPerM3 = machine.ratedDensity().kgPerCubicMetre();
        dynamic = machine.dynamic();
        sealWaterTakesTheHeat = machine.sealWaterTakesTheHeat();
    }

    private static double power_W(CurvePoint point) {
        return point.power().watts();
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
        return dynamic ? slope * ratedDensity_kgPerM3 / (inletDensity_kgPerM3 * speedRatio) : slope * speedRatio;
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
        double onCurve_W = power_W.at(onCurve_Pa(difference_Pa, inletDensity_kgPerM3, speedRatio));
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
    public double deepest_Pa(double inletDensity_kgPerM3, double speed_perS) {
        double speedRatio = speed_perS / ratedSpeed_perS;
        double last_Pa = flow_m3PerS.last();
        return dynamic ? last_Pa * inletDensity_kgPerM3 * speedRatio * speedRatio / ratedDensity_kgPerM3 : last_Pa;
    }

    @Override
    public boolean covers(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
        return flow_m3PerS.covers(onCurve_Pa(difference_Pa, inletDensity_kgPerM3, speed_perS / ratedSpeed_perS));
    }

    /**
     * For a dynamic machine the wanted duty runs along the parabola {@code Q s, Δp s²} with s = rated over wanted speed; found is
     * where it meets the curve. The curve falls and the parabola rises, so there is one such place, and halving a bracket finds it.
     */
    @Override
    public double speed_perS(double inletFlow_m3PerS, double difference_Pa, double inletDensity_kgPerM3) {
        if (!dynamic) {
            return ratedSpeed_perS * inletFlow_m3PerS / flow_m3PerS.at(difference_Pa);
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

    private double onCurve_Pa(double difference_Pa, double inletDensity_kgPerM3, double speedRatio) {
        return dynamic
                ? difference_Pa * ratedDensity_kgPerM3 / (inletDensity_kgPerM3 * speedRatio * speedRatio)
                : difference_Pa;
    }
}
