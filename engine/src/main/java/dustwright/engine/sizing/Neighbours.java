package dustwright.engine.sizing;

import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.sizing.Sizing.Neighbour;
import dustwright.engine.sizing.Trials.Failing;
import dustwright.engine.sizing.Trials.Tried;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Why no size of the best design is one smaller or larger. */
final class Neighbours {
    /** Said of one that a search that was stopped did not get to. */
    static final String NOT_LOOKED_AT = "not looked at: the search was stopped";

    private final PartSearch search;
    private final List<Integer> choices;
    private final Patience patience;

    /**
     * Of a piece.
     *
     * @param choices numbers of its choices in the whole plant
     */
    Neighbours(PartSearch search, List<Integer> choices, Patience patience) {
        this.search = search;
        this.choices = choices;
        this.patience = patience;
    }

    List<Neighbour> of(Design best) {
        int[] chosen = search.space().numbers(best.options());
        List<Neighbour> neighbours = new ArrayList<>();
        for (int v = 0; v < chosen.length; v++) {
            for (int step : new int[] {-1, 1}) {
                int option = chosen[v] + step;
                if (option >= 0 && option < search.space().options(v).size()) {
                    int[] changed = chosen.clone();
                    changed[v] = option;
                    neighbours.add(neighbour(v, option, changed, best));
                }
            }
        }
        return neighbours;
    }

    private Neighbour neighbour(int v, int option, int[] changed, Design best) {
        String id = search.space().options(v).get(option).id();
        if (!search.boxes().neverNarrower(Boxes.of(changed))) {
            double difference = search.space().cost(v, option)
                    - search.space().cost(v, search.space().numbers(best.options())[v]);
            return said(v, id, difference, "a tube would get narrower toward the producer");
        }
        Design other = search.prices().design(changed);
        double difference = other.cost() - best.cost();
        if (patience.stop().getAsBoolean()) {
            return said(v, id, difference, NOT_LOOKED_AT);
        }
        List<Failing> failing = search.trials().firstFailing(other.plant());
        if (failing.isEmpty() && difference >= 0) {
            return said(v, id, difference, "costs more; no set was found in which it does not hold");
        }
        Tried tried = failing.isEmpty() ? search.trials().proven(other.plant()) : new Tried(Optional.empty(), failing);
        return tried.failing().stream()
                .findFirst()
                .map(f -> new Neighbour(choices.get(v), id, difference, Optional.of(f.worst()), ""))
                .orElseGet(() -> said(v, id, difference, tried.holds() ? "holds too" : "not decided: " + why(tried)));
    }

    private Neighbour said(int v, String option, double difference, String words) {
        return new Neighbour(choices.get(v), option, difference, Optional.empty(), words);
    }

    private static String why(Tried tried) {
        return tried.coverage().stream()
                .flatMap(c -> c.answers().stream())
                .filter(a -> a.verdict() == Verdict.UNDECIDED || a.verdict() == Verdict.NOT_DONE)
                .map(a -> a.why())
                .findFirst()
                .orElse("a state has no answer");
    }
}
