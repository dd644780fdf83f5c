package dustwright.engine.sizing;

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
 */
public record Patience(double gap, int threads, long mostStates, BooleanSupplier stop, Consumer<String> told) {
    /** To the very end, nobody watching. */
    public static Patience endless() {
        return new Patience(0, 1, 1_000_000, () -> false, words -> {});
    }
}
