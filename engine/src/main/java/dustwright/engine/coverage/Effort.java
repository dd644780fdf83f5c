package dustwright.engine.coverage;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * How much may be spent, and who watches. The answer does not depend on the threads.
 *
 * @param threads threads that work at once
 * @param mostStates sets that may be solved one by one where no bound is valid
 * @param count whether every set is solved even where envelopes serve, to count those that fail
 * @param cancelled asked now and then; once true the work stops and the answer says that it is partial
 * @param progress told the share of the work that is done, from any thread
 * @param known what an earlier, partial run showed of the same plant; only its sets are solved again
 */
public record Effort(
        int threads,
        long mostStates,
        boolean count,
        BooleanSupplier cancelled,
        DoubleConsumer progress,
        List<Known> known) {
    /**
     * An answer of an earlier run.
     *
     * @param worst sets of inlets in which some requirement at some place was worst
     */
    public record Known(int users, String condition, Answer.Method method, List<List<String>> worst) {
        public Known {
            worst = List.copyOf(worst);
        }

        /** What a finished answer shows. */
        static Optional<Known> of(Answer answer) {
            return answer.verdict() == Answer.Verdict.HOLDS || answer.verdict() == Answer.Verdict.FAILS
                    ? Optional.of(new Known(
                            answer.users(),
                            answer.condition(),
                            answer.method(),
                            answer.worst().stream()
                                    .map(Answer.Worst::open)
                                    .distinct()
                                    .toList()))
                    : Optional.empty();
        }
    }

    public Effort {
        known = List.copyOf(known);
    }

    /** The same for another question, of which no earlier run showed anything. */
    public Effort withoutKnown() {
        return new Effort(threads, mostStates, count, cancelled, progress, List.of());
    }

    /** One thread, nobody watching. */
    public static Effort alone() {
        return threads(1);
    }

    /** So many threads, nobody watching. */
    public static Effort threads(int threads) {
        return new Effort(threads, 1_000_000, false, () -> false, share -> {}, List.of());
    }
}
