package dustwright.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.tubing.Tool;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What vacuum-cleaning practice knows, row by row: what a book of 1913 measured is held against the network; rules without a source, and
 * what only describes a tool of then, are printed and decide nothing.
 */
class VacuumPracticeTest {
    /** In the middle of the 6 to 9 inHg that the same book gives for the producer of such systems. */
    private static final double VACUUM_Pa = 7.5 * 3386.389;

    @TestFactory
    Stream<DynamicTest> rows() {
        return Reference.everyRow("conveying/vacuum-practice.csv").stream()
                .map(row -> dynamicTest(row.text("item"), () -> check(row)));
    }

    private static void check(Row row) {
        switch (row.text("item")) {
            case "bare-floor brush on 1.5 in hose, 100 to 25 ft" -> brush(row, 0.0381);
            case "bare-floor brush on 1.25 in hose, 100 to 25 ft" -> brush(row, 0.03175);
            case "minimum velocity in pipe lines" -> leastVelocity(row);
            default -> Reference.report(row, "practice or a tool of then, not asserted");
        }
    }

    /** The open brush lets through what the hose does: twice as much where it is a quarter as long. */
    private static void brush(Row row, double bore_m) {
        double tolerance = row.value("tolerance_rel");
        assertThat(flow_m3PerS(bore_m, 30.48) / row.value("value_low_SI")).isBetween(1 - tolerance, 1 + tolerance);
        assertThat(flow_m3PerS(bore_m, 7.62) / row.value("value_high_SI")).isBetween(1 - tolerance, 1 + tolerance);
    }

    /** No class of dust is content with less than the book asked of house dust, but fume, which does not settle. */
    private static void leastVelocity(Row row) {
        for (DustClass dust : DustClass.values()) {
            if (dust != DustClass.FUMES) {
                assertThat(dust.minimum().metresPerSecond()).as(dust.words()).isGreaterThan(row.value("value_low_SI"));
            }
        }
    }

    private static double flow_m3PerS(double bore_m, double length_m) {
        Plant plant = new PlantSketch()
                .tube("T", 0.06, 4.5e-5)
                .hose("rubber", bore_m, length_m, 1e-4)
                .tool("brush", new Tool.Law.VelocityHeads(0.5))
                .points("COCK")
                .inlet("A", "rubber", "brush", 0)
                .run("D", "A", "COCK", "T", 0.3, 0)
                .holdPressure("COCK", PlantSketch.SEA_LEVEL_AIR.ambient().pascals() - VACUUM_Pa)
                .plant();
        DutyPoint duty = DutyPointSolverTest.solved(plant, PlantSketch.open(plant, "A"));
        return FreeAirFlow.of(List.copyOf(duty.inlets()).get(0).flow()).cubicMetresPerSecond();
    }
}
