package dustwright.cli;

import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Options.Extra;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.UnitSystem;
import dustwright.plantfile.Fault;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import dustwright.plantfile.SequenceReader;
import dustwright.plantfile.SequenceReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The sequence a command works on: a sequence file, or the default sequence of a plant file. */
final class SequenceArgument {
    @SuppressWarnings("NullAway.Init")
    @Parameters(
            index = "0",
            paramLabel = "SEQUENCE|PLANT",
            description =
                    "A sequence file, or a plant file for the sequence it gets to begin with; docs/sequence-file.md.")
    private Path file;

    @Option(names = "--station", paramLabel = "ID", description = "Station of the plant file. Default: its only one.")
    private @Nullable String station;

    @Option(
            names = "--isolation-valve",
            description = "The plant has an explosion isolation valve that reports whether it is ready.")
    private boolean isolation;

    @Option(
            names = "--cleaning",
            paramLabel = "itself|hand",
            description =
                    "Whether filters are cleaned by themselves or by hand; off load in both cases. Default: itself.")
    private String cleaning = "itself";

    @Option(
            names = "--inlet-switches",
            description = "Inlets have switches: vacuuming that nobody uses becomes idle, then ends.")
    private boolean idle;

    @Option(names = "--dump-gates", description = "Double dump gates on one cam drive in place of a rotary valve.")
    private boolean dumpGates;

    @Option(
            names = "--suction-valve",
            description =
                    "A valve between receiver and producer shuts while the vent is open; its limit switch says when it is open.")
    private boolean shutOff;

    @Option(names = "--purge", description = "STOP first lets air through the far-end bleed sweep the line for a time.")
    private boolean purge;

    /**
     * The sequence.
     *
     * @throws BadInput with every fault of the file, each with line, column and what was expected
     */
    Sequence read() {
        if (!Files.isRegularFile(file)) {
            throw new BadInput("There is no file " + file
                    + ". Give a sequence file or a plant file, such as examples/bakery/plant.yaml.");
        }
        return isSequenceFile() ? read(file) : fromPlantFile();
    }

    /** Units of the plant file; a sequence file speaks of no sizes, its papers are SI. */
    UnitSystem units() {
        return isSequenceFile() ? UnitSystem.SI : atStation().reading().units();
    }

    private boolean isSequenceFile() {
        try {
            String text = Files.readString(file);
            return text.isBlank() || text.lines().anyMatch(l -> l.matches("\uFEFF?sequence:.*"));
        } catch (IOException cannotRead) {
            return false;
        }
    }

    /** The sequence of a sequence file, with every fault of it. */
    static Sequence read(Path file) {
        SequenceReading reading = SequenceReader.read(file);
        if (reading instanceof SequenceReading.Read read) {
            return read.sequence();
        }
        throw faults(file, ((SequenceReading.Faults) reading).faults());
    }

    private Sequence fromPlantFile() {
        return atStation().sequence();
    }

    /** A station of a plant file and the sequence it begins with. */
    record AtStation(Reading.Read reading, Station station, Sequence sequence) {}

    /** The station of a plant file; a sequence file has none. */
    AtStation atStation() {
        if (!Files.isRegularFile(file)) {
            throw new BadInput("There is no file " + file + ". Give a plant file, such as examples/bakery/plant.yaml.");
        }
        Reading reading = PlantReader.read(file);
        if (reading instanceof Reading.Faults wrong) {
            throw faults(file, wrong.faults());
        }
        Reading.Read read = (Reading.Read) reading;
        Plant plant = read.plant();
        Station chosen = chosen(plant.stations());
        if (chosen.producers().size() > 2) {
            throw new BadInput("Station " + chosen.id() + " has "
                    + chosen.producers().size() + " producers. A sequence is made for one or two; edit one for more.");
        }
        return new AtStation(
                read,
                chosen,
                DefaultSequence.of(plant.name() + ", station " + chosen.id(), Options.of(chosen, extras())));
    }

    private Set<Extra> extras() {
        Map<Extra, Boolean> asked = new EnumMap<>(Extra.class);
        asked.put(Extra.ISOLATION, isolation);
        asked.put(Extra.MANUAL_CLEANING, byHand());
        asked.put(Extra.IDLE, idle);
        asked.put(Extra.DUMP_GATES, dumpGates);
        asked.put(Extra.SHUT_OFF, shutOff);
        asked.put(Extra.PURGE, purge);
        asked.values().removeIf(a -> !a);
        return asked.keySet();
    }

    private boolean byHand() {
        return switch (cleaning.toLowerCase(Locale.ROOT)) {
            case "itself" -> false;
            case "hand" -> true;
            default -> throw new BadInput("--cleaning " + cleaning + ": say itself or hand.");
        };
    }

    private Station chosen(List<Station> stations) {
        String ids = stations.stream().map(Station::id).collect(Collectors.joining(", "));
        List<Station> chosen = stations.stream()
                .filter(s -> station == null || s.id().equals(station))
                .toList();
        if (stations.isEmpty()) {
            throw new BadInput(file + " has no station, so there is nothing to control.");
        }
        if (chosen.size() != 1) {
            throw new BadInput(
                    station == null
                            ? "This plant has several stations. Say which with --station: " + ids + "."
                            : "No station is called \"" + station + "\". There are: " + ids + ".");
        }
        return chosen.get(0);
    }

    static BadInput faults(Path file, List<Fault> faults) {
        String lines = faults.stream().map(Fault::text).collect(Collectors.joining("\n  "));
        return new BadInput(file
                + (faults.size() == 1 ? ": one thing to correct\n  " : ": " + faults.size() + " things to correct\n  ")
                + lines);
    }

    /** Name of the file, for papers. */
    String name() {
        return String.valueOf(file.getFileName());
    }
}
