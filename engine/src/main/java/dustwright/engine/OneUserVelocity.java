package dustwright.engine;

import dustwright.engine.quantity.Velocity;

/**
 * The slowest a run gets with a single user anywhere upstream of it.
 *
 * @param inlet the inlet that is open alone
 * @param slowest velocity at the run's slowest point
 * @param least velocity the dust needs
 * @param margin (slowest − least)/least [-]
 */
public record OneUserVelocity(String run, String inlet, Velocity slowest, Velocity least, double margin) {}
