package dustwright.plantfile;

import java.util.Arrays;
import java.util.function.Function;

/** From a word of a file to what it stands for. */
final class Worded {
    private Worded() {}

    /** The value of these words; the keys of the file have refused every other word. */
    static <T> T of(T[] values, Function<T, String> words, String said) {
        return Arrays.stream(values)
                .filter(value -> words.apply(value).equals(said))
                .findFirst()
                .orElseThrow();
    }
}
