package dustwright.cli;

import dustwright.documents.hazard.HazardLists;
import dustwright.documents.papers.PaperKinds;
import dustwright.documents.report.Origin;
import dustwright.documents.report.PaperSize;
import dustwright.documents.writing.Show;
import dustwright.engine.Study;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.review.Controlled;
import dustwright.engine.review.Deviation;
import dustwright.engine.review.HazardStudy;
import dustwright.engine.review.Notes;
import dustwright.plantfile.HazardStudyReader;
import dustwright.plantfile.HazardStudyReading;
import dustwright.plantfile.HazardStudyText;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes what a safety engineer reads, and keeps the hazard study beside the plant. */
@Command(
        name = "hazards",
        mixinStandardHelpOptions = true,
        header = "Write the hazard papers of a plant, and keep its hazard study.",
        description = {
            "",
            "Into FOLDER: hazards.html, hazards.pdf (dusts, consequences, what was checked, hazard study, earthing test list) and",
            "hazards.xlsx (the tables). With --study the file hazard-study.yaml beside the plant file is made, or written anew:",
            "lines of the program follow the plant, every word a team has written stays. The papers show both.",
            "Prompts for a dust hazard analysis, not the analysis: a qualified person does and signs it.",
            "",
            "  dustwright hazards examples/bakery/plant.yaml --study",
            "  dustwright hazards examples/bakery/plant.yaml --out bakery-hazards",
            "  dustwright hazards examples/bakery/plant.yaml --sequence REC=bakery-sequence.yaml",
            ""
        })
final class HazardsCommand implements Callable<Integer> {
    private static final String STUDY_FILE = "hazard-study.yaml";

    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private PlantArgument plantArgument = new PlantArgument();

    @Mixin
    private StateOptions states = new StateOptions();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the papers go. Default: the folder you are in.")
    private Path folder = Path.of("");

    @Option(
            names = "--sequence",
            paramLabel = "STATION=FILE",
            description =
                    "Sequence file a station is controlled by: its interlocks are the safeguards of the study. Default: the sequence"
                            + " this program makes to begin with; every line says of which.")
    private Map<String, Path> sequences = new LinkedHashMap<>();

    @Option(
            names = "--study",
            description = "Make or write anew the hazard study beside the plant file, and write no papers.")
    private boolean writeStudy;

    @Override
    public Integer call() {
        Reading.Read reading = plantArgument.read();
        Study study = Asking.study(reading.plant(), states, spec.commandLine().getErr());
        HazardLists.nothingToWrite(study).ifPresent(why -> {
            throw new BadInput(why);
        });
        List<Deviation> lines = HazardStudy.lines(reading.plant(), study.worstPerPlace(), controlled(reading.plant()));
        Path file = plantArgument.beside(STUDY_FILE);
        Notes notes = Files.exists(file) ? notes(file) : Notes.NONE;
        try {
            if (writeStudy) {
                keep(file, reading.plant().name(), lines);
            } else {
                papers(study, HazardStudy.of(lines, notes), reading.units());
            }
        } catch (IOException fault) {
            throw new BadInput("The files could not be written: " + NewFile.reason(fault) + ".");
        }
        return study.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private Map<String, Controlled> controlled(Plant plant) {
        List<String> stations = plant.stations().stream().map(Station::id).toList();
        Map<String, Controlled> controlled = new TreeMap<>();
        sequences.forEach((station, file) -> {
            if (!stations.contains(station)) {
                throw new BadInput("--sequence " + station + "=" + file + ": no station is called \"" + station
                        + "\". There are: " + String.join(", ", stations) + ".");
            }
            controlled.put(station, new Controlled(SequenceArgument.read(file), String.valueOf(file.getFileName())));
        });
        return controlled;
    }

    private static Notes notes(Path file) {
        HazardStudyReading reading = HazardStudyReader.read(file);
        if (reading instanceof HazardStudyReading.Read read) {
            return read.notes();
        }
        throw SequenceArgument.faults(file, ((HazardStudyReading.Faults) reading).faults());
    }

    private void keep(Path file, String plant, List<Deviation> lines) throws IOException {
        boolean there = Files.exists(file);
        String text =
                there ? HazardStudyText.updated(Files.readString(file), lines) : HazardStudyText.fresh(plant, lines);
        NewFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
        spec.commandLine()
                .getOut()
                .println((there ? "Written anew, every word of yours kept: " : "Made: ") + file + ", " + lines.size()
                        + " rows from the plant.");
    }

    /** The plant file and every other file that goes into the papers. */
    private Origin origin() {
        Origin origin = plantArgument.origin();
        Path study = plantArgument.beside(STUDY_FILE);
        if (Files.exists(study)) {
            origin = origin.with(STUDY_FILE, PlantArgument.content(study));
        }
        for (Path sequence : new TreeMap<>(sequences).values()) {
            origin = origin.with(String.valueOf(sequence.getFileName()), PlantArgument.content(sequence));
        }
        return origin;
    }

    private void papers(Study study, HazardStudy review, UnitSystem units) throws IOException {
        NewFile.write(folder, PaperKinds.hazards(study, review, new Show(units), origin(), PaperSize.of(units)));
        spec.commandLine()
                .getOut()
                .println("Written to " + folder.toAbsolutePath() + ": hazards.html, hazards.pdf, hazards.xlsx. "
                        + review.notJudged() + " of " + review.rows().size()
                        + " rows of the hazard study are not judged yet.");
    }
}
