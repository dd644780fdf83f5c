package dustwright.cli;

import dustwright.documents.answers.JsonAnswers;
import dustwright.documents.answers.TextAnswers;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Sheet;
import dustwright.engine.sheet.Sheets;
import dustwright.plantfile.Reading;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what each piece of equipment comes to. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        header = "Print what each piece of equipment comes to, figure by figure.",
        description = {
            "",
            "SHEET is the name of one sheet, or the first letters of it; without it all are printed. A figure that is not",
            "known says what to enter. The command explain shows how a figure was found.",
            "",
            "The exit code is 1 where a requirement in a sheet that is printed does not hold or is not known. Where all are",
            "printed it is that of verify: requirements of the states count too, and their number is said below. A sheet that",
            "looks into no state is computed alone.",
            "",
            "  dustwright sheet examples/bakery/plant.yaml",
            "  dustwright sheet examples/bakery/plant.yaml container",
            ""
        })
final class SheetCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private PlantArgument plantArgument = new PlantArgument();

    @Parameters(index = "1", arity = "0..1", paramLabel = "SHEET", description = "Name of a sheet. Default: all.")
    private String sheet = "";

    @Mixin
    private StateOptions states = new StateOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Override
    public Integer call() {
        Reading.Read reading = plantArgument.read();
        Study study = study(reading.plant());
        List<Sheet> chosen = chosen(study.sheets());
        String text = output.json()
                ? JsonAnswers.sheet(study, chosen)
                : TextAnswers.sheet(study, chosen, output.units(reading), Terminal.width());
        spec.commandLine().getOut().println(text.stripTrailing());
        boolean shown = chosen.stream().flatMap(s -> s.findings().stream()).allMatch(Finding::holds);
        boolean holds = sheet.isBlank() ? study.holds() : shown;
        return holds ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    /** Hundreds of states are solved only for a sheet that looks into them, and judged only where all sheets are asked. */
    private Study study(Plant plant) {
        if (!begins().isEmpty() && !Sheets.ofStates(begins()) && !states.anyGiven()) {
            Study without = Study.sheetsWithoutStates(plant);
            if (!named(without.sheets()).isEmpty()) {
                return without;
            }
        }
        return begins().isEmpty()
                ? Asking.study(plant, states, spec.commandLine().getErr())
                : Asking.sheets(plant, states, spec.commandLine().getErr());
    }

    private String begins() {
        return sheet.strip().toLowerCase(Locale.ROOT);
    }

    private List<Sheet> named(List<Sheet> sheets) {
        return sheets.stream()
                .filter(s -> s.id().toLowerCase(Locale.ROOT).startsWith(begins())
                        || s.title().toLowerCase(Locale.ROOT).startsWith(begins()))
                .toList();
    }

    private List<Sheet> chosen(List<Sheet> sheets) {
        List<Sheet> chosen = named(sheets);
        if (chosen.isEmpty()) {
            throw new BadInput(
                    sheets.isEmpty()
                            ? "This plant has no equipment that a sheet could be made for: it has no station."
                            : "No sheet is called \"" + sheet + "\". There are: "
                                    + sheets.stream().map(Sheet::id).collect(Collectors.joining(", ")) + ".");
        }
        return chosen;
    }
}
