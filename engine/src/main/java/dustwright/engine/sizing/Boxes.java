package dustwright.engine.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Cuts boxes of designs: options that cannot be part of any covered design are struck out (equation SIZ-3). */
final class Boxes {
    /** A margin misses by more than rounding. */
    static final double FAILS = -1e-9;

    private static final double SAME = 1e-9;

    /** With so much margin in a box no single size is worth trying. */
    private static final double AMPLE = 0.6;

    private final Space space;
    private final Tubing tubing;
    private final Bounds bounds;
    private final BooleanSupplier stop;
    /** A box is refuted when its bound lies below this. */
    private final double least;
    /** What fails often is asked first. */
    private final List<Counterexample> examples;

    /**
     * Boxes of all designs.
     *
     * @param pad by how much a margin may pass its bound where the order is not proven [-]
     */
    Boxes(Space space, Tubing tubing, Bounds bounds, BooleanSupplier stop, double pad) {
        this(space, tubing, bounds, stop, FAILS - pad, new ArrayList<>());
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

    /** The same for designs that may miss by so much. */
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
        long[] box = new long[space.size()];
        for (int v = 0; v < box.length; v++) {
            int options = space.options(v).size();
            box[v] = options == 0 ? 0 : -1L >>> (Long.SIZE - options);
        }
        return box;
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
        long[] sub = box.clone();
        BitSet open = new BitSet();
        int own = bounds.own(example).orElse(Space.FIXED);
        int producers = bounds.producers(example).orElse(Space.FIXED);
        if (!narrow(box, sub, example, own, producers)) {
            return false;
        }
        if (bounds.margin(example, box) > AMPLE) {
            return true;
        }
        for (int v = 0; v < box.length; v++) {
            if (v != own && v != producers && Long.bitCount(box[v]) > 1) {
                open.set(v);
            }
        }
        for (int v = open.nextSetBit(0); v >= 0; v = open.nextSetBit(v + 1)) {
            if (!shave(box, example, own, producers, v)) {
                return false;
            }
        }
        return true;
    }

    /** Keeps the own options and the producers that can hold with at least one of the other. */
    private boolean narrow(long[] box, long[] sub, Counterexample example, int own, int producers) {
        long ownLeft = 0;
        long producersLeft = 0;
        long ownAll = own == Space.FIXED ? 1 : box[own];
        long producersAll = producers == Space.FIXED || producers == own ? 1 : box[producers];
        for (long p = producersAll; p != 0; p &= p - 1) {
            for (long o = ownAll; o != 0; o &= o - 1) {
                long ownBit = o & -o;
                long producerBit = p & -p;
                boolean settled = (ownLeft & ownBit) != 0 && (producersLeft & producerBit) != 0;
                if (!settled && holds(sub, example, own, ownBit, producers, producerBit)) {
                    ownLeft |= ownBit;
                    producersLeft |= producerBit;
                }
            }
        }
        if (own != Space.FIXED) {
            box[own] = ownLeft;
        }
        if (producers != Space.FIXED && producers != own) {
            box[producers] = producersLeft;
        }
        return ownLeft != 0;
    }

    private boolean holds(long[] sub, Counterexample example, int own, long ownBit, int producers, long producerBit) {
        if (own != Space.FIXED) {
            sub[own] = ownBit;
        }
        if (producers != Space.FIXED && producers != own) {
            sub[producers] = producerBit;
        }
        return bounds.margin(example, sub) >= least;
    }

    /** Strikes out options of one choice, from both ends, that hold with no own option and no producer. */
    private boolean shave(long[] box, Counterexample example, int own, int producers, int v) {
        for (boolean lowest : new boolean[] {true, false}) {
            while (Long.bitCount(box[v]) > 1) {
                long bit = lowest ? Long.lowestOneBit(box[v]) : Long.highestOneBit(box[v]);
                long[] tried = box.clone();
                tried[v] = bit;
                if (any(tried, example, own, producers)) {
                    break;
                }
                box[v] &= ~bit;
            }
        }
        return box[v] != 0;
    }

    private boolean any(long[] box, Counterexample example, int own, int producers) {
        long[] sub = box.clone();
        long ownAll = own == Space.FIXED ? 1 : box[own];
        long producersAll = producers == Space.FIXED || producers == own ? 1 : box[producers];
        for (long p = producersAll; p != 0; p &= p - 1) {
            for (long o = ownAll; o != 0; o &= o - 1) {
                if (holds(sub, example, own, o & -o, producers, p & -p)) {
                    return true;
                }
            }
        }
        return false;
    }
}
