package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How many users a plant carries with another machine in the place of every producer in service: the greatest number up to which every set
 * holds, each number asked only while the one before holds.
 *
 * @param producer of the catalogue, at the speed it states
 * @param users greatest number that is shown to hold; 0 where one user is not
 * @param asked greatest number asked
 * @param stop why the next number does not hold or is not shown to; empty where all asked do
 */
public record CarryBySize(VacuumProducer producer, int users, int asked, Optional<Answer> stop) {
    /**
     * Every machine that is of a kind the plant has in service, smallest motor first.
     *
     * @param upTo greatest number of users asked
     */
    public static List<CarryBySize> of(
            Plant plant,
            List<VacuumProducer> catalogue,
            List<State> conditions,
            int upTo,
            Judgings judgings,
            Effort effort) {
        List<String> kinds = plant.stations().stream()
                .flatMap(s -> s.producers().stream())
                .filter(p -> !p.standby())
                .map(p -> p.machine().kind())
                .distinct()
                .toList();
        List<CarryBySize> carried = new ArrayList<>();
        catalogue.stream()
                .filter(p -> kinds.contains(p.machine().kind()))
                .sorted(Comparator.comparing(VacuumProducer::nameplate).thenComparing(VacuumProducer::id))
                .forEach(p -> carried.add(of(with(plant, p), p, conditions, upTo, judgings, effort)));
        return List.copyOf(carried);
    }

    /** How far it is shown, and by what the next number stands open. */
    public Users shown() {
        return Users.upTo(users, stop);
    }

    private static CarryBySize of(
            Plant changed,
            VacuumProducer producer,
            List<State> conditions,
            int upTo,
            Judgings judgings,
            Effort effort) {
        int asked = Math.min(upTo, changed.inlets().size());
        for (int n = 1; n <= asked; n++) {
            Question question = new Question(List.of(n), Question.zonesOf(changed), conditions);
            Optional<Answer> stop = Coverage.of(changed, question, judgings.of(changed), effort).answers().stream()
                    .filter(answer -> answer.verdict() != Verdict.HOLDS)
                    .min(Comparator.comparing(answer -> answer.verdict() != Verdict.FAILS));
            if (stop.isPresent()) {
                return new CarryBySize(producer, n - 1, asked, stop);
            }
        }
        return new CarryBySize(producer, asked, asked, Optional.empty());
    }

    private static Plant with(Plant plant, VacuumProducer machine) {
        Plant changed = plant;
        for (Station station : plant.stations()) {
            List<VacuumProducer> producers = station.producers().stream()
                    .map(p -> p.standby() ? p : machine.inPlaceOf(p))
                    .toList();
            changed = changed.withStation(station.withProducers(producers, station.relief()));
        }
        return changed;
    }
}
