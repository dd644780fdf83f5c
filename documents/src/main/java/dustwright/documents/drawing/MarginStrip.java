package dustwright.documents.drawing;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.engine.OneUserVelocity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The runs' margins with one user as named bars about the limit, worst at the left; those that find no room are told in words. */
public final class MarginStrip {
    private static final double LEFT = 66;
    private static final double RIGHT = Scene.PAGE_WIDTH - 4;
    private static final double TOP = 14;
    /** Height of the scale, by how far it goes down. */
    private static final double HIGH = 82;

    private static final double LOW = 56;

    private static final double MOST = 1.0;
    private static final double WIDEST = 46;
    private static final double NARROWEST = 17;
    private static final double ROOM_FOR_REST = 96;
    private static final double TEXT = 9.5;
    private static final double NAME = 9;
    private static final int MOST_ROWS = 3;

    private final List<OneUserVelocity> sorted;
    private final List<OneUserVelocity> drawn;
    private final double slot;
    private final Axis axis;
    private final int nameRows;
    private final List<Shape> shapes = new ArrayList<>();

    private MarginStrip(List<OneUserVelocity> velocities) {
        this.sorted = worstFirst(velocities);
        boolean all = sorted.size() * NARROWEST <= RIGHT - LEFT;
        double room = RIGHT - LEFT - (all ? 0 : ROOM_FOR_REST);
        this.drawn = sorted.subList(0, all ? sorted.size() : (int) (room / NARROWEST));
        this.slot = Math.min(WIDEST, room / Math.max(1, drawn.size()));
        double worst = sorted.isEmpty() ? 0 : sorted.get(0).margin();
        double least = worst < -0.5 ? -1 : worst < 0 ? -0.5 : 0;
        this.axis = new Axis(least, MOST, 0.5, TOP + (least < 0 ? HIGH : LOW), TOP);
        double longest = drawn.stream()
                .mapToDouble(one -> Lettering.width(one.run(), NAME, false) + 3)
                .max()
                .orElse(0);
        this.nameRows = (int) Math.max(1, Math.min(MOST_ROWS, Math.ceil(longest / slot)));
    }

    /** Sorted by margin; equal margins in the order of the plant file. */
    public static List<OneUserVelocity> worstFirst(List<OneUserVelocity> velocities) {
        return velocities.stream()
                .sorted(Comparator.comparingDouble(OneUserVelocity::margin))
                .toList();
    }

    public static Scene of(List<OneUserVelocity> velocities) {
        return new MarginStrip(velocities).scene();
    }

    /** True when a bar goes on beyond the end of the scale. */
    public static boolean cuts(List<OneUserVelocity> velocities) {
        return new MarginStrip(velocities).drawn.stream().anyMatch(one -> one.margin() > MOST);
    }

    private Scene scene() {
        for (double tick : axis.ticks()) {
            double y = axis.at(tick);
            String words = Math.abs(tick) < 1e-9 ? "limit" : Show.margin(tick);
            shapes.add(Shape.quiet(LEFT - 7, y + 3.3, words, TEXT, Shape.Anchor.END));
            shapes.add(Shape.line(new Line(Ink.RULE, 0.7, List.of()), new Spot(LEFT - 4, y), new Spot(RIGHT, y)));
        }
        for (int i = 0; i < drawn.size(); i++) {
            bar(drawn.get(i), LEFT + slot * i, i % nameRows);
        }
        rest();
        shapes.add(Shape.line(Line.ink(1.4), new Spot(LEFT - 4, axis.at(0)), new Spot(RIGHT, axis.at(0))));
        double height = axis.at_from() + 8 + nameRows * (NAME + 1.5);
        String title = "Margin of velocity with one user, " + sorted.size() + " runs, worst first";
        return new Scene(Scene.PAGE_WIDTH, height, title, List.of(new Scene.Layer("margins", shapes)));
    }

    private void bar(OneUserVelocity one, double left, int row) {
        MarginClass marginClass = MarginClass.of(one.margin());
        double value = axis.at(Math.min(MOST, one.margin()));
        double zero = axis.at(0);
        double gap = slot * 0.16;
        Box box = new Box(left + gap, Math.min(value, zero), left + slot - gap, Math.max(value, zero));
        Line outline = new Line(marginClass.colour(), 0.8, List.of());
        if (one.margin() < 0) {
            shapes.add(Shape.rectangle(box, outline, Ink.PAPER));
            shapes.addAll(Tint.hatched(box, marginClass.colour()));
        } else {
            shapes.add(Shape.rectangle(box, outline, Tint.pale(marginClass.colour())));
        }
        if (one.margin() > MOST) {
            double middle = left + slot / 2;
            shapes.add(Shape.area(
                    marginClass.colour(),
                    new Line(marginClass.colour(), 0, List.of()),
                    new Spot(middle - 4, TOP - 2),
                    new Spot(middle, TOP - 9),
                    new Spot(middle + 4, TOP - 2)));
        }
        String name = Lettering.fitted(one.run(), NAME, slot * nameRows - 2);
        double y = axis.at_from() + 11 + row * (NAME + 1.5);
        shapes.add(Shape.text(left + slot / 2, y, name, NAME, Shape.Anchor.MIDDLE));
    }

    private void rest() {
        List<OneUserVelocity> rest = sorted.subList(drawn.size(), sorted.size());
        if (!rest.isEmpty()) {
            double x = LEFT + slot * drawn.size() + 8;
            double y = axis.at(0.5);
            String from = Show.margin(rest.get(0).margin());
            String to = Show.margin(rest.get(rest.size() - 1).margin());
            shapes.add(Shape.text(x, y - 4, Figures.count(rest.size()) + " more,", TEXT, Shape.Anchor.START));
            shapes.add(Shape.text(x, y + 9, from + " to " + to, TEXT, Shape.Anchor.START));
        }
    }
}
