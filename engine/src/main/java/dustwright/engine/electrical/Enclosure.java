package dustwright.engine.electrical;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Units;
import dustwright.engine.reference.ReferenceTable;
import dustwright.engine.reference.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A NEMA enclosure type. The comparison with IP codes goes one way: a type meets at least that IP, an IP never proves a type.
 *
 * @param type for example 12 or 4X
 * @param protectsAgainst in words
 * @param leastIp IEC code it meets at least, with what newer tables say
 */
public record Enclosure(String type, boolean indoor, boolean outdoor, String protectsAgainst, String leastIp) {
    private static final ReferenceTable TYPES = ReferenceTable.bundled("electrical/enclosures.csv");
    private static final ReferenceTable CODES = ReferenceTable.bundled("electrical/ip-codes.csv");
    private static final ReferenceTable AREAS = ReferenceTable.bundled("electrical/enclosure-for-area.csv");
    private static final ReferenceTable PURGES = ReferenceTable.bundled("electrical/purge.csv");

    /** Where the types come from. */
    public static Source typeSource() {
        return TYPES.source();
    }

    /** The type of this name; refused where the table does not hold it. */
    public static Enclosure ofType(String type) {
        Row row = TYPES.row("nema_type", type);
        return new Enclosure(
                type,
                row.text("indoor").equals("yes"),
                row.text("outdoor").equals("yes"),
                row.text("protects_against"),
                row.text("ip_at_least"));
    }

    /** Word for a panel that clean air keeps dust out of, whatever its type. */
    public static final String PURGED = "purged";

    private static final String CODE = "IP";
    private static final int DUST_TIGHT = 6;

    /** What a panel may be offered as: a type or a code of the tables, or purged. */
    public static List<String> offered() {
        return Stream.of(
                        TYPES.rows().stream().map(row -> row.text("nema_type")),
                        CODES.rows().stream().map(row -> row.text("ip_code")),
                        Stream.of(PURGED),
                        Arrays.stream(Purge.values()).map(type -> PURGED + " " + type))
                .flatMap(s -> s)
                .toList();
    }

    /** As a reader knows it: "NEMA 12", "IP65", "purged". */
    public static String written(String offered) {
        return isPurged(offered) || isCode(offered) ? offered : "NEMA " + offered;
    }

    /** The same with what it keeps out. */
    public static String madeFor(String offered) {
        return written(offered) + ", "
                + (isPurged(offered) ? "against dust" : row(offered).text("protects_against"));
    }

    /** Whether clean air keeps dust out of it, by a stated type of purge or none. */
    public static boolean isPurged(String offered) {
        return offered.startsWith(PURGED);
    }

    /** Whether an offered enclosure is dust-tight enough for dust of a group in a zone; only a code says anything of that. */
    public static boolean tightEnough(String offered, AreaClass zone, DustMarking.Group group) {
        if (!isCode(offered) || offered.charAt(CODE.length()) - '0' >= DUST_TIGHT) {
            return true;
        }
        return switch (zone) {
            case ZONE_20 -> false;
            case ZONE_21 -> group == DustMarking.Group.IIIA;
            case ZONE_22_IIIC, ZONE_22_IIIA_IIIB -> group != DustMarking.Group.IIIC;
            case CLASS_II_DIVISION_1,
                    CLASS_II_DIVISION_2,
                    CLASS_II_GROUP_E,
                    UNCLASSIFIED_DUSTY_INDOOR,
                    UNCLASSIFIED_OUTDOOR -> true;
        };
    }

    /** Whether it is a code of IEC 60529 and not a type of NEMA 250. */
    public static boolean isCode(String offered) {
        return offered.startsWith(CODE);
    }

    private static Row row(String offered) {
        return isCode(offered) ? CODES.row("ip_code", offered) : TYPES.row("nema_type", offered);
    }

    /** Where it stands what one of {@link #offered} keeps out. */
    public static Source source(String offered) {
        return isCode(offered) ? CODES.source() : TYPES.source();
    }

    /**
     * Whether a type or code does in an area, by the routes of {@link #forArea}: empty where it alone does not say, as in zones, which ask
     * for a certificate, and of a code in a class, which asks for a listing. Nothing that lets dust in does in a zone, and no purge in Zone 20
     * (IEC 60079-2, from memory).
     */
    public static Optional<Boolean> suits(String type, AreaClass area) {
        return isCode(type) ? codeSuits(type, area) : typeSuits(type, area);
    }

    private static Optional<Boolean> codeSuits(String code, AreaClass area) {
        return switch (area) {
            case UNCLASSIFIED_DUSTY_INDOOR -> withstands(code, Exposure.DUSTY_INDOOR);
            case UNCLASSIFIED_OUTDOOR -> withstands(code, Exposure.OUTDOOR);
            case ZONE_20,
                    ZONE_21,
                    ZONE_22_IIIC,
                    ZONE_22_IIIA_IIIB,
                    CLASS_II_DIVISION_1,
                    CLASS_II_DIVISION_2,
                    CLASS_II_GROUP_E -> Optional.empty();
        };
    }

    private static Optional<Boolean> typeSuits(String type, AreaClass area) {
        return switch (area) {
            case CLASS_II_DIVISION_1, CLASS_II_GROUP_E ->
                isPurged(type) ? purgeSuits(type) : Optional.of(type.equals("9"));
            case CLASS_II_DIVISION_2 ->
                Optional.of(isPurged(type) || List.of("3", "4", "4X", "9", "12").contains(type));
            case UNCLASSIFIED_DUSTY_INDOOR -> withstands(type, Exposure.DUSTY_INDOOR);
            case UNCLASSIFIED_OUTDOOR ->
                Optional.of(!List.of("1", "12", "13", "7", "9").contains(type));
            case ZONE_20 -> isPurged(type) ? Optional.of(false) : inZone(type);
            case ZONE_21, ZONE_22_IIIC, ZONE_22_IIIA_IIIB -> inZone(type);
        };
    }

    /** In Division 1: X whatever is inside, Y where that suits Division 2, which a type alone does not say, Z never. */
    private static Optional<Boolean> purgeSuits(String offered) {
        return switch (offered.substring(PURGED.length()).strip()) {
            case "X" -> Optional.of(true);
            case "Z" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    private static Optional<Boolean> inZone(String type) {
        return withstands(type, Exposure.DUSTY_INDOOR).filter(keepsOut -> !keepsOut);
    }

    /**
     * Whether a type or code keeps out what an exposure brings, by what it is tested for: empty for a purged panel in the wet, as a purge
     * keeps dust out and says nothing of water, and for a code where only oil or corrosion is left, of which it says nothing.
     */
    public static Optional<Boolean> withstands(String type, Exposure exposure) {
        if (isPurged(type)) {
            return exposure == Exposure.DUSTY_INDOOR ? Optional.of(true) : Optional.empty();
        }
        List<String> let = new ArrayList<>(exposure.brings);
        let.removeAll(List.of(row(type).text("keeps_out").split(", ")));
        if (!let.isEmpty() && isCode(type) && silent(type).containsAll(let)) {
            return Optional.empty();
        }
        return Optional.of(let.isEmpty());
    }

    private static List<String> silent(String code) {
        return List.of(row(code).text("silent").split(", "));
    }

    /** Dust, water and corrosion a panel must bear where it stands. */
    public enum Exposure {
        DUSTY_INDOOR("12", "dust"),
        DUSTY_INDOOR_WITH_OIL("13", "dust", "oil spray"),
        OUTDOOR("3R", "rain"),
        OUTDOOR_DUSTY("3", "rain", "windblown dust"),
        HOSED_DOWN("4", "hose water"),
        HOSED_DOWN_CORROSIVE("4X", "hose water", "corrosion");

        private final String type;
        private final List<String> brings;

        Exposure(String type, String... brings) {
            this.type = type;
            this.brings = List.of(brings);
        }

        /** What it brings to the panel, in words. */
        public String bringing() {
            return String.join(", ", brings);
        }

        /** The exposure in words. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** The usual type for an unclassified place. */
    public static Enclosure forUnclassified(Exposure exposure) {
        return ofType(exposure.type);
    }

    /** Class of an area, by the owner's classification drawing; the words of the table. */
    public enum AreaClass {
        UNCLASSIFIED_DUSTY_INDOOR("unclassified, dusty indoor"),
        UNCLASSIFIED_OUTDOOR("unclassified, outdoor"),
        CLASS_II_DIVISION_1("Class II Div 1"),
        CLASS_II_DIVISION_2("Class II Div 2"),
        CLASS_II_GROUP_E("Class II Group E"),
        ZONE_20("Zone 20"),
        ZONE_21("Zone 21"),
        ZONE_22_IIIC("Zone 22 IIIC"),
        ZONE_22_IIIA_IIIB("Zone 22 IIIB, IIIA");

        private final String words;

        AreaClass(String words) {
            this.words = words;
        }

        /** The class in words. */
        public String words() {
            return words;
        }

        /** Whether it is a zone, where equipment is marked by group and level. */
        public boolean isZone() {
            return words.startsWith("Zone");
        }
    }

    /**
     * Which enclosures suit an area, and which do not.
     *
     * @param acceptable routes, in words
     * @param notAcceptable what does not do, in words
     * @param source where this comes from
     */
    public record Route(AreaClass area, String acceptable, String notAcceptable, Source source) {}

    /** The routes for an area class. */
    public static Route forArea(AreaClass area) {
        Row row = AREAS.row("area", area.words);
        return new Route(area, row.text("acceptable"), row.text("not_acceptable"), AREAS.source());
    }

    /** Purged enclosure: clean air at a small overpressure makes ordinary or lesser equipment fit for an area. */
    public enum Purge {
        /** Division 1 outside, ordinary equipment inside: cuts power by itself on loss of pressure. */
        X,
        /** Division 1 outside, Division 2 equipment inside. */
        Y,
        /** Division 2 outside, ordinary equipment inside. */
        Z;

        /** The purge for a division of the place and whether the equipment inside suits Division 2. */
        public static Purge of(int division, boolean insideSuitsDivision2) {
            return switch (division) {
                case 1 -> insideSuitsDivision2 ? Y : X;
                case 2 -> Z;
                default -> throw new IllegalArgumentException("divisions are 1 and 2, not " + division);
            };
        }

        /** Least overpressure inside [Pa]. */
        public double leastPressure_Pa() {
            return PURGES.row("type", name()).number("least_pressure_Pa");
        }

        /** Particle density above which a dust counts as heavy [kg/m³]: 130 lb/ft³, with the table's confidence. */
        public static final double HEAVY_DUST_kgPerM3 = 130 * Units.POUND_PER_CUBIC_FOOT_kgPerM3;

        private static final String LIGHT = "dust, light (particle density up to about 130 lb/ft3)";
        private static final String HEAVY = "dust, heavy (above about 130 lb/ft3)";

        /** Least overpressure against a dust, heavy or light [Pa]; never less than this type's own. */
        public double leastPressure_Pa(boolean heavyDust) {
            return Math.max(
                    leastPressure_Pa(),
                    PURGES.row("type", heavyDust ? HEAVY : LIGHT).number("least_pressure_Pa"));
        }

        /** What must happen when the pressure is lost, in words. */
        public String onLossOfPressure() {
            return PURGES.row("type", name()).text("on_loss_of_pressure");
        }

        /** Where this comes from. */
        public static Source source() {
            return PURGES.source();
        }
    }
}
