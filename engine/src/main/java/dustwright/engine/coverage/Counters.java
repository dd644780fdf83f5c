package dustwright.engine.coverage;

import dustwright.engine.conveying.Dust;
import dustwright.engine.network.TubingTree;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * What is counted of the open inlets in a part of the plant: all of them, those of every zone with a limit that the part shares with
 * the rest, and whether there is one whose dust needs a certain velocity; where dust is picked up and slows the air, instead those of
 * every feed (inlets that feed the same of the same dust). Sets with equal counts are bounded together.
 *
 * <p>A count is an array: number of open inlets, numbers by zone, then 0 or 1 by dust level, or numbers by feed.
 */
final class Counters {
    final int most;
    final int zones;
    /** Least velocities asked by the dusts of the plant, lowest first [m/s]; empty where one level is everywhere. */
    final double[] level_mPerS;

    /** Feeds told apart; 0 where nothing is picked up. */
    final int feeds;

    private final boolean anyDust;
    private final int levelBits;
    private final int dusts;
    private final int[] feedOfInlet;
    private final List<Feed> feed;
    private final int[] limit;
    private final int[] zoneOfInlet;
    private final int[] levelOfInlet;
    private final int[] inletsOfZone;

    /**
     * What some inlets pick up alike.
     *
     * @param dust number of the dust in the plant, or -1 where nothing is picked up
     * @param level number of the dust's level, or -1
     */
    private record Feed(int dust, double feed_kgPerS, int level) {}

    /**
     * Counts for a plant.
     *
     * @param feeding ids of the inlets whose users pick up dust that counts, where they are open
     */
    Counters(Plant plant, Map<String, Integer> limits, int most, Set<String> feeding, Box box) {
        this.most = most;
        dusts = plant.dusts().size();
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
        feedOfInlet = new int[inlets.size()];
        feed = feeding.isEmpty() ? List.of() : feedsOf(plant, feeding, box);
        feeds = feed.size();
        levelBits = feeds == 0 ? level_mPerS.length : 0;
    }

    /** Feeds in the order of the plant file. */
    private List<Feed> feedsOf(Plant plant, Set<String> feeding, Box box) {
        List<String> ids = plant.dusts().stream().map(Dust::id).toList();
        List<Feed> found = new ArrayList<>();
        for (int n = 0; n < feedOfInlet.length; n++) {
            Inlet inlet = plant.inlets().get(n);
            if (!box.mayOpen(n)) {
                continue;
            }
            boolean feedsHere = feeding.contains(inlet.id());
            int dust = feedsHere ? inlet.dust().map(ids::indexOf).orElse(-1) : -1;
            Feed own = new Feed(dust, dust < 0 ? 0 : inlet.feed().kgPerSecond(), levelOfInlet[n]);
            if (!found.contains(own)) {
                found.add(own);
            }
            feedOfInlet[n] = found.indexOf(own);
        }
        return List.copyOf(found);
    }

    /** Ways of feeding among inlets that are open in some sets and shut in others: only these make further counts. */
    int freeFeeds(Box box) {
        return (int) IntStream.range(0, feedOfInlet.length)
                .filter(n -> feeds > 0 && box.free(n))
                .map(n -> feedOfInlet[n])
                .distinct()
                .count();
    }

    /** An inlet that feeds as the fewest others do, of those that are free; where feeds are counted. */
    int rarestFeed(Box box) {
        int rarest = -1;
        long fewest = Long.MAX_VALUE;
        for (int n = 0; n < feedOfInlet.length; n++) {
            int own = feedOfInlet[n];
            long alike = IntStream.range(0, feedOfInlet.length)
                    .filter(other -> box.free(other) && feedOfInlet[other] == own)
                    .count();
            if (box.free(n) && alike < fewest) {
                rarest = n;
                fewest = alike;
            }
        }
        return rarest;
    }

    int length() {
        return 1 + zones + levelBits + feeds;
    }

    /** Dust picked up by all inlets counted, by dust of the plant [kg/s]. */
    double[] load_kgPerS(int[] count) {
        double[] load = new double[dusts];
        for (int f = 0; f < feeds; f++) {
            if (feed.get(f).dust >= 0) {
                load[feed.get(f).dust] += count[1 + zones + f] * feed.get(f).feed_kgPerS;
            }
        }
        return load;
    }

    /** Whether both count the same numbers by feed. */
    boolean sameFeeds(int[] one, int[] other) {
        return feeds == 0 || Arrays.equals(one, 1 + zones, length(), other, 1 + zones, length());
    }

    /** A count with the numbers by feed of another one. */
    int[] withFeeds(int[] count, int[] of) {
        int[] with = count.clone();
        System.arraycopy(of, 1 + zones, with, 1 + zones, feeds);
        return with;
    }

    /** Numbers by feed of a part without those of some of it; an empty array where there are fewer. */
    int[] withoutFeeds(int[] count, int[] some) {
        int[] left = count.clone();
        for (int n = 1 + zones; n < length() && feeds > 0; n++) {
            left[n] -= some[n];
            if (left[n] < 0) {
                return new int[0];
            }
        }
        return left;
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
        if (feeds > 0) {
            count[1 + zones + feedOfInlet[inlet]] = 1;
        } else if (level_mPerS.length > 0 && levelOfInlet[inlet] >= 0) {
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
        if (feeds == 0) {
            return count[1 + zones + level] == 1;
        }
        boolean any = false;
        for (int f = 0; f < feeds; f++) {
            any |= count[1 + zones + f] > 0 && feed.get(f).level == level;
        }
        return any;
    }

    /** The two together, or an empty array where they are more than is allowed. */
    int[] sum(int[] one, int[] other) {
        int[] sum = new int[length()];
        for (int n = 0; n < sum.length; n++) {
            sum[n] = n <= zones || feeds > 0 ? one[n] + other[n] : Math.max(one[n], other[n]);
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
