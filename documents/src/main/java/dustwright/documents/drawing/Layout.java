package dustwright.documents.drawing;

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
 * Where everything lies in the plane of a drawing, y upwards: in metres for a plan or an isometric view, in steps for a scheme.
 *
 * @param runs line of each run, in the direction drawn
 * @param places inlets, stations and points by id
 * @param walls of the building, at the height of their floor
 * @param panel where the control panel stands
 * @param tilt how far a level is shifted up and right per metre of height in a plan, so that nothing hides what lies below it [-]
 */
public record Layout(
        Kind kind,
        Map<String, List<Spot>> runs,
        Map<String, Spot> places,
        List<List<Spot>> walls,
        Optional<Spot> panel,
        double tilt) {
    /** How the plant is seen. */
    public enum Kind {
        PLAN("Plan"),
        ISOMETRIC("Isometric view"),
        SCHEME("Scheme, not to scale");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private static final double COS_30 = Math.sqrt(3) / 2;
    private static final double SIN_30 = 0.5;
    private static final double TILT = 0.22;

    /** True when every run and every inlet of the plant has its place in the building. */
    public static boolean placed(Plant plant) {
        Map<String, Position> known = positions(plant);
        return !plant.runs().isEmpty()
                && plant.runs().stream().allMatch(run -> corners(run, known).isPresent())
                && plant.inlets().stream().allMatch(inlet -> inlet.at().isPresent());
    }

    /** Seen from above; as a scheme where places are not known. */
    public static Layout plan(Plant plant) {
        if (!placed(plant)) {
            return SchemeLayout.of(plant);
        }
        boolean hidden = Overlaps.anyTubingOverTubing(routes(plant)) || Overlaps.anyInletOverInlet(plant.inlets());
        double tilt = hidden ? TILT : 0;
        return projected(plant, Kind.PLAN, tilt);
    }

    /** Seen from the south at 30 degrees, lengths true along the three axes. */
    public static Layout isometric(Plant plant) {
        return projected(plant, Kind.ISOMETRIC, 0);
    }

    private static Layout projected(Plant plant, Kind kind, double tilt) {
        Map<String, List<Spot>> runs = new LinkedHashMap<>();
        routes(plant)
                .forEach((id, corners) -> runs.put(
                        id, corners.stream().map(p -> project(p, kind, tilt)).toList()));
        Map<String, Spot> places = new LinkedHashMap<>();
        positions(plant).forEach((id, position) -> places.put(id, project(position, kind, tilt)));
        List<List<Spot>> walls = plant.site().walls().stream()
                .map(wall ->
                        wall.corners().stream().map(p -> project(p, kind, tilt)).toList())
                .toList();
        Optional<Spot> panel = plant.site().panel().map(p -> project(p, kind, tilt));
        return new Layout(kind, runs, places, walls, panel, tilt);
    }

    static Spot project(Position at, Kind kind, double tilt) {
        if (kind == Kind.ISOMETRIC) {
            return new Spot((at.x_m() - at.y_m()) * COS_30, (at.x_m() + at.y_m()) * SIN_30 + at.z_m());
        }
        return new Spot(at.x_m() + tilt * at.z_m(), at.y_m() + tilt * at.z_m());
    }

    private static Map<String, List<Position>> routes(Plant plant) {
        Map<String, Position> known = positions(plant);
        Map<String, List<Position>> routes = new LinkedHashMap<>();
        for (Run run : plant.runs()) {
            routes.put(run.id(), corners(run, known).orElseThrow());
        }
        return routes;
    }

    private static Optional<List<Position>> corners(Run run, Map<String, Position> known) {
        if (run.route() instanceof Run.Route.Drawn drawn) {
            return Optional.of(drawn.corners());
        }
        Position from = known.get(run.from());
        Position to = known.get(run.to());
        return from == null || to == null ? Optional.empty() : Optional.of(List.of(from, to));
    }

    private static Map<String, Position> positions(Plant plant) {
        Map<String, Position> known = new LinkedHashMap<>();
        for (Point point : plant.points()) {
            point.at().ifPresent(at -> known.put(point.id(), at));
        }
        for (Inlet inlet : plant.inlets()) {
            inlet.at().ifPresent(at -> known.put(inlet.id(), at));
        }
        for (Station station : plant.stations()) {
            station.at().ifPresent(at -> known.put(station.id(), at));
        }
        return known;
    }

    /** Extent of all that is drawn. */
    Box extent() {
        List<Spot> all = new ArrayList<>(places.values());
        runs.values().forEach(all::addAll);
        walls.forEach(all::addAll);
        panel.ifPresent(all::add);
        double left = all.stream().mapToDouble(Spot::x).min().orElse(0);
        double right = all.stream().mapToDouble(Spot::x).max().orElse(1);
        double low = all.stream().mapToDouble(Spot::y).min().orElse(0);
        double high = all.stream().mapToDouble(Spot::y).max().orElse(1);
        return new Box(left, low, right, high);
    }
}
