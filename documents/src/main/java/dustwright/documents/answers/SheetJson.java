package dustwright.documents.answers;

import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;

/** A sheet of equipment and its figures. */
final class SheetJson {
    private SheetJson() {}

    static void sheet(JsonText json, Sheet sheet) {
        json.text("id", sheet.id());
        json.text("title", sheet.title());
        PlantJson.place(json, sheet.about());
        json.list("figures", sheet.entries(), entry -> brief(json, entry));
        json.list("findings", sheet.findings(), finding -> FindingJson.brief(json, finding));
    }

    static void withDerivation(JsonText json, Entry entry) {
        brief(json, entry);
        json.list("steps", entry.derivation().steps(), step -> FindingJson.step(json, step));
    }

    private static void brief(JsonText json, Entry entry) {
        json.text("id", entry.id());
        json.text("name", entry.name());
        Answer answer = entry.answer();
        if (answer instanceof Answer.Known known) {
            json.quantity("value", known.value());
        } else if (answer instanceof Answer.Words words) {
            json.text("words", words.text());
        } else if (answer instanceof Answer.Unknown unknown) {
            json.text("unknown", unknown.why());
        }
        PlantJson.source(json, "source", entry.derivation().limitSource());
    }
}
