package dustwright.engine;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import java.util.List;

/**
 * What the plant needs and what the producers give at one station, in one state.
 *
 * @param system free air drawn from receiver and tubing against vacuum at the producers' inlet, other stations as solved
 * @param producer air the running producers pass against the same vacuum, relief valve's share taken off
 * @param operating where they meet
 */
public record OperatingChart(
        String station, String state, List<ChartPoint> system, List<ChartPoint> producer, ChartPoint operating) {
    public OperatingChart {
        system = List.copyOf(system);
        producer = List.copyOf(producer);
    }

    /** One point of a curve. */
    public record ChartPoint(FreeAirFlow flow, PressureDifference vacuum) {}
}
