package dustwright.engine.hazard;

import dustwright.engine.finding.Source;

/** Class of a dust by its explosion constant. A ranking word: St 1 dusts have killed. */
public enum StClass {
    ST_0("St 0", "no explosion"),
    ST_1("St 1", "weak"),
    ST_2("St 2", "strong"),
    ST_3("St 3", "very strong");

    /** Where the classes come from. */
    public static final Source SOURCE = Source.published("OSHA CPL 03-00-008 (2008); OSHA 3371");

    private static final double WEAK_PaMPerS = 200e5;
    private static final double STRONG_PaMPerS = 300e5;

    private final String name;
    private final String words;

    StClass(String name, String words) {
        this.name = name;
        this.words = words;
    }

    /** As it is written: "St 1". */
    public String written() {
        return name;
    }

    /** The ranking word of the table. */
    public String words() {
        return words;
    }

    /** Class of an explosion constant [Pa m/s]. */
    public static StClass of(double kst_PaMPerS) {
        if (kst_PaMPerS <= 0) {
            return ST_0;
        }
        if (kst_PaMPerS <= WEAK_PaMPerS) {
            return ST_1;
        }
        return kst_PaMPerS <= STRONG_PaMPerS ? ST_2 : ST_3;
    }
}
