package dustwright.engine.network;

import dustwright.engine.conveying.RiserFoot;
import dustwright.engine.conveying.SolidsDrop;
import dustwright.engine.quantity.MassFlow;
import java.util.Optional;

/**
 * One dust in one leg.
 *
 * @param dust id of the dust
 * @param flow in the direction of the air
 * @param drop what it adds to the leg's pressure drop; absent where its particles are not known
 * @param foot what is found at the foot of the rise, where the leg lifts dust of known particles
 */
public record DustStream(String dust, MassFlow flow, Optional<SolidsDrop> drop, Optional<RiserFoot.Found> foot) {}
