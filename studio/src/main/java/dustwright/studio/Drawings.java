package dustwright.studio;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The drawings told last, each with a number: a page that has one is told only the lines of the next that differ. */
final class Drawings {
    private static final int KEPT = 16;
    private static final int BITS = 40;

    /** Begins somewhere, so that a page that has a drawing of a program that has ended since is told a whole one. */
    private long last = new SecureRandom().nextLong(1L << BITS);

    private final Map<Long, List<String>> kept = new LinkedHashMap<>();

    /**
     * A drawing as a page is told it.
     *
     * @param lines each a line of the drawing, or {@code =FROM COUNT} for so many lines of the drawing it has
     */
    record Told(long number, String lines) {}

    /** Of lines of markup; whole where the drawing a page has is not known any more. */
    synchronized Told told(String drawing, long had) {
        List<String> lines = Arrays.asList(drawing.split("\n"));
        List<String> before = kept.getOrDefault(had, List.of());
        last++;
        kept.put(last, lines);
        if (kept.size() > KEPT) {
            kept.remove(kept.keySet().iterator().next());
        }
        return new Told(last, before.isEmpty() ? drawing : String.join("\n", differing(lines, before)));
    }

    private static List<String> differing(List<String> lines, List<String> before) {
        Map<String, Integer> places = new HashMap<>();
        for (int n = before.size() - 1; n >= 0; n--) {
            places.put(before.get(n), n);
        }
        List<String> told = new ArrayList<>();
        int at = 0;
        while (at < lines.size()) {
            int from = places.getOrDefault(lines.get(at), -1);
            if (from < 0) {
                told.add(lines.get(at++));
                continue;
            }
            int count = 0;
            while (at < lines.size()
                    && from + count < before.size()
                    && lines.get(at).equals(before.get(from + count))) {
                at++;
                count++;
            }
            told.add("=" + from + " " + count);
        }
        return told;
    }
}
