package dustwright.cli;

import dustwright.documents.answers.CatalogueAnswer;
import dustwright.engine.air.Air;
import dustwright.engine.air.MoistAir;
import dustwright.engine.producer.Duty;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.QuantityText;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.UnitSystem;
import dustwright.plantfile.Catalogue;
import dustwright.plantfile.CatalogueReader;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the machines of a catalogue, and which of them serve a duty. */
@Command(
        name = "catalogue",
        mixinStandardHelpOptions = true,
        header = "List the vacuum producers of a catalogue, or those that serve a duty.",
        description = {
            "",
            "Without a duty: what each machine takes at a few vacuums, at its own speed. With --flow and --vacuum, at the",
            "producer's inlet: the speed each machine needs, its power and its air's temperature rise, and what stands in the",
            "way of those that do not serve.",
            "",
            "  dustwright catalogue --units us",
            "  dustwright catalogue --flow \"325 scfm\" --vacuum \"7 inHg\" --altitude \"1500 m\"",
            ""
        })
final class CatalogueCommand implements Callable<Integer> {
    private static final double USUAL_HUMIDITY = 0.5;
    /** Sites that a plant file may state. */
    private static final double LOWEST_m = -430;

    private static final double HIGHEST_m = 5500;
    private static final double COLDEST_K = 233.15;
    private static final double HOTTEST_K = 333.15;

    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Option(names = "--flow", paramLabel = "FLOW", description = "Free air asked for, such as \"325 scfm\".")
    private @Nullable String flow;

    @Option(
            names = "--vacuum",
            paramLabel = "VACUUM",
            description = "Vacuum at the producer's inlet asked for, such as \"7 inHg\".")
    private @Nullable String vacuum;

    @Option(
            names = "--altitude",
            paramLabel = "HEIGHT",
            defaultValue = "0 m",
            description = "Height of the site above the sea. Default: 0 m.")
    private String altitude = "0 m";

    @Option(
            names = "--temperature",
            paramLabel = "T",
            defaultValue = "20 degC",
            description = "Temperature of the site's air. Default: 20 degC. Its humidity is taken as 50 %%.")
    private String temperature = "20 degC";

    @Option(names = "--kind", paramLabel = "KIND", description = "Only machines of this kind, such as lobe.")
    private @Nullable String kind;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Override
    public Integer call() {
        if ((flow == null) != (vacuum == null)) {
            throw new BadInput("A duty is a flow and a vacuum: give --flow and --vacuum together.");
        }
        List<VacuumProducer> producers = chosen(catalogue.read().orElseGet(CatalogueReader::demo));
        CatalogueAnswer answer = flow == null || vacuum == null
                ? CatalogueAnswer.list(producers, air())
                : CatalogueAnswer.duty(producers, air(), asked(flow), deep(vacuum));
        String text = output.json() ? answer.json() : answer.text(output.unitsOr(UnitSystem.SI), Terminal.width());
        spec.commandLine().getOut().println(text.stripTrailing());
        boolean served = answer.duties().isEmpty() || answer.duties().stream().anyMatch(Duty::serves);
        return served ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private List<VacuumProducer> chosen(Catalogue known) {
        List<VacuumProducer> all = known.producers();
        if (kind == null) {
            return all;
        }
        List<VacuumProducer> chosen =
                all.stream().filter(p -> p.machine().kind().equals(kind)).toList();
        if (chosen.isEmpty()) {
            List<String> kinds =
                    all.stream().map(p -> p.machine().kind()).distinct().toList();
            throw new BadInput("The catalogue has no machine of kind \"" + kind + "\". It has "
                    + (kinds.isEmpty() ? "none at all." : String.join(", ", kinds) + "."));
        }
        return chosen;
    }

    private Air air() {
        Length height = (Length) read("--altitude", altitude, Dimension.LENGTH);
        Temperature warm = (Temperature) read("--temperature", temperature, Dimension.TEMPERATURE);
        if (!(height.metres() >= LOWEST_m && height.metres() <= HIGHEST_m)) {
            throw new BadInput("--altitude " + altitude + ": no site of a plant; -430 m to 5500 m are read.");
        }
        if (!(warm.kelvin() >= COLDEST_K && warm.kelvin() <= HOTTEST_K)) {
            throw new BadInput("--temperature " + temperature + ": no air of a site; -40 degC to 60 degC are read.");
        }
        return MoistAir.atAltitude(height, warm, USUAL_HUMIDITY);
    }

    private static FreeAirFlow asked(String text) {
        FreeAirFlow asked = (FreeAirFlow) read("--flow", text, Dimension.FREE_AIR_FLOW);
        if (!(asked.cubicMetresPerSecond() > 0)) {
            throw new BadInput("--flow " + text + ": a duty needs a flow above zero.");
        }
        return asked;
    }

    private PressureDifference deep(String text) {
        PressureDifference asked = (PressureDifference) read("--vacuum", text, Dimension.PRESSURE_DIFFERENCE);
        if (!(asked.pascals() > 0 && asked.pascals() < air().ambient().pascals())) {
            throw new BadInput(
                    "--vacuum " + text + ": a duty needs a vacuum above zero and below the site's barometer.");
        }
        return asked;
    }

    private static Quantity read(String option, String text, Dimension dimension) {
        QuantityText.Read read = QuantityText.read(text, List.of(dimension));
        if (read instanceof QuantityText.Read.Good good) {
            return good.quantity();
        }
        QuantityText.Read.Bad bad = (QuantityText.Read.Bad) read;
        Optional<String> meant = bad.suggestion();
        throw new BadInput(option + ": " + bad.message()
                + meant.map(s -> "; did you mean " + s + "?").orElse("."));
    }
}
