package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import java.util.ArrayList;
import java.util.List;

/** How often a dust cloud is there, by zones, and what each means in the American system. Zones and divisions are not one to one. */
public enum DustZone {
    ZONE_20("Zone 20", "1D / Da", 1, "dust cloud present continuously, long periods or frequently"),
    ZONE_21("Zone 21", "2D / Db", 1, "dust cloud likely occasionally in normal operation"),
    ZONE_22("Zone 22", "3D / Dc", 2, "dust cloud unlikely in normal operation and then only short");

    /** Where the class of fibres comes from. */
    public static final Source FIBRES = Source.fromMemory("IEC 60079-0, group IIIA; NEC 500.5(D), Class III");

    /** Where the zones come from. */
    public static final Source SOURCE = Source.published("IEC 60079-10-2, definitions as reprinted; NEC 500.5, 506");

    private final String written;
    private final String equipment;
    private final int division;
    private final String meaning;

    DustZone(String written, String equipment, int division, String meaning) {
        this.written = written;
        this.equipment = equipment;
        this.division = division;
        this.meaning = meaning;
    }

    /** As it is written: "Zone 21". */
    public String written() {
        return written;
    }

    /** Category and protection level of equipment for it. */
    public String equipment() {
        return equipment;
    }

    /** When a place is one. */
    public String meaning() {
        return meaning;
    }

    /**
     * Classes and divisions of the same place for what burns there: Class III for fibres and flyings, Class II for every other dust, of which
     * a metal puts the place into Division 1, also while nobody has said what a dust is made of.
     *
     * @param burning cards of the combustible dusts there, one or more
     */
    public String american(List<DustCard> burning) {
        List<String> classes = new ArrayList<>();
        if (!burning.stream().allMatch(DustCard::flyings)) {
            boolean metal = burning.stream().anyMatch(DustCard::mayBeMetal);
            classes.add("Class II Division " + (metal ? 1 : division));
        }
        if (burning.stream().anyMatch(DustCard::flyings)) {
            classes.add("Class III Division " + division);
        }
        return String.join(" and ", classes);
    }

    /** The places about a central vacuum-cleaning system, as they are commonly classified. */
    public enum At {
        DIRTY_SIDE("Inside of receiver, dirty side, and tubing", ZONE_20, Source.commonPractice()),
        VALVE("Inside of the rotary valve", ZONE_21, trade()),
        FILLING("Inside of the bag or drum being filled", ZONE_21, trade()),
        AROUND_FILLING("Around the bag or drum, 3 m", ZONE_22, trade()),
        AROUND_RECEIVER(
                "Around openings of the receiver: doors, vent valve, level probe, 1 m",
                ZONE_22,
                Source.commonPractice()),
        CLEAN_SIDE("Inside of the clean side, of producer and exhaust duct", ZONE_22, trade());

        private final String words;
        private final DustZone zone;
        private final Source source;

        At(String words, DustZone zone, Source source) {
            this.words = words;
            this.zone = zone;
            this.source = source;
        }

        private static Source trade() {
            return Source.published("trade article on bulk solids handling, places by IEC 60079-10-2");
        }

        /** The place. */
        public String words() {
            return words;
        }

        /** Its usual zone. */
        public DustZone zone() {
            return zone;
        }

        /** Who says so. */
        public Source source() {
            return source;
        }
    }
}
