package dustwright.documents.writing;

import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.ByHand;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.coverage.Users;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Sentences about coverage that terminal and page share. */
public final class CoverWording {
    /** What is no remedy. */
    public static final String NO_REMEDY =
            "Separate headers and smaller tubes are drawn along the routes there are; a purge needs more air to lift dust that has"
                    + " settled than to keep it moving, so try it. The relief valve is no remedy: its air does not pass the tubing.";

    /** Within this two margins are the same [-]. */
    private static final double ROUNDING = 1e-9;

    /** Places named in a sentence. */
    private static final int FEW = 5;

    /** Said first where something asked is missing because the work was stopped. */
    public static final String PARTIAL =
            "Partial: the work was stopped. What is listed as done is done; the rest is open. An answer with --format json"
                    + " can be taken up by --resume.";

    /** So many sets take about a day. */
    private static final BigInteger WORTH_LISTING = BigInteger.valueOf(10_000_000);

    private CoverWording() {}

    /** How many users are carried, in a column. */
    public static String number(Users users) {
        String or = users.shown() == 0 ? "" : users.shown() + " or more, ";
        return switch (users.end()) {
            case FAILS -> Integer.toString(users.shown());
            case UNDECIDED -> or + "not decided";
            case STOPPED -> or + "not done";
            case NOT_ASKED -> users.shown() + " or more";
        };
    }

    /** How many users are carried, in a sentence. */
    public static String carries(Users users) {
        String next = switch (users.end()) {
            case FAILS, NOT_ASKED -> "";
            case UNDECIDED -> " The next number asked is not decided.";
            case STOPPED -> " The next number asked was not done.";
        };
        return users.shown() == 0
                ? "No number of users asked is shown to hold for every set." + next
                : "Carries " + Wording.counted(users.shown(), "user", "users")
                        + " whoever they are: for every number asked up to it each set holds." + next;
    }

    /** Why a remedy's row is not the whole of it, behind its name. */
    public static String open(Remedy remedy) {
        return remedy.partial()
                ? " (stopped before it was covered)"
                : remedy.decided() ? "" : " (not decided for every set)";
    }

    /** Places that fail with a remedy. */
    public static String failing(Remedy remedy) {
        return remedy.partial() && remedy.least().isEmpty()
                ? "not done"
                : remedy.failing() + (remedy.decided() ? "" : " or more");
    }

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
            return "Not decided for every set.";
        }
        List<Answer> open = with(coverage, Verdict.UNDECIDED);
        if (!open.isEmpty()) {
            return "Not decided for every set: " + open.get(0).why() + ".";
        }
        return "Every set holds: whichever of the inlets are open, every requirement of their states holds.";
    }

    /** What bounds made needless, how near they are, and where they are widest; nothing where every set was solved. */
    public static List<String> bounds(Coverage coverage) {
        List<String> said = new ArrayList<>();
        if (coverage.answers().stream().noneMatch(a -> a.pruned().signum() > 0)) {
            return said;
        }
        List<Answer> answers = coverage.answers();
        long all = answers.stream().mapToLong(a -> a.worst().size()).sum();
        long exact = answers.stream()
                .flatMap(a -> a.worst().stream())
                .filter(Worst::exact)
                .count();
        said.add(
                "Sets not solved are shown by bounds to be no worse than those that were (decision records 0060 and 0061). Of "
                        + Wording.counted(all, "margin", "margins") + " by number of users, condition and place "
                        + exact
                        + (exact == 1 ? " is" : " are")
                        + " exact; of the others the set named is the worst found, and no set falls below the bound."
                        + " --count solves every set, up to the number of --most-sets, and leaves exact margins only.");
        answers.stream()
                .filter(a -> a.widening() > 0)
                .max(Comparator.comparingDouble(Answer::widening))
                .ifPresent(a -> said.add("Widest bound: " + widest(a) + "."));
        List<String> open = answers.stream()
                .flatMap(a -> a.worst().stream().filter(Worst::undecided).map(w -> between(a, w)))
                .toList();
        if (!open.isEmpty()) {
            said.add("Not decided for " + Wording.counted(open.size(), "of these margins", "of these margins")
                    + ", whose worst set found holds while the bound does not: "
                    + open.stream().limit(FEW).collect(Collectors.joining("; "))
                    + (open.size() > FEW ? "; and others" : "") + ".");
        }
        return said;
    }

    /** What to do where sets are not decided for want of a bound; empty where nothing of the kind is open. */
    public static Optional<String> toDecide(Plant plant, Coverage coverage) {
        List<Answer> open = with(coverage, Verdict.UNDECIDED).stream()
                .filter(a -> a.method() != Answer.Method.EVERY_SET)
                .toList();
        boolean lacks = plant.inlets().stream().anyMatch(plant::feedsUnknownLoss)
                || open.stream()
                        .flatMap(a -> a.worst().stream())
                        .anyMatch(w -> w.finding().unjudged());
        if (open.isEmpty() || lacks) {
            return Optional.empty();
        }
        BigInteger most = open.stream().map(Answer::sets).reduce(BigInteger.ZERO, BigInteger::max);
        BigInteger all = open.stream().map(Answer::sets).reduce(BigInteger.ZERO, BigInteger::add);
        String list = most.compareTo(WORTH_LISTING) > 0
                ? "There are too many sets to solve each."
                : "--most-sets " + most + " solves each of " + all
                        + " sets, at about a millisecond for every ten inlets.";
        return Optional.of("To decide what is open: " + list
                + " Fewer --users, or limits of zones in the plant file, leave fewer sets.");
    }

    private static String widest(Answer answer) {
        Worst widest = answer.worst().get(0);
        for (Worst worst : answer.worst()) {
            if (!worst.exact()
                    && (widest.exact()
                            || worst.finding().margin() - worst.bound()
                                    > widest.finding().margin() - widest.bound())) {
                widest = worst;
            }
        }
        return between(answer, widest);
    }

    private static String between(Answer answer, Worst worst) {
        return Wording.claim(worst.finding()) + ", " + Wording.counted(answer.users(), "user", "users") + ", "
                + answer.condition() + ": worst set found " + Show.margin(worst.finding()) + ", "
                + (Double.isInfinite(worst.bound()) ? "no bound known" : "no set below " + Show.margin(worst.bound()));
    }

    /** Margin that no set falls below, in a column beside that of the worst set found. */
    public static String bound(Worst worst) {
        return worst.exact() ? "exact" : Double.isInfinite(worst.bound()) ? "not known" : Show.margin(worst.bound());
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
