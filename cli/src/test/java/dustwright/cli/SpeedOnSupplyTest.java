package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.Answer;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From the frequency of the supply by poles, slip and belt to the speed of the producer. Two poles and 60 Hz are 3600 rpm by definition. */
class SpeedOnSupplyTest {
    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
    }

    /** The bakery with another producer on a supply of a frequency. */
    private static Plant plant(String producer, int hertz) {
        String text = bakery.replaceFirst(
                        "(?s)P1: \\{model.*?330 scfm, stated for: site air}}", "P1: {" + producer + "}")
                .replaceFirst(
                        "volts: 480 V, hertz: 60 Hz",
                        hertz == 60 ? "volts: 480 V, hertz: 60 Hz" : "volts: 400 V, hertz: 50 Hz");
        Reading reading = PlantReader.read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).plant();
    }

    private static double rpm(Plant plant) {
        VacuumProducer p = plant.station("REC").producers().get(0);
        return ((Drive.Fixed) p.drive()).speed().rpm();
    }

    private static Study study(Plant plant) {
        return Study.of(plant, States.usual(plant).subList(0, 1)).withSheets();
    }

    private static Optional<Finding> finding(Plant plant) {
        return study(plant)
                .findings()
                .filter(f -> f.code() == FindingCode.SPEED_ON_SUPPLY)
                .findFirst();
    }

    private static Answer answer(Plant plant, String id) {
        return study(plant).sheets().stream()
                .flatMap(s -> s.entries().stream())
                .filter(e -> e.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id))
                .answer();
    }

    private static double value(Plant plant, String id) {
        return ((Answer.Known) answer(plant, id)).value().si();
    }

    /** By hand: 120 f/p (1 − s), times 210/170 · 0.99 where a belt is. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "model: DL-15, belt: {motor sheave: 210 mm, machine sheave: 170 mm}                                 | 60 | 2157.268",
                "model: DL-15, belt: {motor sheave: 210 mm, machine sheave: 170 mm}                                 | 50 | 1797.724",
                "model: DL-15, poles: 6, motor slip: 3 %, belt: {motor sheave: 210 mm, machine sheave: 170 mm, slip: 0 %} | 50 | 1198.235",
                "model: DL-15, coupled: direct                                                                      | 60 | 1764",
                "model: DL-15, coupled: direct                                                                      | 50 | 1470",
                "model: DL-15, motor speed: 1760 rpm, coupled: direct                                               | 60 | 1760",
                "model: DL-15, motor speed: 1760 rpm, motor hertz: 60 Hz, coupled: direct                           | 50 | 1466.667",
            })
    void a_belt_or_coupling_gives_the_speed_and_another_supply_gives_another(String producer, int hertz, double rpm) {
        Plant plant = plant(producer, hertz);
        assertThat(rpm(plant)).isCloseTo(rpm, within(1e-3));
        assertThat(finding(plant)).hasValueSatisfying(f -> assertThat(f.holds()).isTrue());
    }

    /** A speed from a 60 Hz machine contradicts what its motor gives at 50 Hz: 60/50 − 1 is a fifth, less what the stated figures differ. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "model: DL-15, speed: 2155 rpm, belt: {motor sheave: 210 mm, machine sheave: 170 mm} | 0.1987",
                "model: DL-15, motor speed: 1760 rpm, coupled: direct                                | 0.1973",
                "model: DL-15, motor speed: 1760 rpm, poles: 4, belt: {motor sheave: 210 mm, machine sheave: 170 mm} | 0.1973",
                "model: DK-15                                                                        | 0.1905",
                "model: DS-15                                                                        | 0.1905",
            })
    void a_machine_of_sixty_hertz_on_fifty_is_a_finding_and_keeps_its_speed(String producer, double departure) {
        assertThat(finding(plant(producer, 60)))
                .hasValueSatisfying(f -> assertThat(f.holds()).isTrue());
        Plant moved = plant(producer, 50);
        assertThat(rpm(moved)).isCloseTo(rpm(plant(producer, 60)), within(1e-9));
        assertThat(finding(moved)).hasValueSatisfying(f -> {
            assertThat(f.holds()).isFalse();
            assertThat(f.value().si()).isCloseTo(departure, within(1e-4));
            assertThat(f.derivation().steps()).extracting(s -> s.equation()).contains("ELE-27", "ELE-28", "PRD-26");
        });
        assertThat(study(moved).holds()).isFalse();
    }

    @Test
    void sheaves_that_do_not_give_the_stated_speed_are_a_finding() {
        Plant swapped =
                plant("model: DL-15, speed: 2155 rpm, belt: {motor sheave: 170 mm, machine sheave: 210 mm}", 60);
        assertThat(finding(swapped))
                .hasValueSatisfying(f -> assertThat(f.holds()).isFalse());
    }

    /**
     * By hand: 15 hp at 1765 rpm are 11 185.5 W/(2π · 29.4167/s) = 60.52 N·m, and 11.5 hp at 1067 rpm are 76.9 N·m: under the nameplate's
     * power and over the motor's torque.
     */
    @Test
    void a_motor_turned_down_by_its_drive_is_held_to_its_rated_torque() {
        Plant plant = plant(
                "model: DL-30, hold: 7.2 inHg, speed range: [400 rpm, 1765 rpm], motor: 15 hp, poles: 4, motor speed: 1765 rpm,"
                        + " coupled: direct, start: drive, silencer: {loss: 2 kPa, at: 330 scfm, stated for: site air}",
                60);
        List<Finding> asked = Study.of(
                        plant, List.of(States.open(plant, List.of("C1", "A1", "D1"), FilterCondition.CLEAN)))
                .findings()
                .toList();
        Finding power = of(asked, FindingCode.PRODUCER_POWER);
        assertThat(power.holds()).isTrue();
        Finding torque = of(asked, FindingCode.PRODUCER_TORQUE);
        assertThat(torque.fails()).isTrue();
        double machine_rpm = torque.derivation().steps().stream()
                        .filter(s -> s.equation().equals("ELE-41"))
                        .flatMap(s -> s.inputs().stream())
                        .filter(t -> t.symbol().equals("n"))
                        .findFirst()
                        .orElseThrow()
                        .value()
                        .si()
                * 60;
        assertThat(torque.value().si())
                .isCloseTo(power.value().si() / 11185.498 * 1765 / machine_rpm, within(1e-6))
                .isBetween(1.2, 1.35);
        assertThat(value(plant, "least-frequency/P1")).isLessThan(60);
        // the same machine through a belt that lets the motor run faster
        Plant geared = plant(
                "model: DL-30, hold: 7.2 inHg, speed range: [400 rpm, 1765 rpm], motor: 15 hp, poles: 4, motor speed: 1765 rpm,"
                        + " belt: {motor sheave: 150 mm, machine sheave: 225 mm, slip: 0 %}, start: drive, silencer: {loss: 2 kPa, at: 330 scfm,"
                        + " stated for: site air}",
                60);
        Finding eased = of(
                Study.of(geared, List.of(States.open(geared, List.of("C1", "A1", "D1"), FilterCondition.CLEAN)))
                        .findings()
                        .toList(),
                FindingCode.PRODUCER_TORQUE);
        assertThat(eased.value().si()).isCloseTo(torque.value().si() * 150 / 225, within(1e-6));
        assertThat(eased.holds()).isTrue();
    }

    @Test
    void whether_a_drive_overloads_its_motor_by_torque_is_not_known_without_speed_and_coupling() {
        Plant plant = plant("model: DL-15, hold: 7 inHg", 60);
        Finding torque = of(study(plant).findings().toList(), FindingCode.PRODUCER_TORQUE);
        assertThat(torque.unjudged()).isTrue();
        assertThat(torque.derivation().steps().get(0).formula())
                .contains("coupled: direct")
                .contains("belt");
        assertThat(study(plant("model: DL-15, coupled: direct", 60)).findings())
                .noneMatch(f -> f.code() == FindingCode.PRODUCER_TORQUE);
    }

    private static Finding of(List<Finding> findings, FindingCode code) {
        return findings.stream().filter(f -> f.code() == code).findFirst().orElseThrow();
    }

    @Test
    void a_drive_says_the_frequency_it_must_give_and_no_speed_contradicts_it() {
        Plant held = plant("model: DL-15, hold: 7 inHg, coupled: direct", 50);
        // 700 rpm and 2300 rpm of the model's range over 1470 rpm at 50 Hz
        assertThat(value(held, "drive-frequency-least/P1")).isCloseTo(23.8095, within(1e-3));
        assertThat(value(held, "drive-frequency-greatest/P1")).isCloseTo(78.2313, within(1e-3));
        assertThat(finding(held)).isEmpty();
        Plant driven = plant("model: DS-15, start: drive", 50);
        assertThat(finding(driven)).isEmpty();
        assertThat(value(driven, "drive-frequency/P1")).isCloseTo(50 * 3500 / 2940.0, within(1e-3));
        assertThat(answer(plant("model: DL-15, hold: 7 inHg", 50), "drive-frequency/P1"))
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, u -> assertThat(u.why()).contains("coupled: direct"));
    }

    @Test
    void without_belt_or_coupling_the_sheet_says_which_ratio_the_speed_asks_of_this_supply() {
        assertThat(value(plant("model: DL-15", 60), "ratio-asked/P1")).isCloseTo(1860 / 1764.0, within(1e-9));
        assertThat(value(plant("model: DL-15", 50), "ratio-asked/P1")).isCloseTo(1860 / 1470.0, within(1e-9));
        assertThat(finding(plant("model: DL-15", 50))).isEmpty();
    }

    @Test
    void the_slip_that_was_taken_is_an_assumption_and_a_stated_one_is_not() {
        assertThat(plant("model: DL-15", 60).assumptions())
                .anySatisfy(a -> assertThat(a.what()).isEqualTo("motor slip 2 %"));
        assertThat(plant("model: DL-15, motor slip: 1.5 %", 60).assumptions())
                .noneSatisfy(a -> assertThat(a.what()).contains("motor slip"));
        assertThat(plant("model: DL-15, motor speed: 1760 rpm", 60).assumptions())
                .anySatisfy(a -> assertThat(a.what()).isEqualTo("motor hertz that of the supply"));
    }

    @Test
    void a_figure_that_the_plant_adds_to_a_model_is_not_said_to_come_from_the_catalogue() {
        VacuumProducer p = plant("model: DL-15, service factor: 1.15", 60)
                .station("REC")
                .producers()
                .get(0);
        assertThat(p.sourceOf("service factor").text()).doesNotContain("DL-15");
        assertThat(p.sourceOf("deepest vacuum").text()).contains("DL-15");
    }
}
