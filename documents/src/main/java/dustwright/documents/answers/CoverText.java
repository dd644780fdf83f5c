package dustwright.documents.answers;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.writing.CoverWording;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.SheetWording;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.ByHand;
import dustwright.engine.coverage.Carry;
import dustwright.engine.coverage.CarryBySize;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.UnitSystem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What coverage found, for a person at a terminal. */
public final class CoverText {
    private static final int MOST_ROWS = 20;
    private static final int FEW_ROWS = 8;
    private static final int NARROWEST = 60;

    /**
     * What was asked besides: users carried by area and by size of producer, remedies, what a person can check of the worst set.
     *
     * @param openInSheets what the sheets leave open, which coverage does not read
     */
    public record Besides(
            List<Carry> carried,
            List<CarryBySize> sizes,
            List<Remedy> remedies,
            Optional<ByHand> byHand,
            List<Finding> openInSheets) {
        public Besides {
            openInSheets = List.copyOf(openInSheets);
            carried = List.copyOf(carried);
            sizes = List.copyOf(sizes);
            remedies = List.copyOf(remedies);
        }

        /** Whether something of it is missing because the work was stopped. */
        public boolean partial() {
            return carried.stream().anyMatch(c -> c.shown().partial())
                    || sizes.stream().anyMatch(s -> s.shown().partial())
                    || remedies.stream().anyMatch(Remedy::partial);
        }
    }

    private final Plant plant;
    private final Coverage coverage;
    private final List<Carry> carried;
    private final List<Remedy> remedies;
    private final List<CarryBySize> sizes;
    private final Optional<ByHand> byHand;
    private final List<Finding> openInSheets;
    private final boolean partial;
    private final Show show;
    private final Lines lines;

    private CoverText(Plant plant, Coverage coverage, Besides besides, UnitSystem units, int width) {
        this.carried = besides.carried();
        this.remedies = besides.remedies();
        this.sizes = besides.sizes();
        this.byHand = besides.byHand();
        this.openInSheets = besides.openInSheets();
        this.partial = besides.partial();
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
        lines.text("", CoverWording.verdict(coverage, show) + " " + SheetWording.beside(openInSheets));
        if (coverage.partial() || partial) {
            lines.text("", CoverWording.PARTIAL);
        }
        lines.text("", CoverWording.asked(plant, coverage));
        answers();
        worst();
        SheetLines.write(openInSheets, show, lines);
        bothEnds();
        carries();
        areas();
        sizes();
        remedies();
        byHand.ifPresent(this::byHand);
        lines.gap();
        lines.text("", Wording.freeAir(show));
        return lines.text("", Wording.SCREENING);
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
        CoverWording.bounds(coverage).forEach(said -> lines.text("  ", said));
        coverage.answers().stream()
                .map(Answer::why)
                .filter(why -> !why.isEmpty())
                .distinct()
                .forEach(why -> lines.text("  ", "Mind: " + why + "."));
        CoverWording.toDecide(plant, coverage).ifPresent(said -> lines.text("  ", said));
    }

    private void worst() {
        List<Worst> all = coverage.worstPerPlace();
        long failing = all.stream().filter(w -> !w.finding().holds()).count();
        long shown = failing == 0 ? Math.min(FEW_ROWS, all.size()) : Math.min(MOST_ROWS, failing);
        boolean exact = all.stream().limit(shown).allMatch(Worst::exact);
        TextTable table = TextTable.of(
                TextTable.words(""),
                TextTable.words("Finding"),
                TextTable.words("Value and limit"),
                TextTable.number("Margin"),
                TextTable.number(exact ? "" : "No set below"),
                TextTable.words("Worst set"));
        for (int n = 0; n < shown; n++) {
            Finding finding = all.get(n).finding();
            table.row(
                    MarginClass.of(finding).glyph(finding.side()),
                    Lines.plain(Wording.claim(finding)),
                    Lines.plain(Wording.valueAndLimit(finding, show)),
                    Lines.plain(Show.margin(finding)),
                    exact ? "" : Lines.plain(CoverWording.bound(all.get(n))),
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

    private void carries() {
        lines.gap();
        lines.text("", CoverWording.carries(coverage.carried()));
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
                    remedy.what() + CoverWording.open(remedy),
                    CoverWording.failing(remedy),
                    remedy.least()
                            .map(w -> Lines.plain(Wording.claim(w.finding()) + " with "
                                    + w.finding().state()))
                            .orElse(""),
                    remedy.least()
                            .map(w -> Lines.plain(Show.margin(w.finding().margin())))
                            .orElse(""));
        }
        lines.head("Remedies, each covered anew").table(table);
        lines.text("  ", CoverWording.NO_REMEDY);
    }

    /** What a person can check of the worst set. */
    private void byHand(ByHand found) {
        Finding finding = found.exchanges().worst().finding();
        lines.head("By hand: " + Wording.claim(finding) + " with " + finding.state());
        lines.text("  ", CoverWording.harm(found));
        TextTable harms = TextTable.of(TextTable.words("Opened"), TextTable.number("Margin left"));
        found.alone()
                .ifPresent(margin -> harms.row("only " + found.base().orElse(""), Lines.plain(Show.margin(margin))));
        found.harms().stream().limit(FEW_ROWS).forEach(h -> harms.row(h.inlet(), Lines.plain(Show.margin(h.margin()))));
        lines.table(harms);
        TextTable path = TextTable.of(
                TextTable.words("Piece"),
                TextTable.words("Air of"),
                TextTable.number("Free air"),
                TextTable.number("Drop"),
                TextTable.number("Drop in the nearest exchange"));
        for (ByHand.Piece piece : found.path()) {
            path.row(
                    (piece.kind() == LegResult.Kind.HOSE ? "hose at " : "run ") + piece.id(),
                    String.join("+", piece.users()),
                    Lines.plain(show.freeAirFull(piece.air())),
                    Lines.plain(show.loss(piece.drop()) + " " + show.lossUnit()),
                    Lines.plain(piece.otherDrop()
                            .map(drop -> show.loss(drop) + " " + show.lossUnit())
                            .orElse("")));
        }
        lines.table(path);
        TextTable table =
                TextTable.of(TextTable.words("Shut"), TextTable.words("Open instead"), TextTable.number("Margin"));
        found.exchanges().tried().stream()
                .limit(FEW_ROWS)
                .forEach(e -> table.row(e.shut(), e.opened(), Lines.plain(Show.margin(e.margin()))));
        lines.table(table);
        lines.text(
                "  ",
                CoverWording.exchanges(found)
                        + " dustwright explain shows how the figure of the worst set comes about, step by step.");
    }

    /** Users carried with other machines. */
    private void sizes() {
        if (sizes.isEmpty()) {
            return;
        }
        TextTable table = TextTable.of(
                TextTable.words("Machine"),
                TextTable.number("Motor " + show.unit(Dimension.POWER)),
                TextTable.number("Carries"),
                TextTable.words("What stops the next user"));
        for (CarryBySize size : sizes) {
            table.row(
                    size.producer().id(),
                    Lines.plain(show.number(size.producer().nameplate())),
                    CoverWording.number(size.shown()),
                    size.stop().map(Answer::words).orElse("nothing asked"));
        }
        lines.head("Users carried with another machine, whoever they are").table(table);
        lines.text(
                "  ",
                "Each machine of the plant's kind in the catalogue stands in for every producer in service, at the speed the"
                        + " catalogue states, behind the same filter and relief valve; the motor's own limits count.");
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
                    CoverWording.number(carry.shown()),
                    carry.stop().map(Answer::words).orElse("nothing asked"));
        }
        lines.head("Users carried, whoever they are, all other areas shut").table(table);
    }
}
