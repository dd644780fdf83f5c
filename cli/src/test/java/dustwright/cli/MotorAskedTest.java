package dustwright.cli;

import static dustwright.cli.Edits.entry;
import static dustwright.cli.Edits.study;
import static dustwright.cli.Edits.with;
import static dustwright.cli.Edits.withFirst;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sheet.Answer;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The motor a producer's sheet asks for, put into the plant: by power, by torque on a drive, and where the site takes from its nameplate. */
class MotorAskedTest {
    private static final double HORSEPOWER_W = 745.6998715822702;

    private static final Set<FindingCode> OF_THE_MOTOR =
            Set.of(FindingCode.PRODUCER_POWER, FindingCode.PRODUCER_TORQUE, FindingCode.MOTOR_AT_SITE);

    /** An invented hall: two users, one lobe pump. */
    private static final String HALL = """
            dustwright: 1
            plant: {name: Invented hall, units: si, coordinates: m}
            site: {altitude: 200 m, temperature: 25 degC}
            tubes: {T: {outside: 76.1 mm, wall: 2 mm}}
            hoses: {H: {bore: 51 mm, length: 8 m}}
            tools: {W: {k: 3}}
            points: {J: [10, 0, 4]}
            inlets: {A: {at: [10, 5, 1], hose: H, tool: W}, B: {at: [4, 0, 1], hose: H, tool: W}}
            runs:
              DA: {from: A, to: J, tube: T, bend radius: 200 mm}
              DB: {from: B, to: J, tube: T, bend radius: 200 mm}
              M: {from: J, to: REC, tube: T, bend radius: 200 mm}
            stations:
              REC:
                at: [30, 0, 4]
                filter: {cloth: 10 m2, resistance: {clean: 20000 Pa.s/m, normal: 40000 Pa.s/m, dirty: 60000 Pa.s/m}}
                relief valve: {set: 40 kPa, full: 45 kPa, rated: 1200 m3/h free}
                vent valve: {diameter: 75 mm, discharge coefficient: 0.6}
                producers:
                  P: {kind: lobe, displacement: 10 L, slip at 1 psi: 120 rpm, idle loss: 0.7 kW, hold: 27 kPa, speed range: [900 rpm, 2200 rpm], motor: 75 kW, poles: 4, coupled: direct, deepest vacuum: 50 kPa, greatest rise: 130 K}
            usage: {simultaneous users: 2, design sets: {both: [A, B]}}
            supply: {volts: 400 V, hertz: 50 Hz}
            """;

    private static List<Finding> ofTheMotor(Study study) {
        return study.findings().filter(f -> OF_THE_MOTOR.contains(f.code())).toList();
    }

    private static String why(Study study, String id) {
        return ((Answer.Unknown) entry(study, id).answer()).why();
    }

    private static double figure(Study study, String id) {
        return ((Answer.Known) entry(study, id).answer()).value().si();
    }

    private static String withMotor(String text, double rating_W) {
        return withFirst(text, "motor: [^,]+,", String.format(Locale.ROOT, "motor: %.3f W,", rating_W));
    }

    /** Seeded: drives and straight starts, poles, speeds, vacua, heights and heats. */
    @Test
    void the_motor_asked_for_put_into_the_plant_breaks_no_finding_of_the_motor() {
        SplittableRandom random = new SplittableRandom(20_25);
        int known = 0;
        int torqueDecides = 0;
        for (int n = 0; n < 60; n++) {
            boolean american = random.nextBoolean();
            boolean drive = random.nextInt(3) > 0;
            int poles = 2 * random.nextInt(1, 4);
            double least_rpm = random.nextDouble(500, 1200);
            String text = with(HALL, "altitude: 200 m", "altitude: " + random.nextInt(0, 3800) + " m");
            text = with(text, "temperature: 25 degC", "temperature: " + random.nextInt(-5, 45) + " degC");
            text = american ? with(text, "volts: 400 V, hertz: 50 Hz", "volts: 480 V, hertz: 60 Hz") : text;
            text = poles == 4 ? text : with(text, "poles: 4", "poles: " + poles);
            text = with(
                    text,
                    "hold: 27 kPa, speed range: [900 rpm, 2200 rpm]",
                    (drive
                                    ? "hold: " + random.nextInt(12, 36) + " kPa"
                                    : "speed: " + Math.round(least_rpm * 1.4) + " rpm")
                            + String.format(
                                    Locale.ROOT,
                                    ", speed range: [%.0f rpm, %.0f rpm]",
                                    least_rpm,
                                    least_rpm * random.nextDouble(1.5, 2.6)));
            text = drive
                    ? text
                    : with(
                            text,
                            "coupled: direct",
                            random.nextBoolean() ? "start: direct" : "start: drive, coupled: direct");
            Study asking = study(text);
            if (!(entry(asking, "motor-asked/P").answer() instanceof Answer.Known motor)) {
                assertThat(why(asking, "motor-asked/P")).as(text).contains("Motors give their nameplate up to");
                assertThat(figure(asking, "rating-asked/P")).isPositive();
                continue;
            }
            known++;
            double load = figure(asking, "worst-power/P");
            torqueDecides += figure(asking, "rating-asked/P") > 1.1001 * load ? 1 : 0;
            Study fitted = study(withMotor(text, motor.value().si()));
            assertThat(ofTheMotor(fitted)).as(text).isNotEmpty().allMatch(Finding::holds);
            assertThat(figure(fitted, "motor-asked/P"))
                    .as(text)
                    .isEqualTo(motor.value().si());
        }
        assertThat(known).isBetween(20, 55);
        assertThat(torqueDecides).isGreaterThan(10);
    }

    /** By hand: a motor of 1470 rpm at 900 rpm gives 900/1470 of its rating; 10 % spare on top. */
    @Test
    void on_a_drive_the_rating_asked_is_that_of_the_torque() {
        Study study = study(HALL);
        double ratio = figure(study, "motor-torque/P");
        assertThat(figure(study, "rating-asked/P")).isCloseTo(1.1 * ratio * 75_000, within(1e-6));
        assertThat(entry(study, "rating-asked/P").name()).contains("all inlets shut");
        assertThat(entry(study, "motor-torque/P").name()).contains("at its greatest, all inlets shut");
    }

    @Test
    void nothing_is_asked_where_motor_speed_or_phases_are_not_known() {
        Study unturned = study(with(HALL, "poles: 4, coupled: direct", "poles: 4"));
        assertThat(why(unturned, "motor-asked/P")).contains("more torque than its power shows", "belt");
        assertThat(why(unturned, "rating-asked/P")).contains("more torque than its power shows");
        Study onePhase = study(with(with(HALL, "hertz: 50 Hz", "hertz: 50 Hz, phases: 1"), "400 V", "230 V"));
        assertThat(why(onePhase, "motor-asked/P")).contains("three-phase");
    }

    @Test
    void a_site_too_high_for_nameplates_names_the_power_a_motor_has_to_give_there() {
        Study high = study(with(with(HALL, "altitude: 200 m", "altitude: 3000 m"), "25 degC", "42 degC"));
        assertThat(why(high, "motor-asked/P"))
                .contains("up to 20 °C (68 °F) at this altitude of 3000 m (9843 ft)", "motor at site");
        assertThat(figure(high, "rating-asked/P")).isGreaterThan(HORSEPOWER_W);
    }

    // ---- what the producer's air tells

    /** Without a relief valve hardly any air comes with all inlets shut: 24 566 K by the balance, which is no temperature of anything. */
    @Test
    void a_trickle_of_air_is_told_as_too_little_air_and_not_as_a_temperature() {
        String shut = with(
                with(HALL, "    relief valve: {set: 40 kPa, full: 45 kPa, rated: 1200 m3/h free}\n", ""),
                "hold: 27 kPa, speed range: [900 rpm, 2200 rpm]",
                "speed: 1470 rpm, speed range: [900 rpm, 2200 rpm]");
        shut = with(shut, "hose: H, tool: W", "hose: H, tool: W, leak: 1e-8 kg/(s.Pa)");
        Study study = study(shut);
        Finding hot = study.worstPerPlace().stream()
                .filter(f -> f.code() == FindingCode.PRODUCER_TEMPERATURE)
                .findFirst()
                .orElseThrow();
        assertThat(hot.fails()).isTrue();
        assertThat(Wording.valueAndLimit(hot, new Show(UnitSystem.SI)))
                .isEqualTo("too little air passes for a temperature to be told; most a rise of 130.0\u00A0K");
        assertThat(Show.margin(hot)).isEqualTo("far too hot");
        assertThat(why(study, "discharge-temperature/P")).contains("too little air");
    }

    /** One balance for both limits: the air asked goes as one over the rise allowed. */
    @Test
    void beside_a_dust_that_burns_a_trickle_of_air_is_too_hot_by_the_air_that_would_cool_it() {
        String burning = with(
                with(HALL, "    relief valve: {set: 40 kPa, full: 45 kPa, rated: 1200 m3/h free}\n", ""),
                "hold: 27 kPa, speed range: [900 rpm, 2200 rpm]",
                "speed: 1470 rpm, speed range: [900 rpm, 2200 rpm]");
        burning = with(burning, "hose: H, tool: W", "hose: H, tool: W, leak: 1e-8 kg/(s.Pa), dust: d");
        burning = with(
                burning,
                "tubes: {T:",
                "dusts: {d: {name: Dust, class: very fine light dust, bulk density: 550 kg/m3, particle size: 0.06 mm, particle density: 1450 kg/m3,"
                        + " combustible: yes, explosion: {family: organic, explodes like: \"Starch, wheat\", ignites like: Wheat flour,"
                        + " like because: \"most of it is wheat starch, invented\"}}}\ntubes: {T:");
        Study study = study(burning);
        Finding hot = study.findings()
                .filter(f -> f.code() == FindingCode.HOT_SURFACE)
                .findFirst()
                .orElseThrow();
        assertThat(hot.fails()).isTrue();
        assertThat(hot.value()).isInstanceOf(FreeAirFlow.class);
        Finding byMachine = study.worstPerPlace().stream()
                .filter(f -> f.code() == FindingCode.PRODUCER_TEMPERATURE)
                .findFirst()
                .orElseThrow();
        double allowed_K = hot.derivation().steps().stream()
                .flatMap(step -> step.inputs().stream())
                .filter(term -> term.symbol().equals("ΔT_most"))
                .mapToDouble(term -> term.value().si())
                .findFirst()
                .orElseThrow();
        assertThat(hot.limit().si() * allowed_K)
                .isCloseTo(hot.value().si() * byMachine.value().si(), within(1e-9));
    }
}
