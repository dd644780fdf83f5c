package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Step;
import dustwright.engine.plant.Plant;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The sums on a finding's calculation sheet come out as printed beside them. */
class CalculationSheetTest {
    private static final Path BAKERY = Path.of("..", "examples", "bakery", "plant.yaml");

    @Test
    void what_enters_a_point_adds_up_to_what_leaves_it() throws IOException {
        everySumComesOut(Files.readString(BAKERY));
    }

    @Test
    void a_run_named_like_the_inlet_it_starts_at_still_counts_that_inlets_hose() throws IOException {
        everySumComesOut(Files.readString(BAKERY).replaceAll("\\bDA1\\b", "A1"));
    }

    private static void everySumComesOut(String text) {
        Plant plant = ((Reading.Read) PlantReader.read(text)).plant();
        Study study = Study.of(plant, States.usual(plant));
        assertThat(study.worstPerPlace()).anySatisfy(CalculationSheetTest::hasSum);
        for (Finding finding : study.worstPerPlace()) {
            for (Step step : finding.derivation().steps()) {
                if (isSum(step)) {
                    double sum = step.inputs().stream()
                            .mapToDouble(term -> term.value().si())
                            .sum();
                    assertThat(sum)
                            .as(finding.id() + " " + step.equation())
                            .isCloseTo(step.result().value().si(), within(1e-10));
                }
            }
        }
    }

    private static void hasSum(Finding finding) {
        assertThat(finding.derivation().steps()).anyMatch(CalculationSheetTest::isSum);
    }

    /** Mass balance of a point; the sum of K has its numbers of fittings in words and is left out. */
    private static boolean isSum(Step step) {
        return step.equation().equals("NET-20");
    }

    @Test
    void the_isothermal_law_gives_the_printed_pressure() throws IOException {
        Plant plant = ((Reading.Read) PlantReader.read(Files.readString(BAKERY))).plant();
        for (Finding finding : Study.of(plant, States.usual(plant)).worstPerPlace()) {
            for (Step step : finding.derivation().steps()) {
                if (step.equation().equals("TUB-5")) {
                    double up = value(step, "p1");
                    double down = step.result().value().si();
                    double massFlux = value(step, "w") / value(step, "A");
                    double loss = value(step, "f") * value(step, "L/D") + value(step, "ΣK") + 2 * Math.log(up / down);
                    double squares = massFlux * massFlux * value(step, "R") * value(step, "T") * loss;
                    assertThat(up * up - down * down).as(finding.id()).isCloseTo(squares, within(1e-9 * up * up));
                }
            }
        }
    }

    private static double value(Step step, String symbol) {
        return step.inputs().stream()
                .filter(term -> term.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value()
                .si();
    }
}
