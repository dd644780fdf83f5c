package dustwright.documents.drawing;

/** An upright rectangle on a sheet. */
record Box(double left, double top, double right, double bottom) {
    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
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
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {a.x() - left, right - a.x(), a.y() - top, bottom - a.y()};
        double enter = 0;
        double leave = 1;
        for (int side = 0; side < p.length; side++) {
            if (p[side] == 0) {
                if (q[side] < 0) {
                    return false;
                }
            } else if (p[side] < 0) {
                enter = Math.max(enter, q[side] / p[side]);
            } else {
                leave = Math.min(leave, q[side] / p[side]);
            }
        }
        return enter <= leave;
    }
}
