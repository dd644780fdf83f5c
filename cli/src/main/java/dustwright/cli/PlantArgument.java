package dustwright.cli;

import dustwright.documents.report.Origin;
import dustwright.plantfile.Fault;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The plant file a command works on. */
final class PlantArgument {
    @SuppressWarnings("NullAway.Init")
    @Parameters(
            index = "0",
            paramLabel = "PLANT",
            description = "The plant file (YAML); docs/plant-file.md explains it.")
    private Path file;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    /**
     * The plant, and the units its file asks for.
     *
     * @throws BadInput with every fault of the file, each with line, column and what was expected
     */
    Reading.Read read() {
        if (!Files.exists(file)) {
            throw new BadInput("There is no file " + file
                    + ". Give the path of a plant file, such as examples/bakery/plant.yaml.");
        }
        if (Files.isDirectory(file)) {
            throw new BadInput(file + " is a folder. Give the plant file in it.");
        }
        Reading reading = PlantReader.read(file, catalogue.read());
        if (reading instanceof Reading.Read read) {
            return read;
        }
        Reading.Faults faults = (Reading.Faults) reading;
        int count = faults.faults().size();
        String lines = faults.faults().stream().map(Fault::text).collect(Collectors.joining("\n  "));
        throw new BadInput(
                file + (count == 1 ? ": one thing to correct\n  " : ": " + count + " things to correct\n  ") + lines);
    }

    /** The text of the file, for a changed copy of it. */
    String text() {
        try {
            return Files.readString(file);
        } catch (IOException cannotRead) {
            throw new BadInput(file + " could not be read again: " + cannotRead.getMessage());
        }
    }

    /** A file of this name in the same folder. */
    Path beside(String other) {
        return file.resolveSibling(other);
    }

    /** Name of the file, for papers. */
    String name() {
        return String.valueOf(file.getFileName());
    }

    /** The mark of the file's content, for papers. */
    String mark() {
        return Origin.mark(content(file));
    }

    /** What papers are made from. */
    Origin origin() {
        return new Origin(name(), mark(), Main.VERSION);
    }

    /** What stands in a file that was read before. */
    static byte[] content(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException cannotRead) {
            throw new BadInput(file + " could not be read again: " + cannotRead.getMessage());
        }
    }
}
