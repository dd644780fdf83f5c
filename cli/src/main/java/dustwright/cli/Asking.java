package dustwright.cli;

import dustwright.engine.Study;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import java.io.PrintWriter;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;

/** Puts a plant and the states of the command line to the engine, showing progress where one waits. */
final class Asking {
    private Asking() {}

    /** States and sheets. */
    static Study study(Plant plant, StateOptions options, PrintWriter err) {
        return study(plant, options, err, Study::withSheets);
    }

    /** Sheets of states that are solved and judged no further. */
    static Study sheets(Plant plant, StateOptions options, PrintWriter err) {
        return study(plant, options, err, Study::solved, Study::withSheets);
    }

    /** States, and what is found from them. */
    static Study study(Plant plant, StateOptions options, PrintWriter err, UnaryOperator<Study> further) {
        return study(plant, options, err, Study::of, further);
    }

    /** How states are solved. */
    private interface Solving {
        Study of(Plant plant, List<State> states, IntConsumer done);
    }

    private static Study study(
            Plant asked, StateOptions options, PrintWriter err, Solving solving, UnaryOperator<Study> further) {
        Plant plant = options.inService(asked);
        List<State> states = options.anyOpenGiven()
                ? options.statesToJudge(plant, FilterCondition.CLEAN, FilterCondition.DIRTY)
                : options.usual(plant);
        Progress progress = new Progress(err, "states", states.size());
        Study study = further.apply(solving.of(plant, states, progress::done));
        progress.clear();
        return study;
    }
}
