package dustwright.documents.answers;

import dustwright.engine.OneUserVelocity;
import dustwright.engine.StateAnswer;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Answers for a program: JSON under a versioned format, SI throughout, the unit in the key. Numbers are written with all their digits; a
 * number that is not finite is never written.
 */
public final class JsonAnswers {
    /** Every answer that has a schema, by its name. */
    public static final List<String> ANSWERS = List.of(
            "verify", "solve", "cover", "size", "changes", "explain", "sheet", "figure", "catalogue", "rehearse");

    private JsonAnswers() {}

    /** Every requirement in every state, and the worst per place with its derivation: format {@code dustwright/verify/2}. */
    public static String verify(Study study) {
        return JsonText.of(json -> {
            PlantJson.head(json, "verify", study.plant());
            json.bool("holds", study.holds());
            json.list("states", study.states(), state -> verified(json, state));
            json.list("oneUser", study.oneUser(), one -> oneUser(json, one));
            json.list("sheets", study.sheets(), sheet -> SheetJson.sheet(json, sheet));
            json.list("worst", study.worstPerPlace(), finding -> FindingJson.withDerivation(json, finding));
        });
    }

    /** Every pressure, flow and velocity of the states asked: format {@code dustwright/solve/2}. */
    public static String solve(Study study) {
        return JsonText.of(json -> {
            PlantJson.head(json, "solve", study.plant());
            json.list("states", study.states(), state -> {
                StateJson.state(json, study.plant(), state);
                json.list("findings", state.findings(), finding -> FindingJson.brief(json, finding));
            });
        });
    }

    /** One finding down to its sources: format {@code dustwright/explain/2}. */
    public static String explain(Study study, Finding finding) {
        return JsonText.of(json -> {
            PlantJson.head(json, "explain", study.plant());
            json.object("finding", () -> {
                FindingJson.withDerivation(json, finding);
                FindingCode code = finding.code();
                json.text("title", code.title());
                json.text("meaning", code.meaning());
                json.text("remedy", code.remedy());
            });
        });
    }

    /** Sheets of equipment: format {@code dustwright/sheet/2}. */
    public static String sheet(Study study, List<Sheet> sheets) {
        return JsonText.of(json -> {
            PlantJson.head(json, "sheet", study.plant());
            json.list("sheets", sheets, sheet -> SheetJson.sheet(json, sheet));
        });
    }

    /** One figure of a sheet down to its sources: format {@code dustwright/figure/1}. */
    public static String figure(Study study, Sheet sheet, Entry entry) {
        return JsonText.of(json -> {
            PlantJson.head(json, "figure", study.plant());
            json.text("sheet", sheet.id());
            json.object("figure", () -> SheetJson.withDerivation(json, entry));
        });
    }

    /**
     * JSON Schema of an answer.
     *
     * @param answer one of {@link #ANSWERS}
     */
    public static String schema(String answer) {
        if (!ANSWERS.contains(answer)) {
            throw new IllegalArgumentException("no answer is called " + answer + ": " + String.join(", ", ANSWERS));
        }
        try (InputStream in = JsonAnswers.class.getResourceAsStream("answers.schema.json")) {
            if (in == null) {
                throw new IllegalStateException("answers.schema.json is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("FORMAT", PlantJson.format(answer))
                    .replace("ANSWER", answer);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void verified(JsonText json, StateAnswer answer) {
        StateJson.asked(json, answer.state());
        StateJson.solvedOrWhy(json, answer);
        json.bool("holds", answer.holds());
        json.list("findings", answer.findings(), finding -> FindingJson.brief(json, finding));
    }

    private static void oneUser(JsonText json, OneUserVelocity one) {
        json.text("run", one.run());
        json.text("inlet", one.inlet());
        json.text("state", one.state());
        json.number("slowest_mPerS", one.slowest().metresPerSecond());
        json.number("least_mPerS", one.least().metresPerSecond());
        json.number("margin", one.margin());
    }
}
