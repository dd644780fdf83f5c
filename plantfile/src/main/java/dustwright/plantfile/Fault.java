package dustwright.plantfile;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One thing wrong in a plant file.
 *
 * @param line first line is 1; 0 when the fault is about the file as a whole
 * @param column first column is 1; 0 when the fault is about the file as a whole
 * @param path keys that lead to the place, {@code runs.D1.length}; empty at the top
 * @param message what is wrong
 * @param expected what belongs there; empty when the message says it all
 * @param suggestion what was probably meant
 */
public record Fault(int line, int column, String path, String message, String expected, Optional<String> suggestion) {
    private static final Pattern STEERING = Pattern.compile("[\\p{Cntrl}\\u2028-\\u202E\\u2066-\\u2069]");

    /** All of it in one line, for people. */
    public String text() {
        StringBuilder text = new StringBuilder();
        if (line > 0) {
            text.append("line ").append(line).append(", column ").append(column).append(": ");
        }
        if (!path.isEmpty()) {
            text.append(path).append(": ");
        }
        text.append(message);
        if (!expected.isEmpty()) {
            text.append("; expected ").append(expected);
        }
        suggestion.ifPresent(s -> text.append("; did you mean ").append(s).append('?'));
        return seen(text.toString());
    }

    /** Signs that would steer a terminal or turn the direction of its text, written as what they are. */
    private static String seen(String text) {
        return STEERING.matcher(text)
                .replaceAll(sign -> String.format(
                        Locale.ROOT, "<U+%04X>", (int) sign.group().charAt(0)));
    }
}
