package dustwright.documents.control;

import dustwright.documents.writing.Show;
import dustwright.engine.finding.Assumption;
import dustwright.engine.quantity.Mass;
import dustwright.engine.rehearsal.Played;
import dustwright.engine.rehearsal.Script;
import java.util.List;
import java.util.Locale;

/** How a rehearsal went, in lines for a terminal. */
public final class RehearsalText {
    /** What a rehearsal is not. */
    public static final String CAUTION =
            "A rehearsal shows how sequence and station behave under the assumptions named, for training and review. It is no proof, no safety"
                    + " function and no instruction for work on machines: lock out, follow the site's rules; a licensed engineer decides.";

    private final StringBuilder text = new StringBuilder();

    private RehearsalText() {}

    /** The whole course. */
    public static String of(Played played, Show show) {
        RehearsalText writer = new RehearsalText();
        writer.head(played);
        writer.line("");
        for (Played.Moment m : played.moments()) {
            writer.line(String.format(
                    Locale.ROOT,
                    "  %-10s %-8s %s",
                    Clock.of(played, m.at_ms()),
                    m.who().words(),
                    m.words()));
        }
        writer.list("What the operator sees", played.script().sees());
        writer.list("What the operator should do", played.script().does());
        writer.line("");
        writer.list(
                "Must be so",
                played.musts().stream().map(RehearsalText::verdict).toList());
        writer.line("");
        writer.line(totals(played, show));
        writer.list(
                "Taken as common practice, without a source",
                played.assumptions().stream().map(Assumption::what).toList());
        writer.line("");
        writer.line(CAUTION);
        return writer.text.toString();
    }

    private void head(Played played) {
        line(played.script().title() + " — " + played.sequence());
        line("Begins " + Clock.of(played, 0) + ", seed " + played.seed() + ": the same seed goes the same way.");
    }

    /** What must be so, and whether it was. */
    public static String verdict(Played.Verdict verdict) {
        Script.Must must = verdict.must();
        String when = must.when().words();
        return (verdict.met() ? "met:     " : "NOT MET: ") + when + " "
                + must.condition().text();
    }

    /** Dust that came and went. */
    public static String totals(Played played, Show show) {
        return "Dust that was there at the beginning: " + show.full(new Mass(played.begun_kg())) + "; that came in: "
                + show.full(new Mass(played.collected_kg())) + "; taken away in containers: "
                + show.full(new Mass(played.removed_kg())) + ".";
    }

    private void list(String title, List<String> items) {
        if (!items.isEmpty()) {
            line("");
            line(title);
            items.forEach(i -> line("  " + i));
        }
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
