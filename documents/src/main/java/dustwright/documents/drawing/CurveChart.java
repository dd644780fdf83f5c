package dustwright.documents.drawing;

import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.OperatingChart;
import dustwright.engine.OperatingChart.ChartPoint;
import dustwright.engine.StationCurves;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What the plant needs and what the producers give at one station; they meet at the operating point. */
public final class CurveChart {
    private static final double LEFT = 88;
    private static final double RIGHT = Scene.PAGE_WIDTH - 150;
    private static final double TOP = 14;
    private static final double BOTTOM = 196;
    private static final double HEIGHT = 234;
    private static final double TEXT = 9.5;

    private final OperatingChart chart;
    private final Show show;
    private final Axis flow;
    private final Axis vacuum;
    private final List<Shape> shapes = new ArrayList<>();

    private CurveChart(OperatingChart chart, Show show) {
        this.chart = chart;
        this.show = show;
        this.flow = Axis.fromZero(most(p -> number(p.flow())), 6, LEFT, RIGHT);
        this.vacuum = Axis.fromZero(most(p -> number(p.vacuum())), 5, BOTTOM, TOP);
    }

    public static Scene of(OperatingChart chart, Show show) {
        CurveChart drawn = new CurveChart(chart, show);
        drawn.scales();
        drawn.curve(chart.system(), Line.ink(2), "system needs");
        drawn.curve(chart.producer(), Line.ink(2).dashed(9.0, 3.5), "producers give");
        drawn.operatingPoint();
        String title = "System and producer curve of station " + chart.station() + ", set " + chart.state();
        return new Scene(Scene.PAGE_WIDTH, HEIGHT, title, List.of(new Scene.Layer("curves", drawn.shapes)));
    }

    /** What is drawn, below it. */
    public static String caption(OperatingChart chart) {
        return "Set " + chart.state()
                + ". Air that receiver and tubing draw, and air the running producers pass less what the relief"
                + " valve lets in, against vacuum at the producers' inlet.";
    }

    /**
     * Which station, and how many people are on at it in the set drawn.
     *
     * @param oneSet whether no other set was asked in which more could be on
     */
    public static String title(StationCurves curves, boolean oneSet) {
        String users = curves.users() == 0
                ? "nobody on it, what leaks alone"
                : Wording.counted(curves.users(), "user", "users") + " on it";
        return "Station " + curves.chart().station() + ", " + users
                + (oneSet || curves.users() < 2 ? "" : ", the most of any set");
    }

    private double most(java.util.function.ToDoubleFunction<ChartPoint> of) {
        return Stream.of(chart.system(), chart.producer(), List.of(chart.operating()))
                .flatMap(List::stream)
                .mapToDouble(of)
                .max()
                .orElse(1);
    }

    private double number(Quantity quantity) {
        return show.column(quantity.dimension()).number(quantity);
    }

    private Spot spot(ChartPoint point) {
        return new Spot(flow.at(Math.max(0, number(point.flow()))), vacuum.at(Math.max(0, number(point.vacuum()))));
    }

    private void scales() {
        for (double tick : vacuum.ticks()) {
            double y = vacuum.at(tick);
            shapes.add(Shape.line(new Line(Ink.RULE, 0.7, List.of()), new Spot(LEFT, y), new Spot(RIGHT, y)));
            shapes.add(Shape.quiet(LEFT - 7, y + 3.3, vacuum.words(tick), TEXT, Shape.Anchor.END));
        }
        for (double tick : flow.ticks()) {
            double x = flow.at(tick);
            shapes.add(Shape.line(Line.edge(0.7), new Spot(x, BOTTOM), new Spot(x, BOTTOM + 4)));
            shapes.add(Shape.quiet(x, BOTTOM + 15, flow.words(tick), TEXT, Shape.Anchor.MIDDLE));
        }
        shapes.add(Shape.line(Line.ink(0.9), new Spot(LEFT, TOP), new Spot(LEFT, BOTTOM), new Spot(RIGHT, BOTTOM)));
        shapes.add(Shape.bold(0, TOP + 4, "Vacuum", TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, TOP + 17, show.unit(Dimension.PRESSURE_DIFFERENCE), TEXT, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, TOP + 29, "at suction", TEXT, Shape.Anchor.START));
        String flowUnit = show.unit(Dimension.FREE_AIR_FLOW);
        shapes.add(Shape.bold(LEFT, BOTTOM + 32, "Flow", TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(
                LEFT + 27,
                BOTTOM + 32,
                flowUnit + (flowUnit.contains("free") ? "" : ", free air"),
                TEXT,
                Shape.Anchor.START));
    }

    private void curve(List<ChartPoint> points, Line line, String name) {
        if (points.isEmpty()) {
            return;
        }
        shapes.add(new Shape.Path(points.stream().map(this::spot).toList(), line, Ink.NONE, false));
        double y = TOP + (line.dash().isEmpty() ? 6 : 24);
        shapes.add(Shape.line(line, new Spot(RIGHT + 18, y), new Spot(RIGHT + 46, y)));
        shapes.add(Shape.text(RIGHT + 52, y + 3.3, name, TEXT, Shape.Anchor.START));
    }

    private void operatingPoint() {
        Spot at = spot(chart.operating());
        shapes.add(new Shape.Circle(at, 6, Line.ink(1.4), Ink.PAPER));
        for (double[] d : new double[][] {{0, -1}, {0, 1}, {1, 0}, {-1, 0}}) {
            shapes.add(Shape.line(Line.ink(1.4), at.plus(6 * d[0], 6 * d[1]), at.plus(10 * d[0], 10 * d[1])));
        }
        shapes.add(new Shape.Circle(at, 1.6, Line.ink(0.5), Ink.INK));
        double y = TOP + 52;
        shapes.add(Shape.bold(RIGHT + 18, y, "they meet at", TEXT, Shape.Anchor.START));
        shapes.add(Shape.text(RIGHT + 18, y + 13, show.full(chart.operating().flow()), TEXT, Shape.Anchor.START));
        shapes.add(Shape.text(RIGHT + 18, y + 26, show.full(chart.operating().vacuum()), TEXT, Shape.Anchor.START));
    }
}
