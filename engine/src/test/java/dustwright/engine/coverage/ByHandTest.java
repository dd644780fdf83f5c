package dustwright.engine.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dustwright.engine.Study;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Inlet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What a person can check of a worst set, and what the remedies that change the tubing do. */
class ByHandTest {
    /** Two mains of four inlets each that join before the receiver, too wide for one user. */
    private static Plant twoMains() {
        PlantSketch sketch = new PlantSketch().tube("main", 0.095, 4.5e-5).tube("lateral", 0.05, 4.5e-5);
        sketch.points("J").run("R", "J", "REC", "main", 12, 0.5);
        for (String side : List.of("N", "S")) {
            String below = "J";
            for (int n = 1; n <= 4; n++) {
                String tee = side + "T" + n;
                String inlet = side + n;
                sketch.points(tee).run("M" + inlet, tee, below, "main", 10, 0.3).inlet(inlet);
                sketch.run("D" + inlet, inlet, tee, "lateral", 3, 0.5);
                below = tee;
            }
        }
        Plant drawn =
                sketch.station("REC").relief(14, 16, 0.12).lobe("P", 0.12).and().plant();
        List<Inlet> dusty = drawn.inlets().stream()
                .map(i -> new Inlet(
                        i.id(), i.at(), i.hose(), i.tool(), i.valveK(), i.leak(), "", Optional.of("dust0"), i.feed()))
                .toList();
        return AskedPlants.with(drawn, dusty, List.of(AskedPlants.dust("dust0", DustClass.DRY_POWDER)), List.of());
    }

    private static State condition(Plant plant) {
        return AskedPlants.condition(plant, FilterCondition.DIRTY, false);
    }

    private static Coverage covered(Plant plant, int users) {
        Question question = new Question(List.of(users), Map.of(), List.of(condition(plant)));
        return Coverage.of(plant, question, duty -> Study.judge(plant, duty), Effort.alone());
    }

    @Test
    void what_is_lost_on_the_way_adds_up_to_the_vacuum_in_the_receiver() {
        Plant plant = twoMains();
        ByHand hand = ByHand.of(plant, covered(plant, 2), duty -> Study.judge(plant, duty))
                .orElseThrow();
        double drops_Pa =
                hand.path().stream().mapToDouble(p -> p.drop().pascals()).sum();
        double receiver_Pa = plant.site().air().ambient().pascals()
                - hand.duty().stations().get(0).receiver().pascals();
        assertEquals(receiver_Pa, drops_Pa, 1e-6 * receiver_Pa);
        assertEquals(
                List.of(LegResult.Kind.HOSE),
                hand.path().stream().map(ByHand.Piece::kind).limit(1).toList());
        for (int n = 1; n < hand.harms().size(); n++) {
            assertTrue(
                    hand.harms().get(n - 1).margin() <= hand.harms().get(n).margin(),
                    hand.harms().toString());
        }
        assertTrue(hand.base().isPresent());
        assertEquals(1, hand.mostHarmful().size());
        assertEquals(hand.harms().get(0).inlet(), hand.mostHarmful().get(0));
    }

    /** Four inlets on a ring; every piece is followed through the run that is asked, whichever way most of an inlet's air goes. */
    @Test
    void in_a_ring_the_way_leads_through_the_run_that_is_worst_and_the_pieces_join() {
        PlantSketch sketch = new PlantSketch().tube("main", 0.1, 4.5e-5).tube("lateral", 0.05, 4.5e-5);
        sketch.points("J1", "J2", "J3", "J4");
        sketch.run("R", "J1", "REC", "main", 5, 0.5).run("R12", "J2", "J1", "main", 10, 0.3);
        sketch.run("R23", "J3", "J2", "main", 30, 0.3).run("R34", "J4", "J3", "main", 10, 0.3);
        sketch.run("R41", "J4", "J1", "main", 10, 0.3);
        for (int n = 1; n <= 4; n++) {
            sketch.inlet("A" + n).run("D" + n, "A" + n, "J" + n, "lateral", 3, 0.5);
        }
        Plant drawn = sketch.station("REC").lobe("P", 0.12).and().plant();
        List<Inlet> dusty = drawn.inlets().stream()
                .map(i -> new Inlet(
                        i.id(), i.at(), i.hose(), i.tool(), i.valveK(), i.leak(), "", Optional.of("dust0"), i.feed()))
                .toList();
        Plant plant =
                AskedPlants.with(drawn, dusty, List.of(AskedPlants.dust("dust0", DustClass.DRY_POWDER)), List.of());
        ByHand hand = ByHand.of(plant, covered(plant, 2), duty -> Study.judge(plant, duty))
                .orElseThrow();
        String worst = hand.exchanges().worst().finding().where().id();
        assertTrue(worst.equals("R23") || worst.equals("R34"), worst);
        List<String> way = hand.path().stream().map(ByHand.Piece::id).toList();
        assertTrue(way.contains(worst), worst + " is not on " + way);
        assertEquals("R", way.get(way.size() - 1));
        assertEquals(LegResult.Kind.HOSE, hand.path().get(0).kind());
        double drops_Pa =
                hand.path().stream().mapToDouble(p -> p.drop().pascals()).sum();
        double receiver_Pa = plant.site().air().ambient().pascals()
                - hand.duty().stations().get(0).receiver().pascals();
        assertEquals(receiver_Pa, drops_Pa, 1e-6 * receiver_Pa);
        assertEquals(
                hand.exchanges().worst().open(), hand.path().get(way.size() - 1).users());
    }

    @Test
    void with_separate_headers_a_lone_user_has_a_main_of_its_own_and_the_air_of_no_other_branch() {
        Plant plant = twoMains();
        Plant changed = new SeparateHeaders(plant).of("MN4", false).orElseThrow();
        assertEquals(plant.runs().size() + 1, changed.runs().size());
        DutyPoint before = duty(plant, "N4", "S4");
        DutyPoint after = duty(changed, "N4", "S4");
        double joined = air(before, "R");
        double apart = air(after, "R") + air(after, "R (header 2)");
        assertTrue(apart > joined, joined + " kg/s in one main, " + apart + " in two");
        assertTrue(air(after, "R") < joined);
        Plant smaller = new SeparateHeaders(plant).of("MN4", true).orElseThrow();
        assertEquals("lateral", smaller.run("R").tube());
    }

    @Test
    void a_purge_names_sets_that_do_blow_every_slow_run_through() {
        Plant plant = twoMains();
        List<String> slow = covered(plant, 1).answers().get(0).worst().stream()
                .map(Answer.Worst::finding)
                .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY && f.fails())
                .filter(f -> plant.runs().stream()
                        .anyMatch(r -> r.id().equals(f.where().id())))
                .map(f -> f.where().id())
                .toList();
        assertFalse(slow.isEmpty());
        Judging judging = duty -> Study.judge(plant, duty);
        Purge purge = Purge.of(plant, condition(plant), slow, 4, judging, new Watch(() -> false, share -> {}));
        assertFalse(purge.sets().isEmpty(), purge.toString());
        TreeSet<String> blown = new TreeSet<>();
        for (List<String> set : purge.sets()) {
            assertTrue(set.size() <= 4);
            judging.of(duty(plant, set.toArray(String[]::new))).stream()
                    .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY && f.holds())
                    .forEach(f -> blown.add(f.where().id()));
        }
        purge.left().forEach(f -> blown.add(f.where().id()));
        assertTrue(blown.containsAll(slow), blown + " of " + slow);
    }

    private static DutyPoint duty(Plant plant, String... open) {
        return DutyPointSolver.solve(plant, condition(plant).withOpen(List.of(open)))
                .match(duty -> duty, why -> {
                    throw new AssertionError(why);
                });
    }

    private static double air(DutyPoint duty, String run) {
        return duty.legs().stream()
                .filter(l -> l.kind() == LegResult.Kind.RUN && l.id().equals(run))
                .mapToDouble(l -> l.flow().kgPerSecond())
                .sum();
    }
}
