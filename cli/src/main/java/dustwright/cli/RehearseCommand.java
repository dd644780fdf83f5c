package dustwright.cli;

import dustwright.documents.answers.RehearsalJson;
import dustwright.documents.control.RehearsalText;
import dustwright.documents.drawing.RehearsalChart;
import dustwright.documents.report.PaperSize;
import dustwright.documents.report.RehearsalPage;
import dustwright.documents.writing.Show;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.rehearsal.Played;
import dustwright.engine.rehearsal.Rehearsal;
import dustwright.engine.rehearsal.Script;
import dustwright.engine.rehearsal.StationModel;
import dustwright.plantfile.Drills;
import dustwright.plantfile.RehearsalReader;
import dustwright.plantfile.RehearsalReading;
import dustwright.plantfile.SequenceReader;
import dustwright.plantfile.SequenceReading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plays a sequence together with the station it controls. */
@Command(
        name = "rehearse",
        mixinStandardHelpOptions = true,
        header =
                "Rehearse a control sequence with the station it controls: dust, levels, vacuum, current, people, faults.",
        description = {
            "",
            "A drill or a script says what happens; docs/rehearsal.md. Levels, vacuum, filter drop and motor current are those of",
            "the plant file, people answer the lamps. The same seed goes the same way.",
            "",
            "Drills: bag-fills-at-night, bridged-hopper, wet-flour, air-supply-lost, valve-chain-breaks.",
            "",
            "  dustwright rehearse examples/bakery/plant.yaml --drill bag-fills-at-night --out night",
            "  dustwright rehearse examples/bakery/plant.yaml --script my-script.yaml --format json",
            ""
        })
final class RehearseCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private SequenceArgument argument = new SequenceArgument();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Option(
            names = "--sequence",
            paramLabel = "FILE",
            description = "Sequence file to rehearse. Default: the sequence the plant begins with.")
    private @Nullable Path sequenceFile;

    @Option(names = "--drill", paramLabel = "NAME", description = "A ready-made drill.")
    private @Nullable String drill;

    @Option(names = "--script", paramLabel = "FILE", description = "A script of your own.")
    private @Nullable Path scriptFile;

    @Option(names = "--print-script", description = "Print the script of the drill, to edit it.")
    private boolean printScript;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Also write rehearsal.html, .pdf, .svg and .json there.")
    private @Nullable Path folder;

    @Override
    public Integer call() {
        if (printScript) {
            spec.commandLine().getOut().print(Drills.text(drillName()));
            return ExitCode.HOLDS;
        }
        SequenceArgument.AtStation at = argument.atStation();
        Sequence sequence = sequenceFile == null ? at.sequence() : fromFile(sequenceFile);
        StationModel model = StationModel.of(at.reading().plant(), at.station()).match(m -> m, why -> {
            throw new BadInput(why);
        });
        Played played = play(sequence, model, script());
        Show show = new Show(output.units(at.reading()));
        if (folder != null) {
            write(folder, played, show, PaperSize.of(output.units(at.reading())));
        }
        spec.commandLine().getOut().print(output.json() ? RehearsalJson.of(played) : RehearsalText.of(played, show));
        return played.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private static Played play(Sequence sequence, StationModel model, Script script) {
        try {
            return Rehearsal.play(sequence, model, script);
        } catch (IllegalArgumentException unknownName) {
            throw new BadInput("This script does not fit the sequence: " + unknownName.getMessage() + ".");
        }
    }

    private String drillName() {
        if (drill == null) {
            throw new BadInput("Say which drill with --drill: " + String.join(", ", Drills.names()) + ".");
        }
        if (!Drills.names().contains(drill)) {
            throw new BadInput(
                    "No drill is called \"" + drill + "\". There are: " + String.join(", ", Drills.names()) + ".");
        }
        return drill;
    }

    private Script script() {
        if (scriptFile == null) {
            return Drills.script(drillName());
        }
        if (drill != null) {
            throw new BadInput("Give either --drill or --script.");
        }
        Path file = existing(scriptFile);
        RehearsalReading reading = RehearsalReader.read(file);
        if (reading instanceof RehearsalReading.Read read) {
            return read.script();
        }
        throw SequenceArgument.faults(file, ((RehearsalReading.Faults) reading).faults());
    }

    private static Sequence fromFile(Path place) {
        Path file = existing(place);
        SequenceReading reading = SequenceReader.read(file);
        if (reading instanceof SequenceReading.Read read) {
            return read.sequence();
        }
        throw SequenceArgument.faults(file, ((SequenceReading.Faults) reading).faults());
    }

    private static Path existing(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput("There is no file " + file + ".");
        }
        return file;
    }

    private static void write(Path folder, Played played, Show show, PaperSize paper) {
        RehearsalPage page = RehearsalPage.of(played, show);
        try {
            Files.createDirectories(folder);
            NewFile.write(folder.resolve("rehearsal.pdf"), out -> page.pdf(paper, out));
            for (List<String> file : List.of(
                    List.of("rehearsal.html", page.html()),
                    List.of("rehearsal.svg", RehearsalChart.of(played, show).svgFile()),
                    List.of("rehearsal.json", RehearsalJson.of(played)))) {
                NewFile.write(
                        folder.resolve(file.get(0)),
                        out -> out.write(file.get(1).getBytes(StandardCharsets.UTF_8)));
            }
        } catch (IOException fault) {
            throw new BadInput("The files could not be written to " + folder.toAbsolutePath() + ": "
                    + NewFile.reason(fault) + ".");
        }
    }
}
