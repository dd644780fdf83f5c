package dustwright.engine.producer;

import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;

/** What stands between a motor and its producer. */
public sealed interface Coupling {
    /** Speed it gives the producer from that of the motor. */
    RotationalSpeed machineSpeed(RotationalSpeed motor);

    /** A coupling or a common shaft: the producer turns as its motor does. */
    record Direct() implements Coupling {
        @Override
        public RotationalSpeed machineSpeed(RotationalSpeed motor) {
            return motor;
        }
    }

    /**
     * A V-belt.
     *
     * @param motorSheave pitch diameter on the motor
     * @param machineSheave pitch diameter on the producer
     * @param slip of the belt
     */
    record Belt(Length motorSheave, Length machineSheave, Ratio slip) implements Coupling {
        /** By equation PRD-20. */
        @Override
        public RotationalSpeed machineSpeed(RotationalSpeed motor) {
            return new RotationalSpeed(BeltDrive.machine_perS(
                    motor.revolutionsPerSecond(), motorSheave.metres(), machineSheave.metres(), slip.value()));
        }
    }
}
