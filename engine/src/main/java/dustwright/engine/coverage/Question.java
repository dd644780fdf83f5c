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

    /** Number of sets of inlets with so many users that the zones allow. */
    public BigInteger sets(Plant plant, int count) {
        Map<String, Integer> members = new TreeMap<>();
        plant.inlets().forEach(inlet -> members.merge(inlet.zone(), 1, Integer::sum));
        BigInteger[] ways = new BigInteger[count + 1];
        java.util.Arrays.fill(ways, BigInteger.ZERO);
        ways[0] = BigInteger.ONE;
        for (Map.Entry<String, Integer> zone : members.entrySet()) {
            int most = atMost.getOrDefault(zone.getKey(), zone.getValue());
            for (int total = count; total >= 0; total--) {
                BigInteger sum = BigInteger.ZERO;
                for (int here = 0; here <= Math.min(Math.min(most, zone.getValue()), total); here++) {
                    sum = sum.add(ways[total - here].multiply(choose(zone.getValue(), here)));
                }
                ways[total] = sum;
            }
        }
        return ways[count];
    }

    private static BigInteger choose(int from, int count) {
        BigInteger ways = BigInteger.ONE;
        for (int n = 0; n < count; n++) {
            ways = ways.multiply(BigInteger.valueOf(from - n)).divide(BigInteger.valueOf(n + 1L));
        }
        return ways;
    }
}
