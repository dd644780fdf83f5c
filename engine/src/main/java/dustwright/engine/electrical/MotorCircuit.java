package dustwright.engine.electrical;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Range;
import dustwright.engine.reference.ReferenceTable;
import dustwright.engine.reference.ReferenceTable.Row;
import java.util.List;
import java.util.Optional;

/**
 * Branch circuit of one motor in continuous duty by the National Electrical Code, in ordinary conditions (30 °C, not more than three
 * current-carrying conductors, terminals marked for 75 °C). A screening: ambient, bundling, fault level, voltage drop, nameplate and
 * local amendments remain for a licensed electrician or engineer.
 *
 * @param fullLoad_A table current (ELE-4) [A]
 * @param leastAmpacity_A least ampacity of the conductors: 125 % of table current, 430.22 (ELE-10) [A]
 * @param conductor least copper conductor of the 75 °C column; empty where parallel sets are needed
 * @param nonTimeDelayFuse_A largest standard fuse without time delay (ELE-11) [A]
 * @param dualElementFuse_A largest standard dual-element fuse (ELE-11) [A]
 * @param inverseTimeBreaker_A largest standard inverse-time breaker (ELE-11) [A]
 * @param instantaneousTrip_A highest setting of an instantaneous breaker (ELE-11) [A]
 * @param leastDisconnect_A least current rating of the disconnect: 115 %, 430.110(A), and rated in horsepower (ELE-12) [A]
 */
public record MotorCircuit(
        double fullLoad_A,
        double leastAmpacity_A,
        Optional<Conductor> conductor,
        double nonTimeDelayFuse_A,
        double dualElementFuse_A,
        double inverseTimeBreaker_A,
        double instantaneousTrip_A,
        double leastDisconnect_A) {
    private static final ReferenceTable PERCENT = ReferenceTable.bundled("electrical/short-circuit-percent.csv");
    private static final ReferenceTable COPPER = ReferenceTable.bundled("electrical/copper-75c.csv");
    private static final ReferenceTable RATINGS = ReferenceTable.bundled("electrical/standard-ratings.csv");

    private static final Range CURRENT = new Range("a motor circuit", "I", "A", 0.01, 1e5);
    private static final Range SERVICE_FACTOR = new Range("a motor overload", "service factor", "-", 1, 2);
    private static final Range RISE = new Range("a motor overload", "marked rise", "K", 1, 200);

    /** A copper conductor: its size in AWG or kcmil, and its ampacity in the 75 °C column. */
    public record Conductor(String size, double ampacity_A) {}

    /** Motors by the rows of NEC Table 430.52. */
    public enum MotorType {
        SINGLE_PHASE("single-phase"),
        SQUIRREL_CAGE("polyphase other than wound-rotor, squirrel cage other than Design B energy-efficient"),
        DESIGN_B("squirrel cage Design B energy-efficient"),
        SYNCHRONOUS("synchronous"),
        WOUND_ROTOR("wound-rotor"),
        DIRECT_CURRENT("direct current");

        private final String words;

        MotorType(String words) {
            this.words = words;
        }

        /** The motor in the words of the table. */
        public String words() {
            return words;
        }

        private Row percent() {
            return PERCENT.row("motor", words);
        }
    }

    /** Which standard ratings there are: 1, 3, 6 and 10 A are made as fuses only. */
    public enum Device {
        FUSE,
        BREAKER
    }

    /**
     * The circuit of a motor by its table current.
     *
     * @param horsepower nameplate [hp], one of the table's ratings 0.5 to 200
     * @param systemVolts of the supply [V]
     * @source NEC 430.22, 430.52, 430.110(A), 240.6(A), Tables 310.16, 430.52 and 430.250; editions in the tables
     */
    public static MotorCircuit of(double horsepower, int systemVolts, MotorType type) {
        return ofFullLoad(MotorCurrent.tableFullLoad_A(horsepower, systemVolts), type);
    }

    /**
     * The circuit of a motor whose table current is known.
     *
     * @param fullLoad_A table current, not nameplate current [A]
     */
    public static MotorCircuit ofFullLoad(double fullLoad_A, MotorType type) {
        Row percent = type.percent();
        return new MotorCircuit(
                fullLoad_A,
                1.25 * fullLoad_A,
                conductor(1.25 * fullLoad_A),
                nextStandard_A(percent.number("non_time_delay_fuse") / 100 * fullLoad_A, Device.FUSE),
                nextStandard_A(percent.number("dual_element_fuse") / 100 * fullLoad_A, Device.FUSE),
                nextStandard_A(percent.number("inverse_time_breaker") / 100 * fullLoad_A, Device.BREAKER),
                percent.number("instantaneous_breaker") / 100 * fullLoad_A,
                1.15 * fullLoad_A);
    }

    /** Where the conductors come from. */
    public static Source conductorSource() {
        return COPPER.source();
    }

    /** Where the percentages of short-circuit devices come from. */
    public static Source percentSource() {
        return PERCENT.source();
    }

    /**
     * Least copper conductor of the 75 °C column with this ampacity; empty where the largest, 1000 kcmil, is not enough.
     *
     * @param ampacity_A [A]
     * @source NEC Table 310.16
     */
    public static Optional<Conductor> conductor(double ampacity_A) {
        double asked_A = CURRENT.check(ampacity_A);
        return COPPER.rows().stream()
                .filter(row -> reaches(row.number("ampacity_A"), asked_A))
                .map(row -> new Conductor(row.text("size"), row.number("ampacity_A")))
                .findFirst();
    }

    /**
     * Next standard rating at or above a current [A], as 430.52(C)(1) exception 1 allows; a product that is a standard size stays.
     *
     * @param current_A [A]
     * @source NEC 240.6(A)
     * @example nextStandard_A(85, BREAKER) = 90
     */
    public static double nextStandard_A(double current_A, Device device) {
        double asked_A = CURRENT.check(current_A);
        return ratings(device).stream()
                .filter(rating -> reaches(rating, asked_A))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no standard rating reaches " + asked_A + " A"));
    }

    /**
     * Next standard rating at or below a current [A], as a feeder's device needs.
     *
     * @param current_A [A]
     * @source NEC 240.6(A), 430.62
     * @example standardUpTo_A(190, FUSE) = 175
     */
    public static double standardUpTo_A(double current_A, Device device) {
        double asked_A = CURRENT.check(current_A);
        return ratings(device).stream()
                .filter(rating -> rating <= asked_A * (1 + 1e-9))
                .reduce((smaller, larger) -> larger)
                .orElseThrow(() -> new IllegalArgumentException("no standard rating is as small as " + asked_A + " A"));
    }

    private static List<Double> ratings(Device device) {
        return RATINGS.rows().stream()
                .filter(row -> device == Device.FUSE || row.text("fits").contains("breaker"))
                .map(row -> row.number("rating_A"))
                .toList();
    }

    /** At or above, but for the last digits of a product such as 2.5 × 40. */
    private static boolean reaches(double rating_A, double asked_A) {
        return rating_A >= asked_A * (1 - 1e-9);
    }

    /**
     * Highest trip of a separate overload device [A] (equation ELE-13): on nameplate, not table current.
     *
     * <pre>
     * I = 125 % with service factor 1.15 or more, or marked rise 40 °C or less; else 115 %
     * 140 % or 130 % where the motor does not start otherwise
     * </pre>
     *
     * @param nameplate_A [A]
     * @param serviceFactor on the nameplate [-]
     * @param markedRise_K temperature rise on the nameplate [K]; empty where not marked
     * @param doesNotStart whether the lower trip has proved too low to start or carry the load
     * @source NEC 430.32(A)(1) and (C); from memory
     */
    public static double overloadTrip_A(
            double nameplate_A, double serviceFactor, Optional<Double> markedRise_K, boolean doesNotStart) {
        boolean roomy = SERVICE_FACTOR.check(serviceFactor) >= 1.15
                || markedRise_K.filter(rise -> RISE.check(rise) <= 40).isPresent();
        double share = roomy ? 1.25 : 1.15;
        return CURRENT.check(nameplate_A) * (share + (doesNotStart ? 0.15 : 0));
    }

    /**
     * Least ampacity of a feeder to several motors [A] (equation ELE-14).
     *
     * <pre>
     * I = Σ I_FLC + 0.25 max I_FLC
     * </pre>
     *
     * @param fullLoads_A table currents [A], at least one
     * @source NEC 430.24; Annex D Example D8 prints 124 A for 40, 40 and 34 A, from memory
     * @example feederAmpacity_A(34, 40, 40) = 124
     */
    public static double feederAmpacity_A(double... fullLoads_A) {
        return sum(fullLoads_A) + 0.25 * greatest(fullLoads_A);
    }

    /**
     * Largest standard device of a feeder to several motors [A] (equation ELE-15): rounded down.
     *
     * <pre>
     * I ≤ largest branch device + Σ other I_FLC
     * </pre>
     *
     * @param largestBranchDevice_A rating of the largest branch device [A]
     * @param otherFullLoads_A table currents of the other motors [A]
     * @source NEC 430.62; Annex D Example D8 prints 175 A, from memory
     */
    public static double feederDevice_A(double largestBranchDevice_A, Device device, double... otherFullLoads_A) {
        return standardUpTo_A(CURRENT.check(largestBranchDevice_A) + sum(otherFullLoads_A), device);
    }

    private static double sum(double... currents_A) {
        double sum = 0;
        for (double current_A : currents_A) {
            sum += CURRENT.check(current_A);
        }
        return sum;
    }

    private static double greatest(double... currents_A) {
        double greatest = 0;
        for (double current_A : currents_A) {
            greatest = Math.max(greatest, current_A);
        }
        return greatest;
    }
}
