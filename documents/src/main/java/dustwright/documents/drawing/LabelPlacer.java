package dustwright.documents.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Places labels one after the other in a fixed order, so that the same plant gives the same drawing. A label touches no tubing, no
 * symbol, no other label; what finds no place is left out.
 */
final class LabelPlacer {
    /** Height of a line of text over its size. */
    static final double LINE = 1.15;

    private static final double GAP = 2;
    private static final double[][] DIRECTIONS = {{1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {0, -1}, {0, 1}, {1, 0}, {-1, 0}};
    private static final double[] REACH = {0, 7, 16, 28, 44};

    private final Box sheet;
    private final List<Segment> tubing = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();

    LabelPlacer(Box sheet) {
        this.sheet = sheet;
    }

    /**
     * A straight line nothing may be written on.
     *
     * @param reach upright rectangle round all of it: what does not meet that need not be clipped
     */
    private record Segment(Spot from, Spot to, double halfWidth, Box reach) {
        static Segment of(Spot from, Spot to, double halfWidth) {
            Box between = new Box(
                    Math.min(from.x(), to.x()),
                    Math.min(from.y(), to.y()),
                    Math.max(from.x(), to.x()),
                    Math.max(from.y(), to.y()));
            return new Segment(from, to, halfWidth, between.grown(halfWidth));
        }

        boolean crosses(Box box) {
            return box.touches(reach) && box.grown(halfWidth).crossedBy(from, to);
        }
    }

    /** Where a text of given size stands, and the line that leads to it when it stands apart. */
    record Placed(Box box, Optional<List<Spot>> leader) {}

    void keepClear(Spot from, Spot to, double width) {
        tubing.add(Segment.of(from, to, width / 2 + 1));
    }

    void keepClear(Box box) {
        taken.add(box);
    }

    /** A free box of this width and height near a place, first of eight directions, nearest first. */
    Optional<Placed> place(Spot anchor, double clearance, double width, double height) {
        for (double reach : REACH) {
            for (double[] direction : DIRECTIONS) {
                Placed candidate = candidate(anchor, clearance, reach, direction, width, height);
                if (free(candidate)) {
                    taken.add(candidate.box());
                    candidate.leader().ifPresent(line -> keepClear(line.get(0), line.get(1), 1));
                    return Optional.of(candidate);
                }
            }
        }
        return Optional.empty();
    }

    private static Placed candidate(
            Spot anchor, double clearance, double reach, double[] direction, double width, double height) {
        double straight = direction[0] != 0 && direction[1] != 0 ? 0.75 : 1;
        double away = (clearance + GAP + reach) * straight;
        Spot foot = anchor.plus(direction[0] * away, direction[1] * away);
        double left = foot.x() + (direction[0] - 1) / 2 * width;
        double top = foot.y() + (direction[1] - 1) / 2 * height;
        Box box = new Box(left, top, left + width, top + height);
        if (reach == 0) {
            return new Placed(box, Optional.empty());
        }
        Spot start = anchor.plus(direction[0] * (clearance + 0.5), direction[1] * (clearance + 0.5));
        Spot end = foot.plus(-direction[0] * GAP / 2, -direction[1] * GAP / 2);
        return new Placed(box, Optional.of(List.of(start, end)));
    }

    private boolean free(Placed candidate) {
        Box box = candidate.box();
        return box.within(sheet)
                && !meetsTaken(box)
                && !crossedByTubing(box)
                && candidate.leader().map(line -> !crossesTaken(line)).orElse(true);
    }

    // Plain loops: a drawing of a large plant asks these questions a hundred thousand times.

    private boolean meetsTaken(Box box) {
        for (Box other : taken) {
            if (box.meets(other)) {
                return true;
            }
        }
        return false;
    }

    private boolean crossedByTubing(Box box) {
        for (Segment segment : tubing) {
            if (segment.crosses(box)) {
                return true;
            }
        }
        return false;
    }

    private boolean crossesTaken(List<Spot> line) {
        for (Box other : taken) {
            if (other.crossedBy(line.get(0), line.get(1))) {
                return true;
            }
        }
        return false;
    }
}
