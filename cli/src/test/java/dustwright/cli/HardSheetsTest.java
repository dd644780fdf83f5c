package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Sheets of plants that stand still or are asked oddly: words, never a fault of the program. */
class HardSheetsTest {
    private static final Path BAKERY = Path.of("..", "examples", "bakery", "plant.yaml");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    @Test
    void with_all_producers_standing_nothing_is_drawn_through_the_sock_and_that_is_said() {
        assertThat(run("sheet", BAKERY.toString(), "--running", "none")).isNotEqualTo(ExitCode.INTERNAL);
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString()).contains("No solved state makes a vacuum here.");
    }

    @Test
    void the_neck_seal_reads_in_psi_for_us_and_in_kilopascals_for_si() {
        run("sheet", BAKERY.toString(), "bagging", "--units", "us");
        assertThat(out.toString()).contains("Neck seal not too hard at bulk bag or drum REC: 4.0 psi, most 9.0");
        run("sheet", BAKERY.toString(), "bagging", "--units", "si");
        assertThat(out.toString()).contains("27.6 kPa, most 62.1");
    }
}
