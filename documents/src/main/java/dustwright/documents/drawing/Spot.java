package dustwright.documents.drawing;

/** A place on a sheet, x to the right and y downwards; in a layout, metres with y upwards. */
public record Spot(double x, double y) {
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    double distanceTo(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    Spot towards(Spot other, double share) {
        return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
