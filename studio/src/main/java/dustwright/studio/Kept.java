package dustwright.studio;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What was typed and drawn, kept in a database: every step of the working copy with the way back and forth, and accepted revisions,
 * which nobody changes any more. A step is on the disk before anyone is told that it is kept.
 */
final class Kept implements AutoCloseable {
    /** What each schema adds to the one before it; a database says which it has. Statements here never change, new ones are put behind. */
    static final List<List<String>> SCHEMAS = List.of(
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
                            + " picture TEXT NOT NULL)"),
            List.of(
                    "ALTER TABLE plant ADD COLUMN version BIGINT NOT NULL DEFAULT 0",
                    "UPDATE plant SET version=(SELECT COALESCE(MAX(version),0) FROM step WHERE step.file=plant.file)",
                    "CREATE TABLE signed(file TEXT NOT NULL, number INTEGER NOT NULL, person TEXT NOT NULL, at TEXT NOT NULL,"
                            + " note TEXT NOT NULL, PRIMARY KEY(file, number, person))",
                    "CREATE TABLE person(id TEXT PRIMARY KEY, name TEXT NOT NULL, role TEXT NOT NULL, secret TEXT NOT NULL)",
                    "CREATE TABLE session(token TEXT PRIMARY KEY, person TEXT NOT NULL, begun BIGINT NOT NULL, seen BIGINT NOT NULL)",
                    "CREATE TABLE attempt(who TEXT PRIMARY KEY, failures INTEGER NOT NULL, until BIGINT NOT NULL)"),
            List.of(
                    "CREATE TABLE control(file TEXT NOT NULL, station TEXT NOT NULL, number INTEGER NOT NULL, at TEXT NOT NULL,"
                            + " author TEXT NOT NULL, text TEXT NOT NULL, PRIMARY KEY(file, station, number))"),
            List.of(
                    "ALTER TABLE step ADD COLUMN author TEXT NOT NULL DEFAULT ''",
                    "ALTER TABLE step ADD COLUMN at TEXT NOT NULL DEFAULT ''",
                    "ALTER TABLE step ADD COLUMN mover TEXT NOT NULL DEFAULT ''",
                    "CREATE TABLE leftstep(file TEXT NOT NULL, version BIGINT NOT NULL, number INTEGER NOT NULL,"
                            + " what TEXT NOT NULL, text TEXT NOT NULL, author TEXT NOT NULL, at TEXT NOT NULL,"
                            + " leaver TEXT NOT NULL, leftat TEXT NOT NULL, PRIMARY KEY(file, version))"),
            List.of(
                    "CREATE TABLE floor(file TEXT NOT NULL, number BIGINT NOT NULL, type TEXT NOT NULL,"
                            + " width INTEGER NOT NULL, height INTEGER NOT NULL, x DOUBLE PRECISION NOT NULL,"
                            + " y DOUBLE PRECISION NOT NULL, scale DOUBLE PRECISION NOT NULL, turned DOUBLE PRECISION NOT NULL,"
                            + " picture BIGINT NOT NULL, PRIMARY KEY(file, number))",
                    "CREATE TABLE floorpicture(file TEXT NOT NULL, number BIGINT NOT NULL, bytes TEXT NOT NULL,"
                            + " PRIMARY KEY(file, number))",
                    "INSERT INTO floor(file, number, type, width, height, x, y, scale, turned, picture)"
                            + " SELECT file, number, type, width, height, x, y, scale, turned, number FROM floorplan",
                    "INSERT INTO floorpicture(file, number, bytes) SELECT file, number, picture FROM floorplan",
                    "ALTER TABLE step ADD COLUMN floor BIGINT NOT NULL DEFAULT 0",
                    "ALTER TABLE leftstep ADD COLUMN floor BIGINT NOT NULL DEFAULT 0",
                    "UPDATE step SET floor=COALESCE((SELECT number FROM floorplan f WHERE f.file=step.file),0)",
                    "UPDATE leftstep SET floor=COALESCE((SELECT number FROM floorplan f WHERE f.file=leftstep.file),0)",
                    "DROP TABLE floorplan"),
            List.of("ALTER TABLE signed ADD COLUMN refused INTEGER NOT NULL DEFAULT 0"));

    /** The schema this program writes. */
    static final int SCHEMA = SCHEMAS.size();

    private final Store store;
    private final String file;

    Kept(Store store, String file) {
        this.store = store;
        this.file = file;
    }

    /**
     * One step of the working copy.
     *
     * @param author who made it; empty where nobody signs in, or the plant file brought it
     * @param floor number of the floor plan that lies under it, 0 for none
     * @param mover who came to stand on it last, by making it or walking there
     */
    record Step(
            int number, long version, String what, String text, String author, String at, String mover, long floor) {}

    /** A step that was taken back and then left behind by another change, with who made that change and when; its text is asked for alone. */
    record Left(long version, int number, String what, String author, String at, String leaver, String leftAt) {}

    /** An accepted revision. */
    record Revision(int number, String at, String author, String note, String text, List<Signed> signed) {}

    /** By whom and when a revision was signed off, or refused with the note as the reason. */
    record Signed(String by, String at, String note, boolean refused) {}

    /** A design kept by a name, to be compared and taken up again. */
    record Alternative(String name, String at, String text) {}

    /** Opens the database for one plant file, making it where it is not there. */
    static Kept open(Path database, Path plantFile) {
        return new Kept(Store.open(database), nameOf(plantFile));
    }

    /** What a plant is called in the database unless one says otherwise. */
    static String nameOf(Path plantFile) {
        return plantFile.toAbsolutePath().normalize().toString();
    }

    /** What was last read from the plant file itself, or written to it. */
    Optional<String> outside() {
        return store.one("SELECT outside FROM plant WHERE file=?", row -> row.getString(1), file);
    }

    /** The version that is kept now, whoever kept it; 0 where the plant is not known yet. */
    long version() {
        return store.one("SELECT version FROM plant WHERE file=?", row -> row.getLong(1), file)
                .orElse(0L);
    }

    /** The step one stands on. */
    Optional<Step> now() {
        return store.one(
                "SELECT s.number, p.version, s.what, s.text, s.author, s.at, s.mover, s.floor FROM step s JOIN plant p ON p.file=s.file AND p.step=s.number WHERE s.file=?",
                Kept::step,
                file);
    }

    /**
     * Adds a step behind the one one stands on; steps that were taken back go to those left behind.
     *
     * @param on the version it was thought out on, 0 for a plant that is not known yet
     * @return how many steps were left behind; empty where another version is kept by now, and nothing was changed
     */
    Optional<Integer> add(long on, Step step, Optional<String> outside) {
        return add(on, step, outside, Optional.empty());
    }

    /**
     * The same, with a floor plan that the step brings.
     *
     * @param laid kept only where the step is
     */
    Optional<Integer> add(long on, Step step, Optional<String> outside, Optional<Laid> laid) {
        return store.together(all -> {
            boolean mine = on == 0
                    ? all.change(
                                    "INSERT INTO plant(file, step, version, outside) VALUES(?,?,?,?) ON CONFLICT DO NOTHING",
                                    file,
                                    step.number(),
                                    step.version(),
                                    outside.orElse(""))
                            == 1
                    : moved(all, on, step.number(), step.version());
            if (!mine) {
                return Optional.empty();
            }
            if (laid.isPresent()) {
                lay(all, laid.get());
            }
            int left = all.change(
                    "INSERT INTO leftstep(file, version, number, what, text, author, at, floor, leaver, leftat)"
                            + " SELECT file, version, number, what, text, author, at, floor, ?, ? FROM step WHERE file=? AND number>=?",
                    step.author(),
                    step.at(),
                    file,
                    step.number());
            all.change("DELETE FROM step WHERE file=? AND number>=?", file, step.number());
            all.change(
                    "INSERT INTO step(file, number, version, what, text, author, at, mover, floor) VALUES(?,?,?,?,?,?,?,?,?)",
                    file,
                    step.number(),
                    step.version(),
                    step.what(),
                    step.text(),
                    step.author(),
                    step.at(),
                    step.mover(),
                    step.floor());
            if (outside.isPresent()) {
                all.change("UPDATE plant SET outside=? WHERE file=?", outside.get(), file);
            }
            return Optional.of(left);
        });
    }

    /** Only one who names the version that is kept moves it on; a second one waits here and then finds it gone. */
    private boolean moved(Store.Together all, long on, int step, long version) throws SQLException {
        return all.change("UPDATE plant SET step=?, version=? WHERE file=? AND version=?", step, version, file, on)
                == 1;
    }

    /** Stands on another step, which gets a new version: whoever still shows the old one will notice. False where another version is kept by now. */
    boolean stand(long on, Step step) {
        return store.together(all -> moved(all, on, step.number(), step.version())
                && all.change(
                                "UPDATE step SET version=?, mover=? WHERE file=? AND number=?",
                                step.version(),
                                step.mover(),
                                file,
                                step.number())
                        == 1);
    }

    /** Steps that were left behind, newest first. */
    List<Left> left() {
        return store.all(
                "SELECT version, number, what, author, at, leaver, leftat FROM leftstep WHERE file=? ORDER BY version DESC",
                row -> new Left(
                        row.getLong(1),
                        row.getInt(2),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        row.getString(6),
                        row.getString(7)),
                file);
    }

    /** What one of them held. */
    record Held(String text, long floor) {}

    Optional<Held> held(long left) {
        return store.one(
                "SELECT text, floor FROM leftstep WHERE file=? AND version=?",
                row -> new Held(row.getString(1), row.getLong(2)),
                file,
                left);
    }

    /** Remembers what the plant file holds now. */
    void written(String text) {
        store.change("UPDATE plant SET outside=? WHERE file=?", text, file);
    }

    Optional<Step> step(int number) {
        return store.one(
                "SELECT number, version, what, text, author, at, mover, floor FROM step WHERE file=? AND number=?",
                Kept::step,
                file,
                number);
    }

    /** Keeps a revision of a version; empty where another version is kept by now. */
    Optional<Revision> accept(long on, String at, String author, String note, String text) {
        return store.together(all -> {
            if (all.change("UPDATE plant SET version=version WHERE file=? AND version=?", file, on) == 0) {
                return Optional.empty();
            }
            int number = all.one(
                            "SELECT COALESCE(MAX(number),0)+1 FROM revision WHERE file=?", row -> row.getInt(1), file)
                    .orElse(1);
            all.change(
                    "INSERT INTO revision(file, number, at, author, note, text) VALUES(?,?,?,?,?,?)",
                    file,
                    number,
                    at,
                    author,
                    note,
                    text);
            return Optional.of(new Revision(number, at, author, note, text, List.of()));
        });
    }

    /** Signs a revision off, or refuses it; false where there is none of that number, or this person did either before, however written. */
    boolean sign(int revision, Signed signed) {
        return store.together(all -> {
            // Whoever signs at the same moment waits here.
            all.change("UPDATE plant SET version=version WHERE file=?", file);
            boolean before = all
                    .all("SELECT person FROM signed WHERE file=? AND number=?", row -> row.getString(1), file, revision)
                    .stream()
                    .anyMatch(by -> People.same(by, signed.by()));
            return !before && signed(all, revision, signed);
        });
    }

    private boolean signed(Store.Together all, int revision, Signed signed) throws SQLException {
        return all.change(
                        "INSERT INTO signed(file, number, person, at, note, refused) SELECT file, number, ?, ?, ?, ? FROM revision"
                                + " WHERE file=? AND number=? ON CONFLICT DO NOTHING",
                        signed.by(),
                        signed.at(),
                        signed.note(),
                        signed.refused() ? 1 : 0,
                        file,
                        revision)
                == 1;
    }

    /** Accepted revisions, newest first. */
    List<Revision> revisions() {
        Map<Integer, List<Signed>> signed = new TreeMap<>();
        store.all(
                "SELECT number, person, at, note, refused FROM signed WHERE file=? ORDER BY number, at",
                row -> signed.computeIfAbsent(row.getInt(1), n -> new ArrayList<>())
                        .add(new Signed(row.getString(2), row.getString(3), row.getString(4), row.getInt(5) != 0)),
                file);
        return store.all(
                "SELECT number, at, author, note, text FROM revision WHERE file=? ORDER BY number DESC",
                row -> new Revision(
                        row.getInt(1),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        signed.getOrDefault(row.getInt(1), List.of())),
                file);
    }

    /** Keeps a design by a name; false where the name is taken. */
    boolean keep(Alternative alternative) {
        return store.change(
                        "INSERT INTO alternative(file, name, at, text) VALUES(?,?,?,?) ON CONFLICT DO NOTHING",
                        file,
                        alternative.name(),
                        alternative.at(),
                        alternative.text())
                == 1;
    }

    void letGo(String alternative) {
        store.change("DELETE FROM alternative WHERE file=? AND name=?", file, alternative);
    }

    /** Designs kept by a name, in the order of their names. */
    List<Alternative> alternatives() {
        return store
                .all(
                        "SELECT name, at, text FROM alternative WHERE file=?",
                        row -> new Alternative(row.getString(1), row.getString(2), row.getString(3)),
                        file)
                .stream()
                .sorted(Comparator.comparing(Alternative::name))
                .toList();
    }

    /** A floor plan that some step has. */
    Optional<FloorPlan> floorPlan(long number) {
        return store.one(
                "SELECT number, type, width, height, x, y, scale, turned FROM floor WHERE file=? AND number=?",
                row -> new FloorPlan(
                        row.getLong(1),
                        row.getString(2),
                        row.getInt(3),
                        row.getInt(4),
                        row.getDouble(5),
                        row.getDouble(6),
                        row.getDouble(7),
                        row.getDouble(8)),
                file,
                number);
    }

    /** Its picture; empty bytes where there is none. */
    byte[] floorPicture(long number) {
        return Base64.getDecoder()
                .decode(store.one(
                                "SELECT p.bytes FROM floorpicture p JOIN floor f ON f.file=p.file AND f.picture=p.number"
                                        + " WHERE f.file=? AND f.number=?",
                                row -> row.getString(1),
                                file,
                                number)
                        .orElse(""));
    }

    /** A number no floor plan of this plant had yet. */
    long nextFloor() {
        return store.one("SELECT COALESCE(MAX(number),0)+1 FROM floor WHERE file=?", row -> row.getLong(1), file)
                .orElse(1L);
    }

    /**
     * A floor plan for a step to have; none that was kept before changes.
     *
     * @param like number of the one whose picture it has, where it brings none of its own
     */
    record Laid(FloorPlan plan, Optional<byte[]> picture, long like) {}

    private void lay(Store.Together all, Laid laid) throws SQLException {
        FloorPlan p = laid.plan();
        if (laid.picture().isPresent()) {
            all.change(
                    "INSERT INTO floorpicture(file, number, bytes) VALUES(?,?,?)",
                    file,
                    p.number(),
                    Base64.getEncoder().encodeToString(laid.picture().get()));
        }
        long own = laid.picture().isPresent()
                ? p.number()
                : all.one(
                                "SELECT picture FROM floor WHERE file=? AND number=?",
                                row -> row.getLong(1),
                                file,
                                laid.like())
                        .orElse(0L);
        all.change(
                "INSERT INTO floor(file, number, type, width, height, x, y, scale, turned, picture)"
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
                own);
    }

    /**
     * A control sequence as somebody edited it.
     *
     * @param number counts the edits of a station's sequence; 0 where nobody edited it
     * @param text empty where the plant's own is meant
     */
    record Edited(int number, String at, String author, String text) {
        static final Edited NEVER = new Edited(0, "", "", "");
    }

    /** Edits of a station's sequence, newest first. */
    List<Edited> edited(String station) {
        return edited(station, "");
    }

    /** The newest of them. */
    Edited lastEdited(String station) {
        return edited(station, " LIMIT 1").stream().findFirst().orElse(Edited.NEVER);
    }

    private List<Edited> edited(String station, String limit) {
        return store.all(
                "SELECT number, at, author, text FROM control WHERE file=? AND station=? ORDER BY number DESC" + limit,
                row -> new Edited(row.getInt(1), row.getString(2), row.getString(3), row.getString(4)),
                file,
                station);
    }

    /** Edits of all sequences of this plant. */
    int edits() {
        return store.one("SELECT COUNT(*) FROM control WHERE file=?", row -> row.getInt(1), file)
                .orElse(0);
    }

    /** Keeps the next edit of a station's sequence; false where that number is taken, so that nobody overwrites another. */
    boolean edit(String station, Edited next) {
        return store.change(
                        "INSERT INTO control(file, station, number, at, author, text) VALUES(?,?,?,?,?,?) ON CONFLICT DO NOTHING",
                        file,
                        station,
                        next.number(),
                        next.at(),
                        next.author(),
                        next.text())
                == 1;
    }

    @Override
    public void close() {
        store.close();
    }

    private static Step step(ResultSet row) throws SQLException {
        return new Step(
                row.getInt(1),
                row.getLong(2),
                row.getString(3),
                row.getString(4),
                row.getString(5),
                row.getString(6),
                row.getString(7),
                row.getLong(8));
    }
}
