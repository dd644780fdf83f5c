package dustwright.engine.hazard;

import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.ClothLoad;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a receiver is protected against a dust explosion, as stated; what is absent is not known.
 *
 * @param volume the flame may fill; absent where it follows from the vessel's measures or is not known
 * @param slenderness length over diameter [-]
 * @param reduced greatest pressure the vented vessel stands, Pred
 * @param opens pressure at which the vent opens, Pstat
 * @param vent what closes its opening, and what lies behind
 * @param isolation on the mains that enter the receiver
 * @param mains runs that end at the receiver and carry such a device; empty where nobody has said which
 * @param returnIsolation on the duct that leads its air back into a room
 * @param exhaust where the producer's air goes
 * @param watched whether something tells dust in the exhaust air when a filter element breaks
 * @param valveIsolates whether the rotary valve was tested as an isolation device and stops on an explosion
 * @param containerStands pressure that a drum below the receiver stands with it, where nothing isolates it
 * @param producers where the station's vacuum producers stand and what they are made for
 * @param devices what its devices were tested for, and how they are fitted
 */
public record Protection(
        Optional<Method> method,
        Optional<Standing> standing,
        Optional<Volume> volume,
        Optional<Ratio> slenderness,
        Optional<GaugePressure> reduced,
        Optional<GaugePressure> opens,
        Vent vent,
        Optional<Isolation> isolation,
        List<String> mains,
        Optional<Isolation> returnIsolation,
        Optional<Exhaust> exhaust,
        Optional<Boolean> watched,
        Optional<Boolean> valveIsolates,
        Optional<GaugePressure> containerStands,
        Producers producers,
        Listing.Devices devices) {
    public Protection {
        mains = List.copyOf(mains);
    }

    /** Nothing known. */
    public static final Protection UNKNOWN = new Protection(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Vent.UNKNOWN,
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Producers.UNKNOWN,
            Listing.Devices.UNKNOWN);

    /**
     * The vacuum producers of a station and their motors, where dust can reach them.
     *
     * @param inArea whether they stand in an area that the owner has classified for dust
     * @param marked whether they and their motors are marked for that area and the group of the dust
     * @param surface hottest that they and their motors get outside, as marked or as their maker states
     */
    public record Producers(Optional<Boolean> inArea, Optional<Boolean> marked, Optional<Temperature> surface) {
        /** Nothing known. */
        public static final Producers UNKNOWN = new Producers(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * The vents of a receiver.
     *
     * @param area of all vents that are fitted
     * @param count number of vents
     * @param duct length of the duct behind the vent
     * @param moving greater of the axial and the tangential velocity of the air in the vessel
     * @param panel mass of the vent's panel over its area
     * @param hinged whether the panel swings on a hinge
     * @param share of the volume that can hold dust enough to explode
     * @param standard that governs the site, as its owner or authority says; absent, both are asked
     * @param efficiency share of its area that a device counts for [-], as its listing states
     */
    public record Vent(
            Optional<Area> area,
            int count,
            Optional<Length> duct,
            Optional<Velocity> moving,
            Optional<ClothLoad> panel,
            Optional<Boolean> hinged,
            Optional<Ratio> share,
            Optional<VentMethod> standard,
            Optional<Ratio> efficiency) {
        /** Whether a duct of some length follows the vent. */
        public boolean ducted() {
            return duct.filter(length -> length.metres() > 0).isPresent();
        }

        /** The same without credit, and with the fastest air where nobody has stated it. No panel's mass is the worst: it has to be stated. */
        public Vent atWorst() {
            return new Vent(
                    area,
                    count,
                    duct,
                    moving.or(() -> Optional.of(FASTEST_AIR)),
                    panel,
                    hinged,
                    Optional.empty(),
                    standard,
                    efficiency);
        }

        /** What enlarges a vent and is not stated, as the plant file calls it. */
        public List<String> left() {
            return Stream.of(
                            panel.isEmpty() ? "\"panel\"" : "",
                            moving.isEmpty() ? "\"air in vessel\"" : "",
                            duct.isEmpty() ? "\"vent duct\"" : "")
                    .filter(key -> !key.isEmpty())
                    .toList();
        }

        private static final Velocity FASTEST_AIR = new Velocity(56);

        /** Nothing known. */
        public static final Vent UNKNOWN = new Vent(
                Optional.empty(),
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

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

        /** Whether a vent opens, freely or through what quenches its flame. */
        public boolean vents() {
            return this == VENTING || this == FLAMELESS_VENTING;
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
