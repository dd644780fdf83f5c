package dustwright.documents.drawing;

/** A place on a sheet, x to the right and y downwards; in a layout, metres with y upwards. */
public record Spot(double x, double y) {
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    double distanceTo(Spot other) {
        double dx = x - other.x;
        double dy = y - other.y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    Spot towards(Spot other, double share) {
        return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
