package dustwright.engine.conveying;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Length;

/** Published form of what dust loses at the wall of a level tube. Upright tubes go by Konno and Saito (equation CON-34). */
public enum LevelFriction {
    /** Drag on particles that lag behind the air: an upper estimate, far too high for fine dust. */
    HINKLE("hinkle", "CON-33", Source.published("Hinkle 1953, as in Rhodes, Introduction to Particle Technology")),
    /** A friction factor fitted to tests. */
    YANG("yang", "CON-35", Source.fromMemory("Yang, AIChE Journal 20, 1974, 605-607"));

    /** From this size on the two agree within the scatter of tests, and the published one is taken. */
    public static final Length HINKLE_FROM = new Length(5e-4);

    private final String words;
    private final String equation;
    private final Source source;

    LevelFriction(String words, String equation, Source source) {
        this.words = words;
        this.equation = equation;
        this.source = source;
    }

    /** The form taken where none is stated: Hinkle from 0.5 mm on, Yang for finer dust (our own reading). */
    public static LevelFriction usual(Particle particle) {
        return particle.size().metres() >= HINKLE_FROM.metres() ? HINKLE : YANG;
    }

    /** As written in a plant file. */
    public String words() {
        return words;
    }

    /** Id on the equation page. */
    public String equation() {
        return equation;
    }

    public Source source() {
        return source;
    }
}
