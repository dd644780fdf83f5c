package dustwright.engine.sheet;

import dustwright.engine.air.Air;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import java.util.Comparator;

/** How deep a station goes with its tubing blocked, and whether its relief valve keeps that within what its producers bear. */
final class ReliefLines {
    private ReliefLines() {}

    static void write(Writing writing, Station station, Air air) {
        if (station.producers().stream().allMatch(VacuumProducer::standby)) {
            return;
        }
        BlockedVacuum stuck = BlockedVacuum.stuck(station, air);
        if (station.relief().isPresent()) {
            BlockedVacuum relieved = BlockedVacuum.relieved(station, air);
            writing.known(
                    "blocked",
                    "Vacuum with the tubing blocked, relief valve at work",
                    relieved.vacuum(),
                    relieved.steps());
            judge(writing, station, air.ambient(), relieved);
        }
        writing.known(
                "blocked-stuck",
                station.relief().isPresent()
                        ? "The same with the relief valve stuck shut"
                        : "Vacuum with the tubing blocked, no relief valve",
                stuck.vacuum(),
                stuck.steps());
    }

    private static void judge(Writing writing, Station station, AbsolutePressure ambient, BlockedVacuum relieved) {
        station.producers().stream()
                .filter(producer -> !producer.standby())
                .min(Comparator.comparing(producer -> producer.vacuumLimit(ambient)))
                .ifPresent(tenderest -> writing.asked(
                        FindingCode.RELIEF_CAPACITY,
                        Place.Kind.RELIEF_VALVE,
                        Sheet.ANY_SET,
                        Side.AT_MOST,
                        relieved.vacuum(),
                        new Limit<>(tenderest.vacuumLimit(ambient), tenderest.sourceOf("deepest vacuum")),
                        relieved.steps()));
    }
}
