package dustwright.engine.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How long to search, and who watches.
 *
 * @param gap share of the cost at which the search may end; 0 goes on to the cheapest
 * @param threads for proofs of coverage
 * @param mostStates sets that may be solved one by one in a proof where no bound is valid
 * @param stop asked now and then; once true the search ends with what it has
 * @param told words on how far it is
 * @param suspected sets of inlets an earlier search learnt of: asked first; no proof rests on them
 * @param begun a design an earlier search had found, as ids of options in the order of the choices: proven anew first; empty where none
 */
public record Patience(
        double gap,
        int threads,
        long mostStates,
        BooleanSupplier stop,
        Consumer<String> told,
        List<List<String>> suspected,
        List<String> begun) {
    public Patience {
        suspected = List.copyOf(suspected);
        begun = List.copyOf(begun);
    }

    /** The same, with more sets to ask first. */
    Patience asking(List<List<String>> sets) {
        List<List<String>> all = new ArrayList<>(suspected);
        all.addAll(sets);
        return new Patience(gap, threads, mostStates, stop, told, all, begun);
    }

    /** To the very end, nobody watching. */
    public static Patience endless() {
        return new Patience(0, 1, 1_000_000, () -> false, words -> {}, List.of(), List.of());
    }
}
