package dustwright.cli;

import dustwright.plantfile.PlantReader;
import dustwright.studio.Backup;
import dustwright.studio.Certificate;
import dustwright.studio.Store;
import dustwright.studio.Studio;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
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
            "With people set up it asks to sign in, and may answer other machines; a team keeps its plants in PostgreSQL.",
            "",
            "  dustwright studio",
            "  dustwright studio examples/bakery/plant.yaml",
            "  dustwright studio --new mill.yaml",
            "  dustwright studio --person \"A. Engineer\" --role designer",
            "  dustwright studio --listen 192.0.2.10 plants/mill.yaml plants/bakery.yaml",
            "  dustwright studio --backup kept-2026-03.db",
            "  dustwright studio --restore kept-2026-03.db",
            ""
        })
final class StudioCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(
            index = "0..*",
            arity = "0..*",
            paramLabel = "PLANT",
            description =
                    "The plant files (YAML), each with a page of its own. Default: a copy of an invented demo plant.")
    private List<Path> plantFiles = List.of();

    @Option(
            names = "--new",
            description = "Begin PLANT, which is not there yet, with a small plant whose every figure is invented.")
    private boolean begin;

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
            paramLabel = "DATABASE",
            description =
                    "Database of steps, revisions and people: a file, or the address of a PostgreSQL database, jdbc:postgresql://HOST/NAME?user=USER. Default: what DUSTWRIGHT_DATABASE says, else .local/share/dustwright/studio.db in your home folder.")
    private @Nullable String database;

    @Option(
            names = "--as",
            paramLabel = "NAME",
            description =
                    "What the plant is called in the database, so that studios on several machines work on one. Default: the whole path of its file.")
    private @Nullable String called;

    @Option(
            names = "--listen",
            paramLabel = "ADDRESS",
            description =
                    "Address of this machine at which others get an answer too, once people are set up. Default: 127.0.0.1, this machine alone.")
    private String address = "127.0.0.1";

    @Option(
            names = "--certificate",
            paramLabel = "FILE",
            description =
                    "Speak HTTPS with this certificate and key, a PKCS 12 file; its password is what DUSTWRIGHT_CERTIFICATE says, else it is asked, or read from standard input.")
    private @Nullable Path certificateFile;

    @Option(
            names = "--person",
            paramLabel = "NAME",
            description = "Set somebody up who may sign in; the password is asked, or read from standard input.")
    private @Nullable String person;

    @Option(
            names = "--role",
            paramLabel = "ROLE",
            description =
                    "What that person may do: viewer (look), designer (change, accept) or checker (look, sign off).")
    private @Nullable String role;

    @Option(names = "--remove", description = "Take that person out.")
    private boolean remove;

    @Option(names = "--people", description = "List who may sign in.")
    private boolean people;

    private static final String LOOPBACK = "127.0.0.1";
    private static final int USUAL_PORT = 8321;
    private static final int LAST_PORT = 65_535;

    @Override
    public Integer call() throws InterruptedException {
        if (database != null && Store.isServer(database) && database.contains("password=")) {
            throw new BadInput(
                    "A password in an argument can be read by others on this machine. Put the whole address into"
                            + " DUSTWRIGHT_DATABASE, or the password into .pgpass in your home folder.");
        }
        if (!Store.isServer(database())
                && (database().startsWith("jdbc:") || database().contains("://"))) {
            // Not told again: the address may hold a password.
            throw new BadInput(
                    "--keep or DUSTWRIGHT_DATABASE: what is typed is kept in a file, or in a PostgreSQL database given as"
                            + " jdbc:postgresql://HOST/NAME. This is the address of something else; nothing was made.");
        }
        boolean setsUp = person != null || people;
        boolean keepsApart = backup != null || restore != null;
        if (Stream.of(setsUp, keepsApart, !plantFiles.isEmpty())
                                .filter(asked -> asked)
                                .count()
                        > 1
                || (backup != null && restore != null)) {
            throw new BadInput("Give plants, --person, --people, --backup or --restore: one of these.");
        }
        if (begin && plantFiles.size() != 1) {
            throw new BadInput("--new begins one plant: give the path of the one file that is not there yet.");
        }
        if ((role != null || remove) && person == null) {
            throw new BadInput("--role and --remove go with --person.");
        }
        if (setsUp) {
            return new StudioPeople(spec.commandLine()).call(this::store, person, role, remove);
        }
        if (keepsApart) {
            return keptApart();
        }
        return plantFiles.isEmpty() ? serve(List.of(demo()), true) : serve(plantFiles, false);
    }

    private int keptApart() {
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
        Path copy = home().resolve("demo").resolve("bakery.yaml");
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

    private int serve(List<Path> files, boolean demo) throws InterruptedException {
        if (!begin) {
            files.forEach(StudioCommand::readable);
        }
        if (called != null && files.size() > 1) {
            throw new BadInput("--as names one plant; give one.");
        }
        if (port != null && (port < 0 || port > LAST_PORT)) {
            throw new BadInput("--port " + port + ": a port is a number from 0, any that is free, to 65535.");
        }
        Optional<Certificate> certificate = Optional.ofNullable(certificateFile).map(StudioCommand::certificate);
        try (Store store = store()) {
            for (int n = 0; n < files.size(); n++) {
                Studio studio = begin
                        ? begun(store, files.get(n), certificate)
                        : open(store, files.get(n), n, demo, certificate);
                spec.commandLine()
                        .getOut()
                        .println("The studio answers at " + studio.address()
                                + (files.size() > 1 ? "  for " + files.get(n) : "")
                                + (n == files.size() - 1 ? "  Ctrl+C ends it." : ""));
                if (n == 0) {
                    studio.practise();
                }
            }
            if (!address.equals(LOOPBACK) && certificate.isEmpty()) {
                spec.commandLine()
                        .getErr()
                        .println(
                                "dustwright: what is sent, passwords too, can be read on the way. Give a --certificate, or put a program"
                                        + " before it that speaks HTTPS, wherever the network is not yours alone.");
            }
            new CountDownLatch(1).await();
        }
        return ExitCode.HOLDS;
    }

    /** Begins a plant and opens it; where it cannot be opened nothing is left of it. */
    private Studio begun(Store store, Path file, Optional<Certificate> certificate) {
        try {
            Files.writeString(file, Studio.starter(), StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException there) {
            throw new BadInput(file + " is there already. Leave --new out to work on it, or give another path.");
        } catch (IOException fault) {
            throw new BadInput(file + " could not be written: " + fault.getMessage());
        }
        try {
            return open(store, file, 0, false, certificate);
        } catch (BadInput refused) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException fault) {
                refused.addSuppressed(fault);
            }
            throw refused;
        }
    }

    private static Certificate certificate(Path file) {
        char[] password = Optional.ofNullable(System.getenv("DUSTWRIGHT_CERTIFICATE"))
                .map(String::toCharArray)
                .orElseGet(() -> StudioPeople.asked("Password of " + file + ": "));
        try {
            return Certificate.read(file, password, Clock.systemUTC());
        } catch (Certificate.Refused refused) {
            throw new BadInput(String.valueOf(refused.getMessage()));
        }
    }

    private static void readable(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(
                    "There is no file " + file
                            + ". Give the path of a plant file, such as examples/bakery/plant.yaml, or begin one there with --new.");
        }
        try {
            if (Files.size(file) > PlantReader.LARGEST_bytes) {
                throw new BadInput(file + " is larger than a plant file may be.");
            }
        } catch (IOException fault) {
            throw new BadInput(file + " could not be opened: " + fault.getMessage());
        }
    }

    private Store store() {
        String where = database();
        try {
            if (!Store.isServer(where)) {
                Optional<Path> folder =
                        Optional.ofNullable(Path.of(where).toAbsolutePath().getParent());
                if (folder.isPresent()) {
                    Files.createDirectories(folder.get());
                }
            }
            return Store.open(where);
        } catch (IOException fault) {
            throw new BadInput(where + " could not be made: " + fault.getMessage());
        } catch (RuntimeException fault) {
            if (fault.getCause() instanceof SQLException) {
                throw new BadInput(fault.getMessage() + ". Give another database with --keep.");
            }
            throw fault;
        }
    }

    /** Opens one plant; of several each has the next port. */
    private Studio open(Store store, Path file, int place, boolean demo, Optional<Certificate> certificate) {
        try {
            if (port != null) {
                return openAt(store, file, port == 0 ? 0 : port + place, demo, certificate);
            }
            try {
                return openAt(store, file, USUAL_PORT + place, demo, certificate);
            } catch (IllegalStateException taken) {
                return openAt(store, file, 0, demo, certificate);
            }
        } catch (CharacterCodingException noText) {
            throw new BadInput(file + " is not UTF-8 text, so it is no plant file.");
        } catch (IOException fault) {
            throw new BadInput(file + " could not be opened: " + fault.getMessage());
        } catch (Studio.Uninvited nobody) {
            throw new BadInput("Other machines get an answer only once people are set up who can sign in. Begin with"
                    + " dustwright studio --person NAME --role designer, or leave --listen out.");
        } catch (RuntimeException fault) {
            if (fault.getCause() instanceof SQLException) {
                throw new BadInput(fault.getMessage() + ". Give another database with --keep.");
            }
            if (fault.getCause() instanceof IOException) {
                throw new BadInput(String.valueOf(fault.getMessage()).replaceFirst("\\.+$", "")
                        + ". Give another port with --port, or another address with --listen.");
            }
            throw fault;
        }
    }

    private Studio openAt(Store store, Path file, int at, boolean demo, Optional<Certificate> certificate)
            throws IOException {
        return Studio.open(
                store,
                new Studio.Opening(
                        file, Optional.ofNullable(called).orElse(""), address, at, Main.VERSION, demo, certificate));
    }

    private static Path home() {
        return Path.of(System.getProperty("user.home"), ".local", "share", "dustwright");
    }

    private String database() {
        return Optional.ofNullable(database)
                .or(() -> Optional.ofNullable(System.getenv("DUSTWRIGHT_DATABASE")))
                .orElseGet(() -> home().resolve("studio.db").toString());
    }
}
