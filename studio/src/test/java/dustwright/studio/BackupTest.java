package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept goes to a file and comes back; databases of other times. */
class BackupTest {
    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Path file;

    @SuppressWarnings("NullAway.Init")
    private Path database;

    @BeforeEach
    void plant() throws IOException {
        file = Plants.copy("bakery", folder);
        database = folder.resolve("kept.db");
    }

    private Desk open() throws IOException {
        return Desk.open(file, Kept.open(database, file), Clock.systemUTC());
    }

    private static void tube(Desk desk, String tube) {
        assertThat(desk.set(new Desk.On(desk.copy().version(), "Zoe"), "runs.DA1.tube", Optional.empty(), tube, true)
                        .why())
                .isEmpty();
    }

    private String tube() throws IOException {
        try (Desk desk = open()) {
            return desk.copy().plant().orElseThrow().run("DA1").tube();
        }
    }

    @Test
    void a_backup_of_an_open_studio_comes_back_whole_and_what_came_after_lies_beside() throws Exception {
        Path backup = folder.resolve("backup.db");
        try (Desk desk = open()) {
            tube(desk, "T3");
            desk.walk(new Desk.On(desk.copy().version(), "Zoe"), -1, "");
            tube(desk, "T25");
            assertThat(desk.accept(desk.copy().version(), "A. Engineer", "").revision())
                    .isPresent();
            Backup.write(database, backup);
            tube(desk, "T3");
            assertThatThrownBy(() -> Backup.restore(backup, database))
                    .isInstanceOf(Backup.Refused.class)
                    .hasMessageContaining("open");
        }
        Optional<Path> aside = Backup.restore(backup, database);
        assertThat(aside).hasValueSatisfying(p -> assertThat(p).exists());
        assertThat(tube()).isEqualTo("T25");
        try (Desk desk = open()) {
            assertThat(desk.revisions()).hasSize(1);
            assertThat(desk.copy().at().author()).isEqualTo("Zoe");
            assertThat(desk.left()).hasSize(1);
        }
    }

    @Test
    void what_is_no_backup_or_would_overwrite_is_refused_and_nothing_changes() throws Exception {
        try (Desk desk = open()) {
            tube(desk, "T25");
        }
        Path other = Files.writeString(folder.resolve("other.db"), "no database");
        assertThatThrownBy(() -> Backup.restore(other, database))
                .isInstanceOf(Backup.Refused.class)
                .hasMessage(other + " is no backup of a studio: the file is no database");
        assertThatThrownBy(() -> Store.open(other))
                .isInstanceOf(Store.KeepingFault.class)
                .hasMessage("what is typed cannot be kept in " + other + ": the file is no database");
        assertThatThrownBy(() -> Backup.restore(folder.resolve("none.db"), database))
                .isInstanceOf(Backup.Refused.class);
        assertThatThrownBy(() -> Backup.write(database, other)).isInstanceOf(Backup.Refused.class);
        assertThatThrownBy(() -> Backup.write(folder.resolve("none.db"), folder.resolve("b.db")))
                .isInstanceOf(Backup.Refused.class);
        assertThat(Files.readString(other)).isEqualTo("no database");
        assertThat(tube()).isEqualTo("T25");
    }

    @Test
    void a_database_without_a_schema_number_gets_what_is_new_and_a_newer_one_is_left_alone() throws Exception {
        try (Desk desk = open()) {
            tube(desk, "T25");
        }
        run(
                "DROP TABLE alternative",
                "DROP TABLE floor",
                "DROP TABLE floorpicture",
                "ALTER TABLE step DROP COLUMN floor",
                "DROP TABLE signed",
                "DROP TABLE person",
                "DROP TABLE session",
                "DROP TABLE attempt",
                "DROP TABLE control",
                "DROP TABLE leftstep",
                "ALTER TABLE step DROP COLUMN author",
                "ALTER TABLE step DROP COLUMN at",
                "ALTER TABLE step DROP COLUMN mover",
                "ALTER TABLE plant DROP COLUMN version",
                "PRAGMA user_version=0");
        try (Desk desk = open()) {
            assertThat(desk.keepAs(desk.copy().version(), "as it was")).isEmpty();
        }
        assertThat(tube()).isEqualTo("T25");
        run("PRAGMA user_version=99");
        assertThatThrownBy(this::open).isInstanceOf(Store.KeepingFault.class).hasMessageContaining("newer Dustwright");
    }

    /** As a database of schema 6 has it: one floor plan for the plant, beside its steps. */
    @Test
    void a_floor_plan_of_before_lies_under_every_step_of_before() throws Exception {
        try (Desk desk = open()) {
            tube(desk, "T25");
        }
        run(
                "DROP TABLE floor",
                "DROP TABLE floorpicture",
                "ALTER TABLE step DROP COLUMN floor",
                "ALTER TABLE leftstep DROP COLUMN floor",
                "ALTER TABLE signed DROP COLUMN refused",
                String.join(";", Kept.SCHEMAS.get(2)),
                "INSERT INTO floorplan SELECT file, 77, 'image/png', 40, 30, 1.5, 2.5, 0.1, 0, 'AQID' FROM plant",
                "PRAGMA user_version=6");
        try (Desk desk = open()) {
            assertThat(desk.floorPlan()).hasValue(new FloorPlan(77, "image/png", 40, 30, 1.5, 2.5, 0.1, 0));
            assertThat(desk.floorPicture()).containsExactly(1, 2, 3);
            desk.walk(new Desk.On(desk.copy().version(), "Zoe"), -1, "");
            assertThat(desk.floorPlan())
                    .hasValueSatisfying(plan -> assertThat(plan.number()).isEqualTo(77));
        }
    }

    private void run(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }
}
