package dustwright.engine.bagging;

import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Units;

/**
 * How much a bulk bag or drum takes, which limit comes first, and how often it is changed. A level probe stops on volume at the loose
 * density; weighing stops on mass.
 */
public final class BagFill {
    /** Volume of 55 US gallons [m³]. */
    public static final double DRUM_55_GALLON_m3 = gallons_m3(55);

    private static final Range LENGTH = new Range("a container", "W, D, H", "m", 0.05, 10);
    private static final Range VOLUME = new Range("a container", "V", "m³", 1e-4, 1e4);
    private static final Range DENSITY = new Range("a container's fill", "ρ_B", "kg/m³", 5, 20_000);
    private static final Range LOAD = new Range("a container's safe working load", "SWL", "kg", 1, 50_000);
    private static final Range TAKEN = new Range("the dust in a container", "m", "kg", 1e-4, 1e7);
    private static final Range RATE = new Range("the filling of a container", "ṁ", "kg/s", 1e-9, 1e3);
    private static final Range DUST = new Range("the containers of a time", "M", "kg", 0, 1e9);
    private static final Range SHARE = new Range("a container's fill", "share", "-", 0.01, 1);

    private BagFill() {}

    /** What ends the filling. */
    public enum Limit {
        /** The container is full to its probe. */
        VOLUME,
        /** The safe working load is reached: the probe must stand lower, or a scale must stop the valve. */
        SAFE_WORKING_LOAD
    }

    /**
     * A filled container.
     *
     * @param mass_kg dust in it [kg]
     * @param volume_m3 volume the dust takes while loose [m³]
     * @param limit which limit came first
     */
    public record Filled(double mass_kg, double volume_m3, Limit limit) {}

    /**
     * Volume of a bag by its flat measures [m³] (equation BAG-1). A filled bag without baffles bulges towards a cylinder; makers' charts
     * round down.
     *
     * <pre>
     * V = W D H
     * </pre>
     *
     * @param width_m W [m]
     * @param depth_m D [m]
     * @param height_m H [m]
     * @source geometry
     * @example bagVolume_m3(0.889, 0.889, 1.27) = 1.00371
     */
    public static double bagVolume_m3(double width_m, double depth_m, double height_m) {
        return LENGTH.check(width_m) * LENGTH.check(depth_m) * LENGTH.check(height_m);
    }

    /**
     * Volume of a round drum to its brim [m³] (equation BAG-2).
     *
     * <pre>
     * V = π d² h/4
     * </pre>
     *
     * @param inside_m d [m]
     * @param height_m h inside [m]
     * @source geometry
     * @example drumVolume_m3(0.5715, 0.8509) = 0.218276
     */
    public static double drumVolume_m3(double inside_m, double height_m) {
        double diameter = LENGTH.check(inside_m);
        return Math.PI * diameter * diameter / 4 * LENGTH.check(height_m);
    }

    /**
     * US gallons in cubic metres [m³] (equation BAG-3): 231 cubic inches each. An imperial gallon is a fifth larger.
     *
     * @source definition
     * @example gallons_m3(55) = 0.208198
     */
    public static double gallons_m3(double usGallons) {
        return new Range("US gallons", "V", "gal", 0, 1e6).check(usGallons) * Units.US_GALLON_m3;
    }

    /**
     * What a container takes (equation BAG-4): never more than its safe working load.
     *
     * <pre>
     * m = min(V ρ_B, SWL)
     * </pre>
     *
     * @param volume_m3 V up to the probe [m³]
     * @param bulkDensity_kgPerM3 ρ_B as filled, loose [kg/m³]
     * @param safeWorkingLoad_kg SWL, marked on the bag [kg]
     * @source ISO 21898: the marked load governs
     * @example fill(1.0038, 1505.7, 997.9).mass_kg() = 997.9
     */
    public static Filled fill(double volume_m3, double bulkDensity_kgPerM3, double safeWorkingLoad_kg) {
        double byVolume_kg = VOLUME.check(volume_m3) * DENSITY.check(bulkDensity_kgPerM3);
        double byLoad_kg = LOAD.check(safeWorkingLoad_kg);
        return byVolume_kg <= byLoad_kg
                ? new Filled(byVolume_kg, volume_m3, Limit.VOLUME)
                : new Filled(byLoad_kg, byLoad_kg / bulkDensity_kgPerM3, Limit.SAFE_WORKING_LOAD);
    }

    /**
     * Height of the level probe over the bag's floor at which the loose dust weighs the safe working load [m] (equation BAG-5).
     *
     * <pre>
     * h = SWL / (ρ_loose A)
     * </pre>
     *
     * @param safeWorkingLoad_kg SWL [kg]
     * @param loose_kgPerM3 ρ_loose [kg/m³]
     * @param section_m2 A of the bag [m²]
     * @source mass balance
     * @example probeHeight_m(1000, 961, 0.79) = 1.31719
     */
    public static double probeHeight_m(double safeWorkingLoad_kg, double loose_kgPerM3, double section_m2) {
        return LOAD.check(safeWorkingLoad_kg)
                / (DENSITY.check(loose_kgPerM3) * new Range("a container", "A", "m²", 0.01, 10).check(section_m2));
    }

    /**
     * Volume of the dust once it has settled [m³] (equation BAG-6): what is stored and shipped, and the head left over it.
     *
     * <pre>
     * V_settled = V_loose ρ_loose / ρ_settled
     * </pre>
     *
     * @param loose_m3 V_loose [m³]
     * @param loose_kgPerM3 ρ_loose [kg/m³]
     * @param settled_kgPerM3 ρ_settled [kg/m³], not below the loose one
     * @source mass balance; aerated cement settles by 1.25 to 1.57 (CEMA 550)
     * @example settled_m3(1, 961, 1506) = 0.63811
     */
    public static double settled_m3(double loose_m3, double loose_kgPerM3, double settled_kgPerM3) {
        double ratio = new Range("settling", "ρ_settled/ρ_loose", "-", 1, 10)
                .check(DENSITY.check(settled_kgPerM3) / DENSITY.check(loose_kgPerM3));
        return VOLUME.check(loose_m3) / ratio;
    }

    /**
     * Volume a bag takes that was not inflated before filling [m³] (equation BAG-7): folds stay folded and it fills short.
     *
     * <pre>
     * V_short = share V
     * </pre>
     *
     * @param volume_m3 V of the inflated bag [m³]
     * @param share of it that fills [-], stated by the plant, 0.01 to 1
     * @source our reading: a stated share, no published figure
     * @example notInflated_m3(1, 0.8) = 0.8
     */
    public static double notInflated_m3(double volume_m3, double share) {
        return VOLUME.check(volume_m3) * SHARE.check(share);
    }

    /**
     * Time from change to change while dust is collected [s] (equation BAG-8).
     *
     * <pre>
     * t = m / ṁ
     * </pre>
     *
     * @param mass_kg m a container takes, BAG-4 [kg]
     * @param dust_kgPerS ṁ [kg/s], above 0
     * @source mass balance
     * @example changeInterval_s(500, 0.0833333) = 6000
     */
    public static double changeInterval_s(double mass_kg, double dust_kgPerS) {
        return TAKEN.check(mass_kg) / RATE.check(dust_kgPerS);
    }

    /**
     * Changes a week [1/week], not rounded (equation BAG-9).
     *
     * <pre>
     * N = ṁ t_week / m
     * </pre>
     *
     * @param mass_kg m a container takes [kg]
     * @param dust_kgPerS ṁ while collecting [kg/s]
     * @param collecting_s t_week, collecting time in a week [s], up to 604 800
     * @source mass balance
     * @example changesPerWeek(500, 0.0833333, 144000) = 24
     */
    public static double changesPerWeek(double mass_kg, double dust_kgPerS, double collecting_s) {
        new Range("a week", "t", "s", 0, 604_800).check(collecting_s);
        return collecting_s / changeInterval_s(mass_kg, dust_kgPerS);
    }

    /**
     * Bags more for the same dust because each fills short [-], not rounded (equation BAG-20).
     *
     * <pre>
     * ΔN = M (1/m_short − 1/m)
     * </pre>
     *
     * @param dust_kg M to be filled [kg]
     * @param full_kg m an inflated bag takes, BAG-4 [kg]
     * @param short_kg m_short one takes that is not inflated, BAG-7 and BAG-4 [kg], not above m
     * @source mass balance
     * @example moreForFillingShort(1000, 500, 400) = 0.5
     */
    public static double moreForFillingShort(double dust_kg, double full_kg, double short_kg) {
        new Range("bags that fill short", "m_short/m", "-", 0, 1).check(TAKEN.check(short_kg) / TAKEN.check(full_kg));
        return DUST.check(dust_kg) * (1 / short_kg - 1 / full_kg);
    }

    /**
     * Containers needed for a volume of dust, whole ones (equation BAG-10).
     *
     * <pre>
     * N = ⌈ V_dust / (V fill) ⌉
     * </pre>
     *
     * @param dust_m3 V_dust, bulk volume [m³]
     * @param container_m3 V of one [m³]
     * @param fill share of it that is filled [-]
     * @source mass balance
     * @example containers(600, 0.2082, 0.9) = 3203
     */
    public static long containers(double dust_m3, double container_m3, double fill) {
        new Range("a number of containers", "V_dust", "m³", 0, 1e9).check(dust_m3);
        return (long) Math.ceil(dust_m3 / (VOLUME.check(container_m3) * SHARE.check(fill)) * (1 - 1e-12));
    }

    /**
     * Drums that one bag replaces [-], not rounded (equation BAG-11).
     *
     * <pre>
     * N = V_bag / V_drum
     * </pre>
     *
     * @param bag_m3 V_bag [m³], as far as it fills
     * @param drum_m3 V_drum [m³], filled alike
     * @source geometry
     * @example drumsPerBag(1.00384, 0.208198) = 4.8216
     */
    public static double drumsPerBag(double bag_m3, double drum_m3) {
        return VOLUME.check(bag_m3) / VOLUME.check(drum_m3);
    }
}
