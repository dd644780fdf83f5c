package dustwright.engine.rotaryvalve;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** What must hold for rotary valves whatever the numbers, and what is refused. */
class ValveLawsTest {
    private static final double RT_JPerKg = 287.05 * 293.15;
    private static final double ROTOR_m = 0.25;

    private static double discharged_kgPerS(double speed_perS) {
        double fill = ValveCapacity.usualFill(ValveCapacity.tipSpeed_mPerS(ROTOR_m, speed_perS));
        return ValveCapacity.capacity_kgPerS(0.0113, speed_perS, fill, 600);
    }

    @Test
    void the_speed_found_for_a_rate_discharges_that_rate() {
        for (double rate = 0.1; rate < 2; rate += 0.1) {
            double speed = ValveCapacity.speedAtUsualFill_perS(rate, 0.0113, ROTOR_m, 600);
            assertClose("rate", discharged_kgPerS(speed), rate, 1e-12);
        }
    }

    @Test
    void beyond_its_best_tip_speed_a_valve_discharges_less() {
        double best = ValveCapacity.bestTipSpeed_mPerS() / (Math.PI * ROTOR_m);
        assertThat(discharged_kgPerS(best)).isGreaterThan(discharged_kgPerS(0.97 * best));
        assertThat(discharged_kgPerS(best)).isGreaterThan(discharged_kgPerS(1.03 * best));
        double most = discharged_kgPerS(best);
        assertClose("speed", ValveCapacity.speedAtUsualFill_perS(most, 0.0113, ROTOR_m, 600), best, 1e-6);
        assertThatThrownBy(() -> ValveCapacity.speedAtUsualFill_perS(1.01 * most, 0.0113, ROTOR_m, 600))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ValveCapacity.usualFill(0.9)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void leakage_rises_with_vacuum_and_stays_once_choked() {
        double previous_kgPerS = 0;
        double labyrinth_kgPerS = 0;
        for (double receiver_Pa = 101_000; receiver_Pa > 5000; receiver_Pa -= 1000) {
            double single = ValveLeakage.nozzle_kgPerS(0.6, 1.5e-4, 101_325, receiver_Pa, RT_JPerKg);
            double three = ValveLeakage.labyrinth_kgPerS(0.6, 1.5e-4, 3, 101_325, receiver_Pa, RT_JPerKg);
            assertThat(single).isGreaterThanOrEqualTo(previous_kgPerS);
            assertThat(three)
                    .isGreaterThanOrEqualTo(labyrinth_kgPerS * (1 - 1e-12))
                    .isLessThan(single);
            previous_kgPerS = single;
            labyrinth_kgPerS = three;
        }
        assertThat(ValveLeakage.nozzle_kgPerS(0.6, 1.5e-4, 101_325, 20_000, RT_JPerKg))
                .isEqualTo(ValveLeakage.nozzle_kgPerS(0.6, 1.5e-4, 101_325, 30_000, RT_JPerKg));
    }

    @Test
    void more_tips_in_series_leak_less() {
        for (int tips = 1; tips < 8; tips++) {
            assertThat(ValveLeakage.labyrinth_kgPerS(0.6, 1.5e-4, tips + 1, 101_325, 60_000, RT_JPerKg))
                    .isLessThan(ValveLeakage.labyrinth_kgPerS(0.6, 1.5e-4, tips, 101_325, 60_000, RT_JPerKg));
        }
    }

    @Test
    void orifice_and_nozzle_agree_at_a_small_difference() {
        double rho = 101_325 / RT_JPerKg;
        assertClose(
                "small difference",
                ValveLeakage.orifice_kgPerS(0.6, 1.5e-4, rho, 200),
                ValveLeakage.nozzle_kgPerS(0.6, 1.5e-4, 101_325, 101_125, RT_JPerKg),
                0.002);
    }

    @Test
    void torque_and_motor_power_are_each_others_inverse() {
        double torque = ValveDrive.torque_Nm(750, 0.85, 1 / 3.0);
        assertClose("motor", ValveDrive.motor_W(torque, 0.85, 1 / 3.0), 750, 1e-12);
    }

    @Test
    void a_receiver_above_the_pressure_below_it_is_refused() {
        assertThatThrownBy(() -> ValveLeakage.nozzle_kgPerS(0.6, 1e-4, 100_000, 101_000, RT_JPerKg))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ValveCapacity.swept_m3(0.25, 0.06, 0.25, 24, 0.05))
                .isInstanceOf(OutOfRangeException.class);
    }
}
