package dustwright.engine.sizing;

import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What designs cost, and what no design of a box costs less than (equation SIZ-1). */
final class Prices {
    private final Space space;
    private final Tubing tubing;
    private final Rules rules;
    private final Map<List<Integer>, Double> bestRunning = new HashMap<>();

    Prices(Space space, Tubing tubing, Rules rules) {
        this.space = space;
        this.tubing = tubing;
        this.rules = rules;
    }

    Design design(int[] chosen) {
        Plant sized = space.with(space.fit(chosen));
        List<String> options = new ArrayList<>();
        List<Double> firsts = new ArrayList<>();
        for (int v = 0; v < chosen.length; v++) {
            options.add(space.options(v).get(chosen[v]).id());
            firsts.add(space.cost(v, chosen[v]));
        }
        return new Design(options, firsts, rules.running(sized), sized);
    }

    /** Least first costs, and what the widest fit of a box costs to run. */
    double bound(long[] options) {
        double sum = 0;
        int producers = Space.FIXED;
        for (int v = 0; v < options.length; v++) {
            if (space.isProducer(v) && producers == Space.FIXED) {
                producers = v;
            } else {
                sum += least(options, v);
            }
        }
        if (producers == Space.FIXED) {
            return sum + running(options);
        }
        double least = Double.POSITIVE_INFINITY;
        for (long rest = options[producers]; rest != 0; rest &= rest - 1) {
            long[] with = options.clone();
            with[producers] = rest & -rest;
            least = Math.min(least, space.cost(producers, Long.numberOfTrailingZeros(rest)) + running(with));
        }
        return sum + least;
    }

    private double least(long[] options, int v) {
        double least = Double.POSITIVE_INFINITY;
        for (long rest = options[v]; rest != 0; rest &= rest - 1) {
            least = Math.min(least, space.cost(v, Long.numberOfTrailingZeros(rest)));
        }
        return least;
    }

    private double running(long[] options) {
        int[] widest = new int[options.length];
        List<Integer> key = new ArrayList<>();
        for (int v = 0; v < widest.length; v++) {
            widest[v] = Long.SIZE - 1 - Long.numberOfLeadingZeros(options[v]);
            key.add(widest[v]);
        }
        return bestRunning.computeIfAbsent(key, k -> {
            Plant sized = space.with(space.fit(widest));
            OptionalDouble running =
                    tubing.isTree() && rules.widestRunsCheapest(sized) ? rules.running(sized) : OptionalDouble.empty();
            return running.orElse(0);
        });
    }

    /** Options left of a choice, cheapest first. */
    List<Integer> byCost(long[] options, int v) {
        List<Integer> list = new ArrayList<>();
        for (long rest = options[v]; rest != 0; rest &= rest - 1) {
            list.add(Long.numberOfTrailingZeros(rest));
        }
        list.sort(Comparator.comparingDouble(o -> space.cost(v, o)));
        return list;
    }

    /** The open choice whose options differ most in cost. */
    int widestSpread(long[] options) {
        int widest = Space.FIXED;
        double most = -1;
        for (int v = 0; v < options.length; v++) {
            if (Long.bitCount(options[v]) > 1) {
                List<Integer> byCost = byCost(options, v);
                double spread = space.cost(v, byCost.get(byCost.size() - 1)) - space.cost(v, byCost.get(0));
                if (spread > most) {
                    most = spread;
                    widest = v;
                }
            }
        }
        return widest;
    }
}
