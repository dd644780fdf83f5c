package dustwright.documents.drawing;

/** Colours of paper. Text and lines are ink; hue is kept for a measured margin. */
public final class Ink {
    public static final String INK = "#14211F";
    public static final String SECOND = "#43524F";
    public static final String THIRD = "#53615D";
    public static final String EDGE = "#6D7E7A";
    public static final String RULE = "#C9D1CE";
    public static final String WASH = "#EFF3F0";
    public static final String PAPER = "#FFFFFF";
    static final String NONE = "none";

    private Ink() {}
}
