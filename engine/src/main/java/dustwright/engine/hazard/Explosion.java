package dustwright.engine.hazard;

/**
 * What an explosion vent is sized for.
 *
 * @param volume_m3 volume the flame may fill [m³]
 * @param kst_PaMPerS dust explosion constant [Pa m/s]
 * @param greatest_Pa greatest explosion pressure in a closed vessel, Pmax, over the barometer [Pa]
 * @param opens_Pa static pressure at which the vent opens, Pstat, over the barometer [Pa]
 * @param reduced_Pa greatest pressure in the vented vessel, Pred, over the barometer [Pa]
 * @param slenderness length over diameter of the vessel, L/D [-]
 */
public record Explosion(
        double volume_m3,
        double kst_PaMPerS,
        double greatest_Pa,
        double opens_Pa,
        double reduced_Pa,
        double slenderness) {
    /** Both methods are published in bar. */
    static final double BAR_Pa = 100_000;

    /** The same vessel and vent for another dust. */
    public Explosion of(double otherKst_PaMPerS, double otherGreatest_Pa) {
        return new Explosion(volume_m3, otherKst_PaMPerS, otherGreatest_Pa, opens_Pa, reduced_Pa, slenderness);
    }

    double kst_barMPerS() {
        return kst_PaMPerS / BAR_Pa;
    }

    double greatest_bar() {
        return greatest_Pa / BAR_Pa;
    }

    double opens_bar() {
        return opens_Pa / BAR_Pa;
    }

    double reduced_bar() {
        return reduced_Pa / BAR_Pa;
    }
}
