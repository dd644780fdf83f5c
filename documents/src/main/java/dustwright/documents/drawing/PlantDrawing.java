package dustwright.documents.drawing;

import dustwright.engine.plant.Station;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Draws a plant: tubing by margin, inlets, receivers and producers, letters of findings, labels where they find room, a key below. */
public final class PlantDrawing {
    private static final double LABEL = 10;
    private static final double SMALL_LABEL = 9;
    private static final double LONGEST_NAME = 110;
    private static final double SHORT_NAME = 44;
    private static final PlantView.RunLook NO_VALUE = PlantView.RunLook.UNKNOWN;
    private static final double LETTER = 13;
    private static final double ROOM_FOR_ARROW = 26;
    private static final int MANY_INLETS = 60;
    private static final double WALL = 4.6;

    private final PlantView view;
    private final boolean live;
    private final Field field;
    /** Line of each run on the sheet. */
    private final Map<String, List<Spot>> lines = new LinkedHashMap<>();

    private final Floors floors;
    private final double inletRadius;
    private final LabelPlacer placer;
    private final List<Shape> walls = new ArrayList<>();
    private final List<Shape> tubing = new ArrayList<>();
    private final List<Shape> arrows = new ArrayList<>();
    private final List<Shape> symbols = new ArrayList<>();
    private final List<Shape> letters = new ArrayList<>();
    private final List<Shape> labels = new ArrayList<>();
    private final List<String> unlabelled = new ArrayList<>();

    private PlantDrawing(PlantView view, boolean live) {
        this.view = view;
        this.live = live;
        this.field = Field.of(view.layout());
        view.layout()
                .runs()
                .forEach((id, line) ->
                        lines.put(id, line.stream().map(field::onSheet).toList()));
        this.floors = view.layout().kind() == Layout.Kind.SCHEME ? new Floors(Set.of(), 0) : Floors.of(view.plant());
        this.inletRadius = view.plant().inlets().size() > MANY_INLETS ? 3.4 : 5;
        this.placer = new LabelPlacer(field.box());
    }

    /** The drawing on a sheet as wide as the page. */
    public static Sheet of(PlantView view) {
        return new PlantDrawing(view, false).draw();
    }

    /** The same for a page one works on: every run and inlet a part of its own, letters and labels as tags, and no key, which the page has itself. */
    public static Scene live(PlantView view) {
        return new PlantDrawing(view, true).draw().scene();
    }

    private Sheet draw() {
        view.layout().walls().forEach(this::drawWall);
        PlantView.labelled().forEach(this::drawRuns);
        List.of(MarginClass.UNKNOWN, MarginClass.NOT_ASKED, MarginClass.NO_AIR).forEach(this::drawRuns);
        Collections.reverse(tubing);
        view.plant().stations().forEach(this::drawStation);
        view.plant().inlets().forEach(this::drawInlet);
        view.layout().panel().map(field::onSheet).ifPresent(this::drawPanel);
        view.letters().forEach(this::placeLetter);
        placeLabels();
        List<Scene.Layer> layers = new ArrayList<>(List.of(
                new Scene.Layer("tubing", tubing),
                new Scene.Layer("direction", arrows),
                new Scene.Layer("symbols", symbols),
                new Scene.Layer("labels", labels),
                new Scene.Layer("letters", letters)));
        if (!walls.isEmpty()) {
            layers.add(0, new Scene.Layer("walls", walls));
        }
        double bottom = field.box().bottom();
        if (!live) {
            SheetFoot foot = SheetFoot.of(view, floors, bottom);
            layers.add(new Scene.Layer("key", foot.shapes(field)));
            bottom = foot.bottom();
        }
        return new Sheet(new Scene(Scene.PAGE_WIDTH, bottom, view.title(), layers), unlabelled);
    }

    /** Cut through: two edges and what is between them. */
    private void drawWall(List<Spot> corners) {
        List<Spot> line = corners.stream().map(field::onSheet).toList();
        walls.add(new Shape.Path(line, Line.edge(WALL), Ink.NONE, false));
        walls.add(new Shape.Path(line, new Line(Ink.WASH, WALL - 1.6, List.of()), Ink.NONE, false));
        for (int i = 1; i < line.size(); i++) {
            placer.keepClear(line.get(i - 1), line.get(i), WALL);
        }
    }

    private void drawRuns(MarginClass marginClass) {
        lines.forEach((id, line) -> {
            if (view.look(id).marginClass() == marginClass) {
                drawRun(id, line);
            }
        });
    }

    private void drawRun(String id, List<Spot> line) {
        PlantView.RunLook look = view.look(id);
        MarginClass marginClass = look.marginClass();
        Shape tube = new Shape.Path(line, marginClass.line(), Ink.NONE, false);
        tubing.add(live ? new Shape.Part(Shape.Part.Kind.RUN, id, List.of(tube)) : tube);
        for (int i = 1; i < line.size(); i++) {
            placer.keepClear(line.get(i - 1), line.get(i), marginClass.weight());
        }
        int longest = longestPart(line);
        Spot from = line.get(longest - 1);
        Spot to = line.get(longest);
        if (look.direction() != 0 && from.distanceTo(to) > ROOM_FOR_ARROW) {
            Spot middle = from.towards(to, 0.5);
            arrows.add(look.direction() > 0 ? Symbols.arrow(middle, from, to) : Symbols.arrow(middle, to, from));
        }
    }

    private static int longestPart(List<Spot> line) {
        int longest = 1;
        for (int i = 2; i < line.size(); i++) {
            if (line.get(i - 1).distanceTo(line.get(i)) > line.get(longest - 1).distanceTo(line.get(longest))) {
                longest = i;
            }
        }
        return longest;
    }

    private void drawStation(Station station) {
        Spot place = view.layout().places().get(station.id());
        if (place == null) {
            return;
        }
        Spot at = field.onSheet(place);
        boolean right = at.x() + 60 < field.box().right();
        for (int n = 0; n < station.producers().size(); n++) {
            Spot pump = Symbols.producerPlace(at, right, n);
            symbols.add(Shape.line(
                    Line.ink(1.2),
                    at,
                    new Spot(at.x() + (pump.x() - at.x()) * 0.55, at.y()),
                    new Spot(at.x() + (pump.x() - at.x()) * 0.55, pump.y()),
                    pump));
            symbols.addAll(Symbols.producer(pump, station.producers().get(n)));
            placer.keepClear(square(pump, Symbols.PUMP_RADIUS + 1));
            placer.keepClear(at, pump, 2);
        }
        symbols.addAll(Symbols.receiver(at));
        placer.keepClear(square(at, Symbols.RECEIVER_RADIUS + 1));
    }

    private void drawPanel(Spot at) {
        symbols.addAll(Symbols.panel(at));
        placer.keepClear(square(at, Symbols.PANEL_HIGH));
        if (live) {
            labels.add(new Shape.Tag(Shape.Tag.Rank.QUIET, at, Symbols.PANEL_HIGH, "panel", "", ""));
        } else {
            labels.add(Shape.quiet(at.x(), at.y() + Symbols.PANEL_HIGH + LABEL, "panel", LABEL, Shape.Anchor.MIDDLE));
        }
    }

    private void drawInlet(Inlet inlet) {
        Spot place = view.layout().places().get(inlet.id());
        if (place == null) {
            return;
        }
        Spot at = field.onSheet(place);
        boolean open = view.open().contains(inlet.id());
        List<Shape> symbol = Symbols.inlet(
                at,
                open ? inletRadius + 0.6 : inletRadius,
                open,
                floors.elsewhere().contains(inlet.id()),
                !tubingBelow(at));
        symbols.addAll(live ? List.of(new Shape.Part(Shape.Part.Kind.INLET, inlet.id(), symbol)) : symbol);
        placer.keepClear(square(at, inletRadius + 1.6));
    }

    /** The flap is drawn on the side away from the tubing. */
    private boolean tubingBelow(Spot at) {
        return lines.values().stream().anyMatch(line -> leavesDownward(line, at));
    }

    private static boolean leavesDownward(List<Spot> line, Spot at) {
        Spot first = line.get(0);
        return first.distanceTo(at) < 0.01
                && line.stream()
                        .filter(p -> p.distanceTo(at) > 0.5)
                        .findFirst()
                        .map(p -> p.y() > at.y() + 0.5 && Math.abs(p.x() - at.x()) < p.y() - at.y())
                        .orElse(false);
    }

    private void placeLetter(String letter, String place) {
        boolean station = view.plant().stations().stream().anyMatch(s -> s.id().equals(place));
        double clearance = (station ? Symbols.RECEIVER_RADIUS : inletRadius) + 2;
        if (live) {
            anchor(place)
                    .ifPresent(at -> letters.add(new Shape.Tag(Shape.Tag.Rank.LETTER, at, clearance, letter, "", "")));
            return;
        }
        anchor(place)
                .flatMap(spot -> placer.place(spot, clearance, LETTER, LETTER))
                .ifPresent(placed -> {
                    leader(placed, letters);
                    letters.addAll(Symbols.letter(placed.box(), letter));
                });
    }

    private Optional<Spot> anchor(String place) {
        List<Spot> line = lines.get(place);
        if (line != null) {
            int longest = longestPart(line);
            return Optional.of(line.get(longest - 1).towards(line.get(longest), 0.5));
        }
        return Optional.ofNullable(view.layout().places().get(place)).map(field::onSheet);
    }

    /** Stations, failing runs, open inlets, the other runs by class, closed inlets. */
    private void placeLabels() {
        for (Station station : view.plant().stations()) {
            label(station.id(), station.id(), NO_VALUE, Symbols.RECEIVER_RADIUS + 2, LABEL, true);
        }
        labelRuns(MarginClass.FAR);
        labelRuns(MarginClass.SHORT);
        view.plant().inlets().stream()
                .filter(i -> view.open().contains(i.id()))
                .forEach(i -> label(i.id(), i.id(), NO_VALUE, inletRadius + 2, LABEL, true));
        labelRuns(MarginClass.THIN);
        labelRuns(MarginClass.FAIR);
        view.plant().inlets().stream()
                .filter(i -> !view.open().contains(i.id()))
                .forEach(i -> label(i.id(), i.id(), NO_VALUE, inletRadius + 1, SMALL_LABEL, false));
        labelRuns(MarginClass.AMPLE);
    }

    private void labelRuns(MarginClass marginClass) {
        view.layout().runs().entrySet().stream()
                .filter(e -> view.look(e.getKey()).marginClass() == marginClass)
                .filter(e -> !view.look(e.getKey()).value().isEmpty())
                .sorted(Comparator.comparingDouble((Map.Entry<String, List<Spot>> e) -> -length(e.getValue())))
                .forEach(e -> label(
                        e.getKey(), e.getKey(), view.look(e.getKey()), marginClass.weight() / 2 + 1, LABEL, true));
    }

    private static double length(List<Spot> line) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            sum += line.get(i - 1).distanceTo(line.get(i));
        }
        return sum;
    }

    private void label(String place, String name, PlantView.RunLook look, double clearance, double size, boolean bold) {
        Optional<Spot> anchor = anchor(place);
        if (anchor.isEmpty()) {
            return;
        }
        if (live) {
            Shape.Tag.Rank rank = !bold
                    ? Shape.Tag.Rank.QUIET
                    : look.marginClass().compareTo(MarginClass.FAIR) >= 0
                                    && !look.value().isEmpty()
                            ? Shape.Tag.Rank.HOLDS
                            : Shape.Tag.Rank.CHIEF;
            labels.add(new Shape.Tag(rank, anchor.get(), clearance, name, look.value(), look.margin()));
            return;
        }
        String full = Lettering.fitted(name, size, LONGEST_NAME);
        String brief = Lettering.fitted(name, size, SHORT_NAME);
        Label.Style style = new Label.Style(size, bold);
        List<Label> tries = look.value().isEmpty()
                ? List.of(Label.of(style, full), Label.of(style, brief))
                : List.of(
                        Label.of(style, full, look.value() + " · " + look.margin()),
                        Label.stacked(style, full, look.margin(), look.value()),
                        Label.stacked(style, brief, look.margin(), look.value()));
        for (Label label : tries) {
            Optional<LabelPlacer.Placed> found = placer.place(anchor.get(), clearance, label.width(), label.height());
            if (found.isPresent()) {
                leader(found.get(), labels);
                labels.addAll(label.shapes(found.get().box()));
                return;
            }
        }
        unlabelled.add(name);
    }

    private static void leader(LabelPlacer.Placed placed, List<Shape> into) {
        placed.leader().ifPresent(line -> into.add(Shape.line(Line.ink(0.6), line.get(0), line.get(1))));
    }

    private static Box square(Spot at, double half) {
        return new Box(at.x() - half, at.y() - half, at.x() + half, at.y() + half);
    }
}
