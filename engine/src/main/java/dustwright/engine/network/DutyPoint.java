package dustwright.engine.network;

import dustwright.engine.quantity.AbsolutePressure;
import java.util.List;

/** One solved state: every pressure, flow and velocity. Lists follow the order of the plant file. */
public record DutyPoint(
        State state,
        List<NodeResult> nodes,
        List<LegResult> legs,
        List<InletResult> inlets,
        List<BleedResult> bleeds,
        List<StationResult> stations,
        Convergence convergence) {
    public DutyPoint {
        nodes = List.copyOf(nodes);
        legs = List.copyOf(legs);
        inlets = List.copyOf(inlets);
        bleeds = List.copyOf(bleeds);
        stations = List.copyOf(stations);
    }

    /** Static pressure at a point, an inlet or a station. */
    public AbsolutePressure pressureAt(String node) {
        return nodes.stream()
                .filter(n -> n.id().equals(node))
                .map(NodeResult::pressure)
                .findFirst()
                .orElseThrow();
    }

    /** True when no piece is choked: only then is this a valid operating state. */
    public boolean unchoked() {
        return legs.stream().noneMatch(LegResult::choked);
    }

    /** True when every rising piece carries its dust on the dilute branch: only then is this a valid operating state. */
    public boolean dilute() {
        return legs.stream().noneMatch(LegResult::chokesOnDust);
    }
}
