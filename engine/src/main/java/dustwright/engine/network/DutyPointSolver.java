package dustwright.engine.network;

import dustwright.engine.finding.Outcome;
import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Solves one state of a plant: every pressure and flow, or why there is none. Compiles once; {@link #solve(State)} may be called for
 * many states, from one thread.
 *
 * <p>Around {@link NewtonSolver} stand outer loops: junction losses and the dust in every leg are found from the flows and put back until
 * they no longer change, and drives that hold a vacuum move between holding and the ends of their speed range. The first round is that of
 * clean air; dust comes in with the second.
 */
public final class DutyPointSolver {
    private static final int ROUND_LIMIT = 300;
    /** Rounds after which junction losses that still move are taken together. */
    private static final int HUNT_EVERY = 60;

    private final Network net;
    private final Set<String> inletIds = new HashSet<>();
    private final NetworkState unknowns;
    private final List<StationEnd> ends = new ArrayList<>();
    private final NewtonSolver newton;
    private final JunctionRounds junctions;
    private final DustLoad dust;

    /** A solver for the states of one compiled plant. */
    public DutyPointSolver(Network net) {
        this.net = net;
        net.inlets.forEach(inlet -> inletIds.add(inlet.id()));
        unknowns = new NetworkState(net);
        net.stations.forEach(station -> ends.add(new StationEnd(net, station)));
        dust = new DustLoad(net);
        newton = new NewtonSolver(net, unknowns, ends, dust);
        junctions = new JunctionRounds(net);
    }

    /** Compiles a plant and solves one state of it. */
    public static Outcome<DutyPoint> solve(Plant plant, State state) {
        try {
            return new DutyPointSolver(Network.compile(plant)).solve(state);
        } catch (IllegalArgumentException outsideFormula) {
            // Formulas refuse what lies outside their range, in words for people; it is the plant that is wrong, not
            // the program.
            return new Outcome.NotSolved<>(String.valueOf(outsideFormula.getMessage()));
        }
    }

    /** Solves one state. */
    public Outcome<DutyPoint> solve(State state) {
        Optional<String> unknown = unknownName(state);
        if (unknown.isPresent()) {
            return new Outcome.NotSolved<>(unknown.get());
        }
        unknowns.set(net, state);
        ends.forEach(end -> end.set(state));
        dust.set(state);
        junctions.clear();
        Reach reach = Reach.of(net, unknowns);
        Optional<String> unreachable = reach.judge(state);
        if (unreachable.isPresent()) {
            return new Outcome.NotSolved<>(unreachable.get());
        }
        newton.start(ends.stream().anyMatch(StationEnd::anyRuns));
        @Nullable String reason = converge(reach);
        return reason == null
                ? new Outcome.Solved<>(new DutyReport(net, unknowns, newton, ends, dust).of(state))
                : new Outcome.NotSolved<>(state.name() + ": " + reason);
    }

    private @Nullable String converge(Reach reach) {
        boolean joined = true;
        for (int round = 0; round < ROUND_LIMIT; round++) {
            newton.equations().pin(reach.resting);
            @Nullable String reason = newton.solve();
            if (reason != null && round > 0) {
                // junction losses and dust of the last round may lead from its flows into a corner: once more from afar
                newton.restart(ends.stream().anyMatch(StationEnd::anyRuns));
                reason = newton.solve();
            }
            if (reason != null) {
                return (round > 0 && dust.any() ? "solved without dust, not with what is fed: " : "") + reason;
            }
            joined = junctions.settled(unknowns);
            boolean parted = dust.settled(unknowns);
            if (!joined && (round + 1) % HUNT_EVERY == 0) {
                new JunctionHunt(net, unknowns, newton, junctions).end();
                junctions.clear(); // how losses answered before says nothing of now
            }
            if (joined && parted) {
                if (!climb()) {
                    return null;
                }
                dust.forget(); // how flows answered before the drives moved says nothing of now
            }
        }
        return "losses of joining streams, dust and held vacuums did not settle in " + ROUND_LIMIT + " rounds; "
                + (joined ? dust.worst() : junctions.worst());
    }

    private boolean climb() {
        boolean climbed = false;
        for (int s = 0; s < ends.size(); s++) {
            int suction = net.stations.get(s).suction();
            climbed |= ends.get(s)
                    .climb(
                            Math.sqrt(unknowns.squared[suction]),
                            newton.equations().imbalance_kgPerS(suction));
        }
        return climbed;
    }

    private Optional<String> unknownName(State state) {
        return missing("inlet", state.open(), inletIds::contains)
                .or(() -> missing("inlet", state.feeding(), inletIds::contains))
                .or(() -> missing("far-end bleed valve", state.openBleeds(), this::isBleed))
                .or(() -> missing("station", state.ventedStations(), this::isStation))
                .or(() -> missing("vacuum producer", state.runningProducers(), this::isProducer));
    }

    private static Optional<String> missing(String kind, Iterable<String> ids, Predicate<String> known) {
        for (String id : ids) {
            if (!known.test(id)) {
                return Optional.of("no " + kind + " is called " + id);
            }
        }
        return Optional.empty();
    }

    private boolean isBleed(String id) {
        return net.bleeds.stream().anyMatch(b -> b.id().equals(id));
    }

    private boolean isStation(String id) {
        return net.stations.stream().anyMatch(s -> s.id().equals(id) && s.ventLeg() != Network.NONE);
    }

    private boolean isProducer(String id) {
        return net.stations.stream().flatMap(s -> s.producers().stream()).anyMatch(p -> p.id().equals(id));
    }
}
