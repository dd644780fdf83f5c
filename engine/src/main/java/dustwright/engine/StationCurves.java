package dustwright.engine;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The curves of a station in a set of its own: a producer is bought for the sets in which people vacuum at its station, not for the set
 * that is worst somewhere else.
 *
 * @param users how many of the open inlets lead to the station, each by the way of its largest flow
 */
public record StationCurves(int users, OperatingChart chart) {
    /** A solved state and how many in it are on at a station. */
    private record Own(int users, StateAnswer answer) {}

    /**
     * For each station the worst of the states with the most users on it, then the worst of those with one, where these are others; where
     * nobody is on it in any state, the worst of all.
     */
    public static List<StationCurves> of(Plant plant, List<StateAnswer> answers) {
        List<StationCurves> curves = new ArrayList<>();
        for (Station station : plant.stations()) {
            List<Own> solved = answers.stream()
                    .flatMap(answer -> own(answer, station.id()))
                    .toList();
            int most = solved.stream().mapToInt(Own::users).max().orElse(0);
            Stream.of(most, Math.min(1, most))
                    .distinct()
                    .flatMap(users -> solved.stream()
                            .filter(own -> own.users() == users)
                            .min(Comparator.comparingDouble(own -> own.answer().leastMargin()))
                            .stream())
                    .flatMap(own -> OperatingChart.of(plant, own.answer(), station.id()).stream()
                            .map(chart -> new StationCurves(own.users(), chart)))
                    .forEach(curves::add);
        }
        return curves;
    }

    private static Stream<Own> own(StateAnswer answer, String station) {
        return answer.duty()
                .match(duty -> Stream.of(new Own(users(duty, station), answer)), why -> Stream.<Own>empty());
    }

    private static int users(DutyPoint duty, String station) {
        return (int) duty.state().open().stream()
                .filter(inlet -> leadsTo(FlowPath.downstream(duty, inlet), station))
                .count();
    }

    private static boolean leadsTo(List<LegResult> path, String station) {
        return !path.isEmpty()
                && FlowPath.downstreamEnd(path.get(path.size() - 1)).equals(station);
    }
}
