package dustwright.engine.electrical;

import dustwright.engine.quantity.Range;

/** Heat of a closed panel: screening for fan, filter or cooler. Inside temperature is even here; hot spots are not. */
public final class PanelHeat {
    /** Heat passed by painted sheet steel in still air: common practice, no source [W/(m² K)]. */
    public static final double PAINTED_STEEL_WPerM2K = 5.5;

    private static final double SPECIFIC_HEAT_JPerKgK = 1005;

    /** As far as parts that bear 70 °C stand above air of −40 °C; beyond it k of still air is no guide. */
    private static final double GREATEST_RISE_K = 110;

    private static final Range POWER = new Range("panel heat", "P", "W", 0, 1e6);
    private static final Range EFFICIENCY = new Range("panel heat", "η", "-", 0.5, 1);
    private static final Range AREA = new Range("panel heat", "A", "m²", 0.01, 100);
    private static final Range DIFFERENCE = new Range("panel heat", "ΔT", "K", -60, GREATEST_RISE_K);
    private static final Range RISE = new Range("panel heat", "ΔT", "K", 0.1, GREATEST_RISE_K);
    private static final Range SURFACE = new Range("panel heat", "k", "W/(m² K)", 1, 20);
    private static final Range DENSITY = new Range("panel heat", "ρ", "kg/m³", 0.3, 1.8);

    private static final Range FLOW = new Range("panel heat", "Q", "m³/s", 0, 10);

    private PanelHeat() {}

    /**
     * Heat a variable-frequency drive leaves in the panel [W] (equation ELE-19).
     *
     * <pre>
     * P_loss = P_out (1/η − 1)
     * </pre>
     *
     * @param output_W P_out to the motor [W]
     * @param efficiency η of the drive [-]; 0.95 to 0.98 is usual (common practice, no source)
     * @source energy balance
     * @example driveLoss_W(11000, 0.97) = 340.2
     */
    public static double driveLoss_W(double output_W, double efficiency) {
        return POWER.check(output_W) * (1 / EFFICIENCY.check(efficiency) - 1);
    }

    /**
     * Heat a closed panel passes through its walls [W] (equation ELE-20).
     *
     * <pre>
     * P = k A ΔT
     * </pre>
     *
     * @param surface_WPerM2K k of the wall [W/(m² K)]; 5.5 for painted steel (common practice, no source)
     * @param area_m2 A of the walls that stand free [m²]
     * @param rise_K ΔT inside over outside [K], −60 to 110; below zero heat comes in
     * @source heat transfer through a wall
     * @example throughWalls_W(5.5, 3, 10) = 165
     */
    public static double throughWalls_W(double surface_WPerM2K, double area_m2, double rise_K) {
        return SURFACE.check(surface_WPerM2K) * AREA.check(area_m2) * DIFFERENCE.check(rise_K);
    }

    /**
     * How much warmer than the air around it a closed panel gets that only its walls cool [K] (equation ELE-45).
     *
     * <pre>
     * ΔT = P / (k A)
     * </pre>
     *
     * @param heat_W P made inside [W]
     * @param surface_WPerM2K k of the wall [W/(m² K)]
     * @param area_m2 A of the walls that stand free [m²]
     * @return ΔT [K], no more than 110
     * @throws dustwright.engine.quantity.OutOfRangeException where it comes to more: k is not that of still air there
     * @source heat transfer through a wall
     * @example rise_K(165, 5.5, 3) = 10
     */
    public static double rise_K(double heat_W, double surface_WPerM2K, double area_m2) {
        return DIFFERENCE.check(POWER.check(heat_W) / (SURFACE.check(surface_WPerM2K) * AREA.check(area_m2)));
    }

    /**
     * Air that must pass a panel to carry the rest of its heat [m³/s] (equation ELE-21); zero where the walls pass it. Air through a
     * panel in a dusty room brings the dust in: a closed cooler is the alternative.
     *
     * <pre>
     * Q = max(0, P − P_walls) / (ρ cp ΔT)
     * </pre>
     *
     * @param heat_W P made inside [W]
     * @param walls_W P_walls, ELE-20 at the same ΔT [W]
     * @param rise_K ΔT [K], 0.1 to 110
     * @param density_kgPerM3 ρ of the site's air [kg/m³], 0.3 to 1.8
     * @source energy balance, cp 1005 J/(kg K)
     * @example coolingAir_m3PerS(505, 165, 10, 1.2) = 0.028192
     */
    public static double coolingAir_m3PerS(double heat_W, double walls_W, double rise_K, double density_kgPerM3) {
        return Math.max(0, POWER.check(heat_W) - POWER.check(walls_W))
                / (DENSITY.check(density_kgPerM3) * SPECIFIC_HEAT_JPerKgK * RISE.check(rise_K));
    }

    /**
     * Heat that air led through a panel carries off [W] (equation ELE-44); below zero it brings heat in.
     *
     * <pre>
     * P_air = ρ cp Q ΔT
     * </pre>
     *
     * @param flow_m3PerS Q [m³/s]
     * @param rise_K ΔT inside over ambient [K], −60 to 110
     * @param density_kgPerM3 ρ of the site's air [kg/m³], 0.3 to 1.8
     * @source energy balance, cp 1005 J/(kg K)
     * @example byAir_W(0.028192, 10, 1.2) = 340
     */
    public static double byAir_W(double flow_m3PerS, double rise_K, double density_kgPerM3) {
        return DENSITY.check(density_kgPerM3)
                * SPECIFIC_HEAT_JPerKgK
                * FLOW.check(flow_m3PerS)
                * DIFFERENCE.check(rise_K);
    }
}
