package dustwright.documents.answers;

import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.OneChange;
import dustwright.engine.sizing.OneChange.Changes;
import dustwright.engine.sizing.OpenSizes;
import java.util.List;

/** What one single change does for a plant: format {@code dustwright/changes/1}. */
public final class ChangesJson {
    private ChangesJson() {}

    /** The plant as it stands and every change, best first; what its sheets leave open beside. */
    public static String of(Plant plant, OpenSizes open, Changes changes, List<Finding> openInSheets) {
        return JsonText.of(json -> {
            PlantJson.head(json, "changes", plant);
            json.text("currency", open.currency());
            json.bool("holds", changes.holdsNow() && openInSheets.isEmpty());
            json.list("openInSheets", openInSheets, finding -> FindingJson.brief(json, finding));
            json.bool("partial", changes.partial());
            json.object("present", () -> change(json, changes.present()));
            json.list("changes", changes.changes(), change -> change(json, change));
        });
    }

    private static void change(JsonText json, OneChange change) {
        json.text("what", change.what());
        change.price().ifPresent(price -> json.number("price", price));
        json.count("failing", change.failing());
        json.bool("proven", change.proven());
        change.worst()
                .ifPresent(worst -> json.object("worst", () -> {
                    FindingJson.brief(json, worst.finding());
                    json.texts("open", worst.open());
                }));
    }
}
