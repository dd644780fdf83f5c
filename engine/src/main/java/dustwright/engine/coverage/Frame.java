package dustwright.engine.coverage;

import dustwright.engine.coverage.Inside.At;
import dustwright.engine.network.TubingTree.Wye;
import java.util.List;
import java.util.Optional;

/**
 * A node with what the rest of the plant draws from it. A count of {@code drawn} is that of the open inlets outside; where feeds are
 * counted, their numbers are those of the inlets <em>inside</em>, for it is their dust that goes down all the way.
 *
 * @param step how the curves came about; empty at the receiver
 */
record Frame(int node, Optional<Step> step, Family drawn) {
    /**
     * How curves outside a part of a node come about: from what the node's leg draws, and what else comes to the node.
     *
     * @param part node at the far end of the part's leg, or {@link Inside#INLET}
     */
    record Step(Frame above, Mix mix, At besides, Optional<Wye> wye, int part) {}

    /** Counts that other trees of the plant may have, and a set for each. */
    record Elsewhere(List<int[]> counts, List<List<Integer>> open) {}
}
