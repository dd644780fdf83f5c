package dustwright.engine.receiver;

import dustwright.engine.quantity.Angle;

/**
 * One of the three places around the shell, 90° apart, that an inlet or a level probe can take, as one sees them standing at the access
 * door; the door has the fourth (common practice, no source).
 */
public enum SidePlace {
    LEFT("left", 90),
    REAR("rear", 180),
    RIGHT("right", 270);

    private final String words;
    private final double fromDoor_deg;

    SidePlace(String words, double fromDoor_deg) {
        this.words = words;
        this.fromDoor_deg = fromDoor_deg;
    }

    public String words() {
        return words;
    }

    /** Angle around the shell to another place, at most a half turn. */
    public Angle angleTo(SidePlace other) {
        return Angle.ofDegrees(Math.abs(fromDoor_deg - other.fromDoor_deg));
    }

    /** Where the probe goes when nobody says: to the rear, or to the right where the inlet has taken the rear. */
    public static SidePlace ofProbe(SidePlace inlet) {
        return inlet == REAR ? RIGHT : REAR;
    }
}
