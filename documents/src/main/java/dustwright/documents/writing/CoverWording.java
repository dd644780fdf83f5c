package dustwright.documents.writing;

import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.ByHand;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Sentences about coverage that terminal and page share. */
public final class CoverWording {
    /** What is no remedy. */
    public static final String NO_REMEDY =
            "Separate headers and smaller tubes are drawn along the routes there are; a purge needs more air to lift dust that has"
                    + " settled than to keep it moving, so try it. The relief valve is no remedy: its air does not pass the tubing.";

    /** Within this two margins are the same [-]. */
    private static final double ROUNDING = 1e-9;

    private CoverWording() {}

    /** The verdict over all answers, with the worst set where some set does not hold. */
    public static String verdict(Coverage coverage, Show show) {
        List<Answer> failing = with(coverage, Verdict.FAILS);
        if (!failing.isEmpty()) {
            Worst worst = failing.get(0).worst().get(0);
            for (Answer answer : failing) {
                if (answer.worst().get(0).finding().margin() < worst.finding().margin()) {
                    worst = answer.worst().get(0);
                }
            }
            return "Does not hold for every set. Worst: " + Wording.claim(worst.finding()) + " with "
                    + worst.finding().state() + ": " + Wording.valueAndLimit(worst.finding(), show) + " ("
                    + Show.margin(worst.finding()) + ").";
        }
        if (!with(coverage, Verdict.NOT_DONE).isEmpty()) {
            return "Partial: the work was stopped. What is listed as done is done; the rest is open.";
        }
        List<Answer> open = with(coverage, Verdict.UNDECIDED);
        if (!open.isEmpty()) {
            return "Not decided for every set: " + open.get(0).why() + ".";
        }
        return "Every set holds: whichever of the inlets are open, every requirement of their states holds.";
    }

    private static List<Answer> with(Coverage coverage, Verdict verdict) {
        return coverage.answers().stream().filter(a -> a.verdict() == verdict).toList();
    }

    /** What was asked. */
    public static String asked(Plant plant, Coverage coverage) {
        Map<String, Integer> zones = coverage.question().atMost();
        String users = coverage.question().users().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return "Asked: " + users + " of " + Wording.counted(plant.inlets().size(), "inlet", "inlets") + " open"
                + (zones.isEmpty()
                        ? "."
                        : ", at most "
                                + zones.entrySet().stream()
                                        .map(e -> e.getValue() + " in " + e.getKey())
                                        .collect(Collectors.joining(", "))
                                + ".");
    }

    /** Greatest number of users asked up to which every answer holds. */
    public static Optional<Integer> carried(Coverage coverage) {
        Optional<Integer> carried = Optional.empty();
        for (int users : new TreeSet<>(coverage.question().users())) {
            boolean holds = coverage.answers().stream()
                    .filter(a -> a.users() == users)
                    .allMatch(a -> a.verdict() == Verdict.HOLDS);
            if (!holds) {
                return carried;
            }
            carried = Optional.of(users);
        }
        return carried;
    }

    /** Who harms the worst place, in sentences. */
    public static String harm(ByHand byHand) {
        List<String> open = byHand.exchanges().worst().open();
        if (open.size() < 2) {
            return "One inlet is open: the table lists the margin with each inlet by itself, and the worst set is its first row.";
        }
        String base =
                byHand.base().map(id -> id + " is open in it and has to be. ").orElse("");
        String rest = String.join(", ", byHand.mostHarmful());
        String start = byHand.base().isPresent()
                ? base + "The table lists what is left of the margin when one more inlet is opened besides it. "
                : "The table lists the margin with each inlet by itself. ";
        return byHand.byHarmAlone()
                ? start + "The worst set takes those that leave least: " + rest + "."
                : start + "One by one " + rest + " would leave least, yet the worst set is "
                        + String.join("+", open)
                        + ": inlets that are open together also take from each other. The exchanges below show it.";
    }

    /** What the exchanges show, in sentences. */
    public static String exchanges(ByHand byHand) {
        int tried = byHand.exchanges().tried().size();
        Finding finding = byHand.exchanges().worst().finding();
        String all = "Each of " + Wording.counted(tried, "exchange", "exchanges")
                + " of one open inlet for a shut one was solved; those nearest are listed. ";
        boolean none = tried == 0 || byHand.exchanges().tried().get(0).margin() >= finding.margin() - ROUNDING;
        return (tried == 0 ? "There is no inlet to exchange. " : all)
                + (none
                        ? "None leaves less than the " + Show.margin(finding.margin()) + " of the worst set."
                        : "One leaves less than the worst set found: the search was stopped or not decided.")
                + " Sets that differ in two inlets or more are covered by the bounds, not by this table.";
    }
}
