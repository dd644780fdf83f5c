package dustwright.engine.bagging;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.bagging.BagFill.Filled;
import dustwright.engine.bagging.BagFill.Limit;
import dustwright.engine.bagging.BagSupport.Base;
import dustwright.engine.bagging.BagSupport.Verdict;
import dustwright.engine.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** Facts of the trade about bags and drums (common practice, no source), laws and refusals. */
class BagLawsTest {
    private static final double FT3_m3 = 0.3048 * 0.3048 * 0.3048;

    /** Common practice, no source: a usual bulk bag takes about 64 ft³ and replaces roughly seven to nine 55-gallon drums. */
    @Test
    void a_usual_bulk_bag_replaces_seven_to_nine_drums() {
        double usual_m3 = 64 * FT3_m3;
        double brimful = BagFill.drumsPerBag(usual_m3, BagFill.DRUM_55_GALLON_m3);
        assertThat(brimful).isBetween(7.0, 9.0);
        double filledShort = BagFill.notInflated_m3(usual_m3, 0.85);
        assertThat(BagFill.drumsPerBag(filledShort, BagFill.DRUM_55_GALLON_m3)).isBetween(7.0, 9.0);
        assertThat(BagFill.containers(usual_m3, BagFill.DRUM_55_GALLON_m3, 1)).isEqualTo(9);
    }

    @Test
    void light_dust_fills_the_bag_and_heavy_dust_its_load() {
        Filled flour = BagFill.fill(1.8, 500, 1000);
        assertThat(flour.limit()).isEqualTo(Limit.VOLUME);
        assertClose("mass", flour.mass_kg(), 900, 1e-12);
        Filled cement = BagFill.fill(1.8, 1200, 1000);
        assertThat(cement.limit()).isEqualTo(Limit.SAFE_WORKING_LOAD);
        assertThat(cement.mass_kg()).isEqualTo(1000);
        assertClose("volume", cement.volume_m3(), 1000 / 1200.0, 1e-12);
    }

    @Test
    void dust_up_to_its_probe_height_weighs_the_safe_working_load() {
        double height = BagFill.probeHeight_m(1000, 800, 0.8);
        assertClose("mass", height * 0.8 * 800, 1000, 1e-12);
    }

    /** By hand: 1 L of 144 kg/m³, of which 70 % fill, is 0.1008 kg; at 0.36 kg/h that lasts 1008 s. */
    @Test
    void a_container_of_a_litre_has_its_changes_too() {
        double taken_kg = BagFill.notInflated_m3(0.001, 0.7) * 144;
        assertClose("interval", BagFill.changeInterval_s(taken_kg, 1e-4), 1008, 1e-12);
        assertClose("bags", BagFill.moreForFillingShort(1.44, 0.144, taken_kg), 1.44 / 0.1008 - 10, 1e-12);
        assertThatThrownBy(() -> BagFill.changeInterval_s(0, 1e-4)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void settling_keeps_the_mass_and_leaves_head_room() {
        double settled = BagFill.settled_m3(1.5, 500, 650);
        assertClose("mass", settled * 650, 1.5 * 500, 1e-12);
        assertThatThrownBy(() -> BagFill.settled_m3(1.5, 650, 500)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void a_bag_that_is_not_inflated_is_changed_more_often() {
        double inflated = BagFill.fill(1.8, 500, 1000).mass_kg();
        double folded =
                BagFill.fill(BagFill.notInflated_m3(1.8, 0.75), 500, 1000).mass_kg();
        double week_s = 40 * 3600;
        assertClose(
                "changes",
                BagFill.changesPerWeek(folded, 0.05, week_s),
                BagFill.changesPerWeek(inflated, 0.05, week_s) / 0.75,
                1e-12);
    }

    @Test
    void a_count_of_containers_that_comes_out_even_is_not_rounded_up() {
        assertThat(BagFill.containers(3 * 0.7, 0.7, 1)).isEqualTo(3);
        assertThat(BagFill.containers(2.11, 0.7, 1)).isEqualTo(4);
    }

    @Test
    void a_valve_under_vacuum_may_pull_more_air_from_the_bag_than_dust_pushes_out() {
        double displaced = BagAir.displaced_m3PerS(0.05, 500);
        double pockets = BagAir.drawnByPockets_m3PerS(0.0113, 1 / 3.0);
        assertThat(BagAir.throughSock_m3PerS(displaced, pockets, 0.01)).isNegative();
        assertThat(BagAir.throughSock_m3PerS(displaced, 0, 0)).isPositive();
    }

    /** Common practice, no source: about 4 psi when inflated, never above 9 psi. */
    @Test
    void a_neck_seal_keeps_to_practice_up_to_nine_psi() {
        assertThat(BagAir.sealWithinPractice(BagAir.USUAL_SEAL_Pa)).isTrue();
        assertThat(BagAir.sealWithinPractice(9.01 * 6894.757)).isFalse();
    }

    @Test
    void arms_hold_the_corners_open_and_lift_nothing() {
        assertThat(BagSupport.check(Base.ON_FLOOR_OR_PALLET, 900, 1000, 4, 40))
                .isEqualTo(Verdict.ARMS_HOLD_THE_CORNERS_OPEN);
        Verdict hanging = BagSupport.check(Base.HANGING_FROM_THE_ARMS, 900, 1000, 4, 5000);
        assertThat(hanging).isEqualTo(Verdict.ARMS_WOULD_LIFT_THE_BAG);
        assertThat(hanging.holds()).isFalse();
        assertThat(hanging.words()).contains("no lifting gear");
        assertThat(BagSupport.check(Base.ON_FLOOR_OR_PALLET, 1001, 1000, 4, 40))
                .isEqualTo(Verdict.OVER_SAFE_WORKING_LOAD);
        assertThat(BagSupport.check(Base.ON_FLOOR_OR_PALLET, 900, 1000, 41, 40)).isEqualTo(Verdict.EMPTY_BAG_TOO_HEAVY);
    }

    @Test
    void a_bag_without_bulk_density_or_load_is_refused() {
        assertThatThrownBy(() -> BagFill.fill(1, 0, 1000)).hasMessageContaining("ρ_B");
        assertThatThrownBy(() -> BagFill.fill(1, 500, 0)).hasMessageContaining("SWL");
    }
}
