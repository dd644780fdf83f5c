package dustwright.engine.conveying;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Units;
import dustwright.engine.quantity.Velocity;

/**
 * Class of dust by how fast the air must move to carry it. Lower ends of the ACGIH minimum duct design velocities, exact conversion of
 * the ft/min form (2000, 2500, 3000, 3500, 4000, 4500 ft/min): exhaust ventilation practice at light loading.
 */
public enum DustClass {
    FUMES("fumes", 2000),
    VERY_FINE_LIGHT("very fine light dust", 2500),
    DRY_POWDER("dry dusts and powders", 3000),
    AVERAGE_INDUSTRIAL("average industrial dust", 3500),
    HEAVY("heavy dust", 4000),
    HEAVY_OR_MOIST("heavy or moist dust", 4500);

    /** Where the velocities come from. */
    public static final Source SOURCE = Source.published(
            "ACGIH Industrial Ventilation, minimum duct design velocities, 2009 edition, lower end of the class as reprinted");

    private final String words;
    private final Velocity minimum;

    DustClass(String words, double feetPerMinute) {
        this.words = words;
        this.minimum = new Velocity(feetPerMinute * Units.FOOT_PER_MINUTE_mPerS);
    }

    public String words() {
        return words;
    }

    /** Least transport velocity of the class. */
    public Velocity minimum() {
        return minimum;
    }
}
