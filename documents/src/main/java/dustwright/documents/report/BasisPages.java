package dustwright.documents.report;

import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.ReasonedOverride;
import dustwright.engine.plant.Requirements;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the report rests on: assumptions, overrides, equations, reference state, and what it does not say. */
final class BasisPages {
    /** By family, then by number: NET-5 before NET-20. */
    private static final Comparator<String> EQUATION_ORDER = Comparator.comparing(BasisPages::family)
            .thenComparingInt(id -> Integer.parseInt(id.substring(family(id).length())));

    private final Digest digest;
    private final Show show;
    private final Plant plant;

    BasisPages(Digest digest, Show show) {
        this.digest = digest;
        this.show = show;
        this.plant = digest.study().plant();
    }

    Element assumptions() {
        Element section = Parts.section("assumptions", "11  Assumptions and overrides");
        Table table = Table.of(Table.words("Place"), Table.words("Taken"), Table.words("Basis"));
        for (Assumption assumption : plant.assumptions()) {
            table.row(assumption.place().toString(), assumption.what(), Parts.source(assumption.basis()));
        }
        section.add(
                table.isEmpty()
                        ? Parts.paragraph("", "No assumption: the plant file says everything.")
                        : table.element("wide"));
        section.add(Element.of("h3").text("Overrides"));
        Table overrides =
                Table.of(Table.words("Place"), Table.words("Set to"), Table.words("Reason"), Table.words("By"));
        for (ReasonedOverride override : plant.overrides()) {
            overrides.row(
                    override.place().toString(),
                    Element.of("span", "over", override.what()),
                    override.reason(),
                    override.by());
        }
        return section.add(overrides.isEmpty() ? Parts.paragraph("", "None.") : overrides.element("wide"));
    }

    Element equations() {
        Map<String, Step> byId = new LinkedHashMap<>();
        digest.study().worstPerPlace().stream()
                .flatMap(f -> f.derivation().steps().stream())
                .filter(step -> !step.equation().equals(Step.STATED))
                .sorted(Comparator.comparing(Step::equation, EQUATION_ORDER))
                .forEach(step -> byId.putIfAbsent(step.equation() + step.formula(), step));
        Table table = Table.of(
                Table.sized("Equation", "eq"),
                Table.words("Formula"),
                Table.sized("Gives", "res"),
                Table.sized("Source", "src"));
        byId.values()
                .forEach(step -> table.row(
                        step.equation(),
                        Element.of("span", "formula", step.formula()),
                        step.result().meaning(),
                        Parts.source(step.source())));
        Element section = Parts.section("equations", "12  Equations");
        return section.add(
                table.isEmpty() ? Parts.paragraph("", "No finding, so no equation.") : table.element("wide"));
    }

    private static String family(String equation) {
        return equation.substring(0, equation.lastIndexOf('-') + 1);
    }

    Element reach() {
        Element section = Parts.section("reach", "13  Reach of this report");
        section.add(Parts.paragraph(
                "",
                Wording.freeAir(show) + " Vacuum is counted downwards from the site barometer, "
                        + show.full(plant.site().air().ambient())
                        + "; \"abs\" is counted from perfect vacuum. Pressures are static."));
        digest.worstState()
                .flatMap(Digest::duty)
                .ifPresent(duty -> section.add(Parts.paragraph("", ResultTables.howSolved(duty))));
        section.add(Parts.paragraph("", notChecked(plant.requirements())));
        section.add(Parts.paragraph(
                "", "Sets given are solved one by one; sets that were not given are not covered by this report."));
        section.add(Parts.mind(Wording.SCREENING));
        if (restsOnWeakSource()) {
            section.add(Parts.mind(
                    "figures on these pages rest on common practice without a source, or on memory; they are marked"
                            + " where they stand."));
        }
        return section;
    }

    private static String notChecked(Requirements asked) {
        StringBuilder out = new StringBuilder();
        append(out, asked.toolFlow().isEmpty(), "air at the tool");
        append(out, asked.inletVacuum().isEmpty(), "vacuum at the inlet");
        append(out, asked.wearVelocity().isEmpty(), "greatest velocity");
        append(out, asked.airToCloth().isEmpty(), "air-to-cloth ratio");
        append(out, asked.canVelocity().isEmpty(), "upward velocity in the receiver");
        return out.length() == 0
                ? "Every limit of the plant file's list is stated and checked."
                : "Not asked by the plant file, so not checked: " + out + ".";
    }

    private static void append(StringBuilder out, boolean missing, String words) {
        if (missing) {
            out.append(out.length() == 0 ? "" : ", ").append(words);
        }
    }

    private boolean restsOnWeakSource() {
        return plant.assumptions().stream().map(Assumption::basis).anyMatch(BasisPages::weak)
                || digest.groups().stream()
                        .map(g -> g.worst().derivation())
                        .anyMatch(d -> weak(d.limitSource())
                                || d.steps().stream().map(Step::source).anyMatch(BasisPages::weak));
    }

    private static boolean weak(Source source) {
        return switch (source.confidence()) {
            case COMMON_PRACTICE, FROM_MEMORY -> true;
            case ENTERED, CATALOGUE, PUBLISHED, OWN_READING -> false;
        };
    }
}
