package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Range;

/** What a vent throws out, and what both methods ask alike. */
public final class Vents {
    /** Effects by the European text. */
    public static final Source EN_EFFECTS = Source.fromMemory("EN 14491 / VDI 3673");
    /** Fireball by the American text. */
    public static final Source NFPA_FIREBALL = Source.fromMemory("NFPA 68, 8.9");

    private static final double GREATEST_FLAME_m = 30;

    private Vents() {}

    static void checkReducedAboveOpening(String equation, Explosion e, double leastOpening_bar, double most_bar) {
        double opens_bar = Math.max(leastOpening_bar, e.opens_bar());
        new Range(equation + ", above Pstat", "Pred", "bar", Math.nextUp(opens_bar * (1 + 1e-9)), most_bar)
                .check(e.reduced_bar());
    }

    /**
     * Recoil on the vessel while it vents [N] (equation HAZ-3), F = 1.19 A pred.
     *
     * @example recoil_N(0.5, 0.4e5) = 23800
     */
    public static double recoil_N(double area_m2, double reduced_Pa) {
        return 1.19 * area_m2 * reduced_Pa;
    }

    /**
     * Reach of the fireball [m] (equation HAZ-4), k (V/n)^(1/3), k 8 for dusts, 10 for metal dusts.
     *
     * @param vents number of vents that share the volume
     * @example fireball_m(8, 1, 8) = 16
     */
    public static double fireball_m(double volume_m3, int vents, double k) {
        return k * Math.cbrt(volume_m3 / vents);
    }

    /**
     * Length of a level flame [m] (equation HAZ-5), 10 V^(1/3), at most 30 m.
     *
     * @example flame_m(8) = 20
     */
    public static double flame_m(double volume_m3) {
        return Math.min(GREATEST_FLAME_m, 10 * Math.cbrt(volume_m3));
    }

    /**
     * Greatest pressure outside [Pa], at a quarter of the flame's length (equation HAZ-6), 0.2 pred A^0.1 V^0.18.
     *
     * @example outside_Pa(0.4e5, 0.5, 8) = 10853
     */
    public static double outside_Pa(double reduced_Pa, double area_m2, double volume_m3) {
        return 0.2 * reduced_Pa * Math.pow(area_m2, 0.1) * Math.pow(volume_m3, 0.18);
    }

    /**
     * Pressure outside beyond a quarter of the flame's length [Pa] (equation HAZ-6): falls with the distance to the power 1.5.
     *
     * @example outsideAt_Pa(0.4e5, 0.5, 8, 10) = 3837.1
     */
    public static double outsideAt_Pa(double reduced_Pa, double area_m2, double volume_m3, double distance_m) {
        double near_m = 0.25 * flame_m(volume_m3);
        double peak_Pa = outside_Pa(reduced_Pa, area_m2, volume_m3);
        return distance_m <= near_m ? peak_Pa : peak_Pa * Math.pow(near_m / distance_m, 1.5);
    }
}
