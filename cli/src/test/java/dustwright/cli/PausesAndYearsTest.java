package dustwright.cli;

import static dustwright.cli.Edits.plant;
import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    private static Study study(String text) {
        Plant plant = plant(text);
        return Study.of(plant, States.usual(plant)).withSheets();
    }

    private static Entry entry(Study study, String id) {
        return study.sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(e -> e.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " is on no sheet"));
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
}
