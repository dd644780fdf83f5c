package dustwright.engine.sizing;

import java.util.List;

/**
 * Looks whether designs keep to the order that boxes are refuted by: no design may have a greater margin in a counterexample than the fit
 * that speaks for a box it lies in. Proven for air in trees without wyes; looked at wherever else it is used.
 */
final class Order {
    private static final int MOST_DESIGNS = 12;
    private static final int MOST_EXAMPLES = 16;

    private final PartSearch search;
    private long compared;
    private double departure;

    Order(PartSearch search) {
        this.search = search;
    }

    long compared() {
        return compared;
    }

    /** By how much a margin passed its bound at most; 0 where none did. */
    double departure() {
        return departure;
    }

    /** Compares designs with the boxes of all sizes, of theirs and the smaller ones, of theirs and the larger ones. */
    void look(List<int[]> designs) {
        List<Counterexample> served = search.boxes().examples().stream()
                .filter(search.bounds()::serves)
                .limit(MOST_EXAMPLES)
                .toList();
        long[] all = search.boxes().all();
        for (int[] design : spread(designs)) {
            long[] smaller = new long[design.length];
            long[] larger = new long[design.length];
            for (int v = 0; v < design.length; v++) {
                long bit = 1L << design[v];
                smaller[v] = all[v] & (bit | (bit - 1));
                larger[v] = all[v] & ~(bit - 1);
            }
            for (Counterexample example : served) {
                double margin = search.bounds().margin(example, Boxes.of(design));
                if (Double.isFinite(margin)) {
                    compare(example, margin, design, all);
                    compare(example, margin, design, smaller);
                    compare(example, margin, design, larger);
                }
            }
        }
    }

    private static List<int[]> spread(List<int[]> designs) {
        int step = 1 + (designs.size() - 1) / MOST_DESIGNS;
        return java.util.stream.IntStream.range(0, designs.size())
                .filter(n -> n % step == 0)
                .mapToObj(designs::get)
                .toList();
    }

    /** Own sizes of the place and its producers are tried one by one, so they stay the design's. */
    private void compare(Counterexample example, double margin, int[] design, long[] box) {
        long[] own = box.clone();
        search.bounds().own(example).ifPresent(v -> own[v] = 1L << design[v]);
        search.bounds().producers(example).ifPresent(v -> own[v] = 1L << design[v]);
        double bound = search.bounds().margin(example, own);
        if (Double.isFinite(bound)) {
            compared++;
            departure = Math.max(departure, margin - bound - 1e-9);
        }
    }
}
