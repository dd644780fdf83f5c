package dustwright.engine.finding;

/** How far a figure can be trusted; printed wherever the figure is printed. */
public enum Confidence {
    ENTERED("entered in the plant file"),
    CATALOGUE("stated in a catalogue"),
    PUBLISHED("published"),
    FROM_MEMORY("from memory, re-read before relying on it"),
    COMMON_PRACTICE("common practice, no source"),
    OWN_READING("our reading, see the decision records");

    private final String words;

    Confidence(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
