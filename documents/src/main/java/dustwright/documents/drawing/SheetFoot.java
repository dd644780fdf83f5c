package dustwright.documents.drawing;

import dustwright.documents.writing.Figures;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The foot of a plant drawing: key of margins, key of symbols, scale bar, north mark. */
record SheetFoot(PlantView view, Floors floors, double top) {
    private static final double HEAD = 29;
    private static final int LEAST_ROWS = 6;
    private static final double ROW = 13.5;
    private static final double TEXT = 9.5;
    private static final double[] NICE_METRES = {1, 2, 5, 10, 20, 50, 100, 200};
    private static final double LONGEST_BAR = 150;

    static SheetFoot of(PlantView view, Floors floors, double fieldBottom) {
        return new SheetFoot(view, floors, fieldBottom);
    }

    double bottom() {
        return top + HEAD + ROW * Math.max(classes().size(), LEAST_ROWS);
    }

    List<Shape> shapes(Field field) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.line(Line.edge(0.7), new Spot(0, top + 1), new Spot(Scene.PAGE_WIDTH, top + 1)));
        marginKey(shapes);
        symbolKey(shapes);
        if (view.layout().kind() == Layout.Kind.SCHEME) {
            shapes.add(Shape.quiet(452, top + 22, "Scheme: places are not given,", TEXT, Shape.Anchor.START));
            shapes.add(Shape.quiet(452, top + 22 + ROW, "lengths are not to scale.", TEXT, Shape.Anchor.START));
        } else {
            scaleBar(shapes, field.perUnit_x());
            north(shapes);
        }
        return shapes;
    }

    private void marginKey(List<Shape> shapes) {
        shapes.add(Shape.bold(0, top + 16, "Margin to the nearest limit", TEXT + 0.5, Shape.Anchor.START));
        List<MarginClass> classes = classes();
        for (int i = 0; i < classes.size(); i++) {
            double y = top + HEAD + ROW * i;
            MarginClass marginClass = classes.get(i);
            shapes.add(Shape.line(marginClass.line(), new Spot(0, y - 3), new Spot(60, y - 3)));
            shapes.add(Shape.text(68, y, marginClass.word() + ", " + marginClass.range(), TEXT, Shape.Anchor.START));
        }
    }

    /** The five classes always, the others where they occur. */
    private List<MarginClass> classes() {
        Set<MarginClass> shown =
                EnumSet.of(MarginClass.FAR, MarginClass.SHORT, MarginClass.THIN, MarginClass.FAIR, MarginClass.AMPLE);
        view.layout().runs().keySet().forEach(id -> shown.add(view.look(id).marginClass()));
        return List.copyOf(shown);
    }

    private void symbolKey(List<Shape> shapes) {
        double x = 268;
        double y = top + 29;
        shapes.addAll(Symbols.inlet(new Spot(x, y - 3), 4.6, true, false, true));
        shapes.add(Shape.text(x + 12, y, "inlet, open", TEXT, Shape.Anchor.START));
        shapes.addAll(Symbols.inlet(new Spot(x, y + ROW - 3), 4.2, false, false, true));
        shapes.add(Shape.text(x + 12, y + ROW, "inlet, closed", TEXT, Shape.Anchor.START));
        double next = y + 2 * ROW;
        if (!floors.elsewhere().isEmpty()) {
            shapes.addAll(Symbols.inlet(new Spot(x, next - 3), 4.2, false, true, true));
            shapes.add(Shape.text(x + 12, next, "inlet on another floor", TEXT, Shape.Anchor.START));
            next += ROW;
        }
        shapes.add(Symbols.arrow(new Spot(x, next - 3), new Spot(x - 1, next - 3), new Spot(x + 1, next - 3)));
        shapes.add(Shape.text(x + 12, next, "direction of flow", TEXT, Shape.Anchor.START));
        next += ROW;
        if (!view.letters().isEmpty()) {
            shapes.addAll(Symbols.letter(new Box(x - 6, next - 10, x + 6, next + 2), "a"));
            shapes.add(Shape.text(x + 12, next, "finding of the list", TEXT, Shape.Anchor.START));
        }
    }

    private void scaleBar(List<Shape> shapes, double perMetre) {
        double metres = NICE_METRES[0];
        for (double nice : NICE_METRES) {
            metres = nice * perMetre <= LONGEST_BAR ? nice : metres;
        }
        double x = 428;
        double y = top + 40;
        double length = metres * perMetre;
        shapes.add(Shape.rectangle(new Box(x, y - 3, x + length / 2, y), Line.ink(0.8), Ink.INK));
        shapes.add(Shape.rectangle(new Box(x + length / 2, y - 3, x + length, y), Line.ink(0.8), Ink.PAPER));
        shapes.add(Shape.text(x, y + 12, "0", TEXT, Shape.Anchor.MIDDLE));
        shapes.add(Shape.text(x + length, y + 12, Figures.fixed(metres, 0) + " m", TEXT, Shape.Anchor.MIDDLE));
        String feet = Figures.fixed(metres / 0.3048, 0) + " ft";
        shapes.add(Shape.quiet(x + length, y + 12 + ROW, feet, TEXT, Shape.Anchor.MIDDLE));
        String note = view.layout().kind() == Layout.Kind.ISOMETRIC ? "along the three axes" : "";
        if (view.layout().tilt() > 0) {
            note = "higher levels are shifted up and right";
        }
        shapes.add(Shape.quiet(x, y + 12 + 2.2 * ROW, note, TEXT, Shape.Anchor.START));
    }

    private void north(List<Shape> shapes) {
        Spot middle = new Spot(640, top + 46);
        Spot north =
                view.layout().kind() == Layout.Kind.ISOMETRIC ? new Spot(-Math.sqrt(3) / 2, -0.5) : new Spot(0, -1);
        Spot tip = middle.plus(26 * north.x(), 26 * north.y());
        shapes.add(new Shape.Circle(middle, 15, Line.edge(0.8), Ink.NONE));
        shapes.add(Shape.line(Line.ink(1.2), middle.plus(-15 * north.x(), -15 * north.y()), tip));
        shapes.add(Shape.area(
                Ink.INK,
                Line.ink(0.5),
                tip,
                tip.plus(-9 * north.x() - 3 * north.y(), -9 * north.y() + 3 * north.x()),
                tip.plus(-9 * north.x() + 3 * north.y(), -9 * north.y() - 3 * north.x())));
        shapes.add(Shape.bold(tip.x() + 9 * north.x(), tip.y() + 10 * north.y() + 4, "N", 11, Shape.Anchor.MIDDLE));
    }
}
