package dustwright.engine.coverage;

import dustwright.engine.network.TubingTree.Wye;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What comes together at a node: envelopes of everything that brings air there, their counts mixed part by part. Where two streams join
 * with losses by the split, the two are mixed by {@link WyeMaps}, else flows add.
 */
final class Junction {
    private final Grid grid;
    private final Counters counters;
    private final List<Family> parts;
    private final List<Mix> stages = new ArrayList<>();
    private final Optional<Wye> wye;
    private final double[] nothing;

    /** Where an envelope stands at one place: which count of every part, and the place at which each part is seen. */
    static final class Choice {
        private final int[] count;
        private final double[] place;

        private Choice(int[] count, double[] place) {
            this.count = count;
            this.place = place;
        }

        int count(int part) {
            return count[part];
        }

        double place(int part) {
            return place[part];
        }
    }

    /**
     * @param parts at a wye the branch first, then the run
     * @param reduced what is kept of the counts of all parts together
     */
    Junction(Grid grid, Counters counters, List<Family> parts, Optional<Wye> wye, UnaryOperator<int[]> reduced) {
        this.grid = grid;
        nothing = grid.curve();
        this.counters = counters;
        this.parts = List.copyOf(parts);
        this.wye = wye;
        List<int[]> mixed = List.of(counters.none());
        for (int n = 0; n < parts.size(); n++) {
            boolean last = n == parts.size() - 1;
            Mix mix = Mix.of(mixed, parts.get(n).counts(), (left, right) -> {
                int[] sum = counters.sum(left, right);
                return last && sum.length > 0 ? reduced.apply(sum) : sum;
            });
            stages.add(mix);
            mixed = mix.counts();
        }
    }

    /** Counts of everything together. */
    List<int[]> counts() {
        return stages.isEmpty()
                ? List.of(counters.none())
                : stages.get(stages.size() - 1).counts();
    }

    /** Envelopes of what comes together. */
    Family family(Check check) {
        if (parts.isEmpty()) {
            return new Family(counts(), new double[][] {nothing}, new double[][] {nothing});
        }
        if (wye.isPresent()) {
            return join(wye.get(), check);
        }
        Family mixed = parts.get(0);
        for (int n = 1; n < parts.size(); n++) {
            mixed = add(mixed, parts.get(n), stages.get(n));
        }
        return parts.size() > 1 ? mixed : new Family(counts(), reduced(mixed, true), reduced(mixed, false));
    }

    /** A single part keeps its curves, but counts may fall together when reduced. */
    private double[][] reduced(Family mixed, boolean greatest) {
        Mix only = stages.get(0);
        double[][] curves = new double[only.size()][];
        for (int target = 0; target < curves.length; target++) {
            int[] from = only.right(target);
            curves[target] = mixed.curve(from[0], greatest);
            for (int n = 1; n < from.length; n++) {
                curves[target] = better(curves[target], mixed.curve(from[n], greatest), greatest);
            }
            for (int n = 0; n < from.length && from.length > 1; n++) {
                grid.passed(curves[target], mixed.curve(from[n], greatest), nothing, 1, greatest);
            }
        }
        return curves;
    }

    private double[] better(double[] one, double[] other, boolean greatest) {
        double[] best = one.clone();
        java.util.Arrays.fill(best, 2 * (grid.intervals + 1), best.length, 0);
        for (int knot = 0; knot <= grid.intervals; knot++) {
            if (greatest ? other[2 * knot] > best[2 * knot] : other[2 * knot] < best[2 * knot]) {
                best[2 * knot] = other[2 * knot];
                best[2 * knot + 1] = other[2 * knot + 1];
            }
        }
        return best;
    }

    private Family add(Family left, Family right, Mix mix) {
        double[][] most = new double[mix.size()][];
        double[][] least = new double[mix.size()][];
        for (int target = 0; target < mix.size(); target++) {
            most[target] = sum(left, right, mix, target, true);
            boolean one = mix.left(target).length == 1
                    && left.single(mix.left(target)[0])
                    && right.single(mix.right(target)[0]);
            least[target] = one ? most[target] : sum(left, right, mix, target, false);
        }
        return new Family(mix.counts(), most, least);
    }

    private double[] sum(Family left, Family right, Mix mix, int target, boolean greatest) {
        double[] best = grid.curve();
        int[] lefts = mix.left(target);
        int[] rights = mix.right(target);
        for (int n = 0; n < lefts.length; n++) {
            double[] one = left.curve(lefts[n], greatest);
            double[] other = right.curve(rights[n], greatest);
            for (int k = 0; k < 2 * (grid.intervals + 1); k += 2) {
                double value = one[k] + other[k];
                if (n == 0 || (greatest ? value > best[k] : value < best[k])) {
                    best[k] = value;
                    best[k + 1] = one[k + 1] + other[k + 1];
                }
            }
        }
        for (int n = 0; n < lefts.length; n++) {
            grid.passed(best, left.curve(lefts[n], greatest), right.curve(rights[n], greatest), 1, greatest);
        }
        return best;
    }

    private Family join(Wye at, Check check) {
        Mix mix = stages.get(1);
        double[][] most = new double[mix.size()][];
        double[][] least = new double[mix.size()][];
        WyeMaps maps = new WyeMaps(grid);
        for (int target = 0; target < mix.size(); target++) {
            most[target] = join(at, maps, target, true, check);
            boolean one = mix.left(target).length == 1
                    && part(0).single(branchCount(target, 0))
                    && part(1).single(mix.right(target)[0]);
            least[target] = one ? most[target] : join(at, maps, target, false, check);
        }
        return new Family(mix.counts(), most, least);
    }

    private Family part(int n) {
        return parts.get(n);
    }

    /** The first stage mixes with nothing, so its counts are those of the first part in another order. */
    private int branchCount(int target, int pair) {
        return stages.get(0).right(stages.get(1).left(target)[pair])[0];
    }

    private double[] join(Wye at, WyeMaps maps, int target, boolean greatest, Check check) {
        double[] best = nothing;
        double[] one = grid.curve();
        int[] rights = stages.get(1).right(target);
        for (int n = 0; n < rights.length; n++) {
            double[] branch = part(0).curve(branchCount(target, n), greatest);
            double[] run = part(1).curve(rights[n], greatest);
            for (int knot = 1; knot <= grid.intervals; knot++) {
                maps.into(at, branch, run, grid.place(knot));
                check.wye(maps, knot);
                grid.put(one, knot, maps.flow, maps.slope);
                double carried = maps.byBranch * grid.errorNear(branch, maps.branchPlace)
                        + maps.byRun * grid.errorNear(run, maps.runPlace);
                grid.putError(one, knot - 1, carried);
            }
            grid.putStart(one);
            WyeMaps.bound(grid, one);
            if (n == 0) {
                best = one;
                one = grid.curve();
            } else {
                double[] before = best;
                best = better(before, one, greatest);
                grid.passed(best, before, nothing, 1, greatest);
                grid.passed(best, one, nothing, 1, greatest);
            }
        }
        return best;
    }

    /** The envelope of the one part there is, as a curve. */
    double[] onlyPart(int target, boolean greatest) {
        return part(0).curve(stages.get(0).right(target)[0], greatest);
    }

    /** The envelope at one place, where flows add. */
    double value(int target, double u, boolean greatest) {
        Choice choice = choose(target, u, greatest);
        double sum = 0;
        for (int n = 0; n < parts.size(); n++) {
            sum += grid.value(part(n).curve(choice.count(n), greatest), u);
        }
        return sum;
    }

    /** Which parts' counts make the envelope at one place. */
    Choice choose(int target, double u, boolean greatest) {
        int[] chosen = new int[parts.size()];
        double[] place = new double[parts.size()];
        if (wye.isPresent()) {
            chooseAtWye(wye.get(), target, u, greatest, chosen, place);
            return new Choice(chosen, place);
        }
        java.util.Arrays.fill(place, u);
        double[][] value = new double[parts.size()][];
        int[][] pair = new int[parts.size()][];
        for (int n = 0; n < parts.size(); n++) {
            Mix mix = stages.get(n);
            value[n] = new double[mix.size()];
            pair[n] = new int[mix.size()];
            for (int t = 0; t < mix.size(); t++) {
                for (int p = 0; p < mix.left(t).length; p++) {
                    double left = n == 0 ? 0 : value[n - 1][mix.left(t)[p]];
                    double sum = left + grid.value(part(n).curve(mix.right(t)[p], greatest), u);
                    if (p == 0 || (greatest ? sum > value[n][t] : sum < value[n][t])) {
                        value[n][t] = sum;
                        pair[n][t] = p;
                    }
                }
            }
        }
        int at = target;
        for (int n = parts.size() - 1; n >= 0; n--) {
            chosen[n] = stages.get(n).right(at)[pair[n][at]];
            at = stages.get(n).left(at)[pair[n][at]];
        }
        return new Choice(chosen, place);
    }

    private void chooseAtWye(Wye at, int target, double u, boolean greatest, int[] chosen, double[] place) {
        WyeMaps maps = new WyeMaps(grid);
        int[] rights = stages.get(1).right(target);
        double best = 0;
        for (int n = 0; n < rights.length; n++) {
            int branch = branchCount(target, n);
            maps.into(at, part(0).curve(branch, greatest), part(1).curve(rights[n], greatest), u);
            if (n == 0 || (greatest ? maps.flow > best : maps.flow < best)) {
                best = maps.flow;
                chosen[0] = branch;
                chosen[1] = rights[n];
                place[0] = maps.branchPlace;
                place[1] = maps.runPlace;
            }
        }
    }
}
