package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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

    /** With dust and without: both the law of clean air and the one with what dust adds are among the findings of the bakery. */
    @Test
    void the_isothermal_law_gives_the_printed_pressure() throws IOException {
        Plant plant = ((Reading.Read) PlantReader.read(Files.readString(BAKERY))).plant();
        Set<String> seen = new TreeSet<>();
        for (Finding finding : Study.of(plant, States.usual(plant)).worstPerPlace()) {
            for (Step step : finding.derivation().steps()) {
                boolean dusty = step.equation().equals("NET-12");
                if (dusty || step.equation().equals("TUB-5")) {
                    seen.add(step.equation());
                    double up = value(step, "p1");
                    double down = step.result().value().si();
                    double massFlux = value(step, "w") / value(step, "A");
                    double loss = value(step, "f") * value(step, "L/D") + value(step, "ΣK") + 2 * Math.log(up / down);
                    double squares = massFlux * massFlux * value(step, "R") * value(step, "T") * loss;
                    double dust = dusty ? (up + down) * value(step, "Δps") : 0;
                    assertThat(up * up - down * down - dust)
                            .as(finding.id())
                            .isCloseTo(squares, within(1e-9 * up * up));
                }
            }
        }
        assertThat(seen).containsExactly("NET-12", "TUB-5");
    }

    /** Crane's coefficients, written out once more, and the loss they make. */
    @Test
    void the_loss_of_a_wye_comes_out_as_printed() throws IOException {
        Plant plant = ((Reading.Read) PlantReader.read(Files.readString(BAKERY))).plant();
        Set<String> seen = new TreeSet<>();
        for (Finding finding : Study.of(plant, States.usual(plant)).worstPerPlace()) {
            for (Step step : finding.derivation().steps()) {
                if (step.equation().equals("TUB-16")) {
                    double q = value(step, "q");
                    double angled = value(step, "F") * q * q / value(step, "a");
                    boolean branch = step.formula().startsWith("K = C");
                    double k = branch
                            ? value(step, "C")
                                    * (1 + Math.pow(q / value(step, "a"), 2) - 2 * (1 - q) * (1 - q) - angled)
                            : value(step, "r") * q - q * q - angled;
                    assertThat(step.result().value().si()).as(finding.id()).isCloseTo(k, within(1e-12));
                    seen.add(branch ? "branch" : "run");
                } else if (step.equation().equals("NET-5")) {
                    double loss =
                            value(step, "K") * value(step, "q_c") + Math.max(0, value(step, "q_c") - value(step, "q"));
                    double faded = step.formula().startsWith("Δpj = s") ? value(step, "s") : 1;
                    assertThat(step.result().value().si())
                            .as(finding.id())
                            .isCloseTo(faded * loss, within(1e-6 * Math.max(1, Math.abs(loss))));
                    seen.add("loss");
                }
            }
        }
        assertThat(seen).containsExactly("branch", "loss", "run");
    }

    @Test
    void the_parts_of_what_dust_adds_come_out_as_printed() throws IOException {
        Plant plant = ((Reading.Read) PlantReader.read(Files.readString(BAKERY))).plant();
        int sums = 0;
        for (Finding finding : Study.of(plant, States.usual(plant)).worstPerPlace()) {
            double added = 0;
            double flux = 0;
            for (Step step : finding.derivation().steps()) {
                double result = step.result().value().si();
                switch (step.equation()) {
                    case "CON-32" -> {
                        flux = value(step, "m_s") / value(step, "A");
                        assertThat(result).isCloseTo(flux * value(step, "c"), within(1e-9 * result));
                    }
                    case "CON-34" -> {
                        flux = value(step, "m_s") / value(step, "A");
                        double perLength = 0.057 * flux * Math.sqrt(9.80665 / value(step, "D"));
                        assertThat(result).isCloseTo(perLength * value(step, "L"), within(1e-9 * result));
                    }
                    case "CON-37" -> {
                        flux = value(step, "m_s") / value(step, "A");
                        assertThat(result)
                                .isCloseTo(
                                        flux * 9.80665 * value(step, "Δz") / value(step, "c_r"), within(1e-9 * result));
                    }
                    case "CON-39" -> {
                        double sum = step.inputs().stream()
                                .mapToDouble(t -> t.value().si())
                                .sum();
                        assertThat(result).isCloseTo(sum, within(1e-9 * result));
                        added += result;
                        sums++;
                    }
                    case "NET-12" -> {
                        assertThat(value(step, "Δps")).as(finding.id()).isCloseTo(added, within(1e-9 * added));
                        added = 0;
                    }
                    default -> assertThat(step.equation()).isNotEmpty();
                }
            }
        }
        assertThat(sums).isGreaterThan(20);
    }

    /** In every state of every example: junctions, filters and runs in between take what is missing at the inlet. */
    @ParameterizedTest
    @MethodSource("examples")
    void the_vacuum_at_every_inlet_adds_up(Path file) throws IOException {
        Plant plant = ((Reading.Read) PlantReader.read(Files.readString(file))).plant();
        int budgets = 0;
        int asked = 0;
        for (Finding finding : Study.of(plant, States.usual(plant)).findings().toList()) {
            if (finding.code() != FindingCode.INLET_VACUUM) {
                continue;
            }
            asked++;
            for (Step step : finding.derivation().steps()) {
                if (step.equation().equals("NET-21") || step.equation().equals("AIR-3")) {
                    double left = step.inputs().get(0).value().si();
                    for (Term taken : step.inputs().subList(1, step.inputs().size())) {
                        left -= taken.value().si();
                    }
                    assertThat(left)
                            .as(finding.id() + " " + step.equation())
                            .isCloseTo(step.result().value().si(), within(1e-6));
                    budgets += step.equation().equals("NET-21") ? 1 : 0;
                }
            }
        }
        assertThat(budgets).isEqualTo(asked);
    }

    static List<Path> examples() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("..", "examples"))) {
            return folders.map(folder -> folder.resolve("plant.yaml"))
                    .filter(Files::exists)
                    .sorted()
                    .toList();
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
