package dustwright.documents.answers;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Carry;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Exchanges;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What coverage found, for a person at a terminal. */
public final class CoverText {
    private static final int MOST_ROWS = 20;
    private static final int FEW_ROWS = 8;
    private static final int NARROWEST = 60;

    /** What was asked besides: users carried by area, remedies, exchanges in the worst set. */
    public record Besides(List<Carry> carried, List<Remedy> remedies, Optional<Exchanges> exchanges) {
        public Besides {
            carried = List.copyOf(carried);
            remedies = List.copyOf(remedies);
        }
    }

    private final Plant plant;
    private final Coverage coverage;
    private final List<Carry> carried;
    private final List<Remedy> remedies;
    private final Optional<Exchanges> exchanges;
    private final Show show;
    private final Lines lines;

    private CoverText(Plant plant, Coverage coverage, Besides besides, UnitSystem units, int width) {
        this.carried = besides.carried();
        this.remedies = besides.remedies();
        this.exchanges = besides.exchanges();
        this.plant = plant;
        this.coverage = coverage;
        this.show = new Show(units);
        this.lines = new Lines(Math.max(width, NARROWEST));
    }

    /** Verdict, one line per number of users and condition, worst sets, how many users the plant carries. */
    public static String of(Plant plant, Coverage coverage, Besides besides, UnitSystem units, int width) {
        return new CoverText(plant, coverage, besides, units, width).written().toString();
    }

    private Lines written() {
        lines.text("", plant.name()).gap();
        lines.text("", verdict());
        lines.text("", asked());
        answers();
        worst();
        bothEnds();
        carries();
        areas();
        remedies();
        exchanges.ifPresent(this::byHand);
        lines.gap();
        lines.text("", Wording.freeAir(show));
        return lines.text("", Wording.SCREENING);
    }

    private String verdict() {
        List<Answer> failing = with(Verdict.FAILS);
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
        if (!with(Verdict.NOT_DONE).isEmpty()) {
            return "Partial: the work was stopped. What is listed as done is done; the rest is open.";
        }
        List<Answer> open = with(Verdict.UNDECIDED);
        if (!open.isEmpty()) {
            return "Not decided for every set: " + open.get(0).why() + ".";
        }
        return "Holds: whichever of the inlets are open, every requirement holds.";
    }

    private List<Answer> with(Verdict verdict) {
        return coverage.answers().stream().filter(a -> a.verdict() == verdict).toList();
    }

    private String asked() {
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

    private void answers() {
        TextTable table = TextTable.of(
                TextTable.number("Users"),
                TextTable.words("Condition"),
                TextTable.number("Sets"),
                TextTable.words("Verdict"),
                TextTable.number("Least margin"),
                TextTable.words("Shown by"),
                TextTable.number("Solved"),
                TextTable.number("Pruned"),
                TextTable.number("Failing"));
        for (Answer answer : coverage.answers()) {
            table.row(
                    Integer.toString(answer.users()),
                    answer.condition(),
                    answer.sets().toString(),
                    answer.verdict().words(),
                    answer.least()
                            .map(w -> Lines.plain(Show.margin(w.finding())))
                            .orElse(""),
                    answer.method().words(),
                    Figures.count(answer.solved()),
                    answer.pruned().toString(),
                    answer.failing().isPresent()
                            ? Figures.count(answer.failing().getAsLong())
                            : "");
        }
        lines.head("Sets covered").table(table);
        bounds();
        coverage.answers().stream()
                .map(Answer::why)
                .filter(why -> !why.isEmpty())
                .distinct()
                .forEach(why -> lines.text("  ", "Mind: " + why + "."));
    }

    /** How much was made needless by bounds, and how far they may be off. */
    private void bounds() {
        double widening =
                coverage.answers().stream().mapToDouble(Answer::widening).max().orElse(0);
        if (coverage.answers().stream().anyMatch(a -> a.pruned().signum() > 0)) {
            lines.text(
                    "  ",
                    "Sets not solved are shown by bounds to be no worse than those that were. No margin listed can be"
                            + " lower by more than " + Show.margin(widening).replace("+", "")
                            + " (decision records 0060 and 0061).");
        }
    }

    private void worst() {
        List<Worst> all = worstPerPlace();
        long failing = all.stream().filter(w -> !w.finding().holds()).count();
        TextTable table = TextTable.of(
                TextTable.words(""),
                TextTable.words("Finding"),
                TextTable.words("Value and limit"),
                TextTable.number("Margin"),
                TextTable.words("Worst set"));
        long shown = failing == 0 ? Math.min(FEW_ROWS, all.size()) : Math.min(MOST_ROWS, failing);
        for (int n = 0; n < shown; n++) {
            Finding finding = all.get(n).finding();
            table.row(
                    MarginClass.of(finding).glyph(finding.side()),
                    Lines.plain(Wording.claim(finding)),
                    Lines.plain(Wording.valueAndLimit(finding, show)),
                    Lines.plain(Show.margin(finding)),
                    Lines.plain(finding.state()));
        }
        if (table.isEmpty()) {
            return;
        }
        boolean known = all.stream().allMatch(w -> w.finding().decided());
        String head = known ? "What does not hold" : "What does not hold or is not known";
        lines.head(failing == 0 ? "Tightest requirements" : head + ", worst set of all for each place")
                .table(table);
        if (failing > shown) {
            lines.text("  ", Wording.counted(failing - shown, "more place fails.", "more places fail."));
        }
    }

    /** The ends of the design: the far tool with all on, the header with one user, and the far user while the others draw elsewhere. */
    private void bothEnds() {
        int most = coverage.answers().stream().mapToInt(Answer::users).max().orElse(1);
        int fewest = coverage.answers().stream().mapToInt(Answer::users).min().orElse(1);
        lines.head("The ends of the design");
        end("Weakest tool with " + Wording.counted(most, "user", "users"), FindingCode.TOOL_FLOW, most);
        end("Least vacuum with " + Wording.counted(most, "user", "users"), FindingCode.INLET_VACUUM, most);
        end("Slowest run with " + Wording.counted(fewest, "user", "users"), FindingCode.TRANSPORT_VELOCITY, fewest);
        if (most > fewest) {
            end(
                    "Slowest run with " + most + " users, the others drawing elsewhere",
                    FindingCode.TRANSPORT_VELOCITY,
                    most);
        }
    }

    private void end(String what, FindingCode code, int users) {
        coverage.answers().stream()
                .filter(a -> a.users() == users)
                .flatMap(a -> a.worst().stream())
                .map(Worst::finding)
                .filter(f -> f.code() == code)
                .min(Comparator.comparingDouble(Finding::margin))
                .ifPresent(f -> lines.text(
                        "  ",
                        what + ": " + f.where() + ", " + Wording.valueAndLimit(f, show) + " (" + Show.margin(f)
                                + "), set " + f.state() + "."));
    }

    /** The worst of all answers per requirement and place, smallest margin first. */
    private List<Worst> worstPerPlace() {
        Map<String, Worst> least = new TreeMap<>();
        for (Answer answer : coverage.answers()) {
            for (Worst worst : answer.worst()) {
                least.merge(
                        worst.finding().code() + "/" + worst.finding().where(),
                        worst,
                        (a, b) -> b.finding().margin() < a.finding().margin() ? b : a);
            }
        }
        List<Worst> sorted = new ArrayList<>(least.values());
        sorted.sort(Comparator.comparingDouble(w -> w.finding().margin()));
        return sorted;
    }

    private void carries() {
        lines.gap();
        lines.text(
                "",
                carried(coverage)
                        .map(users -> "Carries " + Wording.counted(users, "user", "users")
                                + " whoever they are: for every number asked up to it each set holds.")
                        .orElse("No number of users asked is shown to hold for every set."));
    }

    /** What comes of the remedies tried, best first. */
    private void remedies() {
        if (remedies.isEmpty()) {
            return;
        }
        TextTable table = TextTable.of(
                TextTable.words("Remedy"),
                TextTable.number("Places failing"),
                TextTable.words("Nearest to its limit, or farthest beyond"),
                TextTable.number("Margin"));
        for (Remedy remedy : remedies) {
            table.row(
                    remedy.what() + (remedy.decided() ? "" : " (not decided for every set)"),
                    Integer.toString(remedy.failing()),
                    remedy.least()
                            .map(w -> Lines.plain(Wording.claim(w.finding()) + " with "
                                    + w.finding().state()))
                            .orElse(""),
                    remedy.least()
                            .map(w -> Lines.plain(Show.margin(w.finding().margin())))
                            .orElse(""));
        }
        lines.head("Remedies, each covered anew").table(table);
        lines.text(
                "  ",
                "Not tried: separate headers that meet only at the receiver, often the right answer, and a purge of several"
                        + " inlets after each shift. The relief valve is no remedy: its air does not pass the tubing.");
    }

    /** What a person can check of the worst set. */
    private void byHand(Exchanges found) {
        Finding finding = found.worst().finding();
        TextTable table =
                TextTable.of(TextTable.words("Shut"), TextTable.words("Open instead"), TextTable.number("Margin"));
        found.tried().stream()
                .limit(FEW_ROWS)
                .forEach(e -> table.row(e.shut(), e.opened(), Lines.plain(Show.margin(e.margin()))));
        lines.head("By hand: " + Wording.claim(finding) + " with " + finding.state())
                .table(table);
        lines.text(
                "  ",
                "The worst set has " + Show.margin(finding.margin()) + ". Each of "
                        + Wording.counted(found.tried().size(), "exchange", "exchanges")
                        + " of one open inlet for a shut one was solved; those nearest are listed. dustwright explain shows how"
                        + " the figure of the worst set comes about, step by step.");
    }

    /** Greatest number of users of every area by itself. */
    private void areas() {
        if (carried.isEmpty()) {
            return;
        }
        TextTable table = TextTable.of(
                TextTable.words("Area"),
                TextTable.number("Inlets"),
                TextTable.number("Asked up to"),
                TextTable.number("Carries"),
                TextTable.words("What stops the next user"));
        for (Carry carry : carried) {
            table.row(
                    carry.words(plant),
                    Integer.toString(carry.inlets()),
                    Integer.toString(carry.asked()),
                    Integer.toString(carry.users()),
                    carry.stop().map(Answer::words).orElse("nothing asked"));
        }
        lines.head("Users carried, whoever they are, all other areas shut").table(table);
    }

    /** Greatest number of users asked up to which every answer holds. */
    private static Optional<Integer> carried(Coverage coverage) {
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
}
