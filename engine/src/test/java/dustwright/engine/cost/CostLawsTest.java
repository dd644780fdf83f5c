package dustwright.engine.cost;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.cost.LifeCycle.Once;
import dustwright.engine.cost.LifeCycle.Yearly;
import dustwright.engine.quantity.OutOfRangeException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What must hold for cost whatever the numbers, and what is refused. */
class CostLawsTest {
    @Test
    void a_yearly_amount_is_worth_its_single_payments() {
        double sum = 0;
        List<Once> payments = new ArrayList<>();
        for (int year = 1; year <= 15; year++) {
            sum += Math.pow(1.02 / 1.05, year);
            payments.add(new Once(100, year));
        }
        assertClose("UPV*", LifeCycle.growing(0.05, 0.02, 15), sum, 1e-12);
        assertClose(
                "cost",
                LifeCycle.cost(0, payments, List.of(), 0.05, 15),
                LifeCycle.cost(0, List.of(), List.of(new Yearly(100, 0)), 0.05, 15),
                1e-12);
    }

    @Test
    void growth_close_to_the_discount_rate_gives_no_jump() {
        assertClose("UPV*", LifeCycle.growing(0.03, 0.03 + 1e-13, 20), 20, 1e-9);
    }

    @Test
    void a_change_that_saves_nothing_has_no_payback() {
        assertThatThrownBy(() -> LifeCycle.payback_years(1000, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> LifeCycle.single(-0.01, 10)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void a_seal_takes_its_volume_and_what_its_pressure_packs_in() {
        assertClose(
                "two volumes at one atmosphere gauge", CompressedAir.seal_m3(0.004, 101_325, 101_325), 0.008, 1e-12);
        assertClose("pulses", CompressedAir.pulses_m3(240, 0.03), 7.2, 1e-12);
    }
}
