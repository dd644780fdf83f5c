package dustwright.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** A label of one or two lines: a name, and what is said of it. */
record Label(Style style, String name, String beside, String below) {
    private static final double WORD_SPACE = 3;
    private static final double BELOW_BASELINE = 0.25;

    /** Size of the lettering, and whether the name is bold and in full ink. */
    record Style(double size, boolean bold) {}

    static Label of(Style style, String name) {
        return new Label(style, name, "", "");
    }

    static Label of(Style style, String name, String beside) {
        return new Label(style, name, beside, "");
    }

    static Label stacked(Style style, String name, String beside, String below) {
        return new Label(style, name, beside, below);
    }

    private double nameWidth() {
        return Lettering.width(name, style.size(), style.bold());
    }

    double width() {
        double first = nameWidth() + (beside.isEmpty() ? 0 : WORD_SPACE + Lettering.width(beside, style.size(), false));
        return Math.max(first, Lettering.width(below, style.size(), false));
    }

    double height() {
        return style.size() * LabelPlacer.LINE * (below.isEmpty() ? 1 : 2);
    }

    List<Shape> shapes(Box box) {
        List<Shape> shapes = new ArrayList<>();
        double lineHeight = style.size() * LabelPlacer.LINE;
        double baseline = box.top() + lineHeight - style.size() * BELOW_BASELINE;
        String colour = style.bold() ? Ink.INK : Ink.SECOND;
        shapes.add(new Shape.Text(
                new Spot(box.left(), baseline), name, style.size(), style.bold(), Shape.Anchor.START, colour));
        if (!beside.isEmpty()) {
            double x = box.left() + nameWidth() + WORD_SPACE;
            shapes.add(Shape.text(x, baseline, beside, style.size(), Shape.Anchor.START));
        }
        if (!below.isEmpty()) {
            shapes.add(Shape.text(box.left(), baseline + lineHeight, below, style.size(), Shape.Anchor.START));
        }
        return shapes;
    }
}
