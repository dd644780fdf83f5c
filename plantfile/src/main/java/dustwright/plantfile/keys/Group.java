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
        for (Key key : keys) {
            if (key.name().equals(name)) {
                return Optional.of(key);
            }
        }
        return Optional.empty();
    }

    /** All names, in the order of the reference. */
    public List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    /**
     * Ways of saying one thing. What a plant file says one way goes before what a model of the catalogue says in any of them.
     *
     * @param ways each a set of keys that belong together
     * @param required whether one of them must be used
     * @param exclusive whether at most one of them may be used
     */
    public record Choice(List<List<String>> ways, boolean required, boolean exclusive) {
        /** Exactly one way. */
        static Choice one(List<List<String>> ways) {
            return new Choice(ways, true, true);
        }

        /** At most one way. */
        static Choice atMostOne(List<List<String>> ways) {
            return new Choice(ways, false, true);
        }

        /** At least one way. */
        static Choice atLeastOne(List<List<String>> ways) {
            return new Choice(ways, true, false);
        }

        /** Any of the ways, or none. */
        static Choice any(List<List<String>> ways) {
            return new Choice(ways, false, false);
        }

        /** How many of the ways may be used, in words; empty where that is free. */
        public String howMany() {
            if (!exclusive) {
                return required ? "At least one of" : "";
            }
            return required ? "Exactly one of" : "At most one of";
        }

        /** The ways in words: "outside with wall, or bore". */
        public String words() {
            return String.join(
                    ", or ", ways.stream().map(w -> String.join(" with ", w)).toList());
        }
    }
}
