package dustwright.studio;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * What was typed and drawn, kept in a database file: every step of the working copy with the way back and forth, and accepted revisions,
 * which nobody changes any more. A step is on the disk before anyone is told that it is kept.
 */
final class Kept implements AutoCloseable {
    private static final int BUSY_ms = 5000;
    /** What each schema adds to the one before it; a database says which it has. Statements here never change, new ones are put behind. */
    private static final List<List<String>> SCHEMAS = List.of(
            List.of(
                    "CREATE TABLE IF NOT EXISTS plant(file TEXT PRIMARY KEY, step INTEGER NOT NULL, outside TEXT NOT NULL)",
                    "CREATE TABLE IF NOT EXISTS step(file TEXT NOT NULL, number INTEGER NOT NULL, version INTEGER NOT NULL,"
                            + " what TEXT NOT NULL, text TEXT NOT NULL, PRIMARY KEY(file, number))",
                    "CREATE TABLE IF NOT EXISTS revision(file TEXT NOT NULL, number INTEGER NOT NULL, at TEXT NOT NULL,"
                            + " author TEXT NOT NULL, note TEXT NOT NULL, text TEXT NOT NULL, PRIMARY KEY(file, number))"),
            List.of("CREATE TABLE IF NOT EXISTS alternative(file TEXT NOT NULL, name TEXT NOT NULL, at TEXT NOT NULL,"
                    + " text TEXT NOT NULL, PRIMARY KEY(file, name))"),
            List.of(
                    "CREATE TABLE IF NOT EXISTS floorplan(file TEXT PRIMARY KEY, number BIGINT NOT NULL, type TEXT NOT NULL,"
                            + " width INTEGER NOT NULL, height INTEGER NOT NULL, x DOUBLE PRECISION NOT NULL,"
                            + " y DOUBLE PRECISION NOT NULL, scale DOUBLE PRECISION NOT NULL, turned DOUBLE PRECISION NOT NULL,"
                            + " picture TEXT NOT NULL)"));

    /** The schema this program writes. */
    static final int SCHEMA = SCHEMAS.size();

    private final Connection connection;
    private final String file;

    private Kept(Connection connection, String file) {
        this.connection = connection;
        this.file = file;
    }

    /** One step of the working copy. */
    record Step(int number, long version, String what, String text) {}

    /** An accepted revision. */
    record Revision(int number, String at, String author, String note, String text) {}

    /** A design kept by a name, to be compared and taken up again. */
    record Alternative(String name, String at, String text) {}

    /** Opens the database for one plant file, making it where it is not there. */
    static Kept open(Path database, Path plantFile) {
        try {
            Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
            Kept kept =
                    new Kept(connection, plantFile.toAbsolutePath().normalize().toString());
            kept.run("PRAGMA journal_mode=WAL");
            kept.run("PRAGMA synchronous=FULL");
            kept.run("PRAGMA busy_timeout=" + BUSY_ms);
            connection.setAutoCommit(false);
            kept.migrate(database);
            return kept;
        } catch (SQLException fault) {
            throw new KeepingFault("what is typed cannot be kept in " + database + ": " + fault.getMessage(), fault);
        }
    }

    private void migrate(Path database) {
        int there = one("PRAGMA user_version", row -> row.getInt(1)).orElse(0);
        if (there > SCHEMA) {
            throw new KeepingFault(
                    database + " was written by a newer Dustwright than this one",
                    new SQLException("schema " + there + ", known up to " + SCHEMA));
        }
        together(() -> {
            for (List<String> added : SCHEMAS.subList(there, SCHEMA)) {
                for (String statement : added) {
                    run(statement);
                }
            }
            run("PRAGMA user_version=" + SCHEMA);
        });
    }

    /** What was last read from the plant file itself, or written to it. */
    Optional<String> outside() {
        return one("SELECT outside FROM plant WHERE file=?", row -> row.getString(1), file);
    }

    /** The step one stands on. */
    Optional<Step> now() {
        return one(
                "SELECT s.number, s.version, s.what, s.text FROM step s JOIN plant p ON p.file=s.file AND p.step=s.number WHERE s.file=?",
                Kept::step,
                file);
    }

    /** Adds a step behind the one one stands on; steps that were taken back are forgotten. */
    void add(Step step, Optional<String> outside) {
        together(() -> {
            change("DELETE FROM step WHERE file=? AND number>=?", file, step.number());
            change(
                    "INSERT INTO step(file, number, version, what, text) VALUES(?,?,?,?,?)",
                    file,
                    step.number(),
                    step.version(),
                    step.what(),
                    step.text());
            change(
                    "INSERT INTO plant(file, step, outside) VALUES(?,?,?) ON CONFLICT(file) DO UPDATE SET step=excluded.step",
                    file,
                    step.number(),
                    outside.orElse(""));
            if (outside.isPresent()) {
                change("UPDATE plant SET outside=? WHERE file=?", outside.get(), file);
            }
        });
    }

    /** Stands on another step, which gets a new version: whoever still shows the old one will notice. */
    void stand(int number, long version) {
        together(() -> {
            change("UPDATE plant SET step=? WHERE file=?", number, file);
            change("UPDATE step SET version=? WHERE file=? AND number=?", version, file, number);
        });
    }

    /** Remembers what the plant file holds now. */
    void written(String text) {
        together(() -> change("UPDATE plant SET outside=? WHERE file=?", text, file));
    }

    Optional<Step> step(int number) {
        return one("SELECT number, version, what, text FROM step WHERE file=? AND number=?", Kept::step, file, number);
    }

    long lastVersion() {
        return one("SELECT COALESCE(MAX(version),0) FROM step WHERE file=?", row -> row.getLong(1), file)
                .orElse(0L);
    }

    Revision accept(String at, String author, String note, String text) {
        int[] number = new int[1];
        together(() -> {
            number[0] = one("SELECT COALESCE(MAX(number),0)+1 FROM revision WHERE file=?", row -> row.getInt(1), file)
                    .orElse(1);
            change(
                    "INSERT INTO revision(file, number, at, author, note, text) VALUES(?,?,?,?,?,?)",
                    file,
                    number[0],
                    at,
                    author,
                    note,
                    text);
        });
        return new Revision(number[0], at, author, note, text);
    }

    /** Accepted revisions, newest first. */
    List<Revision> revisions() {
        return all(
                "SELECT number, at, author, note, text FROM revision WHERE file=? ORDER BY number DESC",
                row -> new Revision(
                        row.getInt(1), row.getString(2), row.getString(3), row.getString(4), row.getString(5)),
                file);
    }

    /** Keeps a design by a name; false where the name is taken. */
    boolean keep(Alternative alternative) {
        boolean free = alternatives().stream().noneMatch(a -> a.name().equals(alternative.name()));
        if (free) {
            together(() -> change(
                    "INSERT INTO alternative(file, name, at, text) VALUES(?,?,?,?)",
                    file,
                    alternative.name(),
                    alternative.at(),
                    alternative.text()));
        }
        return free;
    }

    void letGo(String alternative) {
        together(() -> change("DELETE FROM alternative WHERE file=? AND name=?", file, alternative));
    }

    /** Designs kept by a name, in the order of their names. */
    List<Alternative> alternatives() {
        return all(
                "SELECT name, at, text FROM alternative WHERE file=? ORDER BY name",
                row -> new Alternative(row.getString(1), row.getString(2), row.getString(3)),
                file);
    }

    Optional<FloorPlan> floorPlan() {
        return one(
                "SELECT number, type, width, height, x, y, scale, turned FROM floorplan WHERE file=?",
                row -> new FloorPlan(
                        row.getLong(1),
                        row.getString(2),
                        row.getInt(3),
                        row.getInt(4),
                        row.getDouble(5),
                        row.getDouble(6),
                        row.getDouble(7),
                        row.getDouble(8)),
                file);
    }

    /** The picture of the floor; empty bytes where there is none. */
    byte[] floorPicture() {
        return Base64.getDecoder()
                .decode(one("SELECT picture FROM floorplan WHERE file=?", row -> row.getString(1), file)
                        .orElse(""));
    }

    /** Keeps where the picture of the floor lies, with a new picture where there is one; or no picture any more. */
    void keepFloorPlan(Optional<FloorPlan> plan, Optional<byte[]> picture) {
        String bytes = picture.map(Base64.getEncoder()::encodeToString)
                .or(() -> one("SELECT picture FROM floorplan WHERE file=?", row -> row.getString(1), file))
                .orElse("");
        together(() -> {
            change("DELETE FROM floorplan WHERE file=?", file);
            if (plan.isPresent()) {
                FloorPlan p = plan.get();
                change(
                        "INSERT INTO floorplan(file, number, type, width, height, x, y, scale, turned, picture)"
                                + " VALUES(?,?,?,?,?,?,?,?,?,?)",
                        file,
                        p.number(),
                        p.type(),
                        p.width_px(),
                        p.height_px(),
                        p.x_m(),
                        p.y_m(),
                        p.metresPerPoint(),
                        p.turned(),
                        bytes);
            }
        });
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException fault) {
            throw new KeepingFault("the database could not be closed: " + fault.getMessage(), fault);
        }
    }

    private static Step step(ResultSet row) throws SQLException {
        return new Step(row.getInt(1), row.getLong(2), row.getString(3), row.getString(4));
    }

    private interface Read<T> {
        T of(ResultSet row) throws SQLException;
    }

    private <T> Optional<T> one(String sql, Read<T> read, Object... values) {
        return all(sql, read, values).stream().findFirst();
    }

    private <T> List<T> all(String sql, Read<T> read, Object... values) {
        try (PreparedStatement statement = prepared(sql, values);
                ResultSet rows = statement.executeQuery()) {
            List<T> found = new ArrayList<>();
            while (rows.next()) {
                found.add(read.of(rows));
            }
            return found;
        } catch (SQLException fault) {
            throw new KeepingFault("the database could not be read: " + fault.getMessage(), fault);
        }
    }

    private PreparedStatement prepared(String sql, Object... values) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        for (int n = 0; n < values.length; n++) {
            statement.setObject(n + 1, values[n]);
        }
        return statement;
    }

    private void change(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values)) {
            statement.executeUpdate();
        }
    }

    private interface Changes {
        void make() throws SQLException;
    }

    /** All of it or nothing. */
    private void together(Changes changes) {
        try {
            try {
                changes.make();
                connection.commit();
            } catch (SQLException fault) {
                connection.rollback();
                throw fault;
            }
        } catch (SQLException fault) {
            throw new KeepingFault("the last step could not be kept: " + fault.getMessage(), fault);
        }
    }

    private void run(String sql) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.execute();
        }
    }

    /** What was asked could not be kept or read back. */
    static final class KeepingFault extends RuntimeException {
        private static final long serialVersionUID = 1;

        KeepingFault(String why, Throwable cause) {
            super(why, cause);
        }
    }
}
