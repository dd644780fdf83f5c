package dustwright.engine.network;

import dustwright.engine.network.Network.StationParts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which nodes hang together in a state, and whether air can come and go there at all: a part of the network without still air, held
 * pressure or a running producer has no pressure of its own.
 */
final class Reach {
    private final Network net;
    private final int[] part;
    /** Nodes of parts that are cut off and at rest: they stand at the barometer, as the smallest leak would bring them there. */
    final boolean[] resting;

    private Reach(Network net, NetworkState state) {
        this.net = net;
        part = new int[net.nodeCount];
        resting = new boolean[net.nodeCount];
        for (int n = 0; n < part.length; n++) {
            part[n] = n;
        }
        for (int leg = 0; leg < net.legCount; leg++) {
            if (state.active[leg]) {
                part[root(net.from[leg])] = root(net.to[leg]);
            }
        }
    }

    static Reach of(Network net, NetworkState state) {
        return new Reach(net, state);
    }

    /** Finds resting parts; a reason when some part can have no answer. */
    Optional<String> judge(State state) {
        boolean[] anchored = new boolean[net.nodeCount];
        boolean[] relieved = new boolean[net.nodeCount];
        boolean[] pulled = new boolean[net.nodeCount];
        for (int n = 0; n < net.nodeCount; n++) {
            anchored[root(n)] |= net.held[n];
        }
        for (StationParts station : net.stations) {
            int root = root(station.suction());
            relieved[root] |= station.relief() != null;
            pulled[root] |= station.producers().stream()
                    .anyMatch(p -> state.runningProducers().contains(p.id()));
        }
        for (int n = 0; n < net.nodeCount; n++) {
            if (root(n) != n || anchored[n] || (pulled[n] && relieved[n])) {
                continue;
            }
            Optional<String> reason = judgePart(n, pulled[n]);
            if (reason.isPresent()) {
                return reason;
            }
        }
        return Optional.empty();
    }

    private Optional<String> judgePart(int root, boolean pulled) {
        List<String> members = new ArrayList<>();
        List<String> supplied = new ArrayList<>();
        double sum_kgPerS = 0;
        for (int n = 0; n < net.nodeCount; n++) {
            if (root(n) == root) {
                members.add(net.nodeId[n]);
                resting[n] = true;
                sum_kgPerS += net.supply_kgPerS[n];
                if (net.supply_kgPerS[n] != 0) {
                    supplied.add(net.nodeId[n]);
                }
            }
        }
        if (pulled) {
            return sum_kgPerS > 0
                    ? anchorByProducer(members)
                    : Optional.of("no air can reach the running producer behind " + some(members)
                            + ": every inlet, leak, bleed and valve there is shut");
        }
        if (supplied.isEmpty()) {
            return Optional.empty();
        }
        if (sum_kgPerS > 0) {
            return Optional.of("nothing draws air from " + some(supplied) + ", which is supplied with air");
        }
        if (sum_kgPerS < 0) {
            return Optional.of("nothing lets air in to " + some(supplied) + ", from which air is drawn");
        }
        return Optional.of(
                "the pressure of " + some(supplied) + " is not determined: hold the pressure of one point there");
    }

    /** The supply feeds the producer: a pressure follows. */
    private Optional<String> anchorByProducer(List<String> members) {
        for (int n = 0; n < net.nodeCount; n++) {
            resting[n] &= !members.contains(net.nodeId[n]);
        }
        return Optional.empty();
    }

    private static String some(List<String> ids) {
        return String.join(", ", ids.subList(0, Math.min(5, ids.size()))) + (ids.size() > 5 ? " …" : "");
    }

    private int root(int node) {
        int at = node;
        while (part[at] != at) {
            part[at] = part[part[at]];
            at = part[at];
        }
        return at;
    }
}
