package dustwright.studio;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * The database of a studio or of many: a file on this machine, or a PostgreSQL server for a team. Both take the same statements and the
 * same numbered schemas. What was changed together is on the disk, all of it, when the call comes back.
 */
public final class Store implements AutoCloseable {
    private static final String SERVER = "jdbc:postgresql:";
    private static final int BUSY_ms = 5000;
    private static final int FEW = 50;
    private static final int CONNECTIONS_TO_FILE = 4;
    private static final int CONNECTIONS_TO_SERVER = 16;
    /** So that of several programs that open a new database only one makes its tables. */
    private static final long MAKING_TABLES = 7_301_934;

    private static final int MARK_letters = 8;

    /** By the result codes of SQLite, https://www.sqlite.org/rescode.html. */
    private static final Map<Integer, String> OF_A_FILE = Map.of(
            3, "this user may not use the file",
            5, "another program holds the file",
            8, "the file may not be written",
            11, "the file is damaged",
            13, "the disk is full",
            14, "the file cannot be opened or made",
            26, "the file is no database");

    private final HikariDataSource source;
    private final boolean server;
    private final String where;

    private Store(HikariDataSource source, boolean server, String where) {
        this.source = source;
        this.server = server;
        this.where = where;
    }

    /** Whether a database is named by the address of a PostgreSQL server, not by a file. */
    public static boolean isServer(String database) {
        return database.startsWith(SERVER);
    }

    /**
     * Opens a database, making its file or its tables where they are not there.
     *
     * @param database a file, or the JDBC address of a PostgreSQL database
     */
    public static Store open(String database) {
        boolean server = isServer(database);
        String where = server ? database.replaceFirst("[?].*", "") : database;
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(server ? database : "jdbc:sqlite:" + database);
        config.setMaximumPoolSize(server ? CONNECTIONS_TO_SERVER : CONNECTIONS_TO_FILE);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(BUSY_ms);
        if (server) {
            config.setConnectionInitSql("SET synchronous_commit TO on");
        } else {
            config.addDataSourceProperty("journal_mode", "WAL");
            config.addDataSourceProperty("synchronous", "FULL");
            config.addDataSourceProperty("busy_timeout", Integer.toString(BUSY_ms));
            config.addDataSourceProperty("transaction_mode", "IMMEDIATE");
        }
        try {
            Store store = new Store(new HikariDataSource(config), server, where);
            store.migrate();
            return store;
        } catch (KeepingFault fault) {
            throw fault;
        } catch (RuntimeException fault) {
            Throwable cause = Optional.ofNullable(fault.getCause()).orElse(fault);
            SQLException why = cause instanceof SQLException sql ? sql : new SQLException(cause);
            throw new KeepingFault("what is typed cannot be kept in " + where + ": " + words(why), why);
        }
    }

    /** What a database complains of by numbers and states that do not change, in words; the rest as the database says it, without its marks. */
    static String words(SQLException fault) {
        String state = Optional.ofNullable(fault.getSQLState()).orElse("");
        if (state.startsWith("08")) {
            return "no database server answers there";
        }
        if (state.startsWith("28")) {
            return "the server does not let this user in";
        }
        if (state.equals("3D000")) {
            return "the server has no database of that name";
        }
        return Optional.ofNullable(state.isEmpty() ? OF_A_FILE.get(fault.getErrorCode()) : null)
                .orElseGet(() -> String.valueOf(fault.getMessage())
                        .replaceFirst("^\\[[A-Z_]+\\] *", "")
                        .replaceFirst("\\.+$", ""));
    }

    /** Tells this database from another, for those who see both: some letters that come from where it is. */
    String mark() {
        String whole =
                server ? where : Path.of(where).toAbsolutePath().normalize().toString();
        return UUID.nameUUIDFromBytes(whole.getBytes(StandardCharsets.UTF_8))
                .toString()
                .substring(0, MARK_letters);
    }

    static Store open(Path file) {
        return open(file.toString());
    }

    /** The database without what opens it. */
    public String where() {
        return where;
    }

    boolean server() {
        return server;
    }

    private void migrate() {
        together(on -> {
            if (server) {
                on.one("SELECT pg_advisory_xact_lock(?)", row -> "", MAKING_TABLES);
                on.change("CREATE TABLE IF NOT EXISTS schema_number(number INTEGER PRIMARY KEY)");
            }
            String asked = server ? "SELECT COALESCE(MAX(number),0) FROM schema_number" : "PRAGMA user_version";
            int there = on.one(asked, row -> row.getInt(1)).orElse(0);
            if (there > Kept.SCHEMA) {
                close();
                throw new KeepingFault(
                        where + " was written by a newer Dustwright than this one",
                        new SQLException("schema " + there + ", known up to " + Kept.SCHEMA));
            }
            for (int n = there; n < Kept.SCHEMA; n++) {
                for (String statement : Kept.SCHEMAS.get(n)) {
                    on.change(server ? statement.replace(" BLOB", " BYTEA") : statement);
                }
                if (server) {
                    on.change("INSERT INTO schema_number(number) VALUES(?)", n + 1);
                }
            }
            if (!server && there < Kept.SCHEMA) {
                on.change("PRAGMA user_version=" + Kept.SCHEMA);
            }
            return there;
        });
    }

    @Override
    public void close() {
        source.close();
    }

    interface Read<T> {
        T of(ResultSet row) throws SQLException;
    }

    interface Taken {
        void row(Object[] values) throws SQLException;
    }

    interface Changes<T> {
        T make(Together on) throws SQLException;
    }

    /** What is read and changed as one. */
    static final class Together {
        private final Connection connection;

        private Together(Connection connection) {
            this.connection = connection;
        }

        <T> List<T> all(String sql, Read<T> read, Object... values) throws SQLException {
            try (PreparedStatement statement = prepared(sql, values);
                    ResultSet rows = statement.executeQuery()) {
                List<T> found = new ArrayList<>();
                while (rows.next()) {
                    found.add(read.of(rows));
                }
                return found;
            }
        }

        <T> Optional<T> one(String sql, Read<T> read, Object... values) throws SQLException {
            return all(sql, read, values).stream().findFirst();
        }

        /** How many rows were changed. */
        int change(String sql, Object... values) throws SQLException {
            try (PreparedStatement statement = prepared(sql, values)) {
                return statement.executeUpdate();
            }
        }

        List<String> columns(String table) throws SQLException {
            try (PreparedStatement statement = prepared("SELECT * FROM " + table + " WHERE 1=0");
                    ResultSet none = statement.executeQuery()) {
                List<String> columns = new ArrayList<>();
                for (int n = 1; n <= none.getMetaData().getColumnCount(); n++) {
                    columns.add(none.getMetaData().getColumnName(n));
                }
                return columns;
            }
        }

        /** Each row after the other, however many there are. */
        void each(String sql, int columns, Taken taken) throws SQLException {
            try (PreparedStatement statement = prepared(sql)) {
                statement.setFetchSize(FEW);
                try (ResultSet rows = statement.executeQuery()) {
                    while (rows.next()) {
                        Object[] row = new Object[columns];
                        for (int n = 0; n < columns; n++) {
                            row[n] = rows.getObject(n + 1);
                        }
                        taken.row(row);
                    }
                }
            }
        }

        private PreparedStatement prepared(String sql, Object... values) throws SQLException {
            PreparedStatement statement = connection.prepareStatement(sql);
            for (int n = 0; n < values.length; n++) {
                statement.setObject(n + 1, keepable(values[n]));
            }
            return statement;
        }

        /** A database gives back text as it was, or it is not given. */
        private static Object keepable(Object value) {
            if (value instanceof String text
                    && (text.indexOf('\0') >= 0
                            || !StandardCharsets.UTF_8.newEncoder().canEncode(text))) {
                throw new Unkeepable();
            }
            return value;
        }
    }

    <T> Optional<T> one(String sql, Read<T> read, Object... values) {
        return all(sql, read, values).stream().findFirst();
    }

    <T> List<T> all(String sql, Read<T> read, Object... values) {
        try (Connection connection = source.getConnection()) {
            return new Together(connection).all(sql, read, values);
        } catch (SQLException fault) {
            throw new KeepingFault("the database could not be read: " + words(fault), fault);
        }
    }

    int change(String sql, Object... values) {
        return together(on -> on.change(sql, values));
    }

    /** All of it or nothing. */
    <T> T together(Changes<T> changes) {
        try (Connection connection = source.getConnection()) {
            connection.setAutoCommit(false);
            try {
                T made = changes.make(new Together(connection));
                connection.commit();
                return made;
            } catch (SQLException | RuntimeException fault) {
                connection.rollback();
                throw fault;
            }
        } catch (SQLException fault) {
            throw new KeepingFault("the last step could not be kept: " + words(fault), fault);
        }
    }

    /** What was asked could not be kept or read back. */
    static final class KeepingFault extends RuntimeException {
        private static final long serialVersionUID = 1;

        KeepingFault(String why, SQLException cause) {
            super(why, cause);
        }
    }

    /** A text with a character in it that no database keeps. */
    static final class Unkeepable extends RuntimeException {
        private static final long serialVersionUID = 1;

        Unkeepable() {
            super("The text has a character in it that is none: the zero character or half a pair.");
        }
    }
}
