package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.studio.People.Role;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A team's database: several studios on one plant, and all of it carried from one kind of database to the other. */
class PostgresTest {
    private static @Nullable Postgres server;

    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private String database;

    @SuppressWarnings("NullAway.Init")
    private Path file;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        server = Postgres.start();
    }

    @AfterAll
    static void stop() throws IOException {
        if (server != null) {
            server.close();
        }
    }

    @BeforeEach
    void database() throws IOException, InterruptedException {
        database = fresh();
        file = Plants.copy("bakery-one-main", folder);
    }

    private static String fresh() throws IOException, InterruptedException {
        if (server == null) {
            throw new IllegalStateException("no server");
        }
        return server.database();
    }

    private Studio studio(String where) throws IOException {
        return Studio.open(
                Store.open(where), new Studio.Opening(file, "bakery", "127.0.0.1", 0, "dustwright test", false));
    }

    @Test
    void two_studios_on_one_plant_refuse_what_was_thought_out_on_an_older_version() throws Exception {
        try (Studio one = studio(database);
                Studio other = studio(database)) {
            Team here = new Team(one.address());
            Team there = new Team(other.address());
            assertThat(here.tube("HP1", "T2").statusCode()).isEqualTo(200);
            assertThat(there.json("api/text").path("text").asText()).contains("tube: T2");
            HttpResponse<String> stale = there.post(
                    "api/value", "{\"version\":1,\"path\":\"plant.name\",\"value\":\"older\",\"plain\":true}");
            assertThat(stale.statusCode()).isEqualTo(409);
            assertThat(there.post("api/accept", "{\"version\":1,\"author\":\"A. Engineer\"}")
                            .statusCode())
                    .isEqualTo(409);
            assertThat(there.post("api/walk", "{\"version\":2,\"steps\":-1}").statusCode())
                    .isEqualTo(200);
            assertThat(here.post("api/walk", "{\"version\":2,\"steps\":-1}").statusCode())
                    .isEqualTo(409);
            assertThat(here.json("api/text")).isEqualTo(there.json("api/text"));
        }
    }

    /** Each of two servers gets changes on the same versions at the same moment: of each pair at most one is taken, and none that was taken is lost. */
    @Test
    void of_two_changes_at_once_on_one_version_one_is_taken_and_the_other_told_so() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try (Studio one = studio(database);
                Studio other = studio(database)) {
            List<Team> teams = List.of(new Team(one.address()), new Team(other.address()));
            for (int round = 0; round < 15; round++) {
                long version = teams.get(0).json("api/plant").path("version").asLong();
                List<Callable<Integer>> changes = new ArrayList<>();
                for (int n = 0; n < 4; n++) {
                    String body = Team.JSON
                            .createObjectNode()
                            .put("version", version)
                            .put("path", "plant.name")
                            .put("value", "round " + round + " hand " + n)
                            .put("plain", true)
                            .toString();
                    Team team = teams.get(n % 2);
                    changes.add(() -> team.post("api/value", body).statusCode());
                }
                int taken = -1;
                List<Future<Integer>> answers = hands.invokeAll(changes);
                for (int n = 0; n < 4; n++) {
                    if (answers.get(n).get() == 200) {
                        assertThat(taken)
                                .as("a second one taken in round " + round)
                                .isEqualTo(-1);
                        taken = n;
                    } else {
                        assertThat(answers.get(n).get()).isEqualTo(409);
                    }
                }
                assertThat(taken).isNotEqualTo(-1);
                for (Team team : teams) {
                    assertThat(team.json("api/plant").path("name").asText())
                            .isEqualTo("round " + round + " hand " + taken);
                    assertThat(team.json("api/plant").path("version").asLong()).isEqualTo(version + 1);
                }
            }
        } finally {
            hands.shutdownNow();
        }
    }

    @Test
    void who_signed_in_at_one_studio_is_signed_in_at_the_other_and_signs_off_there() throws Exception {
        try (Studio one = studio(database);
                Studio other = studio(database);
                Store store = Store.open(database)) {
            Team.setUp(store);
            Team designer = Team.signedIn(one, "Dora");
            assertThat(designer.post("api/accept", "{\"version\":1}").statusCode())
                    .isEqualTo(200);
            Team checker = Team.signedIn(one, "Carl");
            Team elsewhere = new Team(other.address());
            elsewhere.cookie(checker.cookie());
            assertThat(elsewhere.post("api/sign", "{\"revision\":1}").statusCode())
                    .isEqualTo(200);
            assertThat(designer.json("api/revisions").get(0).path("signed")).hasSize(1);
        }
    }

    @Test
    void all_goes_from_a_file_to_postgresql_and_back_and_nothing_is_overwritten() throws Exception {
        String kept = folder.resolve("kept.db").toString();
        try (Studio studio = studio(kept);
                Store store = Store.open(kept)) {
            Team alone = new Team(studio.address());
            alone.tube("HP1", "T2");
            alone.post("api/accept", "{\"version\":2,\"author\":\"A. Engineer\",\"note\":\"é Δ 漢 🙂\"}");
            alone.post("api/alternative", "{\"version\":2,\"name\":\"as it was\"}");
            alone.post("api/walk", "{\"version\":2,\"steps\":-1}");
            alone.tube("HP1", "T2");
            new People(store).put("Dora", Role.DESIGNER, Team.PASSWORD.toCharArray());
        }
        Path backup = folder.resolve("backup.db");
        Backup.write(kept, backup);
        Backup.restore(backup, database);
        assertThatThrownBy(() -> Backup.restore(backup, database))
                .isInstanceOf(Backup.Refused.class)
                .hasMessageContaining("nothing is overwritten");
        Path back = folder.resolve("back.db");
        Backup.write(database, back);
        String again = fresh();
        Backup.restore(back, again);
        try (Studio studio = studio(again)) {
            Team designer = Team.signedIn(studio, "Dora");
            assertThat(designer.json("api/plant").path("version").asLong()).isEqualTo(4);
            assertThat(designer.json("api/left")).hasSize(1);
            assertThat(designer.json("api/text").path("text").asText()).contains("tube: T2");
            assertThat(designer.json("api/revisions").get(0).path("note").asText())
                    .isEqualTo("é Δ 漢 🙂");
            assertThat(designer.json("api/alternatives")).hasSize(1);
            assertThat(designer.post("api/walk", "{\"version\":4,\"steps\":-1}").statusCode())
                    .isEqualTo(200);
        }
    }

    @Test
    void text_that_no_database_keeps_is_refused_in_words_on_both() throws Exception {
        for (String where : List.of(database, folder.resolve("kept.db").toString())) {
            try (Studio studio = studio(where)) {
                for (String odd : List.of("\\u0000", "\\ud800")) {
                    HttpResponse<String> answer = new Team(studio.address())
                            .post("api/text", "{\"version\":1,\"text\":\"dustwright: 1" + odd + "\"}");
                    assertThat(answer.statusCode()).isEqualTo(422);
                    assertThat(answer.body()).contains("character");
                }
            }
        }
    }

    @Test
    void a_server_that_does_not_answer_is_told_in_words_without_its_password() {
        assertThatThrownBy(() -> Store.open("jdbc:postgresql://127.0.0.1:1/none?user=x&password=secret"))
                .isInstanceOf(Store.KeepingFault.class)
                .hasMessageContaining("127.0.0.1:1")
                .hasMessageEndingWith(": no database server answers there")
                .hasMessageNotContaining("secret");
    }
}
