package dustwright.cli;

import dustwright.documents.answers.JsonAnswers;
import dustwright.documents.answers.TextAnswers;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import dustwright.plantfile.Reading;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Spec;

/** Solves one state and prints every figure of it. */
@Command(
        name = "solve",
        mixinStandardHelpOptions = true,
        header = "Solve one state: every pressure, flow and velocity.",
        description = {
            "",
            "Prints what the air does; verify says what that means. Without --open all inlets are closed.",
            "",
            "  dustwright solve examples/bakery/plant.yaml --open A1,A7,B3",
            "  dustwright solve examples/bakery/plant.yaml --open A1 --filter dirty --format json",
            ""
        })
final class SolveCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private PlantArgument plantArgument = new PlantArgument();

    @Mixin
    private StateOptions options = new StateOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Override
    public Integer call() {
        Reading.Read reading = plantArgument.read();
        Plant plant = options.inService(reading.plant());
        List<State> states = options.anyOpenGiven()
                ? options.states(plant, FilterCondition.NORMAL)
                : List.of(options.adapted(
                        plant, States.open(plant, List.of(), options.filterOr(FilterCondition.NORMAL))));
        Study study = Study.of(plant, states);
        String text = output.json()
                ? JsonAnswers.solve(study)
                : TextAnswers.solve(study, output.units(reading), Terminal.width());
        spec.commandLine().getOut().println(text.stripTrailing());
        return study.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }
}
