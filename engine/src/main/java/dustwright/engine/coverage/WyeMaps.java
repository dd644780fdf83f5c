package dustwright.engine.coverage;

import dustwright.engine.network.TubingTree.Wye;

/**
 * Two streams joining with losses that depend on the split, seen from the joined run and from either stream (equation COV-4). The losses
 * tie the three flows together, so order is not kept for every loss; {@link #ordered} says whether it is where the last answer stands:
 * more from either stream is more in all, more drawn above is more drawn from either, more from one stream is less from the other.
 * Mutable; each thread has its own.
 */
final class WyeMaps {
    private static final int STEP_LIMIT = 16;
    /** Places shallower than this share of the deepest are not worth halving for: no state stands there. */
    private static final double SHALLOW = 0.25;

    private static final int HALVINGS = 50;
    /** Newton is quadratic: after a step this small, relative to all that flows, the last digits are right. */
    private static final double FOUND = 1e-11;

    private static final double NUDGE = 1e-7;

    private final Grid grid;

    /** What the last answer found: flow asked and its slope by the place asked. */
    double flow;

    double slope;
    boolean ordered;
    /** Whether the equations were met. */
    boolean settled;
    /** Place at the node, and at the ends of both entering legs. */
    double nodePlace;

    double branchPlace;
    double runPlace;

    /** What one more from the branch, the run or the curve above brings in what was asked, as far as each is an input [-]. */
    double byBranch;

    double byRun;
    double byAbove;
    double bySibling;

    private double branch;
    private double run;
    private double branchLoss;
    private double runLoss;
    private double branchByBranch;
    private double branchByRun;
    private double runByBranch;
    private double runByRun;

    WyeMaps(Grid grid) {
        this.grid = grid;
    }

    private void losses(Wye wye, double wb, double wr) {
        branchLoss = wye.branchLoss_Pa2(wb, wr);
        runLoss = wye.runLoss_Pa2(wb, wr);
        double step = NUDGE * (Math.abs(wb) + Math.abs(wr)) + 1e-15;
        branchByBranch = (wye.branchLoss_Pa2(wb + step, wr) - wye.branchLoss_Pa2(wb - step, wr)) / (2 * step);
        runByBranch = (wye.runLoss_Pa2(wb + step, wr) - wye.runLoss_Pa2(wb - step, wr)) / (2 * step);
        branchByRun = (wye.branchLoss_Pa2(wb, wr + step) - wye.branchLoss_Pa2(wb, wr - step)) / (2 * step);
        runByRun = (wye.runLoss_Pa2(wb, wr + step) - wye.runLoss_Pa2(wb, wr - step)) / (2 * step);
    }

    /** Fall of a stream's flow with its end's pressure squared. */
    private double give(double[] out, double u) {
        return grid.slope(out, u) / (2 * grid.ambientSquared * Math.max(u, 1e-9));
    }

    /** What both streams bring into the node at a place; the flow is their sum. */
    void into(Wye wye, double[] branchOut, double[] runOut, double u) {
        double squared = grid.squared(u);
        branch = grid.value(branchOut, u);
        run = grid.value(runOut, u);
        settled = false;
        for (int n = 0; n < STEP_LIMIT && !settled; n++) {
            boolean last = n == STEP_LIMIT - 1 && u > SHALLOW * grid.place(grid.intervals);
            if (last) {
                bracket(wye, branchOut, runOut, squared);
            }
            losses(wye, branch, run);
            branchPlace = grid.placeOf(squared + branchLoss);
            runPlace = grid.placeOf(squared + runLoss);
            double giveBranch = give(branchOut, branchPlace);
            double giveRun = give(runOut, runPlace);
            double offBranch = branch - grid.value(branchOut, branchPlace);
            double offRun = run - grid.value(runOut, runPlace);
            double a = 1 + giveBranch * branchByBranch;
            double b = giveBranch * branchByRun;
            double c = giveRun * runByBranch;
            double d = 1 + giveRun * runByRun;
            double determinant = a * d - b * c;
            double stepBranch = (d * offBranch - b * offRun) / determinant;
            double stepRun = (a * offRun - c * offBranch) / determinant;
            double share = last ? 0 : n < 8 ? 1 : 0.5;
            branch = Math.max(0, branch - share * stepBranch);
            run = Math.max(0, run - share * stepRun);
            settled = last || Math.abs(stepBranch) + Math.abs(stepRun) <= FOUND * (branch + run);
            byBranch = Math.abs((d - c) / determinant);
            byRun = Math.abs((a - b) / determinant);
            double byPressure = -(giveBranch * (d - c) + giveRun * (a - b)) / determinant;
            slope = -2 * grid.ambientSquared * u * byPressure;
            ordered = determinant > 0 && d - c >= 0 && a - b >= 0 && byPressure <= 0;
        }
        flow = branch + run;
        nodePlace = u;
        if (!settled) {
            flow = grid.value(branchOut, u) + grid.value(runOut, u);
            slope = grid.slope(branchOut, u) + grid.slope(runOut, u);
        }
    }

    /**
     * Raises the errors of a tabulated curve by what lies between its knots: slopes there are taken to be those at both knots, widened by
     * their difference to either side. Looked at, not proven: the losses of junctions bend.
     */
    static void bound(Grid grid, double[] curve) {
        grid.putError(curve, 0, grid.error(curve, 0) + grid.stepError(curve, 0));
        for (int i = 1; i < grid.intervals; i++) {
            double a = grid.slopeAt(curve, i);
            double b = grid.slopeAt(curve, i + 1);
            double wide = Math.abs(a - b);
            double own = grid.between(curve, i, Math.min(a, b) - wide, Math.max(a, b) + wide);
            grid.putError(curve, i, grid.error(curve, i) + own);
        }
    }

    /** Finds both flows by halving, where Newton's steps lead astray: slow, but it cannot. */
    private void bracket(Wye wye, double[] branchOut, double[] runOut, double squared) {
        double low = 0;
        double high = grid.value(branchOut, grid.place(grid.intervals));
        for (int n = 0; n < HALVINGS; n++) {
            branch = 0.5 * (low + high);
            bracketRun(wye, runOut, squared);
            double given = grid.value(branchOut, grid.placeOf(squared + wye.branchLoss_Pa2(branch, run)));
            if (branch < given) {
                low = branch;
            } else {
                high = branch;
            }
        }
    }

    private void bracketRun(Wye wye, double[] runOut, double squared) {
        double low = 0;
        double high = grid.value(runOut, grid.place(grid.intervals));
        for (int n = 0; n < HALVINGS; n++) {
            run = 0.5 * (low + high);
            double given = grid.value(runOut, grid.placeOf(squared + wye.runLoss_Pa2(branch, run)));
            if (run < given) {
                low = run;
            } else {
                high = run;
            }
        }
    }

    /**
     * What is drawn from one stream at the end of its leg.
     *
     * @param ofBranch whether the branch is asked, else the run
     * @param above what the joined run draws, over the place at the node
     * @param sibling what the other stream brings, over the place at its end
     * @param u place at the end of the leg asked
     */
    void from(Wye wye, boolean ofBranch, double[] above, double[] sibling, double u) {
        double squared = grid.squared(u);
        double node = squared;
        double other = grid.value(sibling, u);
        flow = grid.value(above, u) - other;
        slope = grid.slope(above, u) - grid.slope(sibling, u);
        ordered = true;
        settled = true;
        nodePlace = u;
        branchPlace = u;
        runPlace = u;
        byAbove = 1;
        bySibling = 1;
        if (flow <= 0) {
            return; // nothing is drawn here: no meeting
        }
        settled = false;
        for (int n = 0; n < STEP_LIMIT && !settled; n++) {
            boolean last = n == STEP_LIMIT - 1 && u > SHALLOW * grid.place(grid.intervals);
            if (last) {
                node = bracketNode(wye, ofBranch, above, sibling, squared);
                other = bracketOther(wye, ofBranch, grid.value(above, grid.placeOf(node)), sibling, node);
            }
            double place = grid.placeOf(node);
            double asked = grid.value(above, place) - other;
            losses(wye, ofBranch ? asked : other, ofBranch ? other : asked);
            double askedLoss = ofBranch ? branchLoss : runLoss;
            double otherLoss = ofBranch ? runLoss : branchLoss;
            double askedByAsked = ofBranch ? branchByBranch : runByRun;
            double askedByOther = ofBranch ? branchByRun : runByBranch;
            double otherByAsked = ofBranch ? runByBranch : branchByRun;
            double otherByOther = ofBranch ? runByRun : branchByBranch;
            double otherPlace = grid.placeOf(node + otherLoss);
            double draw = -grid.slope(above, place) / (2 * grid.ambientSquared * Math.max(place, 1e-9));
            double give = give(sibling, otherPlace);
            double offOther = other - grid.value(sibling, otherPlace);
            double offNode = node + askedLoss - squared;
            double a = give * (1 + otherByAsked * draw);
            double b = 1 + give * (otherByOther - otherByAsked);
            double c = 1 + askedByAsked * draw;
            double d = askedByOther - askedByAsked;
            double determinant = a * d - b * c;
            double stepNode = (d * offOther - b * offNode) / determinant;
            double stepOther = (a * offNode - c * offOther) / determinant;
            double share = last ? 0 : n < 8 ? 1 : 0.5;
            node = Math.min(node - share * stepNode, grid.ambientSquared);
            other = Math.max(0, other - share * stepOther);
            boolean small =
                    Math.abs(stepNode) <= FOUND * grid.ambientSquared && Math.abs(stepOther) <= FOUND * above[0];
            settled = last || small;
            // answers of [node, other] to a unit change of: the end's pressure, the sibling's curve, the curve above
            double nodeByEnd = -b / determinant;
            double otherByEnd = a / determinant;
            double byEnd = draw * nodeByEnd - otherByEnd;
            bySibling = draw * d / determinant + c / determinant;
            double lossOther = -give * otherByAsked;
            byAbove = 1
                    + draw * (d * lossOther + b * askedByAsked) / determinant
                    - (-a * askedByAsked - c * lossOther) / determinant;
            ordered = determinant < 0 && byEnd >= 0 && bySibling <= 0 && byAbove >= 0;
            slope = -2 * grid.ambientSquared * u * byEnd;
            flow = asked;
            nodePlace = place;
            branchPlace = ofBranch ? u : otherPlace;
            runPlace = ofBranch ? otherPlace : u;
        }
        if (settled) {
            flow = grid.value(above, grid.placeOf(node)) - other;
        } else {
            flow = grid.value(above, u) - grid.value(sibling, u);
            slope = grid.slope(above, u) - grid.slope(sibling, u);
        }
    }

    /** Finds the pressure at the node by halving: it rises with that at the end of the leg asked. */
    private double bracketNode(Wye wye, boolean ofBranch, double[] above, double[] sibling, double end) {
        double low = grid.squared(grid.place(grid.intervals));
        double high = grid.ambientSquared;
        for (int n = 0; n < HALVINGS; n++) {
            double node = 0.5 * (low + high);
            double drawn = grid.value(above, grid.placeOf(node));
            double other = bracketOther(wye, ofBranch, drawn, sibling, node);
            double asked = drawn - other;
            double loss = ofBranch ? wye.branchLoss_Pa2(asked, other) : wye.runLoss_Pa2(other, asked);
            if (node + loss < end) {
                low = node;
            } else {
                high = node;
            }
        }
        return 0.5 * (low + high);
    }

    private double bracketOther(Wye wye, boolean ofBranch, double drawn, double[] sibling, double node) {
        double low = 0;
        double high = Math.max(0, drawn);
        for (int n = 0; n < HALVINGS; n++) {
            double other = 0.5 * (low + high);
            double asked = drawn - other;
            double loss = ofBranch ? wye.runLoss_Pa2(asked, other) : wye.branchLoss_Pa2(other, asked);
            if (other < grid.value(sibling, grid.placeOf(node + loss))) {
                low = other;
            } else {
                high = other;
            }
        }
        return 0.5 * (low + high);
    }
}
