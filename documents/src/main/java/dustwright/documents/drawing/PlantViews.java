package dustwright.documents.drawing;

import dustwright.documents.drawing.PlantView.RunLook;
import dustwright.documents.writing.Show;
import dustwright.engine.OneUserVelocity;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The views of a study that are drawn: tubing coloured by its margin in one state, or by its margin with one user. */
public final class PlantViews {
    private PlantViews() {}

    /** One solved state: each run by its smallest margin in it. */
    public static PlantView state(
            Plant plant,
            DutyPoint duty,
            List<Finding> findings,
            Layout layout,
            Map<String, String> letters,
            Show show) {
        Map<String, Finding> worst = new HashMap<>();
        for (Finding finding : findings) {
            if (finding.where().kind() == Place.Kind.RUN) {
                worst.merge(finding.where().id(), finding, (a, b) -> a.margin() <= b.margin() ? a : b);
            }
        }
        Map<String, RunLook> looks = new LinkedHashMap<>();
        for (LegResult leg : duty.legs()) {
            if (leg.kind() == LegResult.Kind.RUN) {
                looks.put(leg.id(), look(leg, worst.get(leg.id()), show));
            }
        }
        State state = duty.state();
        String title = layout.kind().words() + " of " + plant.name() + ", tubing by margin, set " + state.name();
        return new PlantView(plant, layout, title, looks, Set.copyOf(state.open()), letters);
    }

    private static RunLook look(LegResult leg, @org.jspecify.annotations.Nullable Finding worst, Show show) {
        int direction = (int) Math.signum(leg.flow().kgPerSecond());
        if (worst == null) {
            boolean dust = leg.dust().kgPerSecond() > 0;
            return new RunLook(dust ? MarginClass.NOT_ASKED : MarginClass.NO_AIR, "", "", 0);
        }
        Show.Pair pair = show.pair(worst);
        String value = (said(worst.code()) + " " + pair.valueFull()).strip();
        return new RunLook(MarginClass.of(worst.margin()), value, Show.margin(worst.margin()), direction);
    }

    /** What a number at a run is, where it is not the velocity at its slowest point. */
    private static String said(FindingCode code) {
        return switch (code) {
            case WEAR_VELOCITY -> "fastest";
            case LOADING_RATIO -> "dust per air";
            case CHOKED -> "end at";
            default -> "";
        };
    }

    /** Each run at its slowest with one user, whichever inlet that is. */
    public static PlantView oneUser(Study study, Layout layout, Map<String, String> letters, Show show) {
        Map<String, RunLook> looks = new LinkedHashMap<>();
        study.plant().runs().forEach(run -> looks.put(run.id(), new RunLook(MarginClass.NOT_ASKED, "", "", 0)));
        for (OneUserVelocity one : study.oneUser()) {
            MarginClass marginClass = MarginClass.of(one.margin());
            boolean worthALabel = marginClass.compareTo(MarginClass.THIN) <= 0;
            String value = worthALabel ? show.full(one.slowest()) : "";
            looks.put(one.run(), new RunLook(marginClass, value, Show.margin(one.margin()), 1));
        }
        String title = layout.kind().words() + " of " + study.plant().name() + ", tubing by margin with one user";
        return new PlantView(study.plant(), layout, title, looks, Set.of(), letters);
    }

    /** The plant alone, before anything is asked of it, with letters at some places. */
    public static PlantView plain(Plant plant, Layout layout, Map<String, String> letters) {
        Map<String, RunLook> looks = new LinkedHashMap<>();
        plant.runs().forEach(run -> looks.put(run.id(), new RunLook(MarginClass.NOT_ASKED, "", "", 0)));
        return new PlantView(plant, layout, layout.kind().words() + " of " + plant.name(), looks, Set.of(), letters);
    }
}
