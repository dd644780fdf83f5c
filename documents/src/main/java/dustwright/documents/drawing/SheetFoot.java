package dustwright.documents.drawing;

import dustwright.documents.writing.Figures;
import dustwright.engine.quantity.Units;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The foot of a plant drawing: key of margins, key of symbols, scale bar, north mark. */
record SheetFoot(PlantView view, Floors floors, double top) {
    private static final double HEAD = 29;
    private static final int ROWS = 4;
    private static final double ROW = 13.5;
    private static final double TEXT = 9.5;
    private static final double SECOND_CLASSES = 172;
    private static final double SYMBOLS = 384;
    private static final double SCALE = 514;
    private static final double[] NICE_METRES = {1, 2, 5, 10, 20, 50, 100, 200};
    private static final double LONGEST_BAR = 96;

    static SheetFoot of(PlantView view, Floors floors, double fieldBottom) {
        return new SheetFoot(view, floors, fieldBottom);
    }

    double bottom() {
        return top + HEAD + ROW * (ROWS - 0.5);
    }

    List<Shape> shapes(Field field) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.line(Line.edge(0.7), new Spot(0, top + 1), new Spot(Scene.PAGE_WIDTH, top + 1)));
        if (!view.nothingAsked()) {
            marginKey(shapes);
        }
        symbolKey(shapes);
        if (view.layout().kind() == Layout.Kind.SCHEME) {
            shapes.add(Shape.quiet(SCALE, top + HEAD, "Scheme: places are not given,", TEXT, Shape.Anchor.START));
            shapes.add(Shape.quiet(SCALE, top + HEAD + ROW, "lengths are not to scale.", TEXT, Shape.Anchor.START));
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
            double x = i < ROWS ? 0 : SECOND_CLASSES;
            double y = top + HEAD + ROW * (i % ROWS);
            MarginClass marginClass = classes.get(i);
            shapes.add(Shape.line(marginClass.line(), new Spot(x, y - 3), new Spot(x + 40, y - 3)));
            shapes.add(
                    Shape.text(x + 46, y, marginClass.word() + ", " + marginClass.range(), TEXT, Shape.Anchor.START));
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
        double x = SYMBOLS + 5;
        double y = top + 16;
        shapes.addAll(Symbols.inlet(new Spot(x, y - 3), 4.6, true, false, true));
        symbol(shapes, y, "inlet, open");
        y += ROW;
        shapes.addAll(Symbols.inlet(new Spot(x, y - 3), 4.2, false, false, true));
        symbol(shapes, y, "inlet, closed");
        y += ROW;
        if (!floors.elsewhere().isEmpty()) {
            shapes.addAll(Symbols.inlet(new Spot(x, y - 3), 4.2, false, true, true));
            symbol(shapes, y, "inlet on another floor");
            y += ROW;
        }
        shapes.add(Symbols.arrow(new Spot(x, y - 3), new Spot(x - 1, y - 3), new Spot(x + 1, y - 3)));
        symbol(shapes, y, "direction of flow");
        y += ROW;
        if (!view.letters().isEmpty()) {
            shapes.addAll(Symbols.letter(new Box(x - 6, y - 9, x + 6, y + 3), "a"));
            symbol(shapes, y, view.nothingAsked() ? "named below" : "place of a finding");
        }
    }

    private static void symbol(List<Shape> shapes, double y, String words) {
        shapes.add(Shape.text(SYMBOLS + 17, y, words, TEXT, Shape.Anchor.START));
    }

    private void scaleBar(List<Shape> shapes, double perMetre) {
        double metres = NICE_METRES[0];
        for (double nice : NICE_METRES) {
            metres = nice * perMetre <= LONGEST_BAR ? nice : metres;
        }
        double x = SCALE;
        double y = top + 20;
        double length = metres * perMetre;
        shapes.add(Shape.rectangle(new Box(x, y - 3, x + length / 2, y), Line.ink(0.8), Ink.INK));
        shapes.add(Shape.rectangle(new Box(x + length / 2, y - 3, x + length, y), Line.ink(0.8), Ink.PAPER));
        shapes.add(Shape.text(x, y + 12, "0", TEXT, Shape.Anchor.MIDDLE));
        shapes.add(Shape.text(x + length, y + 12, Figures.fixed(metres, 0) + " m", TEXT, Shape.Anchor.MIDDLE));
        String feet = Figures.fixed(metres / Units.FOOT_m, 0) + " ft";
        shapes.add(Shape.quiet(x + length, y + 12 + ROW, feet, TEXT, Shape.Anchor.MIDDLE));
        String note = view.layout().kind() == Layout.Kind.ISOMETRIC ? "along the three axes" : "";
        if (view.layout().tilt() > 0) {
            note = "higher levels: up and right";
        }
        shapes.add(Shape.quiet(x, top + HEAD + ROW * (ROWS - 1), note, TEXT, Shape.Anchor.START));
    }

    private void north(List<Shape> shapes) {
        Spot middle = new Spot(650, top + 46);
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
