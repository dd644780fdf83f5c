package dustwright.cli;

import dustwright.engine.Study;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import java.io.PrintWriter;
import java.util.List;

/** Puts a plant and the states of the command line to the engine, showing progress where one waits. */
final class Asking {
    private Asking() {}

    static Study study(Plant plant, StateOptions options, PrintWriter err) {
        List<State> states = options.anyOpenGiven()
                ? options.statesToJudge(plant, FilterCondition.CLEAN, FilterCondition.DIRTY)
                : options.usual(plant);
        Progress progress = new Progress(err, "states", states.size());
        Study study = Study.of(plant, states, progress::done).withSheets();
        progress.clear();
        return study;
    }
}
