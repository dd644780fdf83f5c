package dustwright.documents.drawing;

import dustwright.documents.writing.Show;
import dustwright.engine.discharge.DustFlow.Moment;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Mass;
import dustwright.engine.sheet.DustWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The first week at a station: dust in the container over dust in the receiver, and between them when users vacuum. */
public final class WeekChart {
    private static final double LEFT = 88;
    private static final double RIGHT = Scene.PAGE_WIDTH - 44;
    private static final double CONTAINER_TOP = 14;
    private static final double CONTAINER_BOTTOM = 108;
    private static final double WORK = 122;
    private static final double RECEIVER_TOP = 140;
    private static final double RECEIVER_BOTTOM = 194;
    private static final double HEIGHT = 218;
    private static final double TEXT = 9.5;
    private static final double DAY_s = 24 * 3600.0;
    private static final int DAYS = 7;

    /** Narrower than this a stretch of work would not be seen. */
    private static final double LEAST_WORK = 1.2;

    private final DustWeek week;
    private final Show show;
    private final Axis time = new Axis(0, DAYS * DAY_s, DAY_s, LEFT, RIGHT);
    private final Axis container;
    private final Axis receiver;
    private final List<Shape> shapes = new ArrayList<>();

    private WeekChart(DustWeek week, Show show) {
        this.week = week;
        this.show = show;
        this.container = Axis.fromZero(number(week.line().container_kg()) * 1.05, 4, CONTAINER_BOTTOM, CONTAINER_TOP);
        double most_kg = Math.max(week.line().hopper_kg(), week.flow().highest_kg());
        this.receiver = Axis.fromZero(Math.max(1, number(most_kg) * 1.05), 2, RECEIVER_BOTTOM, RECEIVER_TOP);
    }

    public static Scene of(DustWeek week, Show show) {
        WeekChart chart = new WeekChart(week, show);
        chart.scales();
        chart.work();
        chart.limit(chart.container, week.line().container_kg(), "full");
        chart.course(chart.container, Moment::container_kg);
        if (week.holdUp().isPresent()) {
            chart.limit(chart.receiver, week.line().hopper_kg(), "high level");
        }
        chart.course(chart.receiver, Moment::receiver_kg);
        String title =
                "Dust in container and receiver of station " + week.station() + " over a week, set " + week.set();
        return new Scene(Scene.PAGE_WIDTH, HEIGHT, title, List.of(new Scene.Layer("week", chart.shapes)));
    }

    /** What is drawn, below it. */
    public static String caption(DustWeek week) {
        return "Station " + week.station() + ", first week from empty, all cleaning at the end of each shift with set "
                + week.set() + ". Bars: users vacuum; empty bars: a container is changed. "
                + (week.holdUp().isPresent()
                        ? "Dashed: container full, receiver at its high level."
                        : "Dashed: container full. What the receiver holds is not known.");
    }

    private double number(double mass_kg) {
        return show.column(Dimension.MASS).number(new Mass(mass_kg));
    }

    private void scales() {
        head("Container", CONTAINER_TOP);
        head("Receiver", RECEIVER_TOP);
        shapes.add(Shape.quiet(0, WORK + 3.3, "users vacuum", TEXT, Shape.Anchor.START));
        for (Axis axis : List.of(container, receiver)) {
            for (double tick : axis.ticks()) {
                double y = axis.at(tick);
                shapes.add(Shape.line(new Line(Ink.RULE, 0.7, List.of()), new Spot(LEFT, y), new Spot(RIGHT, y)));
                shapes.add(Shape.quiet(LEFT - 7, y + 3.3, axis.words(tick), TEXT - 0.5, Shape.Anchor.END));
            }
            shapes.add(Shape.line(
                    Line.ink(0.9),
                    new Spot(LEFT, axis.at_to()),
                    new Spot(LEFT, axis.at_from()),
                    new Spot(RIGHT, axis.at_from())));
        }
        for (int day = 0; day < DAYS; day++) {
            double x = time.at(day * DAY_s);
            shapes.add(Shape.line(
                    new Line(Ink.RULE, 0.7, List.of()), new Spot(x, CONTAINER_TOP), new Spot(x, RECEIVER_BOTTOM)));
            shapes.add(Shape.quiet(
                    time.at((day + 0.5) * DAY_s), RECEIVER_BOTTOM + 15, "day " + (day + 1), TEXT, Shape.Anchor.MIDDLE));
        }
    }

    private void head(String name, double top) {
        shapes.add(Shape.bold(0, top + 4, name, TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, top + 17, show.unit(Dimension.MASS), TEXT, Shape.Anchor.START));
    }

    private void limit(Axis axis, double mass_kg, String words) {
        double y = axis.at(number(mass_kg));
        shapes.add(Shape.line(Line.ink(1).dashed(5.0, 3.0), new Spot(LEFT, y), new Spot(RIGHT, y)));
        shapes.add(Shape.quiet(RIGHT + 4, y + 3.3, words, TEXT - 1.5, Shape.Anchor.START));
    }

    private void course(Axis axis, ToDoubleFunction<Moment> mass) {
        List<Spot> spots = new ArrayList<>();
        for (Moment moment : week.flow().line()) {
            Spot spot = new Spot(time.at(moment.at_s()), axis.at(number(mass.applyAsDouble(moment))));
            if (spots.isEmpty() || !spots.get(spots.size() - 1).equals(spot)) {
                spots.add(spot);
            }
        }
        shapes.add(new Shape.Path(spots, Line.ink(1.6), Ink.NONE, false));
    }

    /** A bar while users vacuum, an empty one while they wait for a change. */
    private void work() {
        List<Moment> line = week.flow().line();
        for (int n = 0; n + 1 < line.size(); n++) {
            Moment moment = line.get(n);
            if (moment.collecting() || moment.changing()) {
                double from = time.at(moment.at_s());
                double to = Math.max(from + LEAST_WORK, time.at(line.get(n + 1).at_s()));
                String fill = moment.collecting() ? Ink.INK : Ink.PAPER;
                shapes.add(Shape.rectangle(new Box(from, WORK - 4, to, WORK + 4), Line.ink(0.5), fill));
            }
        }
    }
}
