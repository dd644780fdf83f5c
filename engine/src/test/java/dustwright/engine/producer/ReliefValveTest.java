package dustwright.engine.producer;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import org.junit.jupiter.api.Test;

class ReliefValveTest {
    private static final ReliefValve VALVE =
            new ReliefValve(new PressureDifference(28_000), new PressureDifference(8000), new FreeAirFlow(0.24));

    @Test
    void shut_up_to_its_set_vacuum_and_rated_at_full_opening() {
        assertThat(VALVE.massFlow_kgPerS(-500)).isZero();
        assertThat(VALVE.massFlow_kgPerS(28_000)).isZero();
        assertClose(
                "half way", VALVE.massFlow_kgPerS(32_000), VALVE.rated().mass().kgPerSecond() / 2, 1e-12);
        assertClose("full", VALVE.massFlow_kgPerS(36_000), VALVE.rated().mass().kgPerSecond(), 1e-12);
    }

    @Test
    void beyond_full_opening_the_flow_grows_with_the_root_of_the_vacuum_without_a_step() {
        assertClose("no step", VALVE.massFlow_kgPerS(36_000.001), VALVE.massFlow_kgPerS(36_000), 1e-6);
        assertClose(
                "four times",
                VALVE.massFlow_kgPerS(4 * 36_000),
                2 * VALVE.rated().mass().kgPerSecond(),
                1e-12);
    }

    @Test
    void a_valve_that_opens_at_once_is_refused() {
        assertThatThrownBy(() -> new ReliefValve(
                        new PressureDifference(28_000), new PressureDifference(0), new FreeAirFlow(0.24)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
