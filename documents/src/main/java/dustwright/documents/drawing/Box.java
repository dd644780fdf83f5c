package dustwright.documents.drawing;

/** An upright rectangle on a sheet. */
record Box(double left, double top, double right, double bottom) {
    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** Like {@link #meets}, edges included. */
    boolean touches(Box other) {
        return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
    }

    boolean within(Box other) {
        return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    /** True when the straight line between two places passes through this box (Liang and Barsky's clipping). */
    boolean crossedBy(Spot a, Spot b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double enter =
                Math.max(Math.max(entry(dx, left - a.x(), right - a.x()), entry(dy, top - a.y(), bottom - a.y())), 0);
        double leave =
                Math.min(Math.min(exit(dx, left - a.x(), right - a.x()), exit(dy, top - a.y(), bottom - a.y())), 1);
        return enter <= leave;
    }

    /** Share of the way at which a line that goes so far enters the band between two edges; beyond every share where it never does. */
    private static double entry(double way, double near, double far) {
        if (way == 0) {
            return near <= 0 && far >= 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return (way > 0 ? near : far) / way;
    }

    private static double exit(double way, double near, double far) {
        if (way == 0) {
            return Double.POSITIVE_INFINITY;
        }
        return (way > 0 ? far : near) / way;
    }
}
