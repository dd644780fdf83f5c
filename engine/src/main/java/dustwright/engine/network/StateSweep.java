package dustwright.engine.network;

import dustwright.engine.finding.Outcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Solves many states of one network that differ in the open inlets only. A tree whose junction losses do not depend on the split is
 * folded once (equations NET-9, NET-10, NET-13) and then costs about a microsecond per state; any other network, and any state in which
 * something comes near choking or an open inlet is left in laminar flow, is solved by {@link DutyPointSolver}. Both agree to 1e-10 of
 * the barometer; to 5e-9 where air moves at 100 m/s. Folding costs as much as a thousand single states: worth it for sweeps over sets
 * of inlets, not for a handful.
 *
 * <p>A solved state is read as far as asked: pressure in the receiver, air the station draws, what each open inlet draws; and pieces, at
 * least the runs and hoses between every open inlet and the receiver, which are read when {@link #pieces} is asked. One thread per sweep.
 */
public final class StateSweep {
    private final Network network;
    private final State condition;
    private final Outcome<FoldedNetwork> folding;
    private final DutyPointSolver unfoldedSolver;
    private final List<LegResult> unfolded = new ArrayList<>();
    private final @Nullable FoldedSweep foldedSweep;
    /** The folded sweep while the last state stands in it. */
    private @Nullable FoldedSweep answered;

    private double receiver_Pa;
    private double drawn_kgPerS;
    private double[] inletFlow_kgPerS = {};
    /** R T over the area, by leg: velocity of one kg/s at one pascal. */
    private final double[] rtPerArea;

    /**
     * Prepares a sweep.
     *
     * @param condition filter, valves, producers and who picks up dust in all states; what it says of inlets does not matter
     */
    public StateSweep(Network network, State condition) {
        this.network = network;
        this.condition = condition;
        folding = carriesDust(network, condition)
                ? new Outcome.NotSolved<>("users pick up dust, and what it adds to a leg depends on the other users")
                : FoldedNetwork.fold(network, condition);
        foldedSweep = folding instanceof Outcome.Solved<FoldedNetwork> folded ? new FoldedSweep(folded.value()) : null;
        unfoldedSolver = new DutyPointSolver(network);
        rtPerArea = Arrays.stream(network.c)
                .map(c -> Math.sqrt(c * network.rt_JPerKg))
                .toArray();
    }

    private static boolean carriesDust(Network network, State condition) {
        return network.inlets.stream()
                .anyMatch(
                        inlet -> inlet.feed_kgPerS() > 0 && condition.feeding().contains(inlet.id()));
    }

    /** Why states are solved one by one, unfolded, in words for people; empty when they are folded. */
    public Optional<String> unfoldedBecause() {
        return folding.match(folded -> Optional.empty(), Optional::of);
    }

    /**
     * Solves the state with these inlets open.
     *
     * @param inlets numbers of inlets in the order of the plant, each at most once
     * @return empty when solved, else why not
     */
    public Optional<String> solve(int... inlets) {
        boolean solved = foldedSweep != null && foldedSweep.solve(inlets) == FoldedSolver.Answer.SOLVED;
        answered = solved ? foldedSweep : null;
        return solved ? Optional.empty() : solveUnfolded(inlets);
    }

    private Optional<String> solveUnfolded(int[] inlets) {
        List<String> open = new ArrayList<>();
        for (int inlet : inlets) {
            open.add(network.inlets.get(inlet).id());
        }
        State state = new State(
                String.join("+", open),
                open,
                condition.feeding(),
                condition.filter(),
                condition.openBleeds(),
                condition.ventedStations(),
                condition.runningProducers());
        unfolded.clear();
        return unfoldedSolver.solve(state).match(duty -> keep(duty, inlets), Optional::of);
    }

    private Optional<String> keep(DutyPoint duty, int[] inlets) {
        unfolded.addAll(duty.legs());
        inletFlow_kgPerS = Arrays.stream(inlets)
                .mapToDouble(inlet -> duty.inlets().get(inlet).flow().kgPerSecond())
                .toArray();
        receiver_Pa = 0;
        drawn_kgPerS = 0;
        if (!duty.stations().isEmpty()) {
            StationResult station = duty.stations().get(0);
            receiver_Pa = station.receiver().pascals();
            drawn_kgPerS = station.throughFilter().kgPerSecond()
                    - station.rotaryValve().kgPerSecond();
        }
        return Optional.empty();
    }

    /** Whether the last state was read from folded tables. */
    public boolean folded() {
        return answered != null;
    }

    /** Number of pieces of the last state; the other questions about pieces come after this one. */
    public int pieces() {
        return answered != null ? answered.pieces() : unfolded.size();
    }

    /** Id of the run, or of the inlet whose hose the piece is. */
    public String id(int piece) {
        return answered != null
                ? network.legId[answered.leg(piece)]
                : unfolded.get(piece).id();
    }

    /** Run or hose. */
    public LegResult.Kind kind(int piece) {
        if (answered == null) {
            return unfolded.get(piece).kind();
        }
        boolean hose = network.legKind[answered.leg(piece)] == Network.LegKind.HOSE;
        return hose ? LegResult.Kind.HOSE : LegResult.Kind.RUN;
    }

    /** Air through the piece, in the direction it flows [kg/s]. */
    public double flow_kgPerS(int piece) {
        return answered != null
                ? answered.flow_kgPerS(piece)
                : Math.abs(unfolded.get(piece).flow().kgPerSecond());
    }

    /** Velocity where the piece is slowest: at the upstream end, where the air is densest [m/s]. */
    public double slowest_mPerS(int piece) {
        if (answered == null) {
            return unfolded.get(piece).slowest().metresPerSecond();
        }
        int leg = answered.leg(piece);
        return rtPerArea[leg] * answered.flow_kgPerS(piece) / answered.startPressure_Pa(piece);
    }

    /** Static pressure there [Pa]. */
    public double startPressure_Pa(int piece) {
        if (answered != null) {
            return answered.startPressure_Pa(piece);
        }
        LegResult leg = unfolded.get(piece);
        return Math.max(leg.pressureFrom().pascals(), leg.pressureTo().pascals());
    }

    /** Pressure in the receiver [Pa]. */
    public double receiver_Pa() {
        return answered != null ? answered.receiver_Pa() : receiver_Pa;
    }

    /** Air the station draws from the tubing [kg/s]. */
    public double drawn_kgPerS() {
        return answered != null ? answered.drawn_kgPerS() : drawn_kgPerS;
    }

    /**
     * What an open inlet draws [kg/s].
     *
     * @param asked its place among the inlets the state was asked with
     */
    public double inletFlow_kgPerS(int asked) {
        return answered != null ? answered.inletFlow_kgPerS(asked) : inletFlow_kgPerS[asked];
    }
}
