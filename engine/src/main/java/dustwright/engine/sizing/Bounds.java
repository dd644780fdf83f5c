package dustwright.engine.sizing;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.sizing.Space.Fit;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;

/**
 * The greatest margin any design of a box can have in a counterexample (equation SIZ-2): the margin of one fit, every part at the end of
 * its range that favours the requirement. What favours which stands in docs/decisions/0065-sizing-by-counterexamples.md.
 */
final class Bounds {
    private final Space space;
    private final Tubing tubing;
    private final Rules rules;
    private final Map<String, OptionalDouble> known = new ConcurrentHashMap<>();
    private final AtomicLong solved = new AtomicLong();

    /** Which end of its range favours a requirement. */
    private enum End {
        LOW,
        HIGH
    }

    Bounds(Space space, Tubing tubing, Rules rules) {
        this.space = space;
        this.tubing = tubing;
        this.rules = rules;
    }

    /** States solved so far. */
    long solved() {
        return solved.get();
    }

    /** Whether a bound is known for this kind of requirement in this tubing. */
    boolean serves(Counterexample example) {
        return tubing.isTree() && aim(example).isPresent();
    }

    /** Choice that the place of a requirement itself belongs to, if it is open. */
    Optional<Integer> own(Counterexample example) {
        Place where = example.where();
        int v = switch (where.kind()) {
            case RUN -> space.ofRun(tubing.run(where.id()));
            case HOSE -> space.ofInlet(inlet(where.id()));
            // a wider hose feeds the tool better and takes the vacuum at the valve: neither end favours it
            case INLET -> example.code() == FindingCode.INLET_VACUUM ? space.ofInlet(inlet(where.id())) : Space.FIXED;
            default -> Space.FIXED;
        };
        return v == Space.FIXED ? Optional.empty() : Optional.of(v);
    }

    /** Choice of the producers that draw the air of a place. */
    Optional<Integer> producers(Counterexample example) {
        return space.producersOf(station(example.where()));
    }

    private String station(Place where) {
        return switch (where.kind()) {
            case RUN -> tubing.station(tubing.run(where.id()));
            case INLET, HOSE, TOOL -> tubing.station(tubing.ofInlet(where.id()));
            case PRODUCER ->
                space.plant().stations().stream()
                        .filter(s -> s.producers().stream().anyMatch(p -> p.id().equals(where.id())))
                        .map(Station::id)
                        .findFirst()
                        .orElse("");
            default -> where.id();
        };
    }

    private int inlet(String id) {
        for (int n = 0; n < space.plant().inlets().size(); n++) {
            if (space.plant().inlets().get(n).id().equals(id)) {
                return n;
            }
        }
        return Space.FIXED;
    }

    /**
     * The greatest margin in a box; +∞ where it is not known: the state has no answer, or the requirement is not checked there.
     *
     * @param box options of every choice that are still open, as bits
     */
    double margin(Counterexample example, long[] box) {
        Aim aim = aim(example).orElseThrow();
        Fit fit = aim.fit(box);
        String key = example.number() + fit.words();
        OptionalDouble margin = known.get(key);
        if (margin == null) {
            margin = worst(example, space.with(fit))
                    .map(f -> OptionalDouble.of(f.margin()))
                    .orElse(OptionalDouble.empty());
            known.put(key, margin);
        }
        return margin.orElse(Double.POSITIVE_INFINITY);
    }

    /** The finding of the most favourable fit of a box, of all sizes the place itself may have. */
    Optional<Finding> best(Counterexample example, long[] box) {
        Optional<Aim> aim = aim(example);
        Optional<Integer> own = own(example);
        if (aim.isEmpty() || own.isEmpty()) {
            return aim.flatMap(a -> worst(example, space.with(a.fit(box))));
        }
        Optional<Finding> best = Optional.empty();
        for (long rest = box[own.get()]; rest != 0; rest &= rest - 1) {
            long[] one = box.clone();
            one[own.get()] = rest & -rest;
            Optional<Finding> found = worst(example, space.with(aim.get().fit(one)));
            if (best.isEmpty()
                    || (found.isPresent() && found.get().margin() > best.get().margin())) {
                best = found;
            }
        }
        return best;
    }

    /** What a plant makes of a counterexample: its finding, worst first where several places match. */
    Optional<Finding> worst(Counterexample example, Plant plant) {
        solved.incrementAndGet();
        Outcome<DutyPoint> duty = DutyPointSolver.solve(plant, example.in(plant));
        if (!(duty instanceof Outcome.Solved<DutyPoint> answer)) {
            return Optional.empty();
        }
        List<Finding> findings = rules.judging(plant).of(answer.value());
        return findings.stream().filter(example::isAbout).min(java.util.Comparator.comparingDouble(Finding::margin));
    }

    /**
     * Which way every part favours a requirement.
     *
     * @param onWay runs whose air reaches the place or leaves it, and inlets behind it
     * @param way the end that favours it on that way; elsewhere the other one does
     * @param cloth the end that favours it
     */
    private record Aim(Space space, BitSet onWay, BitSet inletsOnWay, End way, End cloth) {
        Fit fit(long[] box) {
            int[] runs = new int[space.plant().runs().size()];
            for (int n = 0; n < runs.length; n++) {
                runs[n] = space.ofRun(n) == Space.FIXED ? 0 : end(box[space.ofRun(n)], onWay.get(n));
            }
            int[] inlets = new int[space.plant().inlets().size()];
            for (int n = 0; n < inlets.length; n++) {
                inlets[n] = space.ofInlet(n) == Space.FIXED ? 0 : end(box[space.ofInlet(n)], inletsOnWay.get(n));
            }
            int[] stations = new int[box.length];
            for (int v = 0; v < box.length; v++) {
                stations[v] = option(box[v], cloth);
            }
            return new Fit(runs, inlets, stations);
        }

        private int end(long options, boolean isOnWay) {
            return option(options, isOnWay == (way == End.HIGH) ? End.HIGH : End.LOW);
        }

        private static int option(long options, End end) {
            return end == End.HIGH
                    ? Long.SIZE - 1 - Long.numberOfLeadingZeros(options)
                    : Long.numberOfTrailingZeros(options);
        }
    }

    private Optional<Aim> aim(Counterexample example) {
        return switch (example.code()) {
            case TOOL_FLOW, INLET_VACUUM, TRANSPORT_VELOCITY, CARRYING_VELOCITY, NEAR_CHOKING ->
                through(example.where(), End.HIGH, End.HIGH);
            case WEAR_VELOCITY -> through(example.where(), End.LOW, End.LOW);
            case PRODUCER_VACUUM -> Optional.of(everywhere(End.HIGH, End.HIGH));
            case PRODUCER_TEMPERATURE, PRODUCER_POWER ->
                rules.widestRunsCheapest(space.plant())
                        ? Optional.of(everywhere(End.HIGH, End.HIGH))
                        : Optional.empty();
            case AIR_TO_CLOTH, CAN_VELOCITY -> Optional.of(everywhere(End.LOW, End.HIGH));
            default -> Optional.empty();
        };
    }

    private Aim everywhere(End way, End cloth) {
        BitSet runs = new BitSet();
        runs.set(0, space.plant().runs().size());
        BitSet inlets = new BitSet();
        inlets.set(0, space.plant().inlets().size());
        return new Aim(space, runs, inlets, way, cloth);
    }

    /** Air that passes a place: what feeds it and what it goes on through, one way; what else draws, the other. */
    private Optional<Aim> through(Place where, End way, End cloth) {
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
                inlets.set(inlet(where.id()));
            }
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(new Aim(space, runs, inlets, way, cloth));
    }
}
