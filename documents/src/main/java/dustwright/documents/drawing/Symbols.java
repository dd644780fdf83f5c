package dustwright.documents.drawing;

import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import java.util.ArrayList;
import java.util.List;

/** Symbols of the plant's parts, our own. */
final class Symbols {
    static final double RECEIVER_RADIUS = 13;
    static final double PUMP_RADIUS = 9;
    static final double PANEL_WIDE = 6;
    static final double PANEL_HIGH = 9;
    private static final double PUMP_STEP = 24;
    private static final int IMPELLER_VANES = 6;

    private Symbols() {}

    /** An inlet: a circle with its flap as a bar; filled when open, dashed outline when it lies on another floor. */
    static List<Shape> inlet(Spot at, double radius, boolean open, boolean otherFloor, boolean flapBelow) {
        Line outline = otherFloor ? Line.ink(1.1).dashed(2.2, 1.6) : Line.ink(1.2);
        double flap = flapBelow ? radius + 1 : -radius - 1;
        return List.of(
                new Shape.Circle(at, radius, outline, open ? Ink.INK : Ink.PAPER),
                Shape.line(Line.ink(1.2), at.plus(-radius, flap), at.plus(radius, flap)));
    }

    /** A receiver: a double circle with three filter lines. */
    static List<Shape> receiver(Spot at) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Circle(at, RECEIVER_RADIUS, Line.ink(2), Ink.PAPER));
        shapes.add(new Shape.Circle(at, RECEIVER_RADIUS * 0.62, Line.edge(0.8), Ink.NONE));
        for (int i = -1; i <= 1; i++) {
            shapes.add(Shape.line(Line.edge(0.8), at.plus(-4, 3.4 * i), at.plus(4, 3.4 * i)));
        }
        return shapes;
    }

    /** The control panel: a standing plate with two lamps and a button. */
    static List<Shape> panel(Spot at) {
        Box plate = new Box(at.x() - PANEL_WIDE, at.y() - PANEL_HIGH, at.x() + PANEL_WIDE, at.y() + PANEL_HIGH);
        return List.of(
                Shape.rectangle(plate, Line.ink(1.8), Ink.PAPER),
                new Shape.Circle(at.plus(-2.6, -3.6), 1.6, Line.edge(0.8), Ink.NONE),
                new Shape.Circle(at.plus(2.6, -3.6), 1.6, Line.edge(0.8), Ink.NONE),
                new Shape.Circle(at.plus(0, 3.4), 2.2, Line.edge(0.8), Ink.INK));
    }

    /** A vacuum producer: lobes for a lobe pump, vanes for any other machine; dashed when it stands by. */
    static List<Shape> producer(Spot at, VacuumProducer producer) {
        List<Shape> shapes = new ArrayList<>();
        Line outline = producer.standby() ? Line.ink(1.6).dashed(4.0, 2.0) : Line.ink(1.8);
        shapes.add(new Shape.Circle(at, PUMP_RADIUS, outline, Ink.PAPER));
        if (producer.machine() instanceof Machine.LobePump) {
            shapes.add(new Shape.Circle(at.plus(0, -2.9), 2.9, Line.ink(1.1), Ink.NONE));
            shapes.add(new Shape.Circle(at.plus(0, 2.9), 2.9, Line.ink(1.1), Ink.NONE));
            return shapes;
        }
        for (int i = 0; i < IMPELLER_VANES; i++) {
            double angle = 2 * Math.PI * i / IMPELLER_VANES;
            Spot inner = at.plus(2 * Math.cos(angle), 2 * Math.sin(angle));
            Spot outer = at.plus(6.4 * Math.cos(angle + 0.5), 6.4 * Math.sin(angle + 0.5));
            shapes.add(Shape.line(Line.ink(1.1), inner, outer));
        }
        return shapes;
    }

    /** Middle of the n-th producer beside its receiver, to the right or left, one below the other. */
    static Spot producerPlace(Spot receiver, boolean right, int n) {
        return receiver.plus((right ? 1 : -1) * (RECEIVER_RADIUS + 12 + PUMP_RADIUS), n * PUMP_STEP);
    }

    /** Flow direction on tubing: an arrowhead in ink with an edge of paper. */
    static Shape arrow(Spot at, Spot from, Spot to) {
        double length = from.distanceTo(to);
        double ux = (to.x() - from.x()) / length;
        double uy = (to.y() - from.y()) / length;
        return Shape.area(
                Ink.INK,
                new Line(Ink.PAPER, 1, List.of()),
                at.plus(7 * ux, 7 * uy),
                at.plus(-4 * ux - 3.7 * uy, -4 * uy + 3.7 * ux),
                at.plus(-4 * ux + 3.7 * uy, -4 * uy - 3.7 * ux));
    }

    /** A letter that ties a finding to its place: reversed square. */
    static List<Shape> letter(Box box, String letter) {
        return List.of(
                Shape.rectangle(box, new Line(Ink.INK, 0, List.of()), Ink.INK),
                new Shape.Text(
                        new Spot((box.left() + box.right()) / 2, box.bottom() - 3.4),
                        letter,
                        9.5,
                        true,
                        Shape.Anchor.MIDDLE,
                        Ink.PAPER));
    }
}
