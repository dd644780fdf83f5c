package dustwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** The commands: each reads a plant file, asks the engine, and prints what it found. */
@Command(
        name = "dustwright",
        mixinStandardHelpOptions = true,
        version = Main.VERSION,
        header = "Computes whether a central vacuum-cleaning system does what is asked, for the inlets that are open.",
        description = {
            "",
            "A plant is one YAML file: site, dusts, tubing, inlets, receiver, producer, what is asked.",
            "Start with:",
            "",
            "  dustwright verify examples/bakery/plant.yaml",
            "  dustwright report examples/bakery/plant.yaml --out bakery",
            ""
        },
        footer = {
            "",
            "Exit codes: 0 all holds, 1 something does not hold, 2 bad input, 3 fault of the program.",
            "Results are screening. Local codes, the authority having jurisdiction and a licensed engineer decide."
        },
        subcommands = {
            StudioCommand.class,
            VerifyCommand.class,
            CoverCommand.class,
            SizeCommand.class,
            SolveCommand.class,
            SheetCommand.class,
            HazardsCommand.class,
            ExplainCommand.class,
            ReportCommand.class,
            CatalogueCommand.class,
            SequenceCommand.class,
            ProveCommand.class,
            ExportCommand.class,
            RehearseCommand.class,
            SchemaCommand.class,
            CompletionCommand.class,
            HelpCommand.class
        })
public final class Main {
    /** Name and version, printed on every paper. */
    static final String VERSION = "dustwright 0.1.0";

    private static final int HELP_WIDTH = 112;
    private static final Pattern CHOICE = Pattern.compile("\\[[A-Z_]+(, [A-Z_]+)+\\]");

    private Main() {}

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        System.exit(run(
                new PrintWriter(System.out, true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                args));
    }

    /** Runs one command, writing to the given writers. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine commandLine = new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpWidth(HELP_WIDTH)
                .setParameterExceptionHandler((wrong, given) -> refused(wrong))
                .setExecutionExceptionHandler((fault, command, parsed) -> failed(fault, command.getErr()));
        if (args.length == 0) {
            commandLine.usage(out);
            return ExitCode.BAD_INPUT;
        }
        int code = executed(commandLine, args);
        out.flush();
        err.flush();
        return code;
    }

    private static int executed(CommandLine commandLine, String... args) {
        try {
            return commandLine.execute(args);
        } catch (OutOfMemoryError tooLarge) {
            commandLine
                    .getErr()
                    .println(
                            "There is not enough memory for this. Start with DUSTWRIGHT_JAVA_OPTIONS=-Xmx2g in front, or a"
                                    + " figure your machine has.");
            return ExitCode.INTERNAL;
        } catch (StackOverflowError | LinkageError fault) {
            commandLine.getErr().println("dustwright: a fault of the program, not of your file: " + fault);
            return ExitCode.INTERNAL;
        }
    }

    /** A wrong option gets its reason and the way to the help, not a page of it. */
    private static int refused(CommandLine.ParameterException wrong) {
        CommandLine command = wrong.getCommandLine();
        command.getErr().println(inWordsOfTheHelp(String.valueOf(wrong.getMessage())));
        CommandLine.UnmatchedArgumentException.printSuggestions(wrong, command.getErr());
        command.getErr().println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT;
    }

    /** Words to choose from as the help writes them, in small letters. */
    private static String inWordsOfTheHelp(String message) {
        return CHOICE.matcher(message)
                .replaceAll(choice -> choice.group().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private static int failed(Exception fault, PrintWriter err) {
        if (fault instanceof BadInput) {
            err.println(fault.getMessage());
            return ExitCode.BAD_INPUT;
        }
        err.println("dustwright: a fault of the program, not of your file: " + fault);
        err.println("Please report it with the plant file. Nothing was written.");
        return ExitCode.INTERNAL;
    }
}
