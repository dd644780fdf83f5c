package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.discharge.WorkWeek;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Frequency;
import dustwright.engine.quantity.Mass;
import java.util.List;
import java.util.Optional;

/**
 * Containers that a level probe lets fill above their safe working load: how often they are changed when none is. The week and its cost are
 * reckoned as the container is filled, and so too kindly.
 *
 * @param changesPerWeek to the safe working load
 */
record Overload(double changesPerWeek, List<Step> steps) {
    private static final Source MASS_BALANCE = Source.published("mass balance");

    /** Empty where no container is filled above it, or it is not stated. */
    static Optional<Overload> of(Station station, DustWeek week) {
        Mass filled = new Mass(week.line().container_kg());
        return station.container()
                .flatMap(container -> container.safeWorkingLoad())
                .filter(load -> filled.compareTo(load) > 0)
                .map(load -> {
                    double changes = week.changesPerWeek() * filled.kilograms() / load.kilograms();
                    return new Overload(
                            changes,
                            List.of(step(
                                    "DIS-6",
                                    "N_SWL = N m / SWL",
                                    MASS_BALANCE,
                                    new Term(
                                            "N_SWL",
                                            "changes a week, none filled above its safe working load",
                                            frequency(changes)),
                                    new Term("N", "changes as it is filled", frequency(week.changesPerWeek())),
                                    new Term("m", "dust a container takes to the level probe (BAG-4)", filled),
                                    new Term("SWL", "safe working load", load))));
                });
    }

    static Frequency frequency(double perWeek) {
        return new Frequency(perWeek / WorkWeek.WEEK_s);
    }
}
