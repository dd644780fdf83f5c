package dustwright.documents.drawing;

import dustwright.documents.writing.Show;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.rehearsal.Played;
import dustwright.engine.rehearsal.Played.Lane;
import dustwright.engine.rehearsal.Played.Point;
import dustwright.engine.rehearsal.Played.Span;
import dustwright.engine.rehearsal.Played.Trace;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A rehearsal over time: amounts as curves, below them steps, outputs and lamps as bars. */
public final class RehearsalChart {
    private static final double LEFT = 150;
    private static final double RIGHT = Scene.PAGE_WIDTH - 12;
    private static final double PANEL = 62;
    private static final double GAP = 16;
    private static final double ROW = 14;
    private static final double TEXT = 9.5;
    /** Shorter than this on paper a span would not be seen. */
    private static final double LEAST = 0.8;
    /** Steps of a time axis [s]. */
    private static final double[] STEPS = {10, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400, 43_200, 86_400};

    private static final int MOST_TICKS = 9;
    private static final double DAY_s = 24 * 3600.0;

    private final Played played;
    private final Show show;
    private final double length_ms;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Shape> grid = new ArrayList<>();
    private double y = 12;

    private RehearsalChart(Played played, Show show, double length_ms) {
        this.played = played;
        this.show = show;
        this.length_ms = Math.max(1, length_ms);
    }

    /** The chart. */
    public static Scene of(Played played, Show show) {
        return drawn(new RehearsalChart(played, show, 1000 * played.script().lasts_s()));
    }

    /** The chart of a rehearsal that is still going on: its axis ends at the next even time. */
    public static Scene soFar(Played played, Show show, long now_ms) {
        double now_s = now_ms / 1000.0;
        double even_s = STEPS[STEPS.length - 1] * Math.ceil(now_s / STEPS[STEPS.length - 1]);
        for (int i = STEPS.length - 1; i >= 0; i--) {
            even_s = now_s <= STEPS[i] * MOST_TICKS ? STEPS[i] * Math.max(1, Math.ceil(now_s / STEPS[i])) : even_s;
        }
        return drawn(new RehearsalChart(
                played, show, 1000 * Math.min(even_s, played.script().lasts_s())));
    }

    private static Scene drawn(RehearsalChart chart) {
        chart.played.traces().forEach(chart::panel);
        chart.lanes("Steps", Played.Kind.STEP);
        chart.lanes("Outputs", Played.Kind.OUTPUT);
        chart.lanes("Lamps", Played.Kind.LAMP);
        chart.clock();
        return new Scene(
                Scene.PAGE_WIDTH,
                chart.y + 22,
                "Course of the rehearsal: " + chart.played.script().title(),
                List.of(new Scene.Layer("grid", chart.grid), new Scene.Layer("course", chart.shapes)));
    }

    private double x(double at_ms) {
        return LEFT + (RIGHT - LEFT) * at_ms / length_ms;
    }

    private void panel(Trace trace) {
        double most = Math.max(
                trace.full(),
                trace.points().stream().mapToDouble(Point::value).max().orElse(0));
        Show.Scale scale = show.axis(usual(trace.quantity()));
        double top = y;
        double bottom = y + PANEL;
        Axis axis = Axis.fromZero(1.05 * scale.number(quantity(trace.quantity(), most)), 3, bottom, top);
        String words = trace.quantity().words();
        shapes.add(Shape.bold(
                0,
                top + 6,
                words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1),
                TEXT,
                Shape.Anchor.START));
        shapes.add(Shape.quiet(0, top + 19, scale.symbol(), TEXT, Shape.Anchor.START));
        for (double tick : axis.ticks()) {
            double at = axis.at(tick);
            grid.add(Shape.line(new Line(Ink.RULE, 0.6, List.of()), new Spot(LEFT, at), new Spot(RIGHT, at)));
            shapes.add(Shape.quiet(LEFT - 6, at + 3.2, axis.words(tick), TEXT - 1, Shape.Anchor.END));
        }
        List<Spot> spots = new ArrayList<>();
        for (Point point : trace.points()) {
            Spot spot = new Spot(
                    x((double) point.at_ms()), axis.at(scale.number(quantity(trace.quantity(), point.value()))));
            if (spots.isEmpty() || !spots.get(spots.size() - 1).equals(spot)) {
                spots.add(spot);
            }
        }
        shapes.add(new Shape.Path(spots, Line.ink(1.3), Ink.NONE, false));
        y = bottom + GAP;
    }

    /** What the amount is usually like: it says the unit, however large a peak is. */
    private static Quantity usual(Played.Amount amount) {
        return switch (amount) {
            case RECEIVER, CONTAINER -> new Mass(50);
            case VACUUM -> new PressureDifference(25_000);
            case FILTER -> new PressureDifference(1000);
            case CURRENT -> new ElectricCurrent(20);
        };
    }

    private static Quantity quantity(Played.Amount amount, double value) {
        return switch (amount) {
            case RECEIVER, CONTAINER -> new Mass(value);
            case VACUUM, FILTER -> new PressureDifference(value);
            case CURRENT -> new ElectricCurrent(value);
        };
    }

    /** Only what was on at some time has a row. */
    private void lanes(String title, Played.Kind kind) {
        List<Lane> lanes = played.lanes().stream()
                .filter(l -> l.kind() == kind && !l.spans().isEmpty())
                .toList();
        if (lanes.isEmpty()) {
            return;
        }
        shapes.add(Shape.bold(0, y + 6, title, TEXT, Shape.Anchor.START));
        y += ROW;
        for (Lane lane : lanes) {
            shapes.add(Shape.text(LEFT - 6, y + 6, lane.words(), TEXT - 1, Shape.Anchor.END));
            grid.add(Shape.line(
                    new Line(Ink.RULE, 0.6, List.of()), new Spot(LEFT, y + ROW - 3), new Spot(RIGHT, y + ROW - 3)));
            for (Span span : lane.spans()) {
                double from = x((double) span.from_ms());
                double to = Math.max(from + LEAST, x((double) span.to_ms()));
                shapes.add(Shape.rectangle(new Box(from, y - 1, to, y + 8), Line.ink(0.3), Ink.INK));
            }
            y += ROW;
        }
        y += 6;
    }

    private void clock() {
        double length_s = length_ms / 1000;
        double step_s = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            step_s = length_s / STEPS[i] <= MOST_TICKS ? STEPS[i] : step_s;
        }
        double begins_s = played.script().begins_s();
        for (double at_s = Math.ceil(begins_s / step_s) * step_s; at_s <= begins_s + length_s + 1e-9; at_s += step_s) {
            double at = x(1000 * (at_s - begins_s));
            grid.add(Shape.line(new Line(Ink.RULE, 0.6, List.of()), new Spot(at, 8), new Spot(at, y)));
            long second = Math.round(at_s % DAY_s);
            String minutes = String.format(Locale.ROOT, "%02d:%02d", second / 3600, second % 3600 / 60);
            String words = step_s < 60 ? minutes + String.format(Locale.ROOT, ":%02d", second % 60) : minutes;
            double whole = Scene.PAGE_WIDTH - Lettering.width(words, TEXT, false) / 2;
            shapes.add(Shape.quiet(Math.min(at, whole), y + 13, words, TEXT, Shape.Anchor.MIDDLE));
        }
    }
}
