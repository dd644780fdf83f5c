package dustwright.studio;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;

/** All that a database keeps, written to one file and taken back from it. */
public final class Backup {
    private Backup() {}

    /** A backup that was not written, or not taken back; nothing was changed. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    /** The same for a file or a PostgreSQL server; of a server the file holds the same tables, so that either kind takes it back. */
    public static void write(String database, Path file) throws Refused {
        if (!Store.isServer(database)) {
            write(Path.of(database), file);
            return;
        }
        if (Files.exists(file)) {
            throw new Refused(file + " is there already. Give a name that is free.");
        }
        try (Store from = Store.open(database);
                Store to = Store.open(file)) {
            Transfer.all(from, to);
        } catch (Store.KeepingFault fault) {
            throw new Refused("The backup could not be written to " + file + ": " + fault.getMessage());
        }
    }

    /**
     * The same for a file or a PostgreSQL server; a server takes it back only where it keeps nothing yet, so that nothing is overwritten.
     *
     * @return where the old database lies now; empty when there was none
     */
    public static Optional<Path> restore(Path file, String database) throws Refused {
        if (!Store.isServer(database)) {
            return restore(file, Path.of(database));
        }
        whole(file);
        try {
            Path copy = Files.createTempFile("restore", ".db");
            try {
                Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
                try (Store from = Store.open(copy);
                        Store to = Store.open(database)) {
                    if (Transfer.holdsAnything(to)) {
                        throw new Refused(to.where()
                                + " keeps plants or people already, and nothing is overwritten. Make a new database on that"
                                + " server (createdb) and give its address.");
                    }
                    Transfer.all(from, to);
                }
            } finally {
                Files.deleteIfExists(copy);
            }
            return Optional.empty();
        } catch (IOException | Store.KeepingFault fault) {
            throw new Refused("The backup could not be taken back: " + fault.getMessage());
        }
    }

    /**
     * Writes everything kept so far to a new file; studios may go on meanwhile.
     *
     * @throws Refused when there is nothing to write, or the file is there already
     */
    public static void write(Path database, Path file) throws Refused {
        if (!Files.isRegularFile(database)) {
            throw new Refused("There is no database " + database + ", so there is nothing to back up.");
        }
        if (Files.exists(file)) {
            throw new Refused(file + " is there already. Give a name that is free.");
        }
        try (Connection connection = open(database);
                PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
            statement.setString(1, file.toString());
            statement.execute();
        } catch (SQLException fault) {
            throw new Refused("The backup could not be written to " + file + ": " + Store.words(fault));
        }
    }

    /**
     * Takes a backup back in place of the database. What the database held before is kept beside it.
     *
     * @return where the old database lies now; empty when there was none
     * @throws Refused when the file is no whole backup, or a studio has the database open
     */
    public static Optional<Path> restore(Path file, Path database) throws Refused {
        whole(file);
        try {
            Optional<Path> aside = Files.exists(database) ? Optional.of(setAside(database)) : Optional.empty();
            Path beside = database.resolveSibling(database.getFileName() + ".new");
            Files.copy(file, beside, StandardCopyOption.REPLACE_EXISTING);
            try (Store copy = Store.open(beside)) {
                copy.change("DELETE FROM session");
            }
            Files.move(beside, database, StandardCopyOption.ATOMIC_MOVE);
            return aside;
        } catch (IOException | Store.KeepingFault fault) {
            throw new Refused("The database could not be replaced: " + fault.getMessage());
        }
    }

    private static void whole(Path file) throws Refused {
        if (!Files.isRegularFile(file)) {
            throw new Refused("There is no file " + file + ".");
        }
        try (Connection connection = open(file)) {
            if (!one(connection, "PRAGMA integrity_check").equals("ok")
                    || !one(connection, "SELECT count(*) FROM sqlite_master WHERE name IN ('plant','step','revision')")
                            .equals("3")) {
                throw new Refused(file + " is no whole backup of a studio.");
            }
            if (Integer.parseInt(one(connection, "PRAGMA user_version")) > Kept.SCHEMA) {
                throw new Refused(file + " was written by a newer Dustwright than this one.");
            }
        } catch (SQLException fault) {
            throw new Refused(file + " is no backup of a studio: " + Store.words(fault));
        }
    }

    /** Nobody else may have it open: only then can its journal be folded in. */
    private static Path setAside(Path database) throws Refused, IOException {
        try (Connection connection = open(database)) {
            if (!one(connection, "PRAGMA journal_mode=DELETE").equals("delete")) {
                throw new Refused(inUse(database));
            }
        } catch (SQLException busy) {
            throw new Refused(inUse(database));
        }
        int number = 1;
        while (Files.exists(aside(database, number))) {
            number++;
        }
        return Files.move(database, aside(database, number));
    }

    private static String inUse(Path database) {
        return "A studio has " + database + " open. End it first, then take the backup back.";
    }

    private static Path aside(Path database, int number) {
        return database.resolveSibling(database.getFileName() + ".before-" + number);
    }

    private static Connection open(Path database) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + database);
    }

    private static String one(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            return row.next() ? String.valueOf(row.getString(1)) : "";
        }
    }
}
