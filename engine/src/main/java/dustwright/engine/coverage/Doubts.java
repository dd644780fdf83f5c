package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Method;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Tube;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What stands against a verdict that every set holds, though no set found fails. */
final class Doubts {
    private final Plant plant;

    Doubts(Plant plant) {
        this.plant = plant;
    }

    /**
     * The first doubt; empty where there is none.
     *
     * @param bounds what the bounds leave open, or empty
     */
    String of(Tally tally, Method method, State condition, int users, String bounds) {
        return Stream.of(
                        users == 0 ? "" : unknownDust(condition).orElse(""),
                        doubt(tally, method),
                        notJudged(tally.worst()),
                        bounds,
                        method != Method.EVERY_SET && lumpMayStop()
                                ? "some dust has pieces wider than some bore, and only solving every set tells whether they come there"
                                : "")
                .filter(doubt -> !doubt.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** Whether the plant file lacks what would decide: then no more work does. */
    boolean lacksEntries(Answer answer, State condition) {
        return unknownDust(condition).isPresent() || !notJudged(answer.worst()).isEmpty();
    }

    /** Whether the largest piece of any dust is wider than the narrowest hose, tube or tool of the plant. */
    private boolean lumpMayStop() {
        double widest_m = plant.dusts().stream()
                .flatMap(dust -> dust.largestPiece().stream())
                .mapToDouble(Length::metres)
                .max()
                .orElse(0);
        return Stream.of(
                        plant.hoses().stream().map(Hose::bore),
                        plant.tubes().stream().map(Tube::bore),
                        plant.tools().stream().flatMap(tool -> tool.widest().stream()))
                .flatMap(bores -> bores)
                .anyMatch(bore -> bore.metres() < widest_m);
    }

    /** A dust whose loss is not known and that some set feeds: then nothing is shown to hold. */
    private Optional<String> unknownDust(State condition) {
        return plant.inlets().stream()
                .filter(inlet -> condition.feeding().contains(inlet.id()) && plant.feedsUnknownLoss(inlet))
                .findFirst()
                .flatMap(inlet -> inlet.dust())
                .map(dust ->
                        "what dust " + dust + " costs is not known; enter \"particle size\" and \"particle density\"");
    }

    /** What is asked and could not be judged in some set; empty where all could. */
    private static String notJudged(List<Worst> worst) {
        return worst.stream()
                .map(Worst::finding)
                .filter(Finding::unjudged)
                .findFirst()
                .map(finding -> finding.code().title() + ", " + finding.where() + ": "
                        + finding.why().replaceFirst("\\.$", ""))
                .orElse("");
    }

    /** Why a set may be worse than the worst found, or have no answer; empty when not. */
    private static String doubt(Tally tally, Method method) {
        if (!tally.unsolved().isEmpty()) {
            return "a state has no answer: " + tally.unsolved();
        }
        if (method == Method.EVERY_SET) {
            return "";
        }
        return tally.gap() > 1
                ? "an envelope and the solved state that makes it differ by more than its bound allows"
                : "";
    }
}
