package dustwright.engine.tubing;

import dustwright.engine.quantity.Length;

/** A place in the building [m]: x east, y north, z up. */
public record Position(double x_m, double y_m, double z_m) {
    /** Straight distance to another place. */
    public Length distanceTo(Position other) {
        double dx = x_m - other.x_m;
        double dy = y_m - other.y_m;
        double dz = z_m - other.z_m;
        return new Length(Math.sqrt(dx * dx + dy * dy + dz * dz));
    }
}
