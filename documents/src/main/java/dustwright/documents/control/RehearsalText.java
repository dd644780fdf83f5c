package dustwright.documents.control;

import dustwright.documents.writing.Show;
import dustwright.engine.finding.Assumption;
import dustwright.engine.quantity.Mass;
import dustwright.engine.rehearsal.Played;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a rehearsal went, in lines for a terminal. */
public final class RehearsalText {
    /** What a rehearsal is not. */
    public static final String CAUTION =
            "A rehearsal shows how sequence and station behave under the assumptions named, for training and review. It is no proof, no safety"
                    + " function and no instruction for work on machines: lock out, follow the site's rules; a licensed engineer decides.";

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*");

    /** Significant figures of the whole, where the unit has no places of its own. */
    private static final int FIGURES = 4;

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
        writer.list("Must be so", verdicts(played));
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

    /** What must be so, and whether it was, as a reader of the panel knows its signals. */
    public static List<String> verdicts(Played played) {
        Map<String, String> words = new HashMap<>(Map.of("and", "and", "or", "or", "not", "not"));
        played.lanes()
                .forEach(l -> words.put(
                        l.name(),
                        switch (l.kind()) {
                            case STEP -> "step " + l.words();
                            case OUTPUT -> l.words();
                            case LAMP -> "lamp " + l.words();
                        }));
        return played.musts().stream()
                .map(v ->
                        (v.met() ? "met:     " : "NOT MET: ") + v.must().when().words() + " "
                                + NAME.matcher(v.must().condition().text())
                                        .replaceAll(found -> Matcher.quoteReplacement(words.getOrDefault(
                                                found.group(), found.group().replace('_', ' ')))))
                .toList();
    }

    /**
     * Dust that came and went, all in one unit to the same place. What lies there at the end is the rest of the printed figures, so that whoever adds them up finds them right; from what it truly is it differs by their
     * rounding at most.
     */
    public static String totals(Played played, Show show) {
        Mass whole = new Mass(played.begun_kg() + played.collected_kg());
        Show.Scale scale = show.axis(whole);
        int before = Math.max(
                1, new BigDecimal(scale.number(whole)).toBigInteger().toString().length());
        int places = scale.decimals() < 0 ? Math.max(0, FIGURES - before) : scale.decimals();
        BigDecimal begun = printed(played.begun_kg(), scale, places);
        BigDecimal came = printed(played.collected_kg(), scale, places);
        BigDecimal gone = printed(played.removed_kg(), scale, places);
        BigDecimal spilt = printed(played.spilt_kg(), scale, places);
        UnaryOperator<String> unit = number -> number + " " + scale.symbol();
        return "Dust: " + unit.apply(begun.toPlainString()) + " lay there at the beginning and "
                + unit.apply(came.toPlainString()) + " came in, together "
                + unit.apply(begun.add(came).toPlainString()) + "; " + unit.apply(gone.toPlainString())
                + " were taken away in containers, "
                + (spilt.signum() > 0 ? unit.apply(spilt.toPlainString()) + " ran over onto the floor, " : "")
                + "and the rest, "
                + unit.apply(begun.add(came).subtract(gone).subtract(spilt).toPlainString())
                + ", lies there at the end in receiver, cloth and container.";
    }

    private static BigDecimal printed(double mass_kg, Show.Scale scale, int places) {
        return new BigDecimal(scale.number(new Mass(mass_kg))).setScale(places, RoundingMode.HALF_UP);
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
