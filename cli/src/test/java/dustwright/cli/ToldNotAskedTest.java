package dustwright.cli;

import static dustwright.cli.Edits.plant;
import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Step;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What no requirement asks and a reader has to know all the same: it is told beside the verdict. */
class ToldNotAskedTest {
    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
    }

    static List<String> plants() {
        return List.of("bakery", "plastics", "supplement");
    }

    private static String standby(String machine) {
        return with(bakery, "    producers:\n", "    producers:\n      P2: " + machine + "\n");
    }

    private static final String SMALL = "{model: DL-3, motor: 0.5 hp, start: direct, standby: yes}";

    /** The air of this tubing is thinner than the class's table: 1.2 kg/m³ over the density of the same derivation. */
    @Test
    void the_velocity_of_a_dust_class_is_shown_for_thin_air_beside_what_is_asked() {
        Plant plant = plant(bakery);
        Study study = Study.of(plant, States.usual(plant));
        List<Step> thin = study.worstPerPlace().stream()
                .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY)
                .flatMap(f -> f.derivation().steps().stream())
                .filter(step -> step.equation().equals("CON-46"))
                .toList();
        assertThat(thin).isNotEmpty().allSatisfy(step -> {
            double least = step.inputs().get(0).value().si();
            double density = step.inputs().get(1).value().si();
            assertThat(density).isLessThan(1.2);
            assertThat(step.result().value().si()).isCloseTo(least * Math.sqrt(1.2 / density), within(1e-9));
        });
    }

    @Test
    void a_producer_that_stands_by_in_every_set_is_named_beside_the_verdict(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("plant.yaml");
        Files.writeString(file, standby(SMALL));
        StringWriter out = new StringWriter();
        Main.run(new PrintWriter(out), new PrintWriter(new StringWriter()), "verify", file.toString());
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains("P2 stands by and runs in no set asked")
                .contains("--running P2");
    }

    /** What it takes while its check valve is shut says nothing of the motor it needs when it works alone. */
    @Test
    void no_motor_is_asked_for_of_states_behind_a_shut_check_valve() {
        String weak = with(
                bakery,
                "    producers:\n",
                "    producers:\n      P2: {kind: lobe, displacement: 1 L, slip at 1 psi: 500 rpm,"
                        + " mechanical efficiency: 90 %, idle loss: 0.1 hp, deepest vacuum: 15 inHg, greatest rise: 130 K, speed range: [300 rpm, 2300 rpm],"
                        + " motor: 3 hp, speed: 400 rpm, start: direct}\n");
        Plant plant = plant(weak);
        Entry asked = Study.of(plant, States.usual(plant)).withSheets().sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(e -> e.id().equals("motor-asked/P2"))
                .findFirst()
                .orElseThrow();
        assertThat(asked.answer()).isInstanceOf(Answer.Unknown.class);
        assertThat(((Answer.Unknown) asked.answer()).why()).contains("passes air in none of the sets");
    }

    @Test
    void pockets_stated_fuller_than_they_usually_get_are_an_assumption() {
        String stated = "its pockets are taken to fill as stated, more than the three quarters";
        assertThat(plant(bakery).assumptions()).extracting(Assumption::what).noneMatch(what -> what.startsWith(stated));
        String full = bakery.replaceFirst("fill: [0-9.]+ ?%?", "fill: 90 %");
        assertThat(plant(full).assumptions()).extracting(Assumption::what).anyMatch(what -> what.startsWith(stated));
    }

    /** The flow by settling and the most that settles in were of one name, and only the first could be opened. */
    @ParameterizedTest
    @MethodSource("plants")
    void every_figure_of_a_plant_has_a_name_of_its_own(String example) throws IOException {
        Plant plant = ExamplesTest.study(example).plant();
        Study study = Study.of(plant, States.usual(plant)).withSheets();
        assertThat(study.sheets().stream().flatMap(s -> s.entries().stream()))
                .extracting(Entry::id)
                .doesNotHaveDuplicates();
    }
}
