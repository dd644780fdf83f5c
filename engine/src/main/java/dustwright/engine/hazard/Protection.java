package dustwright.engine.hazard;

import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import java.util.Optional;

/**
 * How a receiver is protected against a dust explosion, as stated; what is absent is not known.
 *
 * @param volume the flame may fill; absent where it follows from the vessel's measures or is not known
 * @param slenderness length over diameter [-]
 * @param reduced greatest pressure the vented vessel stands, Pred
 * @param opens pressure at which the vent opens, Pstat
 * @param vent area of all vents that are fitted
 * @param vents number of vents
 * @param duct length of the duct behind the vent
 * @param isolation on the main that enters the receiver
 * @param exhaust where the producer's air goes
 * @param valveIsolates whether the rotary valve was tested as an isolation device and stops on an explosion
 */
public record Protection(
        Optional<Method> method,
        Optional<Standing> standing,
        Optional<Volume> volume,
        Optional<Ratio> slenderness,
        Optional<GaugePressure> reduced,
        Optional<GaugePressure> opens,
        Optional<Area> vent,
        int vents,
        Optional<Length> duct,
        Optional<Isolation> isolation,
        Optional<Exhaust> exhaust,
        Optional<Boolean> valveIsolates) {
    /** Nothing known. */
    public static final Protection UNKNOWN = new Protection(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            1,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** What keeps an explosion in the receiver from hurting people. */
    public enum Method {
        VENTING("venting"),
        FLAMELESS_VENTING("flameless venting"),
        SUPPRESSION("suppression"),
        CONTAINMENT("containment"),
        NONE("none");

        private final String words;

        Method(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** Where the receiver stands. */
    public enum Standing {
        OUTDOORS("outdoors"),
        INDOORS("indoors");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** What keeps flame out of the main and away from people who hold hoses. */
    public enum Isolation {
        NONE("none"),
        FLAP_VALVE("flap valve"),
        FLOAT_VALVE("float valve"),
        FAST_GATE("fast-acting gate"),
        CHEMICAL_BARRIER("chemical barrier");

        private final String words;

        Isolation(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** Where the air goes that leaves the producer. */
    public enum Exhaust {
        OUTDOORS("outdoors"),
        INDOORS("returned indoors");

        private final String words;

        Exhaust(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }
}
