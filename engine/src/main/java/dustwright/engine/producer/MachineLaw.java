package dustwright.engine.producer;

/**
 * What a machine does at its inlet, in SI numbers and free of allocation: called in the solver's loops. Pressure difference is
 * discharge less inlet, silencer included; speed in turns per second; density at the inlet.
 */
public interface MachineLaw {
    /** Volume flow at the inlet [m³/s]; below zero where the machine cannot hold the difference. */
    double inletFlow_m3PerS(double difference_Pa, double inletDensity_kgPerM3, double speed_perS);

    /** How that flow changes with the difference alone [m³/(s Pa)]: zero or below. */
    double perDifference(double difference_Pa, double inletDensity_kgPerM3, double speed_perS);

    /** How that flow changes with the density at the inlet alone [m⁶/(s kg)]: zero or above. */
    double perDensity(double difference_Pa, double inletDensity_kgPerM3, double speed_perS);

    /** Speed [1/s] at which it moves an inlet volume flow against a difference above zero. */
    double speed_perS(double inletFlow_m3PerS, double difference_Pa, double inletDensity_kgPerM3);

    /** Power at the shaft [W]. */
    double shaftPower_W(double difference_Pa, double inletDensity_kgPerM3, double speed_perS);

    /** Power that stays in the air as heat [W]. */
    double airPower_W(double difference_Pa, double inletDensity_kgPerM3, double speed_perS);

    /** Least difference [Pa] that was measured, corrected to a density and a speed; −∞ for a formula. */
    double measuredFrom_Pa(double inletDensity_kgPerM3, double speed_perS);

    /** Greatest difference [Pa] that was measured, corrected to a density and a speed; ∞ for a formula. */
    double measuredTo_Pa(double inletDensity_kgPerM3, double speed_perS);
}
