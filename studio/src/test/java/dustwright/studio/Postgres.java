package dustwright.studio;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A PostgreSQL server of its own on the loopback, thrown away afterwards; there is none where Debian's postgresql is not installed. */
final class Postgres implements AutoCloseable {
    private static final Path PROGRAMS = Path.of("/usr/lib/postgresql");

    private final Path programs;
    private final Path folder;
    private final int port;
    private int databases;

    private Postgres(Path programs, Path folder, int port) {
        this.programs = programs;
        this.folder = folder;
        this.port = port;
    }

    private static Optional<Path> installed() throws IOException {
        if (!Files.isDirectory(PROGRAMS)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(PROGRAMS)) {
            return versions.map(v -> v.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(Comparator.comparing(Path::toString));
        }
    }

    /** Starts one, or skips the test by name where it is not installed. */
    static Postgres start() throws IOException, InterruptedException {
        Optional<Path> programs = installed();
        assumeTrue(programs.isPresent(), "postgresql is not installed");
        Path folder = Files.createTempDirectory("postgres");
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        Postgres server = new Postgres(programs.orElseThrow(), folder, port);
        if (root()) {
            server.run("chown", "postgres", folder.toString());
        }
        server.program("initdb", "-D", server.data(), "-U", "postgres", "-A", "trust", "-E", "UTF8", "--locale=C");
        server.program(
                "pg_ctl",
                "-D",
                server.data(),
                "-w",
                "-l",
                folder.resolve("log").toString(),
                "-o",
                "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=" + folder,
                "start");
        return server;
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    /** The address of a new database on it. */
    String database() throws IOException, InterruptedException {
        String name = "studio" + ++databases;
        program("createdb", "-h", "127.0.0.1", "-p", Integer.toString(port), "-U", "postgres", name);
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + name + "?user=postgres";
    }

    private static boolean root() {
        return System.getProperty("user.name").equals("root");
    }

    /** PostgreSQL does not run as root. */
    private void program(String name, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        if (root()) {
            command.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        command.add(programs.resolve(name).toString());
        command.addAll(List.of(arguments));
        run(command.toArray(String[]::new));
    }

    private void run(String... command) throws IOException, InterruptedException {
        Path said = Files.createTempFile("postgres", ".txt");
        try {
            Process process = new ProcessBuilder(command)
                    .directory(Path.of("/").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            if (process.waitFor() != 0) {
                throw new IOException(
                        String.join(" ", command) + ": " + Files.readString(said, StandardCharsets.UTF_8));
            }
        } finally {
            Files.delete(said);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            program("pg_ctl", "-D", data(), "-m", "fast", "-w", "stop");
            run("rm", "-r", folder.toString());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
