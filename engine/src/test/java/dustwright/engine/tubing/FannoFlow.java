package dustwright.engine.tubing;

/**
 * Adiabatic flow with friction, the opposite idealisation to an isothermal leg: a referee for tests. Each function takes the Mach
 * number M; γ = 1.4.
 */
final class FannoFlow {
    private static final double GAMMA = 1.4;

    private FannoFlow() {}

    /** f L/D from here to the choke. */
    static double lengthToChoke(double mach) {
        double square = mach * mach;
        double stretch = (GAMMA + 1) * square / (2 + (GAMMA - 1) * square);
        return (1 - square) / (GAMMA * square) + (GAMMA + 1) / (2 * GAMMA) * Math.log(stretch);
    }

    /** Static pressure over that at the choke. */
    static double pressureOverChoke(double mach) {
        return Math.sqrt((GAMMA + 1) / (2 + (GAMMA - 1) * mach * mach)) / mach;
    }

    /** Mach number, up to 1, from which a length f L/D is left to the choke. */
    static double machAt(double lengthToChoke) {
        double low = 1e-4;
        double high = 1;
        for (int n = 0; n < 100; n++) {
            double middle = (low + high) / 2;
            if (lengthToChoke(middle) > lengthToChoke) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Mass flow [kg/s] from a static inlet state to an outlet pressure that does not choke. */
    static double massFlow_kgPerS(double p1_Pa, double p2_Pa, double resistance, double area_m2, double rt1_JPerKg) {
        double low = 1e-3;
        double high = machAt(resistance);
        for (int n = 0; n < 100; n++) {
            double inlet = (low + high) / 2;
            double outlet = machAt(lengthToChoke(inlet) - resistance);
            double reached_Pa = p1_Pa * pressureOverChoke(outlet) / pressureOverChoke(inlet);
            if (reached_Pa > p2_Pa) {
                low = inlet;
            } else {
                high = inlet;
            }
        }
        return p1_Pa * area_m2 * low * Math.sqrt(GAMMA / rt1_JPerKg);
    }
}
