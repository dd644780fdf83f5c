package dustwright.engine.hazard;

import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import java.util.Optional;

/**
 * What a device against explosions was tested for, as its certificate says, and how it is fitted; what is absent is not known.
 *
 * @param kst greatest explosion constant it was tested for
 * @param greatest greatest explosion pressure Pmax it was tested for
 * @param suppressed pressure over the barometer that a suppressed explosion still comes to in this vessel, as its maker states
 * @param nearest least distance from the receiver that its maker allows
 * @param furthest greatest distance from the receiver that its maker allows
 * @param standsAt distance from the receiver at which it is fitted, along the tubing
 * @param stops which flame it stops as it is fitted
 * @param dustLaden whether its maker allows air that carries as much dust as here
 */
public record Listing(
        Optional<ExplosionConstant> kst,
        Optional<GaugePressure> greatest,
        Optional<GaugePressure> suppressed,
        Optional<Length> nearest,
        Optional<Length> furthest,
        Optional<Length> standsAt,
        Optional<Flame> stops,
        Optional<Boolean> dustLaden) {
    /** Nothing known. */
    public static final Listing UNKNOWN = new Listing(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** Which way a flame runs. */
    public enum Flame {
        FROM_RECEIVER("from the receiver"),
        INTO_RECEIVER("into the receiver"),
        BOTH_WAYS("both ways");

        private final String words;

        Flame(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** The devices of a receiver. */
    public record Devices(Listing protection, Listing inlet, Listing back, Listing valve) {
        /** Nothing known. */
        public static final Devices UNKNOWN =
                new Devices(Listing.UNKNOWN, Listing.UNKNOWN, Listing.UNKNOWN, Listing.UNKNOWN);
    }
}
