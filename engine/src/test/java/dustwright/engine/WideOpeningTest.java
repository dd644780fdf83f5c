package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.audit.Audit;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Area;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Tool;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A tool whose opening is wider than its hose gives the air nothing: the head it has in the hose comes out of its pressure (TUB-27). */
class WideOpeningTest {
    private static final double BORE_m2 = Math.PI / 4 * 0.0381 * 0.0381;

    private static DutyPoint solved(double opening_m2, double discharge) {
        Plant plant = new PlantSketch()
                .tool("nozzle", new Tool.Law.Opening(new Area(opening_m2), discharge))
                .tube("T", 0.0729, 4.5e-5)
                .inlet("A", "H", "nozzle", 0)
                .run("M", "A", "REC", "T", 20, 1)
                .station("REC")
                .lobe("P", 0.1)
                .and()
                .plant();
        StateAnswer answer = Study.of(plant, List.of(States.open(plant, List.of("A"), FilterCondition.CLEAN)))
                .states()
                .get(0);
        DutyPoint duty = answer.duty().match(d -> d, why -> {
            throw new AssertionError(why);
        });
        assertThat(Audit.of(plant, duty)).isEmpty();
        return duty;
    }

    private static LegResult hose(DutyPoint duty) {
        return duty.legs().stream()
                .filter(leg -> leg.kind() == LegResult.Kind.HOSE)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void no_opening_lets_in_more_than_the_bore_of_its_hose_without_loss() {
        double bore = hose(solved(BORE_m2, 1)).flow().kgPerSecond();
        assertThat(hose(solved(200e-4, 1)).flow().kgPerSecond()).isCloseTo(bore, within(1e-12));
        assertThat(hose(solved(20e-4, 0.6)).flow().kgPerSecond()).isCloseTo(bore, within(1e-12));
        assertThat(hose(solved(20e-4, 0.3)).flow().kgPerSecond()).isLessThan(0.97 * bore);
    }

    @Test
    void pressure_and_head_in_the_hose_are_never_above_the_still_air_outside() {
        for (double opening_m2 : new double[] {2e-4, 8e-4, BORE_m2, 20e-4, 200e-4}) {
            LegResult hose = hose(solved(opening_m2, 1));
            double velocity_mPerS = hose.velocityFrom().metresPerSecond();
            double head_Pa = hose.flow().kgPerSecond() * velocity_mPerS / (2 * BORE_m2);
            assertThat(hose.pressureFrom().pascals() + head_Pa).isLessThan(101_325);
        }
    }
}
