package dustwright.engine.receiver;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.receiver.HopperOutlet.Shape;
import dustwright.engine.receiver.ShellBuckling.Law;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold for filters and receivers whatever the numbers, and what is refused. */
class ReceiverLawsTest {
    private static final double STEEL_Pa = 200e9;

    @Test
    void a_filter_run_for_its_cleaning_interval_stands_at_its_limit() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < 200; n++) {
            double velocity = random.nextDouble(0.01, 0.05);
            double drag = random.nextDouble(1e4, 3e4);
            double cake = random.nextDouble(5e4, 2e5);
            double limit_Pa = random.nextDouble(2, 4) * drag * velocity;
            double dust = random.nextDouble(0.001, 0.05);
            double cloth = random.nextDouble(5, 40);
            double load = FilterDrop.loadAt_kgPerM2(limit_Pa, velocity, drag, cake);
            double interval_s = FilterDrop.interval_s(load, cloth, dust, 0.3);
            double collected = FilterDrop.load_kgPerM2(0.7 * dust / (velocity * cloth), velocity, interval_s);
            assertClose("drop", FilterDrop.drop_Pa(velocity, drag, cake, collected), limit_Pa, 1e-12);
        }
    }

    @Test
    void cloth_that_reaches_its_limit_when_clean_has_no_interval() {
        assertThat(FilterDrop.loadAt_kgPerM2(100, 0.02, 15_000, 1e5)).isZero();
    }

    @Test
    void the_factor_method_tells_when_it_stands_at_an_end_of_its_range() {
        AirToCloth.FactorMethod hot = AirToCloth.pulseJet(9, 0.8, 450, 0.009, 7e-6);
        assertThat(hot.temperatureAtEnd()).isTrue();
        assertThat(hot.loadAtEnd()).isFalse();
        assertThat(AirToCloth.pulseJet(9, 0.8, 300, 0.5, 7e-6).loadAtEnd()).isTrue();
        assertThat(AirToCloth.pulseJet(9, 0.8, 450, 0.009, 7e-6).velocity_mPerS())
                .isEqualTo(AirToCloth.pulseJet(9, 0.8, 500, 0.009, 7e-6).velocity_mPerS());
    }

    @Test
    void air_rises_faster_between_bags_than_in_the_empty_shell() {
        assertThat(AirToCloth.interstitialVelocity_mPerS(0.3, 1.2, 20, 0.15))
                .isGreaterThan(AirToCloth.canVelocity_mPerS(0.3, 1.2));
        assertThatThrownBy(() -> AirToCloth.interstitialVelocity_mPerS(0.3, 0.6, 20, 0.15))
                .hasMessageContaining("leave no free area");
    }

    @Test
    void half_of_the_particles_of_cut_size_are_separated() {
        assertThat(CyclonicInlet.gradeEfficiency(8e-6, 8e-6)).isEqualTo(0.5);
        assertThat(CyclonicInlet.gradeEfficiency(8e-6, 80e-6)).isGreaterThan(0.99);
    }

    @Test
    void arching_strength_lies_on_the_flow_function_and_on_the_hoppers_line() {
        double strength_kPa = HopperOutlet.criticalStrength_Pa(0.8, 0.6, 1.7) / 1000;
        assertClose("flow function", strength_kPa, 0.8 * Math.pow(1.7 * strength_kPa, 0.6), 1e-12);
    }

    @Test
    void a_slot_may_be_narrower_than_a_round_outlet() {
        for (double degrees = 5; degrees < 60; degrees += 5) {
            double theta = Math.toRadians(degrees);
            assertThat(HopperOutlet.archingOutlet_m(Shape.SLOT, theta, 1000, 800, 9.80665))
                    .isLessThan(HopperOutlet.archingOutlet_m(Shape.CONE, theta, 1000, 800, 9.80665));
        }
    }

    @Test
    void degrees_given_as_radians_are_refused() {
        assertThatThrownBy(() -> HopperOutlet.shapeFactor(Shape.CONE, 35)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void collapse_falls_with_length_down_to_the_very_long_tube() {
        double previous_Pa = Double.MAX_VALUE;
        for (double length = 0.6; length < 90; length *= 1.3) {
            double collapse_Pa =
                    ShellBuckling.collapse(STEEL_Pa, 0.3, 1.2, 0.003, length).pressure_Pa();
            assertThat(collapse_Pa).isLessThanOrEqualTo(previous_Pa);
            previous_Pa = collapse_Pa;
        }
        assertThat(ShellBuckling.collapse(STEEL_Pa, 0.3, 1.2, 0.003, 90).law()).isEqualTo(Law.LONG_TUBE);
        assertThat(previous_Pa).isEqualTo(ShellBuckling.longTube_Pa(STEEL_Pa, 0.3, 1.2, 0.003));
    }

    @Test
    void two_laws_for_a_usual_receiver_agree_within_a_tenth() {
        assertClose(
                "Roark 19b beside Windenberg and Trilling",
                ShellBuckling.roarkShort_Pa(STEEL_Pa, 0.3, 1.2, 0.003, 1.8),
                ShellBuckling.windenbergTrilling_Pa(STEEL_Pa, 0.3, 1.2, 0.003, 1.8),
                0.1);
    }

    @Test
    void a_shell_too_thick_or_too_short_for_the_laws_is_refused() {
        assertThatThrownBy(() -> ShellBuckling.longTube_Pa(STEEL_Pa, 0.3, 0.1, 0.01))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ShellBuckling.windenbergTrilling_Pa(STEEL_Pa, 0.3, 1.2, 0.003, 0.02))
                .hasMessageContaining("L/D");
    }

    @Test
    void tapped_dust_is_never_lighter_than_loose_dust() {
        assertThatThrownBy(() -> PowderFlow.hausner(650, 500)).isInstanceOf(OutOfRangeException.class);
        assertThat(PowderFlow.ofHausner(1.3)).isEqualTo(PowderFlow.PASSABLE);
        assertThat(PowderFlow.ofCarr(0.230769)).isEqualTo(PowderFlow.PASSABLE);
        assertThat(PowderFlow.ofHausner(1.7)).isEqualTo(PowderFlow.VERY_VERY_POOR);
        assertThat(PowderFlow.ofRepose(Math.toRadians(28))).isEqualTo(PowderFlow.EXCELLENT);
    }

    @Test
    void numbers_that_are_no_numbers_are_refused() {
        assertThatThrownBy(() -> FilterDrop.drop_Pa(0.0 / 0.0, 1e4, 1e5, 0.1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> AirToCloth.velocity_mPerS(1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> HoldUp.timeToHighLevel_s(1, 500, 0)).isInstanceOf(OutOfRangeException.class);
    }
}
