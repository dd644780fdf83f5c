package dustwright.engine.hazard;

import dustwright.engine.finding.Source;

/** Greatest resistances on the way of charge to ground, measured on site. */
public enum Bonding {
    METAL_PART(
            "any conductive part to ground",
            1e6,
            Source.fromMemory("NFPA 77; IEC TS 60079-32-1; NFPA 652 (2019) 9.4.7")),
    DISSIPATIVE_PART(
            "a part of dissipative material to ground",
            1e8,
            Source.fromMemory("IEC TS 60079-32-1, dissipative objects")),
    METAL_JOINT("a sound joint of metal to metal, as a target", 10, Source.fromMemory("NFPA 77; IEC TS 60079-32-1")),
    BAG_TYPE_C(
            "bulk bag of type C, any point to its ground tab, edition of 2018",
            1e8,
            Source.published("IEC 61340-4-4:2018")),
    BAG_TYPE_C_STRICT(
            "bulk bag of type C, any point to its ground tab, edition of 2012 and stricter local rules",
            1e7,
            Source.published("IEC 61340-4-4:2012 by the abstract of its successor; TRGS 727")),
    PERSON("a person through shoes and floor", 1e8, Source.fromMemory("IEC TS 60079-32-1; IEC 61340-4-5")),
    HOSE(
            "a hose from cuff to cuff, the only way to ground of the tool at its end",
            1e6,
            Source.fromMemory("NFPA 77; IEC TS 60079-32-1; NFPA 652 (2019) 9.4.7: the tool is a conductive part")),
    CONNECTOR(
            "a flexible connector longer than 2 m between parts that are bonded of their own",
            1e8,
            Source.fromMemory("NFPA 652/654, flexible connectors")),
    CONDUCTIVE_HOSE_PER_METRE(
            "one metre of conductive hose", 1e3, Source.fromMemory("IEC TS 60079-32-1, hoses; test EN ISO 8031")),
    DISSIPATIVE_HOSE_PER_METRE(
            "one metre of dissipative hose", 1e6, Source.fromMemory("IEC TS 60079-32-1, hoses; test EN ISO 8031"));

    private final String words;
    private final double limit_ohm;
    private final Source source;

    Bonding(String words, double limit_ohm, Source source) {
        this.words = words;
        this.limit_ohm = limit_ohm;
        this.source = source;
    }

    /** What is measured. */
    public String words() {
        return words;
    }

    /** Greatest resistance [Ω]. */
    public double limit_ohm() {
        return limit_ohm;
    }

    /** Where the limit comes from. */
    public Source source() {
        return source;
    }
}
