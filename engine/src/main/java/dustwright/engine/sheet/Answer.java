package dustwright.engine.sheet;

import dustwright.engine.quantity.Quantity;

/** What is known about one question: a figure, words, or why nothing is known. */
public sealed interface Answer {
    /**
     * A figure.
     *
     * @param least whether it is the least that is needed, which people round up and never down
     */
    record Known(Quantity value, boolean least) implements Answer {
        public Known(Quantity value) {
            this(value, false);
        }
    }

    /** An answer that is no number, such as a choice with its reason. */
    record Words(String text) implements Answer {}

    /** Not known: why, and what to enter in the plant file to know it. */
    record Unknown(String why) implements Answer {}
}
