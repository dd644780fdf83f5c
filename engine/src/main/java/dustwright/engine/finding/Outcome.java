package dustwright.engine.finding;

import java.util.function.Function;

/** An answer, or the reason why there is none. There is no way to read a number that is not one. */
public sealed interface Outcome<T> {
    /** The answer. */
    record Solved<T>(T value) implements Outcome<T> {}

    /** No answer: why, in a sentence, and what was tried. */
    record NotSolved<T>(String why) implements Outcome<T> {}

    default <R> R match(Function<T, R> solved, Function<String, R> notSolved) {
        if (this instanceof Solved<T> s) {
            return solved.apply(s.value());
        }
        return notSolved.apply(((NotSolved<T>) this).why());
    }
}
