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
 * @param order whether the bound rests on the order of a tree of tubing; else designs were only tried one by one
 * @param neighbours one choice of the best design changed by one size
 * @param undecided designs cheaper than the best that could be neither shown nor refuted; the bound does not pass them
 * @param obstacle where no design holds: what fails even in the most favourable fit of all sizes, or of those that others leave
 * @param effort what it took
 * @param stopped why the search ended before the asked gap was reached; empty when it was reached
 */
public record Sizing(
        List<Choice> choices,
        Optional<Design> best,
        Optional<Coverage> coverage,
        double bound,
        boolean order,
        List<Neighbour> neighbours,
        List<Design> undecided,
        Optional<Worst> obstacle,
        Spent effort,
        String stopped) {
    public Sizing {
        choices = List.copyOf(choices);
        neighbours = List.copyOf(neighbours);
        undecided = List.copyOf(undecided);
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
     * @param states solved for bounds
     * @param proofs of coverage made
     * @param counterexamples learnt
     */
    public record Spent(long boxes, long states, long proofs, long counterexamples) {}

    /** How far, as a share of its cost, the best design may be from the cheapest covered one; empty where there is none. */
    public Optional<Double> gap() {
        return best.map(b -> Math.max(0, (b.cost() - bound) / b.cost()));
    }
}
