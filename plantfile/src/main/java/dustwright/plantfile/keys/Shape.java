package dustwright.plantfile.keys;

import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.QuantityText;
import java.util.List;
import java.util.Optional;

/** What a value looks like. */
public sealed interface Shape {
    /**
     * A number with its unit; a bare number only for ratios.
     *
     * @param ranges kinds allowed, the usual one first, each with what is sensible
     * @param example as one would write it
     */
    record Amount(List<Range> ranges, String example) implements Shape {
        public Amount {
            ranges = List.copyOf(ranges);
        }

        /** Kinds allowed. */
        public List<Dimension> kinds() {
            return ranges.stream().map(Range::dimension).toList();
        }
    }

    /**
     * Sensible bounds, both included.
     *
     * @param least as one would write it
     * @param greatest as one would write it
     * @param least_si the same in SI
     * @param greatest_si the same in SI
     */
    record Range(Dimension dimension, String least, String greatest, double least_si, double greatest_si) {
        static Range of(Dimension dimension, String least, String greatest) {
            return new Range(dimension, least, greatest, si(dimension, least), si(dimension, greatest));
        }

        /** Where a number lies outside, in SI; as in the formulas, a bound turned from one unit into another may miss by its last digits. */
        public Optional<dustwright.engine.quantity.Range.Miss> miss(double si) {
            return new dustwright.engine.quantity.Range(
                            dimension.words(), "x", dimension.siSymbol(), least_si, greatest_si)
                    .miss(si);
        }

        private static double si(Dimension dimension, String text) {
            if (QuantityText.read(text, List.of(dimension)) instanceof QuantityText.Read.Good good) {
                return good.quantity().si();
            }
            throw new IllegalArgumentException("bound " + text + " is no " + dimension.words());
        }
    }

    /** A whole number. */
    record Whole(int least, int greatest) implements Shape {}

    /** Free text. */
    record Text(int longest) implements Shape {}

    /** Whatever the place it goes to asks for. */
    record Anything() implements Shape {}

    /** One of these words. */
    record Word(List<String> words) implements Shape {
        public Word {
            words = List.copyOf(words);
        }
    }

    /** yes or no. */
    record YesNo() implements Shape {}

    /** The id of something described elsewhere in the file. */
    record Id(Target target) implements Shape {}

    /** A place in the building: three coordinates. */
    record Coordinates() implements Shape {}

    /** A place, or {@code {}} for a point whose place is not known. */
    record CoordinatesOrNothing() implements Shape {}

    /** A list in square brackets. */
    record ListOf(Shape item, int least) implements Shape {}

    /** A list of fixed length, each part with its own shape. */
    record Parts(List<Shape> parts) implements Shape {
        public Parts {
            parts = List.copyOf(parts);
        }
    }

    /** A group of keys. */
    record Keys(Group group) implements Shape {}

    /**
     * One of several groups; the word at {@code kind} says which.
     *
     * @param byModel the same groups where a {@code model} of the catalogue says which, in the same order; empty where no model may
     */
    record Kinds(List<Group> groups, List<Group> byModel) implements Shape {
        public Kinds {
            groups = List.copyOf(groups);
            byModel = List.copyOf(byModel);
        }

        Kinds(List<Group> groups) {
            this(groups, List.of());
        }
    }

    /**
     * Entries by their ids.
     *
     * @param word what one entry is called: "run"
     * @param titled whether ids are titles for people, with spaces, that nothing refers to
     */
    record Named(String word, Shape entry, boolean titled) implements Shape {
        Named(String word, Shape entry) {
            this(word, entry, false);
        }
    }

    /** A value, or {@code {value: ..., source: ...}}. */
    record Sourced(Shape value) implements Shape {}

    /** What an id points to. */
    enum Target {
        DUST("dust"),
        TUBE("tube"),
        HOSE("hose"),
        TOOL("tool"),
        POINT("point"),
        RUN("run"),
        INLET("inlet"),
        ZONE("zone"),
        NODE("point, inlet or station"),
        START("point, inlet or station, or air for the still air of the site");

        private final String words;

        Target(String words) {
            this.words = words;
        }

        /** In words, for messages. */
        public String words() {
            return words;
        }
    }
}
