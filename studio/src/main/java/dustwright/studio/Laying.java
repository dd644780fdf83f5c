package dustwright.studio;

import dustwright.documents.drawing.SheetScale;
import dustwright.documents.drawing.Spot;
import dustwright.engine.plant.BuildingWall;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Point;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.tubing.BendLoss;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.RunGeometry;
import dustwright.studio.Pencil.Cannot;
import dustwright.studio.Skeleton.Kind;
import dustwright.studio.Skeleton.Line;
import dustwright.studio.Skeleton.Node;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lays and takes away tubing as a fitter would: a new inlet goes straight up, over to the nearest header and into it from above its
 * middle, at 45° with the stream.
 */
final class Laying {
    /** Along and across, of the last piece into a header [m]: it enters at 45° seen from above. */
    private static final double ENTRY_m = 0.6;

    /** How far above the header's middle the drop comes over [m]. */
    private static final double ABOVE_m = 0.3;

    private static final double NEAREST_END_m = 0.1;

    /** Beyond what a bend takes of a stretch [m], as places are written to the millimetre. */
    private static final double BESIDE_BEND_m = 0.01;

    /** A branch, or a stretch that bends leave too short for a whole entry, counts as so much farther away [m]. */
    private static final double RATHER_NOT_m = 3;

    /** A header so much farther away than the nearest is not the one that was meant [m]. */
    private static final double NOT_MEANT_m = 6;

    private static final int MOST_TRIED = 12;
    private static final double SAME_m = 0.05;
    private static final double STRAIGHT = Math.cos(Math.toRadians(1));

    private final Pencil pencil;

    Laying(Pencil pencil) {
        this.pencil = pencil;
    }

    /** Moves places, and what must follow so that tubing stays square. */
    void move(List<Node> taken, double dx, double dy, double dz) {
        Shift.of(Skeleton.of(pencil.plant()), taken, dx, dy, dz).forEach(pencil::move);
    }

    /** Lays a new inlet like another one, with its drop into the nearest header; gives its id. */
    String inlet(String like, Position at) {
        Plant plant = pencil.plant();
        Inlet model = plant.inlets().stream()
                .filter(i -> i.id().equals(like))
                .findFirst()
                .orElseThrow(() -> new Cannot("there is no inlet " + like + " to lay another one like it"));
        List<Entry> entries = entries(plant, at);
        if (entries.isEmpty()) {
            throw new Cannot("there is no level header with a place in the building that this inlet could join");
        }
        Pencil before = pencil.copy();
        List<String> refused = new ArrayList<>();
        double farthest = entries.get(0).away(at) + NOT_MEANT_m;
        for (Entry entry : entries.subList(0, Math.min(MOST_TRIED, entries.size()))) {
            if (entry.away(at) > farthest) {
                break;
            }
            try {
                String id = inlet(plant, model, at, entry);
                pencil.plant();
                return id;
            } catch (Cannot cannot) {
                refused.add(cannot.why());
                pencil.takeBack(before);
            }
        }
        throw new Cannot("an inlet here finds no header near it that its drop could enter. Nearest is "
                + entries.get(0).line().run().id() + "; there: " + refused.get(0)
                + ". Click where a header runs straight for longer");
    }

    private String inlet(Plant plant, Inlet model, Position at, Entry entry) {
        String id = Pencil.next(model.id(), ids(plant));
        String junction = split(entry.line(), entry.segment(), entry.at());
        Map<String, String> values = new LinkedHashMap<>(pencil.values("inlets." + model.id()));
        values.put("at", one(at));
        pencil.add("inlets", id, values);
        drop(plant, model, id, junction, at, entry);
        return id;
    }

    private void drop(Plant plant, Inlet model, String id, String junction, Position at, Entry entry) {
        Optional<Run> drop =
                plant.runs().stream().filter(r -> r.from().equals(model.id())).findFirst();
        String wanted = drop.map(Run::id)
                .filter(name -> name.contains(model.id()))
                .map(name -> name.replace(model.id(), id))
                .orElse("D" + id);
        Map<String, String> values = new LinkedHashMap<>();
        values.put("from", id);
        values.put("to", junction);
        values.put("tube", drop.map(Run::tube).orElse(entry.line().run().tube()));
        drop.map(Run::id)
                .map(name -> pencil.values("runs." + name).get("bend radius"))
                .ifPresent(radius -> values.put("bend radius", radius));
        values.put("wye", "45 deg");
        List<Position> corners = entry.corners(at);
        if (!corners.isEmpty()) {
            values.put("via", pencil.list(corners));
        }
        pencil.add("runs", Pencil.free(wanted, runIds(plant)), values);
    }

    /** Draws a wall; gives its name. */
    String wall(List<Position> corners) {
        if (corners.size() < 2) {
            throw new Cannot("a wall has two corners at least");
        }
        List<String> taken =
                pencil.plant().site().walls().stream().map(BuildingWall::id).toList();
        String id = taken.isEmpty() ? "W1" : Pencil.next("W0", taken);
        if (taken.isEmpty()) {
            pencil.addFlow("site", "walls", "{" + id + ": " + pencil.list(corners) + "}");
        } else {
            pencil.addFlow("site.walls", id, pencil.list(corners));
        }
        return id;
    }

    /** Takes a wall away; with the last one goes the list of walls. */
    void takeWallAway(String id) {
        List<BuildingWall> walls = pencil.plant().site().walls();
        if (walls.stream().noneMatch(w -> w.id().equals(id))) {
            throw new Cannot("there is no wall " + id);
        }
        pencil.remove(walls.size() == 1 ? "site.walls" : "site.walls." + id);
    }

    /**
     * Where and from which side a drop enters a header.
     *
     * @param ratherNot whether a header is better: the run is a branch itself, or bends leave its stretch too short for the whole entry
     */
    private record Entry(Line line, int segment, Position foot, Position at, boolean ratherNot) {
        /** How far a place is from it, seen from above [m]. */
        private double away(Position from) {
            return Math.hypot(from.x_m() - foot.x_m(), from.y_m() - foot.y_m()) + (ratherNot ? RATHER_NOT_m : 0);
        }

        private List<Position> corners(Position inlet) {
            List<Position> corners = new ArrayList<>();
            double over = at.z_m() + ABOVE_m;
            if (Math.abs(inlet.z_m() - over) > SAME_m) {
                corners.add(new Position(inlet.x_m(), inlet.y_m(), over));
            }
            double aside = Math.hypot(inlet.x_m() - foot.x_m(), inlet.y_m() - foot.y_m());
            if (aside > ENTRY_m + SAME_m) {
                double share = ENTRY_m / aside;
                corners.add(new Position(
                        foot.x_m() + share * (inlet.x_m() - foot.x_m()),
                        foot.y_m() + share * (inlet.y_m() - foot.y_m()),
                        over));
            }
            return corners;
        }
    }

    /** Places on level tubes that are no drops themselves, nearest first. */
    private static List<Entry> entries(Plant plant, Position from) {
        Set<String> inlets = new HashSet<>();
        plant.inlets().forEach(i -> inlets.add(i.id()));
        List<Entry> all = new ArrayList<>();
        for (Line line : Skeleton.of(plant).lines()) {
            if (line.run().dust() && !inlets.contains(line.run().from())) {
                for (int i = 1; i < line.nodes().size(); i++) {
                    enter(line, i, from).ifPresent(all::add);
                }
            }
        }
        return nearestFirst(all, from);
    }

    private static List<Entry> nearestFirst(List<Entry> entries, Position from) {
        return entries.stream()
                .sorted(Comparator.comparingDouble(e -> e.away(from)))
                .toList();
    }

    /** How far a place on a stretch keeps from its end at a node [m]: beyond what a bend there takes of it. */
    private static double clear_m(Line line, int node) {
        List<Node> nodes = line.nodes();
        if (node == 0 || node == nodes.size() - 1 || !(line.run().route() instanceof Run.Route.Drawn drawn)) {
            return NEAREST_END_m;
        }
        double turn_rad = RunGeometry.turn_rad(
                nodes.get(node - 1).at(),
                nodes.get(node).at(),
                nodes.get(node + 1).at());
        return Math.max(
                NEAREST_END_m, BendLoss.tangent_m(turn_rad, drawn.bendRadius().metres()) + BESIDE_BEND_m);
    }

    private static Optional<Entry> enter(Line line, int segment, Position from) {
        Position a = line.nodes().get(segment - 1).at();
        Position b = line.nodes().get(segment).at();
        double along_x = b.x_m() - a.x_m();
        double along_y = b.y_m() - a.y_m();
        double length = Math.hypot(along_x, along_y);
        double first = clear_m(line, segment - 1);
        double last = length - clear_m(line, segment);
        if (last - first < SAME_m || Math.abs(b.z_m() - a.z_m()) > length) {
            return Optional.empty();
        }
        double foot = ((from.x_m() - a.x_m()) * along_x + (from.y_m() - a.y_m()) * along_y) / length;
        double inside = Math.max(first, Math.min(last, foot));
        double joins = Math.min(last, inside + ENTRY_m);
        boolean bends = first + length - last > 2 * NEAREST_END_m;
        boolean ratherNot = line.run().wye().isPresent() || (bends && last - first < ENTRY_m);
        return Optional.of(
                new Entry(line, segment, between(a, b, inside / length), between(a, b, joins / length), ratherNot));
    }

    private static Position between(Position a, Position b, double share) {
        return new Position(
                a.x_m() + share * (b.x_m() - a.x_m()),
                a.y_m() + share * (b.y_m() - a.y_m()),
                a.z_m() + share * (b.z_m() - a.z_m()));
    }

    /** Splits a run at a place of one of its segments; gives the new point. */
    private String split(Line line, int segment, Position at) {
        Plant plant = pencil.plant();
        Run run = line.run();
        String point = Pencil.next("J" + run.id() + "-0", ids(plant));
        pencil.add("points", point, at);
        Map<String, String> rest = new LinkedHashMap<>(pencil.values("runs." + run.id()));
        rest.remove("fittings");
        rest.remove("via");
        rest.put("from", point);
        List<Position> corners = line.nodes().subList(1, line.nodes().size() - 1).stream()
                .map(Node::at)
                .toList();
        if (segment <= corners.size()) {
            rest.put("via", pencil.list(corners.subList(segment - 1, corners.size())));
        }
        pencil.set("runs." + run.id() + ".to", point);
        if (run.wye().isPresent()) {
            pencil.remove("runs." + run.id() + ".wye");
        }
        pencil.corners(run.id(), corners.subList(0, segment - 1));
        String downstream = Pencil.free(run.id() + "b", runIds(plant));
        pencil.add("runs", downstream, rest);
        renameMain(run, downstream);
        return point;
    }

    /** A main that a station's isolation names is the piece that ends there. */
    private void renameMain(Run before, String downstream) {
        String path = "stations." + before.to() + ".receiver.explosion";
        Optional.ofNullable(pencil.values(path).get("isolated mains"))
                .filter(mains -> names(mains).contains(before.id()))
                .ifPresent(mains -> pencil.setFlow(
                        path + ".isolated mains",
                        names(mains).stream()
                                .map(name -> name.equals(before.id()) ? downstream : name)
                                .collect(Collectors.joining(", ", "[", "]"))));
    }

    private static List<String> names(String list) {
        return Stream.of(list.replaceAll("[\\[\\]\"']", "").split(",", -1))
                .map(String::strip)
                .toList();
    }

    /** Splits a run in the middle of its longest straight; gives the new point. */
    String split(String id) {
        Line line = line(pencil.plant(), id);
        int longest = 1;
        for (int i = 2; i < line.nodes().size(); i++) {
            if (length(line, i) > length(line, longest)) {
                longest = i;
            }
        }
        Position a = line.nodes().get(longest - 1).at();
        return split(line, longest, between(a, line.nodes().get(longest).at(), 0.5));
    }

    /** Splits a run where it passes nearest to a spot of a drawing, as far from its bends as they need; gives the new point. */
    String split(String id, Spot spot, SheetScale sheet) {
        Line line = line(pencil.plant(), id);
        int nearest = 1;
        double share = 0.5;
        double least = Double.MAX_VALUE;
        for (int i = 1; i < line.nodes().size(); i++) {
            Spot a = sheet.at(line.nodes().get(i - 1).at());
            Spot b = sheet.at(line.nodes().get(i).at());
            double dx = b.x() - a.x();
            double dy = b.y() - a.y();
            double square = dx * dx + dy * dy;
            if (square == 0) {
                continue;
            }
            double along = Math.max(0, Math.min(1, ((spot.x() - a.x()) * dx + (spot.y() - a.y()) * dy) / square));
            double away = Math.hypot(a.x() + along * dx - spot.x(), a.y() + along * dy - spot.y());
            if (away < least) {
                least = away;
                nearest = i;
                share = along;
            }
        }
        double length = length(line, nearest);
        double first = clear_m(line, nearest - 1);
        double last = length - clear_m(line, nearest);
        if (last < first) {
            throw new Cannot("tube " + id + " is too short there, as its bends need what there is. Click where it runs"
                    + " straight for longer");
        }
        double at = Math.max(first, Math.min(last, share * length));
        return split(
                line,
                nearest,
                between(
                        line.nodes().get(nearest - 1).at(),
                        line.nodes().get(nearest).at(),
                        at / length));
    }

    private static double length(Line line, int segment) {
        return line.nodes()
                .get(segment - 1)
                .at()
                .distanceTo(line.nodes().get(segment).at())
                .metres();
    }

    private static Line line(Plant plant, String id) {
        return Skeleton.of(plant).lines().stream()
                .filter(line -> line.run().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Cannot("run " + id + " is given by its length and has no places"));
    }

    /** Makes one run of the two that meet at a point, where nothing else does and they are of one size; gives the run. */
    String join(String point) {
        Plant plant = pencil.plant();
        List<Run> into = plant.runs().stream().filter(r -> r.to().equals(point)).toList();
        List<Run> out =
                plant.runs().stream().filter(r -> r.from().equals(point)).toList();
        if (into.size() != 1 || out.size() != 1) {
            throw new Cannot("point " + point + " can only go where one run comes in and one goes on");
        }
        Line first = line(plant, into.get(0).id());
        Line second = line(plant, out.get(0).id());
        if (!first.run().tube().equals(second.run().tube())) {
            throw new Cannot("runs " + first.run().id() + " and " + second.run().id() + " are of two sizes: "
                    + first.run().tube() + " and " + second.run().tube());
        }
        if (!second.run().fittings().isEmpty()) {
            throw new Cannot("run " + second.run().id() + " has fittings of its own: move them to "
                    + first.run().id() + " first");
        }
        List<Position> corners = new ArrayList<>();
        inner(first).forEach(node -> corners.add(node.at()));
        if (!straight(first, second)) {
            corners.add(second.nodes().get(0).at());
        }
        inner(second).forEach(node -> corners.add(node.at()));
        Optional<String> wye =
                Optional.ofNullable(pencil.values("runs." + second.run().id()).get("wye"));
        pencil.set("runs." + first.run().id() + ".to", second.run().to());
        pencil.corners(first.run().id(), corners);
        pencil.remove("runs." + second.run().id());
        pencil.remove("points." + point);
        wye.ifPresent(angle -> pencil.put("runs." + first.run().id(), "wye", angle));
        return first.run().id();
    }

    private static List<Node> inner(Line line) {
        return line.nodes().subList(1, line.nodes().size() - 1);
    }

    private static boolean straight(Line first, Line second) {
        Position a = first.nodes().get(first.nodes().size() - 2).at();
        Position b = second.nodes().get(0).at();
        Position c = second.nodes().get(1).at();
        double dot = (b.x_m() - a.x_m()) * (c.x_m() - b.x_m())
                + (b.y_m() - a.y_m()) * (c.y_m() - b.y_m())
                + (b.z_m() - a.z_m()) * (c.z_m() - b.z_m());
        return dot >= STRAIGHT * a.distanceTo(b).metres() * b.distanceTo(c).metres();
    }

    /** Takes an inlet away with its drop and what else leads nowhere then; where the header was split for it, it is one run again. */
    void takeAway(String inlet) {
        Plant plant = pencil.plant();
        Optional<Run> drop = tubeOf(plant, inlet);
        if (drop.isPresent()) {
            prune(plant, List.of(inlet), drop.get().id());
        } else {
            pencil.remove("inlets." + inlet);
        }
    }

    /**
     * Lays a tube from an inlet or a point over corners to a point or station, or into the nearest place of a run; gives the run. From an
     * inlet it takes the place of the tube that is there, as a second one would draw through the closed inlet.
     */
    String tube(String from, List<Position> corners, String to, String size) {
        Plant plant = pencil.plant();
        boolean intoRun = runIds(plant).contains(to);
        boolean station = plant.stations().stream().anyMatch(s -> s.id().equals(to));
        Optional<Run> before = tubeOf(plant, from);
        if (before.filter(run -> run.id().equals(to)).isPresent()) {
            throw new Cannot("tube " + to + " is the one that goes from inlet " + from);
        }
        String end = intoRun ? junction(plant, from, corners, to) : to;
        boolean joins = intoRun || (!station && plant.runs().stream().anyMatch(r -> r.to().equals(to)));
        String id = Pencil.next("T0", ids(plant));
        lay(id, from, corners, end, size, joins);
        before.ifPresent(run -> takeTubeAway(run.id()));
        return id;
    }

    private static Optional<Run> tubeOf(Plant plant, String inlet) {
        return plant.inlets().stream().anyMatch(i -> i.id().equals(inlet))
                ? plant.runs().stream().filter(r -> r.from().equals(inlet)).findFirst()
                : Optional.empty();
    }

    private void lay(String id, String from, List<Position> corners, String to, String size, boolean wye) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("from", from);
        values.put("to", to);
        values.put("tube", size);
        if (wye) {
            values.put("wye", "45 deg");
        }
        if (!corners.isEmpty()) {
            values.put("via", pencil.list(corners));
        }
        pencil.add("runs", id, values);
    }

    /**
     * Sets a new receiver with its machines at the last corner of a new tube; all figures are those of another station, whose producers
     * it repeats under names of their own. Gives its id.
     */
    String station(String from, List<Position> corners, String like, String size) {
        if (corners.isEmpty()) {
            throw new Cannot("a receiver stands where its tube ends: give that place");
        }
        Plant plant = pencil.plant();
        Station model = plant.stations().stream()
                .filter(s -> s.id().equals(like))
                .findFirst()
                .or(() -> plant.stations().stream().findFirst())
                .orElseThrow(() -> new Cannot("there is no station to set up another one like it"));
        String id = Pencil.next(model.id(), ids(plant));
        Map<String, String> values = new LinkedHashMap<>(pencil.values("stations." + model.id()));
        values.put("at", one(corners.get(corners.size() - 1)));
        values.put("producers", producers(plant, model));
        pencil.add("stations", id, values);
        if (pencil.values("stations." + id + ".receiver.explosion").containsKey("isolated mains")) {
            pencil.remove("stations." + id + ".receiver.explosion.isolated mains");
        }
        Optional<Run> before = tubeOf(plant, from);
        lay(Pencil.next("T0", ids(plant)), from, corners.subList(0, corners.size() - 1), id, size, false);
        before.ifPresent(run -> takeTubeAway(run.id()));
        return id;
    }

    private String producers(Plant plant, Station model) {
        Set<String> taken = plant.stations().stream()
                .flatMap(s -> s.producers().stream())
                .map(VacuumProducer::id)
                .collect(Collectors.toCollection(HashSet::new));
        return pencil.values("stations." + model.id() + ".producers").entrySet().stream()
                .map(producer -> {
                    String id = Pencil.next(producer.getKey(), taken);
                    taken.add(id);
                    return id + ": " + producer.getValue();
                })
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /**
     * Takes a tube away, and what leads nowhere without it: a point that nothing touches any more, a tube to which nothing comes. Where
     * only one run is left to come and one to go on, nothing joins any more, and of one size they are one run.
     */
    void takeTubeAway(String id) {
        Plant plant = pencil.plant();
        prune(plant, List.of(), id);
    }

    /** The plant is that of before, as what is left meanwhile cannot be read. */
    private void prune(Plant plant, List<String> inlets, String first) {
        Map<String, Run> left = new LinkedHashMap<>();
        plant.runs().forEach(run -> left.put(run.id(), run));
        if (!left.containsKey(first)) {
            throw new Cannot("there is no tube " + first);
        }
        Set<String> points = plant.points().stream().map(Point::id).collect(Collectors.toCollection(HashSet::new));
        Set<String> kept = plant.bleeds().stream().map(Bleed::point).collect(Collectors.toCollection(HashSet::new));
        plant.held().forEach(held -> kept.add(held.point()));
        inlets.forEach(inlet -> pencil.remove("inlets." + inlet));
        Set<String> joints = new LinkedHashSet<>();
        Deque<String> next = new ArrayDeque<>(List.of(first));
        while (!next.isEmpty()) {
            Run run = left.remove(next.remove());
            if (run == null) {
                continue;
            }
            pencil.remove("runs." + run.id());
            for (String end : List.of(run.from(), run.to())) {
                List<Run> there = left.values().stream()
                        .filter(r -> r.from().equals(end) || r.to().equals(end))
                        .toList();
                if (!points.contains(end) || kept.contains(end)) {
                    continue;
                }
                if (there.isEmpty()) {
                    pencil.remove("points." + end);
                    points.remove(end);
                    joints.remove(end);
                } else if (there.size() == 1 && there.get(0).from().equals(end)) {
                    next.add(there.get(0).id());
                } else if (there.size() == 2) {
                    joints.add(end);
                }
            }
        }
        for (String joint : joints) {
            left.values().stream()
                    .filter(r -> r.to().equals(joint) && r.wye().isPresent())
                    .filter(r -> left.values().stream()
                                    .filter(o -> o.from().equals(joint))
                                    .count()
                            == 1)
                    .forEach(r -> pencil.remove("runs." + r.id() + ".wye"));
        }
        joints.forEach(this::joinIfOne);
    }

    private void joinIfOne(String point) {
        Pencil before = pencil.copy();
        try {
            join(point);
            pencil.plant();
        } catch (Cannot stays) {
            pencil.takeBack(before);
        }
    }

    /** Says where the control panel stands. */
    void panel(Position at) {
        if (pencil.plant().site().panel().isPresent()) {
            pencil.remove("panel.at");
        }
        if (pencil.has("panel")) {
            pencil.addFlow("panel", "at", one(at));
        } else {
            pencil.addFlow("", "panel", "{at: " + one(at) + "}");
        }
    }

    private String junction(Plant plant, String from, List<Position> corners, String run) {
        Position last = corners.isEmpty()
                ? Skeleton.of(plant).nodes().stream()
                        .filter(n -> n.kind() != Kind.CORNER && n.id().equals(from))
                        .map(Node::at)
                        .findFirst()
                        .orElseThrow(() -> new Cannot(from + " has no place in the building"))
                : corners.get(corners.size() - 1);
        Line line = line(plant, run);
        List<Entry> entries = new ArrayList<>();
        for (int i = 1; i < line.nodes().size(); i++) {
            enter(line, i, last).ifPresent(entries::add);
        }
        Entry nearest = nearestFirst(entries, last).stream()
                .findFirst()
                .orElseThrow(() -> new Cannot("run " + run + " has no level stretch that a tube could enter"));
        return split(line, nearest.segment(), nearest.at());
    }

    private String one(Position at) {
        String list = pencil.list(List.of(at));
        return list.substring(1, list.length() - 1);
    }

    private static Set<String> runIds(Plant plant) {
        Set<String> ids = new HashSet<>();
        plant.runs().forEach(r -> ids.add(r.id()));
        return ids;
    }

    private static Set<String> ids(Plant plant) {
        Set<String> ids = runIds(plant);
        plant.inlets().forEach(i -> ids.add(i.id()));
        plant.points().forEach(p -> ids.add(p.id()));
        plant.stations().forEach(s -> ids.add(s.id()));
        return ids;
    }

    /** A node by what a page calls it. */
    static Node node(Plant plant, String kind, String id, int corner) {
        for (Kind one : Kind.values()) {
            if (one.name().equalsIgnoreCase(kind)) {
                return Skeleton.of(plant)
                        .node(one, id, corner)
                        .orElseThrow(
                                () -> new Cannot("there is no " + kind + " " + id + " with a place in the building"));
            }
        }
        throw new Cannot("a hand takes an inlet, a point, a station, the panel or a corner, no \"" + kind + "\"");
    }
}
