package dustwright.studio;

import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Point;
import dustwright.engine.plant.Station;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plant as what a hand can take: places and the lines between them.
 *
 * @param nodes inlets, stations, points and the panel where they have a place, and the corners of drawn runs
 * @param lines each drawn run from end to end
 */
record Skeleton(List<Node> nodes, List<Line> lines) {
    /** What is taken. */
    enum Kind {
        INLET,
        POINT,
        STATION,
        PANEL,
        CORNER
    }

    /**
     * One place.
     *
     * @param id of the inlet, point or station; of a corner, its run
     * @param corner which of its run's {@code via}; 0 for anything else
     */
    record Node(Kind kind, String id, int corner, Position at) {
        /** Where the plant file says this place. */
        String path() {
            return switch (kind) {
                case INLET -> "inlets." + id + ".at";
                case POINT -> "points." + id;
                case STATION -> "stations." + id + ".at";
                case PANEL -> "panel.at";
                case CORNER -> "runs." + id + ".via[" + corner + "]";
            };
        }
    }

    /** One drawn run. */
    record Line(Run run, List<Node> nodes) {}

    static Skeleton of(Plant plant) {
        Map<String, Node> named = new LinkedHashMap<>();
        for (Point point : plant.points()) {
            point.at().ifPresent(at -> named.put(point.id(), new Node(Kind.POINT, point.id(), 0, at)));
        }
        for (Inlet inlet : plant.inlets()) {
            inlet.at().ifPresent(at -> named.put(inlet.id(), new Node(Kind.INLET, inlet.id(), 0, at)));
        }
        for (Station station : plant.stations()) {
            station.at().ifPresent(at -> named.put(station.id(), new Node(Kind.STATION, station.id(), 0, at)));
        }
        List<Node> nodes = new ArrayList<>(named.values());
        plant.site().panel().ifPresent(at -> nodes.add(new Node(Kind.PANEL, "", 0, at)));
        List<Line> lines = new ArrayList<>();
        for (Run run : plant.runs()) {
            line(run, named).ifPresent(line -> {
                lines.add(line);
                nodes.addAll(line.nodes().subList(1, line.nodes().size() - 1));
            });
        }
        return new Skeleton(List.copyOf(nodes), List.copyOf(lines));
    }

    private static Optional<Line> line(Run run, Map<String, Node> named) {
        Node from = named.get(run.from());
        Node to = named.get(run.to());
        if (from == null || to == null || !(run.route() instanceof Run.Route.Drawn drawn)) {
            return Optional.empty();
        }
        List<Node> nodes = new ArrayList<>();
        nodes.add(from);
        for (int i = 1; i < drawn.corners().size() - 1; i++) {
            nodes.add(new Node(Kind.CORNER, run.id(), i - 1, drawn.corners().get(i)));
        }
        nodes.add(to);
        return Optional.of(new Line(run, List.copyOf(nodes)));
    }

    Optional<Node> node(Kind kind, String id, int corner) {
        return nodes.stream()
                .filter(n -> n.kind() == kind && n.id().equals(id) && n.corner() == corner)
                .findFirst();
    }
}
