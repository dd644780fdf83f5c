package dustwright.documents.drawing;

/**
 * The part of the sheet the plant lies in, and how layout becomes sheet.
 *
 * @param perUnit_x drawing units per metre across
 * @param perUnit_y the same upwards; differs in a scheme only, which is not to scale
 */
record Field(Box box, Box extent, double perUnit_x, double perUnit_y, Spot origin) {
    private static final double MARGIN_SIDE = 62;
    private static final double MARGIN_TOP = 26;
    private static final double HIGHEST = 700;
    private static final double LEAST_HEIGHT = 220;
    private static final double LEAST_EXTENT_m = 0.5;
    private static final double WIDEST_SCHEME_COLUMN = 90;
    private static final double HIGHEST_SCHEME_ROW = 26;

    static Field of(Layout layout) {
        Box extent = layout.extent();
        double wide = Math.max(extent.right() - extent.left(), LEAST_EXTENT_m);
        double high = Math.max(extent.bottom() - extent.top(), LEAST_EXTENT_m);
        double across = (Scene.PAGE_WIDTH - 2 * MARGIN_SIDE) / wide;
        double up = (HIGHEST - 2 * MARGIN_TOP) / high;
        if (layout.kind() == Layout.Kind.SCHEME) {
            across = Math.min(across, WIDEST_SCHEME_COLUMN);
            up = Math.min(up, HIGHEST_SCHEME_ROW);
        } else {
            across = Math.min(across, up);
            up = across;
        }
        double top = Math.max(MARGIN_TOP, (LEAST_HEIGHT - high * up) / 2);
        double height = high * up + 2 * top;
        Spot origin = new Spot((Scene.PAGE_WIDTH - wide * across) / 2, top);
        return new Field(new Box(0, 0, Scene.PAGE_WIDTH, height), extent, across, up, origin);
    }

    /** A place of the layout (y up) on the sheet (y down). */
    Spot onSheet(Spot spot) {
        return new Spot(
                origin.x() + (spot.x() - extent.left()) * perUnit_x,
                origin.y() + (extent.bottom() - spot.y()) * perUnit_y);
    }
}
