package dustwright.plantfile;

import dustwright.engine.quantity.QuantityText;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Names in messages: shortened, quoted, listed, and the nearest one to a misspelt one. */
final class Names {
    private static final int LONGEST_SHOWN = 40;
    private static final int MOST_LISTED = 12;

    private Names() {}

    static String shortened(String text) {
        return shortenedTo(text, LONGEST_SHOWN);
    }

    static String shortenedTo(String text, int longest) {
        String oneLine = text.replaceAll("\\p{Cntrl}+", " ");
        return oneLine.length() <= longest ? oneLine : oneLine.substring(0, longest - 1) + "…";
    }

    static Optional<String> nearest(String text, Collection<String> names) {
        return QuantityText.nearest(text, names);
    }

    static String oneOf(Collection<String> names) {
        List<String> shown = names.stream().limit(MOST_LISTED).toList();
        String list = String.join(", ", shown);
        return names.size() <= MOST_LISTED ? list : list + " and " + (names.size() - MOST_LISTED) + " more";
    }

    /** "an inlet", "a point". */
    static String withArticle(String word) {
        return ("aeio".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }

    static String path(String parent, String key) {
        return parent.isEmpty() ? key : parent + "." + key;
    }
}
