package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import java.util.EnumSet;
import java.util.Set;

/** Electrostatic type of a bulk bag. */
public enum BagType {
    A("no protection"),
    B("breakdown of the fabric below 6 kV; does not dissipate"),
    C("conductive, grounded while filling and emptying"),
    D("dissipates by corona, no ground; everything near it is grounded");

    /** Where the choice comes from. */
    public static final Source SOURCE = Source.published(
            "IEC 61340-4-4:2018, selection table by a trade reprint; gas groups IIA and IIB, 0.14 mJ or more, charging current up to 3 µA");

    /** Least energy in the scope of the table [J]. */
    public static final double LEAST_ENERGY_J = 0.14e-3;

    private static final double SENSITIVE_J = 3e-3;
    private static final double INSENSITIVE_J = 1.0;

    private final String words;

    BagType(String words) {
        this.words = words;
    }

    /** What the type does. */
    public String words() {
        return words;
    }

    /** What may be around the bag. */
    public enum Surroundings {
        NON_FLAMMABLE("no flammable atmosphere"),
        DUST_ZONE("dust zone 21 or 22, ignition energy above 3 mJ"),
        GAS_OR_SENSITIVE_DUST("gas zone 1 or 2 of group IIA or IIB, or dust of 3 mJ and less"),
        GAS_IIC("gas of group IIC, such as hydrogen");

        private final String words;

        Surroundings(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** Types permitted for a dust of this least ignition energy [J] in these surroundings; none outside the table's scope. */
    public static Set<BagType> permitted(double energy_J, Surroundings around) {
        if (around == Surroundings.GAS_IIC || energy_J < LEAST_ENERGY_J) {
            return EnumSet.noneOf(BagType.class);
        }
        if (around == Surroundings.GAS_OR_SENSITIVE_DUST || energy_J <= SENSITIVE_J) {
            return EnumSet.of(C, D);
        }
        return around == Surroundings.NON_FLAMMABLE && energy_J > INSENSITIVE_J
                ? EnumSet.allOf(BagType.class)
                : EnumSet.of(B, C, D);
    }

    /** Flammable gas or vapour about the bag, in gas zone 1 or 2. */
    public enum Vapour {
        NONE("none", Surroundings.DUST_ZONE),
        GROUP_IIA_OR_IIB("group IIA or IIB", Surroundings.GAS_OR_SENSITIVE_DUST),
        GROUP_IIC("group IIC", Surroundings.GAS_IIC);

        private final String words;
        private final Surroundings around;

        Vapour(String words, Surroundings around) {
            this.words = words;
            this.around = around;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }

        /** What is around a bag that takes combustible dust: the dust zone about its spout, and this vapour. */
        public Surroundings around() {
            return around;
        }
    }

    /** Liner types that leave this bag its rating; none for type A, which has none. */
    public Set<LinerType> liners() {
        return switch (this) {
            case A -> EnumSet.noneOf(LinerType.class);
            case B -> EnumSet.of(LinerType.L2, LinerType.L3);
            case C -> EnumSet.of(LinerType.L1, LinerType.L2);
            case D -> EnumSet.of(LinerType.L2);
        };
    }

    /** Electrostatic type of a liner. */
    public enum LinerType {
        L1("surface resistance up to 1e7 Ω in the edition of 2012, bonded to the bag"),
        L2("surface resistance 1e9 to 1e12 Ω"),
        L3("surface resistance above 1e12 Ω, breakdown below 4 kV"),
        PLAIN("plain film: cancels the rating of a rated bag");

        /** Where the types come from. */
        public static final Source SOURCE =
                Source.fromMemory("IEC 61340-4-4:2018, liners; type D read at a test laboratory");

        private final String words;

        LinerType(String words) {
            this.words = words;
        }

        /** What the type is. */
        public String words() {
            return words;
        }
    }
}
