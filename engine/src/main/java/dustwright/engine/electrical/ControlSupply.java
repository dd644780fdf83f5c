package dustwright.engine.electrical;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Range;
import dustwright.engine.reference.ReferenceTable;

/** Size of a control supply, estimated from what hangs on it. */
public final class ControlSupply {
    private static final ReferenceTable LOADS = ReferenceTable.bundled("electrical/control-load.csv");
    private static final Range POWER = new Range("a control supply", "P", "W", 0, 1e5);
    private static final Range VOLTAGE = new Range("a control supply", "U", "V", 10, 300);
    private static final Range SPARE = new Range("a control supply", "spare", "-", 0, 1);

    private ControlSupply() {}

    /** What hangs on a control supply; the words of the table. */
    public enum Load {
        DIGITAL_INPUT("digital input with its switch"),
        ANALOGUE_INPUT("analogue input with its transmitter"),
        SOLENOID_VALVE("solenoid valve"),
        LAMP("lamp or horn"),
        MOTOR_RELAY("motor relay or contactor coil"),
        CONTROLLER("controller with its modules");

        private final String words;

        Load(String words) {
            this.words = words;
        }

        /** The load in words. */
        public String words() {
            return words;
        }

        /** What one of it takes [W]. */
        public double each_W() {
            return LOADS.row("load", words).number("power_W");
        }
    }

    /** Where the loads come from. */
    public static Source source() {
        return LOADS.source();
    }

    /**
     * Current a control supply must give [A] (equation ELE-23).
     *
     * <pre>
     * I = Σ P (1 + spare) / U
     * </pre>
     *
     * @param load_W Σ P of everything on at once [W]
     * @param spare kept free [-]; 0.25 is usual (common practice, no source)
     * @param control_V U [V]
     * @source definition of power; direct current, or alternating current with a power factor of 1
     * @example current_A(96, 0.25, 24) = 5
     */
    public static double current_A(double load_W, double spare, double control_V) {
        return POWER.check(load_W) * (1 + SPARE.check(spare)) / VOLTAGE.check(control_V);
    }
}
