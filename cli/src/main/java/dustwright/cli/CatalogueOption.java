package dustwright.cli;

import dustwright.plantfile.Catalogue;
import dustwright.plantfile.CatalogueReader;
import dustwright.plantfile.CatalogueReading;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The shop's own catalogue, in the place of the one a plant file names or of the bundled demo. */
final class CatalogueOption {
    @Option(
            names = "--catalogue",
            paramLabel = "FOLDER",
            description = "Folder of your own catalogue; docs/catalogue.md explains it. Default: the folder the plant"
                    + " file names, else the bundled demo of invented machines.")
    private @Nullable Path folder;

    /**
     * The catalogue of the folder; empty where none is given.
     *
     * @throws BadInput with every fault of its files
     */
    Optional<Catalogue> read() {
        if (folder == null) {
            return Optional.empty();
        }
        CatalogueReading reading = CatalogueReader.read(folder);
        if (reading instanceof CatalogueReading.Read read) {
            return Optional.of(read.catalogue());
        }
        throw new BadInput("The catalogue " + folder + " cannot be used:\n"
                + ((CatalogueReading.Faults) reading)
                        .faults().stream().map(fault -> "  " + fault.text()).collect(Collectors.joining("\n")));
    }
}
