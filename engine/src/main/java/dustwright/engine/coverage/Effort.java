package dustwright.engine.coverage;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;

/**
 * How much may be spent, and who watches. The answer does not depend on the threads.
 *
 * @param threads threads that work at once
 * @param mostStates sets that may be solved one by one where no bound is valid
 * @param few inlets of the plant times sets, up to which every set is solved even where bounds serve, so that every margin is exact
 * @param count whether every set is solved even where envelopes serve, to count those that fail
 * @param verdictOnly whether the work may end with the first set that does not hold: margins and bounds of the rest are not asked
 * @param cancelled asked now and then; once true the work stops and the answer says that it is partial
 * @param progress told the share of the work that is done, from any thread
 * @param known what an earlier, partial run showed of the same plant; only its sets are solved again
 */
public record Effort(
        int threads,
        long mostStates,
        long few,
        boolean count,
        boolean verdictOnly,
        BooleanSupplier cancelled,
        DoubleConsumer progress,
        List<Known> known) {
    /** So many inlets times sets cost a few seconds at most: a state costs about as much as the plant has inlets. */
    public static final long FEW = 80_000;

    /**
     * An answer of an earlier run.
     *
     * @param worst sets of inlets in which some requirement at some place was worst
     * @param bounds margins that no set falls below, by {@link Answer.Worst#key()}, where they are lower than those of the worst sets [-]
     */
    public record Known(
            int users, String condition, Answer.Method method, List<List<String>> worst, Map<String, Double> bounds) {
        public Known {
            worst = List.copyOf(worst);
            bounds = Collections.unmodifiableMap(new TreeMap<>(bounds));
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
                                    .toList(),
                            answer.worst().stream()
                                    .filter(w -> !w.exact())
                                    .collect(Collectors.toMap(Answer.Worst::key, Answer.Worst::bound))))
                    : Optional.empty();
        }
    }

    public Effort {
        known = List.copyOf(known);
    }

    /** The same for another question, of which no earlier run showed anything. */
    public Effort withoutKnown() {
        return new Effort(threads, mostStates, few, count, verdictOnly, cancelled, progress, List.of());
    }

    /** The same, with bounds wherever they serve, however few the sets are. */
    public Effort byBounds() {
        return new Effort(threads, mostStates, 0, count, verdictOnly, cancelled, progress, known);
    }

    /** One thread, nobody watching. */
    public static Effort alone() {
        return threads(1);
    }

    /** So many threads, nobody watching. */
    public static Effort threads(int threads) {
        return new Effort(threads, 1_000_000, FEW, false, false, () -> false, share -> {}, List.of());
    }
}
