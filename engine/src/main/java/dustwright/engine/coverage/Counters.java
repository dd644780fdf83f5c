package dustwright.engine.coverage;

import dustwright.engine.conveying.Dust;
import dustwright.engine.network.TubingTree;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is counted of the open inlets in a part of the plant: all of them, those of every zone with a limit that the part shares with
 * the rest, and whether there is one whose dust needs a certain velocity. Sets with equal counts are bounded together.
 *
 * <p>A count is an array: number of open inlets, numbers by zone, then 0 or 1 by dust level.
 */
final class Counters {
    final int most;
    final int zones;
    /** Least velocities asked by the dusts of the plant, lowest first [m/s]; empty where one level is everywhere. */
    final double[] level_mPerS;

    private final boolean anyDust;
    private final int[] limit;
    private final int[] zoneOfInlet;
    private final int[] levelOfInlet;
    private final int[] inletsOfZone;

    Counters(Plant plant, Map<String, Integer> limits, int most) {
        this.most = most;
        List<Inlet> inlets = plant.inlets();
        Map<String, Integer> members = new TreeMap<>();
        inlets.forEach(inlet -> members.merge(inlet.zone(), 1, Integer::sum));
        List<String> counted = new ArrayList<>();
        limits.forEach((zone, users) -> {
            if (members.getOrDefault(zone, 0) > users && users < most) {
                counted.add(zone);
            }
        });
        counted.sort(null);
        zones = counted.size();
        limit = counted.stream().mapToInt(limits::get).toArray();
        inletsOfZone = counted.stream().mapToInt(members::get).toArray();
        zoneOfInlet =
                inlets.stream().mapToInt(inlet -> counted.indexOf(inlet.zone())).toArray();
        double[] velocities = inlets.stream()
                .flatMap(inlet -> inlet.dust().stream())
                .map(plant::dust)
                .map(Dust::minimumVelocity)
                .mapToDouble(v -> v.metresPerSecond())
                .distinct()
                .sorted()
                .toArray();
        anyDust = velocities.length > 0;
        boolean everywhere = inlets.stream().allMatch(inlet -> inlet.dust().isPresent());
        level_mPerS = velocities.length == 1 && everywhere ? new double[0] : velocities;
        levelOfInlet = new int[inlets.size()];
        for (int n = 0; n < levelOfInlet.length; n++) {
            levelOfInlet[n] = inlets.get(n)
                    .dust()
                    .map(plant::dust)
                    .map(dust -> Arrays.binarySearch(
                            level_mPerS, dust.minimumVelocity().metresPerSecond()))
                    .orElse(-1);
        }
    }

    int length() {
        return 1 + zones + level_mPerS.length;
    }

    int[] none() {
        return new int[length()];
    }

    int[] one(int inlet) {
        int[] count = none();
        count[0] = 1;
        if (zoneOfInlet[inlet] >= 0) {
            count[1 + zoneOfInlet[inlet]] = 1;
        }
        if (level_mPerS.length > 0 && levelOfInlet[inlet] >= 0) {
            count[1 + zones + levelOfInlet[inlet]] = 1;
        }
        return count;
    }

    /** Whether any dust is among the open inlets. */
    boolean dusty(int[] count) {
        boolean any = level_mPerS.length == 0 && anyDust && count[0] > 0;
        for (int level = 0; level < level_mPerS.length; level++) {
            any |= has(count, level);
        }
        return any;
    }

    /** Whether a dust of this level is among the open inlets. */
    boolean has(int[] count, int level) {
        return count[1 + zones + level] == 1;
    }

    /** The two together, or an empty array where they are more than is allowed. */
    int[] sum(int[] one, int[] other) {
        int[] sum = new int[length()];
        for (int n = 0; n < sum.length; n++) {
            sum[n] = n <= zones ? one[n] + other[n] : Math.max(one[n], other[n]);
            if (n == 0 ? sum[n] > most : n <= zones && sum[n] > limit[n - 1]) {
                return new int[0];
            }
        }
        return sum;
    }

    /** Whether the two parts of the plant may be in use together, with so many users in all. */
    boolean together(int[] one, int[] other, int users) {
        if (one[0] + other[0] != users) {
            return false;
        }
        for (int z = 0; z < zones; z++) {
            if (one[1 + z] + other[1 + z] > limit[z]) {
                return false;
            }
        }
        return true;
    }

    /** Number of inlets of every zone below a node, itself included. */
    int[] zonesBelow(TubingTree tree, int node) {
        int[] below = new int[zones];
        List<Integer> open = new ArrayList<>(List.of(node));
        while (!open.isEmpty()) {
            int here = open.remove(open.size() - 1);
            int inlet = tree.inlet(here);
            if (inlet != TubingTree.NONE && zoneOfInlet[inlet] >= 0) {
                below[zoneOfInlet[inlet]]++;
            }
            for (int child : tree.children(here)) {
                open.add(child);
            }
        }
        return below;
    }

    /** A zone that lies wholly within the part needs no count any more. */
    int[] inside(int[] count, int[] zonesBelow) {
        int[] kept = count.clone();
        for (int z = 0; z < zones; z++) {
            kept[1 + z] = zonesBelow[z] == inletsOfZone[z] ? 0 : count[1 + z];
        }
        return kept;
    }

    /** Seen from outside a part, a zone with no inlet in the part needs no count, and dust elsewhere does not matter. */
    int[] outside(int[] count, int[] zonesBelow) {
        int[] kept = none();
        kept[0] = count[0];
        for (int z = 0; z < zones; z++) {
            kept[1 + z] = zonesBelow[z] == 0 ? 0 : count[1 + z];
        }
        return kept;
    }
}
