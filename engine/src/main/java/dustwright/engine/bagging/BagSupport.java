package dustwright.engine.bagging;

import dustwright.engine.quantity.Range;

/**
 * What carries a bulk bag. The arms of a filling stand hold the four corners open; they do not lift the bag: its base rests on floor or
 * pallet while it fills. Lifting is a matter for a frame or truck rated for it, by all four loops, vertically.
 */
public final class BagSupport {
    private static final Range MASS = new Range("a bag's load", "m", "kg", 0, 50_000);
    private static final Range LOAD = new Range("a bag's safe working load", "SWL", "kg", 1, 50_000);

    private BagSupport() {}

    /** Where the base of the bag is while it fills. */
    public enum Base {
        ON_FLOOR_OR_PALLET("on floor or pallet"),
        HANGING_FROM_THE_ARMS("hanging from the arms");

        private final String words;

        Base(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** What a check of the support says. */
    public enum Verdict {
        ARMS_HOLD_THE_CORNERS_OPEN(
                "the arms hold the corners open and carry the empty bag only; the base carries the dust", true),
        ARMS_WOULD_LIFT_THE_BAG(
                "the arms would carry the dust: they hold corners open and are no lifting gear; set the base on floor or pallet",
                false),
        EMPTY_BAG_TOO_HEAVY("the empty bag and liner weigh more than the arms are stated to hold", false),
        OVER_SAFE_WORKING_LOAD("the filled bag weighs more than its safe working load", false);

        private final String words;
        private final boolean holds;

        Verdict(String words, boolean holds) {
            this.words = words;
            this.holds = holds;
        }

        /** The verdict in plain words. */
        public String words() {
            return words;
        }

        /** Whether the rule is kept. */
        public boolean holds() {
            return holds;
        }
    }

    /**
     * Checks what the arms and the bag carry (equation BAG-17).
     *
     * <pre>
     * m_dust ≤ SWL        m_empty ≤ arms        base on floor or pallet
     * </pre>
     *
     * @param base where the base of the bag is
     * @param dust_kg dust in the filled bag [kg]
     * @param safeWorkingLoad_kg SWL of the bag [kg]
     * @param empty_kg empty bag with liner [kg]
     * @param arms_kg what all four arms together are stated to hold [kg]
     * @source common practice, no source; the marked load of ISO 21898
     */
    public static Verdict check(Base base, double dust_kg, double safeWorkingLoad_kg, double empty_kg, double arms_kg) {
        if (MASS.check(dust_kg) > LOAD.check(safeWorkingLoad_kg)) {
            return Verdict.OVER_SAFE_WORKING_LOAD;
        }
        if (base == Base.HANGING_FROM_THE_ARMS) {
            return Verdict.ARMS_WOULD_LIFT_THE_BAG;
        }
        return MASS.check(empty_kg) > MASS.check(arms_kg)
                ? Verdict.EMPTY_BAG_TOO_HEAVY
                : Verdict.ARMS_HOLD_THE_CORNERS_OPEN;
    }

    /** How a bag may be used, and the strength it must show for that. */
    public enum Use {
        SINGLE_TRIP("single trip", 5),
        STANDARD_REUSABLE("standard reusable", 6),
        HEAVY_REUSABLE("heavy-duty reusable", 8);

        private final String words;
        private final int safetyFactor;

        Use(String words, int safetyFactor) {
            this.words = words;
            this.safetyFactor = safetyFactor;
        }

        /** The use in plain words. */
        public String words() {
            return words;
        }

        /** Breaking load over safe working load [-]. */
        public int safetyFactor() {
            return safetyFactor;
        }
    }

    /**
     * Load a bag must bear before it breaks [kg] (equation BAG-18).
     *
     * <pre>
     * m_break = factor SWL        5 single trip, 6 standard reusable and UN, 8 heavy-duty reusable
     * </pre>
     *
     * @param safeWorkingLoad_kg SWL [kg]
     * @source ISO 21898 and trade association classes, as told in several public articles
     * @example breakingLoad_kg(SINGLE_TRIP, 1000) = 5000
     */
    public static double breakingLoad_kg(Use use, double safeWorkingLoad_kg) {
        return use.safetyFactor() * LOAD.check(safeWorkingLoad_kg);
    }
}
