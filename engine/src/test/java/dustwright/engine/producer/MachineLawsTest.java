package dustwright.engine.producer;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** What must hold for the work of machines and for belts. */
class MachineLawsTest {
    @Test
    void no_machine_works_less_than_the_reversible_one_nor_a_lobe_less_than_a_vane() {
        for (double ratio = 1.05; ratio < 4; ratio += 0.2) {
            double inside = 1 + (ratio - 1) / 2;
            double least = DisplacementWork.adiabatic_J(0.03, 1e5, ratio);
            double vane = DisplacementWork.partlyInside_J(0.03, 1e5, inside, ratio);
            assertThat(vane).isGreaterThan(least).isLessThan(DisplacementWork.lobe_J(0.03, 1e5, ratio));
        }
    }

    @Test
    void compression_wholly_inside_or_not_at_all_are_the_two_ends() {
        assertClose(
                "wholly inside",
                DisplacementWork.partlyInside_J(0.03, 1e5, 1.5, 1.5),
                DisplacementWork.adiabatic_J(0.03, 1e5, 1.5),
                1e-12);
        assertClose(
                "not at all",
                DisplacementWork.partlyInside_J(0.03, 1e5, 1, 1.5),
                DisplacementWork.lobe_J(0.03, 1e5, 1.5),
                1e-12);
        assertThatThrownBy(() -> DisplacementWork.partlyInside_J(0.03, 1e5, 1.6, 1.5))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void both_sheaves_see_one_belt_speed_but_for_slip() {
        double machine = BeltDrive.machine_perS(29.2, 0.2, 0.16, 0);
        assertClose("belt", BeltDrive.belt_mPerS(0.16, machine), BeltDrive.belt_mPerS(0.2, 29.2), 1e-12);
        assertThat(BeltDrive.belt_mPerS(0.2, 29.2)).isLessThan(BeltDrive.GREATEST_BELT_mPerS);
    }

    @Test
    void affinity_gives_power_as_flow_times_rise() {
        double power = Affinity.power(1, 0.8, 0.9);
        assertClose("power", power, Affinity.flow(1, 0.8) * Affinity.rise(1, 0.8, 0.9), 1e-12);
        assertThatThrownBy(() -> Affinity.flow(1, 3)).isInstanceOf(OutOfRangeException.class);
    }
}
