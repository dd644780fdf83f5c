package dustwright.engine.tubing;

import dustwright.engine.quantity.LeakCoefficient;
import dustwright.engine.quantity.MassFlow;
import java.util.Optional;

/**
 * An inlet valve in the wall, with the hose and tool used at it.
 *
 * @param at where it is; absent in plants given by measured lengths only
 * @param valveK loss coefficient of the open valve on the hose velocity [-]
 * @param leak leak of the closed valve
 * @param zone area of the plant it belongs to, empty if zones are not used
 * @param dust id of the dust picked up here; absent when only clean air enters
 * @param feed dust picked up per time while open
 */
public record Inlet(
        String id,
        Optional<Position> at,
        String hose,
        String tool,
        double valveK,
        LeakCoefficient leak,
        String zone,
        Optional<String> dust,
        MassFlow feed) {
    /** The same inlet with another hose. */
    public Inlet with(String otherHose) {
        return new Inlet(id, at, otherHose, tool, valveK, leak, zone, dust, feed);
    }
}
