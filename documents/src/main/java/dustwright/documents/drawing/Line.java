package dustwright.documents.drawing;

import java.util.List;

/** How a line is drawn: colour, weight and dash in drawing units. */
public record Line(String colour, double weight, List<Double> dash) {
    public Line {
        dash = List.copyOf(dash);
    }

    static Line ink(double weight) {
        return new Line(Ink.INK, weight, List.of());
    }

    static Line edge(double weight) {
        return new Line(Ink.EDGE, weight, List.of());
    }

    Line dashed(Double... lengths) {
        return new Line(colour, weight, List.of(lengths));
    }
}
