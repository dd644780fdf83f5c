package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import java.util.List;
import java.util.stream.Stream;

/** What the least ignition energy of a dust asks for. Every step includes those above it. */
public enum MieStep {
    BONDING("bonding of the plant is good practice at any ignition energy", Double.POSITIVE_INFINITY, true, true),
    GROUND_PLANT("ground the plant", 500e-3, true, true),
    GROUND_PEOPLE("consider grounding people", 100e-3, true, true),
    VERIFY_PATH(
            "verify the path to ground of hose and tool before use and after each move or new connection (asked of portable"
                    + " cleaners)",
            30e-3,
            false,
            false),
    MOST_IGNITIONS("most static ignitions have been in this range", 25e-3, true, true),
    PLASTICS(
            "restrict insulating plastics; consider cone discharges on the heap in bag and receiver",
            10e-3,
            true,
            true),
    NO_TYPE_B("no bulk bag of type B, only C or D", 3e-3, true, false),
    LIKE_GAS("treat it like a flammable gas or vapour", 1e-3, true, true);

    private static final Source GUIDANCE = Source.fromMemory("BS 5958-1:1991");
    private static final Source PORTABLE =
            Source.published("NFPA 660 (2025), portable vacuum clause, as quoted in trade texts");

    private final String words;
    private final double limit_J;
    private final boolean included;
    private final boolean guidance;

    MieStep(String words, double limit_J, boolean included, boolean guidance) {
        this.words = words;
        this.limit_J = limit_J;
        this.included = included;
        this.guidance = guidance;
    }

    /** What to do. */
    public String words() {
        return words;
    }

    /** From which ignition energy: "At 500 mJ and less". */
    public String from() {
        if (limit_J == Double.POSITIVE_INFINITY) {
            return "At any ignition energy";
        }
        long limit_mJ = Math.round(limit_J * 1000);
        return included ? "At " + limit_mJ + " mJ and less" : "Below " + limit_mJ + " mJ";
    }

    /** Where the step comes from. */
    public Source source() {
        if (guidance) {
            return GUIDANCE;
        }
        return this == NO_TYPE_B ? BagType.SOURCE : PORTABLE;
    }

    private boolean asked(double energy_J) {
        return included ? energy_J <= limit_J : energy_J < limit_J;
    }

    /** The steps a least ignition energy [J] asks for. */
    public static List<MieStep> of(double energy_J) {
        return Stream.of(values()).filter(step -> step.asked(energy_J)).toList();
    }
}
