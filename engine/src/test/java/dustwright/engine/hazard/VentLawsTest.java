package dustwright.engine.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.quantity.OutOfRangeException;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What must hold between any two vents, whatever the constants are. */
class VentLawsTest {
    private static final int CASES = 4000;

    private record Method(String name, ToDoubleFunction<Explosion> area) {}

    private static final Method[] METHODS = {
        new Method("EN 14491", VentEn14491::area_m2), new Method("NFPA 68", VentNfpa68::area_m2)
    };

    @Test
    void more_violent_dust_a_larger_or_weaker_vessel_and_a_later_vent_never_need_less_area() {
        SplittableRandom random = new SplittableRandom(20261126);
        int compared = 0;
        for (int n = 0; n < CASES; n++) {
            Explosion e = drawn(random);
            double more = 1 + 0.5 * random.nextDouble();
            Explosion[] worse = {
                new Explosion(
                        e.volume_m3(),
                        e.kst_PaMPerS() * more,
                        e.greatest_Pa(),
                        e.opens_Pa(),
                        e.reduced_Pa(),
                        e.slenderness()),
                new Explosion(
                        e.volume_m3(),
                        e.kst_PaMPerS(),
                        e.greatest_Pa() * more,
                        e.opens_Pa(),
                        e.reduced_Pa(),
                        e.slenderness()),
                new Explosion(
                        e.volume_m3() * more,
                        e.kst_PaMPerS(),
                        e.greatest_Pa(),
                        e.opens_Pa(),
                        e.reduced_Pa(),
                        e.slenderness()),
                new Explosion(
                        e.volume_m3(),
                        e.kst_PaMPerS(),
                        e.greatest_Pa(),
                        e.opens_Pa() * more,
                        e.reduced_Pa(),
                        e.slenderness()),
                new Explosion(
                        e.volume_m3(),
                        e.kst_PaMPerS(),
                        e.greatest_Pa(),
                        e.opens_Pa(),
                        e.reduced_Pa() / more,
                        e.slenderness()),
                new Explosion(
                        e.volume_m3(),
                        e.kst_PaMPerS(),
                        e.greatest_Pa(),
                        e.opens_Pa(),
                        e.reduced_Pa(),
                        e.slenderness() * more)
            };
            for (Method method : METHODS) {
                OptionalDouble area = asked(method, e);
                for (Explosion other : worse) {
                    OptionalDouble larger = asked(method, other);
                    if (area.isPresent() && larger.isPresent()) {
                        compared++;
                        assertThat(larger.getAsDouble())
                                .as("%s: %s against %s", method.name(), other, e)
                                .isGreaterThanOrEqualTo(area.getAsDouble() * (1 - 1e-12));
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(CASES * 4);
    }

    @Test
    void a_duct_never_makes_a_vent_smaller_and_its_answer_satisfies_its_equation() {
        SplittableRandom random = new SplittableRandom(20261127);
        int none = 0;
        for (int n = 0; n < CASES; n++) {
            Explosion e = drawn(random);
            OptionalDouble bare = asked(METHODS[1], e);
            if (bare.isEmpty()) {
                continue;
            }
            double duct_m = 0.2 + 5 * random.nextDouble();
            double k = 1.5 + random.nextDouble();
            OptionalDouble ducted = VentNfpa68.withDuct_m2(e, bare.getAsDouble(), duct_m, k);
            if (ducted.isEmpty()) {
                none++;
                assertThat(VentNfpa68.withDuct_m2(e, bare.getAsDouble(), duct_m * 1.2, k))
                        .isEmpty();
                continue;
            }
            double a = ducted.getAsDouble();
            double e1 = a * duct_m / e.volume_m3();
            double e2 = 1e4
                    * a
                    / ((1 + 1.54 * Math.pow(e.opens_Pa() / 1e5, 4.0 / 3))
                            * e.kst_PaMPerS()
                            / 1e5
                            * Math.pow(e.volume_m3(), 0.75));
            double right = bare.getAsDouble() * (1 + 1.18 * Math.pow(e1, 0.8) * Math.pow(e2, 0.4)) * Math.sqrt(k / 1.5);
            assertThat(a).isGreaterThanOrEqualTo(bare.getAsDouble());
            assertThat(Math.abs(a - right)).isLessThan(1e-9 * a);
        }
        assertThat(none).as("ducts no area is enough for").isPositive();
    }

    private static OptionalDouble asked(Method method, Explosion e) {
        try {
            return OptionalDouble.of(method.area().applyAsDouble(e));
        } catch (OutOfRangeException outside) {
            return OptionalDouble.empty();
        }
    }

    private static Explosion drawn(SplittableRandom random) {
        return new Explosion(
                0.1 * Math.pow(1e4, random.nextDouble()),
                (10 + 500 * random.nextDouble()) * 1e5,
                (5 + 5 * random.nextDouble()) * 1e5,
                (0.1 + 0.2 * random.nextDouble()) * 1e5,
                (0.2 + 1.6 * random.nextDouble()) * 1e5,
                1 + 4 * random.nextDouble());
    }
}
