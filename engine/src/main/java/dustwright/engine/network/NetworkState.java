package dustwright.engine.network;

import dustwright.engine.network.Network.BleedParts;
import dustwright.engine.network.Network.InletParts;
import dustwright.engine.network.Network.StationParts;
import java.util.Arrays;

/** The unknowns of one state and what the state opens and shuts. Owned by a solver and used again for the next state. */
final class NetworkState {
    /** Pressure squared at every node. */
    final double[] squared;
    /** Flow through every leg, positive from node 1 to node 2 [kg/s]; 0 where shut. */
    final double[] flow;
    /** Loss of the junction at every leg's node 2, in pressure squared; negative where the other stream draws. */
    final double[] junction;
    /** Whether a leg is there at all in this state. */
    final boolean[] active;
    /** Coefficient of the flow itself, filters by their condition. */
    final double[] linear;

    NetworkState(Network net) {
        squared = new double[net.nodeCount];
        flow = new double[net.legCount];
        junction = new double[net.legCount];
        active = new boolean[net.legCount];
        linear = new double[net.legCount];
    }

    /** Opens and shuts what the state says. */
    void set(Network net, State state) {
        Arrays.fill(active, true);
        System.arraycopy(net.linear, 0, linear, 0, linear.length);
        Arrays.fill(junction, 0);
        for (InletParts inlet : net.inlets) {
            boolean open = state.open().contains(inlet.id());
            activate(inlet.hoseLeg(), open);
            activate(inlet.toolLeg(), open);
            activate(inlet.leakLeg(), !open);
        }
        for (BleedParts bleed : net.bleeds) {
            activate(bleed.leg(), state.openBleeds().contains(bleed.id()));
        }
        for (StationParts station : net.stations) {
            activate(station.ventLeg(), state.ventedStations().contains(station.id()));
            linear[station.filterLeg()] =
                    station.filter().squaredPressurePerFlow(state.filter(), net.filterRt_JPerKg(station));
        }
    }

    private void activate(int leg, boolean on) {
        if (leg != Network.NONE) {
            active[leg] = on;
        }
    }
}
