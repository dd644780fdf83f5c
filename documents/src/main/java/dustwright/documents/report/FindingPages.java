package dustwright.documents.report;

import dustwright.documents.writing.Element;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** All findings by kind, those that fail one by one, and derivations down to the source. */
final class FindingPages {
    private static final int MOST_FAILING_ROWS = 120;
    private static final int MOST_DERIVATIONS = 16;

    private final Digest digest;
    private final Show show;

    FindingPages(Digest digest, Show show) {
        this.digest = digest;
        this.show = show;
    }

    Element element() {
        Element section = Parts.section("findings", "10  Findings");
        section.add(byKind());
        failing(section);
        section.add(Element.of("h3").text("Derivations"));
        List<Digest.Group> derived = derived();
        section.add(Parts.paragraph(
                "",
                "The tightest finding of each kind and then those that fail, worst first: "
                        + Figures.count(derived.size()) + " of "
                        + Figures.count(digest.groups().size())
                        + " places. The command explain prints any other. Numbers are SI, five figures."));
        derived.forEach(group -> section.add(DerivationBlock.of(group.worst(), show)));
        return section;
    }

    private Element byKind() {
        Table table = Table.of(
                Table.words("Requirement"),
                Table.number("Checked", ""),
                Table.number("Fail", ""),
                Table.words("Tightest at"),
                Table.words("Set"),
                Table.margins());
        for (FindingCode code : FindingCode.values()) {
            List<Digest.Group> groups = digest.groups().stream()
                    .filter(g -> g.worst().code() == code)
                    .toList();
            if (!groups.isEmpty()) {
                Finding worst = groups.get(0).worst();
                table.row(
                        code.title(),
                        Figures.count(
                                groups.stream().mapToInt(Digest.Group::states).sum()),
                        Figures.count(
                                groups.stream().mapToInt(Digest.Group::failing).sum()),
                        worst.where().toString(),
                        worst.state(),
                        Parts.margin(worst));
            }
        }
        return table.element("wide");
    }

    private void failing(Element section) {
        List<Digest.Group> failing =
                digest.groups().stream().filter(g -> g.failing() > 0).toList();
        if (failing.isEmpty()) {
            return;
        }
        section.add(Element.of("h3").text("Does not hold"));
        Table table = Table.of(
                Table.words("Finding"),
                Table.words("Value and limit"),
                Table.words("Worst set"),
                Table.number("Fails in", "sets"),
                Table.margins());
        failing.stream().limit(MOST_FAILING_ROWS).forEach(group -> {
            Finding finding = group.worst();
            table.row(
                    Wording.claim(finding),
                    Wording.valueAndLimit(finding, show),
                    finding.state(),
                    Figures.count(group.failing()) + " of " + Figures.count(group.states()),
                    Parts.margin(finding));
        });
        section.add(table.element("wide"));
        if (failing.size() > MOST_FAILING_ROWS) {
            section.add(Parts.mind("the " + MOST_FAILING_ROWS + " worst of " + Figures.count(failing.size())
                    + " places are listed; the JSON answer of verify holds all."));
        }
    }

    private List<Digest.Group> derived() {
        Set<FindingCode> seen = new HashSet<>();
        List<Digest.Group> first = new ArrayList<>();
        List<Digest.Group> rest = new ArrayList<>();
        for (Digest.Group group : digest.groups()) {
            if (seen.add(group.worst().code())) {
                first.add(group);
            } else if (group.failing() > 0) {
                rest.add(group);
            }
        }
        first.addAll(rest.subList(0, Math.max(0, Math.min(rest.size(), MOST_DERIVATIONS - first.size()))));
        return first;
    }
}
