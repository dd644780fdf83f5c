package dustwright.engine.interlock;

import java.util.Collection;
import java.util.stream.Collectors;

/**
 * Something that must hold at the end of every scan.
 *
 * @param id stable name, for tables and tests
 * @param kind what it protects
 * @param words in words
 * @param logic in logic, over outputs, steps, lamps, the plant's truth ({@code t_...}) and observers ({@code o_...})
 * @param needs name without which it does not apply; empty when it applies to every sequence
 * @param without name with which it does not apply; empty when none
 */
public record Property(String id, Kind kind, String words, String logic, String needs, String without) {
    Property needing(String name) {
        return new Property(id, kind, words, logic, name, without);
    }

    Property without(String name) {
        return new Property(id, kind, words, logic, needs, name);
    }

    /** The same, and these outputs off too. */
    Property also(Collection<String> outputs) {
        String off = outputs.stream().map(o -> " and not " + o).collect(Collectors.joining());
        return new Property(id, kind, words, logic + off, needs, without);
    }

    /** What a property protects. */
    public enum Kind {
        /** People and equipment. */
        STOPS("stops what must stop"),
        /** Nothing moves unasked. */
        SURPRISE("no surprise"),
        /** Vacuum where it can be had. */
        SERVICE("keeps serving"),
        /** What people see. */
        HONEST("shows what is so"),
        /** Nothing waits for ever. */
        ENDS("comes to an end");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }
}
