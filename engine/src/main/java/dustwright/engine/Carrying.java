package dustwright.engine;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.Conveyed;
import dustwright.engine.conveying.Dust;
import dustwright.engine.network.DustStream;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Viscosity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the published laws ask of a piece that carries dust: for every dust of known particles in it, at its upstream end, with all the
 * dust there is in the piece.
 */
public final class Carrying {
    private Carrying() {}

    /** The laws for each dust of known particles, and what is stated for one; empty where neither is carried. */
    public static List<CarryingVelocity> of(Plant plant, LegResult leg) {
        Air air = plant.site().air();
        double all_kgPerS = leg.streams().stream()
                .filter(stream -> stream.drop().isPresent())
                .mapToDouble(stream -> stream.flow().kgPerSecond())
                .sum();
        List<CarryingVelocity> laws = new ArrayList<>();
        for (DustStream stream : leg.streams()) {
            Dust dust = plant.dust(stream.dust());
            if (stream.drop().isEmpty() && stream.flow().kgPerSecond() > 0) {
                // a velocity measured for the dust needs no particles
                dust.carryingVelocity()
                        .ifPresent(stated -> laws.add(new CarryingVelocity(dust.id(), Optional.of(stated), List.of())));
            }
            stream.drop().ifPresent(drop -> {
                Conveyed conveyed = Conveyed.of(
                        new MassFlow(all_kgPerS),
                        dust.particle().orElseThrow(),
                        new Density(air.density_kgPerM3(leg.upstream().pascals())),
                        new Viscosity(air.viscosity_PaS()),
                        leg.bore());
                laws.add(CarryingVelocity.of(dust, conveyed, drop.path().lies()));
            });
        }
        return laws;
    }

    /** The law that asks most of all dusts in the piece; empty where none is inside its range. */
    public static Optional<CarryingVelocity.Binding> binding(List<CarryingVelocity> laws) {
        return laws.stream()
                .flatMap(law -> law.binding().stream())
                .max(Comparator.comparing(CarryingVelocity.Binding::velocity));
    }
}
