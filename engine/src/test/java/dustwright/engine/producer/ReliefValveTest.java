package dustwright.engine.producer;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.tubing.Nozzle;
import org.junit.jupiter.api.Test;

class ReliefValveTest {
    private static final double SEA_Pa = 101_325;

    private static final ReliefValve VALVE =
            new ReliefValve(new PressureDifference(28_000), new PressureDifference(8000), new FreeAirFlow(0.24));

    @Test
    void shut_up_to_its_set_vacuum_and_rated_at_full_opening() {
        assertThat(VALVE.massFlow_kgPerS(-500, SEA_Pa)).isZero();
        assertThat(VALVE.massFlow_kgPerS(28_000, SEA_Pa)).isZero();
        assertClose(
                "half way",
                VALVE.massFlow_kgPerS(32_000, SEA_Pa),
                VALVE.rated().mass().kgPerSecond() / 2,
                1e-12);
        assertClose(
                "full",
                VALVE.massFlow_kgPerS(36_000, SEA_Pa),
                VALVE.rated().mass().kgPerSecond(),
                1e-12);
    }

    /**
     * By hand with γ 1.4: s(r) = r^1.428571 − r^1.714286 is 0.062960 at r = 1 − 36/101.325 and 0.066980 from r = 0.528282 on, so the
     * choked opening passes √(0.066980/0.062960) = 1.0314 of its rated flow, at any vacuum beyond 47.80 kPa.
     */
    @Test
    void beyond_full_opening_it_is_a_nozzle_that_chokes_and_has_no_step() {
        double rated_kgPerS = VALVE.rated().mass().kgPerSecond();
        assertClose("no step", VALVE.massFlow_kgPerS(36_000.001, SEA_Pa), rated_kgPerS, 1e-6);
        double choked_kgPerS = VALVE.massFlow_kgPerS(47_800, SEA_Pa);
        assertClose("choked", choked_kgPerS, 1.03143 * rated_kgPerS, 1e-4);
        assertThat(VALVE.massFlow_kgPerS(80_000, SEA_Pa)).isEqualTo(choked_kgPerS, within(1e-6));
    }

    /** At 70.1 kPa, near 3000 m, air chokes from 33.07 kPa on: an opening full at 36 kPa passes no more however deep the vacuum. */
    @Test
    void high_up_air_chokes_before_the_valve_is_full_and_nothing_more_passes() {
        assertThat(VALVE.massFlow_kgPerS(60_000, 70_100)).isEqualTo(VALVE.massFlow_kgPerS(36_000, 70_100));
    }

    @Test
    void the_nozzles_slope_is_that_of_its_flow() {
        for (double vacuum_Pa : new double[] {500, 12_000, 36_000, 47_000, 48_000}) {
            double up = Nozzle.massFlow_kgPerS(1, SEA_Pa, SEA_Pa - vacuum_Pa - 1, 84_000);
            double down = Nozzle.massFlow_kgPerS(1, SEA_Pa, SEA_Pa - vacuum_Pa + 1, 84_000);
            double slope = Nozzle.slope_kgPerSPa(1, SEA_Pa, SEA_Pa - vacuum_Pa, 84_000);
            assertThat(slope).isCloseTo((up - down) / 2, within(1e-5 * slope + 1e-12));
        }
    }

    @Test
    void a_valve_that_opens_at_once_is_refused() {
        assertThatThrownBy(() -> new ReliefValve(
                        new PressureDifference(28_000), new PressureDifference(0), new FreeAirFlow(0.24)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
