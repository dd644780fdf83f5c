package dustwright.cli;

import dustwright.plantfile.PlantReader;
import dustwright.studio.Backup;
import dustwright.studio.Studio;
import java.io.IOException;
import java.io.InputStream;
import java.net.BindException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the studio on a plant. */
@Command(
        name = "studio",
        mixinStandardHelpOptions = true,
        header = "Work on a plant by hand and eye, in the browser of this machine.",
        description = {
            "",
            "Serves one plant to the browser of this machine, and to no other: open and close inlets on the drawing and see the",
            "findings at once, change what is written of a tube or an inlet, go back, accept revisions, print the report.",
            "Every step is kept in a database; the plant file changes only when you write it. Ctrl+C ends it.",
            "",
            "  dustwright studio",
            "  dustwright studio examples/bakery/plant.yaml",
            "  dustwright studio --backup kept-2026-03.db",
            "  dustwright studio --restore kept-2026-03.db",
            ""
        })
final class StudioCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "PLANT",
            description = "The plant file (YAML). Default: a copy of an invented demo plant.")
    private @Nullable Path plantFile;

    @Option(
            names = "--backup",
            paramLabel = "FILE",
            description = "Write all that is kept, of every plant, to a new file; studios may go on meanwhile.")
    private @Nullable Path backup;

    @Option(
            names = "--restore",
            paramLabel = "FILE",
            description = "Take such a file back in place of all that is kept now, which stays beside it.")
    private @Nullable Path restore;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Port of the page. Default: 8321, or any that is free where it is taken.")
    private @Nullable Integer port;

    @Option(
            names = "--keep",
            paramLabel = "FILE",
            description =
                    "Database of steps and revisions. Default: .local/share/dustwright/studio.db in your home folder.")
    private @Nullable Path database;

    private static final int USUAL_PORT = 8321;
    private static final int LAST_PORT = 65_535;

    @Override
    public Integer call() throws InterruptedException {
        if (backup != null || restore != null) {
            return keptApart();
        }
        return plantFile == null ? serve(demo(), true) : serve(plantFile, false);
    }

    private int keptApart() {
        if (plantFile != null || (backup != null && restore != null)) {
            throw new BadInput("Give a plant, --backup or --restore: one of the three.");
        }
        try {
            if (backup != null) {
                Backup.write(database(), backup);
                spec.commandLine().getOut().println("Written: " + backup);
            } else if (restore != null) {
                Optional<Path> aside = Backup.restore(restore, database());
                spec.commandLine()
                        .getOut()
                        .println("Taken back into " + database()
                                + aside.map(a -> "; what was there lies in " + a)
                                        .orElse("")
                                + ".");
            }
        } catch (Backup.Refused refused) {
            throw new BadInput(String.valueOf(refused.getMessage()));
        }
        return ExitCode.HOLDS;
    }

    /** A copy of the demo plant, to be changed as one likes; made once. */
    private Path demo() {
        Path copy = database().resolveSibling("demo").resolve("bakery.yaml");
        try (InputStream plant = StudioCommand.class.getResourceAsStream("/demo/plant.yaml")) {
            if (plant == null) {
                throw new IllegalStateException("the demo plant is missing from the program");
            }
            if (!Files.exists(copy)) {
                Files.createDirectories(copy.getParent());
                Files.copy(plant, copy);
            }
        } catch (IOException fault) {
            throw new BadInput("The demo plant could not be copied to " + copy + ": " + fault.getMessage()
                    + ". Give a plant file.");
        }
        spec.commandLine().getOut().println("No plant was given: this is an invented demo plant, " + copy + ".");
        return copy;
    }

    private int serve(Path file, boolean demo) throws InterruptedException {
        if (!Files.isRegularFile(file)) {
            throw new BadInput("There is no file " + file
                    + ". Give the path of a plant file, such as examples/bakery/plant.yaml.");
        }
        try {
            if (Files.size(file) > PlantReader.LARGEST_bytes) {
                throw new BadInput(file + " is larger than a plant file may be.");
            }
        } catch (IOException fault) {
            throw new BadInput(file + " could not be opened: " + fault.getMessage());
        }
        if (port != null && (port < 0 || port > LAST_PORT)) {
            throw new BadInput("--port " + port + ": a port is a number from 0, any that is free, to 65535.");
        }
        try (Studio studio = open(file, demo)) {
            spec.commandLine().getOut().println("The studio answers at " + studio.address() + "  Ctrl+C ends it.");
            new CountDownLatch(1).await();
        }
        return ExitCode.HOLDS;
    }

    private Studio open(Path file, boolean demo) {
        try {
            Path kept = database();
            Optional<Path> folder = Optional.ofNullable(kept.toAbsolutePath().getParent());
            if (folder.isPresent()) {
                Files.createDirectories(folder.get());
            }
            if (port != null) {
                return open(file, kept, port, demo);
            }
            try {
                return open(file, kept, USUAL_PORT, demo);
            } catch (IllegalStateException taken) {
                return open(file, kept, 0, demo);
            }
        } catch (CharacterCodingException noText) {
            throw new BadInput(file + " is not UTF-8 text, so it is no plant file.");
        } catch (IOException fault) {
            throw new BadInput(file + " could not be opened: " + fault.getMessage());
        } catch (RuntimeException fault) {
            if (fault.getCause() instanceof SQLException || fault.getCause() instanceof BindException) {
                throw new BadInput(
                        fault.getMessage() + ". Give another file with --keep, or another port with --port.");
            }
            throw fault;
        }
    }

    private static Studio open(Path file, Path kept, int port, boolean demo) throws IOException {
        return demo ? Studio.openDemo(file, kept, port, Main.VERSION) : Studio.open(file, kept, port, Main.VERSION);
    }

    private Path database() {
        return database != null
                ? database
                : Path.of(System.getProperty("user.home"), ".local", "share", "dustwright", "studio.db");
    }
}
