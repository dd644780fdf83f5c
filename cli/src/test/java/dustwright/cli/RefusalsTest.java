package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a command cannot do it says, instead of doing something else. */
class RefusalsTest {
    private static final String BAKERY =
            Path.of("..", "examples", "bakery", "plant.yaml").toString();
    private static final String NETWORK = """
            dustwright: 1
            plant: {name: Main of a works, units: si}
            site: {altitude: 0 m, temperature: 15 degC, humidity: 0 %}
            tubes: {T: {bore: 100 mm, roughness: 0.05 mm}}
            points: {IN: {}, OUT: {}, CAP: {}}
            runs:
              R1: {from: IN, to: OUT, tube: T, length: 100 m}
              R2: {from: IN, to: CAP, tube: T, length: 10 m}
            held:
              IN: {pressure: 12 bar abs}
              OUT: {pressure: 11.9 bar abs}
              CAP: {supply: 0 kg/s}
            """;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "explain; ; | Say which finding",
                "explain; ;x | No finding and no figure has the words",
                "explain; ;enough air A | No finding and no figure has the words",
                "explain; ;-1 | There is no finding -1: they are numbered 1 to",
                "explain; ;99999999999 | There is no finding 99999999999",
                "verify; ;--open;A1;--feeding;B1 | Inlet B1 is closed, so nobody feeds there",
                "solve; ;--open;A1;--feeding;B1 | Inlet B1 is closed, so nobody feeds there",
                "cover; ;--threads;0 | --threads 0: say 1 or more",
                "solve; ;--filter;foul | [clean, normal, dirty]",
            })
    void an_option_that_means_nothing_is_refused_in_the_words_of_the_help(String command, String expected) {
        String[] args = command.split(";", -1);
        args[1] = BAKERY;
        if (args[0].equals("explain")) {
            args = new String[] {args[0], args[1], "--", args[2]};
        }
        assertThat(run(args)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains(expected);
    }

    /** The finding CONTAINER_LOAD of REC holds the same words. */
    @Test
    void explain_finds_by_whole_words_of_what_verify_says_whether_it_holds_or_not() {
        assertThat(run("explain", BAKERY, "too little air inlet A1")).isEqualTo(ExitCode.HOLDS);
        assertThat(out.toString()).contains("inlet A1").doesNotContain("inlet A10");
        assertThat(run("explain", BAKERY, "enough AIR")).isEqualTo(ExitCode.HOLDS);
        assertThat(err.toString()).contains("findings have these words; the worst of them is TOOL_FLOW/");
    }

    @Test
    void explain_by_a_figures_id_answers_that_figure() {
        assertThat(run("explain", BAKERY, "load/REC")).isEqualTo(ExitCode.HOLDS);
        assertThat(out.toString()).contains("Safe working load").doesNotContain("stops filling", "Not too heavy");
    }

    @Test
    @Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void a_pipe_is_no_plant_file(@TempDir Path folder) throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        assertThat(run("verify", pipe.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("it is no ordinary file");
    }

    @Test
    void a_network_without_inlets_has_no_set_of_open_inlets(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("main.yaml"), NETWORK);
        assertThat(run("solve", file.toString())).isEqualTo(ExitCode.HOLDS);
        assertThat(out.toString())
                .contains("As held and fed; the plant has no inlets")
                .contains("Below zero: above the barometer")
                .doesNotContain("closed");
        assertThat(run("explain", file.toString(), "1")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("There is no finding 1: nothing is asked of this plant.");
    }
}
