package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command as a person meets it: what it prints, what it refuses, and its exit code. */
class CatalogueCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    @Test
    void it_lists_the_demo_and_says_that_it_is_invented() {
        assertThat(run("catalogue", "--units", "us")).isEqualTo(ExitCode.HOLDS);
        assertThat(out.toString())
                .contains("46 vacuum producers")
                .contains("DL-15")
                .contains("INVENTED figures of machines that do not exist");
    }

    @Test
    void a_duty_names_the_smallest_that_serves_first_and_why_others_do_not() {
        assertThat(run("catalogue", "--flow", "325 scfm", "--vacuum", "7 inHg", "--kind", "lobe"))
                .isEqualTo(ExitCode.HOLDS);
        assertThat(out.toString()).contains("DL-10: too little air at its greatest speed");
        assertThat(out.toString().indexOf("DL-15")).isLessThan(out.toString().indexOf("DL-20"));
    }

    @Test
    void a_duty_that_nothing_serves_is_told_by_words_and_exit_code() {
        assertThat(run("catalogue", "--flow", "325 scfm", "--vacuum", "24 inHg", "--altitude", "3000 m"))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("below the site's barometer");
        assertThat(run("catalogue", "--flow", "325 scfm", "--vacuum", "20 inHg", "--altitude", "3000 m"))
                .isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(out.toString()).contains("No machine of this catalogue serves the duty.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--flow=325 scfm                  | give --flow and --vacuum together",
                "--flow=325 cfm --vacuum=7 inHg   | --flow: ",
                "--flow=0 scfm --vacuum=7 inHg    | a flow above zero",
                "--flow=9 scfm --vacuum=7 kg      | --vacuum: ",
                "--altitude=90 km                 | --altitude 90 km: no site of a plant; -430 m to 5500 m",
                "--altitude=9000 m                | --altitude 9000 m: ",
                "--temperature=90 degC            | --temperature 90 degC: no air of a site",
                "--kind=turbine                   | It has claw, liquid ring, lobe",
                "--catalogue=no-such-folder       | there is no folder no-such-folder",
            })
    void bad_input_is_refused_in_plain_words(String options, String message) {
        String[] args = ("catalogue " + options.strip()).split(" (?=--)");
        assertThat(run(args)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains(message).doesNotContain("Exception");
    }

    /** Motors are rated to 40 °C and 1000 m, as in a plant (ELE-43). */
    @Test
    void a_motor_hotter_or_higher_than_motors_are_rated_for_serves_nothing_as_far_as_is_known() {
        assertThat(run("catalogue", "--flow=325 scfm", "--vacuum=7 inHg", "--kind=lobe", "--temperature=45 degC"))
                .isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(out.toString()).contains("whether its motor gives its nameplate so hot or so high");
    }

    /** A constant torque over 1000 rpm of a motor rated at 1800 rpm: half the power, nearly the whole torque of the vacuum. */
    @Test
    void a_directly_coupled_pump_turned_slower_is_held_to_the_torque_of_its_motor(@TempDir Path folder)
            throws IOException {
        Files.writeString(folder.resolve("pumps.yaml"), """
                dustwright catalogue: 1
                catalogue: {name: Shop, source: own tests, invented: no}
                producers:
                  L1: {kind: lobe, displacement: 7 L, slip at 1 psi: 120 rpm, mechanical efficiency: 0.9, idle loss: 0.4 hp, coupled: direct,
                    speed: 1800 rpm, speed range: [700 rpm, 2300 rpm], motor: 5 hp, deepest vacuum: 15 inHg, greatest rise: 130 K}
                """);
        String[] duty = {"catalogue", "--flow=120 scfm", "--vacuum=7 inHg", "--units=us", "--catalogue=" + folder};
        assertThat(run(duty)).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(out.toString()).contains("more torque than its motor").doesNotContain("nameplate,");
    }

    @Test
    void a_folder_of_ones_own_is_listed_and_its_faults_come_with_file_and_line(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("pumps.yaml");
        String text = """
                dustwright catalogue: 1
                catalogue: {name: Shop, source: own tests, invented: no}
                producers:
                  L1: {kind: lobe, displacement: 7 L, slip at 1 psi: 120 rpm, mechanical efficiency: 0.9, idle loss: 0.4 hp,
                    speed: 1800 rpm, speed range: [700 rpm, 2300 rpm], motor: 15 hp, deepest vacuum: 15 inHg, greatest rise: 130 K}
                """;
        Files.writeString(file, text);
        assertThat(run("catalogue", "--catalogue", folder.toString())).isEqualTo(ExitCode.HOLDS);
        assertThat(out.toString())
                .contains("1 vacuum producer")
                .contains("Shop: own tests.")
                .doesNotContain("INVENTED");
        Files.writeString(file, text.replace("motor: 15 hp", "motor: 15"));
        assertThat(run("catalogue", "--catalogue", folder.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("pumps.yaml, line 5").contains("a number without a unit");
    }
}
