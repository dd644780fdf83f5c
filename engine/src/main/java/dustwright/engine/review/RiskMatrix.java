package dustwright.engine.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A risk matrix in the words of those who use it.
 *
 * @param severities from mild to grave
 * @param likelihoods from rare to frequent
 * @param risks by severity, one word for each likelihood
 * @param accepted risks that need no action
 */
public record RiskMatrix(
        List<String> severities, List<String> likelihoods, Map<String, List<String>> risks, List<String> accepted) {
    /** Where the one a study begins with comes from. */
    public static final String BASIS =
            "our own words to begin with, no source: the owner puts in the matrix of the site before anything is judged by it";

    /** What a new study begins with. */
    public static final RiskMatrix TO_BEGIN_WITH = new RiskMatrix(
            List.of("nuisance", "one person hurt", "one person killed or maimed", "several people killed"),
            List.of("not expected", "once in the plant's life", "once in ten years", "every year"),
            Map.of(
                    "nuisance", List.of("low", "low", "low", "medium"),
                    "one person hurt", List.of("low", "medium", "medium", "high"),
                    "one person killed or maimed", List.of("medium", "medium", "high", "high"),
                    "several people killed", List.of("medium", "high", "high", "high")),
            List.of("low"));

    public RiskMatrix {
        severities = List.copyOf(severities);
        likelihoods = List.copyOf(likelihoods);
        accepted = List.copyOf(accepted);
        Map<String, List<String>> copy = new TreeMap<>();
        risks.forEach((severity, row) -> copy.put(severity, List.copyOf(row)));
        risks = java.util.Collections.unmodifiableMap(copy);
        if (!risks.keySet().equals(new HashSet<>(severities))) {
            throw new IllegalArgumentException(
                    "the matrix needs one row for each severity: " + String.join(", ", severities));
        }
        for (List<String> row : risks.values()) {
            if (row.size() != likelihoods.size()) {
                throw new IllegalArgumentException(
                        "each row of the matrix needs one risk for each likelihood: " + String.join(", ", likelihoods));
            }
        }
    }

    /** What somebody should look at once more; empty where nothing strikes the eye. */
    public List<String> odd() {
        List<String> odd = new ArrayList<>();
        if (likelihoods.size() > 1) {
            severities.stream()
                    .filter(s -> new HashSet<>(risks.getOrDefault(s, List.of())).size() == 1)
                    .forEach(s -> odd.add("The risk of \"" + s + "\" is the same at every likelihood."));
        }
        if (severities.size() > 1
                && risks.getOrDefault(severities.get(0), List.of())
                        .equals(risks.get(severities.get(severities.size() - 1)))) {
            odd.add("\"" + severities.get(0) + "\" and \"" + severities.get(severities.size() - 1)
                    + "\" carry the same risks.");
        }
        if (risks.values().stream().allMatch(accepted::containsAll)) {
            odd.add("Every risk of the matrix is accepted: no row can ask for an action.");
        }
        return odd;
    }

    /** The risk of a severity at a likelihood; both are words of this matrix. */
    public String risk(String severity, String likelihood) {
        List<String> row = risks.getOrDefault(severity, List.of());
        int column = likelihoods.indexOf(likelihood);
        if (row.isEmpty() || column < 0) {
            throw new IllegalArgumentException(severity + " at " + likelihood + " is not in the matrix");
        }
        return row.get(column);
    }
}
