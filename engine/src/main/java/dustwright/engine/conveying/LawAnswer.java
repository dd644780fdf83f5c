package dustwright.engine.conveying;

import dustwright.engine.quantity.Velocity;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What a published velocity law says about one stream of dust, and whether it may be asked. */
public sealed interface LawAnswer {
    /** The law holds here. */
    record Inside(Velocity velocity) implements LawAnswer {}

    /**
     * The stream lies outside what the law was made for: a warning, shown with the velocity it would give.
     *
     * @param extrapolated to be shown, never to be required
     * @param why one sentence for each limit broken
     */
    record OutsideRange(Velocity extrapolated, List<String> why) implements LawAnswer {
        public OutsideRange {
            why = List.copyOf(why);
        }
    }

    /** The law has no answer at all for this stream. */
    record NoAnswer(String why) implements LawAnswer {}

    /** One function for each kind of answer. */
    default <R> R match(
            Function<Velocity, R> inside, BiFunction<Velocity, List<String>, R> outside, Function<String, R> noAnswer) {
        if (this instanceof Inside answer) {
            return inside.apply(answer.velocity());
        }
        if (this instanceof OutsideRange answer) {
            return outside.apply(answer.extrapolated(), answer.why());
        }
        return noAnswer.apply(((NoAnswer) this).why());
    }
}
