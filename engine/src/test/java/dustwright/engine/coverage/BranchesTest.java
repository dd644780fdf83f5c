package dustwright.engine.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dustwright.engine.Study;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.network.DustyPlants;
import dustwright.engine.network.Network;
import dustwright.engine.network.RandomPlants;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Inlet;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Boxes of sets against going through every set. */
class BranchesTest {
    private static final double MARGIN = 1e-9;
    private static final int MOST_INLETS = 12;

    private int boxes;
    private int plants;

    @Test
    void boxes_of_sets_of_plants_that_feed_in_many_ways_find_what_every_set_shows() {
        for (int seed = 0; seed < 40; seed++) {
            Plant drawn = (seed % 2 == 0
                            ? RandomPlants.tree(seed, 14 + seed % 17)
                            : RandomPlants.wyes(seed, 14 + seed % 17))
                    .plant();
            Plant plant = AskedPlants.askedOfDust(DustyPlants.fedAlike(drawn, seed, 5 + seed % 4, 0.3));
            State condition = AskedPlants.condition(plant, FilterCondition.DIRTY, seed % 5 == 0)
                    .withFeeding(plant.inlets().stream().map(Inlet::id).collect(Collectors.toSet()));
            compare(seed, plant, condition, 2 + seed % 2);
        }
        assertTrue(plants > 20, "plants " + plants);
        assertTrue(boxes > 3 * plants, "boxes " + boxes + " of " + plants);
    }

    @Test
    void drives_that_hold_a_vacuum_are_no_obstacle() {
        int shown = 0;
        for (int seed = 0; seed < 60; seed++) {
            Plant drawn =
                    AskedPlants.asked(RandomPlants.wyes(seed, 14 + seed % 17).plant(), seed);
            Plant plant = holding(drawn, 6_000 + 1_000 * (seed % 12));
            State condition = AskedPlants.condition(plant, FilterCondition.DIRTY, false);
            compare(seed, plant, condition, 1 + seed % 3);
            if (plant.inlets().size() <= MOST_INLETS) {
                Question question = new Question(List.of(1 + seed % 3), Question.zonesOf(plant), List.of(condition));
                Coverage coverage = Coverage.of(
                        plant,
                        question,
                        duty -> Study.judge(plant, duty),
                        Effort.alone().byBounds());
                shown += coverage.answers().get(0).method() == Answer.Method.ENVELOPES ? 1 : 0;
            }
        }
        assertTrue(plants > 30, "plants " + plants);
        assertTrue(shown > 15, "by envelopes " + shown + " of " + plants);
    }

    private static Plant holding(Plant plant, double vacuum_Pa) {
        Plant changed = plant;
        for (Station station : plant.stations()) {
            List<VacuumProducer> producers = new ArrayList<>();
            for (VacuumProducer producer : station.producers()) {
                RotationalSpeed most = producer.drive() instanceof Drive.Holding held
                        ? held.greatest()
                        : ((Drive.Fixed) producer.drive()).speed();
                producers.add(producer.withDrive(new Drive.Holding(
                        RotationalSpeed.ofRpm(0.6 * most.rpm()), most, new PressureDifference(vacuum_Pa))));
            }
            changed = changed.withStation(station.withProducers(producers, station.relief()));
        }
        return changed;
    }

    private void compare(int seed, Plant plant, State condition, int users) {
        if (plant.inlets().size() > MOST_INLETS || plant.inlets().size() < users) {
            return;
        }
        Question question = new Question(List.of(users), Question.zonesOf(plant), List.of(condition));
        Network network = Network.compile(plant);
        Watch watch = new Watch(() -> false, share -> {});
        Judging judging = duty -> Study.judge(plant, duty);
        Optional<Branches.Found> found = new Branches(
                        plant, network, question, condition, users, judging, Effort.alone(), watch, 4, 4000)
                .find();
        if (found.isEmpty()) {
            return; // a ring, or nothing between the receiver and a pressure that is held
        }
        plants++;
        boxes += found.get().boxes();
        EverySet every = new EverySet(plant, question, users, Box.all(plant));
        assertEquals(BigInteger.valueOf(every.size()), question.sets(plant, users));
        Tally tally = new ExactStates(plant, network, condition, judging, watch).solve(every, 1);
        String where = "seed " + seed + ", " + users + " users, " + found.get().boxes() + " boxes, ";
        assertEquals(BigInteger.ZERO, found.get().open(), where + found.get().why());
        Map<String, Worst> least =
                keyed(found.get().widening().of(found.get().tally().worst()));
        keyed(tally.worst()).forEach((key, worst) -> {
            assertTrue(least.containsKey(key), where + "lacks " + key);
            double truth = worst.finding().margin();
            double same = MARGIN * Math.max(1, Math.abs(truth));
            double margin = least.get(key).finding().margin();
            assertTrue(margin >= truth - same, where + key + " " + margin + " is below " + truth);
            assertTrue(least.get(key).bound() <= truth + same, where + key + " is bounded above " + truth);
            assertTrue(
                    margin <= truth + same || !least.get(key).exact(), where + key + " " + margin + " above " + truth);
        });
    }

    private static Map<String, Worst> keyed(List<Worst> all) {
        Map<String, Worst> keyed = new TreeMap<>();
        for (Worst worst : all) {
            String key = worst.finding().code() + "/" + worst.finding().where();
            if (!key.startsWith("CHOKED") && !key.startsWith("BALANCE")) {
                keyed.put(key, worst);
            }
        }
        return keyed;
    }
}
