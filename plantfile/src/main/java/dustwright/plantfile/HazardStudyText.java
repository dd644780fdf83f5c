package dustwright.plantfile;

import dustwright.engine.review.Deviation;
import dustwright.engine.review.RiskMatrix;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The file of a hazard study as text. Lines that begin with {@code #:} are the program's and are written anew each time; every other line is
 * the team's and stays as it is, letter by letter.
 */
public final class HazardStudyText {
    private static final String OURS = "#:";
    private static final int WIDEST = 130;
    private static final Pattern ROW = Pattern.compile("  (\"?)([^\\s#\"][^:\"]*)\\1:(\\s.*)?");

    private HazardStudyText() {}

    /** A new file for the lines of a plant, with a matrix to begin with. */
    public static String fresh(String plant, List<Deviation> lines) {
        StringBuilder text = new StringBuilder();
        text.append("# Hazard study of ").append(plant).append(".\n");
        text.append(
                "# Lines that begin with #: are the program's and are written anew; all others are yours and stay.\n");
        text.append(
                "# Judge a row by \"severity\" and \"likelihood\"; add \"action\", \"who\", \"by\", \"status\", \"note\". Your own\n");
        text.append(
                "# \"cause\", \"consequence\", \"safeguards\" or \"missing\" go before those of the program. A row of your own has a\n");
        text.append(
                "# name of its own, \"node\" and \"deviation\". It is a list of prompts: a qualified team judges and signs,\n");
        text.append(
                "# only tests of the own dust count, authority having jurisdiction, insurer and local code decide.\n");
        text.append("hazard study: 1\nteam: []\n");
        text.append("risk matrix:                # ").append(RiskMatrix.BASIS).append('\n');
        RiskMatrix matrix = RiskMatrix.TO_BEGIN_WITH;
        text.append("  severity: ").append(list(matrix.severities())).append('\n');
        text.append("  likelihood: ").append(list(matrix.likelihoods())).append('\n');
        text.append("  risk:\n");
        matrix.severities()
                .forEach(s -> text.append("    ")
                        .append(quoted(s))
                        .append(": ")
                        .append(list(matrix.risks().getOrDefault(s, List.of())))
                        .append('\n'));
        text.append("  accepted: ").append(list(matrix.accepted())).append('\n');
        text.append("rows:\n");
        lines.forEach(line -> append(text, ours(line), List.of("  " + line.id() + ": {}")));
        return text.toString();
    }

    /** The same file for the lines the plant now gives rise to: what the team wrote stays, rows that are new are added. */
    public static String updated(String before, List<Deviation> lines) {
        List<String> head = new ArrayList<>();
        Map<String, List<String>> blocks = new LinkedHashMap<>();
        split(before, head, blocks);
        StringBuilder text = new StringBuilder();
        head.forEach(line -> text.append(line).append('\n'));
        for (Deviation line : lines) {
            List<String> block = blocks.remove(line.id());
            append(text, ours(line), block == null ? List.of("  " + line.id() + ": {}") : block);
        }
        blocks.forEach((id, block) -> append(
                text,
                block.stream()
                                .anyMatch(l -> l.strip().startsWith("deviation:")
                                        || l.contains("{deviation:")
                                        || l.contains(", deviation:"))
                        ? List.of()
                        : List.of(
                                "the plant no longer gives rise to this row; delete it, or keep it with a \"deviation\" of your own"),
                block));
        return text.toString();
    }

    /** Parts the file: all up to "rows:", then the lines of each row, with the remarks above it. */
    private static void split(String before, List<String> head, Map<String, List<String>> blocks) {
        List<String> waiting = new ArrayList<>();
        List<String> current = head;
        boolean inRows = false;
        for (String line :
                before.lines().filter(l -> !l.strip().startsWith(OURS)).toList()) {
            Matcher row = ROW.matcher(line);
            if (inRows && row.matches()) {
                current = new ArrayList<>(waiting);
                waiting.clear();
                current.add(line);
                blocks.put(row.group(2).strip(), current);
            } else if (inRows && line.startsWith("  #")) {
                waiting.add(line);
            } else {
                current.addAll(waiting);
                waiting.clear();
                current.add(line);
                inRows |= line.strip().startsWith("rows:");
            }
        }
        current.addAll(waiting);
    }

    private static void append(StringBuilder text, List<String> ours, List<String> block) {
        ours.forEach(o -> text.append("  ").append(OURS).append(' ').append(o).append('\n'));
        block.forEach(l -> text.append(l).append('\n'));
    }

    private static List<String> ours(Deviation line) {
        List<String> all = new ArrayList<>();
        all.add(line.node() + ": " + line.deviation());
        wrapped(all, "because", line.cause());
        wrapped(all, "then", line.consequence());
        line.safeguards().forEach(s -> wrapped(all, "has", s));
        line.missing().forEach(m -> wrapped(all, "lacks", m));
        return all;
    }

    private static void wrapped(List<String> all, String head, String text) {
        StringBuilder line = new StringBuilder("  " + head + ": ");
        for (String word : text.split(" ", -1)) {
            if (line.length() + word.length() > WIDEST) {
                all.add(line.toString().stripTrailing());
                line = new StringBuilder("      ");
            }
            line.append(word).append(' ');
        }
        all.add(line.toString().stripTrailing());
    }

    private static String list(List<String> words) {
        return words.stream().map(HazardStudyText::quoted).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String quoted(String words) {
        return words.matches("[a-z ]+") ? words : "\"" + words.replace("\"", "'") + "\"";
    }
}
