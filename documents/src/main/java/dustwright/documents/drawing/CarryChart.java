package dustwright.documents.drawing;

import dustwright.documents.writing.Show;
import dustwright.engine.coverage.CarryBySize;
import dustwright.engine.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Users carried, whoever they are, over the motor of the machine that stands in for the producers. */
public final class CarryChart {
    private static final double LEFT = 88;
    private static final double RIGHT = Scene.PAGE_WIDTH - 60;
    private static final double TOP = 22;
    private static final double BOTTOM = 190;
    private static final double HEIGHT = 234;
    private static final double TEXT = 9.5;
    private static final double BAR = 6;

    private final List<CarryBySize> sizes;
    private final Show show;
    private final Axis users;
    private final List<Shape> shapes = new ArrayList<>();

    private CarryChart(List<CarryBySize> sizes, Show show) {
        this.sizes = sizes;
        this.show = show;
        int most = sizes.stream().mapToInt(CarryBySize::asked).max().orElse(1);
        users = new Axis(0, most, Math.max(1, Math.ceil(most / 8.0)), BOTTOM, TOP);
    }

    /** Machines in the order given, one bar each. */
    public static Scene of(List<CarryBySize> sizes, Show show) {
        CarryChart chart = new CarryChart(sizes, show);
        chart.scale();
        chart.bars();
        return new Scene(
                Scene.PAGE_WIDTH,
                HEIGHT,
                "Users carried by machine",
                List.of(new Scene.Layer("users carried", chart.shapes)));
    }

    private void scale() {
        for (double tick : users.ticks()) {
            double y = users.at(tick);
            shapes.add(Shape.line(new Line(Ink.RULE, 0.7, List.of()), new Spot(LEFT, y), new Spot(RIGHT, y)));
            shapes.add(Shape.quiet(LEFT - 7, y + 3.3, users.words(tick), TEXT, Shape.Anchor.END));
        }
        shapes.add(Shape.line(Line.ink(0.9), new Spot(LEFT, BOTTOM), new Spot(RIGHT, BOTTOM)));
        shapes.add(Shape.bold(0, TOP + 4, "Users", TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, TOP + 17, "carried", TEXT, Shape.Anchor.START));
        shapes.add(Shape.bold(0, BOTTOM + 15, "Machine", TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, BOTTOM + 29, "motor, " + show.unit(Dimension.POWER), TEXT, Shape.Anchor.START));
    }

    private void bars() {
        double pitch = (RIGHT - LEFT) / sizes.size();
        for (int n = 0; n < sizes.size(); n++) {
            CarryBySize size = sizes.get(n);
            double x = LEFT + (n + 0.5) * pitch;
            double top = users.at(size.users());
            if (size.users() > 0) {
                shapes.add(Shape.line(Line.ink(BAR), new Spot(x, BOTTOM), new Spot(x, top)));
            }
            String words = size.users() + (size.stop().isEmpty() ? "+" : "");
            shapes.add(Shape.bold(x, top - 5, words, TEXT, Shape.Anchor.MIDDLE));
            String name = Lettering.fitted(size.producer().id(), TEXT - 1, pitch - 2);
            shapes.add(Shape.quiet(x, BOTTOM + 15, name, TEXT - 1, Shape.Anchor.MIDDLE));
            shapes.add(Shape.quiet(
                    x, BOTTOM + 29, show.number(size.producer().nameplate()), TEXT - 1, Shape.Anchor.MIDDLE));
        }
    }
}
