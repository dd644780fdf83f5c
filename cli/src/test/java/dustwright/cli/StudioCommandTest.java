package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the studio refuses before it serves anything, and that a refusal leaves nothing behind. */
class StudioCommandTest {
    @TempDir
    private Path folder = Path.of(".");

    private String refused(String... args) {
        return refusedReading("", args);
    }

    private String refusedReading(String input, String... args) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
        List<String> all = new ArrayList<>(
                List.of("studio", "--keep", folder.resolve("kept.db").toString()));
        all.addAll(List.of(args));
        StringWriter err = new StringWriter();
        try {
            assertThat(Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err), all.toArray(String[]::new)))
                    .isEqualTo(ExitCode.BAD_INPUT);
        } finally {
            System.setIn(before);
        }
        assertThat(err.toString()).doesNotContain("Exception");
        return err.toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--port;70000          | --port 70000",
                "--certificate;none.p12 | The input ended",
                "--listen;192.0.2.1    | Other machines get an answer only once people are set up",
            })
    void a_plant_is_begun_only_after_all_else_was_judged(String others, String why) {
        Path begun = folder.resolve("mill.yaml");
        List<String> args = new ArrayList<>(List.of(others.split(";")));
        args.addAll(List.of("--new", begun.toString()));
        assertThat(refused(args.toArray(String[]::new))).contains(why);
        assertThat(begun).doesNotExist();
    }

    @Test
    void a_port_that_is_taken_is_said_in_one_sentence_and_no_database_blamed() throws IOException {
        Path plant = Path.of("..", "examples", "bakery", "plant.yaml");
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = String.valueOf(taken.getLocalPort());
            assertThat(refused("--port", port, plant.toString()))
                    .contains(port)
                    .contains("Give another port with --port")
                    .doesNotContain("..")
                    .doesNotContain("another database");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"jdbc:mysql://host.example/plants", "postgresql://host.example/plants"})
    void another_kind_of_database_is_refused_and_no_folder_made_of_its_name(String where) {
        StringWriter err = new StringWriter();
        assertThat(Main.run(
                        new PrintWriter(new StringWriter()),
                        new PrintWriter(err),
                        "studio",
                        "--keep",
                        where,
                        "--people"))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("jdbc:postgresql://HOST/NAME").contains("nothing was made");
        assertThat(Path.of(where.replaceFirst("/.*", ""))).doesNotExist();
    }

    @Test
    void new_begins_one_plant_and_none_that_is_there() throws IOException {
        Path one = folder.resolve("one.yaml");
        Path two = folder.resolve("two.yaml");
        assertThat(refused("--new", one.toString(), two.toString())).contains("--new begins one plant");
        assertThat(refused("--new")).contains("--new begins one plant");
        assertThat(refused("--new", "--people")).contains("--new begins one plant");
        assertThat(one).doesNotExist();
        Files.writeString(one, "kept");
        assertThat(refused("--new", one.toString())).contains("is there already");
        assertThat(one).hasContent("kept");
    }

    @Test
    void a_password_asked_at_the_end_of_the_input_is_one_error() {
        String[] person = {"--person", "A. Engineer", "--role", "designer"};
        assertThat(refused(person)).contains("The input ended before a password was given.");
        assertThat(refusedReading("short\n", person)).isNotEmpty().doesNotContain("input ended");
    }
}
