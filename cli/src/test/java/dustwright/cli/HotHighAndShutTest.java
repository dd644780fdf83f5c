package dustwright.cli;

import static dustwright.cli.Edits.plant;
import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Away from the ordinary: hot cloth, hot rooms, high sites, heavy dust in a purged panel, and all inlets shut. */
class HotHighAndShutTest {
    private static final double HORSEPOWER_W = 745.6999;

    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
    }

    private static Study study(String text) {
        Plant plant = plant(text);
        return Study.of(plant, States.usual(plant).subList(0, 2)).withSheets();
    }

    private static List<Finding> of(Study study, FindingCode code) {
        return study.findings().filter(f -> f.code() == code).toList();
    }

    private static Answer answer(Study study, String id) {
        return study.sheets().stream()
                .flatMap(s -> s.entries().stream())
                .filter(e -> e.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id))
                .answer();
    }

    // ---- hot cloth

    /** 140 °C over 20 °C: 1 − 293/413 = 29 % less mass at one volume. */
    @Test
    void hot_cloth_before_producers_at_the_site_s_temperature_is_not_known_to_hold() {
        Study hot =
                study(with(bakery, "fibre: polyester", "temperature: 140 degC, fibre: aromatic polyamide (aramid)"));
        assertThat(of(hot, FindingCode.HOT_AIR))
                .hasSameSizeAs(hot.states())
                .allMatch(Finding::unjudged)
                .allSatisfy(
                        f -> assertThat(f.derivation().steps().get(0).formula()).contains("29 %"));
        assertThat(of(study(bakery), FindingCode.HOT_AIR)).isEmpty();
        // as little as published pump tables are good for is not felt
        assertThat(of(
                        study(with(bakery, "fibre: polyester", "temperature: 30 degC, fibre: polyester")),
                        FindingCode.HOT_AIR))
                .isEmpty();
    }

    // ---- the motor where it stands

    /** IEC 60034-1 and NEMA MG 1, from memory: 40 °C to 1000 m, 1 K less for each further 100 m. The rule is asked, not its figures. */
    @ParameterizedTest
    @CsvSource({"40, 20, true", "40, 40, true", "40, 55, false", "3000, 15, true", "3000, 30, false"})
    void a_motor_hotter_or_higher_than_motors_are_rated_for_is_not_known_to_be_strong_enough(
            int altitude_m, int celsius, boolean rated) {
        String there = with(
                bakery,
                "altitude: 40 m\n  temperature: 20 degC",
                "altitude: " + altitude_m + " m\n  temperature: " + celsius + ".0 degC");
        List<Finding> open = of(study(there), FindingCode.MOTOR_AT_SITE);
        assertThat(open.isEmpty()).isEqualTo(rated);
        assertThat(open)
                .allMatch(Finding::unjudged)
                .allSatisfy(
                        f -> assertThat(f.derivation().steps().get(0).formula()).contains("motor at site"));
    }

    @Test
    void what_the_maker_states_for_the_site_is_the_motor_s_limit_there() {
        String hot = with(bakery, "temperature: 20 degC", "temperature: 55 degC");
        String stated = with(hot, "model: DL-15,", "model: DL-15, motor at site: 12 hp,");
        Study study = study(stated);
        assertThat(of(study, FindingCode.MOTOR_AT_SITE)).isEmpty();
        assertThat(of(study, FindingCode.PRODUCER_POWER))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.limit().si()).isCloseTo(12 * HORSEPOWER_W, within(1.0)));
        // the service factor is a reserve for ordinary places only
        assertThat(hot).contains("service factor: 1.15");
        assertThat(of(study(hot), FindingCode.PRODUCER_POWER))
                .allSatisfy(f -> assertThat(f.limit().si()).isCloseTo(15 * HORSEPOWER_W, within(1.0)));
    }

    // ---- all inlets shut

    @Test
    void a_motor_too_weak_for_all_inlets_shut_is_told_and_so_is_a_pump_without_its_relief_valve() {
        Study usual = study(bakery);
        Finding power = shut(usual, FindingCode.PRODUCER_POWER);
        ProducerResult solved = shutState(bakery);
        assertThat(power.value().si())
                .isCloseTo(
                        solved.shaftPower().watts(),
                        within(1e-6 * solved.shaftPower().watts()));
        assertThat(power.holds()).isTrue();
        double load = ((Answer.Known) answer(usual, "shut-load/P1")).value().si();
        assertThat(load).isCloseTo(power.value().si() / (15 * HORSEPOWER_W), within(1e-6));

        // just strong enough for every set, and not for none
        double most_W = Study.of(plant(bakery), States.usual(plant(bakery)))
                .findings()
                .filter(f -> f.code() == FindingCode.PRODUCER_POWER)
                .mapToDouble(f -> f.value().si())
                .max()
                .orElseThrow();
        assertThat(power.value().si()).as("most of all sets %s", most_W).isGreaterThan(most_W);
        String between = String.format(
                java.util.Locale.ROOT, "motor: %.3f kW", (most_W + power.value().si()) / 2000);
        Study weak = study(
                with(with(bakery, "model: DL-15,", "model: DL-15, " + between + ","), "service factor: 1.15,", ""));
        assertThat(of(weak, FindingCode.PRODUCER_POWER))
                .filteredOn(f -> !f.state().equals("all inlets shut"))
                .allMatch(Finding::holds);
        assertThat(shut(weak, FindingCode.PRODUCER_POWER).fails()).isTrue();
        assertThat(weak.holds()).isFalse();

        String bare = bakery.replaceFirst("    relief valve: [^\n]*\n", "");
        assertThat(bare).isNotEqualTo(bakery);
        Study unrelieved = study(bare);
        assertThat(shut(unrelieved, FindingCode.PRODUCER_VACUUM).fails()).isTrue();
        assertThat(shut(unrelieved, FindingCode.PRODUCER_POWER).fails()).isTrue();
    }

    private static Finding shut(Study study, FindingCode code) {
        return of(study, code).stream()
                .filter(f -> f.state().equals("all inlets shut"))
                .findFirst()
                .orElseThrow();
    }

    private static ProducerResult shutState(String text) {
        Plant plant = plant(text);
        return Study.of(plant, List.of(States.open(plant, List.of(), FilterCondition.CLEAN)))
                .states()
                .get(0)
                .duty()
                .match(d -> d.stations().get(0).producers().get(0), why -> {
                    throw new AssertionError(why);
                });
    }

    // ---- the purge

    /** The rule of the table, told as from memory: heavier particles ask for more inside. */
    @Test
    void heavy_dust_asks_a_purged_panel_for_more_pressure_and_unknown_dust_for_both_figures() {
        String classified = with(bakery, "\"unclassified, dusty indoor\"", "Class II Div 1");
        String light = words(classified);
        String heavy = words(with(classified, "particle density: 1300 kg/m3", "particle density: 2700 kg/m3"));
        assertThat(light).contains("25 Pa").doesNotContain("125 Pa");
        assertThat(heavy).contains("125 Pa").contains("from memory");
        String unknown = words(classified.replace("particle size: 0.1 mm, particle density: 1300 kg/m3, ", ""));
        assertThat(unknown).contains("25 Pa").contains("125 Pa").contains("particle density");
    }

    private static String words(String text) {
        return ((Answer.Words) answer(study(text), "purge")).text();
    }

    // ---- the liquid ring

    @Test
    void what_a_displacement_curve_is_taken_at_is_a_listed_assumption() {
        Optional<String> lobe = plant(bakery).assumptions().stream()
                .map(a -> a.what())
                .filter(what -> what.contains("seal water"))
                .findFirst();
        assertThat(lobe).isEmpty();
        String ring = with(
                bakery,
                "model: DL-15, speed: 2155 rpm,",
                "kind: liquid ring, seal water: 45 degC, curve: [{flow: 270 m3/h, vacuum: 5 kPa, power: 7.2 hp},"
                        + " {flow: 221 m3/h, vacuum: 74 kPa, power: 9.5 hp}], rated speed: 1750 rpm, motor: 10 hp, deepest vacuum: 25 inHg,"
                        + " greatest rise: 40 K,");
        ring = ring.replaceFirst("service factor: 1.15, ", "");
        assertThat(plant(ring).assumptions())
                .extracting(a -> a.what())
                .anySatisfy(what -> assertThat(what).contains("101 325 Pa"))
                .anySatisfy(what -> assertThat(what).contains("seal water").contains("15 °C"));
        assertThat(answer(study(ring), "seal-water-flow/P1")).isInstanceOf(Answer.Known.class);
    }
}
