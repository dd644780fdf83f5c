package dustwright.cli;

import dustwright.documents.answers.JsonAnswers;
import dustwright.documents.answers.TextAnswers;
import dustwright.engine.Study;
import dustwright.engine.plant.Plant;
import dustwright.plantfile.Reading;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Spec;

/** Checks every requirement of a plant. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        header = "Check every requirement: what holds, what does not, and where.",
        description = {
            "",
            "Without --open: every design set of the plant file and every single user, each with the filter clean and",
            "dirty. Single users matter: a header sized for all of them may settle dust with one.",
            "",
            "  dustwright verify examples/bakery/plant.yaml",
            "  dustwright verify examples/bakery/plant.yaml --open A1,A7,B3 --filter dirty",
            ""
        })
final class VerifyCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private PlantArgument plantArgument = new PlantArgument();

    @Mixin
    private StateOptions states = new StateOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Override
    public Integer call() {
        Reading.Read reading = plantArgument.read();
        Plant plant = reading.plant();
        Study study = Asking.study(plant, states, spec.commandLine().getErr());
        String text = output.json()
                ? JsonAnswers.verify(study)
                : TextAnswers.verify(study, output.units(reading), Terminal.width());
        spec.commandLine().getOut().println(text.stripTrailing());
        return study.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }
}
