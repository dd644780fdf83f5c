package dustwright.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.audit.Audit;
import dustwright.engine.finding.Outcome;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Friction;
import dustwright.engine.tubing.IsothermalFlow;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Wall;
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

    @Test
    void the_stated_imbalance_is_that_of_the_stated_flows_with_a_station_and_with_a_supply() {
        Plant withStation = plantWithRelief(8.5, 11);
        DutyPoint duty = solved(withStation, PlantSketch.open(withStation, "A"));
        assertThat(duty.convergence().worstBalance().kgPerSecond()).isBetween(0.0, 1e-12);
        Plant supplied = new PlantSketch()
                .tube("T", 0.05, 4.5e-5)
                .points("X", "Y")
                .run("R", "X", "Y", "T", 12, 1.5)
                .supply("X", 0.05)
                .holdPressure("Y", 80_000)
                .plant();
        assertThat(solved(supplied, PlantSketch.open(supplied))
                        .convergence()
                        .worstBalance()
                        .kgPerSecond())
                .isBetween(0.0, 1e-12);
    }

    @Test
    void a_relief_valve_with_hardly_any_accumulation_still_has_its_state() {
        Plant plant = plantWithRelief(6, 6.001);
        DutyPoint duty = solved(plant, PlantSketch.open(plant));
        assertThat(duty.stations().get(0).relief().kgPerSecond()).isGreaterThan(0.05);
        assertThat(Audit.of(plant, duty)).isEmpty();
    }

    private static Plant plantWithRelief(double set_inHg, double full_inHg) {
        return new PlantSketch()
                .tube("T2", 0.0475, 4.5e-5)
                .tube("T3", 0.0729, 4.5e-5)
                .points("J")
                .inlet("A")
                .inlet("B")
                .run("DA", "A", "J", "T2", 7, 1.3)
                .run("DB", "B", "J", "T2", 7, 1.3)
                .run("M", "J", "REC", "T3", 40, 1)
                .station("REC")
                .relief(set_inHg, full_inHg, 0.34)
                .rotaryValve()
                .lobe("P", 0.2)
                .and()
                .plant();
    }

    @Test
    void a_run_whose_loss_is_negative_keeps_its_kinetic_term() {
        // A measured run that gains more static pressure than it loses: still air, X, gain to Y, tube to Z.
        Plant plant = new PlantSketch()
                .tube("T", 0.05, new Wall.FixedFactor(0.02))
                .tube("W", 0.0729, new Wall.FixedFactor(0.02))
                .points("X", "Y", "Z")
                .run("R1", Run.STILL_AIR, "X", "T", 5, 1.5)
                .run("R2", "X", "Y", "T", 1, -1.2)
                .run("R3", "Y", "Z", "W", 30, 2)
                .holdPressure("Z", 80_000)
                .plant();
        DutyPoint duty = solved(plant, PlantSketch.open(plant));
        double flux = leg(duty, "R2").flow().kgPerSecond() / (Math.PI / 4 * 0.05 * 0.05);
        double x_Pa = pressure(duty, "X");
        double y_Pa = pressure(duty, "Y");
        assertThat(y_Pa).isGreaterThan(x_Pa);
        double resistance = 0.02 * 1 / 0.05 - 1.2 + 2 * Math.log(x_Pa / y_Pa);
        double law = x_Pa * x_Pa - y_Pa * y_Pa - flux * flux * PlantSketch.SEA_LEVEL_AIR.rt() * resistance;
        assertThat(law / (101_325.0 * 101_325.0)).isCloseTo(0, within(1e-11));
        assertThat(Audit.of(plant, duty)).isEmpty();
    }
}
