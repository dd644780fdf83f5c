package dustwright.engine.coverage;

import dustwright.engine.coverage.Check.Span;
import dustwright.engine.network.TubingTree;
import java.util.Arrays;

/**
 * Everything looked after at one node (equation COV-6), by the pressure it is seen at: at the node itself, where its run joins the next, and
 * behind the valve of its inlet.
 */
final class Looked {
    /** By node: the junction there, and its run seen from there. */
    final Check[] atNode;
    /** By node: where its run ends. */
    final Check[] atEnd;
    /** By node: behind the valve of its inlet. */
    final Check[] atValve;

    private final TubingTree tree;
    private final String[] velocities;

    Looked(TubingTree tree, Grid grid) {
        this.tree = tree;
        atNode = checks(tree, grid);
        atEnd = checks(tree, grid);
        atValve = checks(tree, grid);
        velocities = new String[tree.size()];
        Arrays.fill(velocities, "");
    }

    private static Check[] checks(TubingTree tree, Grid grid) {
        Check[] checks = new Check[tree.size()];
        Arrays.setAll(checks, node -> new Check(grid));
        return checks;
    }

    /** Notes that velocities cannot be put in order at a node's run or hose. */
    void velocities(int node, String where) {
        velocities[node] = "it is not sure that the least air is also the slowest, against what is asked, in " + where;
    }

    /** Notes that in some states nobody can say what the dust asks in a node's run or hose. */
    void notJudged(int node, String where) {
        velocities[node] = "no published law of carrying may be asked of all dust in " + where;
    }

    /** The first reason, in the order of nodes, why answers may not be relied on; empty when they may. */
    Objection objection(Spans spans) {
        for (int node = 0; node < atNode.length; node++) {
            String point = node == 0 ? tree.station() : tree.point(node);
            String found = first(
                    velocities[node],
                    atNode[node].objection(spans.atNode[node], point),
                    atEnd[node].objection(spans.atEnd[node], node == 0 ? point : tree.run(node)),
                    atValve[node].objection(spans.atValve[node], "the hose of " + point));
            if (!found.isEmpty()) {
                return new Objection(found, node);
            }
        }
        return Objection.NONE;
    }

    private static String first(String... reasons) {
        return Arrays.stream(reasons).filter(r -> !r.isEmpty()).findFirst().orElse("");
    }

    /** Where the states of one condition may stand, at every node. */
    static final class Spans {
        final Span[] atNode;
        final Span[] atEnd;
        final Span[] atValve;

        Spans(int nodes) {
            atNode = spans(nodes);
            atEnd = spans(nodes);
            atValve = spans(nodes);
        }

        private static Span[] spans(int nodes) {
            Span[] spans = new Span[nodes];
            Arrays.setAll(spans, node -> new Span());
            return spans;
        }
    }
}
