package dustwright.plantfile;

import java.util.List;
import java.util.Optional;

/** The YAML text as a tree whose every part knows its place. */
sealed interface Tree {
    Span span();

    /** A text, number or word; {@code plain} when written without quotes. */
    record Scalar(String text, boolean plain, Span span) implements Tree {
        /** Nothing is written here. */
        boolean isNothing() {
            return plain && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }
    }

    /** A list; {@code flow} when written in brackets. */
    record Items(List<Tree> items, boolean flow, Span span) implements Tree {}

    /** A mapping; {@code flow} when written in braces. */
    record Entries(List<Entry> entries, boolean flow, Span span) implements Tree {
        Optional<Entry> entry(String key) {
            for (Entry entry : entries) {
                if (entry.key().text().equals(key)) {
                    return Optional.of(entry);
                }
            }
            return Optional.empty();
        }
    }

    /** A key with its value. */
    record Entry(Scalar key, Tree value) {}

    /** What it is, for messages. */
    default String words() {
        if (this instanceof Items) {
            return "a list";
        }
        if (this instanceof Entries) {
            return "keys and values";
        }
        Scalar scalar = (Scalar) this;
        return scalar.isNothing() ? "nothing" : "\"" + Names.shortened(scalar.text()) + "\"";
    }
}
