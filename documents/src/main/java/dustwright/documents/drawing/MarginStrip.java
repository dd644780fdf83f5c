package dustwright.documents.drawing;

import dustwright.engine.OneUserVelocity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every run's margin with one user as a bar about the limit, worst at the left. */
public final class MarginStrip {
    private static final double LEFT = 66;
    private static final double RIGHT = Scene.PAGE_WIDTH - 4;
    private static final double TOP = 10;
    private static final double BOTTOM = 92;
    private static final double LEAST = -0.5;
    private static final double MOST = 1.0;
    private static final double WIDEST = 46;
    private static final double TEXT = 9.5;
    private static final double ROOM_FOR_NAME = 17;

    private MarginStrip() {}

    /** Sorted by margin; equal margins in the order of the plant file. */
    public static List<OneUserVelocity> worstFirst(List<OneUserVelocity> velocities) {
        return velocities.stream()
                .sorted(Comparator.comparingDouble(OneUserVelocity::margin))
                .toList();
    }

    public static Scene of(List<OneUserVelocity> velocities) {
        List<OneUserVelocity> sorted = worstFirst(velocities);
        Axis axis = new Axis(LEAST, MOST, 0.5, BOTTOM, TOP);
        List<Shape> shapes = new ArrayList<>();
        for (double tick : axis.ticks()) {
            double y = axis.at(tick);
            String words = tick == 0 ? "limit" : (tick < 0 ? "−" : "+") + Math.round(Math.abs(tick) * 100) + " %";
            shapes.add(Shape.quiet(LEFT - 7, y + 3.3, words, TEXT, Shape.Anchor.END));
            shapes.add(Shape.line(new Line(Ink.RULE, 0.7, List.of()), new Spot(LEFT - 4, y), new Spot(RIGHT, y)));
        }
        double slot = Math.min(WIDEST, (RIGHT - LEFT) / Math.max(1, sorted.size()));
        boolean named = slot >= ROOM_FOR_NAME;
        for (int i = 0; i < sorted.size(); i++) {
            bar(shapes, axis, sorted.get(i), LEFT + slot * i, slot, named);
        }
        shapes.add(Shape.line(Line.ink(1.4), new Spot(LEFT - 4, axis.at(0)), new Spot(RIGHT, axis.at(0))));
        double height = BOTTOM + (named ? 22 : 6);
        String title = "Margin of velocity with one user, " + sorted.size() + " runs, worst first";
        return new Scene(Scene.PAGE_WIDTH, height, title, List.of(new Scene.Layer("margins", shapes)));
    }

    private static void bar(
            List<Shape> shapes, Axis axis, OneUserVelocity one, double left, double slot, boolean named) {
        MarginClass marginClass = MarginClass.of(one.margin());
        double value = axis.at(Math.max(LEAST, Math.min(MOST, one.margin())));
        double zero = axis.at(0);
        double gap = slot > 4 ? slot * 0.16 : 0;
        Box box = new Box(left + gap, Math.min(value, zero), left + slot - gap, Math.max(value, zero));
        Line outline = new Line(marginClass.colour(), slot > 4 ? 0.8 : 0, List.of());
        if (one.margin() < 0) {
            shapes.add(Shape.rectangle(box, outline, slot > 4 ? Ink.PAPER : marginClass.colour()));
            if (slot > 4) {
                shapes.addAll(Tint.hatched(box, marginClass.colour()));
            }
        } else {
            shapes.add(Shape.rectangle(box, outline, Tint.pale(marginClass.colour())));
        }
        if (named) {
            String name = Lettering.fitted(one.run(), TEXT, slot - 2);
            shapes.add(Shape.text(left + slot / 2, BOTTOM + 14, name, TEXT, Shape.Anchor.MIDDLE));
        }
    }
}
