package dustwright.engine.conveying;

/** Acceleration of free fall taken everywhere in conveying. */
final class Gravity {
    /** g [m/s²], standard value; printed examples often take 9.81, which is 0.03 % more. */
    static final double G_mPerS2 = 9.80665;

    private Gravity() {}
}
