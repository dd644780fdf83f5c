package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.body;
import static dustwright.studio.Exchange.show;
import static dustwright.studio.Exchange.text;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.rehearsal.Script;
import dustwright.engine.rehearsal.StationModel;
import dustwright.plantfile.Drills;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The panels of this plant that pages have in rehearsal. Time goes on in a rehearsal only as far as its page asks, so a page that is closed leaves nothing running;
 * of many the one not asked for longest is let go.
 */
final class Panel {
    private static final int MOST_AT_ONCE = 12;
    private static final double WEEK_s = 7 * 24 * 3600;
    private static final double MORNING_s = 6 * 3600;
    private static final double SOON_FULL_s = 600;

    private final Map<String, PanelPlay> plays = new LinkedHashMap<>();
    private long last;

    /** What may be rehearsed. */
    record Offer(List<String> stations, List<Drill> drills) {}

    /** A drill by its name. */
    record Drill(String name, String title) {}

    /** What pages may ask for. */
    void routes(JavalinConfig config, Desk desk) {
        config.routes.get("/api/panel", request -> answer(request, offer(Studio.known(desk.copy()))));
        config.routes.post("/api/panel/begin", request -> {
            answer(request, begin(desk, body(request)).built(show(request)));
        });
        config.routes.post("/api/panel/go", request -> {
            JsonNode asked = body(request);
            answer(request, of(text(asked, "id")).go(asked, show(request)));
        });
        config.routes.get(
                "/api/panel/chart",
                request -> request.contentType("image/svg+xml; charset=utf-8")
                        .result(of(id(request)).chart(show(request))));
        config.routes.get(
                "/api/panel/script",
                request -> request.contentType("text/plain; charset=utf-8")
                        .header("Content-Disposition", "attachment; filename=\"rehearsal.yaml\"")
                        .result(of(id(request)).script()));
        config.routes.exception(Refused.class, (refused, request) -> {
            request.status(422);
            answer(request, Map.of("why", String.valueOf(refused.getMessage())));
        });
    }

    private static String id(Context request) {
        return Optional.ofNullable(request.queryParam("id")).orElse("");
    }

    private static Offer offer(Plant plant) {
        return new Offer(
                plant.stations().stream().map(Station::id).toList(),
                Drills.names().stream()
                        .map(name -> new Drill(name, Drills.script(name).title()))
                        .toList());
    }

    /** Something that was asked for and cannot be done, in words for the page. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    /** Begins a rehearsal: a drill with marks, or a station on a morning with nothing planned. */
    private PanelPlay begin(Desk desk, JsonNode asked) {
        Desk.Copy copy = desk.copy();
        Plant plant = Studio.known(copy);
        Station station = station(plant, asked.path("station").asText(""));
        Sequences.Control control = desk.sequences().of(plant, station);
        Sequence sequence = control.sequence().match(known -> known, why -> {
            throw new Refused(why);
        });
        Outcome<StationModel> model = StationModel.of(plant, station);
        String drill = asked.path("drill").asText("");
        boolean training = Drills.names().contains(drill);
        if (!training && !drill.isEmpty()) {
            throw new Refused("No drill is called \"" + drill + "\".");
        }
        Script script =
                training ? Drills.script(drill) : morning(asked.path("soonFull").asBoolean(false));
        return model.match(
                solved -> keep(
                        PanelPlay.of("p" + ++last, copy.step(), control.edit(), sequence, solved, script, training)),
                why -> {
                    throw new Refused(why);
                });
    }

    static Station station(Plant plant, String asked) {
        if (plant.stations().isEmpty()) {
            throw new Refused("This plant has no station, so there is no panel to rehearse.");
        }
        return plant.stations().stream()
                .filter(s -> asked.isEmpty() || s.id().equals(asked))
                .findFirst()
                .orElseThrow(() -> new Refused("No station is called \"" + asked + "\"."));
    }

    private static Script morning(boolean soonFull) {
        return new Script(
                "By hand",
                MORNING_s,
                WEEK_s,
                1,
                1,
                soonFull ? Optional.of(SOON_FULL_s) : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private synchronized PanelPlay keep(PanelPlay play) {
        plays.put(play.id(), play);
        if (plays.size() > MOST_AT_ONCE) {
            plays.remove(plays.keySet().iterator().next());
        }
        return play;
    }

    /** A rehearsal that is going on. */
    private synchronized PanelPlay of(String id) {
        PanelPlay play = plays.remove(id);
        if (play == null) {
            throw new Refused("This rehearsal is no longer kept. Begin another.");
        }
        plays.put(id, play);
        return play;
    }
}
