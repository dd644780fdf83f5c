package dustwright.engine.sheet;

import dustwright.engine.bagging.BagAir;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.ElectricalEnergy;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/** Electrical energy of the fan that opens a station's bags, over a year. */
final class FanEnergy {
    private static final Source NAMEPLATE =
            Source.ownReading("its motor taken at nameplate power all the time it blows, losses left out");

    private FanEnergy() {}

    /** The step to it, or why it is not known; empty where no fan blows. */
    static Optional<Outcome<List<Step>>> ofYear(Station station, List<DustWeek> weeks) {
        return station.container()
                .flatMap(Container::bag)
                .flatMap(BulkBag::fan)
                .map(fan -> ofYear(station.container().orElseThrow(), fan, DustWeek.at(station, weeks)));
    }

    private static Outcome<List<Step>> ofYear(Container container, BulkBag.Inflation fan, Optional<DustWeek> week) {
        if (fan.motor().isEmpty()) {
            return new Outcome.NotSolved<>("Enter \"motor\" of its \"inflation\".");
        }
        if (week.isEmpty()) {
            return new Outcome.NotSolved<>("How often bags are changed is not known.");
        }
        Power motor = fan.motor().get();
        double changes = week.get().changesPerWeek() * week.get().flow().weeks();
        double time_s =
                BagAir.inflation_s(container.volume().cubicMetres(), fan.flow().cubicMetresPerSecond());
        return new Outcome.Solved<>(List.of(Writing.step(
                "CST-28",
                "E = N t P",
                NAMEPLATE,
                new Term("E", "energy of the fan in a year", new ElectricalEnergy(changes * time_s * motor.watts())),
                new Term("N", "changes a year, those of a week (DIS-6) times the weeks", new Ratio(changes)),
                new Term("t", "time to inflate the bag (BAG-16)", new Duration(time_s)),
                new Term("P", "nameplate of its motor", motor))));
    }
}
