package dustwright.engine.sheet;

import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.ElectricalEnergy;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.WorkingTime;
import dustwright.engine.rotaryvalve.RotaryValve;
import java.util.List;
import java.util.Optional;

/** Electrical energy of the motor that turns a station's rotary valve, over a year. */
final class ValveEnergy {
    private static final Source NAMEPLATE = Source.ownReading(
            "its motor taken at nameplate power, losses left out, all the time the producers of its station turn");

    private ValveEnergy() {}

    /** The step to it, or why it is not known; empty where no rotary valve turns. */
    static Optional<Outcome<List<Step>>> ofYear(Plant plant, Station station, DustWays ways, List<DustWeek> weeks) {
        return station.rotaryValve().map(valve -> ofYear(valve, StationEnergy.turning(plant, station, ways, weeks)));
    }

    private static Outcome<List<Step>> ofYear(RotaryValve valve, Optional<WorkingTime> turning) {
        if (valve.build().motor().isEmpty()) {
            return new Outcome.NotSolved<>("Enter \"motor\" of the rotary valve.");
        }
        if (turning.isEmpty()) {
            return new Outcome.NotSolved<>(StationEnergy.NO_HOURS);
        }
        Power motor = valve.build().motor().get();
        WorkingTime hours = turning.get();
        return new Outcome.Solved<>(List.of(Writing.step(
                "CST-30",
                "E = P h",
                NAMEPLATE,
                new Term(
                        "E",
                        "energy of the rotary valve in a year",
                        new ElectricalEnergy(motor.watts() * hours.seconds())),
                new Term("P", "nameplate of its motor", motor),
                new Term("h", "hours of a year in which the producers turn", hours))));
    }
}
