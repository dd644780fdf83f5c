package dustwright.engine.hazard;

import dustwright.engine.quantity.ElectricResistance;
import java.util.Optional;

/**
 * How charge leaves a part that dust rubs on; what is absent is not known.
 *
 * @param resistance from the part to what grounds it, as measured or as its maker states
 */
public record ChargePath(Optional<Material> material, Optional<ElectricResistance> resistance) {
    /** Nothing known. */
    public static final ChargePath UNKNOWN = new ChargePath(Optional.empty(), Optional.empty());

    /** What a part is made of, as far as charge asks. */
    public enum Material {
        CONDUCTIVE("conductive", Bonding.METAL_PART),
        DISSIPATIVE("dissipative", Bonding.DISSIPATIVE_PART),
        INSULATING("insulating", Bonding.DISSIPATIVE_PART);

        private final String words;
        private final Bonding limit;

        Material(String words, Bonding limit) {
            this.words = words;
            this.limit = limit;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }

        /** Greatest resistance to ground of a part of it. */
        public Bonding limit() {
            return limit;
        }
    }

    /** What lies inside a drum. */
    public enum DrumLiner {
        NONE("none"),
        CONDUCTIVE("conductive"),
        DISSIPATIVE("dissipative"),
        INSULATING("insulating");

        private final String words;

        DrumLiner(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }
}
