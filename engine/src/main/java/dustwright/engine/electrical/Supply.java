package dustwright.engine.electrical;

import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.SupplyFrequency;
import dustwright.engine.quantity.Voltage;
import java.util.Optional;

/**
 * The electrical supply at the panel's terminals.
 *
 * @param volts between lines
 * @param phases 3 or 1
 * @param basis whose rules size the circuits: one for the whole plant, never mixed
 * @param faultCurrent available short-circuit current at the panel's terminals
 */
public record Supply(
        Voltage volts, int phases, SupplyFrequency frequency, Basis basis, Optional<ElectricCurrent> faultCurrent) {
    /** Rules by which a screening is made. */
    public enum Basis {
        /** National Electrical Code: table currents by horsepower, 60 Hz. */
        NEC,
        /** IEC 60204-1 and 60947-4-1: currents by kilowatt rating. */
        IEC
    }
}
