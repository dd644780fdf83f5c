package dustwright.plantfile;

import dustwright.engine.review.Note;
import dustwright.engine.review.Notes;
import dustwright.engine.review.RiskMatrix;
import dustwright.plantfile.keys.HazardStudyKeys;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a hazard study as strictly as a plant file: what a team has written, or all faults together, each with its line. Never an exception. */
public final class HazardStudyReader {
    private final Section top;
    private final SourceMap lines;
    private final Faults faults;

    private HazardStudyReader(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
    }

    /** Reads a file. */
    public static HazardStudyReading read(Path file) {
        FileText text = FileText.of(file);
        return text.text()
                .map(HazardStudyReader::read)
                .orElseGet(() ->
                        new HazardStudyReading.Faults(text.fault().stream().toList()));
    }

    /** Reads the text of a study. */
    public static HazardStudyReading read(String text) {
        Faults faults = new Faults();
        Optional<Tree.Entries> tree = TreeReader.read(text, "hazard study: 1", faults);
        if (tree.isEmpty()) {
            return new HazardStudyReading.Faults(faults.inOrderOfTheFile());
        }
        Section top = new Checker(faults, new Taken(), Optional::empty).group(tree.get(), HazardStudyKeys.TOP, "", "");
        if (faults.none()) {
            Optional<Notes> notes = new HazardStudyReader(top, new SourceMap(tree.get()), faults).notes();
            if (notes.isPresent() && faults.none()) {
                return new HazardStudyReading.Read(notes.get());
            }
        }
        return new HazardStudyReading.Faults(faults.inOrderOfTheFile());
    }

    private Optional<Notes> notes() {
        Optional<RiskMatrix> matrix = matrix(top.section("risk matrix").orElseThrow());
        if (matrix.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Note> rows = new LinkedHashMap<>();
        top.named("rows").forEach((id, row) -> rows.put(String.valueOf(id), note((Section) row, matrix.get())));
        return Optional.of(
                new Notes(words(top, "team"), top.find("date", String.class).orElse(""), matrix.get(), rows));
    }

    private Optional<RiskMatrix> matrix(Section matrix) {
        distinct(matrix, "severity");
        distinct(matrix, "likelihood");
        Map<String, List<String>> risks = new LinkedHashMap<>();
        matrix.named("risk")
                .forEach((severity, row) -> risks.put(
                        String.valueOf(severity),
                        ((List<?>) row).stream().map(String::valueOf).toList()));
        List<String> accepted = words(matrix, "accepted");
        for (String word : accepted) {
            if (risks.values().stream().noneMatch(row -> row.contains(word))) {
                fault("risk matrix.accepted", "\"" + word + "\" is no risk of the matrix", "a word of \"risk\"");
            }
        }
        try {
            return Optional.of(new RiskMatrix(words(matrix, "severity"), words(matrix, "likelihood"), risks, accepted));
        } catch (IllegalArgumentException uneven) {
            fault("risk matrix.risk", String.valueOf(uneven.getMessage()), "a full table");
            return Optional.empty();
        }
    }

    private void distinct(Section matrix, String key) {
        List<String> words = words(matrix, key);
        words.stream()
                .filter(word -> words.indexOf(word) != words.lastIndexOf(word))
                .findFirst()
                .ifPresent(word -> fault(
                        "risk matrix." + key,
                        "\"" + Names.shortened(word) + "\" stands twice in \"" + key + "\"",
                        "a different word for each"));
    }

    private Note note(Section row, RiskMatrix matrix) {
        chosen(row, "severity", matrix.severities());
        chosen(row, "likelihood", matrix.likelihoods());
        if (row.has("severity") != row.has("likelihood")) {
            fault(row.path(), "severity and likelihood belong together", "both, or neither while it is not judged");
        }
        return new Note(
                text(row, "node"),
                text(row, "deviation"),
                text(row, "cause"),
                text(row, "consequence"),
                list(row, "safeguards"),
                list(row, "missing"),
                text(row, "severity"),
                text(row, "likelihood"),
                text(row, "action"),
                text(row, "who"),
                text(row, "by"),
                text(row, "status"),
                text(row, "note"));
    }

    private void chosen(Section row, String key, List<String> words) {
        text(row, key).filter(said -> !words.contains(said)).ifPresent(said -> {
            String path = row.path() + "." + key;
            faults.add(
                    lines.value(path).orElse(row.span()),
                    path,
                    "\"" + Names.shortened(said) + "\" is no " + key + " of the matrix",
                    "one of " + String.join(", ", words));
        });
    }

    private static Optional<String> text(Section row, String key) {
        return row.find(key, String.class);
    }

    private static Optional<List<String>> list(Section row, String key) {
        return row.has(key) ? Optional.of(words(row, key)) : Optional.empty();
    }

    private static List<String> words(Section section, String key) {
        return section.items(key).stream().map(String::valueOf).toList();
    }

    private void fault(String path, String message, String expected) {
        faults.add(lines.value(path).orElse(top.span()), path, message, expected);
    }
}
