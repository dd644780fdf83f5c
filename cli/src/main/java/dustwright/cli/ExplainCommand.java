package dustwright.cli;

import dustwright.documents.answers.JsonAnswers;
import dustwright.documents.answers.TextAnswers;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.plantfile.Reading;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows how a finding was calculated, down to equation and source. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        header = "Show how a finding was calculated: equations, numbers, sources.",
        description = {
            "",
            "FINDING is a number from the list that verify prints (1 is the worst), or words that all occur in the",
            "finding's name, such as \"velocity N3\". Each figure can be checked by hand.",
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
    private String finding = "";

    @Mixin
    private StateOptions states = new StateOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Override
    public Integer call() {
        Reading.Read reading = plantArgument.read();
        Plant plant = reading.plant();
        Study study = Asking.study(plant, states, spec.commandLine().getErr());
        Finding found = find(study.worstPerPlace());
        String text = output.json()
                ? JsonAnswers.explain(study, found)
                : TextAnswers.explain(study, found, output.units(reading), Terminal.width());
        spec.commandLine().getOut().println(text.stripTrailing());
        return found.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private Finding find(List<Finding> findings) {
        if (findings.isEmpty()) {
            throw new BadInput("There is nothing to explain: no requirement was checked.");
        }
        if (finding.matches("[0-9]{1,9}")) {
            int number = Integer.parseInt(finding);
            if (number < 1 || number > findings.size()) {
                throw new BadInput("There is no finding " + number + ": verify lists 1 to " + findings.size() + ".");
            }
            return findings.get(number - 1);
        }
        String[] words = finding.toLowerCase(Locale.ROOT).strip().split("\\s+");
        return findings.stream()
                .filter(f -> List.of(words).stream().allMatch(w -> name(f).contains(w)))
                .findFirst()
                .orElseThrow(() ->
                        new BadInput("No finding has the words \"" + finding + "\" in its name. The worst are:\n"
                                + String.join(
                                        "\n",
                                        findings.stream()
                                                .limit(8)
                                                .map(f -> "  " + f.id())
                                                .toList())));
    }

    private static String name(Finding finding) {
        return (finding.id() + " " + finding.where() + " " + finding.code().title()).toLowerCase(Locale.ROOT);
    }
}
