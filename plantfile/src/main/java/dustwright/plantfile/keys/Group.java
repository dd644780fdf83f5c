package dustwright.plantfile.keys;

import dustwright.engine.finding.Place;
import java.util.List;
import java.util.Optional;

/**
 * Keys that stand together.
 *
 * @param words what the group describes, for messages: "a run"
 * @param place sort of part, for assumptions
 * @param choices which keys exclude or need each other
 */
public record Group(String words, Place.Kind place, List<Key> keys, List<Choice> choices) {
    public Group {
        keys = List.copyOf(keys);
        choices = List.copyOf(choices);
    }

    /** The key of this name. */
    public Optional<Key> key(String name) {
        return keys.stream().filter(k -> k.name().equals(name)).findFirst();
    }

    /** All names, in the order of the reference. */
    public List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    /**
     * Ways of saying one thing: at most one of them may be used.
     *
     * @param ways each a set of keys that belong together
     * @param required whether one of them must be used
     */
    public record Choice(List<List<String>> ways, boolean required) {
        /** Exactly one way. */
        static Choice one(List<List<String>> ways) {
            return new Choice(ways, true);
        }

        /** At most one way. */
        static Choice atMostOne(List<List<String>> ways) {
            return new Choice(ways, false);
        }

        /** The ways in words: "outside with wall, or bore". */
        public String words() {
            return String.join(
                    ", or ", ways.stream().map(w -> String.join(" with ", w)).toList());
        }
    }
}
