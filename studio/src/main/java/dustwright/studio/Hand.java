package dustwright.studio;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.documents.drawing.Layout;
import dustwright.documents.drawing.SheetScale;
import dustwright.documents.drawing.Spot;
import dustwright.engine.plant.BuildingWall;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Units;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Tube;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What pages ask of the hand that draws: where everything is, and what is to be done. */
final class Hand {
    private static final double FARTHEST_m = 10_000;
    private static final int MOST_CORNERS = 200;
    private static final Map<String, Double> LENGTHS = lengths();

    private Hand() {}

    /**
     * Where everything a hand can take lies, and the scale of the sheet.
     *
     * @param unit of a bare number that is typed, as of a coordinate in the plant file; empty where the file states none
     * @param lengths metres in one of each unit of length, by all its spellings in a plant file
     */
    record Places(
            long version,
            SheetScale sheet,
            List<Place> places,
            List<BuildingWall> walls,
            List<String> tubes,
            String unit,
            Map<String, Double> lengths) {}

    /** One place [m]. */
    record Place(String kind, String id, int corner, double x, double y, double z) {}

    static Places places(long version, Plant plant, String unit, boolean isometric) {
        List<Place> places = Skeleton.of(plant).nodes().stream()
                .map(n -> new Place(
                        n.kind().name().toLowerCase(Locale.ROOT),
                        n.id(),
                        n.corner(),
                        n.at().x_m(),
                        n.at().y_m(),
                        n.at().z_m()))
                .toList();
        return new Places(
                version,
                sheet(plant, isometric),
                places,
                plant.site().walls(),
                plant.tubes().stream().map(Tube::id).toList(),
                unit,
                LENGTHS);
    }

    private static Map<String, Double> lengths() {
        Map<String, Double> lengths = new TreeMap<>();
        for (String spelling : Units.spellings(Dimension.LENGTH)) {
            Units.find(spelling, Dimension.LENGTH).ifPresent(unit -> lengths.put(spelling, unit.toSi(1)));
        }
        return Collections.unmodifiableMap(lengths);
    }

    private static SheetScale sheet(Plant plant, boolean isometric) {
        Layout plan = Layout.plan(plant);
        return SheetScale.of(isometric && plan.kind() == Layout.Kind.PLAN ? Layout.isometric(plant) : plan);
    }

    /** Does what a page asks for; gives the pieces that are new. */
    static List<String> act(Pencil pencil, JsonNode asked) {
        Laying laying = new Laying(pencil);
        String what = asked.path("what").asText("");
        switch (what) {
            case "move" -> {
                Plant plant = pencil.plant();
                List<Skeleton.Node> taken = new ArrayList<>();
                asked.path("pieces")
                        .forEach(piece -> taken.add(Laying.node(
                                plant,
                                piece.path("kind").asText(""),
                                piece.path("id").asText(""),
                                piece.path("corner").asInt(0))));
                laying.move(taken, metres(asked, "dx"), metres(asked, "dy"), metres(asked, "dz"));
                return List.of();
            }
            case "inlet" -> {
                return List.of(laying.inlet(asked.path("like").asText(""), position(asked)));
            }
            case "copy" -> {
                List<String> ids = new ArrayList<>();
                for (JsonNode inlet : asked.path("inlets")) {
                    Position at = Laying.node(pencil.plant(), "inlet", inlet.asText(""), 0)
                            .at();
                    ids.add(laying.inlet(
                            inlet.asText(""),
                            new Position(
                                    at.x_m() + metres(asked, "dx"),
                                    at.y_m() + metres(asked, "dy"),
                                    at.z_m() + metres(asked, "dz"))));
                }
                return ids;
            }
            case "take away" -> {
                asked.path("inlets").forEach(inlet -> laying.takeAway(inlet.asText("")));
                return List.of();
            }
            case "split" -> {
                String run = asked.path("run").asText("");
                if (!asked.has("u")) {
                    return List.of(laying.split(run));
                }
                SheetScale sheet = sheet(
                        pencil.plant(), "isometric".equals(asked.path("view").asText("")));
                return List.of(laying.split(
                        run,
                        new Spot(asked.path("u").asDouble(0), asked.path("v").asDouble(0)),
                        sheet));
            }
            case "join" -> {
                return List.of(laying.join(asked.path("point").asText("")));
            }
            case "wall" -> {
                return List.of(laying.wall(corners(asked)));
            }
            case "take wall away" -> {
                laying.takeWallAway(asked.path("wall").asText(""));
                return List.of();
            }
            case "tube" -> {
                return List.of(laying.tube(
                        asked.path("from").asText(""),
                        corners(asked),
                        asked.path("to").asText(""),
                        asked.path("tube").asText("")));
            }
            case "station" -> {
                return List.of(laying.station(
                        asked.path("from").asText(""),
                        corners(asked),
                        asked.path("like").asText(""),
                        asked.path("tube").asText("")));
            }
            case "take tube away" -> {
                laying.takeTubeAway(asked.path("run").asText(""));
                return List.of();
            }
            case "panel" -> {
                laying.panel(position(asked));
                return List.of();
            }
            default ->
                throw new Pencil.Cannot(
                        "a hand moves, lays, copies, splits, joins or takes away; not \"" + what + "\"");
        }
    }

    private static List<Position> corners(JsonNode asked) {
        List<Position> corners = new ArrayList<>();
        asked.path("corners").forEach(corner -> corners.add(position(corner)));
        if (corners.size() > MOST_CORNERS) {
            throw new Pencil.Cannot("a tube or a wall has at most " + MOST_CORNERS + " corners");
        }
        return corners;
    }

    private static Position position(JsonNode at) {
        return new Position(metres(at, "x"), metres(at, "y"), metres(at, "z"));
    }

    private static double metres(JsonNode node, String key) {
        double metres = node.path(key).asDouble(0);
        if (!(Math.abs(metres) <= FARTHEST_m)) {
            throw new Pencil.Cannot("a place is asked beyond " + FARTHEST_m + " m");
        }
        return metres;
    }
}
