package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Inlet;
import java.util.List;
import java.util.Optional;

/** Where the published laws of carrying are asked about a dust of which too little is stated to ask them: that is no pass. */
final class CarryingLines {
    private final Plant plant;
    private final Dust dust;

    CarryingLines(Plant plant, Dust dust) {
        this.plant = plant;
        this.dust = dust;
    }

    void write(Writing writing) {
        List<Inlet> takers = plant.inlets().stream()
                .filter(inlet -> inlet.dust().filter(dust.id()::equals).isPresent())
                .toList();
        if (takers.isEmpty()) {
            return;
        }
        plant.requirements()
                .saltationFactor()
                .ifPresent(limit -> notKnown(takers)
                        .ifPresent(why -> writing.unjudged(
                                FindingCode.CARRYING_VELOCITY, Place.Kind.DUST, Side.AT_LEAST, limit, why)));
    }

    private Optional<String> notKnown(List<Inlet> takers) {
        if (takers.stream().noneMatch(inlet -> inlet.feed().kgPerSecond() > 0)) {
            return Optional.of("Enter \"feed\" of the inlets that pick it up.");
        }
        return dust.particle().isPresent() || dust.carryingVelocity().isPresent()
                ? Optional.empty()
                : Optional.of("Enter \"particle size\" and \"particle density\", or a measured \"carrying velocity\".");
    }
}
