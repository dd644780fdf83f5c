package dustwright.engine.coverage;

import dustwright.engine.coverage.Frame.Elsewhere;
import dustwright.engine.coverage.Frame.Step;
import dustwright.engine.network.TubingTree;
import dustwright.engine.network.TubingTree.Wye;
import java.util.ArrayList;
import java.util.List;

/** Follows the splits behind an extreme back to the inlets that are open in it. */
final class Trace {
    private final Inside inside;
    private final TubingTree tree;
    private final Grid grid;
    private final Elsewhere elsewhere;

    Trace(Inside inside, Elsewhere elsewhere) {
        this.inside = inside;
        this.tree = inside.tree;
        this.grid = inside.grid;
        this.elsewhere = elsewhere;
    }

    /** Open inlets of the extreme of a run. */
    List<Integer> run(int node, Step step, Best best, boolean most) {
        List<Integer> open = new ArrayList<>();
        inside.traceBranch(node, best.inside, best.place, most, open);
        outside(step, best.outside, best.place, most, open);
        return open;
    }

    /** Finds the open inlets outside a part of a node, at a place at the end of that part. */
    void outside(Step step, int target, double u, boolean greatest, List<Integer> open) {
        Family above = step.above().drawn();
        int[] lefts = step.mix().left(target);
        int[] rights = step.mix().right(target);
        WyeMaps maps = new WyeMaps(grid);
        double best = 0;
        int pair = 0;
        double node = u;
        double other = u;
        for (int n = 0; n < lefts.length; n++) {
            double[] draws = above.curve(lefts[n], greatest);
            double value;
            double nodeHere = u;
            double otherHere = u;
            if (step.wye().isPresent()) {
                Wye wye = step.wye().get();
                boolean branch = step.part() == wye.branch();
                maps.from(wye, branch, draws, step.besides().junction().onlyPart(rights[n], !greatest), u);
                value = maps.flow;
                nodeHere = maps.nodePlace;
                otherHere = branch ? maps.runPlace : maps.branchPlace;
            } else {
                value = grid.value(draws, u) - step.besides().junction().value(rights[n], u, !greatest);
            }
            if (n == 0 || (greatest ? value > best : value < best)) {
                best = value;
                pair = n;
                node = nodeHere;
                other = otherHere;
            }
        }
        double besides = step.wye().isPresent() ? other : node;
        inside.trace(step.above().node(), step.besides(), rights[pair], besides, !greatest, open);
        above(step.above(), lefts[pair], node, greatest, open);
    }

    private void above(Frame frame, int count, double u, boolean greatest, List<Integer> open) {
        if (frame.step().isEmpty()) {
            open.addAll(elsewhere.open().get(count));
            return;
        }
        double flow = grid.value(frame.drawn().curve(count, greatest), u);
        double near = new LegMaps(grid)
                .downstream(
                        tree.law(frame.node()),
                        inside.dust(frame.node(), frame.drawn().counts().get(count)),
                        grid.squared(u),
                        flow);
        outside(frame.step().get(), count, grid.placeOf(near), greatest, open);
    }
}
