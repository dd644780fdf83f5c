package dustwright.engine.producer;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;

/**
 * A part whose loss is stated at one flow: a safety filter, a silencer. The loss grows with the square of the flow and falls with
 * density: stated at the site's ambient density.
 */
public record StatedLoss(PressureDifference loss, FreeAirFlow at) {}
