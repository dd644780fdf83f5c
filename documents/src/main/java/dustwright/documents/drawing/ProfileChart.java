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
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Along the path of one inlet: velocity over the least the dust needs, the area between them being the margin; below it the vacuum, growing
 * downwards.
 */
public final class ProfileChart {
    private static final Frame PAPER = new Frame(Scene.PAGE_WIDTH, 246, 88, 36, 20, 112, 130, 196, 9.5);

    /** Wide and low as the place of a page; drawn there no smaller than it is, its lettering is 12 px at least. */
    private static final Frame PAGE = new Frame(990, 190, 110, 56, 14, 78, 93, 144, 12.5);

    private static final double LEAST_WIDTH = 20;
    private static final int MOST_WORDS = 2;
    private static final int NAME_LINES = MOST_WORDS + 1;
    private static final double HEADROOM = 1.35;

    /** The sheet and where on it things stand. */
    private record Frame(
            double width,
            double height,
            double left,
            double rightMargin,
            double velocityTop,
            double velocityBottom,
            double vacuumTop,
            double vacuumBottom,
            double text) {
        double right() {
            return width - rightMargin;
        }

        double below(int lines, double top) {
            return top + 5 + lines * (text + 2.5);
        }

        /** Ticks and names are written a little smaller. */
        double small() {
            return text - 0.5;
        }
    }

    private final PressureProfile profile;
    private final Show show;
    private final Frame frame;
    private final List<Double> edges;
    private final Axis velocity;
    private final Axis vacuum;
    private final @Nullable Stretch tightest;
    private final List<Shape> shapes = new ArrayList<>();

    private ProfileChart(PressureProfile profile, Show show, Frame frame) {
        this.profile = profile;
        this.show = show;
        this.frame = frame;
        this.edges = edges(profile, frame);
        this.velocity =
                Axis.fromZero(greatestTubeVelocity() * HEADROOM, 4, frame.velocityBottom(), frame.velocityTop());
        double deepest = profile.stretches().stream()
                .mapToDouble(s -> Math.max(number(s.vacuumFrom()), number(s.vacuumTo())))
                .max()
                .orElse(1);
        this.vacuum = Axis.fromZero(deepest, 3, frame.vacuumTop(), frame.vacuumBottom());
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
        return new ProfileChart(profile, show, PAPER).draw();
    }

    /** The same for a page one works on. */
    public static Scene live(PressureProfile profile, Show show) {
        return new ProfileChart(profile, show, PAGE).draw();
    }

    private Scene draw() {
        scales();
        for (int i = 0; i < profile.stretches().size(); i++) {
            stretch(i);
        }
        names();
        vacuumLine();
        String title = "Velocity and vacuum along the path from inlet " + profile.inlet() + ", set " + profile.state();
        return new Scene(frame.width(), frame.height(), title, List.of(new Scene.Layer("profile", shapes)));
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
    private static List<Double> edges(PressureProfile profile, Frame frame) {
        int pieces = profile.stretches().size();
        double least = Math.min(LEAST_WIDTH, (frame.right() - frame.left()) / Math.max(1, pieces));
        double free = frame.right() - frame.left() - least * pieces;
        double length_m = profile.stretches().stream()
                .mapToDouble(s -> s.length().metres())
                .sum();
        List<Double> edges = new ArrayList<>(List.of(frame.left()));
        double x = frame.left();
        for (Stretch stretch : profile.stretches()) {
            x += least + (length_m > 0 ? free * stretch.length().metres() / length_m : free / pieces);
            edges.add(x);
        }
        return edges;
    }

    private void scales() {
        shapes.add(Shape.bold(0, frame.velocityTop() + 4, "Velocity", frame.text() + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(
                0,
                frame.below(1, frame.velocityTop()),
                show.unit(Dimension.VELOCITY),
                frame.text(),
                Shape.Anchor.START));
        shapes.add(Shape.bold(0, frame.vacuumTop() + 4, "Vacuum", frame.text() + 0.5, Shape.Anchor.START));
        shapes.add(Shape.quiet(
                0,
                frame.below(1, frame.vacuumTop()),
                show.unit(Dimension.PRESSURE_DIFFERENCE),
                frame.text(),
                Shape.Anchor.START));
        shapes.add(Shape.quiet(0, frame.below(2, frame.vacuumTop()), "below site", frame.text(), Shape.Anchor.START));
        for (Axis axis : List.of(velocity, vacuum)) {
            shapes.add(Shape.line(
                    Line.ink(0.9), new Spot(frame.left(), axis.at_from()), new Spot(frame.left(), axis.at_to())));
            for (double tick : axis.ticks()) {
                shapes.add(Shape.line(
                        Line.edge(0.7),
                        new Spot(frame.left() - 4, axis.at(tick)),
                        new Spot(frame.left(), axis.at(tick))));
                shapes.add(Shape.quiet(
                        frame.left() - 7, axis.at(tick) + 3.3, axis.words(tick), frame.small(), Shape.Anchor.END));
            }
        }
        shapes.add(Shape.line(
                Line.edge(0.7),
                new Spot(frame.left(), frame.velocityBottom()),
                new Spot(frame.right(), frame.velocityBottom())));
        shapes.add(Shape.line(
                Line.edge(0.7), new Spot(frame.left(), frame.vacuumTop()), new Spot(frame.right(), frame.vacuumTop())));
    }

    private void stretch(int i) {
        Stretch stretch = profile.stretches().get(i);
        double left = edges.get(i);
        double right = edges.get(i + 1);
        Line faint = new Line(Ink.RULE, 0.7, List.of());
        shapes.add(Shape.line(faint, new Spot(right, frame.velocityTop()), new Spot(right, frame.vacuumBottom())));
        if (stretch.velocityFrom().isPresent() && stretch.velocityTo().isPresent()) {
            velocityStep(
                    stretch,
                    stretch.velocityFrom().orElseThrow(),
                    stretch.velocityTo().orElseThrow(),
                    left,
                    right);
        }
    }

    /**
     * Below each stretch its name, word under word. Every second one begins a line lower; where there are many, the tightest, both ends and the
     * longest find room first, and what finds none is not written.
     */
    private void names() {
        List<Stretch> stretches = profile.stretches();
        Comparator<Integer> first = Comparator.comparing(
                        (Integer i) -> !stretches.get(i).equals(tightest))
                .thenComparing(i -> i > 0 && i < stretches.size() - 1)
                .thenComparing(i -> -stretches.get(i).length().metres());
        List<List<double[]>> taken = new ArrayList<>();
        for (int line = 0; line < NAME_LINES; line++) {
            taken.add(new ArrayList<>());
        }
        IntStream.range(0, stretches.size()).boxed().sorted(first).forEach(i -> {
            double middle = (edges.get(i) + edges.get(i + 1)) / 2;
            String[] words = stretches.get(i).piece().split(" ", MOST_WORDS);
            for (int row : i % 2 == 0 ? new int[] {0, 1} : new int[] {1, 0}) {
                if (free(taken, words, row, middle)) {
                    write(taken, words, row, middle, stretches.get(i).equals(tightest));
                    return;
                }
            }
        });
    }

    private boolean free(List<List<double[]>> taken, String[] words, int row, double middle) {
        for (int n = 0; n < words.length; n++) {
            double half = Lettering.width(words[n], frame.small(), false) / 2;
            if (taken.get(row + n).stream().anyMatch(t -> middle - half < t[1] && middle + half > t[0])) {
                return false;
            }
        }
        return true;
    }

    private void write(List<List<double[]>> taken, String[] words, int row, double middle, boolean bold) {
        for (int n = 0; n < words.length; n++) {
            double half = Lettering.width(words[n], frame.small(), bold) / 2;
            taken.get(row + n).add(new double[] {middle - half - 1, middle + half + 1});
            double y = frame.vacuumBottom() + 13 + (row + n) * (frame.text() + 1);
            String colour = bold ? Ink.INK : Ink.SECOND;
            shapes.add(new Shape.Text(new Spot(middle, y), words[n], frame.small(), bold, Shape.Anchor.MIDDLE, colour));
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
        if (bold || Lettering.width(written, frame.text(), false) < end.x() - start.x() - 1) {
            double above = Math.min(start.y(), end.y()) - 4;
            double below = Math.max(start.y(), end.y()) + frame.text() + 1.5;
            boolean taken = crossed(most, above);
            boolean takenBelow = crossed(stretch.least().map(this::number), below);
            double overMost = most.map(velocity::at).orElse(above) - 4;
            double lower = aboveLeast(stretch) >= 0 && takenBelow ? overMost : below;
            double y = beyond ? frame.velocityTop() + 2 : taken || aboveLeast(stretch) < 0 ? lower : above;
            Spot at = new Spot((start.x() + end.x()) / 2, y);
            shapes.add(new Shape.Text(at, written, frame.text(), bold, Shape.Anchor.MIDDLE, Ink.INK));
        }
    }

    /** Whether the line of a limit goes through a text that stands at this height. */
    private boolean crossed(Optional<Double> limit, double baseline) {
        return limit.map(velocity::at)
                .filter(y -> y < baseline + 4 && y > baseline - frame.text())
                .isPresent();
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
            shapes.add(Shape.bold(
                    frame.right() + 3, y + 3, show.number(last.vacuumTo()), frame.text(), Shape.Anchor.START));
        }
    }
}
