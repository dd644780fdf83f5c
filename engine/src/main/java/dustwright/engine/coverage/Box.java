package dustwright.engine.coverage;

import dustwright.engine.plant.Plant;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * Some of the sets of open inlets: those in which certain inlets are open and certain others shut. All sets are the box in which nothing is
 * fixed; a box is split in two by an inlet that is free, open in one half and shut in the other (decision record 61).
 */
final class Box {
    private static final byte FREE = 0;
    private static final byte OPEN = 1;
    private static final byte SHUT = 2;

    private final byte[] fixed;

    private Box(byte[] fixed) {
        this.fixed = fixed;
    }

    /** All sets. */
    static Box all(Plant plant) {
        return new Box(new byte[plant.inlets().size()]);
    }

    /** The half in which an inlet is open, or that in which it is shut. */
    Box with(int inlet, boolean open) {
        byte[] further = fixed.clone();
        further[inlet] = open ? OPEN : SHUT;
        return new Box(further);
    }

    boolean mayOpen(int inlet) {
        return fixed[inlet] != SHUT;
    }

    boolean mayShut(int inlet) {
        return fixed[inlet] != OPEN;
    }

    boolean free(int inlet) {
        return fixed[inlet] == FREE;
    }

    /** Number of sets with so many users that the zones allow. */
    BigInteger sets(Plant plant, Map<String, Integer> atMost, int users) {
        Map<String, int[]> zones = new TreeMap<>();
        for (int n = 0; n < fixed.length; n++) {
            zones.computeIfAbsent(plant.inlets().get(n).zone(), z -> new int[3])[fixed[n]]++;
        }
        BigInteger[] ways = new BigInteger[users + 1];
        Arrays.fill(ways, BigInteger.ZERO);
        ways[0] = BigInteger.ONE;
        for (Map.Entry<String, int[]> zone : zones.entrySet()) {
            int open = zone.getValue()[OPEN];
            int free = zone.getValue()[FREE];
            int most = Math.min(atMost.getOrDefault(zone.getKey(), open + free), open + free);
            for (int total = users; total >= 0; total--) {
                BigInteger sum = BigInteger.ZERO;
                for (int here = open; here <= Math.min(most, total); here++) {
                    sum = sum.add(ways[total - here].multiply(choose(free, here - open)));
                }
                ways[total] = sum;
            }
        }
        return ways[users];
    }

    private static BigInteger choose(int from, int count) {
        BigInteger ways = BigInteger.ONE;
        for (int n = 0; n < count; n++) {
            ways = ways.multiply(BigInteger.valueOf(from - n)).divide(BigInteger.valueOf(n + 1L));
        }
        return ways;
    }
}
