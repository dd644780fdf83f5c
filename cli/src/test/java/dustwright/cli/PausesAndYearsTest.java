package dustwright.cli;

import static dustwright.cli.Edits.entry;
import static dustwright.cli.Edits.plant;
import static dustwright.cli.Edits.study;
import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Step;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.sheet.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What equipment bears in every pause, and what adds up over a year. */
class PausesAndYearsTest {
    private static final double DAY_s = 86_400;
    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
    }

    private static double figure(Study study, String id) {
        return ((Answer.Known) entry(study, id).answer()).value().si();
    }

    private static Finding worst(Study study, FindingCode code) {
        return study.worstPerPlace().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow();
    }

    private static String pickedUp(String perShift) {
        return with(
                with(bakery, "cleaning: 20 min,", "picked up: [{dust: flour, per shift: " + perShift + "}],"),
                "  sock velocity:",
                "  container life: 300 d\n  sock velocity:");
    }

    /** 10 shifts a week into 0.45 m³ of 550 kg/m³: 247.5/9.4 weeks, whichever whole changes fall into one year. */
    @Test
    void a_bag_that_is_seldom_changed_lasts_as_its_mass_balance_says() {
        Study few = study(pickedUp("0.94 kg"));
        assertThat(figure(few, "life/REC") / DAY_s).isCloseTo(7 * 247.5 / 9.4, within(0.1));
        assertThat(worst(few, FindingCode.CONTAINER_LIFE).fails()).isTrue();
        double once = 50 * 9.4 / 247.5;
        assertThat(figure(few, "container-cost"))
                .as("price of " + once + " bags")
                .isCloseTo(once * figure(study(bakery), "container-cost") / yearly(study(bakery)), within(0.05));
    }

    private static double yearly(Study study) {
        return figure(study, "changes/REC") * 7 * DAY_s * 50;
    }

    /** A year sees no change at all, and yet none lasts longer than 51.6 weeks of work. */
    @Test
    void a_bag_that_no_change_of_the_year_ends_does_not_last_for_ever() {
        Study fewer = study(pickedUp("0.48 kg"));
        assertThat(figure(fewer, "life/REC") / DAY_s).isCloseTo(7 * 247.5 / 4.8, within(0.2));
    }

    @Test
    void the_motor_asked_for_bears_the_pause_too() {
        String fast = with(
                with(bakery, "speed: 2155 rpm", "speed: 2290 rpm"), "machine sheave: 170 mm", "machine sheave: 160 mm");
        Study study = study(fast);
        double pause = figure(study, "shut-load/P1");
        assertThat(figure(study, "motor-load/P1")).isGreaterThanOrEqualTo(pause);
        double nameplate_W = 15 * 745.6998715822702;
        assertThat(figure(study, "motor-asked/P1")).isGreaterThanOrEqualTo(1.1 * pause * nameplate_W);
    }

    @Test
    void a_rotary_valve_is_held_against_the_vacuum_of_every_pause() {
        Study study = study(with(bakery, "greatest difference: 60 kPa", "greatest difference: 32 kPa"));
        Finding difference = worst(study, FindingCode.VALVE_DIFFERENCE);
        assertThat(difference.fails()).isTrue();
        assertThat(difference.state()).isEqualTo("all inlets shut");
        assertThat(figure(study, "difference/REC")).isGreaterThan(32_000);
    }

    /** Isentropic nozzle, γ = 1.4, choked at 70.1 kPa and 11 inHg: 0.709 of the mass at sea level (own computation of a reviewer). */
    @Test
    void a_relief_valve_rated_on_standard_air_admits_less_where_the_air_is_thin() {
        String high = bakery.replaceFirst("altitude: [^,}\n]*", "altitude: 3000 m");
        ReliefValve valve = plant(with(high, "rated: 350 scfm, stated for: site air", "rated: 350 scfm"))
                .stations()
                .get(0)
                .relief()
                .orElseThrow();
        double ratio = valve.rated().cubicMetresPerSecond()
                / valve.standard().orElseThrow().cubicMetresPerSecond();
        assertThat(ratio).isCloseTo(0.709, within(0.002));
        ReliefValve own = plant(high).stations().get(0).relief().orElseThrow();
        assertThat(own.standard()).isEmpty();
        assertThat(own.rated().cubicMetresPerSecond())
                .isCloseTo(valve.standard().orElseThrow().cubicMetresPerSecond(), within(1e-12));
    }

    /** 5.5 W/(m² K) over 2.2 m² and 5 K come in on top of what is made inside. */
    @Test
    void a_panel_that_stands_hotter_than_its_parts_bear_asks_more_of_its_cooler() {
        Study hot = study(with(bakery, "  ambient: 35 degC", "  ambient: 55 degC"));
        assertThat(figure(hot, "panel-cooler")).isCloseTo(figure(hot, "panel-heat") + 5.5 * 2.2 * 5, within(1e-6));
    }

    /** By hand: 24 kg of flour at 40 kg/h are 36 min of one user's work, whoever else vacuums; milk at 30 kg/h in a zone for one user 48 min. */
    @Test
    void dust_is_picked_up_no_faster_than_inlets_that_have_it_and_users_who_may_stand_there() {
        String milk = with(bakery, "cleaning: 20 min,", "picked up: [{dust: milk, zone: allergen, per shift: 24 kg}],");
        assertThat(figure(study(milk), "cleaning/REC")).isCloseTo(24.0 / 30 * 3600, within(1e-6));
        String both = with(
                bakery,
                "cleaning: 20 min,",
                "picked up: [{dust: milk, zone: allergen, per shift: 6 kg}, {dust: flour, per shift: 120 kg}],");
        assertThat(figure(study(both), "cleaning/REC"))
                .as("three users")
                .isCloseTo((6 / 30.0 + 3) / 3 * 3600, within(1e-6));
        Finding open = worst(study(milk.replace("dust: milk, feed: 30 kg/h", "dust: milk")), FindingCode.CLEANING_TIME);
        assertThat(open.unjudged()).isTrue();
        assertThat(open.derivation().steps().get(0).formula()).contains("feed", "Milk and egg powder in zone allergen");
    }

    /** Own curve of a multistage exhauster: its power rises with its flow, and nothing brings it more air than the open vent valve. */
    @Test
    void a_motor_is_held_to_the_power_that_a_dynamic_machine_takes_with_the_vent_valve_open() {
        Study study = study(turbo());
        Finding vented = study.sheets().stream()
                .filter(sheet -> sheet.id().equals("vent-open/REC"))
                .flatMap(sheet -> sheet.findings().stream())
                .filter(f -> f.code() == FindingCode.PRODUCER_POWER)
                .findFirst()
                .orElseThrow();
        assertThat(vented.fails()).isTrue();
        assertThat(figure(study, "worst-power/P1")).isEqualTo(vented.value().si());
        assertThat(figure(study, "motor-asked/P1"))
                .isGreaterThanOrEqualTo(1.1 * vented.value().si());
    }

    /** Nobody has to shut his inlet: three tools beside the vent valve bring a dynamic machine more air, and power, than the valve alone. */
    @Test
    void users_who_leave_their_inlets_open_beside_the_vent_valve_load_a_dynamic_machine_most() {
        Study study = study(turbo());
        List<Step> steps = entry(study, "vented-load/P1").derivation().steps();
        assertThat(steps.get(steps.size() - 1).inputs().get(0).meaning()).contains("vent valve open, ");
        double inSet_W = figure(study, "vented-load/P1") * 11_000;
        // own curve of the test: 15.5 kW at 1600 m³/h and 9.5 kW at 1000 m³/h; the vent valve alone leaves some 10 kPa
        assertThat(inSet_W).isBetween(11_000.0, 15_500.0);
        assertThat(figure(study, "worst-power/P1")).isCloseTo(inSet_W, within(1e-6));
    }

    @Test
    void a_station_without_a_vent_valve_is_not_known_to_stop_the_pull_for_a_change() {
        String none = bakery.replaceFirst("\n    vent valve:[^\n]*", "");
        assertThat(worst(study(none), FindingCode.VENT_PULL).unjudged()).isTrue();
        String goesOn = with(none, "during a change: vacuuming stops", "during a change: vacuuming goes on");
        String neverOffLine = goesOn.replaceFirst("\n  cleaning interval:[^\n]*", "");
        assertThat(study(neverOffLine).worstPerPlace()).noneMatch(f -> f.code() == FindingCode.VENT_PULL);
    }

    /** By hand: 3/4 hp for as long as the year has producers turning, which the sheet of the producers' energy prints. */
    @Test
    void the_rotary_valve_takes_its_nameplate_as_long_as_the_producers_turn() {
        Study study = study(bakery);
        double hours_s = entry(study, "energy-REC").derivation().steps().stream()
                .flatMap(step -> step.inputs().stream())
                .filter(term -> term.meaning().startsWith("hours of a year"))
                .mapToDouble(term -> term.value().si())
                .sum();
        double valve_J = figure(study, "valve-energy-REC");
        assertThat(valve_J).isCloseTo(0.75 * 745.6998715822702 * hours_s, within(1.0));
        Step all = entry(study, "energy-cost").derivation().steps().get(0);
        assertThat(all.inputs().stream().mapToDouble(term -> term.value().si())).contains(valve_J);
    }

    /** A year's energy without one of its parts is no year's energy. */
    @Test
    void energy_of_a_year_is_not_known_where_that_of_a_fan_or_a_rotary_valve_is_not() {
        for (String left : List.of(" motor: 3/4 hp,", ", motor: 1/4 hp")) {
            Study open = study(with(bakery, left, ""));
            Answer answer = entry(open, "energy-cost").answer();
            assertThat(answer).as(left).isInstanceOf(Answer.Unknown.class);
            assertThat(((Answer.Words) entry(open, "left-out").answer()).text()).contains("Energy, a year");
        }
    }

    /**
     * A multistage machine that reaches 23 kPa at 1.2 kg/m³ without flow reaches p_a c/(1 + c) on the air it holds, c = 23 kPa/(1.2 kg/m³ R T) =
     * 0.2277 at 287.05 · 293.15 J/kg (dry air, within 0.3 %): 18.8 kPa at 101.3 kPa. The claw beside it draws the station to where the relief valve
     * passes what the claw takes, beyond 19.5 kPa.
     */
    @Test
    void a_machine_that_its_neighbour_shuts_off_in_every_pause_is_told_and_its_curve_is_not_called_unmeasured() {
        Study pair = study(PAIR);
        Finding shut = worst(pair, FindingCode.PRODUCER_SHUT);
        assertThat(shut.where().id()).isEqualTo("MC");
        assertThat(shut.state()).isEqualTo("all inlets shut");
        assertThat(shut.limit().si()).isCloseTo(18_800, within(100.0));
        assertThat(shut.value().si()).isGreaterThan(19_500);
        assertThat(shut.fails()).isTrue();
        assertThat(figure(pair, "shut-check/MC")).isEqualTo(shut.limit().si());
        assertThat(worst(pair, FindingCode.RELIEF_CAPACITY).holds()).isTrue();
    }

    /** The same machine measured to 22 kPa only: nobody knows whether it still moves air at what the claw makes. */
    @Test
    void a_machine_whose_curve_ends_before_it_moves_no_air_is_not_measured_behind_a_shut_check_valve() {
        Study pair = study(with(PAIR, ", {flow: 0 m3/h, vacuum: 23 kPa, power: 4.5 kW}", ""));
        assertThat(worst(pair, FindingCode.RELIEF_CAPACITY).unjudged()).isTrue();
    }

    private static final String PAIR = """
            dustwright: 1
            plant: {name: An invented pair, units: si}
            site: {altitude: 0 m, temperature: 20 degC, humidity: 0 %}
            tubes: {T: {bore: 150 mm}}
            hoses: {H: {bore: 65 mm, length: 5 m}}
            tools: {t: {k: 5}}
            points: {J: {}}
            inlets: {A1: {hose: H, tool: t}, A2: {hose: H, tool: t}}
            runs:
              R1: {from: A1, to: J, tube: T, length: 10 m}
              R2: {from: A2, to: J, tube: T, length: 10 m}
              M: {from: J, to: REC, tube: T, length: 20 m}
            stations:
              REC:
                receiver: {diameter: 1 m}
                filter: {cloth: 20 m2, resistance: {clean: 20000 Pa.s/m, normal: 40000 Pa.s/m, dirty: 60000 Pa.s/m}}
                relief valve: {set: 19.5 kPa, full: 24 kPa, rated: 700 m3/h free}
                producers:
                  MC: {kind: multistage centrifugal, curve taken: at rated density, rated speed: 3550 rpm, motor: 11 kW, deepest vacuum: 24 kPa, greatest rise: 120 K,
                       curve: [{flow: 1200 m3/h, vacuum: 10 kPa, power: 10 kW}, {flow: 800 m3/h, vacuum: 18 kPa, power: 9 kW}, {flow: 400 m3/h, vacuum: 22 kPa, power: 7 kW}, {flow: 0 m3/h, vacuum: 23 kPa, power: 4.5 kW}]}
                  CL: {kind: claw, rated speed: 1500 rpm, motor: 15 kW, deepest vacuum: 60 kPa, greatest rise: 150 K,
                       curve: [{flow: 500 m3/h, vacuum: 0 kPa, power: 4 kW}, {flow: 480 m3/h, vacuum: 20 kPa, power: 6 kW}, {flow: 440 m3/h, vacuum: 40 kPa, power: 8 kW}, {flow: 380 m3/h, vacuum: 60 kPa, power: 9.6 kW}]}
            usage: {simultaneous users: 2, design sets: {both: [A1, A2]}}
            requirements: {tool flow: 100 m3/h free}
            """;

    @Test
    void the_hottest_air_a_producer_gives_off_is_that_of_the_pauses_too() {
        Study study = study(bakery);
        double shut_K = study.sheets().stream()
                .filter(sheet -> sheet.id().equals("shut-inlets/REC"))
                .flatMap(sheet -> sheet.findings().stream())
                .filter(f -> f.code() == FindingCode.PRODUCER_TEMPERATURE)
                .findFirst()
                .orElseThrow()
                .value()
                .si();
        assertThat(figure(study, "discharge-temperature/P1")).isGreaterThanOrEqualTo(293.15 + shut_K - 1e-9);
    }

    /** Common practice, no source: a usual bag takes about 64 ft³ and replaces roughly seven to nine 55-gallon drums. */
    @Test
    void the_sheet_of_a_usual_bag_says_that_it_replaces_seven_to_nine_drums() {
        String usual = with(
                with(bakery, "volume: 0.45 m3", "volume: 64 ft3"),
                "size: [0.8 m, 0.8 m, 0.8 m]",
                "size: [1.2 m, 1.2 m, 1.8 m]");
        assertThat(figure(study(usual), "drums/REC")).isBetween(7.0, 9.0);
    }

    private static String turbo() {
        String turbo = bakery.replaceFirst(
                "P1: \\{model: DL-15, speed: 2155 rpm,[^\n]*\n[^\n]*\n[^\n]*\n",
                "P1: {kind: multistage centrifugal, rated speed: 3550 rpm, curve taken: at rated density, deepest vacuum: 38 kPa, greatest rise: 150 K, motor: 11 kW, start: direct,\n"
                        + "           curve: [{flow: 1600 m3/h, vacuum: 0.1 kPa, power: 15.5 kW}, {flow: 1000 m3/h, vacuum: 20 kPa, power: 9.5 kW},"
                        + " {flow: 300 m3/h, vacuum: 38 kPa, power: 5 kW}]}\n");
        assertThat(turbo).isNotEqualTo(bakery);
        return turbo;
    }

    /** At 20 kPa and a fifth less density the same printed point stands for a quarter more vacuum and power. */
    @Test
    void a_curve_that_may_have_been_taken_under_its_own_vacuum_is_asked_for_and_takes_more_power_if_it_was() {
        String under = with(turbo(), "curve taken: at rated density", "curve taken: under its own vacuum");
        assertThat(figure(study(under), "shut-load/P1")).isGreaterThan(figure(study(turbo()), "shut-load/P1"));
        assertThat(study(under).worstPerPlace()).noneMatch(f -> f.code() == FindingCode.CURVE_TAKEN);
        Finding open = worst(study(with(turbo(), "curve taken: at rated density, ", "")), FindingCode.CURVE_TAKEN);
        assertThat(open.unjudged()).isTrue();
        assertThat(open.derivation().steps().get(0).formula()).contains("curve taken");
    }

    /** 10 mm let in next to nothing: with and without it the users vacuum alike. */
    @Test
    void a_vent_valve_that_is_too_small_to_stop_the_pull_fails() {
        assertThat(worst(study(bakery), FindingCode.VENT_PULL).holds()).isTrue();
        Study small = study(with(bakery, "vent valve: {diameter: 75 mm", "vent valve: {diameter: 10 mm"));
        assertThat(worst(small, FindingCode.VENT_PULL).fails()).isTrue();
    }
}
