package dustwright.engine.conveying;

import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Velocity;
import java.util.List;
import java.util.function.Function;

/** What a published velocity law says about one stream of dust, and whether it may be asked. */
public sealed interface LawAnswer {
    /** The law holds here. */
    record Inside(Velocity velocity) implements LawAnswer {}

    /**
     * The stream lies outside what the law was made for: a warning, shown with the velocity it would give.
     *
     * @param extrapolated to be shown, never to be required
     * @param misses each limit broken
     */
    record OutsideRange(Velocity extrapolated, List<Range.Miss> misses) implements LawAnswer {
        public OutsideRange {
            misses = List.copyOf(misses);
        }

        /** One sentence for each limit broken. */
        public List<String> why() {
            return misses.stream().map(Range.Miss::words).toList();
        }
    }

    /** The law has no answer at all for this stream. */
    record NoAnswer(String why) implements LawAnswer {}

    /** One function for each kind of answer. */
    default <R> R match(Function<Velocity, R> inside, Function<OutsideRange, R> outside, Function<String, R> noAnswer) {
        if (this instanceof Inside answer) {
            return inside.apply(answer.velocity());
        }
        if (this instanceof OutsideRange answer) {
            return outside.apply(answer);
        }
        return noAnswer.apply(((NoAnswer) this).why());
    }
}
