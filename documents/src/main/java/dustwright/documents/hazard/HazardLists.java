package dustwright.documents.hazard;

import dustwright.documents.control.Lists.Rows;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Study;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.hazard.Bonding;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.ElectricResistance;
import dustwright.engine.quantity.QuantityText;
import dustwright.engine.review.HazardStudy;
import dustwright.engine.review.RiskMatrix;
import dustwright.engine.sheet.Collecting;
import dustwright.engine.sheet.EarthingList;
import dustwright.engine.sheet.Sheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tables of the hazard papers, as rows of words: findings, study, matrix, earthing tests. */
public final class HazardLists {
    /** What every page of the papers says. */
    public static final String CAUTION =
            "Prompts for a dust hazard analysis, not the analysis: a qualified person does and signs it. Only tests of the own dust count. The"
                    + " authority having jurisdiction, insurer and local code decide; clauses belong to the edition named and are to be read there.";

    private static final Set<FindingCode> ABOUT = EnumSet.of(
            FindingCode.DUST_CARD,
            FindingCode.DUST_NOT_NAMED,
            FindingCode.DUSTS_TOGETHER,
            FindingCode.METAL_DRY,
            FindingCode.EXPLOSION_PROTECTION,
            FindingCode.VENT_AREA,
            FindingCode.INLET_ISOLATION,
            FindingCode.VALVE_ISOLATION,
            FindingCode.RETURN_ISOLATION,
            FindingCode.EXHAUST_INDOORS,
            FindingCode.AFTER_FILTER,
            FindingCode.PRODUCER_PLACE,
            FindingCode.HOT_SURFACE,
            FindingCode.MOTOR_SURFACE,
            FindingCode.CONE_DISCHARGE,
            FindingCode.FILTER_STATIC,
            FindingCode.HOSE_RESISTANCE,
            FindingCode.TUBE_STATIC,
            FindingCode.TOOL_STATIC,
            FindingCode.DRUM_STATIC,
            FindingCode.FOOD_CONTACT,
            FindingCode.BAG_STATIC,
            FindingCode.LINER_STATIC,
            FindingCode.PANEL_AREA,
            FindingCode.PANEL_EXPOSURE);

    private HazardLists() {}

    /** Sheets about combustible dust, in their order. */
    public static List<Sheet> sheets(Study study) {
        return study.sheets().stream().filter(HazardLists::isOne).toList();
    }

    /** Whether a sheet is about combustible dust. */
    public static boolean isOne(Sheet sheet) {
        return sheet.id().startsWith("dust-card/") || sheet.id().startsWith("hazard/");
    }

    /** What was checked: the worst of each requirement and place; of velocities only the worst where dust settles. */
    public static Rows findings(Study study, Show show) {
        List<List<String>> rows = new ArrayList<>();
        List<Finding> settles = study.worstPerPlace().stream()
                .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY && !f.holds())
                .toList();
        for (Finding f : study.worstPerPlace()) {
            if (ABOUT.contains(f.code())) {
                rows.add(row(f, "", show));
            } else if (!settles.isEmpty() && f.equals(settles.get(0))) {
                rows.add(row(f, settles.size() == 1 ? "" : ", and in " + (settles.size() - 1) + " more pieces", show));
            }
        }
        return new Rows(
                "What was checked",
                "Holds: by what the plant file states, on the basis named, and no more than that.",
                List.of("Verdict", "Finding", "Value and limit", "What to do", "Basis"),
                rows);
    }

    private static List<String> row(Finding f, String further, Show show) {
        return List.of(
                !f.decided() ? "not known" : f.holds() ? "holds" : "does not hold",
                Wording.claim(f) + further,
                Wording.valueAndLimit(f, show),
                f.holds() ? "" : f.code().remedy(),
                Wording.source(f.derivation().limitSource()));
    }

    /** Dusts and what follows from them, vents among it: every line of the sheets about combustible dust. */
    public static Rows lines(Study study, Show show) {
        List<List<String>> rows = new ArrayList<>();
        for (Sheet sheet : sheets(study)) {
            Show across = Wording.across(sheet, show);
            sheet.entries()
                    .forEach(e -> rows.add(List.of(
                            Wording.head(sheet),
                            e.name(),
                            Wording.answer(e.answer(), across),
                            Wording.source(e.derivation().limitSource()))));
        }
        return new Rows(
                "Dusts and what follows",
                "What was computed or looked up for dusts, receivers and what is about them; not known says what to enter.",
                List.of("About", "Line", "Answer", "Basis"),
                rows);
    }

    /** What is taken of dust and container where the plant file is silent. */
    public static Rows taken(Plant plant) {
        List<List<String>> rows = new ArrayList<>();
        for (Assumption a : plant.assumptions()) {
            if (a.place().kind() == Place.Kind.DUST || a.place().kind() == Place.Kind.CONTAINER) {
                rows.add(List.of(a.place().toString(), a.what(), Wording.source(a.basis())));
            }
        }
        return new Rows(
                "Taken",
                "Taken where the plant file is silent, about dust and container.",
                List.of("Place", "Taken", "Basis"),
                rows);
    }

    /** Combustible dusts without a test of their own, whatever holds; empty where each has one. */
    public static Optional<String> untested(Plant plant) {
        List<String> names = plant.dusts().stream()
                .filter(d -> d.burns() && !d.card().tested())
                .map(Dust::name)
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of("Not tested, values of other samples stand in or the worst case: "
                        + String.join("; ", names) + ". No design is released on them.");
    }

    /** What a row says is missing; what the program finds missing stays, whatever the team writes in its place. */
    public static List<String> missing(HazardStudy.Row row) {
        return Stream.concat(
                        row.line().missing().stream(),
                        row.found().stream()
                                .filter(one -> !row.line().missing().contains(one))
                                .map(one -> one + " (found missing; the team's words leave it out)"))
                .toList();
    }

    /** What a row says guards against it: what the program finds, whatever the team writes, and what the team says beside it. */
    public static List<String> safeguards(HazardStudy.Row row) {
        return Stream.concat(
                        row.guards().stream(),
                        row.note().safeguards().stream()
                                .flatMap(List::stream)
                                .filter(one -> !row.guards().contains(one))
                                .map(one -> "the team says: " + one))
                .toList();
    }

    /** What stands where a row says that nothing is missing. */
    public static String nothing(HazardStudy.Row row) {
        return row.origin() == HazardStudy.Origin.TEAM
                ? "the team names nothing, and nothing was looked for"
                : "nothing of what was looked for";
    }

    /** What a row says that is neither the plant's nor the team's own. */
    public static String noLine(HazardStudy study, HazardStudy.Row row) {
        List<String> names = study.rows().stream()
                .filter(r -> r.origin() == HazardStudy.Origin.PLANT || r.origin() == HazardStudy.Origin.REWORDED)
                .map(r -> r.line().id())
                .toList();
        return "no line of this plant is called so"
                + QuantityText.nearest(row.line().id(), names)
                        .map(name -> "; did you mean \"" + name + "\"?")
                        .orElse(": the plant has lost the part, or no longer gives rise to the line.")
                + " Nothing was looked for; what the team wrote is kept";
    }

    /** The study, a row to a line. */
    public static Rows study(HazardStudy study) {
        List<List<String>> rows = new ArrayList<>();
        for (HazardStudy.Row row : study.rows()) {
            rows.add(List.of(
                    row.line().id(),
                    row.line().node(),
                    row.line().deviation(),
                    row.line().cause(),
                    row.line().consequence(),
                    String.join("; ", safeguards(row)),
                    String.join("; ", missing(row)),
                    row.note().severity().orElse(""),
                    row.note().likelihood().orElse(""),
                    row.risk().orElse("not judged"),
                    row.note().action().orElse(""),
                    row.note().who().orElse(""),
                    row.note().by().orElse(""),
                    row.note().status().orElse(""),
                    row.note().note().orElse(""),
                    row.origin().words()));
        }
        return new Rows(
                "Hazard study",
                "What could go wrong with the plant as it is drawn and controlled. Safeguards are those found in the plant file, its checks and the"
                        + " control sequence named in each line, and what the team says beside them. The default sequence is the one this program makes to begin with: what the"
                        + " controller on site does is to be shown, or its own sequence file given. Missing is what was looked for and not"
                        + " found, or is not known.",
                List.of(
                        "Row",
                        "Node",
                        "Deviation",
                        "Cause",
                        "Consequence",
                        "Safeguards found",
                        "Missing",
                        "Severity",
                        "Likelihood",
                        "Risk",
                        "Action",
                        "Who",
                        "By",
                        "Status",
                        "Note",
                        "Origin"),
                rows);
    }

    /** The matrix the study is judged by. */
    public static Rows matrix(RiskMatrix matrix) {
        List<String> head = new ArrayList<>(List.of("Severity"));
        head.addAll(matrix.likelihoods());
        List<List<String>> rows = new ArrayList<>();
        for (String severity : matrix.severities()) {
            List<String> row = new ArrayList<>(List.of(severity));
            matrix.likelihoods().forEach(l -> row.add(matrix.risk(severity, l)));
            rows.add(row);
        }
        String basis = matrix.equals(RiskMatrix.TO_BEGIN_WITH) ? "; " + RiskMatrix.BASIS : "";
        return new Rows(
                "Risk matrix",
                "Risks that need no action: "
                        + (matrix.accepted().isEmpty() ? "none" : String.join(", ", matrix.accepted())) + basis + ".",
                head,
                rows);
    }

    /** What is measured at commissioning, of all places where dust is collected. */
    public static Rows earthing(Plant plant, Show show) {
        List<List<String>> rows = new ArrayList<>();
        Set<Bonding> used = EnumSet.noneOf(Bonding.class);
        int number = 1;
        for (Collecting here : Collecting.all(plant)) {
            for (EarthingList.Point p : EarthingList.of(plant, here)) {
                used.add(p.limit());
                rows.add(List.of(
                        String.valueOf(number++),
                        p.where(),
                        p.what() + (p.limit() == Bonding.METAL_JOINT ? ", a target" : ""),
                        String.valueOf(p.number()),
                        show.full(new ElectricResistance(p.limit().limit_ohm())),
                        p.with().name(),
                        "",
                        "☐",
                        ""));
            }
        }
        return new Rows(
                "Earthing test list",
                "Measured before handing over, without dust in the air, and again at the interval of the site's own rule. With: "
                        + Arrays.stream(EarthingList.With.values())
                                .map(w -> w + " " + w.words())
                                .collect(Collectors.joining("; "))
                        + " (" + Wording.source(EarthingList.With.SOURCE) + "). Limits: "
                        + Arrays.stream(Bonding.values())
                                .filter(used::contains)
                                .map(l -> l.words() + ", " + Wording.source(l.source()))
                                .collect(Collectors.joining("; "))
                        + ". A limit is for a measurement on site: a calculation bonds nothing.",
                List.of("No.", "Where", "What", "How many", "At most", "With", "Measured", "Within", "Date, by"),
                rows);
    }

    /** Whether a plant has anything to write hazard papers about. */
    public static Optional<String> nothingToWrite(Study study) {
        return study.sheets().stream().noneMatch(s -> s.id().startsWith("hazard/"))
                ? Optional.of("This plant names no dust that an inlet picks up, so there is nothing to study.")
                : Optional.empty();
    }
}
