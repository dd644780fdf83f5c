package dustwright.engine.coverage;

import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ForkJoinTask;

/** Solves and judges single states, each with the engine's full solver; shared out among threads, tallied whatever the order. */
final class ExactStates {
    private final Plant plant;
    private final Network network;
    private final State condition;
    private final Judging judging;
    private final Watch watch;

    /** A set of inlets by its number in a fixed order. */
    interface Sets {
        long size();

        /** Numbers of the inlets of a set. */
        int[] set(long number);

        /** How far the solved state is from what was foretold of it, over what was allowed for; 0 where nothing was foretold. */
        default double gap(long number, DutyPoint duty) {
            return 0;
        }
    }

    ExactStates(Plant plant, Network network, State condition, Judging judging, Watch watch) {
        this.plant = plant;
        this.network = network;
        this.condition = condition;
        this.judging = judging;
        this.watch = watch;
    }

    /** Solves sets from one number on; to be called from a worker of the pool whose threads are to help. */
    Tally solve(Sets sets, int threads) {
        List<ForkJoinTask<Tally>> parts = new ArrayList<>();
        for (int part = 0; part < threads; part++) {
            int first = part;
            parts.add(ForkJoinTask.adapt(() -> solve(sets, first, threads)));
        }
        Tally all = new Tally();
        for (ForkJoinTask<Tally> part : ForkJoinTask.invokeAll(parts)) {
            all.add(part.join());
        }
        return all;
    }

    private Tally solve(Sets sets, int first, int stride) {
        DutyPointSolver solver = new DutyPointSolver(network);
        Tally tally = new Tally();
        for (long number = first; number < sets.size(); number += stride) {
            watch.goOn();
            solve(solver, sets, number, tally);
            watch.did(1);
        }
        return tally;
    }

    private void solve(DutyPointSolver solver, Sets sets, long number, Tally tally) {
        List<String> open = new ArrayList<>();
        for (int inlet : sets.set(number)) {
            open.add(plant.inlets().get(inlet).id());
        }
        Outcome<DutyPoint> duty = solver.solve(state(open));
        if (duty instanceof Outcome.Solved<DutyPoint> solved) {
            tally.add(number, open, judging.of(solved.value()));
            tally.addGap(sets.gap(number, solved.value()));
        } else {
            tally.addUnsolved(number, ((Outcome.NotSolved<DutyPoint>) duty).why());
        }
    }

    private State state(List<String> open) {
        return new State(
                String.join("+", open) + ", " + words(condition),
                open,
                condition.feeding(),
                condition.filter(),
                condition.openBleeds(),
                condition.ventedStations(),
                condition.runningProducers());
    }

    /** How people call a condition. */
    static String words(State condition) {
        return "filter " + condition.filter().name().toLowerCase(Locale.ROOT)
                + (condition.feeding().isEmpty() ? ", no dust" : "");
    }
}
