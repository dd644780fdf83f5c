package dustwright.documents.report;

import dustwright.documents.drawing.MarginStrip;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.OneUserVelocity;
import dustwright.engine.Trial;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Side;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the trade looks for first: the verdict, velocity with one user piece by piece, what fails, what the page rests on. */
final class FirstPage {
    private static final int WORST_RUNS = 3;

    private final Digest digest;
    private final Show show;
    private final Origin origin;

    FirstPage(Digest digest, Show show, Origin origin) {
        this.digest = digest;
        this.show = show;
        this.origin = origin;
    }

    List<Element> elements() {
        Plant plant = digest.study().plant();
        List<Element> page = new ArrayList<>();
        page.add(Element.of("h1").text(plant.name()));
        if (!plant.note().isEmpty()) {
            page.add(Parts.paragraph("note", plant.note()));
        }
        page.add(verdict());
        oneUser(page);
        withAllUsers(page);
        findings(page);
        page.add(titleBlock());
        return page;
    }

    private Element verdict() {
        Verdict verdict = Verdict.of(digest, show);
        Element said = Element.of("div")
                .with("class", "verdict")
                .add(Element.of("p")
                        .add(Element.of("b", "claim", verdict.word()))
                        .text(" " + verdict.reason()));
        Wording.asked(digest.study().plant()).map(Parts::mind).ifPresent(said::add);
        digest.usersNotAsked().map(Parts::mind).ifPresent(said::add);
        digest.transportNotAsked().map(Parts::mind).ifPresent(said::add);
        digest.standbyNotAsked().map(Parts::mind).ifPresent(said::add);
        HazardLists.untested(digest.study().plant()).map(Parts::mind).ifPresent(said::add);
        return said.add(Parts.paragraph("cap", Wording.SCREENING));
    }

    private void oneUser(List<Element> page) {
        List<OneUserVelocity> sorted = MarginStrip.worstFirst(digest.study().oneUser());
        page.add(Element.of("h2").text("Velocity with one user"));
        if (sorted.isEmpty()) {
            page.add(Parts.paragraph("", "Not asked."));
            return;
        }
        page.add(Parts.figure(MarginStrip.of(sorted), stripCaption(sorted)));
        page.add(oneUserTable(sorted.subList(0, Math.min(WORST_RUNS, sorted.size())), digest, show));
    }

    private static String stripCaption(List<OneUserVelocity> sorted) {
        long below = sorted.stream().filter(one -> one.margin() < 0).count();
        return "Margin of runs at their slowest point with a single user upstream, worst at the left: "
                + (below == 0 ? "none" : Figures.count(below)) + " of "
                + Wording.counted(sorted.size(), "run", "runs") + " below the limit"
                + (MarginStrip.cuts(sorted) ? "; bars with a tip go on beyond the scale" : "")
                + (sorted.size() > WORST_RUNS ? ". Below the " + WORST_RUNS + " slowest; all in section 5." : ".");
    }

    static Element oneUserTable(List<OneUserVelocity> velocities, Digest digest, Show show) {
        String unit = show.unit(Dimension.VELOCITY);
        Table table = Table.of(
                Table.words("Run"),
                Table.number("Bore", show.boreUnit()),
                Table.words("Set"),
                Table.number("Slowest", unit),
                Table.number("Least", unit),
                Table.margins());
        Plant plant = digest.study().plant();
        for (OneUserVelocity one : velocities) {
            table.row(
                    one.run(),
                    show.bore(plant.tube(plant.run(one.run()).tube()).bore()),
                    one.state(),
                    show.number(one.slowest()),
                    show.number(one.least()),
                    Parts.margin(one.margin(), Side.AT_LEAST));
        }
        return table.element("one");
    }

    private void withAllUsers(List<Element> page) {
        digest.mostUsers().ifPresent(answer -> {
            String set = answer.state().name() + " (" + Wording.openInlets(answer.state()) + ")";
            String sentence = Digest.slowest(answer)
                    .map(f -> "With most users on, set " + set + ", the slowest stretch is " + f.where() + ": "
                            + Wording.valueAndLimit(f, show) + " (" + Show.margin(f) + ").")
                    .orElse("With most users on, set " + set + ", no transport velocity is asked.");
            page.add(Parts.paragraph("after", sentence));
        });
    }

    private void findings(List<Element> page) {
        List<Digest.Group> lettered = digest.lettered();
        boolean fails = digest.anyDoubt();
        String head = digest.undecided().isEmpty() ? "What does not hold" : "What does not hold or is not known";
        page.add(Element.of("h2").text(fails ? head : "Tightest requirements"));
        Table table = Table.of(
                Table.words("Place"),
                Table.words("Finding"),
                Table.words("Value and limit"),
                Table.words("Set"),
                Table.margins());
        for (List<Digest.Group> place : digest.letteredByPlace()) {
            for (int n = 0; n < place.size(); n++) {
                Finding finding = place.get(n).worst();
                String id = finding.where().id();
                Object letter = n == 0 ? Parts.letter(digest.letter(id).orElse("")) : "";
                table.row(
                        letter,
                        Wording.claim(finding),
                        Wording.valueAndLimit(finding, show),
                        finding.state(),
                        Parts.margin(finding));
            }
        }
        if (!table.isEmpty()) {
            page.add(table.element("top"));
        }
        long groups = digest.groups().stream().filter(g -> g.failing() > 0).count();
        page.add(Parts.paragraph(
                "cap",
                Figures.count(digest.checked()) + " requirements checked in "
                        + Wording.counted(digest.study().states().size(), "set", "sets") + ", "
                        + (fails
                                ? Figures.count(digest.failing()) + " do not hold" + unknown() + ", at "
                                        + Wording.counted(groups, "place", "places") + "."
                                : "all hold.")));
        if (fails) {
            Finding worst = lettered.get(0).worst();
            page.add(Element.of("p")
                    .add(Element.of("b").text("What would help at " + worst.where() + ": "))
                    .text(worst.code().remedy()));
            trials(page);
        }
    }

    private void trials(List<Element> page) {
        List<Trial> trials = digest.study().trials();
        if (!trials.isEmpty()) {
            Trial first = trials.get(0);
            String tried = trials.stream().map(t -> Wording.trial(t, show)).collect(Collectors.joining(" "));
            page.add(Element.of("p")
                    .add(Element.of("b").text("Tried: "))
                    .text("one change for run " + first.run() + ", set " + first.state()
                            + " solved once more, no other set. " + tried));
        }
    }

    private String unknown() {
        long unknown = digest.checked()
                - digest.failing()
                - digest.study().findings().filter(Finding::holds).count();
        return unknown == 0 ? "" : ", " + Figures.count(unknown) + " are not known";
    }

    /** Fields of ISO 7200; an empty field says what is missing, so that it cannot look signed. */
    private Element titleBlock() {
        Plant plant = digest.study().plant();
        Element block = Element.of("table").with("class", "block");
        block.add(
                fields("Plant", plant.name(), "Document type", "Verification report", "Status", "Draft"),
                fields("Made by", "not yet named", "Checked by", "not yet checked", "Approved by", "not yet approved"),
                fields("Reference", Wording.freeAir(show), "Site", site(plant), "Units", show.unitsName()),
                fields(
                        "Plant file",
                        origin.plantFile() + " " + origin.mark(),
                        "Computed with",
                        origin.program(),
                        "Rests on",
                        Wording.counted(plant.assumptions().size(), "assumption", "assumptions") + ", "
                                + Wording.counted(plant.overrides().size(), "override", "overrides")));
        return block;
    }

    private String site(Plant plant) {
        return show.full(plant.site().air().ambient()) + ", "
                + show.full(plant.site().air().temperature());
    }

    private static Element fields(String... captionsAndValues) {
        Element row = Element.of("tr");
        for (int i = 0; i < captionsAndValues.length; i += 2) {
            row.add(Element.of("td")
                    .add(Element.of("span", "cap", captionsAndValues[i]), Element.of("br"))
                    .text(captionsAndValues[i + 1]));
        }
        return row;
    }
}
