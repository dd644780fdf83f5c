package dustwright.engine.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.hazard.BagType.Surroundings;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between two dusts of which one is worse, whatever the limits are. */
class HazardLawsTest {
    private static final int CASES = 4000;

    /** From 0.01 mJ to 10 J, even over its powers of ten. */
    private static double energy_J(SplittableRandom random) {
        return 1e-5 * Math.pow(10, 6 * random.nextDouble());
    }

    @Test
    void a_dust_that_ignites_more_easily_asks_for_every_step_of_the_other_and_permits_no_other_bag() {
        SplittableRandom random = new SplittableRandom(20261125);
        for (int n = 0; n < CASES; n++) {
            double one = energy_J(random);
            double easier = one * random.nextDouble();
            assertThat(MieStep.of(easier)).as("%s and %s J", easier, one).containsAll(MieStep.of(one));
            for (Surroundings around : Surroundings.values()) {
                assertThat(BagType.permitted(one, around))
                        .as("%s and %s J, %s", easier, one, around)
                        .containsAll(BagType.permitted(easier, around));
            }
        }
    }

    @Test
    void gas_about_a_bag_never_permits_a_type_that_dust_alone_does_not() {
        SplittableRandom random = new SplittableRandom(7);
        for (int n = 0; n < CASES; n++) {
            double mie_J = energy_J(random);
            assertThat(BagType.permitted(mie_J, Surroundings.NON_FLAMMABLE))
                    .containsAll(BagType.permitted(mie_J, Surroundings.DUST_ZONE));
            assertThat(BagType.permitted(mie_J, Surroundings.DUST_ZONE))
                    .containsAll(BagType.permitted(mie_J, Surroundings.GAS_OR_SENSITIVE_DUST));
            assertThat(BagType.permitted(mie_J, Surroundings.GAS_OR_SENSITIVE_DUST))
                    .containsAll(BagType.permitted(mie_J, Surroundings.GAS_IIC));
        }
    }

    @Test
    void a_dust_that_ignites_cooler_never_permits_a_hotter_surface_nor_a_lesser_code() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < CASES; n++) {
            double one_K = 373 + 500 * random.nextDouble();
            double cooler_K = 373 + (one_K - 373) * random.nextDouble();
            assertThat(SurfaceLimit.byCloud_K(cooler_K)).isLessThanOrEqualTo(SurfaceLimit.byCloud_K(one_K));
            assertThat(SurfaceLimit.byLayer_K(cooler_K)).isLessThanOrEqualTo(SurfaceLimit.byLayer_K(one_K));
            assertThat(SurfaceLimit.organic_K(cooler_K)).isLessThanOrEqualTo(SurfaceLimit.organic_K(one_K));
            assertThat(SurfaceLimit.fireCode_K(cooler_K)).isLessThanOrEqualTo(one_K);
        }
    }

    @Test
    void lighter_dust_may_lie_deeper_and_more_air_makes_a_thinner_cloud() {
        SplittableRandom random = new SplittableRandom(13);
        for (int n = 0; n < CASES; n++) {
            double bulk = 50 + 2000 * random.nextDouble();
            double more = 1 + random.nextDouble();
            assertThat(CloudLaws.layerDepth_m(bulk * more)).isLessThan(CloudLaws.layerDepth_m(bulk));
            double mec = 0.01 + random.nextDouble();
            double air = CloudLaws.leastAir_m3PerS(0.01, mec, CloudLaws.DESIGN_SHARE);
            assertThat(CloudLaws.concentration_kgPerM3(0.01, air * more))
                    .isLessThanOrEqualTo(CloudLaws.DESIGN_SHARE * mec);
        }
    }
}
