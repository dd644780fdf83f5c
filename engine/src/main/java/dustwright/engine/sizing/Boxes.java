package dustwright.engine.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Cuts boxes of designs: options that cannot be part of any covered design are struck out (equation SIZ-3). */
final class Boxes {
    /** A margin misses by more than rounding. */
    static final double FAILS = -1e-9;

    private static final double SAME = 1e-9;

    private final Space space;
    private final Tubing tubing;
    private final Bounds bounds;
    private final BooleanSupplier stop;
    /** A box is refuted when its bound lies below this. */
    private final double least;
    /** What fails often is asked first. */
    private final List<Counterexample> examples;
    /** Sizes of the place itself and producers with which a box was last found to hold, by number of the counterexample. */
    private final Map<Integer, long[]> held = new HashMap<>();

    /** Boxes of all designs. */
    Boxes(Space space, Tubing tubing, Bounds bounds, BooleanSupplier stop) {
        this(space, tubing, bounds, stop, FAILS, new ArrayList<>());
    }

    private Boxes(
            Space space,
            Tubing tubing,
            Bounds bounds,
            BooleanSupplier stop,
            double least,
            List<Counterexample> examples) {
        this.space = space;
        this.tubing = tubing;
        this.bounds = bounds;
        this.stop = stop;
        this.least = least;
        this.examples = examples;
    }

    /** The same with every bound widened by so much [-]. */
    Boxes missing(double miss) {
        return new Boxes(space, tubing, bounds, stop, least - miss, new ArrayList<>(examples));
    }

    /** The same with these counterexamples only. */
    Boxes only(List<Counterexample> some) {
        return new Boxes(space, tubing, bounds, stop, least, new ArrayList<>(some));
    }

    /** All that was learnt. */
    List<Counterexample> examples() {
        return List.copyOf(examples);
    }

    /** Takes up what a proof of coverage showed, unless it is known. */
    boolean learn(Counterexample example) {
        if (examples.stream().anyMatch(example::sameAs)) {
            return false;
        }
        examples.add(0, example);
        return true;
    }

    int learnt() {
        return examples.size();
    }

    /** Whether a single design fails in what was learnt. */
    boolean refuted(int[] design) {
        long[] box = of(design);
        return examples.stream().filter(bounds::serves).anyMatch(example -> bounds.margin(example, box) < FAILS);
    }

    /** Every option of every choice. */
    long[] all() {
        return space.all();
    }

    static boolean single(long[] box) {
        for (long options : box) {
            if (Long.bitCount(options) != 1) {
                return false;
            }
        }
        return true;
    }

    /** The box that holds one design. */
    static long[] of(int[] design) {
        long[] box = new long[design.length];
        for (int v = 0; v < box.length; v++) {
            box[v] = 1L << design[v];
        }
        return box;
    }

    static int[] design(long[] box) {
        int[] design = new int[box.length];
        for (int v = 0; v < box.length; v++) {
            design[v] = Long.numberOfTrailingZeros(box[v]);
        }
        return design;
    }

    /** Strikes out, in place, what cannot be. False when nothing is left. */
    boolean cut(long[] box) {
        boolean changed = true;
        while (changed) {
            long[] before = box.clone();
            for (long options : box) {
                if (options == 0) {
                    return false;
                }
            }
            if (!neverNarrower(box)) {
                return false;
            }
            for (int n = 0; n < examples.size(); n++) {
                Counterexample example = examples.get(n);
                if (stop.getAsBoolean()) {
                    return true;
                }
                if (bounds.serves(example) && !cut(box, example)) {
                    examples.remove(n);
                    examples.add(0, example);
                    return false;
                }
            }
            changed = !Arrays.equals(before, box);
        }
        return true;
    }

    /** Tubes never get narrower toward the producer. False when nothing is left. */
    boolean neverNarrower(long[] box) {
        long[] before;
        do {
            before = box.clone();
            for (int run = 0; run < space.plant().runs().size(); run++) {
                int next = tubing.isTree() ? tubing.next(run) : Tubing.NONE;
                if (next != Tubing.NONE
                        && !(strike(box, run, bore(box, next, true), true)
                                && strike(box, next, bore(box, run, false), false))) {
                    return false;
                }
            }
        } while (!Arrays.equals(before, box));
        return true;
    }

    private double bore(long[] box, int run, boolean widest) {
        int v = space.ofRun(run);
        if (v == Space.FIXED) {
            return space.bore_m(run, 0);
        }
        int option = widest ? Long.SIZE - 1 - Long.numberOfLeadingZeros(box[v]) : Long.numberOfTrailingZeros(box[v]);
        return space.bore_m(run, option);
    }

    /** Strikes out the tubes of a run that are wider, or narrower, than a bore. False when none is left. */
    private boolean strike(long[] box, int run, double bore_m, boolean wider) {
        int v = space.ofRun(run);
        if (v == Space.FIXED) {
            double own_m = space.bore_m(run, 0);
            return wider ? own_m <= bore_m * (1 + SAME) : own_m >= bore_m * (1 - SAME);
        }
        for (long rest = box[v]; rest != 0; rest &= rest - 1) {
            int option = Long.numberOfTrailingZeros(rest);
            double own_m = space.bore_m(run, option);
            if (wider ? own_m > bore_m * (1 + SAME) : own_m < bore_m * (1 - SAME)) {
                box[v] &= ~(1L << option);
            }
        }
        return box[v] != 0;
    }

    /** Strikes out by one counterexample. */
    private boolean cut(long[] box, Counterexample example) {
        if (!narrow(box, example)) {
            return false;
        }
        Influence influence = bounds.influence(example);
        double spare =
                bounds.margin(example, influence.loosened(holding(box, example).orElse(box))) - least;
        for (int v = 0; v < box.length; v++) {
            if (!influence.spares(v, spare) && !isApart(example, v) && !shave(box, example, v)) {
                return false;
            }
        }
        return true;
    }

    private boolean isApart(Counterexample example, int v) {
        return bounds.own(example).filter(own -> own == v).isPresent()
                || bounds.producers(example).filter(p -> p == v).isPresent();
    }

    /** Keeps the sizes of the place itself and the producers that can hold with at least one of the other. */
    private boolean narrow(long[] box, Counterexample example) {
        long[] left = box.clone();
        bounds.own(example).ifPresent(v -> left[v] = 0);
        bounds.producers(example).ifPresent(v -> left[v] = 0);
        boolean any = false;
        for (long[] one : bounds.apart(example, box)) {
            boolean known = any && Arrays.equals(joined(left, one), left);
            if (!known && bounds.mayHold(example, one, least)) {
                System.arraycopy(joined(left, one), 0, left, 0, left.length);
                any = true;
            }
        }
        System.arraycopy(left, 0, box, 0, box.length);
        return any;
    }

    private static long[] joined(long[] box, long[] other) {
        long[] both = box.clone();
        for (int v = 0; v < both.length; v++) {
            both[v] |= other[v];
        }
        return both;
    }

    /** Strikes out options of one choice, from both ends, that hold with no size of the place itself and no producer. */
    private boolean shave(long[] box, Counterexample example, int v) {
        for (boolean lowest : new boolean[] {true, false}) {
            while (Long.bitCount(box[v]) > 1) {
                long bit = lowest ? Long.lowestOneBit(box[v]) : Long.highestOneBit(box[v]);
                long[] tried = box.clone();
                tried[v] = bit;
                if (holding(tried, example).isPresent()) {
                    break;
                }
                box[v] &= ~bit;
            }
        }
        return box[v] != 0;
    }

    /** A part of a box, taken apart, that may hold; the sizes with which another box did are asked first. */
    private Optional<long[]> holding(long[] box, Counterexample example) {
        List<long[]> apart = new ArrayList<>(bounds.apart(example, box));
        long[] before = held.getOrDefault(example.number(), box);
        apart.sort(Comparator.comparing(one -> !Arrays.equals(joined(before, one), before)));
        Optional<long[]> found = apart.stream()
                .filter(one -> bounds.mayHold(example, one, least))
                .findFirst();
        found.ifPresent(one -> held.put(example.number(), apartOnly(example, one)));
        return found;
    }

    /** Every option of all choices but those that are taken apart. */
    private long[] apartOnly(Counterexample example, long[] one) {
        long[] sizes = all();
        bounds.own(example).ifPresent(v -> sizes[v] = one[v]);
        bounds.producers(example).ifPresent(v -> sizes[v] = one[v]);
        return sizes;
    }
}
