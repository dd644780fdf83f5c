package dustwright.engine.producer;

import dustwright.engine.air.Air;

/**
 * A vacuum producer at a site, ready to be asked many times by the solver: machine, silencer and check valve together. The machine
 * works against ambient pressure plus what its silencer takes:
 *
 * <pre>
 * Δp = p_a + Δp_silencer (w/w_at)² − p_inlet
 * </pre>
 */
public final class ProducerLaw {
    /** Specific heat of air at constant pressure taken for its temperature rise [J/(kg K)]. */
    public static final double SPECIFIC_HEAT_JPerKgK = 1005;

    private static final int STEP_LIMIT = 60;

    private final MachineLaw machine;
    private final double ambient_Pa;
    private final double rt_JPerKg;
    private final double silencer_PaS2PerKg2;
    private final double least_perS;
    private final double greatest_perS;

    /** The laws of a producer in the air of a site. */
    public ProducerLaw(VacuumProducer producer, Air air) {
        machine = producer.machine().law(air.ambient());
        ambient_Pa = air.ambient().pascals();
        rt_JPerKg = air.rt();
        silencer_PaS2PerKg2 =
                producer.silencer().map(loss -> loss.perSquareFlow(air)).orElse(0.0);
        least_perS = producer.leastSpeed().revolutionsPerSecond();
        greatest_perS = producer.greatestSpeed().revolutionsPerSecond();
    }

    /**
     * Air the producer takes from its inlet [kg/s] at a speed; never below zero, as the check valve shuts. The silencer's loss depends
     * on that flow: more flow, more difference, less flow; so the answer lies between two substitutions and is found by secants
     * between them.
     */
    public double massFlow_kgPerS(double inlet_Pa, double speed_perS) {
        double most = withoutCheckValve(inlet_Pa, speed_perS, 0);
        if (most <= 0) {
            return 0;
        }
        if (silencer_PaS2PerKg2 == 0) {
            return most;
        }
        double low = Math.max(0, withoutCheckValve(inlet_Pa, speed_perS, most));
        return betweenSubstitutions(inlet_Pa, speed_perS, low, most);
    }

    private double betweenSubstitutions(double inlet_Pa, double speed_perS, double least, double most) {
        double low = least;
        double high = most;
        double lowGap = withoutCheckValve(inlet_Pa, speed_perS, low) - low;
        double highGap = withoutCheckValve(inlet_Pa, speed_perS, high) - high;
        int kept = 0;
        for (int n = 0; n < STEP_LIMIT && lowGap > 0 && highGap < 0; n++) {
            double between = low + (high - low) * lowGap / (lowGap - highGap);
            double gap = withoutCheckValve(inlet_Pa, speed_perS, between) - between;
            if (Math.abs(gap) <= 1e-15 * most || high - low <= 1e-15 * most) {
                return between;
            }
            // Illinois: an end that stays twice counts half, or it would stay for ever
            if (gap > 0) {
                low = between;
                lowGap = gap;
                highGap = kept > 0 ? highGap / 2 : highGap;
                kept = 1;
            } else {
                high = between;
                highGap = gap;
                lowGap = kept < 0 ? lowGap / 2 : lowGap;
                kept = -1;
            }
        }
        return lowGap <= 0 ? low : high;
    }

    /**
     * Vacuum [Pa] at which the machine takes no air any more at a speed (equation PRD-22): a check valve behind a deeper one stays
     * shut. Found by halving; at most the given vacuum.
     */
    public double vacuumWithoutFlow_Pa(double speed_perS, double deepest_Pa) {
        double takesAir_Pa = 0;
        double takesNone_Pa = deepest_Pa;
        for (int n = 0; n < STEP_LIMIT; n++) {
            double middle_Pa = (takesAir_Pa + takesNone_Pa) / 2;
            if (withoutCheckValve(ambient_Pa - middle_Pa, speed_perS, 0) > 0) {
                takesAir_Pa = middle_Pa;
            } else {
                takesNone_Pa = middle_Pa;
            }
        }
        return takesAir_Pa;
    }

    /** How that air changes with the inlet pressure [kg/(s Pa)]; zero while the check valve is shut. */
    public double massFlowSlope_kgPerSPa(double inlet_Pa, double massFlow_kgPerS, double speed_perS) {
        if (massFlow_kgPerS <= 0) {
            return 0;
        }
        double density = inlet_Pa / rt_JPerKg;
        double difference_Pa = difference_Pa(inlet_Pa, massFlow_kgPerS);
        double perDifference = density * machine.perDifference(difference_Pa, density, speed_perS);
        double byDensity = massFlow_kgPerS / density + density * machine.perDensity(difference_Pa, density, speed_perS);
        return (byDensity / rt_JPerKg - perDifference)
                / (1 - perDifference * 2 * silencer_PaS2PerKg2 * massFlow_kgPerS);
    }

    /** What the machine would take at a difference that the silencer makes with a flow [kg/s]. */
    private double withoutCheckValve(double inlet_Pa, double speed_perS, double silencedFlow_kgPerS) {
        double density = inlet_Pa / rt_JPerKg;
        return density * machine.inletFlow_m3PerS(difference_Pa(inlet_Pa, silencedFlow_kgPerS), density, speed_perS);
    }

    /** Pressure difference over the machine [Pa] at an inlet pressure and a flow. */
    public double difference_Pa(double inlet_Pa, double massFlow_kgPerS) {
        return ambient_Pa + silencer_PaS2PerKg2 * massFlow_kgPerS * massFlow_kgPerS - inlet_Pa;
    }

    /** Speed [1/s] within the producer's speed range that comes nearest to taking a flow at an inlet pressure below ambient. */
    public double speed_perS(double inlet_Pa, double massFlow_kgPerS) {
        double density = inlet_Pa / rt_JPerKg;
        double wanted =
                machine.speed_perS(massFlow_kgPerS / density, difference_Pa(inlet_Pa, massFlow_kgPerS), density);
        return wanted >= least_perS && wanted <= greatest_perS
                ? wanted
                : wanted < least_perS ? least_perS : greatest_perS;
    }

    /** Power at the shaft [W]; never less than the air that passes takes at the least (equation PRD-33). */
    public double shaftPower_W(double inlet_Pa, double massFlow_kgPerS, double speed_perS) {
        double shaft_W =
                machine.shaftPower_W(difference_Pa(inlet_Pa, massFlow_kgPerS), inlet_Pa / rt_JPerKg, speed_perS);
        return Math.max(shaft_W, leastPower_W(inlet_Pa, massFlow_kgPerS));
    }

    private double leastPower_W(double inlet_Pa, double massFlow_kgPerS) {
        double flow_m3PerS = massFlow_kgPerS * rt_JPerKg / inlet_Pa;
        return LeastPower.of_W(inlet_Pa, flow_m3PerS, difference_Pa(inlet_Pa, massFlow_kgPerS));
    }

    /**
     * Power at the shaft [W] behind a shut check valve (equation PRD-32): the machine's own inlet stands where it takes no air any
     * more, less deep than the header.
     */
    public double shutPower_W(double header_Pa, double speed_perS) {
        return shaftPower_W(ambient_Pa - vacuumWithoutFlow_Pa(speed_perS, ambient_Pa - header_Pa), 0, speed_perS);
    }

    /**
     * Temperature rise of the air [K] by the energy balance (equation PRD-3): {@code ΔT = P_air / (w cp)}. Without flow there is no
     * steady temperature.
     *
     * @param massFlow_kgPerS above 0
     */
    public double rise_K(double inlet_Pa, double massFlow_kgPerS, double speed_perS) {
        if (!(massFlow_kgPerS > 0)) {
            throw new IllegalArgumentException("no steady temperature without flow: " + massFlow_kgPerS + " kg/s");
        }
        double air_W = machine.airPower_W(difference_Pa(inlet_Pa, massFlow_kgPerS), inlet_Pa / rt_JPerKg, speed_perS);
        boolean heats = air_W > 0; // seal water takes all of it
        return (heats ? Math.max(air_W, leastPower_W(inlet_Pa, massFlow_kgPerS)) : air_W)
                / (massFlow_kgPerS * SPECIFIC_HEAT_JPerKgK);
    }

    /** Whether the machine's law rests on measured points here. */
    public boolean covers(double inlet_Pa, double massFlow_kgPerS, double speed_perS) {
        double difference_Pa = difference_Pa(inlet_Pa, massFlow_kgPerS);
        return difference_Pa >= measuredFrom_Pa(inlet_Pa, speed_perS)
                && difference_Pa <= measuredTo_Pa(inlet_Pa, speed_perS);
    }

    /** Least difference [Pa] over the machine that was measured, at the density of an inlet pressure and a speed; −∞ for a formula. */
    public double measuredFrom_Pa(double inlet_Pa, double speed_perS) {
        return machine.measuredFrom_Pa(inlet_Pa / rt_JPerKg, speed_perS);
    }

    /** Greatest difference [Pa] over the machine that was measured, at the density of an inlet pressure and a speed; ∞ for a formula. */
    public double measuredTo_Pa(double inlet_Pa, double speed_perS) {
        return machine.measuredTo_Pa(inlet_Pa / rt_JPerKg, speed_perS);
    }
}
