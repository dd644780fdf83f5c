package dustwright.documents.drawing;

import dustwright.documents.writing.Show;
import dustwright.engine.PressureProfile;
import dustwright.engine.PressureProfile.Stretch;
import dustwright.engine.finding.Side;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Velocity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Along the path of one inlet: velocity over the least the dust needs, the area between them being the margin; below it the vacuum, growing
 * downwards.
 */
public final class ProfileChart {
    private static final double LEFT = 88;
    private static final double RIGHT = Scene.PAGE_WIDTH - 36;
    private static final double VELOCITY_TOP = 20;
    private static final double VELOCITY_BOTTOM = 112;
    private static final double VACUUM_TOP = 130;
    private static final double VACUUM_BOTTOM = 196;
    private static final double HEIGHT = 246;
    private static final double LEAST_WIDTH = 20;
    private static final double TEXT = 9.5;
    private static final int MOST_WORDS = 3;
    private static final double MOST_OVERLAP = 1.5;
    private static final double HEADROOM = 1.35;

    private final PressureProfile profile;
    private final Show show;
    private final List<Double> edges;
    private final Axis velocity;
    private final Axis vacuum;
    private final @Nullable Stretch tightest;
    private final List<Shape> shapes = new ArrayList<>();

    private ProfileChart(PressureProfile profile, Show show) {
        this.profile = profile;
        this.show = show;
        this.edges = edges(profile);
        this.velocity = Axis.fromZero(greatestTubeVelocity() * HEADROOM, 4, VELOCITY_BOTTOM, VELOCITY_TOP);
        double deepest = profile.stretches().stream()
                .mapToDouble(s -> Math.max(number(s.vacuumFrom()), number(s.vacuumTo())))
                .max()
                .orElse(1);
        this.vacuum = Axis.fromZero(deepest, 3, VACUUM_TOP, VACUUM_BOTTOM);
        this.tightest = profile.stretches().stream()
                .filter(s -> s.least().isPresent() || s.most().isPresent())
                .min(Comparator.comparingDouble(this::nearest))
                .orElse(null);
    }

    /** Margin to the nearer of the two limits of a piece. */
    private double nearest(Stretch stretch) {
        return Math.min(aboveLeast(stretch), belowMost(stretch));
    }

    private double aboveLeast(Stretch stretch) {
        return stretch.least()
                .map(this::number)
                .map(least -> Side.AT_LEAST.margin(slowest(stretch), least))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double belowMost(Stretch stretch) {
        return stretch.most()
                .map(this::number)
                .map(most -> Side.AT_MOST.margin(fastest(stretch), most))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double slowest(Stretch stretch) {
        return Math.min(
                stretch.velocityFrom().map(this::number).orElse(0.0),
                stretch.velocityTo().map(this::number).orElse(0.0));
    }

    public static Scene of(PressureProfile profile, Show show) {
        ProfileChart chart = new ProfileChart(profile, show);
        chart.scales();
        for (int i = 0; i < profile.stretches().size(); i++) {
            chart.stretch(i);
        }
        chart.vacuumLine();
        String title = "Velocity and vacuum along the path from inlet " + profile.inlet() + ", set " + profile.state();
        return new Scene(Scene.PAGE_WIDTH, HEIGHT, title, List.of(new Scene.Layer("profile", chart.shapes)));
    }

    /** Limits scale the axis, hoses do not: what lies beyond it is written with an arrow. */
    private double greatestTubeVelocity() {
        double most = profile.stretches().stream()
                .filter(s -> s.least().isPresent())
                .mapToDouble(s -> Math.max(number(s.least().orElseThrow()), fastest(s)))
                .max()
                .orElse(0);
        return most > 0
                ? most
                : profile.stretches().stream().mapToDouble(this::fastest).max().orElse(1);
    }

    private double fastest(Stretch stretch) {
        return Math.max(
                stretch.velocityFrom().map(this::number).orElse(0.0),
                stretch.velocityTo().map(this::number).orElse(0.0));
    }

    /** In the reader's unit. */
    private double number(Quantity quantity) {
        return show.column(quantity.dimension()).number(quantity);
    }

    /** Pieces by their length, none narrower than can be seen. */
    private static List<Double> edges(PressureProfile profile) {
        int pieces = profile.stretches().size();
        double least = Math.min(LEAST_WIDTH, (RIGHT - LEFT) / Math.max(1, pieces));
        double free = RIGHT - LEFT - least * pieces;
        double length_m = profile.stretches().stream()
                .mapToDouble(s -> s.length().metres())
                .sum();
        List<Double> edges = new ArrayList<>(List.of(LEFT));
        double x = LEFT;
        for (Stretch stretch : profile.stretches()) {
            x += least + (length_m > 0 ? free * stretch.length().metres() / length_m : free / pieces);
            edges.add(x);
        }
        return edges;
    }

    private void scales() {
        shapes.add(Shape.bold(0, VELOCITY_TOP + 4, "Velocity", TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, VELOCITY_TOP + 17, show.unit(Dimension.VELOCITY), TEXT, Shape.Anchor.START));
        shapes.add(Shape.bold(0, VACUUM_TOP + 4, "Vacuum", TEXT + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, VACUUM_TOP + 17, show.unit(Dimension.PRESSURE_DIFFERENCE), TEXT, Shape.Anchor.START));
        shapes.add(Shape.quiet(0, VACUUM_TOP + 29, "below site", TEXT, Shape.Anchor.START));
        for (Axis axis : List.of(velocity, vacuum)) {
            shapes.add(Shape.line(Line.ink(0.9), new Spot(LEFT, axis.at_from()), new Spot(LEFT, axis.at_to())));
            for (double tick : axis.ticks()) {
                shapes.add(
                        Shape.line(Line.edge(0.7), new Spot(LEFT - 4, axis.at(tick)), new Spot(LEFT, axis.at(tick))));
                shapes.add(Shape.quiet(LEFT - 7, axis.at(tick) + 3.3, axis.words(tick), TEXT - 0.5, Shape.Anchor.END));
            }
        }
        shapes.add(Shape.line(Line.edge(0.7), new Spot(LEFT, VELOCITY_BOTTOM), new Spot(RIGHT, VELOCITY_BOTTOM)));
        shapes.add(Shape.line(Line.edge(0.7), new Spot(LEFT, VACUUM_TOP), new Spot(RIGHT, VACUUM_TOP)));
    }

    private void stretch(int i) {
        Stretch stretch = profile.stretches().get(i);
        double left = edges.get(i);
        double right = edges.get(i + 1);
        Line faint = new Line(Ink.RULE, 0.7, List.of());
        shapes.add(Shape.line(faint, new Spot(right, VELOCITY_TOP), new Spot(right, VACUUM_BOTTOM)));
        name(stretch, i % 2, left, right);
        if (stretch.velocityFrom().isPresent() && stretch.velocityTo().isPresent()) {
            velocityStep(
                    stretch,
                    stretch.velocityFrom().orElseThrow(),
                    stretch.velocityTo().orElseThrow(),
                    left,
                    right);
        }
    }

    /** Below the stretch, word under word, every second one a line lower; a word that finds no room is cut in its middle. */
    private void name(Stretch stretch, int row, double left, double right) {
        double y = VACUUM_BOTTOM + 13 + row * (TEXT + 1);
        boolean bold = stretch.equals(tightest);
        for (String word : stretch.piece().split(" ", MOST_WORDS)) {
            String name = Lettering.fitted(word, TEXT - 0.5, (right - left) * MOST_OVERLAP);
            shapes.add(new Shape.Text(
                    new Spot((left + right) / 2, y),
                    name,
                    TEXT - 0.5,
                    bold,
                    Shape.Anchor.MIDDLE,
                    bold ? Ink.INK : Ink.SECOND));
            y += TEXT + 1;
        }
    }

    private void velocityStep(Stretch stretch, Velocity from, Velocity to, double left, double right) {
        Spot start = new Spot(left, velocity.at(Math.min(number(from), velocity.to())));
        Spot end = new Spot(right, velocity.at(Math.min(number(to), velocity.to())));
        Optional<Double> most = stretch.most().map(this::number).filter(m -> m <= velocity.to());
        stretch.least().ifPresent(least -> margin(aboveLeast(stretch), velocity.at(number(least)), start, end, true));
        most.ifPresent(m -> margin(belowMost(stretch), velocity.at(m), start, end, false));
        if (slowest(stretch) <= velocity.to()) {
            String colour = asked(stretch) ? MarginClass.of(nearest(stretch)).colour() : MarginClass.NOT_ASKED.colour();
            shapes.add(Shape.line(new Line(colour, 2.4, List.of()), start, end));
        }
        value(stretch, start, end, most);
    }

    private static boolean asked(Stretch stretch) {
        return stretch.least().isPresent() || stretch.most().isPresent();
    }

    /** The slowest of a piece where it finds room; at the tightest piece, always, the one nearest to its limit. */
    private void value(Stretch stretch, Spot start, Spot end, Optional<Double> most) {
        boolean bold = stretch.equals(tightest);
        boolean wears = bold && belowMost(stretch) < aboveLeast(stretch);
        double value = wears ? fastest(stretch) : slowest(stretch);
        boolean beyond = value > velocity.to();
        String written = (beyond ? "↑ " : "") + show.column(Dimension.VELOCITY).text(value);
        if (bold || Lettering.width(written, TEXT, false) < end.x() - start.x() - 1) {
            double above = Math.min(start.y(), end.y()) - 4;
            boolean taken = most.map(velocity::at)
                    .filter(y -> y < above + 4 && y > above - TEXT)
                    .isPresent();
            double below = Math.max(start.y(), end.y()) + 11;
            double y = beyond ? VELOCITY_TOP + 2 : taken || aboveLeast(stretch) < 0 ? below : above;
            Spot at = new Spot((start.x() + end.x()) / 2, y);
            shapes.add(new Shape.Text(at, written, TEXT, bold, Shape.Anchor.MIDDLE, Ink.INK));
        }
    }

    /** The area between a limit and the velocity: pale where it is a margin, hatched where it is missing; none for what is below a most. */
    private void margin(double margin, double limit, Spot start, Spot end, boolean pale) {
        Spot left = new Spot(start.x(), limit);
        Spot right = new Spot(end.x(), limit);
        String colour = MarginClass.of(margin).colour();
        if (margin < 0) {
            boolean crosses = (start.y() - limit) * (end.y() - limit) < 0;
            Spot last = crosses ? start.towards(end, (limit - start.y()) / (end.y() - start.y())) : right;
            boolean missingAtStart = pale == start.y() > limit;
            if (!crosses) {
                shapes.addAll(Tint.hatched(colour, start, end, right, left));
            } else if (missingAtStart) {
                shapes.addAll(Tint.hatched(colour, start, last, left));
            } else {
                shapes.addAll(Tint.hatched(colour, last, end, right));
            }
        } else if (pale) {
            shapes.add(Shape.area(Tint.pale(colour), new Line(Ink.INK, 0, List.of()), start, end, right, left));
        }
        shapes.add(Shape.line(Line.ink(1.1).dashed(6.0, 3.0), left, right));
    }

    private void vacuumLine() {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i < profile.stretches().size(); i++) {
            Stretch stretch = profile.stretches().get(i);
            line.add(new Spot(edges.get(i), vacuum.at(number(stretch.vacuumFrom()))));
            line.add(new Spot(edges.get(i + 1), vacuum.at(number(stretch.vacuumTo()))));
        }
        shapes.add(new Shape.Path(line, Line.ink(1.8), Ink.NONE, false));
        if (!profile.stretches().isEmpty()) {
            Stretch last = profile.stretches().get(profile.stretches().size() - 1);
            double y = vacuum.at(number(last.vacuumTo()));
            shapes.add(Shape.bold(RIGHT + 3, y + 3, show.number(last.vacuumTo()), TEXT, Shape.Anchor.START));
        }
    }
}
