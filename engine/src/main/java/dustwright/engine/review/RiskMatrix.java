package dustwright.engine.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        String gravest = severities.get(severities.size() - 1);
        String oftenest = likelihoods.get(likelihoods.size() - 1);
        if (accepted.contains(risk(gravest, oftenest))
                && !risks.values().stream().allMatch(accepted::containsAll)) {
            odd.add("The worst case, " + gravest + ", " + oftenest
                    + ", is accepted: no row can ask for an action because of it.");
        }
        turned().ifPresent(odd::add);
        if (risks.values().stream().allMatch(accepted::containsAll)) {
            odd.add("Every risk of the matrix is accepted: no row can ask for an action.");
        }
        return odd;
    }

    /** Graver or more frequent, and yet a lower risk: accepted where the milder or rarer is not, or below a word that stands below it elsewhere. */
    private Optional<String> turned() {
        List<Worse> steps = worse();
        for (Worse step : steps) {
            if (accepted.contains(step.to) && !accepted.contains(step.from)) {
                return Optional.of("\"" + step.to + "\" is accepted and \"" + step.from
                        + "\" is not, though it is the worse case: " + step.where + ".");
            }
            for (Worse other : steps) {
                if (step.from.equals(other.to) && step.to.equals(other.from)) {
                    return Optional.of("\"" + step.from + "\" stands below \"" + step.to + "\" at " + step.where
                            + ", and above it at " + other.where + ": one of the two is the wrong way round.");
                }
            }
        }
        return Optional.empty();
    }

    private record Worse(String from, String to, String where) {}

    /** Every step of the matrix to the next graver severity or the next more frequent likelihood that changes the risk. */
    private List<Worse> worse() {
        List<Worse> steps = new ArrayList<>();
        for (int s = 0; s < severities.size(); s++) {
            for (int l = 0; l < likelihoods.size(); l++) {
                if (s + 1 < severities.size()) {
                    step(steps, severities.get(s), likelihoods.get(l), severities.get(s + 1), likelihoods.get(l));
                }
                if (l + 1 < likelihoods.size()) {
                    step(steps, severities.get(s), likelihoods.get(l), severities.get(s), likelihoods.get(l + 1));
                }
            }
        }
        return steps;
    }

    private void step(List<Worse> steps, String severity, String likelihood, String graver, String oftener) {
        String from = risk(severity, likelihood);
        String to = risk(graver, oftener);
        if (!from.equals(to)) {
            steps.add(new Worse(from, to, severity + ", " + likelihood + " to " + graver + ", " + oftener));
        }
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
