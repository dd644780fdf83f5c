package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import java.util.Comparator;
import java.util.List;

/** How deep a station goes with its tubing blocked, and whether its relief valve keeps that within what its producers bear. */
final class ReliefLines {
    private ReliefLines() {}

    static void write(Writing writing, Station station, Air air) {
        if (station.producers().stream().allMatch(VacuumProducer::standby)) {
            return;
        }
        station.relief()
                .flatMap(valve -> valve.standard().map(standard -> rated(valve, standard, air)))
                .ifPresent(step -> writing.known(
                        "relief-rated",
                        "Rated flow of the relief valve here",
                        step.result().value(),
                        List.of(step)));
        BlockedVacuum stuck = BlockedVacuum.stuck(station, air);
        if (station.relief().isPresent()) {
            BlockedVacuum relieved = BlockedVacuum.relieved(station, air);
            writing.known(
                    "blocked",
                    "Vacuum with the tubing blocked, relief valve at work" + note(relieved),
                    relieved.vacuum(),
                    relieved.steps());
            judge(writing, station, air.ambient(), relieved);
        }
        writing.known(
                "blocked-stuck",
                (station.relief().isPresent()
                                ? "The same with the relief valve stuck shut"
                                : "Vacuum with the tubing blocked, no relief valve")
                        + note(stuck),
                stuck.vacuum(),
                stuck.steps());
    }

    private static Step rated(ReliefValve valve, FreeAirFlow standard, Air air) {
        double full_Pa = valve.set().pascals() + valve.accumulation().pascals();
        return step(
                "VLV-3",
                "Q = Q_std w_nozzle(p_a, p_a − v)/w_nozzle(101 325 Pa, 101 325 Pa − v)",
                Source.ownReading("the same opening at both places, as an isentropic nozzle that may choke"),
                new Term("Q", "free air it admits fully open at this site", valve.rated()),
                new Term("Q_std", "rated flow, stated for standard air", standard),
                new Term("p_a", "site barometer", air.ambient()),
                new Term("v", "vacuum at which it is fully open", new PressureDifference(full_Pa)),
                new Term("ratio", "of the two nozzles", new Ratio(ReliefValve.ofStandard(full_Pa, air))));
    }

    private static String note(BlockedVacuum blocked) {
        return blocked.notMeasured().isPresent() ? ", beyond measured points" : "";
    }

    private static void judge(Writing writing, Station station, AbsolutePressure ambient, BlockedVacuum relieved) {
        station.producers().stream()
                .filter(producer -> !producer.standby())
                .min(Comparator.comparing(producer -> producer.vacuumLimit(ambient)))
                .ifPresent(tenderest -> BlockedVacuum.judge(
                        writing,
                        relieved.notMeasured(),
                        FindingCode.RELIEF_CAPACITY,
                        Place.Kind.RELIEF_VALVE,
                        new BlockedVacuum.Judged(
                                Side.AT_MOST,
                                relieved.vacuum(),
                                new Limit<>(tenderest.vacuumLimit(ambient), tenderest.sourceOf("deepest vacuum")),
                                relieved.steps())));
    }
}
