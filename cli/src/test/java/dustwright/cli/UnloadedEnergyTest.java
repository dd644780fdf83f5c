package dustwright.cli;

import static dustwright.cli.Edits.withFirst;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Step;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What producers cost that turn while nobody vacuums: followed from the state to the energy, and no figure where no motor can do it. */
class UnloadedEnergyTest {
    private static String throughTheShift() throws IOException {
        return withFirst(
                Files.readString(Path.of("..", "examples", "bakery", "plant.yaml")),
                "producers run: while cleaning",
                "producers run: through the shift");
    }

    private static Entry energy(String text) {
        Reading reading = PlantReader.read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        Plant plant = ((Reading.Read) reading).plant();
        return Study.of(plant, States.usual(plant)).withSheets().sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(e -> e.id().equals("energy-REC"))
                .findFirst()
                .orElseThrow();
    }

    private static double term(Step step, String symbol) {
        return step.inputs().stream()
                .filter(t -> t.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new AssertionError(symbol + " not in " + step))
                .value()
                .si();
    }

    @Test
    void the_unloaded_power_is_followed_from_its_state_over_the_machine_to_the_energy() throws IOException {
        List<Step> steps = energy(throughTheShift()).derivation().steps();
        int from = 0;
        while (!steps.get(from).result().meaning().contains("all inlets shut")) {
            from++;
        }
        assertThat(steps.get(from).equation()).isEqualTo("AIR-3");
        assertThat(steps.get(from).result().meaning()).contains("vent valve open", "filter normal");
        Step power = steps.get(steps.size() - 3);
        Step energy = steps.get(steps.size() - 2);
        assertThat(term(energy, "P")).isCloseTo(power.result().value().si(), within(1e-9));
        assertThat(power.result().meaning()).contains("all inlets shut");
        Step machine = steps.get(steps.size() - 4);
        assertThat(machine.equation()).as("law of the lobe pump's power").startsWith("PRD-");
        assertThat(term(power, "P_P1")).isCloseTo(machine.result().value().si(), within(1e-9));
        // displaced volume times difference over the mechanical efficiency, and the idle loss
        assertThat(machine.result().value().si())
                .isCloseTo(
                        term(machine, "D") * term(machine, "n") * term(machine, "Δp") / term(machine, "η")
                                + term(machine, "P_idle"),
                        within(1e-6));
    }

    /** Without vent and relief valve the pump draws itself so deep that its motor cannot turn it: that is no running cost. */
    @Test
    void power_that_no_motor_gives_is_not_paid_for() throws IOException {
        String blocked =
                withFirst(withFirst(throughTheShift(), "\n    vent valve:[^\n]*", ""), "\n    relief valve:[^\n]*", "");
        Answer answer = energy(blocked).answer();
        assertThat(answer).isInstanceOf(Answer.Unknown.class);
        assertThat(((Answer.Unknown) answer).why()).contains("more than its motor may give", "vent valve");
    }
}
