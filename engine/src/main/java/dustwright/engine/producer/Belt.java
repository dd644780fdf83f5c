package dustwright.engine.producer;

import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.RotationalSpeed;

/**
 * A V-belt between motor and producer.
 *
 * @param motorSpeed of the motor at full load
 * @param motorSheave pitch diameter on the motor
 * @param machineSheave pitch diameter on the producer
 * @param slip of the belt [-]
 */
public record Belt(RotationalSpeed motorSpeed, Length motorSheave, Length machineSheave, double slip) {
    /** Speed it gives the producer (equation PRD-20). */
    public RotationalSpeed machineSpeed() {
        return new RotationalSpeed(BeltDrive.machine_perS(
                motorSpeed.revolutionsPerSecond(), motorSheave.metres(), machineSheave.metres(), slip));
    }
}
