package dustwright.documents.answers;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;

/** A finding, and the steps that lead to it. */
final class FindingJson {
    private FindingJson() {}

    static void brief(JsonText json, Finding finding) {
        json.text("id", finding.id());
        json.text("code", finding.code().name());
        PlantJson.place(json, finding.where());
        json.text("state", finding.state());
        json.text("side", finding.side() == Side.AT_LEAST ? "at least" : "at most");
        if (finding.unjudged()) {
            json.nothing("value");
        } else {
            json.si("value", finding.value());
        }
        json.si("limit", finding.limit());
        json.text("unit", finding.value().siSymbol());
        json.text("measures", finding.value().dimension().words());
        margin(json, finding);
        json.bool("holds", finding.holds());
        json.bool("decided", finding.decided());
        if (finding.unjudged()) {
            json.text("why", finding.why());
        } else if (finding.counted() && finding.fails()) {
            json.text("why", finding.derivation().steps().get(0).result().meaning());
        }
    }

    /** Null where nobody can say by how much it holds. */
    static void margin(JsonText json, Finding finding) {
        if (finding.decided()) {
            json.number("margin", finding.margin());
        } else {
            json.nothing("margin");
        }
    }

    static void withDerivation(JsonText json, Finding finding) {
        brief(json, finding);
        json.object("derivation", () -> {
            json.list("steps", finding.derivation().steps(), step -> step(json, step));
            PlantJson.source(json, "limitSource", finding.derivation().limitSource());
        });
    }

    static void step(JsonText json, Step step) {
        json.text("equation", step.equation());
        json.text("formula", step.formula());
        json.list("inputs", step.inputs(), input -> term(json, input));
        json.object("result", () -> term(json, step.result()));
        PlantJson.source(json, "source", step.source());
    }

    private static void term(JsonText json, Term term) {
        json.text("symbol", term.symbol());
        json.text("meaning", term.meaning());
        json.quantity("value", term.value());
    }
}
