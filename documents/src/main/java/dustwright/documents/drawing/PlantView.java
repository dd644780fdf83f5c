package dustwright.documents.drawing;

import dustwright.engine.plant.Plant;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a drawing of the plant shows: which way it is seen, how each run is coloured, what is open, which places carry a letter.
 *
 * @param title read out in place of the picture
 * @param runs how each run is drawn, by id; a run that is missing is drawn as not known
 * @param open ids of open inlets
 * @param letters place id by letter, in the order of the findings
 */
public record PlantView(
        Plant plant,
        Layout layout,
        String title,
        Map<String, RunLook> runs,
        Set<String> open,
        Map<String, String> letters) {

    /**
     * How one run is drawn.
     *
     * @param value written beside its id when it finds room; empty for no label
     * @param margin written with it
     * @param direction flow: 1 as drawn, −1 against it, 0 for none worth an arrow
     */
    public record RunLook(MarginClass marginClass, String value, String margin, int direction) {
        /** A run about which nothing is known. */
        public static final RunLook UNKNOWN = new RunLook(MarginClass.UNKNOWN, "", "", 0);
    }

    RunLook look(String run) {
        return runs.getOrDefault(run, RunLook.UNKNOWN);
    }

    /** Whether it shows the plant alone: no run has a margin. */
    boolean nothingAsked() {
        return runs.values().stream().allMatch(look -> look.marginClass() == MarginClass.NOT_ASKED);
    }

    /** Classes worst first, so that the worst labels find room first. */
    static List<MarginClass> labelled() {
        return List.of(MarginClass.FAR, MarginClass.SHORT, MarginClass.THIN, MarginClass.FAIR, MarginClass.AMPLE);
    }
}
