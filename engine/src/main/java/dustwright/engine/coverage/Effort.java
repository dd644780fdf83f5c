package dustwright.engine.coverage;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * How much may be spent, and who watches. The answer does not depend on the threads.
 *
 * @param threads threads that work at once
 * @param mostStates sets that may be solved one by one where no bound is valid
 * @param cancelled asked now and then; once true the work stops and the answer says that it is partial
 * @param progress told the share of the work that is done, from any thread
 * @param known answers of an earlier, partial run to the same question about the same plant; they are taken over
 */
public record Effort(
        int threads, long mostStates, BooleanSupplier cancelled, DoubleConsumer progress, List<Answer> known) {
    public Effort {
        known = List.copyOf(known);
    }

    /** One thread, nobody watching. */
    public static Effort alone() {
        return threads(1);
    }

    /** So many threads, nobody watching. */
    public static Effort threads(int threads) {
        return new Effort(threads, 1_000_000, () -> false, share -> {}, List.of());
    }
}
