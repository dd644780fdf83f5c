package dustwright.documents.report;

import dustwright.documents.drawing.CurveChart;
import dustwright.documents.drawing.Layout;
import dustwright.documents.drawing.PlantDrawing;
import dustwright.documents.drawing.PlantView;
import dustwright.documents.drawing.PlantViews;
import dustwright.documents.drawing.ProfileChart;
import dustwright.documents.drawing.Scene;
import dustwright.documents.drawing.Sheet;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.PressureProfile;
import dustwright.engine.StateAnswer;
import dustwright.engine.StationCurves;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The plant drawn by its margins, the profile along the worst path, system against producer. */
final class DrawingPages {
    private static final int MOST_NAMES = 24;

    private final Digest digest;
    private final Show show;
    private final Plant plant;

    DrawingPages(Digest digest, Show show) {
        this.digest = digest;
        this.show = show;
        this.plant = digest.study().plant();
    }

    Element drawings() {
        Element section = Parts.section("drawing", "1  Drawing");
        Layout layout = Layout.plan(plant);
        Optional<StateAnswer> worst = digest.worstState();
        Optional<DutyPoint> duty = worst.flatMap(Digest::duty);
        if (worst.isPresent() && duty.isPresent()) {
            section.add(drawn(state(worst.get(), duty.get(), layout), stateCaption(worst.get(), layout)));
        }
        if (!digest.study().oneUser().isEmpty()) {
            section.add(drawn(
                    PlantViews.oneUser(digest.study(), layout, lettersOfOneUser(), show),
                    layout.kind().words() + ". Each run at its slowest with a single user, whichever inlet that is."));
        }
        if (worst.isPresent() && duty.isPresent() && layout.kind() == Layout.Kind.PLAN) {
            Layout isometric = Layout.isometric(plant);
            section.add(drawn(state(worst.get(), duty.get(), isometric), stateCaption(worst.get(), isometric)));
        }
        return section;
    }

    /** The drawing one shows first: every run at its slowest with one user, else the set with the smallest margin; empty if neither is known. */
    Optional<Scene> first() {
        Layout layout = Layout.plan(plant);
        if (!digest.study().oneUser().isEmpty()) {
            PlantView view = PlantViews.oneUser(digest.study(), layout, lettersOfOneUser(), show);
            return Optional.of(PlantDrawing.of(view).scene());
        }
        return digest.worstState()
                .flatMap(worst -> Digest.duty(worst)
                        .map(duty -> PlantDrawing.of(state(worst, duty, layout)).scene()));
    }

    private PlantView state(StateAnswer answer, DutyPoint duty, Layout layout) {
        return PlantViews.state(plant, duty, answer.findings(), layout, lettersOf(answer), show);
    }

    /** On a drawing of one state, letters of what does not hold in it; where all holds, of what is tight. */
    private Map<String, String> lettersOf(StateAnswer answer) {
        boolean anyFails = digest.anyDoubt();
        return letters(group -> answer.findings().stream()
                .filter(f -> f.code() == group.worst().code()
                        && f.where().equals(group.worst().where()))
                .anyMatch(f -> !anyFails || !f.holds()));
    }

    /** On the drawing with one user, letters of findings whose worst set is a single user. */
    private Map<String, String> lettersOfOneUser() {
        return letters(group -> digest.study().oneUser().stream()
                .anyMatch(one -> one.run().equals(group.worst().where().id())
                        && one.state().equals(group.worst().state())));
    }

    private Map<String, String> letters(Predicate<Digest.Group> here) {
        Map<String, String> letters = new LinkedHashMap<>();
        digest.lettered().stream().filter(here).forEach(group -> {
            String place = group.worst().where().id();
            digest.letter(place).ifPresent(letter -> letters.putIfAbsent(letter, place));
        });
        return letters;
    }

    private String stateCaption(StateAnswer answer, Layout layout) {
        return layout.kind().words() + ", set with the smallest margin: "
                + answer.state().name() + " ("
                + Wording.openInlets(answer.state())
                + "). A number at a run is the velocity at its slowest point, where the"
                + " least is asked; \"fastest\" that at its fastest, where it wears.";
    }

    private static Element drawn(PlantView view, String caption) {
        Sheet sheet = PlantDrawing.of(view);
        return Parts.figure(sheet.scene(), caption + withoutRoom(sheet.unlabelled()));
    }

    private static String withoutRoom(List<String> names) {
        if (names.isEmpty()) {
            return "";
        }
        if (names.size() > MOST_NAMES) {
            return " No room for " + Wording.counted(names.size(), "label", "labels")
                    + "; the tables name every piece.";
        }
        return " No room for the labels of " + String.join(", ", names) + ".";
    }

    Element profiles() {
        Element section = Parts.section("profile", "2  Along the path");
        List<PressureProfile> profiles = digest.study().profiles();
        if (profiles.isEmpty()) {
            return section.add(Parts.paragraph("", "No path: no solved set has an open inlet."));
        }
        for (PressureProfile profile : profiles) {
            section.add(Parts.figure(
                    ProfileChart.of(profile, show),
                    "From inlet " + profile.inlet() + " to the producer, set " + profile.state()
                            + "." + least(profile)
                            + " Numbers are the slowest of each piece, bold what is nearest to its limit."
                            + most(profile)
                            + " Vacuum grows downwards."));
        }
        return section;
    }

    private static String least(PressureProfile profile) {
        return profile.stretches().stream().anyMatch(s -> s.least().isPresent())
                ? " The dashed line is the least velocity the dust needs; the area between is the margin, hatched where it is missing."
                : "";
    }

    private static String most(PressureProfile profile) {
        return profile.stretches().stream().anyMatch(s -> s.most().isPresent())
                ? " A dashed line above is the most before tubing wears."
                : "";
    }

    Element charts() {
        Element section = Parts.section("curves", "3  System and producer");
        List<Element> figures = new ArrayList<>();
        boolean oneSet = digest.study().states().size() == 1;
        for (StationCurves curves : digest.study().charts()) {
            figures.add(Parts.figure(
                    CurveChart.of(curves.chart(), show),
                    CurveChart.title(curves, oneSet) + ". " + CurveChart.caption(curves.chart())));
        }
        if (figures.isEmpty()) {
            return section.add(Parts.paragraph("", "No station, or no solved set."));
        }
        return section.addAll(figures);
    }
}
