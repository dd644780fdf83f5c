package dustwright.cli;

import dustwright.plantfile.SequenceText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the control sequence of a plant as a file to edit. */
@Command(
        name = "sequence",
        mixinStandardHelpOptions = true,
        header = "Write the control sequence a plant begins with, as a file to edit.",
        description = {
            "",
            "Devices, times, rules, causes with what each demands, steps and lamps, made for the plant's container,",
            "producers and drive. Times and set points are common practice; edit them, then prove the file.",
            "",
            "  dustwright sequence examples/bakery/plant.yaml --out bakery-sequence.yaml",
            "  dustwright prove bakery-sequence.yaml",
            ""
        })
final class SequenceCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private SequenceArgument argument = new SequenceArgument();

    @Option(names = "--out", paramLabel = "FILE", description = "Where it goes. Default: printed.")
    private @Nullable Path out;

    @Override
    public Integer call() {
        String text = SequenceText.of(argument.read());
        if (out == null) {
            spec.commandLine().getOut().print(text);
            return ExitCode.HOLDS;
        }
        Path place = out;
        try {
            NewFile.write(place, stream -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException fault) {
            throw new BadInput("The sequence could not be written to " + place.toAbsolutePath() + ": "
                    + NewFile.reason(fault) + ".");
        }
        spec.commandLine().getOut().println("Written: " + place);
        return ExitCode.HOLDS;
    }
}
