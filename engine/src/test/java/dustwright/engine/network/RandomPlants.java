package dustwright.engine.network;

import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Area;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Tool;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;

/** Invented plants and states drawn from a seed: trees and loops, some with everything that makes a solver stumble. */
public final class RandomPlants {
    private static final double[] BORES_m = {0.0348, 0.0475, 0.0602, 0.0729, 0.0983, 0.1492};

    private static final List<FilterCondition> FILTER_CONDITIONS =
            List.of(FilterCondition.CLEAN, FilterCondition.NORMAL, FilterCondition.DIRTY);

    private final SplittableRandom random;
    private final PlantSketch sketch = new PlantSketch();
    private final List<String> joins = new ArrayList<>();
    private final List<String> inlets = new ArrayList<>();
    private final boolean wyes;
    private boolean second;
    private int runs;

    /** A plant with one of its states. */
    public record Case(Plant plant, State state) {}

    private RandomPlants(long seed, boolean wyes) {
        this.random = new SplittableRandom(seed);
        this.wyes = wyes;
    }

    /** A tree of about {@code legs} legs ending at one station. */
    public static Case tree(long seed, int legs) {
        return new RandomPlants(seed, false).draw(legs, 0, true);
    }

    /** A plant with loops; about a quarter of the legs beyond a tree's are chords. */
    public static Case loops(long seed, int legs) {
        return new RandomPlants(seed, false).draw(legs, Math.max(1, legs / 12), true);
    }

    /** A tree whose branches join at stated angles, so that junction losses depend on the split. */
    public static Case wyes(long seed, int legs) {
        return new RandomPlants(seed, true).draw(legs, 0, true);
    }

    /** The same with loops. */
    public static Case wyesInLoops(long seed, int legs) {
        return new RandomPlants(seed, true).draw(legs, Math.max(1, legs / 12), true);
    }

    /** Two stations on one looped network, wyes, a held pressure, a supply and a draw. */
    public static Case anything(long seed, int legs) {
        RandomPlants plants = new RandomPlants(seed, true);
        plants.joins.add("REC2");
        plants.second = true;
        return plants.draw(legs, Math.max(2, legs / 8), true);
    }

    /** Air only, K ≥ 0, no valves or drives with kinks: the network is monotone. */
    public static Case plain(long seed, int legs, boolean loops) {
        return new RandomPlants(seed, false).draw(legs, loops ? Math.max(1, legs / 12) : 0, false);
    }

    private Case draw(int legs, int chords, boolean extras) {
        for (double bore_m : BORES_m) {
            sketch.tube(tube(bore_m), bore_m, 4.5e-5);
        }
        sketch.tool("opening", new Tool.Law.Opening(new Area(4e-4), 0.62));
        joins.add("REC");
        inlet("REC", extras, 8e-9);
        while (runs < legs - chords) {
            grow(extras);
        }
        for (int n = 0; n < chords; n++) {
            chord();
        }
        station("REC", "P", extras);
        if (second) {
            inlet("REC2", true, 8e-9);
            station("REC2", "Q", true);
            boundaries();
        }
        Plant plant = sketch.plant();
        return new Case(plant, state(plant, extras));
    }

    private void grow(boolean extras) {
        String to = joins.get(random.nextInt(joins.size()));
        if (random.nextInt(10) < 4 || joins.size() < 2) {
            String join = "J" + runs;
            joins.add(join);
            sketch.points(join);
            run("R" + runs++, join, to, BORES_m[random.nextInt(2, BORES_m.length)]);
        } else {
            inlet(to, extras, random.nextInt(10) == 0 ? 0 : random.nextDouble(1e-9, 2e-8));
        }
    }

    /** An inlet with its run; two legs. */
    private void inlet(String to, boolean extras, double leak) {
        String inlet = "A" + runs;
        inlets.add(inlet);
        String tool = extras && random.nextInt(5) == 0 ? "opening" : "floor";
        sketch.inlet(inlet, "H", tool, leak);
        run("R" + runs, inlet, to, BORES_m[random.nextInt(0, 3)]);
        runs += 2;
    }

    private void run(String id, String from, String to, double bore_m) {
        boolean device = random.nextInt(12) == 0;
        double length_m = device ? 0 : random.nextDouble(0.3, 30);
        double k = random.nextDouble(device ? 0.2 : 0, 3);
        if (wyes && !to.equals("REC") && random.nextBoolean()) {
            double[] degrees = {30, 45, 60, 90};
            sketch.branch(id, from, to, tube(bore_m), length_m, k, degrees[random.nextInt(4)]);
        } else {
            sketch.run(id, from, to, tube(bore_m), length_m, k);
        }
    }

    private void chord() {
        String from = joins.get(random.nextInt(joins.size()));
        String to = joins.get(random.nextInt(joins.size()));
        if (!from.equals(to)) {
            run("R" + runs++, from, to, BORES_m[random.nextInt(2, BORES_m.length)]);
        }
    }

    private void boundaries() {
        sketch.tube("TX", 0.05, 4.5e-5).points("X1", "X2", "X3");
        sketch.run("RX1", "X1", joins.get(random.nextInt(joins.size())), "TX", random.nextDouble(1, 20), 1);
        sketch.run("RX2", "X2", joins.get(random.nextInt(joins.size())), "TX", random.nextDouble(1, 20), 1);
        sketch.run("RX3", joins.get(random.nextInt(joins.size())), "X3", "TX", random.nextDouble(1, 20), 1);
        if (random.nextBoolean()) {
            sketch.holdPressure("X1", random.nextDouble(60_000, 103_000));
        }
        sketch.supply("X2", random.nextDouble(0, 0.08)).supply("X3", random.nextDouble(-3e-4, 0));
    }

    private void station(String id, String producers, boolean extras) {
        PlantSketch.StationSketch station = sketch.station(id);
        double displacement_m3PerS = random.nextDouble(0.02, 0.5);
        if (!extras) {
            station.lobe(producers + "1", displacement_m3PerS);
            return;
        }
        if (random.nextBoolean()) {
            double set_inHg = random.nextDouble(2, 10);
            station.relief(set_inHg, set_inHg + random.nextDouble(0.5, 3), displacement_m3PerS);
        }
        if (random.nextInt(3) == 0) {
            station.rotaryValve();
        }
        if (random.nextInt(3) == 0) {
            station.safetyFilter(500, displacement_m3PerS);
        }
        if (random.nextInt(3) == 0) {
            station.silencer(2000, displacement_m3PerS);
        }
        if (random.nextInt(4) == 0) {
            station.vent(random.nextDouble(0.01, 0.08));
        }
        if (random.nextInt(4) == 0) {
            station.holdingLobe(producers + "1", displacement_m3PerS, random.nextDouble(3, 9));
        } else {
            station.lobe(producers + "1", displacement_m3PerS);
        }
        if (random.nextInt(4) == 0) {
            if (random.nextBoolean()) {
                station.holdingLobe(producers + "2", displacement_m3PerS, random.nextDouble(3, 9));
            } else {
                station.lobe(producers + "2", random.nextDouble(0.01, displacement_m3PerS));
            }
        }
        sketch.bleed("B" + id, joins.get(random.nextInt(joins.size())), random.nextDouble(1e-5, 5e-4));
    }

    private State state(Plant plant, boolean extras) {
        List<String> order = new ArrayList<>(inlets);
        Collections.shuffle(order, new Random(random.nextLong()));
        int users = order.isEmpty() ? 0 : random.nextInt(Math.min(order.size(), 8) + 1);
        List<String> open = order.subList(0, users);
        Set<String> bleeds = extras && random.nextInt(4) == 0 ? Set.of("BREC") : Set.of();
        boolean vented = extras && plant.stations().get(0).vent().isPresent() && random.nextBoolean();
        Set<String> running = new LinkedHashSet<>();
        plant.stations().forEach(s -> s.producers().forEach(p -> running.add(p.id())));
        return new State(
                "seeded",
                open,
                FILTER_CONDITIONS.get(random.nextInt(3)),
                bleeds,
                vented ? Set.of("REC") : Set.of(),
                running);
    }

    private static String tube(double bore_m) {
        return "T" + Math.round(bore_m * 1e4);
    }
}
