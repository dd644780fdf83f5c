package dustwright.studio;

import dustwright.engine.tubing.Position;
import dustwright.studio.Skeleton.Kind;
import dustwright.studio.Skeleton.Line;
import dustwright.studio.Skeleton.Node;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What else moves when a place is moved, so that tubing stays square: a tube along one axis takes up a shift along itself and carries
 * any other to its next place; a slanting tube carries all of it. A point takes a shift only where its other tubes take it up; inlets and
 * stations stand until they are moved themselves.
 */
final class Shift {
    private static final double SAME_m = 1e-3;
    private static final double SHORTEST_m = 0.05;

    private final Skeleton skeleton;
    private final Map<Node, Step> moved = new LinkedHashMap<>();

    private record Step(double dx, double dy, double dz) {
        boolean none() {
            return Math.abs(dx) < SAME_m / 2 && Math.abs(dy) < SAME_m / 2 && Math.abs(dz) < SAME_m / 2;
        }

        Position from(Position at) {
            return new Position(at.x_m() + dx, at.y_m() + dy, at.z_m() + dz);
        }
    }

    private Shift(Skeleton skeleton) {
        this.skeleton = skeleton;
    }

    /** New places of all that moves when some places are taken by so much [m]. */
    static Map<Node, Position> of(Skeleton skeleton, List<Node> taken, double dx, double dy, double dz) {
        Shift shift = new Shift(skeleton);
        Step step = new Step(dx, dy, dz);
        taken.forEach(node -> shift.moved.put(node, step));
        taken.forEach(node -> shift.carryFrom(node, step));
        Map<Node, Position> places = new LinkedHashMap<>();
        shift.moved.forEach((node, by) -> places.put(node, by.from(node.at())));
        return places;
    }

    private void carryFrom(Node node, Step step) {
        for (Line line : skeleton.lines()) {
            for (int i = 0; i < line.nodes().size(); i++) {
                if (line.nodes().get(i).equals(node)) {
                    carry(line, i, 1, step).ifPresent(moved::putAll);
                    carry(line, i, -1, step).ifPresent(moved::putAll);
                }
            }
        }
    }

    /** What a line carries along from one of its places; nothing where it would pull an inlet or a station off its place. */
    private Optional<Map<Node, Step>> carry(Line line, int from, int way, Step first) {
        Map<Node, Step> carried = new LinkedHashMap<>();
        Step step = first;
        for (int i = from + way; i >= 0 && i < line.nodes().size(); i += way) {
            Node next = line.nodes().get(i);
            step = left(line.nodes().get(i - way).at(), next.at(), step);
            if (step.none() || moved.containsKey(next)) {
                return Optional.of(carried);
            }
            if (next.kind() == Kind.INLET || next.kind() == Kind.STATION) {
                return Optional.empty();
            }
            if (next.kind() == Kind.POINT && !slides(next, line, step)) {
                return Optional.of(carried);
            }
            carried.put(next, step);
        }
        return Optional.of(carried);
    }

    /** What of a shift a tube does not take up. */
    private static Step left(Position a, Position b, Step step) {
        boolean x = Math.abs(b.x_m() - a.x_m()) > SAME_m;
        boolean y = Math.abs(b.y_m() - a.y_m()) > SAME_m;
        boolean z = Math.abs(b.z_m() - a.z_m()) > SAME_m;
        if (x && !y && !z) {
            return new Step(0, step.dy(), step.dz());
        }
        if (y && !x && !z) {
            return new Step(step.dx(), 0, step.dz());
        }
        return z && !x && !y ? new Step(step.dx(), step.dy(), 0) : step;
    }

    private boolean slides(Node point, Line by, Step step) {
        return skeleton.lines().stream()
                .filter(line -> !line.equals(by))
                .allMatch(line -> takesUp(line, line.nodes().indexOf(point), point, step));
    }

    private static boolean takesUp(Line line, int place, Node point, Step step) {
        if (place < 0) {
            return true;
        }
        Node other = line.nodes().get(place == 0 ? 1 : place - 1);
        Position to = step.from(point.at());
        boolean sameWay = side(other.at().x_m(), to.x_m())
                        == side(other.at().x_m(), point.at().x_m())
                && side(other.at().y_m(), to.y_m())
                        == side(other.at().y_m(), point.at().y_m());
        return left(point.at(), other.at(), step).none()
                && sameWay
                && to.distanceTo(other.at()).metres() >= SHORTEST_m;
    }

    private static int side(double a, double b) {
        return Math.abs(a - b) < SAME_m ? 0 : Double.compare(a, b);
    }
}
