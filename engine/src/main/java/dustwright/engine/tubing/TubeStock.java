package dustwright.engine.tubing;

import dustwright.engine.quantity.Range;

/** Geometry of thin-wall tube as it is bought: called by its outside diameter, in lengths that couplings join. */
public final class TubeStock {
    private static final Range DIAMETER = new Range("thin-wall tube", "D", "m", 0.01, 1);
    private static final Range DENSITY = new Range("thin-wall tube", "ρ", "kg/m³", 500, 20_000);
    private static final Range RADIUS = new Range("a bend", "r", "m", 0.01, 10);
    private static final Range ANGLE = new Range("a bend", "α", "rad", 0, Math.PI);
    private static final Range LENGTH = new Range("a run of tube", "L", "m", 1e-3, 1e5);

    private TubeStock() {}

    /**
     * Bore of tube [m] (equation TUB-31).
     *
     * <pre>
     * d = D − 2 t
     * </pre>
     *
     * @param outside_m D [m]
     * @param wall_m t [m], below D/2
     * @source geometry
     * @example bore_m(0.1016, 0.001651) = 0.098298
     */
    public static double bore_m(double outside_m, double wall_m) {
        double outside = DIAMETER.check(outside_m);
        return outside - 2 * new Range("thin-wall tube", "t", "m", 0, outside / 2.01).check(wall_m);
    }

    /**
     * Mass of tube per length [kg/m] (equation TUB-32).
     *
     * <pre>
     * m' = π (D − t) t ρ
     * </pre>
     *
     * @param outside_m D [m]
     * @param wall_m t [m]
     * @param density_kgPerM3 ρ [kg/m³]; steel 7850
     * @source geometry
     * @example mass_kgPerM(0.1016, 0.001651, 7850) = 4.06954
     */
    public static double mass_kgPerM(double outside_m, double wall_m, double density_kgPerM3) {
        return Math.PI * (outside_m + bore_m(outside_m, wall_m)) / 2 * wall_m * DENSITY.check(density_kgPerM3);
    }

    /**
     * Tube in a bend along its centre line [m] (equation TUB-33).
     *
     * <pre>
     * L = r α
     * </pre>
     *
     * @param radius_m r of the centre line [m]
     * @param angle_rad α [rad]
     * @source geometry
     * @example bendLength_m(0.6096, 1.5707963) = 0.957557
     */
    public static double bendLength_m(double radius_m, double angle_rad) {
        return RADIUS.check(radius_m) * ANGLE.check(angle_rad);
    }

    /**
     * Couplings that join a straight run of tubes [-] (equation TUB-34), without those at its ends.
     *
     * <pre>
     * N = ⌈L/L_stock⌉ − 1
     * </pre>
     *
     * @param run_m L [m]
     * @param stock_m L_stock of one tube [m]
     * @source counting
     * @example couplings(41.76, 6.096) = 6
     */
    public static int couplings(double run_m, double stock_m) {
        return (int) Math.ceil(LENGTH.check(run_m) / LENGTH.check(stock_m) * (1 - 1e-12)) - 1;
    }
}
