package dustwright.plantfile;

import dustwright.engine.finding.Source;
import dustwright.engine.plant.BuildingWall;
import dustwright.engine.plant.Point;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.ElectricResistance;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.LeakCoefficient;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Unit;
import dustwright.engine.quantity.Units;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Fitting;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.RunGeometry;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import dustwright.engine.tubing.Wall;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Makes tubes, hoses, tools, points, inlets and runs. */
final class TubingBinder {
    /** Bend radius where none is stated, in bores. */
    private static final double BEND_RADIUS_bores = 3;

    private final Section top;
    private final Faults faults;
    private final Map<String, Position> places = new LinkedHashMap<>();
    private final Map<String, Tube> tubeById = new LinkedHashMap<>();

    TubingBinder(Section top, Faults faults) {
        this.top = top;
        this.faults = faults;
        top.namedSections("tubes").forEach(t -> tubeById.put(t.id(), tube(t)));
        top.named("points").forEach((id, c) -> {
            if (((Coordinates) c).placed()) {
                places.put((String) id, position((Coordinates) c));
            }
        });
        top.namedSections("inlets").forEach(i -> place(i).ifPresent(p -> places.put(i.id(), p)));
        top.namedSections("stations").forEach(s -> place(s).ifPresent(p -> places.put(s.id(), p)));
    }

    List<Tube> tubes() {
        return List.copyOf(tubeById.values());
    }

    List<Hose> hoses() {
        return top.namedSections("hoses").stream()
                .map(h -> new Hose(
                        h.id(),
                        h.get("bore", Length.class),
                        h.get("length", Length.class),
                        wall(h),
                        h.find("resistance", ElectricResistance.class)))
                .toList();
    }

    List<Tool> tools() {
        return top.namedSections("tools").stream()
                .map(t -> new Tool(t.id(), law(t), HazardBinder.charge(t)))
                .toList();
    }

    List<Point> points() {
        return top.named("points").keySet().stream()
                .map(id -> new Point((String) id, place((String) id)))
                .toList();
    }

    List<Inlet> inlets() {
        return top.namedSections("inlets").stream().map(this::inlet).toList();
    }

    List<Bleed> bleeds() {
        return top.namedSections("bleeds").stream()
                .map(b -> new Bleed(
                        b.id(),
                        b.get("at", String.class),
                        opening(b),
                        b.number("discharge coefficient"),
                        b.get("open", Boolean.class)))
                .toList();
    }

    List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (Section section : top.namedSections("runs")) {
            run(section).ifPresent(runs::add);
        }
        return runs;
    }

    /** Place of a point, inlet or station. */
    Optional<Position> place(String id) {
        return Optional.ofNullable(places.get(id));
    }

    /** Area of an opening said as area or diameter. */
    static Area opening(Section section) {
        return section.find("area", Area.class)
                .orElseGet(() -> section.get("diameter", Length.class).circle());
    }

    private Optional<Position> place(Section section) {
        return section.find("at", Coordinates.class).map(this::position);
    }

    Optional<Position> panel() {
        return top.section("panel").flatMap(this::place);
    }

    List<BuildingWall> walls() {
        List<BuildingWall> walls = new ArrayList<>();
        top.section("site")
                .orElseThrow()
                .named("walls")
                .forEach((id, corners) -> walls.add(new BuildingWall(
                        (String) id,
                        ((List<?>) corners)
                                .stream().map(c -> position((Coordinates) c)).toList())));
        return walls;
    }

    private Position position(Coordinates written) {
        Section plant = top.section("plant").orElseThrow();
        Unit unit = written.anyBare()
                ? Units.find(plant.get("coordinates", String.class), Dimension.LENGTH)
                        .orElseThrow()
                : Units.find("m", Dimension.LENGTH).orElseThrow();
        return written.in(unit);
    }

    private static Tube tube(Section tube) {
        Optional<Length> outside = tube.find("outside", Length.class);
        Length bore = outside.map(o -> new Length(
                        o.metres() - 2 * tube.get("wall", Length.class).metres()))
                .orElseGet(() -> tube.get("bore", Length.class));
        return new Tube(tube.id(), bore, outside, wall(tube), HazardBinder.charge(tube));
    }

    private static Wall wall(Section section) {
        Optional<Wall> factor = section.find("friction", Ratio.class).map(f -> new Wall.FixedFactor(f.value()));
        Optional<Wall> corrugated = section.find("corrugation", Length.class).map(Wall.Corrugated::new);
        return factor.or(() -> corrugated).orElseGet(() -> new Wall.Rough(section.get("roughness", Length.class)));
    }

    private static Tool.Law law(Section tool) {
        if (tool.has("opening")) {
            return new Tool.Law.Opening(tool.get("opening", Area.class), tool.number("discharge coefficient"));
        }
        if (tool.has("curve")) {
            List<Tool.CurvePoint> points = new ArrayList<>();
            for (Object point : tool.items("curve")) {
                List<?> parts = (List<?>) point;
                points.add(new Tool.CurvePoint((PressureDifference) parts.get(0), (FreeAirFlow) parts.get(1)));
            }
            return new Tool.Law.Curve(points);
        }
        return new Tool.Law.VelocityHeads(tool.number("k"));
    }

    private Inlet inlet(Section inlet) {
        Optional<String> dust = inlet.find("dust", String.class);
        return new Inlet(
                inlet.id(),
                place(inlet.id()),
                inlet.get("hose", String.class),
                inlet.get("tool", String.class),
                inlet.number("valve k"),
                inlet.get("leak", LeakCoefficient.class),
                inlet.find("zone", String.class).orElse(""),
                dust,
                dust.isPresent() ? inlet.get("feed", MassFlow.class) : new MassFlow(0));
    }

    private Optional<Run> run(Section section) {
        Tube tube = Objects.requireNonNull(tubeById.get(section.get("tube", String.class)));
        Optional<Run.Route> route = section.has("length") ? Optional.of(measured(section)) : drawn(section, tube);
        return route.map(r -> new Run(
                        section.id(),
                        section.get("from", String.class),
                        section.get("to", String.class),
                        tube.id(),
                        r,
                        section.sections("fittings").stream()
                                .map(TubingBinder::fitting)
                                .toList(),
                        section.find("wye", Angle.class),
                        section.get("dust", Boolean.class)))
                .filter(r -> bendsFit(r, tube, section));
    }

    private Run.Route measured(Section section) {
        Length rise = section.find("rise", Length.class).orElse(new Length(0));
        if (!section.has("rise") && DustBinder.anyFed(top)) {
            section.derive("rise", "0 m");
        }
        return new Run.Route.Measured(section.get("length", Length.class), section.number("k"), rise);
    }

    private Optional<Run.Route> drawn(Section section, Tube tube) {
        List<Position> corners = new ArrayList<>();
        String from = section.get("from", String.class);
        String to = section.get("to", String.class);
        if (place(from).isEmpty() || place(to).isEmpty()) {
            String unplaced = place(from).isEmpty() ? from : to;
            faults.add(
                    section.span(),
                    section.path(),
                    unplaced.equals(Run.STILL_AIR)
                            ? "a run from still air has no drawn start"
                            : unplaced + " has no place, so this run has no length",
                    "\"length\" of the run" + (unplaced.equals(Run.STILL_AIR) ? "" : ", or a place for " + unplaced));
            return Optional.empty();
        }
        corners.add(place(from).orElseThrow());
        section.items("via").forEach(c -> corners.add(position((Coordinates) c)));
        corners.add(place(to).orElseThrow());
        for (int i = 1; i < corners.size(); i++) {
            if (!(corners.get(i).distanceTo(corners.get(i - 1)).metres() > 1e-6)) {
                faults.add(
                        section.span(),
                        section.path(),
                        "two corners of the run lie at the same place (" + i + " and " + (i + 1)
                                + ", both ends counted)",
                        "corners that differ");
                return Optional.empty();
            }
        }
        return Optional.of(new Run.Route.Drawn(corners, bendRadius(section, tube, corners)));
    }

    private static Length bendRadius(Section section, Tube tube, List<Position> corners) {
        return section.find("bend radius", Length.class).orElseGet(() -> {
            Length radius = new Length(BEND_RADIUS_bores * tube.bore().metres());
            if (corners.size() > 2) {
                section.derive("bend radius", "3 bores");
            }
            return radius;
        });
    }

    private boolean bendsFit(Run run, Tube tube, Section section) {
        try {
            return RunGeometry.of(run, tube).straight().metres() >= 0;
        } catch (OutOfRangeException noSuchBend) {
            boolean radius = noSuchBend.symbol().equals("r/D");
            faults.add(
                    section.span(),
                    section.path(),
                    String.valueOf(noSuchBend.getMessage()),
                    radius ? "a \"bend radius\" of 0.5 to 100 bores" : "corners that turn by less than 180°");
            return false;
        } catch (IllegalArgumentException doesNotFit) {
            String message = String.valueOf(doesNotFit.getMessage());
            faults.add(
                    section.span(),
                    section.path(),
                    message.startsWith("run ") ? message.substring(message.indexOf(':') + 2) : message,
                    "bends that fit between the corners");
            return false;
        }
    }

    private static Fitting fitting(Section fitting) {
        return new Fitting(
                fitting.get("name", String.class),
                fitting.number("k"),
                fitting.get("count", Integer.class),
                Source.entered());
    }
}
