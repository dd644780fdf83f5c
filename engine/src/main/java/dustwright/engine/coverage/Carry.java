package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Zone;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * How many users a plant really carries, whoever they are: the greatest number up to which every set of so many inlets of an area holds, in
 * every condition, while the inlets of all other areas are shut.
 *
 * @param area id of a zone; empty for the whole plant with the limits of its zones
 * @param inlets inlets of the area
 * @param users greatest number that is shown to hold; 0 where one user is not
 * @param asked numbers asked: 1 up to this
 * @param stop why the next number does not hold or is not shown to; empty where all asked do
 */
public record Carry(String area, int inlets, int users, int asked, Optional<Answer> stop) {

    /**
     * The whole plant first, then every zone that has inlets, if there is more than one.
     *
     * @param upTo greatest number of users asked
     */
    public static List<Carry> of(Plant plant, List<State> conditions, int upTo, Judging judging, Effort effort) {
        List<Carry> carried = new ArrayList<>();
        carried.add(area(plant, "", Question.zonesOf(plant), conditions, upTo, judging, effort));
        List<String> zones = plant.inlets().stream()
                .map(Inlet::zone)
                .filter(zone -> !zone.isEmpty())
                .distinct()
                .sorted()
                .toList();
        for (String zone : zones.size() > 1 ? zones : List.<String>of()) {
            Map<String, Integer> alone = new TreeMap<>();
            zones.stream().filter(other -> !other.equals(zone)).forEach(other -> alone.put(other, 0));
            if (plant.inlets().stream().anyMatch(inlet -> inlet.zone().isEmpty())) {
                alone.put("", 0);
            }
            carried.add(area(plant, zone, alone, conditions, upTo, judging, effort));
        }
        return List.copyOf(carried);
    }

    private static Carry area(
            Plant plant,
            String zone,
            Map<String, Integer> atMost,
            List<State> conditions,
            int upTo,
            Judging judging,
            Effort effort) {
        int inlets = (int) plant.inlets().stream()
                .filter(inlet -> zone.isEmpty() || inlet.zone().equals(zone))
                .count();
        int asked = Math.min(upTo, inlets);
        List<Integer> users = IntStream.rangeClosed(1, asked).boxed().toList();
        Coverage coverage = Coverage.of(plant, new Question(users, atMost, conditions), judging, effort);
        int holds = 0;
        for (int n = 1; n <= asked; n++) {
            int number = n;
            Optional<Answer> stop = coverage.answers().stream()
                    .filter(answer -> answer.users() == number && answer.verdict() != Verdict.HOLDS)
                    .min(Comparator.comparing(answer -> answer.verdict() != Verdict.FAILS));
            if (stop.isPresent()) {
                return new Carry(zone, inlets, holds, asked, stop);
            }
            holds = n;
        }
        return new Carry(zone, inlets, holds, asked, Optional.empty());
    }

    /** How far it is shown, and by what the next number stands open. */
    public Users shown() {
        return Users.upTo(users, stop);
    }

    /** Name of the area for people. */
    public String words(Plant plant) {
        return area.isEmpty()
                ? "whole plant"
                : plant.usage().zones().stream()
                        .filter(zone -> zone.id().equals(area))
                        .map(Zone::name)
                        .findFirst()
                        .orElse(area);
    }
}
