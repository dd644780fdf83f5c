package dustwright.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.finding.Outcome;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Friction;
import dustwright.engine.tubing.IsothermalFlow;
import org.junit.jupiter.api.Test;

class DutyPointSolverTest {
    static DutyPoint solved(Plant plant, State state) {
        return DutyPointSolver.solve(plant, state).match(duty -> duty, why -> {
            throw new AssertionError(why);
        });
    }

    static String reason(Plant plant, State state) {
        Outcome<DutyPoint> outcome = DutyPointSolver.solve(plant, state);
        return outcome.match(duty -> "solved", why -> why);
    }

    static LegResult leg(DutyPoint duty, String id) {
        return duty.legs().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
    }

    static double pressure(DutyPoint duty, String node) {
        return duty.nodes().stream()
                .filter(n -> n.id().equals(node))
                .findFirst()
                .orElseThrow()
                .pressure()
                .pascals();
    }

    @Test
    void one_tube_between_two_held_pressures_passes_what_the_isothermal_equation_says() {
        Plant plant = new PlantSketch()
                .tube("T", 0.05, 4.5e-5)
                .points("X", "Y")
                .run("R", "X", "Y", "T", 12, 1.5)
                .holdPressure("X", 101_325)
                .holdPressure("Y", 80_000)
                .plant();
        LegResult leg = leg(solved(plant, PlantSketch.open(plant)), "R");
        double area_m2 = Math.PI / 4 * 0.05 * 0.05;
        double f = Friction.colebrook(leg.reynolds(), 4.5e-5 / 0.05);
        double expected_kgPerS = IsothermalFlow.massFlow_kgPerS(
                101_325, 80_000, f * 12 / 0.05 + 1.5, area_m2, PlantSketch.SEA_LEVEL_AIR.rt());
        assertThat(leg.flow().kgPerSecond()).isCloseTo(expected_kgPerS, within(1e-12 * expected_kgPerS));
    }

    @Test
    void the_imbalance_told_with_an_answer_is_that_of_the_answer() {
        Plant plant = new PlantSketch()
                .tube("T", 0.05, 4.5e-5)
                .points("X", "M", "Y")
                .run("R", "X", "M", "T", 12, 1.5)
                .run("S", "M", "Y", "T", 8, 0.5)
                .holdPressure("X", 101_325)
                .holdPressure("Y", 80_000)
                .plant();
        DutyPoint duty = solved(plant, PlantSketch.open(plant));
        assertThat(leg(duty, "R").flow().kgPerSecond()).isGreaterThan(0.05);
        assertThat(duty.convergence().worstBalance().kgPerSecond())
                .isCloseTo(
                        Math.abs(leg(duty, "R").flow().kgPerSecond()
                                - leg(duty, "S").flow().kgPerSecond()),
                        within(1e-15));
    }

    @Test
    void supply_into_a_part_without_outlet_is_refused_by_name() {
        Plant plant = new PlantSketch()
                .tube("T", 0.05, 4.5e-5)
                .points("X", "Y")
                .run("R", "X", "Y", "T", 12, 1.5)
                .supply("X", 0.05)
                .plant();
        assertThat(reason(plant, PlantSketch.open(plant))).startsWith("nothing draws air from X");
    }
}
