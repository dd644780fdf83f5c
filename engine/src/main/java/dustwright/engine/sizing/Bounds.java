package dustwright.engine.sizing;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The greatest margin any design of a box can have in a counterexample (equation SIZ-2): the margin of one fit, every part at the end of
 * its range that favours the requirement. What favours which stands in docs/decisions/0065-sizing-by-counterexamples.md.
 */
final class Bounds {
    private final Space space;
    private final Tubing tubing;
    private final Rules rules;
    private final Map<String, OptionalDouble> known = new HashMap<>();
    private final Map<Integer, Optional<Aim>> aims = new HashMap<>();
    private final Map<Integer, Influence> influences = new HashMap<>();
    private long solved;

    Bounds(Space space, Tubing tubing, Rules rules) {
        this.space = space;
        this.tubing = tubing;
        this.rules = rules;
    }

    /** States solved so far. */
    long solved() {
        return solved;
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
            case HOSE -> space.ofInlet(space.inlet(where.id()));
            // a wider hose feeds the tool better and takes the vacuum at the valve: neither end favours it
            case INLET ->
                example.code() == FindingCode.INLET_VACUUM ? space.ofInlet(space.inlet(where.id())) : Space.FIXED;
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

    /**
     * The greatest margin in a box; +∞ where it is not known: the state has no answer, or the requirement is not checked there.
     *
     * @param box options of every choice that are still open, as bits
     */
    double margin(Counterexample example, long[] box) {
        Aim aim = aim(example).orElseThrow();
        String key = example.number() + ":" + aim.ends(box);
        OptionalDouble margin = known.get(key);
        if (margin == null) {
            margin = worst(example, space.with(aim.fit(box)))
                    .map(f -> OptionalDouble.of(f.margin()))
                    .orElse(OptionalDouble.empty());
            known.put(key, margin);
        }
        return margin.orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Whether some design of a box may have this margin. Choices that hardly move the requirement are left at their favourable end first:
     * boxes that differ in nothing else are then answered by one state. Only near the margin they are looked at as they are.
     */
    boolean mayHold(Counterexample example, long[] box, double margin) {
        Influence influence = influence(example);
        double loose = margin(example, influence.loosened(box));
        return loose >= margin && (loose >= margin + influence.looseness() || margin(example, box) >= margin);
    }

    /** What the choices move a counterexample by. */
    Influence influence(Counterexample example) {
        Influence known = influences.get(example.number());
        if (known == null) {
            known = Influence.of(this, example, space);
            influences.put(example.number(), known);
        }
        return known;
    }

    /** The finding of the most favourable fit of a box, of all sizes the place itself and its producers may have. */
    Optional<Finding> best(Counterexample example, long[] box) {
        return aim(example).flatMap(a -> worst(example, space.with(a.fit(mostFavourable(example, box)))));
    }

    /** The box with the size of the place itself and the producers with which a counterexample has the greatest margin. */
    long[] mostFavourable(Counterexample example, long[] box) {
        long[] best = box.clone();
        double most = Double.NEGATIVE_INFINITY;
        for (long[] one : apart(example, box)) {
            double margin = margin(example, one);
            if (margin > most) {
                most = margin;
                best = one;
            }
        }
        return best;
    }

    /** A box taken apart: one size of the place itself and one choice of producers in each. */
    List<long[]> apart(Counterexample example, long[] box) {
        int own = own(example).orElse(Space.FIXED);
        int producers = producers(example).orElse(Space.FIXED);
        List<long[]> apart = new ArrayList<>();
        for (long p = producers == Space.FIXED ? 1 : box[producers]; p != 0; p &= p - 1) {
            for (long o = own == Space.FIXED ? 1 : box[own]; o != 0; o &= o - 1) {
                long[] one = box.clone();
                if (producers != Space.FIXED) {
                    one[producers] = Long.lowestOneBit(p);
                }
                if (own != Space.FIXED) {
                    one[own] = Long.lowestOneBit(o);
                }
                apart.add(one);
            }
        }
        return apart;
    }

    /** What a plant makes of a counterexample: its finding, worst first where several places match. */
    Optional<Finding> worst(Counterexample example, Plant plant) {
        solved++;
        Outcome<DutyPoint> duty = DutyPointSolver.solve(plant, example.in(plant));
        if (!(duty instanceof Outcome.Solved<DutyPoint> answer)) {
            return Optional.empty();
        }
        List<Finding> findings = rules.judging(plant).of(answer.value());
        return findings.stream().filter(example::isAbout).min(java.util.Comparator.comparingDouble(Finding::margin));
    }

    private Optional<Aim> aim(Counterexample example) {
        return aims.computeIfAbsent(example.number(), number -> Aim.of(example, space, tubing, rules));
    }
}
