package dustwright.plantfile.keys;

import dustwright.engine.finding.Source;

/** Whether a key must be written. */
public sealed interface Need {
    /** Without it nothing can be computed. */
    record Required() implements Need {}

    /** Its absence says something by itself, or another key takes its place. */
    record Optional() implements Need {}

    /**
     * Absent, this value is taken and listed among the assumptions.
     *
     * @param text the value as one would write it in the file
     * @param basis why this value
     */
    record Default(String text, Source basis) implements Need {}

    /**
     * Absent, a value that depends on other keys is taken and listed among the assumptions.
     *
     * @param words how the value is found
     * @param basis why
     */
    record Derived(String words, Source basis) implements Need {}
}
