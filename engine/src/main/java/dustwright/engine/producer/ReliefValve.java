package dustwright.engine.producer;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;

/**
 * Vacuum relief valve at the producer's inlet: opens at its set vacuum, passes its rated flow at set + accumulation.
 *
 * @param accumulation further vacuum from the first opening to rated flow
 * @param rated air it admits at set + accumulation
 */
public record ReliefValve(PressureDifference set, PressureDifference accumulation, FreeAirFlow rated) {}
