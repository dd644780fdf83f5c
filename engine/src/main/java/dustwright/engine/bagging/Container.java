package dustwright.engine.bagging;

import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.ChargePath;
import dustwright.engine.hazard.ChargePath.DrumLiner;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Volume;
import java.util.Optional;

/**
 * What the dust falls into. Volume to the level probe, mass to the safe working load: whichever comes first.
 *
 * @param volume up to the level probe, of an inflated bag
 * @param safeWorkingLoad as marked; absent where not known, and then nothing is said of its load
 * @param stop what ends the filling
 * @param ventSock area of the cloth that passes its air; absent where not known
 * @param bag what a bulk bag is like and what holds it; absent for a drum
 * @param greatestVacuum vacuum a drum bears as its maker states it; absent where not known
 * @param charge how charge leaves a drum, from its inside to its ground clip
 * @param drumLiner what lies inside a drum; absent where not known
 * @param drumVapour flammable gas or vapour about a drum; absent where nobody has said whether there is any
 */
public record Container(
        Kind kind,
        Volume volume,
        Optional<Mass> safeWorkingLoad,
        Stop stop,
        Changing changing,
        Optional<Area> ventSock,
        Optional<BulkBag> bag,
        Optional<PressureDifference> greatestVacuum,
        ChargePath charge,
        Optional<DrumLiner> drumLiner,
        Optional<BagType.Vapour> drumVapour) {
    /** A container of which nobody has said how charge leaves it, nor what lies inside a drum. */
    public Container(
            Kind kind,
            Volume volume,
            Optional<Mass> safeWorkingLoad,
            Stop stop,
            Changing changing,
            Optional<Area> ventSock,
            Optional<BulkBag> bag,
            Optional<PressureDifference> greatestVacuum) {
        this(
                kind,
                volume,
                safeWorkingLoad,
                stop,
                changing,
                ventSock,
                bag,
                greatestVacuum,
                ChargePath.UNKNOWN,
                Optional.empty(),
                Optional.empty());
    }

    /** Flammable gas or vapour about it; absent where nobody has said whether there is any. */
    public Optional<BagType.Vapour> vapour() {
        return bag.map(BulkBag::vapour).orElse(drumVapour);
    }

    /** Kind of container. */
    public enum Kind {
        BULK_BAG("bulk bag"),
        DRUM("drum");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** What ends the filling. */
    public enum Stop {
        LEVEL_PROBE("level probe"),
        SCALE("scale");

        private final String words;

        Stop(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /**
     * How containers are changed.
     *
     * @param time from stop to start of the discharge
     * @param vacuumingGoesOn true where users go on meanwhile and the receiver holds the dust
     * @param standingBy empty containers at hand; absent where not known
     */
    public record Changing(Duration time, boolean vacuumingGoesOn, Optional<Integer> standingBy) {}

    /** Volume that fills: of a bag that is not inflated the share its plant states (equation BAG-7). */
    public Volume fills() {
        return bag.flatMap(BulkBag::filledShort)
                .map(share -> new Volume(BagFill.notInflated_m3(volume.cubicMetres(), share.value())))
                .orElse(volume);
    }
}
