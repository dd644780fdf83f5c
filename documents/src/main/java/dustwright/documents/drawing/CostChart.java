package dustwright.documents.drawing;

import dustwright.documents.writing.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What it costs to carry so many users at once: a step for each number, the part that is not shown to be needed hatched by its bound. */
public final class CostChart {
    private static final double LEFT = 88;
    private static final double RIGHT = Scene.PAGE_WIDTH - 150;
    private static final double TOP = 14;
    private static final double BOTTOM = 196;
    private static final double HEIGHT = 234;
    private static final double TEXT = 9.5;
    private static final double HALF_BAR = 0.3;
    private static final double ROOM = 1.15;

    private CostChart() {}

    /**
     * One number of users.
     *
     * @param cost of the cheapest sizes found; empty where there are none
     * @param bound no sizes that hold cost less
     * @param said what stands in the place of a bar
     */
    public record Step(int users, Optional<Double> cost, double bound, String said) {}

    /** Bars over the numbers of users. */
    public static Scene of(List<Step> steps, String currency) {
        List<Shape> shapes = new ArrayList<>();
        double most = steps.stream()
                .flatMap(s -> s.cost().stream())
                .mapToDouble(c -> c)
                .max()
                .orElse(1);
        Axis cost = Axis.fromZero(ROOM * most, 5, BOTTOM, TOP);
        for (double tick : cost.ticks()) {
            double y = cost.at(tick);
            shapes.add(Shape.line(new Line(Ink.RULE, 0.7, List.of()), new Spot(LEFT, y), new Spot(RIGHT, y)));
            shapes.add(Shape.quiet(LEFT - 7, y + 3.3, Figures.count(Math.round(tick)), TEXT, Shape.Anchor.END));
        }
        double width = (RIGHT - LEFT) / steps.size();
        for (int n = 0; n < steps.size(); n++) {
            step(shapes, steps.get(n), cost, LEFT + (n + 0.5) * width, width);
        }
        shapes.add(Shape.line(Line.ink(0.9), new Spot(LEFT, TOP), new Spot(LEFT, BOTTOM), new Spot(RIGHT, BOTTOM)));
        shapes.add(Shape.bold(0, TOP + 4, "Cost", TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, TOP + 17, currency, TEXT, Shape.Anchor.START));
        shapes.add(Shape.bold(LEFT, BOTTOM + 32, "Users at once", TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.line(Line.ink(2), new Spot(RIGHT + 18, TOP + 6), new Spot(RIGHT + 46, TOP + 6)));
        shapes.add(Shape.text(RIGHT + 52, TOP + 9.3, "cheapest found", TEXT, Shape.Anchor.START));
        shapes.add(Shape.line(
                Line.ink(1.2).dashed(4.0, 3.0), new Spot(RIGHT + 18, TOP + 24), new Spot(RIGHT + 46, TOP + 24)));
        shapes.add(Shape.text(RIGHT + 52, TOP + 27.3, "none below", TEXT, Shape.Anchor.START));
        return new Scene(
                Scene.PAGE_WIDTH,
                HEIGHT,
                "Cost of the cheapest sizes by number of users at once",
                List.of(new Scene.Layer("cost", shapes)));
    }

    private static void step(List<Shape> shapes, Step step, Axis cost, double x, double width) {
        shapes.add(Shape.text(x, BOTTOM + 15, String.valueOf(step.users()), TEXT, Shape.Anchor.MIDDLE));
        double left = x - HALF_BAR * width;
        double right = x + HALF_BAR * width;
        if (step.cost().isEmpty()) {
            shapes.add(Shape.quiet(x, BOTTOM - 6, step.said(), TEXT, Shape.Anchor.MIDDLE));
            return;
        }
        double top = cost.at(step.cost().get());
        shapes.add(Shape.line(
                Line.ink(2),
                new Spot(left, BOTTOM),
                new Spot(left, top),
                new Spot(right, top),
                new Spot(right, BOTTOM)));
        shapes.add(Shape.text(x, top - 5, Figures.count(Math.round(step.cost().get())), TEXT, Shape.Anchor.MIDDLE));
        if (Double.isFinite(step.bound()) && step.bound() < step.cost().get() * (1 - 1e-6)) {
            double bound = cost.at(step.bound());
            shapes.add(Shape.line(Line.ink(1.2).dashed(4.0, 3.0), new Spot(left, bound), new Spot(right, bound)));
        }
    }
}
