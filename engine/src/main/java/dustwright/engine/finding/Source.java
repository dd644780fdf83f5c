package dustwright.engine.finding;

/** Where a figure or a formula comes from. */
public record Source(String text, Confidence confidence) {
    public static Source published(String text) {
        return new Source(text, Confidence.PUBLISHED);
    }

    public static Source fromMemory(String text) {
        return new Source(text, Confidence.FROM_MEMORY);
    }

    public static Source commonPractice() {
        return new Source("common practice, no source", Confidence.COMMON_PRACTICE);
    }

    public static Source entered() {
        return new Source("plant file", Confidence.ENTERED);
    }

    public static Source ownReading(String text) {
        return new Source(text, Confidence.OWN_READING);
    }
}
