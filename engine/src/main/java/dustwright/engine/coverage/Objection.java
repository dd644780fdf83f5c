package dustwright.engine.coverage;

/**
 * Why extremes may not be relied on.
 *
 * @param why in words that follow "because"; empty when they may
 * @param node of the tree where it is so
 */
record Objection(String why, int node) {
    static final Objection NONE = new Objection("", 0);

    boolean any() {
        return !why.isEmpty();
    }
}
