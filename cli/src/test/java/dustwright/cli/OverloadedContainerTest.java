package dustwright.cli;

import static dustwright.cli.Edits.entry;
import static dustwright.cli.Edits.study;
import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.Study;
import dustwright.engine.sheet.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A level probe that lets a bag fill above its safe working load makes its changes look rare. */
class OverloadedContainerTest {
    private static double figure(Study study, String id) {
        return ((Answer.Known) entry(study, id).answer()).value().si();
    }

    /** By hand: the load over what the probe lets in, for changes and for what they cost. */
    @Test
    void running_cost_says_what_bags_filled_to_their_load_would_cost_more() throws IOException {
        String bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
        Study whole = study(bakery);
        assertThat(whole.sheets().stream().flatMap(sheet -> sheet.entries().stream()))
                .noneMatch(e -> e.id().startsWith("overload-cost") || e.id().startsWith("changes-to-load"));
        Study over = study(with(bakery, "safe working load: 500 kg", "safe working load: 100 kg"));
        double taken_kg = figure(over, "dust-week/REC") / (figure(over, "changes/REC") * 7 * 86_400);
        assertThat(figure(over, "changes-to-load/REC"))
                .isCloseTo(figure(over, "changes/REC") * taken_kg / 100, within(1e-12));
        double asFilled = figure(over, "container-cost") + figure(over, "labour-cost");
        assertThat(figure(over, "overload-cost-REC")).isCloseTo(asFilled * (taken_kg / 100 - 1), within(1e-6));
        assertThat(asFilled)
                .as("the sums stay as it is filled")
                .isCloseTo(figure(whole, "container-cost") + figure(whole, "labour-cost"), within(1e-9));
    }
}
