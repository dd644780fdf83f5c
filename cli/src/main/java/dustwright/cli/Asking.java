package dustwright.cli;

import dustwright.engine.Study;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import java.io.PrintWriter;
import java.util.List;
import java.util.function.UnaryOperator;

/** Puts a plant and the states of the command line to the engine, showing progress where one waits. */
final class Asking {
    private Asking() {}

    /** States and sheets. */
    static Study study(Plant plant, StateOptions options, PrintWriter err) {
        return study(plant, options, err, Study::withSheets);
    }

    /** States, and what is found from them. */
    static Study study(Plant plant, StateOptions options, PrintWriter err, UnaryOperator<Study> further) {
        List<State> states = options.anyOpenGiven()
                ? options.statesToJudge(plant, FilterCondition.CLEAN, FilterCondition.DIRTY)
                : options.usual(plant);
        Progress progress = new Progress(err, "states", states.size());
        Study study = further.apply(Study.of(plant, states, progress::done));
        progress.clear();
        return study;
    }
}
