package dustwright.engine.network;

import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;

/**
 * What passes an inlet.
 *
 * @param flow air entering: through the tool when open, the leak of the valve when closed; negative when it blows out
 * @param vacuumAtValve vacuum behind the valve
 */
public record InletResult(String id, boolean open, MassFlow flow, PressureDifference vacuumAtValve, boolean choked) {}
