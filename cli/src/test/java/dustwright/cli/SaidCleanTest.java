package dustwright.cli;

import static dustwright.cli.Edits.plant;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Runs that are said to carry clean air, in a plant whose main settles: the reader would refuse it, so the word is set behind it. */
class SaidCleanTest {
    /** Very fine light dust, in the plant file. */
    private static final double ASKED_mPerS = 2500 * 0.3048 / 60;

    private static Plant settling;
    private static Plant saidClean;

    @BeforeAll
    static void read() throws IOException {
        settling = plant(Files.readString(Path.of("..", "examples", "bakery-one-main", "plant.yaml")));
        saidClean = settling.withTubing(
                settling.runs().stream()
                        .map(r -> new Run(r.id(), r.from(), r.to(), r.tube(), r.route(), r.fittings(), r.wye(), false))
                        .toList(),
                settling.bleeds());
    }

    /** Against the velocities of the solved legs themselves, each compared with the class by hand. */
    @Test
    void velocity_is_asked_of_every_run_that_dust_comes_to() {
        List<State> alone = List.of(States.open(saidClean, List.of("A1"), FilterCondition.CLEAN));
        Study study = Study.of(saidClean, alone);
        List<String> slow = study.states()
                .get(0)
                .duty()
                .match(
                        duty -> duty.legs().stream()
                                .filter(leg -> leg.kind() == LegResult.Kind.RUN
                                        && leg.dust().kgPerSecond() > 0)
                                .filter(leg -> leg.slowest().metresPerSecond() < ASKED_mPerS)
                                .map(leg -> leg.id())
                                .toList(),
                        why -> List.<String>of());
        assertThat(slow).contains("HP1", "HP13");
        assertThat(study.findings()
                        .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY && f.fails())
                        .map(f -> f.where().id()))
                .containsExactlyElementsOf(slow);
    }

    @Test
    void the_proof_over_every_set_is_the_same_as_without_the_word() {
        assertThat(verdicts(saidClean)).isEqualTo(verdicts(settling)).contains(Answer.Verdict.FAILS);
    }

    private static List<Answer.Verdict> verdicts(Plant plant) {
        State condition = States.open(plant, List.of(), FilterCondition.CLEAN);
        Question question = new Question(List.of(1, 2), Map.of(), List.of(condition));
        return Coverage.of(
                        plant,
                        question,
                        duty -> Study.judge(plant, duty),
                        Effort.alone().byBounds())
                .answers()
                .stream()
                .map(Answer::verdict)
                .toList();
    }
}
