package dustwright.engine.sizing;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest sizes found, with what is shown of them.
 *
 * @param choices in the order of the designs' options
 * @param best the cheapest design found for which coverage is shown; empty where none was found
 * @param coverage its certificate
 * @param bound no covered design costs less than this [currency]; +∞ where it is shown that there is none
 * @param basis what the bound rests on
 * @param runnersUp the next cheapest covered designs met, cheapest first; each has its own certificate, none is shown to be the next
 * @param neighbours one choice of the best design changed by one size
 * @param undecided designs cheaper than the best that could be neither shown nor refuted; the bound does not pass them
 * @param deadlock where no design holds: why
 * @param learnt sets of inlets in which some design came near a limit or failed, for a later search to ask first
 * @param effort what it took
 * @param stopped why the search ended before the asked gap was reached; empty when it was reached
 */
public record Sizing(
        List<Choice> choices,
        Optional<Design> best,
        Optional<Coverage> coverage,
        double bound,
        Basis basis,
        List<Design> runnersUp,
        List<Neighbour> neighbours,
        List<Design> undecided,
        Optional<Deadlock> deadlock,
        List<List<String>> learnt,
        Spent effort,
        String stopped) {
    public Sizing {
        choices = List.copyOf(choices);
        runnersUp = List.copyOf(runnersUp);
        neighbours = List.copyOf(neighbours);
        undecided = List.copyOf(undecided);
        learnt = List.copyOf(learnt);
    }

    /**
     * What stands behind the bound.
     *
     * @param tree whether boxes of designs are refuted by the order of a tree of tubing; else designs were tried one by one
     * @param wyes whether streams join with losses, where that order is looked at and not proven
     * @param dust whether dust is picked up, where likewise
     * @param compared designs solved that a box's bound spoke of
     * @param departure by how much the margin of one of them passed that bound at most [-]
     * @param pad what every bound was widened by for that [-]
     * @param energy whether energy is part of the cost
     * @param pieces of the plant that share no air, sized each by itself
     */
    public record Basis(
            boolean tree,
            boolean wyes,
            boolean dust,
            long compared,
            double departure,
            double pad,
            boolean energy,
            int pieces) {
        /** Whether the order the bound rests on is proven. */
        public boolean proven() {
            return !tree || (!wyes && !dust);
        }
    }

    /**
     * One choice changed by one size.
     *
     * @param choice number of the choice
     * @param option id of what it would be
     * @param difference of cost [currency]
     * @param fails what does not hold then, and the set in which it does not; empty where nothing was found
     * @param said why it is no design, or what is known of it
     */
    public record Neighbour(int choice, String option, double difference, Optional<Worst> fails, String said) {}

    /**
     * What the search took.
     *
     * @param boxes of designs looked at
     * @param states solved for bounds and to try designs
     * @param proofs of coverage made
     * @param counterexamples learnt
     */
    public record Spent(long boxes, long states, long proofs, long counterexamples) {
        Spent plus(Spent other) {
            return new Spent(
                    boxes + other.boxes,
                    states + other.states,
                    proofs + other.proofs,
                    counterexamples + other.counterexamples);
        }
    }

    /** Whether the search was stopped before all that was asked was done. */
    public boolean partial() {
        return !stopped.isEmpty();
    }

    /** How far, as a share of its cost, the best design may be from the cheapest covered one; empty where there is none. */
    public Optional<Double> gap() {
        return best.map(b -> Math.max(0, (b.cost() - bound) / b.cost()));
    }
}
