package dustwright.documents.answers;

import dustwright.documents.control.RehearsalText;
import dustwright.engine.rehearsal.Played;
import java.util.Locale;

/** How a rehearsal went, for a program: format {@code dustwright/rehearse/1}. Times are milliseconds from the beginning. */
public final class RehearsalJson {
    private RehearsalJson() {}

    /** The whole course. */
    public static String of(Played played) {
        return JsonText.of(json -> {
            json.text("format", "dustwright/rehearse/1");
            json.text("caution", RehearsalText.CAUTION);
            json.text("title", played.script().title());
            json.text("sequence", played.sequence());
            json.text("station", played.station());
            json.count("seed", played.seed());
            json.number("begins_s", played.script().begins_s());
            json.number("lasts_s", played.script().lasts_s());
            json.bool("holds", played.holds());
            json.number("begun_kg", played.begun_kg());
            json.number("collected_kg", played.collected_kg());
            json.number("removed_kg", played.removed_kg());
            json.number("spilt_kg", played.spilt_kg());
            json.number("left_kg", played.left_kg());
            json.list("must", played.musts(), verdict -> {
                json.text("when", verdict.must().when().words());
                json.text("condition", verdict.must().condition().text());
                json.bool("met", verdict.met());
            });
            json.list("moments", played.moments(), moment -> {
                json.count("at_ms", moment.at_ms());
                json.text("about", moment.who().words());
                json.text("words", moment.words());
            });
            json.list("traces", played.traces(), trace -> {
                json.text("amount", trace.quantity().words());
                json.text("unit", unit(trace.quantity()));
                json.list("points", trace.points(), point -> {
                    json.count("at_ms", point.at_ms());
                    json.number("value", point.value());
                });
            });
            json.list("lanes", played.lanes(), lane -> {
                json.text("kind", lane.kind().name().toLowerCase(Locale.ROOT));
                json.text("name", lane.name());
                json.text("words", lane.words());
                json.list("on", lane.spans(), span -> {
                    json.count("from_ms", span.from_ms());
                    json.count("to_ms", span.to_ms());
                });
            });
            json.list("assumptions", played.assumptions(), assumption -> {
                PlantJson.place(json, assumption.place());
                json.text("what", assumption.what());
                PlantJson.source(json, "basis", assumption.basis());
            });
        });
    }

    private static String unit(Played.Amount amount) {
        return switch (amount) {
            case RECEIVER, CONTAINER -> "kg";
            case VACUUM, FILTER -> "Pa";
            case CURRENT -> "A";
        };
    }
}
