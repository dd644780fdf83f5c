package dustwright.engine.finding;

/** A part of the plant that a finding or an assumption is about. */
public record Place(Kind kind, String id) {
    /** What sort of part. */
    public enum Kind {
        PLANT("plant"),
        SITE("site"),
        DUST("dust"),
        TUBE("tube"),
        HOSE("hose"),
        TOOL("tool"),
        POINT("point"),
        RUN("run"),
        INLET("inlet"),
        STATION("station"),
        RECEIVER("receiver"),
        FILTER("filter"),
        SAFETY_FILTER("safety filter"),
        SILENCER("silencer"),
        PRODUCER("vacuum producer"),
        RELIEF_VALVE("vacuum relief valve"),
        VENT_VALVE("vent valve"),
        BLEED("far-end bleed valve"),
        ROTARY_VALVE("rotary valve"),
        CONTAINER("bulk bag or drum"),
        USAGE("usage"),
        REQUIREMENTS("requirements"),
        CATALOGUE("catalogue"),
        PANEL("panel");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    @Override
    public String toString() {
        return id.isEmpty() ? kind.words() : kind.words() + " " + id;
    }
}
