package dustwright.studio;

/**
 * A picture of the floor that lies under the drawing, and where it lies. A point of the picture {@code u} to the right and {@code v} down
 * from its corner is in the building at
 *
 * <pre>
 * x = x_m + metresPerPoint (u cos turned + v sin turned)
 * y = y_m + metresPerPoint (u sin turned − v cos turned)
 * </pre>
 *
 * @param number each picture and each place of it has its own, so that pages know what they show
 * @param type what to tell a browser the picture is
 * @param turned counterclockwise [rad]
 */
record FloorPlan(
        long number,
        String type,
        int width_px,
        int height_px,
        double x_m,
        double y_m,
        double metresPerPoint,
        double turned) {
    private static final double FARTHEST_m = 10_000;
    private static final double NEAREST_px = 2;
    private static final double FINEST_mPerPoint = 1e-5;
    private static final double NARROWEST_m = 1;

    /** One point of the picture and where it is in the building. */
    record Pin(double u, double v, double x_m, double y_m) {
        private boolean known() {
            return Double.isFinite(u)
                    && Double.isFinite(v)
                    && Math.abs(x_m) <= FARTHEST_m
                    && Math.abs(y_m) <= FARTHEST_m;
        }
    }

    /** A pair of points that settles nothing, with the reason in words. */
    static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    /** A picture as it comes in: upright, its lower left corner at a place, so many metres wide. */
    static FloorPlan first(long number, Upload picture, double left_m, double bottom_m, double width_m) {
        double metresPerPoint = width_m / picture.width_px();
        return new FloorPlan(
                number,
                picture.type(),
                picture.width_px(),
                picture.height_px(),
                left_m,
                bottom_m + picture.height_px() * metresPerPoint,
                metresPerPoint,
                0);
    }

    /**
     * The same picture where two of its points are known: scale, turn and place follow.
     *
     * @param next number of the floor plan that it becomes
     * @throws Refused where the points lie on each other, in the picture or in the building
     */
    FloorPlan pinned(long next, Pin a, Pin b) throws Refused {
        if (!a.known() || !b.known()) {
            throw new Refused("A place in the building is given in metres, at most " + (int) FARTHEST_m + " m away.");
        }
        double along_px = b.u() - a.u();
        double up_px = a.v() - b.v();
        double apart_px = Math.hypot(along_px, up_px);
        if (apart_px < NEAREST_px) {
            throw new Refused("Take two points that lie apart on the picture; the farther, the truer the scale.");
        }
        double east_m = b.x_m() - a.x_m();
        double north_m = b.y_m() - a.y_m();
        double scale = Math.hypot(east_m, north_m) / apart_px;
        if (scale < FINEST_mPerPoint) {
            throw new Refused("The two points lie apart on the picture, so they have a distance in the building too.");
        }
        if (scale * Math.max(width_px, height_px) < NARROWEST_m) {
            throw new Refused("So the whole picture would be less than " + (int) NARROWEST_m
                    + " m wide and high: see the unit of what was typed.");
        }
        double turn = Math.atan2(north_m, east_m) - Math.atan2(up_px, along_px);
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        return new FloorPlan(
                next,
                type,
                width_px,
                height_px,
                a.x_m() - scale * (a.u() * cos + a.v() * sin),
                a.y_m() - scale * (a.u() * sin - a.v() * cos),
                scale,
                Math.atan2(sin, cos));
    }
}
