package dustwright.documents.answers;

import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.plant.Plant;
import java.util.List;
import java.util.Map;

/** What coverage found: format {@code dustwright/cover/1}. */
public final class CoverJson {
    private CoverJson() {}

    /** The question, and per number of users and condition the verdict with the worst state of every requirement and place. */
    public static String of(Plant plant, Coverage coverage) {
        return JsonText.of(json -> {
            PlantJson.head(json, "cover", plant);
            json.bool("holds", coverage.holds());
            json.bool("partial", coverage.partial());
            json.list("atMost", List.copyOf(coverage.question().atMost().entrySet()), zone -> zone(json, zone));
            json.list("answers", coverage.answers(), answer -> answer(json, answer));
        });
    }

    private static void zone(JsonText json, Map.Entry<String, Integer> zone) {
        json.text("zone", zone.getKey());
        json.count("users", zone.getValue());
    }

    private static void answer(JsonText json, Answer answer) {
        json.count("users", answer.users());
        json.text("condition", answer.condition());
        json.text("verdict", answer.verdict().words());
        json.text("sets", answer.sets().toString());
        json.text("method", answer.method().words());
        json.count("solved", answer.solved());
        json.text("why", answer.why());
        json.list("worst", answer.worst(), worst -> {
            FindingJson.brief(json, worst.finding());
            json.texts("open", worst.open());
        });
    }
}
