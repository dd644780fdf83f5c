package dustwright.engine.sheet;

import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import java.util.Optional;

/**
 * Time of a station's cleaning in a mean week: users vacuum, or wait while a container is changed or the receiver stands at its high level.
 *
 * @param vacuuming_s users vacuum, as if at their full rate [s]
 * @param waiting_s users wait with their inlets shut, and the producers turn on [s]; 0 where the week's dust is not known
 */
record CleaningHours(double vacuuming_s, double waiting_s) {
    /** Empty where no shifts are stated, or what is picked up has no rate. */
    static Optional<CleaningHours> ofWeek(Plant plant, StationDust load, Optional<DustWeek> week) {
        return week.map(DustWeek::flow)
                .map(flow -> new CleaningHours(flow.vacuumed_s() / flow.weeks(), flow.waited_s() / flow.weeks()))
                .or(() -> plant.operation().shifts().flatMap(shifts -> ifNobodyWaits(shifts, load)));
    }

    private static Optional<CleaningHours> ifNobodyWaits(Shifts shifts, StationDust load) {
        Optional<Double> each_s = shifts.cleaning() instanceof Shifts.Cleaning.Minutes minutes
                ? Optional.of(minutes.each().seconds())
                : load.cleaning_s();
        return each_s.map(time_s -> new CleaningHours(
                shifts.perWeek() * Math.min(time_s, shifts.length().seconds()), 0));
    }
}
