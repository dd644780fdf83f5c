package dustwright.engine.producer;

import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.MeasuredCurve;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Units;
import dustwright.engine.quantity.Volume;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What makes the vacuum. */
public sealed interface Machine {
    /**
     * Its laws in SI numbers, made once and asked many times.
     *
     * @param barometer of the site, against which it works
     */
    MachineLaw law(AbsolutePressure barometer);

    /** The trade's word for it. */
    String kind();

    /** True for a liquid-ring pump: its heat goes into the seal water, and no energy balance gives the temperature of its air. */
    default boolean sealWaterTakesTheHeat() {
        return false;
    }

    /**
     * Lobe-type positive displacement pump (equations PRD-1 to PRD-3). The rotors carry the air over uncompressed, so the work is
     * displaced volume times pressure difference; slip grows with the leak velocity through the clearances.
     *
     * <pre>
     * Q = D (n − n_slip)            n_slip = n_1 √(Δp / 1 psi) √(1.2041 kg/m³ / ρ_inlet)
     * P = D n Δp / η + P_idle
     * </pre>
     *
     * @param displacement D, volume displaced per turn
     * @param slipAtOnePsi n_1, slip speed at 1 psi on air of 1.2041 kg/m³: the strongest parameter, a catalogue states it per machine
     * @param mechanicalEfficiency η, air power over shaft power without idle loss [-]
     * @param idleLoss shaft power at no pressure difference, at rated speed
     * @source constant-volume displacement: CAGI handbook, blowers, 2022; slip: public technical note of an equipment distributor, form
     *     by the leak velocity; published machine tables are good to 4 % (Jenkins, Blower and Vacuum Best Practices, 2022)
     */
    record LobePump(Volume displacement, RotationalSpeed slipAtOnePsi, double mechanicalEfficiency, Power idleLoss)
            implements Machine, MachineLaw {
        private static final double STANDARD_kgPerM3 = 1.2041;

        @Override
        public MachineLaw law(AbsolutePressure barometer) {
            return this;
        }

        @Override
        public String kind() {
            return "lobe";
        }

        /** Slip speed [1/s]; against a difference below zero the leak runs the other way. */
        public double slip_perS(double difference_Pa, double inletDensity_kgPerM3) {
            double root = Math.sqrt(Math.abs(difference_Pa) / Units.PSI_Pa * STANDARD_kgPerM3 / inletDensity_kgPerM3);
            return slipAtOnePsi.revolutionsPerSecond() * Math.copySign(root, difference_Pa);
        }

        @Override
        public double inletFlow_m3PerS(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
            return displacement.cubicMetres() * (speed_perS - slip_perS(difference_Pa, inletDensity_kgPerM3));
        }

        /** The slope of the root has no end at no difference: below 1 Pa it is that at 1 Pa. */
        @Override
        public double perDifference(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
            double size_Pa = Math.max(Math.abs(difference_Pa), 1);
            return -displacement.cubicMetres() * slip_perS(size_Pa, inletDensity_kgPerM3) / (2 * size_Pa);
        }

        @Override
        public double perDensity(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
            return displacement.cubicMetres()
                    * slip_perS(difference_Pa, inletDensity_kgPerM3)
                    / (2 * inletDensity_kgPerM3);
        }

        @Override
        public double speed_perS(double inletFlow_m3PerS, double difference_Pa, double inletDensity_kgPerM3) {
            return inletFlow_m3PerS / displacement.cubicMetres() + slip_perS(difference_Pa, inletDensity_kgPerM3);
        }

        @Override
        public double airPower_W(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
            return displacement.cubicMetres() * speed_perS * difference_Pa;
        }

        @Override
        public double shaftPower_W(double difference_Pa, double inletDensity_kgPerM3, double speed_perS) {
            return airPower_W(difference_Pa, inletDensity_kgPerM3, speed_perS) / mechanicalEfficiency
                    + idleLoss.watts();
        }

        @Override
        public double measuredFrom_Pa(double inletDensity_kgPerM3, double speed_perS) {
            return Double.NEGATIVE_INFINITY;
        }

        @Override
        public double measuredTo_Pa(double inletDensity_kgPerM3, double speed_perS) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Any machine known by its measured curve (equation PRD-4): multistage centrifugal, side-channel, claw, liquid ring.
     *
     * @param kind the trade's word for it
     * @param ratedSpeed speed of the curve
     * @param ratedDensity density at the machine's inlet at which the curve was taken
     * @param dynamic true for centrifugal and side-channel machines, whose vacuum follows speed² and inlet density; false for
     *     displacement machines, whose flow follows speed
     * @param taken how a dynamic machine's curve was taken
     * @param points flow falling, vacuum rising; of a dynamic machine brought to the rated density at the inlet
     */
    record CurveMachine(
            String kind,
            RotationalSpeed ratedSpeed,
            Density ratedDensity,
            boolean dynamic,
            Taken taken,
            List<CurvePoint> points)
            implements Machine {
        public CurveMachine {
            points = List.copyOf(points);
        }

        /** One whose curve is known to hold at one density at its inlet. */
        public CurveMachine(
                String kind,
                RotationalSpeed ratedSpeed,
                Density ratedDensity,
                boolean dynamic,
                List<CurvePoint> points) {
            this(kind, ratedSpeed, ratedDensity, dynamic, Taken.AT_RATED_DENSITY, points);
        }

        /** How a dynamic machine's curve was taken. */
        public enum Taken {
            /** Every point with air of the rated density at the inlet. */
            AT_RATED_DENSITY("at rated density"),
            /** The inlet under the vacuum of the point, still air of 101 325 Pa behind the machine, rated density with the inlet open. */
            UNDER_ITS_VACUUM("under its own vacuum"),
            /** Nobody says, and it is read as taken at one density. */
            NOT_STATED("");

            private final String words;

            Taken(String words) {
                this.words = words;
            }

            /** As the plant file says it. */
            public String words() {
                return words;
            }
        }

        /** Whether nobody says how the curve of this dynamic machine was taken. */
        public boolean readingOpen() {
            return dynamic && taken == Taken.NOT_STATED;
        }

        @Override
        public boolean sealWaterTakesTheHeat() {
            return kind.equals("liquid ring");
        }

        @Override
        public MachineLaw law(AbsolutePressure barometer) {
            return new CurveLaw(this, barometer);
        }

        /**
         * Difference on its curve over that at a barometer, for a displacement machine: its curve, taken at 101 325 Pa, holds at the
         * same pressure ratio (equation PRD-35). 1 for a dynamic machine, which is carried by its density.
         */
        public double toSeaLevel(AbsolutePressure barometer) {
            return dynamic ? 1 : StandardAtmosphere.SEA_LEVEL_Pa / barometer.pascals();
        }

        /** Inlet volume flow [m³/s] over vacuum [Pa], as measured. */
        public MeasuredCurve flow_m3PerS() {
            return over(point -> point.flow().cubicMetresPerSecond());
        }

        /** Shaft power [W] over vacuum [Pa], as measured. */
        public MeasuredCurve power_W() {
            return over(point -> point.power().watts());
        }

        private MeasuredCurve over(ToDoubleFunction<CurvePoint> figure) {
            return new MeasuredCurve(
                    points.stream()
                            .mapToDouble(point -> point.vacuum().pascals())
                            .toArray(),
                    points.stream().mapToDouble(figure).toArray());
        }
    }

    /** One point of a producer's curve: inlet volume flow, vacuum made and shaft power. */
    record CurvePoint(ActualVolumeFlow flow, PressureDifference vacuum, Power power) {
        /**
         * The point of a dynamic machine taken under its own vacuum, brought to the density it has with its inlet open (equation PRD-37).
         *
         * <pre>
         * Q0 = Q,  Δp0 = v / (1 − v/p_0),  P0 = P / (1 − v/p_0),  p_0 = 101 325 Pa
         * </pre>
         *
         * @source affinity of a dynamic machine (PRD-4) with the density of its inlet, ρ = ρ0 (1 − v/p_0)
         */
        public CurvePoint atRatedDensity() {
            double density = 1 - vacuum.pascals() / StandardAtmosphere.SEA_LEVEL_Pa;
            return new CurvePoint(
                    flow, new PressureDifference(vacuum.pascals() / density), new Power(power.watts() / density));
        }
    }
}
