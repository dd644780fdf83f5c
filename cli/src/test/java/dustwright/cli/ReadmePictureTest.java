package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The picture in the README is what its command draws today. {@code -Ddustwright.accept=true} draws it anew. */
class ReadmePictureTest {
    private static final Path PICTURE = Path.of("..", "docs", "bakery-one-main.svg");

    @Test
    void the_picture_in_the_readme_is_what_its_command_draws(@TempDir Path folder) throws IOException {
        StringWriter said = new StringWriter();
        int code = Main.run(
                new PrintWriter(said),
                new PrintWriter(said),
                "report",
                "../examples/bakery-one-main/plant.yaml",
                "--out",
                folder.toString());
        assertThat(code).as(said.toString()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        String drawn = Files.readString(folder.resolve("drawing.svg"));
        if (Boolean.getBoolean("dustwright.accept")) {
            Files.writeString(PICTURE, drawn);
        }
        assertThat(drawn).isEqualTo(Files.readString(PICTURE));
    }
}
