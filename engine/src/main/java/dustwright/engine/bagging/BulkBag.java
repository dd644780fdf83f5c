package dustwright.engine.bagging;

import dustwright.engine.hazard.BagType;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import java.util.Optional;

/**
 * A bulk bag and the stand that holds it while it fills. What is absent is not known.
 *
 * @param size flat measures
 * @param spout length of its filling spout
 * @param loops length of its lifting loops
 * @param type electrostatic type on its label
 * @param linerType electrostatic type of its liner
 * @param vapour flammable gas or vapour about it; absent where nobody has said whether there is any
 * @param empty mass of the empty bag with its liner
 * @param use how often it may be used
 * @param shareWithoutInflation share of its volume that fills when it is not inflated before [-]
 */
public record BulkBag(
        Optional<Size> size,
        Optional<Length> spout,
        Optional<Length> loops,
        Optional<Liner> liner,
        Optional<BagType> type,
        Optional<BagType.LinerType> linerType,
        Optional<BagType.Vapour> vapour,
        Optional<Mass> empty,
        Optional<BagSupport.Use> use,
        Optional<Ratio> shareWithoutInflation,
        Stand stand) {
    /** Flammable gas or vapour that is stated to be about it. */
    public Optional<BagType.Vapour> statedVapour() {
        return vapour.filter(v -> v != BagType.Vapour.NONE);
    }

    /** Flat measures of a bag. */
    public record Size(Length width, Length depth, Length height) {}

    /** What lies inside the bag. */
    public enum Liner {
        NONE("none"),
        LOOSE("loose"),
        FITTED("fitted");

        private final String words;

        Liner(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /**
     * What holds the bag.
     *
     * @param base what carries it while it fills
     * @param pallet height of what it stands on over the floor
     * @param arms mass that all four arms together are stated to hold
     * @param headroom clear height from floor to filling head
     * @param bay clear floor before and under the stand
     */
    public record Stand(
            BagSupport.Base base,
            Optional<Length> pallet,
            Optional<Mass> arms,
            Optional<Length> headroom,
            Optional<Bay> bay,
            Optional<NeckSeal> seal,
            Optional<Inflation> inflation) {}

    /** Clear floor for a truck. */
    public record Bay(Length width, Length depth) {}

    /**
     * Inflatable seal at the neck.
     *
     * @param pressure above the barometer
     * @param volume of air in it; absent where not known
     */
    public record NeckSeal(GaugePressure pressure, Optional<Volume> volume) {}

    /**
     * Fan or air supply that opens the bag before it fills.
     *
     * @param flow at the barometer
     * @param pressure it can make; absent where not known
     * @param byCompressedAir by the plant's compressed air, else by a fan
     * @param motor nameplate of the fan's motor; absent where not known
     */
    public record Inflation(
            ActualVolumeFlow flow,
            Optional<PressureDifference> pressure,
            boolean byCompressedAir,
            Optional<Power> motor) {}

    /** Fan that opens it first; absent where nothing does, or compressed air. */
    public Optional<Inflation> fan() {
        return stand.inflation().filter(inflation -> !inflation.byCompressedAir());
    }

    /** Whether it is not inflated before filling and nobody says which share of its volume then fills. */
    public boolean fillsByUnknownShare() {
        return stand.inflation().isEmpty() && shareWithoutInflation.isEmpty();
    }

    /** Share of its volume that fills, where nothing inflates it and the share is stated. */
    public Optional<Ratio> filledShort() {
        return stand.inflation().isPresent() ? Optional.empty() : shareWithoutInflation;
    }
}
