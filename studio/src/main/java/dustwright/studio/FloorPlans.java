package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.body;
import static dustwright.studio.Exchange.neededNumber;
import static dustwright.studio.Exchange.unfit;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Position;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongConsumer;

/** Takes in the picture of the floor, puts it where two of its points are known, and gives it to pages. It is no part of the plant file. */
final class FloorPlans {
    /** How wide a picture lies under a plant that has no places yet. */
    private static final double EMPTY_m = 30;

    private final Desk desk;
    private final LongConsumer tell;

    /** {@code tell} hears of each version, for the pages. */
    FloorPlans(Desk desk, LongConsumer tell) {
        this.desk = desk;
        this.tell = tell;
    }

    void routes(JavalinConfig config) {
        config.routes.get(
                "/api/floorplan",
                request -> answer(
                        request, desk.floorPlan().<Object>map(plan -> plan).orElseGet(() -> Map.of("number", 0))));
        config.routes.get("/api/floorplan/picture", request -> {
            FloorPlan plan = desk.floorPlan().orElseThrow(() -> new NotFoundResponse("There is no floor plan."));
            request.contentType(plan.type())
                    .header("Content-Disposition", "inline; filename=\"floor\"")
                    .result(desk.floorPicture());
        });
        config.routes.post("/api/floorplan/picture", this::take);
        config.routes.post("/api/floorplan", this::pin);
        config.routes.post("/api/floorplan/away", this::away);
    }

    private void away(Context request) {
        long on = neededNumber(body(request), "number");
        keep(request, "floor plan: taken away", on, Optional.empty(), Optional.empty());
    }

    private void take(Context request) {
        try {
            long on = Optional.ofNullable(request.queryParam("number"))
                    .filter(said -> said.matches("[0-9]{1,15}"))
                    .map(Long::parseLong)
                    .orElse(0L);
            Upload picture = Upload.of(request.bodyAsBytes());
            long number = Math.max(desk.nextFloor(), Instant.now().getEpochSecond());
            FloorPlan plan = under(desk.copy().plant(), picture, number);
            keep(request, "floor plan: a picture brought in", on, Optional.of(plan), Optional.of(picture.bytes()));
        } catch (Upload.Refused refused) {
            refuse(request, String.valueOf(refused.getMessage()));
        }
    }

    /** As wide as the plant, until two points say better. */
    private static FloorPlan under(Optional<Plant> plant, Upload picture, long number) {
        List<Position> places = plant.map(p ->
                        Skeleton.of(p).nodes().stream().map(Skeleton.Node::at).toList())
                .orElse(List.of());
        double left = places.stream().mapToDouble(Position::x_m).min().orElse(0);
        double right = places.stream().mapToDouble(Position::x_m).max().orElse(0);
        double bottom = places.stream().mapToDouble(Position::y_m).min().orElse(0);
        return FloorPlan.first(number, picture, left, bottom, right - left < 1 ? EMPTY_m : right - left);
    }

    private void pin(Context request) {
        JsonNode body = body(request);
        JsonNode pins = body.path("pins");
        long on = neededNumber(body, "number");
        if (!pins.isArray()) {
            throw unfit(pins, "pins", "a list of two points");
        }
        Optional<FloorPlan> there = desk.floorPlan();
        if (there.isPresent() && there.get().number() != on) {
            stale(request);
            return;
        }
        if (there.isEmpty() || pins.size() != 2) {
            refuse(request, "A floor plan is put in its place by two of its points; there must be one first.");
            return;
        }
        try {
            FloorPlan before = there.get();
            FloorPlan laid = before.pinned(desk.nextFloor(), point(pins.get(0)), point(pins.get(1)));
            keep(request, "floor plan: laid by two points", before.number(), Optional.of(laid), Optional.empty());
        } catch (FloorPlan.Refused refused) {
            refuse(request, String.valueOf(refused.getMessage()));
        }
    }

    private static FloorPlan.Pin point(JsonNode pin) {
        return new FloorPlan.Pin(number(pin, "u"), number(pin, "v"), number(pin, "x"), number(pin, "y"));
    }

    private static double number(JsonNode node, String key) {
        return node.path(key).isNumber() ? node.path(key).asDouble() : Double.NaN;
    }

    private void keep(Context request, String what, long on, Optional<FloorPlan> plan, Optional<byte[]> picture) {
        if (!desk.keepFloorPlan(Studio.by(request), what, on, plan, picture)) {
            stale(request);
            return;
        }
        tell.accept(desk.copy().version());
        answer(request, plan.<Object>map(laid -> laid).orElseGet(() -> Map.of("number", 0)));
    }

    private static void stale(Context request) {
        request.status(409);
        answer(
                request,
                Map.of(
                        "why",
                        "The floor plan was changed elsewhere in the meantime; this page now shows it. Nothing was overwritten."));
    }

    private static void refuse(Context request, String why) {
        request.status(422);
        answer(request, Map.of("why", why));
    }
}
