package dustwright.documents.drawing;

import dustwright.engine.tubing.Position;

/**
 * How a plant lies on its drawing, for a hand that draws on it.
 *
 * <pre>
 * plan:       sheet x = left + scale (x + tilt z)             sheet y = top − scale (y + tilt z)
 * isometric:  sheet x = left + scale (x − y) cos 30°          sheet y = top − scale ((x + y)/2 + z)
 * </pre>
 *
 * @param scale drawing units per metre
 */
public record SheetScale(Layout.Kind kind, double scale, double left, double top, double tilt) {
    /** The scale of the drawing of a layout; of no use for a scheme, which has none. */
    public static SheetScale of(Layout layout) {
        Field field = Field.of(layout);
        Spot origin = field.onSheet(new Spot(0, 0));
        return new SheetScale(layout.kind(), field.perUnit_x(), origin.x(), origin.y(), layout.tilt());
    }

    /** Where a place of the building lies on the sheet. */
    public Spot at(Position place) {
        Spot seen = Layout.project(place, kind, tilt);
        return new Spot(left + scale * seen.x(), top - scale * seen.y());
    }
}
