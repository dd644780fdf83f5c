package dustwright.cli;

import dustwright.documents.answers.JsonAnswers;
import dustwright.documents.answers.TextAnswers;
import dustwright.documents.writing.Wording;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import dustwright.plantfile.Reading;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows how a finding or a figure was calculated, down to equation and source. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        header = "Show how a finding or a figure was calculated: equations, numbers, sources.",
        description = {
            "",
            "FINDING is a number from the list that verify prints (1 is the worst), or whole words of the",
            "name of a finding or of a figure on a sheet, such as \"enough air A1\", \"velocity N3\" or",
            "\"fill REC\"; of several findings with these words the worst is shown. A figure's whole id, such",
            "as \"load/REC\", names that figure. Each can be checked by hand.",
            "",
            "  dustwright explain examples/bakery/plant.yaml 1",
            "  dustwright explain examples/bakery/plant.yaml \"tool_flow A1\" --open A1,A7",
            ""
        })
final class ExplainCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private PlantArgument plantArgument = new PlantArgument();

    @Parameters(
            index = "1",
            paramLabel = "FINDING",
            description = "Number in verify's list, or words of the finding's name.")
    private String asked = "";

    @Mixin
    private StateOptions states = new StateOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Override
    public Integer call() {
        Reading.Read reading = plantArgument.read();
        Plant plant = reading.plant();
        Study study = Asking.study(plant, states, spec.commandLine().getErr());
        Optional<Finding> finding = isFigure(study) ? Optional.empty() : finding(study.worstPerPlace());
        if (finding.isEmpty()) {
            print(figure(study, output.units(reading)));
            return ExitCode.HOLDS;
        }
        Finding found = finding.get();
        print(
                output.json()
                        ? JsonAnswers.explain(study, found)
                        : TextAnswers.explain(study, found, output.units(reading), Terminal.width()));
        return found.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private void print(String text) {
        spec.commandLine().getOut().println(text.stripTrailing());
    }

    /** The finding meant; empty where only a figure on a sheet can be. */
    private Optional<Finding> finding(List<Finding> findings) {
        if (asked.isBlank()) {
            throw new BadInput("Say which finding: its number in verify's list, or words of its name.");
        }
        if (asked.strip().matches("[-+]?[0-9]+")) {
            BigInteger number = new BigInteger(asked.strip());
            if (number.signum() <= 0 || number.compareTo(BigInteger.valueOf(findings.size())) > 0) {
                throw new BadInput("There is no finding " + number + ": "
                        + (findings.isEmpty()
                                ? "nothing is asked of this plant."
                                : "they are numbered 1 to " + findings.size()
                                        + ", worst first; verify shows the first."));
            }
            return Optional.of(findings.get(number.intValueExact() - 1));
        }
        List<Finding> meant = findings.stream()
                .filter(f -> meant(f.id() + " " + f.where() + " " + f.code().title() + " " + Wording.claims(f.code())))
                .toList();
        if (meant.size() > 1) {
            spec.commandLine()
                    .getErr()
                    .println(meant.size() + " findings have these words; the worst of them is "
                            + meant.get(0).id() + ".");
        }
        return meant.stream().findFirst();
    }

    private String figure(Study study, UnitSystem units) {
        for (Sheet sheet : study.sheets()) {
            for (Entry entry : sheet.entries()) {
                boolean meant =
                        isFigure(study) ? isIdOf(entry) : meant(entry.id() + " " + entry.name() + " " + sheet.title());
                if (meant) {
                    return output.json()
                            ? JsonAnswers.figure(study, sheet, entry)
                            : TextAnswers.figure(study, sheet, entry, units, Terminal.width());
                }
            }
        }
        if (study.worstPerPlace().isEmpty()) {
            throw new BadInput("Nothing is asked of this plant, so there is no finding; no figure has the words \""
                    + asked + "\" in its name. The command sheet prints all figures.");
        }
        throw new BadInput(
                "No finding and no figure has the words \"" + asked + "\" in its name. The worst findings are:\n"
                        + study.worstPerPlace().stream()
                                .limit(8)
                                .map(f -> "  " + f.id())
                                .collect(Collectors.joining("\n"))
                        + "\nThe command sheet prints all figures.");
    }

    /** A figure's own id names that figure, whatever findings hold the same words. */
    private boolean isFigure(Study study) {
        return study.sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .anyMatch(this::isIdOf);
    }

    private boolean isIdOf(Entry entry) {
        return entry.id().equalsIgnoreCase(asked.strip());
    }

    /** Whether every word asked stands in a name as a whole word: A1 is not A10. */
    private boolean meant(String name) {
        return List.of(asked.strip().split("\\s+")).stream()
                .allMatch(word -> Pattern.compile(
                                "(?<![\\p{Alnum}-])" + Pattern.quote(word) + "(?![\\p{Alnum}-])",
                                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS)
                        .matcher(name)
                        .find());
    }
}
