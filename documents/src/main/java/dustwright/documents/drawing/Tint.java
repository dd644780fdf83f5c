package dustwright.documents.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

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
        return hatched(
                colour,
                new Spot(box.left(), box.bottom()),
                new Spot(box.right(), box.bottom()),
                new Spot(box.right(), box.top()),
                new Spot(box.left(), box.top()));
    }

    /** Lines at 45 degrees inside a shape without a dent, given by its corners. */
    static List<Shape> hatched(String colour, Spot... corners) {
        double first = Stream.of(corners).mapToDouble(s -> s.x() - s.y()).min().orElse(0);
        double last = Stream.of(corners).mapToDouble(s -> s.x() - s.y()).max().orElse(0);
        List<Shape> lines = new ArrayList<>();
        for (double c = first + HATCH; c < last; c += HATCH) {
            List<Spot> ends = crossings(c, corners);
            if (ends.size() >= 2) {
                lines.add(Shape.line(new Line(colour, 1.1, List.of()), ends.get(0), ends.get(ends.size() - 1)));
            }
        }
        return lines;
    }

    /** Where the line x − y = c cuts the edges, from left to right. */
    private static List<Spot> crossings(double c, Spot... corners) {
        List<Spot> found = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            Spot a = corners[i];
            Spot b = corners[(i + 1) % corners.length];
            double from = a.x() - a.y() - c;
            double to = b.x() - b.y() - c;
            if (from * to < 0 || (from == 0 && to != 0)) {
                found.add(a.towards(b, from / (from - to)));
            }
        }
        found.sort(Comparator.comparingDouble(Spot::x));
        return found;
    }
}
