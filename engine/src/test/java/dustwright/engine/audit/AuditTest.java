package dustwright.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.network.DustStream;
import dustwright.engine.network.DustyPlants;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.RandomPlants;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class AuditTest {
    private static final Plant PLANT = new PlantSketch()
            .tube("T2", 0.0475, 4.5e-5)
            .tube("T3", 0.0729, 4.5e-5)
            .points("J", "K")
            .inlet("A")
            .inlet("B")
            .run("DA", "A", "J", "T2", 7, 1.3)
            .branch("DB", "B", "J", "T2", 7, 1.3, 45)
            .run("M1", "J", "K", "T3", 20, 0.5)
            .run("M2", "K", "REC", "T3", 20, 0.5)
            .bleed("F", "K", 2e-4)
            .station("REC")
            .safetyFilter(500, 0.15)
            .relief(8.5, 11, 0.2)
            .rotaryValve()
            .silencer(2000, 0.16)
            .lobe("P", 0.2)
            .and()
            .plant();

    private static final DutyPoint DUTY = DutyPointSolver.solve(PLANT, PlantSketch.open(PLANT, "A", "B"))
            .match(duty -> duty, why -> {
                throw new AssertionError(why);
            });

    @TestFactory
    Stream<DynamicTest> nothing_is_found_in_solved_random_plants() {
        return IntStream.range(0, 60)
                .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> {
                    RandomPlants.Case random = RandomPlants.anything(seed, 5 + 4 * seed);
                    DutyPoint duty = DutyPointSolver.solve(random.plant(), random.state())
                            .match(solved -> solved, why -> {
                                throw new AssertionError(why);
                            });
                    assertThat(Audit.of(random.plant(), duty)).isEmpty();
                }));
    }

    @Test
    void the_plant_of_this_test_is_clean_and_has_a_junction_loss() {
        assertThat(Audit.of(PLANT, DUTY)).isEmpty();
        assertThat(DUTY.legs().get(1).junctionLoss().pascals()).isNotZero();
    }

    @Test
    void a_flow_changed_by_a_millionth_is_found_at_its_leg_and_at_both_points() {
        List<Discrepancy> found = Audit.of(PLANT, withLeg("M1", leg -> copy(leg, 1 + 1e-6, 0)));
        assertThat(found)
                .extracting(d -> d.where().id() + ": " + d.what())
                .contains("J: mass balance", "K: mass balance", "M1: leg law");
    }

    @Test
    void dust_changed_by_a_thousandth_is_found_at_its_leg() {
        RandomPlants.Case dusty = DustyPlants.of(new RandomPlants.Case(PLANT, PlantSketch.open(PLANT, "A", "B")), 3);
        DutyPoint duty = DutyPointSolver.solve(dusty.plant(), dusty.state().withFeeding(Set.of("A", "B")))
                .match(solved -> solved, why -> {
                    throw new AssertionError(why);
                });
        assertThat(Audit.of(dusty.plant(), duty)).isEmpty();
        List<LegResult> legs = duty.legs().stream()
                .map(leg -> leg.id().equals("M1") ? withMoreDust(leg) : leg)
                .toList();
        DutyPoint changed = new DutyPoint(
                duty.state(), duty.nodes(), legs, duty.inlets(), duty.bleeds(), duty.stations(), duty.convergence());
        assertThat(Audit.of(dusty.plant(), changed))
                .extracting(d -> d.where().id() + ": " + d.what())
                .contains("M1: leg law", "M1: drop by dust");
    }

    private static LegResult withMoreDust(LegResult leg) {
        List<DustStream> streams = leg.streams().stream()
                .map(s -> new DustStream(s.dust(), new MassFlow(1.001 * s.flow().kgPerSecond()), s.drop(), s.foot()))
                .toList();
        return copy(leg, 1, 0, streams);
    }

    @Test
    void a_junction_loss_off_by_a_pascal_is_found() {
        List<Discrepancy> found = Audit.of(PLANT, withLeg("DB", leg -> copy(leg, 1, 1)));
        assertThat(found)
                .extracting(d -> d.where().id() + ": " + d.what())
                .contains("DB: junction loss", "DB: leg law");
    }

    @Test
    void a_relief_valve_said_to_pass_a_milligram_more_is_found() {
        StationResult s = DUTY.stations().get(0);
        StationResult wrong = new StationResult(
                s.id(),
                s.receiver(),
                s.throughFilter(),
                s.receiverFlow(),
                s.filterLoss(),
                s.safetyFilterLoss(),
                s.suction(),
                new MassFlow(s.relief().kgPerSecond() + 1e-6),
                s.vent(),
                s.rotaryValve(),
                s.producers());
        DutyPoint duty = new DutyPoint(
                DUTY.state(),
                DUTY.nodes(),
                DUTY.legs(),
                DUTY.inlets(),
                DUTY.bleeds(),
                List.of(wrong),
                DUTY.convergence());
        assertThat(Audit.of(PLANT, duty))
                .extracting(Discrepancy::what)
                .contains("mass balance", "air through the relief valve");
    }

    private static DutyPoint withLeg(String id, UnaryOperator<LegResult> change) {
        List<LegResult> legs = DUTY.legs().stream()
                .map(l -> l.id().equals(id) ? change.apply(l) : l)
                .toList();
        return new DutyPoint(
                DUTY.state(), DUTY.nodes(), legs, DUTY.inlets(), DUTY.bleeds(), DUTY.stations(), DUTY.convergence());
    }

    private static LegResult copy(LegResult l, double flowFactor, double moreJunctionLoss_Pa) {
        return copy(l, flowFactor, moreJunctionLoss_Pa, l.streams());
    }

    private static LegResult copy(
            LegResult l, double flowFactor, double moreJunctionLoss_Pa, List<DustStream> streams) {
        return new LegResult(
                l.id(),
                l.kind(),
                l.from(),
                l.to(),
                l.bore(),
                new MassFlow(l.flow().kgPerSecond() * flowFactor),
                l.pressureFrom(),
                l.pressureTo(),
                l.velocityFrom(),
                l.velocityTo(),
                l.reynolds(),
                l.frictionFactor(),
                l.frictionLength(),
                l.k(),
                new PressureDifference(l.junctionLoss().pascals() + moreJunctionLoss_Pa),
                l.dust(),
                streams,
                l.choked());
    }
}
