package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.documents.writing.StepFigures;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /** Mass balance of a point, and the losses on one bore. */
    private static boolean isSum(Step step) {
        return step.equation().equals("NET-20") || step.equation().equals("NET-22");
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
                    boolean branch = step.formula().startsWith("K_j = C");
                    double k = branch
                            ? value(step, "C")
                                    * (1 + Math.pow(q / value(step, "a"), 2) - 2 * (1 - q) * (1 - q) - angled)
                            : value(step, "m") * q - q * q - angled;
                    assertThat(step.result().value().si()).as(finding.id()).isCloseTo(k, within(1e-12));
                    seen.add(branch ? "branch" : "run");
                } else if (step.equation().equals("NET-5")) {
                    double loss = value(step, "K_j") * value(step, "p_vc")
                            + Math.max(0, value(step, "p_vc") - value(step, "p_v"));
                    double faded = step.formula().startsWith("Δpj = y") ? value(step, "y") : 1;
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
                        assertThat(result).isCloseTo(perLength * value(step, "L_up"), within(1e-9 * result));
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

    /** Whoever adds up the numbers as they are printed comes to the result as it is printed, give or take one in its last place. */
    @ParameterizedTest
    @MethodSource("examples")
    void printed_numbers_add_up_to_the_printed_result(Path file) throws IOException {
        Set<String> seen = new TreeSet<>();
        List<String> wrong = new ArrayList<>();
        for (Finding finding : withSheets(file).worstPerPlace()) {
            for (Step step : finding.derivation().steps()) {
                StepFigures figures = new StepFigures(step);
                List<BigDecimal> terms = step.inputs().stream()
                        .map(term -> printed(figures.input(term)))
                        .toList();
                BigDecimal total = switch (step.equation()) {
                    case "NET-20", "NET-22", "CON-39" -> terms.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
                    case "NET-21", "AIR-3" -> terms.stream().skip(1).reduce(terms.get(0), BigDecimal::subtract);
                    default -> null;
                };
                if (total != null) {
                    BigDecimal result = printed(figures.result());
                    if (total.subtract(result).abs().compareTo(result.ulp()) > 0) {
                        wrong.add(finding.id() + " " + step.equation() + " " + total + " for " + result);
                    }
                    seen.add(step.equation());
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(seen).contains("NET-20", "NET-21", "NET-22", "AIR-3");
    }

    private static BigDecimal printed(String text) {
        String number = text.split("\u00A0")[0].replace("\u202F", "").replace('−', '-');
        int power = number.indexOf("·10");
        if (power < 0) {
            return new BigDecimal(number);
        }
        StringBuilder exponent = new StringBuilder();
        for (char raised : number.substring(power + 3).toCharArray()) {
            exponent.append(raised == '⁻' ? "-" : Integer.toString("⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(raised)));
        }
        return new BigDecimal(number.substring(0, power)).scaleByPowerOfTen(Integer.parseInt(exponent.toString()));
    }

    private static Study withSheets(Path file) throws IOException {
        Plant plant = ((Reading.Read) PlantReader.read(Files.readString(file))).plant();
        return Study.of(plant, States.usual(plant)).withSheets();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void the_steps_of_every_finding_hold_its_value(Path file) throws IOException {
        List<String> unexplained = withSheets(file).worstPerPlace().stream()
                .filter(finding -> finding.derivation().steps().stream()
                        .flatMap(step -> Stream.concat(Stream.of(step.result()), step.inputs().stream()))
                        .noneMatch(term ->
                                Math.abs(term.value().si() - finding.value().si())
                                        <= 1e-9 * Math.abs(finding.value().si())))
                .map(Finding::id)
                .toList();
        assertThat(unexplained).isEmpty();
    }

    /** A symbol stands for one kind of quantity in a whole calculation. */
    @ParameterizedTest
    @MethodSource("examples")
    void a_letter_has_one_meaning_in_a_calculation(Path file) throws IOException {
        Set<String> twice = new TreeSet<>();
        for (Finding finding : withSheets(file).worstPerPlace()) {
            Map<String, String> kinds = new HashMap<>();
            for (Step step : finding.derivation().steps()) {
                Stream.concat(step.inputs().stream(), Stream.of(step.result())).forEach(term -> {
                    String unit = term.value().siSymbol();
                    if (!unit.equals(kinds.merge(term.symbol(), unit, (first, next) -> first))) {
                        twice.add(finding.code() + " " + step.equation() + " " + term.symbol());
                    }
                });
            }
        }
        assertThat(twice).isEmpty();
    }

    /** Weeks gone through event by event are no formula; what is said of a week is one of the counts over the weeks. */
    @Test
    void figures_of_a_week_come_out_of_what_was_counted() throws IOException {
        int counted = 0;
        for (Sheet sheet :
                withSheets(Path.of("..", "examples", "plastics", "plant.yaml")).sheets()) {
            for (Entry entry : sheet.entries()) {
                for (Step step : entry.derivation().steps()) {
                    double result = step.result().value().si();
                    if (step.equation().equals("DIS-8")) {
                        double left = (value(step, "m_asked") - value(step, "m_in")) / value(step, "weeks");
                        assertThat(result).isCloseTo(left, within(1e-9 * Math.max(1, left)));
                        counted++;
                    } else if (entry.id().startsWith("waited-change")) {
                        assertThat(result).isCloseTo(value(step, "t_change") / value(step, "weeks"), within(1e-9));
                        counted++;
                    } else if (entry.id().startsWith("waited-level")) {
                        assertThat(result).isCloseTo(value(step, "t_high") / value(step, "weeks"), within(1e-9));
                        counted++;
                    }
                }
            }
        }
        assertThat(counted).isPositive();
    }

    /** Rennels and Hudson's bend, written out once more from the numbers put in. */
    @ParameterizedTest
    @MethodSource("examples")
    void the_shares_of_a_bend_come_out_as_printed(Path file) throws IOException {
        int bends = 0;
        for (Finding finding : withSheets(file).worstPerPlace()) {
            for (Step step : finding.derivation().steps()) {
                if (step.formula().startsWith("k1 =") || step.formula().startsWith("k0 =")) {
                    double angle = step.inputs().get(0).value().si();
                    double half = Math.sin(angle / 2);
                    double expected = 0.10 * half;
                    if (step.formula().startsWith("k1 =")) {
                        double ratio = value(step, "r") / value(step, "D");
                        expected = angle * ratio
                                + 2.4 * half
                                + 6.6 * (Math.sqrt(half) + half) / Math.pow(ratio, 4 * angle / Math.PI);
                    }
                    assertThat(step.result().value().si()).isCloseTo(expected, within(1e-9 * expected));
                    bends++;
                }
            }
        }
        assertThat(bends).isPositive();
    }

    /** The lobe pump's flow from the density that its own step gives. */
    @Test
    void the_flow_of_a_lobe_pump_comes_out_of_pressure_and_temperature() throws IOException {
        int pumps = 0;
        for (Finding finding : withSheets(BAKERY).worstPerPlace()) {
            double density = 0;
            for (Step step : finding.derivation().steps()) {
                if (step.result().symbol().equals("ρ_in")) {
                    density = value(step, "p_in") / (value(step, "R") * value(step, "T"));
                } else if (step.equation().equals("PRD-1")) {
                    double slip = value(step, "n_s")
                            * Math.sqrt(value(step, "Δp") / 6894.757293168)
                            * Math.sqrt(1.2041 / density);
                    double flow = value(step, "D") * (value(step, "n") - slip);
                    assertThat(step.result().value().si()).isCloseTo(flow, within(1e-4 * flow));
                    pumps++;
                }
            }
        }
        assertThat(pumps).isPositive();
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
