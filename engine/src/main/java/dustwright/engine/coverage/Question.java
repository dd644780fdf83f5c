package dustwright.engine.coverage;

import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is asked: whichever of the inlets are open, so many at once, does every requirement hold?
 *
 * @param users numbers of inlets open at once, each asked by itself
 * @param atMost greatest number of users by zone; zones not named have no limit of their own
 * @param conditions filter, valves, producers and who picks up dust, each asked by itself; what they say of open inlets does not matter
 */
public record Question(List<Integer> users, Map<String, Integer> atMost, List<State> conditions) {
    public Question {
        users = users.stream().sorted().distinct().toList();
        atMost = java.util.Collections.unmodifiableMap(new TreeMap<>(atMost));
        conditions = List.copyOf(conditions);
        if (users.isEmpty() || users.get(0) < 1) {
            throw new IllegalArgumentException("ask for one user at least");
        }
    }

    /** Limits of the plant's zones, as its file states them. */
    public static Map<String, Integer> zonesOf(Plant plant) {
        Map<String, Integer> limits = new TreeMap<>();
        plant.usage().zones().forEach(zone -> zone.users().ifPresent(users -> limits.put(zone.id(), users)));
        return limits;
    }

    /** Whether the limits of zones allow a set, whatever its number of users. */
    public boolean allowsZones(Plant plant, List<String> open) {
        Map<String, Integer> byZone = new TreeMap<>();
        open.forEach(id -> byZone.merge(plant.inlet(id).zone(), 1, Integer::sum));
        return byZone.entrySet().stream()
                .allMatch(e -> e.getValue() <= atMost.getOrDefault(e.getKey(), Integer.MAX_VALUE));
    }

    /** Number of sets of inlets with so many users that the zones allow. */
    public BigInteger sets(Plant plant, int count) {
        return Box.all(plant).sets(plant, atMost, count);
    }
}
