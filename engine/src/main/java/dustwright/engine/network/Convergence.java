package dustwright.engine.network;

import dustwright.engine.quantity.MassFlow;

/**
 * How the answer was found.
 *
 * @param worstBalance greatest mass imbalance at any point
 * @param worstLegError greatest relative error of any leg law, in pressure squared over ambient squared [-]
 */
public record Convergence(String method, int iterations, MassFlow worstBalance, double worstLegError) {}
