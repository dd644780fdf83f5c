package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import java.util.Optional;

/** What a dust is made of, as far as it decides with what it may be collected. */
public enum DustFamily {
    ALUMINIUM("aluminium", Kind.LIGHT_METAL),
    MAGNESIUM("magnesium", Kind.LIGHT_METAL),
    TITANIUM("titanium", Kind.LIGHT_METAL),
    IRON("iron or steel", Kind.METAL),
    OTHER_METAL("other metal", Kind.METAL),
    RUST("rust or iron oxide", Kind.OXIDE),
    CARBONACEOUS("carbonaceous", Kind.CARBON),
    ORGANIC("organic", Kind.ORGANIC),
    FLYINGS("fibres and flyings", Kind.FLYINGS),
    OXIDIZER("oxidizer", Kind.OXIDIZER),
    MINERAL("mineral", Kind.INERT);

    /** Where the rules of keeping dusts apart come from. */
    public static final Source APART = Source.fromMemory("NFPA 484, metal chapters of NFPA 660; clause not seen");

    private enum Kind {
        LIGHT_METAL,
        METAL,
        OXIDE,
        CARBON,
        ORGANIC,
        FLYINGS,
        OXIDIZER,
        INERT
    }

    private final String words;
    private final Kind kind;

    DustFamily(String words, Kind kind) {
        this.words = words;
        this.kind = kind;
    }

    /** As the plant file says it. */
    public String words() {
        return words;
    }

    /** Whether it is a metal that burns: NEC Group E. */
    public boolean metal() {
        return kind == Kind.LIGHT_METAL || kind == Kind.METAL;
    }

    /** Whether it is a light metal, which takes oxygen from rust and hydrogen from water. */
    public boolean lightMetal() {
        return kind == Kind.LIGHT_METAL;
    }

    /** Class and group of the National Electrical Code; empty where the family as such does not burn. */
    public Optional<String> necGroup() {
        return switch (kind) {
            case LIGHT_METAL, METAL -> Optional.of("Class II Group E");
            case CARBON -> Optional.of("Class II Group F");
            case ORGANIC -> Optional.of("Class II Group G");
            case FLYINGS -> Optional.of("Class III");
            case OXIDE, OXIDIZER, INERT -> Optional.empty();
        };
    }

    /**
     * Group of the international system.
     *
     * @param conducts whether its resistivity is 1 kΩ m or less; not asked of metals, which conduct
     */
    public String iecGroup(boolean conducts) {
        if (kind == Kind.FLYINGS) {
            return "IIIA";
        }
        return metal() || conducts ? "IIIC" : "IIIB";
    }

    /** Whether it is named for what cannot burn: mineral or oxide. */
    public boolean inert() {
        return kind == Kind.INERT || kind == Kind.OXIDE;
    }

    /** Why two dusts must not be collected together; empty where these rules know no reason. */
    public Optional<String> apartFrom(DustFamily other) {
        if (this == other) {
            return Optional.empty();
        }
        if (thermite(this, other) || thermite(other, this)) {
            return Optional.of("light metal and rust burn as thermite; steel brings rust and sparks");
        }
        if (metal() && other.metal()) {
            return Optional.of("each family of metals has its own collection");
        }
        if ((metal() && other.fuel()) || (other.metal() && fuel())) {
            return Optional.of("metal dust is collected apart from other combustible dust");
        }
        if (feedsFire(this, other) || feedsFire(other, this)) {
            return Optional.of("an oxidizer feeds the fire of combustible dust without air");
        }
        return Optional.empty();
    }

    private boolean fuel() {
        return kind == Kind.ORGANIC || kind == Kind.CARBON || kind == Kind.FLYINGS;
    }

    private static boolean thermite(DustFamily metal, DustFamily oxide) {
        return metal.lightMetal() && (oxide == RUST || oxide == IRON);
    }

    private static boolean feedsFire(DustFamily oxidizer, DustFamily fuel) {
        return oxidizer == OXIDIZER && (fuel.metal() || fuel.fuel());
    }
}
