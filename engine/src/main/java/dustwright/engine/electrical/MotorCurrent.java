package dustwright.engine.electrical;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Range;
import dustwright.engine.reference.ReferenceTable;

/** Currents of three-phase induction motors. */
public final class MotorCurrent {
    private static final ReferenceTable FULL_LOAD = ReferenceTable.bundled("electrical/full-load-current-60hz.csv");
    private static final ReferenceTable AT_400_V = ReferenceTable.bundled("electrical/motor-current-400v-50hz.csv");

    private static final Range POWER = new Range("motor current", "P", "W", 0, 1e7);
    private static final Range VOLTAGE = new Range("motor current", "U", "V", 100, 15_000);
    private static final Range FACTOR = new Range("motor current", "cos φ", "-", 0.1, 1);
    private static final Range EFFICIENCY = new Range("motor current", "η", "-", 0.1, 1);
    private static final Range CURRENT = new Range("motor current", "I", "A", 0, 1e5);
    private static final Range LENGTH = new Range("voltage drop", "L", "m", 0, 1e4);
    private static final Range RESISTANCE = new Range("voltage drop", "R", "Ω/m", 1e-6, 1);

    private MotorCurrent() {}

    /** Motor voltages of the table, each for a band of system voltages: a 480 V system has 460 V motors. */
    public enum Column {
        V200(200, 200, 200),
        V208(208, 208, 208),
        V230(230, 220, 240),
        V460(460, 440, 480),
        V575(575, 550, 600);

        private final int motorVolts;
        private final int systemFrom;
        private final int systemTo;

        Column(int motorVolts, int systemFrom, int systemTo) {
            this.motorVolts = motorVolts;
            this.systemFrom = systemFrom;
            this.systemTo = systemTo;
        }

        /** The column for a system voltage: 200, 208, 220 to 240, 440 to 480 or 550 to 600 V. */
        public static Column ofSystem(int systemVolts) {
            for (Column column : values()) {
                if (systemVolts >= column.systemFrom && systemVolts <= column.systemTo) {
                    return column;
                }
            }
            throw new IllegalArgumentException(systemVolts
                    + " V is no system of NEC Table 430.250: 200, 208, 220 to 240, 440 to 480 or 550 to 600 V");
        }

        /** Voltage of the motor [V]. */
        public int motorVolts() {
            return motorVolts;
        }
    }

    /**
     * Full-load current that sizes conductors, switches and short-circuit devices [A] (equation ELE-4).
     *
     * @param horsepower nameplate [hp], one of the table's ratings 0.5 to 200
     * @param systemVolts of the supply [V]
     * @source NEC Table 430.250, 2008 text
     * @example tableFullLoad_A(25, 480) = 34
     */
    public static double tableFullLoad_A(double horsepower, int systemVolts) {
        return FULL_LOAD
                .row("motor_hp", horsepower)
                .number(String.valueOf(Column.ofSystem(systemVolts).motorVolts()));
    }

    /** Where the full-load currents come from. */
    public static Source tableSource() {
        return FULL_LOAD.source();
    }

    /** Where the guide currents come from. */
    public static Source guideSource() {
        return AT_400_V.source();
    }

    /**
     * Guide current of a 4-pole motor at 400 V 50 Hz [A] (equation ELE-5); motors of one rating spread by 5 %.
     *
     * @param kilowatts [kW], one of the table's ratings 0.37 to 160
     * @source IEC 60947-4-1 Annex G; from memory
     * @example guideAt400V_A(22) = 41
     */
    public static double guideAt400V_A(double kilowatts) {
        return AT_400_V.row("motor_kW", kilowatts).number("current_A");
    }

    /**
     * Line current from shaft power [A] (equation ELE-6).
     *
     * <pre>
     * I = P / (√3 U cos φ η)
     * </pre>
     *
     * @param shaft_W P [W]
     * @param voltage_V U between lines [V]
     * @param powerFactor cos φ at that load [-]
     * @param efficiency η at that load [-]
     * @source definition of three-phase power
     * @example fromPower_A(22000, 400, 0.85, 0.93) = 40.170
     */
    public static double fromPower_A(double shaft_W, double voltage_V, double powerFactor, double efficiency) {
        return POWER.check(shaft_W)
                / (Math.sqrt(3) * VOLTAGE.check(voltage_V) * FACTOR.check(powerFactor) * EFFICIENCY.check(efficiency));
    }

    /**
     * Current of a single-phase motor from its shaft power [A] (equation ELE-37).
     *
     * <pre>
     * I = P / (U cos φ η)
     * </pre>
     *
     * @param shaft_W P [W]
     * @param voltage_V U [V]
     * @param powerFactor cos φ at that load [-]
     * @param efficiency η at that load [-]
     * @source definition of power factor
     * @example onePhase_A(2200, 230, 0.9, 0.8) = 13.2850
     */
    public static double onePhase_A(double shaft_W, double voltage_V, double powerFactor, double efficiency) {
        return POWER.check(shaft_W)
                / (VOLTAGE.check(voltage_V) * FACTOR.check(powerFactor) * EFFICIENCY.check(efficiency));
    }

    /**
     * Current below which no motor gives its shaft power [A] (equation ELE-36): without any loss and in phase with the voltage.
     *
     * <pre>
     * I_least = P / (√3 U), one phase P / U
     * </pre>
     *
     * @param shaft_W P [W]
     * @param voltage_V U between lines [V]
     * @param phases 1 or 3
     * @source conservation of energy
     * @example least_A(11185.5, 480, 3) = 13.4542
     */
    public static double least_A(double shaft_W, double voltage_V, int phases) {
        double one_A = POWER.check(shaft_W) / VOLTAGE.check(voltage_V);
        return phases == 3 ? one_A / Math.sqrt(3) : one_A;
    }

    /**
     * Electrical input of a motor [W] (equation ELE-7).
     *
     * <pre>
     * P_in = P_shaft / η
     * </pre>
     *
     * @param shaft_W [W]
     * @param efficiency η [-]
     * @source definition
     * @example input_W(20500, 0.936) = 21902
     */
    public static double input_W(double shaft_W, double efficiency) {
        return POWER.check(shaft_W) / EFFICIENCY.check(efficiency);
    }

    /**
     * Line current of a direct start [A] (equation ELE-22); motors range from 5 to 8 times.
     *
     * <pre>
     * I = 6 I_full load
     * </pre>
     *
     * @param fullLoad_A [A]
     * @source common practice, no source: the maker's data sheet says it
     * @example directStart_A(21) = 126
     */
    public static double directStart_A(double fullLoad_A) {
        return 6 * CURRENT.check(fullLoad_A);
    }

    /**
     * Line current at start in star connection [A] (equation ELE-8).
     *
     * <pre>
     * I = I_direct / 3
     * </pre>
     *
     * @param direct_A line current of a direct start [A]
     * @source three-phase connection; 1/√3 of the voltage and 1/√3 of the winding current in the line
     * @example starStart_A(266.5) = 88.833
     */
    public static double starStart_A(double direct_A) {
        return CURRENT.check(direct_A) / 3;
    }

    /**
     * Current in a winding in delta, and so in the contactors that feed it [A] (equation ELE-32).
     *
     * <pre>
     * I_winding = I / √3
     * </pre>
     *
     * @param line_A I in the line [A]
     * @source three-phase connection
     * @example winding_A(41) = 23.6714
     */
    public static double winding_A(double line_A) {
        return CURRENT.check(line_A) / Math.sqrt(3);
    }

    /**
     * Current that the supply disconnector must break [A] (equation ELE-34): the largest motor stalled, all others running.
     *
     * <pre>
     * I = 6 I_max + Σ others
     * </pre>
     *
     * @param fullLoads_A full-load currents [A], at least one
     * @source IEC 60204-1, 5.3; from memory. Six times full load stands for the stalled motor (common practice, no source)
     * @example stalled_A(55, 55) = 385
     */
    public static double stalled_A(double... fullLoads_A) {
        double sum = 0;
        double greatest = 0;
        for (double current_A : fullLoads_A) {
            sum += CURRENT.check(current_A);
            greatest = Math.max(greatest, current_A);
        }
        return sum - greatest + directStart_A(greatest);
    }

    /**
     * Voltage lost in the three conductors to a motor [V] (equation ELE-9), reactance left out.
     *
     * <pre>
     * ΔU = √3 I R' L
     * </pre>
     *
     * @param current_A I [A]
     * @param resistance_ohmPerM R' of one conductor [Ω/m]
     * @param length_m L one way [m]
     * @source Ohm's law
     * @example voltageDrop_V(34, 0.00255249, 30.48) = 4.5816
     */
    public static double voltageDrop_V(double current_A, double resistance_ohmPerM, double length_m) {
        return Math.sqrt(3) * CURRENT.check(current_A) * RESISTANCE.check(resistance_ohmPerM) * LENGTH.check(length_m);
    }
}
