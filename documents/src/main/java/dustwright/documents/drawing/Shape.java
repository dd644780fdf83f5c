package dustwright.documents.drawing;

import java.util.List;

/** One shape on a sheet. */
public sealed interface Shape {
    /** A line through points; closed and filled where a fill is given. */
    record Path(List<Spot> points, Line line, String fill, boolean closed) implements Shape {
        public Path {
            points = List.copyOf(points);
        }
    }

    /** A circle. */
    record Circle(Spot centre, double radius, Line line, String fill) implements Shape {}

    /** One line of text; {@code at} is the baseline at the anchor. */
    record Text(Spot at, String text, double size, boolean bold, Anchor anchor, String colour) implements Shape {}

    /** A run or an inlet of the plant as one thing that can be pointed at, on a page one works on. */
    record Part(Kind kind, String id, List<Shape> shapes) implements Shape {
        public Part {
            shapes = List.copyOf(shapes);
        }

        /** What a part is. */
        public enum Kind {
            RUN,
            INLET
        }
    }

    /**
     * Something written beside a place, on a page that finds room for it itself: lettering keeps its size there at any zoom.
     *
     * @param clearance how far from the place its symbol reaches
     * @param value and margin what is said of it; empty for nothing
     */
    record Tag(Rank rank, Spot at, double clearance, String name, String value, String margin) implements Shape {
        /** Which tags find room first and how they are written. */
        public enum Rank {
            LETTER,
            CHIEF,
            /** A tube that holds with room to spare: written where one looks close. */
            HOLDS,
            QUIET
        }
    }

    /** Which end of a text stands at its place. */
    enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    static Shape line(Line line, Spot... points) {
        return new Path(List.of(points), line, Ink.NONE, false);
    }

    static Shape area(String fill, Line line, Spot... points) {
        return new Path(List.of(points), line, fill, true);
    }

    static Shape rectangle(Box box, Line line, String fill) {
        return area(
                fill,
                line,
                new Spot(box.left(), box.top()),
                new Spot(box.right(), box.top()),
                new Spot(box.right(), box.bottom()),
                new Spot(box.left(), box.bottom()));
    }

    static Shape text(double x, double y, String text, double size, Anchor anchor) {
        return new Text(new Spot(x, y), text, size, false, anchor, Ink.INK);
    }

    static Shape quiet(double x, double y, String text, double size, Anchor anchor) {
        return new Text(new Spot(x, y), text, size, false, anchor, Ink.SECOND);
    }

    static Shape bold(double x, double y, String text, double size, Anchor anchor) {
        return new Text(new Spot(x, y), text, size, true, anchor, Ink.INK);
    }
}
