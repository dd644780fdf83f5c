package dustwright.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Spec;

/** Prints a script that teaches the shell to complete commands and options. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        header = "Print a completion script for bash or zsh.",
        description = {"", "  source <(./dustwright completion)", ""})
final class CompletionCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine whole = spec.root().commandLine();
        spec.commandLine().getOut().println(AutoComplete.bash("dustwright", whole));
        return ExitCode.HOLDS;
    }
}
