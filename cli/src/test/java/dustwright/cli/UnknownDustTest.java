package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A dust that is fed and of whose particles nothing is known: no set that feeds it is shown to hold, whatever air alone does. */
class UnknownDustTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    /** The cement example, which holds, without what is known of its particles. */
    private String cement(String feed) throws IOException {
        String text = Files.readString(Path.of("..", "examples", "cement-packing", "plant.yaml"));
        String unknown = text.replace("particle size: 0.015 mm, particle density: 3100 kg/m3, ", "")
                .replace("feed: 120 kg/h", "feed: " + feed);
        assertThat(unknown).isNotEqualTo(text).contains(feed).doesNotContain("particle size:");
        Path file = folder.resolve("plant.yaml");
        Files.writeString(file, unknown);
        return file.toString();
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    @Test
    void verify_says_not_known_and_what_to_enter() throws IOException {
        assertThat(run("verify", cement("120 kg/h"))).as(err.toString()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(words())
                .contains("Not known. Loss unknown by dust cement")
                .contains("enter \"particle size\" and \"particle density\"")
                .contains("For air alone all holds in 128 of 128 sets");
    }

    @Test
    void twenty_tons_an_hour_are_never_said_to_hold() throws IOException {
        assertThat(run("verify", cement("20 t/h"))).as(err.toString()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(words()).contains("Loss unknown by dust cement").doesNotContain("Holds in");
    }

    @Test
    void sets_that_feed_nothing_are_not_touched() throws IOException {
        assertThat(run("verify", cement("120 kg/h"), "--no-dust"))
                .as(err.toString())
                .isEqualTo(ExitCode.HOLDS);
        assertThat(words()).contains("Holds in").doesNotContain("Loss unknown");
    }

    @Test
    void json_says_that_the_finding_is_not_decided() throws IOException {
        assertThat(run("verify", cement("120 kg/h"), "--format", "json", "--open", "AS1"))
                .isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(out.toString()).contains("\"decided\" : false").contains("DUST_LOSS/cement/");
    }

    @Test
    void cover_does_not_decide() throws IOException {
        assertThat(run("cover", cement("120 kg/h"), "--users", "1")).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(words()).contains("Not decided for every set: what dust cement costs is not known");
    }

    @Test
    void explain_tells_what_is_fed_where_and_what_would_help() throws IOException {
        assertThat(run("explain", cement("120 kg/h"), "1")).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(words())
                .contains("fed at inlet ")
                .contains("not shown to hold")
                .contains("Enter \"particle size\"");
    }

    /** The answer with its lines joined. */
    private String words() {
        return out.toString().replaceAll("\\s+", " ");
    }

    private String shot(String more) throws IOException {
        String text = Files.readString(Path.of("..", "examples", "cement-packing", "plant.yaml"));
        String heavy = text.replace(
                "particle size: 0.015 mm, particle density: 3100 kg/m3, ",
                "particle size: 2 mm, particle density: 7600 kg/m3, " + more);
        assertThat(heavy).isNotEqualTo(text);
        Path file = folder.resolve("plant.yaml");
        Files.writeString(file, heavy);
        return file.toString();
    }

    /** Steel shot of 2 mm: 0.0638 · 0.002^0.3 · √7600 is 0.86, beyond CON-30. */
    @Test
    void
            shot_too_heavy_for_the_law_of_its_velocity_is_asked_for_choking_and_its_loss_is_not_known_until_its_speed_is_stated()
                    throws IOException {
        assertThat(run("verify", shot(""), "--open", "AS1")).as(err.toString()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(words()).contains("Loss unknown by dust cement");
        assertThat(run("solve", shot(""), "--open", "AS1")).as(err.toString()).isNotEqualTo(ExitCode.BAD_INPUT);
        out.getBuffer().setLength(0);
        run("verify", shot("level speed: 30 %, "), "--open", "AS1");
        assertThat(words()).doesNotContain("Loss unknown");
    }

    /** What was measured for the dust needs no particles: 40 m/s is more than any leg of the plant has with one user. */
    @Test
    void a_carrying_velocity_that_was_measured_is_asked_without_particles() throws IOException {
        String file = cement("120 kg/h");
        Files.writeString(
                Path.of(file),
                Files.readString(Path.of(file))
                        .replaceFirst("tapped density:", "carrying velocity: 40 m/s, tapped density:")
                        .replaceFirst("requirements:\n", "requirements:\n  saltation factor: 1\n"));
        run("verify", file, "--open", "AS1");
        assertThat(words()).contains("Too near saltation or choking in").doesNotContain("or a measured");
    }
}
