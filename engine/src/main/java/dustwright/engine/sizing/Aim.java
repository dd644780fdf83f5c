package dustwright.engine.sizing;

import dustwright.engine.finding.Place;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Space.Fit;
import java.util.BitSet;
import java.util.Optional;

/**
 * Which way every part favours a requirement at a place (equation SIZ-2): one end of its range on the way of the place, the other one
 * elsewhere. Why stands in docs/decisions/0065-sizing-by-counterexamples.md.
 */
final class Aim {
    /** Which end of its range favours a requirement. */
    private enum End {
        LOW,
        HIGH
    }

    private final Space space;
    private final End[] runs;
    private final End[] inlets;
    private final End cloth;
    /** Choices some part of which is taken at the low end, at the high end. */
    private final BitSet low = new BitSet();

    private final BitSet high = new BitSet();

    /**
     * An aim.
     *
     * @param runsOnWay runs whose air reaches the place or leaves it
     * @param inletsOnWay inlets behind it
     * @param way the end that favours it on that way
     * @param cloth the end that favours it
     */
    private Aim(Space space, BitSet runsOnWay, BitSet inletsOnWay, End way, End cloth) {
        this.space = space;
        this.cloth = cloth;
        Plant plant = space.plant();
        runs = new End[plant.runs().size()];
        for (int n = 0; n < runs.length; n++) {
            runs[n] = note(space.ofRun(n), runsOnWay.get(n) == (way == End.HIGH) ? End.HIGH : End.LOW);
        }
        inlets = new End[plant.inlets().size()];
        for (int n = 0; n < inlets.length; n++) {
            inlets[n] = note(space.ofInlet(n), inletsOnWay.get(n) == (way == End.HIGH) ? End.HIGH : End.LOW);
        }
        for (int v = 0; v < space.size(); v++) {
            if (space.isOfStation(v)) {
                note(v, cloth);
            }
        }
    }

    private End note(int choice, End end) {
        if (choice != Space.FIXED) {
            (end == End.HIGH ? high : low).set(choice);
        }
        return end;
    }

    /** The aim of a counterexample; empty where no order is known to bound it by. */
    static Optional<Aim> of(Counterexample example, Space space, Tubing tubing, Rules rules) {
        return switch (example.code()) {
            case TOOL_FLOW, INLET_VACUUM, TRANSPORT_VELOCITY, CARRYING_VELOCITY, NEAR_CHOKING ->
                through(example.where(), space, tubing, End.HIGH, End.HIGH);
            case WEAR_VELOCITY -> through(example.where(), space, tubing, End.LOW, End.LOW);
            case PRODUCER_VACUUM, CURVE_DEEP_END -> Optional.of(everywhere(space, End.HIGH, End.HIGH));
            case PRODUCER_TEMPERATURE, PRODUCER_POWER ->
                rules.widestRunsCheapest(space.plant())
                        ? Optional.of(everywhere(space, End.HIGH, End.HIGH))
                        : Optional.empty();
            case AIR_TO_CLOTH, CAN_VELOCITY -> Optional.of(everywhere(space, End.LOW, End.HIGH));
            default -> Optional.empty();
        };
    }

    private static Aim everywhere(Space space, End way, End cloth) {
        BitSet runs = new BitSet();
        runs.set(0, space.plant().runs().size());
        BitSet inlets = new BitSet();
        inlets.set(0, space.plant().inlets().size());
        return new Aim(space, runs, inlets, way, cloth);
    }

    /** Air that passes a place: what feeds it and what it goes on through, one way; what else draws, the other. */
    private static Optional<Aim> through(Place where, Space space, Tubing tubing, End way, End cloth) {
        BitSet runs = new BitSet();
        BitSet inlets = new BitSet();
        switch (where.kind()) {
            case RUN -> {
                int run = tubing.run(where.id());
                runs.or(tubing.behind(run));
                runs.or(tubing.onward(run));
                for (int n = 0; n < space.plant().inlets().size(); n++) {
                    int first = tubing.ofInlet(space.plant().inlets().get(n).id());
                    if (first == run
                            || (first != Tubing.NONE && tubing.behind(run).get(first))) {
                        inlets.set(n);
                    }
                }
            }
            case INLET, HOSE -> {
                int first = tubing.ofInlet(where.id());
                if (first == Tubing.NONE) {
                    return Optional.empty();
                }
                runs.or(tubing.onward(first));
                inlets.set(space.inlet(where.id()));
            }
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(new Aim(space, runs, inlets, way, cloth));
    }

    /** Every part at the end of its range that favours the requirement. */
    Fit fit(long[] box) {
        int[] ofRuns = new int[runs.length];
        for (int n = 0; n < runs.length; n++) {
            ofRuns[n] = space.ofRun(n) == Space.FIXED ? 0 : option(box[space.ofRun(n)], runs[n]);
        }
        int[] ofInlets = new int[inlets.length];
        for (int n = 0; n < inlets.length; n++) {
            ofInlets[n] = space.ofInlet(n) == Space.FIXED ? 0 : option(box[space.ofInlet(n)], inlets[n]);
        }
        int[] ofStations = new int[box.length];
        for (int v = 0; v < box.length; v++) {
            ofStations[v] = option(box[v], cloth);
        }
        return new Fit(ofRuns, ofInlets, ofStations);
    }

    /** All that the fit of a box depends on, as letters: boxes with the same have the same fit. */
    String ends(long[] box) {
        char[] ends = new char[2 * box.length];
        for (int v = 0; v < box.length; v++) {
            ends[2 * v] = low.get(v) ? (char) option(box[v], End.LOW) : 0;
            ends[2 * v + 1] = high.get(v) ? (char) option(box[v], End.HIGH) : 0;
        }
        return new String(ends);
    }

    private static int option(long options, End end) {
        return end == End.HIGH
                ? Long.SIZE - 1 - Long.numberOfLeadingZeros(options)
                : Long.numberOfTrailingZeros(options);
    }
}
