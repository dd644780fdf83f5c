package dustwright.cli;

import static dustwright.cli.Edits.entry;
import static dustwright.cli.Edits.study;
import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.sheet.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A panel in whatever air and of whatever size the plant file takes: its heat is judged, or told as outside the equation's range. */
class ColdPanelTest {
    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
    }

    private static Finding heat(Study study) {
        return study.worstPerPlace().stream()
                .filter(f -> f.code() == FindingCode.PANEL_HEAT)
                .findFirst()
                .orElseThrow();
    }

    /** By hand: 5.5 W/(m² K) over the bakery's 2.2 m² pass 12.1 W for each kelvin between the air and what the parts bear. */
    @ParameterizedTest
    @CsvSource({"-40, 70, 1331", "-20, 50, 847", "0, 50, 605", "35, 50, 181.5", "60, 30, -363"})
    void walls_pass_what_they_do_by_hand_in_the_coldest_and_the_hottest_air(
            double around, double inside, double walls_W) {
        String text = with(
                bakery,
                "  ambient: 35 degC",
                "  ambient: " + around + " degC\n  inside: " + inside + " degC\n  cooler: 600 W");
        assertThat(heat(study(text)).value().si()).isCloseTo(walls_W + 600, within(1e-6));
    }

    /** Air of −40 °C weighs 1.51 kg/m³ at sea level. */
    @Test
    void a_fan_that_leads_the_coldest_air_through_the_panel_is_counted() {
        String cold = with(bakery, "  ambient: 35 degC", "  ambient: -40 degC\n  cooling air: 20 m3/h")
                .replaceFirst("temperature: [^,}\n]*", "temperature: -40 degC")
                .replaceFirst("altitude: [^,}\n]*", "altitude: 0 m");
        assertThat(heat(study(cold)).holds()).isTrue();
    }

    /** A tenth of a square metre passes 0.55 W for each kelvin: more than 60 W inside are beyond 110 K. */
    @Test
    void walls_far_too_small_for_the_heat_give_no_temperature_and_fail() {
        Study small = study(with(bakery, "  surface: 2.2 m2", "  surface: 0.1 m2"));
        assertThat(entry(small, "panel-inside").answer())
                .isInstanceOfSatisfying(
                        Answer.Unknown.class, no -> assertThat(no.why()).contains("range", "110 K"));
        assertThat(heat(small).fails()).isTrue();
        assertThat(entry(study(bakery), "panel-inside").answer()).isInstanceOf(Answer.Known.class);
    }
}
