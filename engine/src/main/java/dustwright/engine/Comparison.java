package dustwright.engine;

import dustwright.engine.finding.Finding;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Two designs side by side: requirements whose verdict or margin differ, and figures that differ. What stands in one of them only is there with the other side
 * empty. Places are the same when they have the same kind and name.
 *
 * @param findings verdicts that differ first, then the smallest margin of both
 * @param figures in the order of the sheets
 */
public record Comparison(List<Judged> findings, List<Figure> figures) {
    public Comparison {
        findings = List.copyOf(findings);
        figures = List.copyOf(figures);
    }

    /** One requirement at one place, each in the state in which it is worst. */
    public record Judged(Optional<Finding> before, Optional<Finding> after) {
        /** Either of them, for its words. */
        public Finding any() {
            return after.or(() -> before).orElseThrow();
        }

        /** Whether one holds and the other does not, or is not known. */
        public boolean verdictDiffers() {
            return !verdict(before).equals(verdict(after));
        }

        private double least() {
            return Math.min(
                    before.map(Finding::margin).orElse(Double.MAX_VALUE),
                    after.map(Finding::margin).orElse(Double.MAX_VALUE));
        }

        private static String verdict(Optional<Finding> finding) {
            return finding.map(f -> f.holds() ? "holds" : f.decided() ? "fails" : "unknown")
                    .orElse("none");
        }
    }

    /**
     * One figure of a sheet.
     *
     * @param sheetId of the sheet that {@code sheet} is the title of
     */
    public record Figure(String sheetId, String sheet, String name, Optional<Answer> before, Optional<Answer> after) {
        /**
         * By how much the two differ, of the larger one [-]; infinite where they are not two numbers. Temperatures count from absolute
         * zero.
         */
        public double change() {
            if (before.orElse(null) instanceof Answer.Known was
                    && after.orElse(null) instanceof Answer.Known is
                    && was.value().dimension() == is.value().dimension()) {
                double larger =
                        Math.max(Math.abs(was.value().si()), Math.abs(is.value().si()));
                return larger == 0 ? 0 : Math.abs(is.value().si() - was.value().si()) / larger;
            }
            return Double.POSITIVE_INFINITY;
        }
    }

    /** What differs between two studies. */
    public static Comparison of(Study before, Study after) {
        return new Comparison(judged(before, after), figures(before, after));
    }

    private static List<Judged> judged(Study before, Study after) {
        Map<String, Finding> was = byPlace(before);
        Map<String, Finding> is = byPlace(after);
        Map<String, Judged> all = new LinkedHashMap<>();
        was.forEach((key, finding) -> all.put(key, new Judged(Optional.of(finding), Optional.ofNullable(is.get(key)))));
        is.forEach((key, finding) -> all.putIfAbsent(key, new Judged(Optional.empty(), Optional.of(finding))));
        return all.values().stream()
                .filter(Comparison::differs)
                .sorted(Comparator.comparing((Judged j) -> !j.verdictDiffers()).thenComparing(Judged::least))
                .toList();
    }

    private static boolean differs(Judged judged) {
        return judged.verdictDiffers()
                || !judged.before().map(Finding::margin).equals(judged.after().map(Finding::margin));
    }

    private static Map<String, Finding> byPlace(Study study) {
        Map<String, Finding> found = new LinkedHashMap<>();
        study.worstPerPlace()
                .forEach(f -> found.put(
                        f.code() + "/" + f.where().kind() + "/" + f.where().id(), f));
        return found;
    }

    private static List<Figure> figures(Study before, Study after) {
        Map<String, Figure> was = entries(before);
        Map<String, Figure> is = entries(after);
        List<Figure> differ = new ArrayList<>();
        is.forEach((id, figure) -> {
            Optional<Answer> old = Optional.ofNullable(was.get(id)).flatMap(Figure::after);
            if (!old.equals(figure.after())) {
                differ.add(new Figure(figure.sheetId(), figure.sheet(), figure.name(), old, figure.after()));
            }
        });
        was.forEach((id, figure) -> {
            if (!is.containsKey(id)) {
                differ.add(
                        new Figure(figure.sheetId(), figure.sheet(), figure.name(), figure.after(), Optional.empty()));
            }
        });
        return differ;
    }

    private static Map<String, Figure> entries(Study study) {
        Map<String, Figure> entries = new LinkedHashMap<>();
        for (Sheet sheet : study.sheets()) {
            for (Entry entry : sheet.entries()) {
                entries.put(
                        sheet.id() + "/" + entry.id(),
                        new Figure(
                                sheet.id(),
                                sheet.title(),
                                entry.name(),
                                Optional.empty(),
                                Optional.of(entry.answer())));
            }
        }
        return entries;
    }
}
