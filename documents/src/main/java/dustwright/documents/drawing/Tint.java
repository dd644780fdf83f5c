package dustwright.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** Fills of areas: a pale tint of a colour, or hatching at 45 degrees where the margin is missing. */
final class Tint {
    private static final double PALE = 0.28;
    private static final double HATCH = 4.5;

    private Tint() {}

    static String pale(String colour) {
        StringBuilder out = new StringBuilder("#");
        for (int i = 1; i < colour.length(); i += 2) {
            int part = Integer.parseInt(colour.substring(i, i + 2), 16);
            out.append(String.format(java.util.Locale.ROOT, "%02X", Math.round(255 - (255 - part) * PALE)));
        }
        return out.toString();
    }

    /** Lines at 45 degrees inside an upright box. */
    static List<Shape> hatched(Box box, String colour) {
        List<Shape> lines = new ArrayList<>();
        double height = box.bottom() - box.top();
        double width = box.right() - box.left();
        for (double c = HATCH; c < width + height; c += HATCH) {
            Spot low = c <= width
                    ? new Spot(box.left() + c, box.bottom())
                    : new Spot(box.right(), box.bottom() - (c - width));
            Spot high = c <= height
                    ? new Spot(box.left(), box.bottom() - c)
                    : new Spot(box.left() + (c - height), box.top());
            lines.add(Shape.line(new Line(colour, 1.1, List.of()), low, high));
        }
        return lines;
    }
}
