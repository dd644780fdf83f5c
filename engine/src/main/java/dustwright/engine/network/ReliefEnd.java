package dustwright.engine.network;

import dustwright.engine.producer.ReliefValve;
import dustwright.engine.tubing.Nozzle;
import org.jspecify.annotations.Nullable;

/**
 * A relief valve as the solver meets it: three smooth stretches, of which one is taken for the whole of a solve, so that no Newton step
 * ever meets the kink between two. {@link #move} says afterwards whether the stretch was right. The air it passes never falls with the
 * vacuum on any of them, hence a wrong stretch always points to its right neighbour.
 */
final class ReliefEnd {
    /** A vacuum counts as on the edge of two stretches within this share of itself [-]. */
    private static final double AT_EDGE = 1e-12;

    private enum Stretch {
        SHUT,
        OPENING,
        FULL
    }

    private final boolean present;
    private final double set_Pa;
    private final double accumulation_Pa;
    private final double rated_kgPerS;
    private final double ambient_Pa;
    private final double full_Pa;

    /** Air through 1 m² at {@link #full_Pa} [kg/s]. */
    private final double atFull_kgPerS;

    private Stretch stretch = Stretch.SHUT;

    ReliefEnd(@Nullable ReliefValve valve, double ambient_Pa) {
        this.ambient_Pa = ambient_Pa;
        present = valve != null;
        set_Pa = valve == null ? 0 : valve.set().pascals();
        accumulation_Pa = valve == null ? 1 : valve.accumulation().pascals();
        rated_kgPerS = valve == null ? 0 : valve.rated().mass().kgPerSecond();
        full_Pa = set_Pa + accumulation_Pa;
        atFull_kgPerS = Nozzle.massFlow_kgPerS(1, ambient_Pa, ambient_Pa - full_Pa, 1);
    }

    /** Starts shut. */
    void reset() {
        stretch = Stretch.SHUT;
    }

    /** Air it passes on the present stretch, run on beyond its ends along the tangent [kg/s]. */
    double flow_kgPerS(double vacuum_Pa) {
        return switch (stretch) {
            case SHUT -> 0;
            case OPENING -> rated_kgPerS * (vacuum_Pa - set_Pa) / accumulation_Pa;
            case FULL ->
                vacuum_Pa < full_Pa
                        ? rated_kgPerS - fullSlope_kgPerSPa(full_Pa) * (full_Pa - vacuum_Pa)
                        : rated_kgPerS
                                * (Nozzle.massFlow_kgPerS(1, ambient_Pa, ambient_Pa - vacuum_Pa, 1) / atFull_kgPerS);
        };
    }

    /** Further air per further vacuum on the present stretch [kg/(s Pa)]. */
    double slope_kgPerSPa(double vacuum_Pa) {
        return switch (stretch) {
            case SHUT -> 0;
            case OPENING -> rated_kgPerS / accumulation_Pa;
            case FULL -> fullSlope_kgPerSPa(Math.max(vacuum_Pa, full_Pa));
        };
    }

    private double fullSlope_kgPerSPa(double vacuum_Pa) {
        return rated_kgPerS * Nozzle.slope_kgPerSPa(1, ambient_Pa, ambient_Pa - vacuum_Pa, 1) / atFull_kgPerS;
    }

    /** Takes the neighbouring stretch when the solved vacuum lies beyond the present one; whether it did. */
    boolean move(double vacuum_Pa) {
        Stretch before = stretch;
        if (present) {
            stretch = switch (stretch) {
                case SHUT -> vacuum_Pa > set_Pa * (1 + AT_EDGE) ? Stretch.OPENING : Stretch.SHUT;
                case OPENING ->
                    vacuum_Pa < set_Pa * (1 - AT_EDGE)
                            ? Stretch.SHUT
                            : vacuum_Pa > full_Pa * (1 + AT_EDGE) ? Stretch.FULL : Stretch.OPENING;
                case FULL -> vacuum_Pa < full_Pa * (1 - AT_EDGE) ? Stretch.OPENING : Stretch.FULL;
            };
        }
        return stretch != before;
    }
}
