package dustwright.engine.electrical;

import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.finding.Source;
import java.util.Arrays;
import java.util.List;

/**
 * What a certificate marks on equipment for combustible dust in zones: dust group and protection level, "IIIC Db". A group does for those
 * before it, a level for those below it (from memory of IEC 60079-0 and 60079-14).
 */
public record DustMarking(Group group, Level level) {
    /** Where the order of groups and levels comes from. */
    public static final Source SOURCE =
            Source.fromMemory("IEC 60079-0, dust groups and EPL; IEC 60079-14, EPL by zone");

    /** Dust group: flyings, dust that does not conduct, dust that conducts. */
    public enum Group {
        IIIA,
        IIIB,
        IIIC
    }

    /** Protection level: Dc for Zone 22, Db for 21 too, Da for 20 too. */
    public enum Level {
        DC("Dc"),
        DB("Db"),
        DA("Da");

        private final String words;

        Level(String words) {
            this.words = words;
        }
    }

    /** As it is written: "IIIC Db". */
    public String words() {
        return group + " " + level.words;
    }

    /** Every marking there is. */
    public static List<DustMarking> all() {
        return Arrays.stream(Group.values())
                .flatMap(group -> Arrays.stream(Level.values()).map(level -> new DustMarking(group, level)))
                .toList();
    }

    /** Whether its level does in a zone; never in an area that is classified by divisions, where a listing counts. */
    public boolean levelFor(AreaClass zone) {
        return switch (zone) {
            case ZONE_20 -> level == Level.DA;
            case ZONE_21 -> level != Level.DC;
            case ZONE_22_IIIC, ZONE_22_IIIA_IIIB -> true;
            case CLASS_II_DIVISION_1,
                    CLASS_II_DIVISION_2,
                    CLASS_II_GROUP_E,
                    UNCLASSIFIED_DUSTY_INDOOR,
                    UNCLASSIFIED_OUTDOOR -> false;
        };
    }

    /** Whether its group does for a dust of this one. */
    public boolean groupFor(Group dust) {
        return group.compareTo(dust) >= 0;
    }
}
