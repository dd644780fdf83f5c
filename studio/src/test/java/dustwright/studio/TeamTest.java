package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.studio.People.Role;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** A studio with people: who gets in, what each may do, and what somebody else's page or patience comes to. */
class TeamTest {
    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Store store;

    @SuppressWarnings("NullAway.Init")
    private Studio studio;

    @BeforeEach
    void open() throws IOException {
        store = Store.open(folder.resolve("kept.db"));
        Team.setUp(store);
        studio = Studio.open(
                store,
                new Studio.Opening(
                        Plants.copy("bakery-one-main", folder), "bakery", "127.0.0.1", 0, "dustwright test", false));
    }

    @AfterEach
    void close() {
        studio.close();
    }

    private static Map<String, String> writes() throws IOException {
        Map<String, String> roles = new LinkedHashMap<>();
        try (InputStream in = Studio.class.getResourceAsStream("openapi.yaml")) {
            JsonNode paths = Team.JSON
                    .valueToTree(new Yaml(new SafeConstructor(new LoaderOptions())).load(in))
                    .path("paths");
            paths.properties()
                    .forEach(path -> path.getValue().properties().forEach(method -> {
                        if (!method.getKey().equals("get")) {
                            roles.put(
                                    path.getKey(),
                                    method.getValue().path("x-role").asText("none"));
                        }
                    }));
        }
        return roles;
    }

    @Test
    void other_machines_get_no_answer_before_somebody_is_set_up() throws Exception {
        try (Store empty = Store.open(folder.resolve("empty.db"))) {
            assertThatThrownBy(() -> Studio.open(
                            empty,
                            new Studio.Opening(folder.resolve("plant.yaml"), "", "0.0.0.0", 0, "dustwright", false)))
                    .isInstanceOf(Studio.Uninvited.class);
        }
    }

    @Test
    void nobody_sees_anything_of_a_plant_before_signing_in() throws Exception {
        Team stranger = new Team(studio.address());
        assertThat(stranger.get("").statusCode()).isEqualTo(302);
        assertThat(stranger.get("sign-in").body()).contains("Sign in").doesNotContain("bakery");
        for (String path : List.of(
                "plant", "text", "revisions", "set?open=A1", "report.html", "events", "session", "openapi.yaml")) {
            assertThat(stranger.get("api/" + path).statusCode()).as(path).isEqualTo(401);
        }
        for (String path : writes().keySet()) {
            if (!path.equals(Guard.SIGN_IN)) {
                assertThat(stranger.post(path.substring(1), "{}").statusCode())
                        .as(path)
                        .isEqualTo(401);
            }
        }
        assertThat(stranger.get("assets/..%2f..%2fplant.yaml").body()).doesNotContain("dustwright:");
    }

    /** Each call of the description that is not reading; one that is added later cannot be left out here. */
    @Test
    void a_viewer_is_refused_each_call_that_writes() throws Exception {
        Map<String, String> roles = writes();
        assertThat(new TreeSet<>(roles.values())).containsExactly("anyone", "checker", "designer");
        assertThat(roles.entrySet().stream()
                        .filter(call -> call.getValue().equals("anyone"))
                        .map(Map.Entry::getKey))
                .containsExactlyInAnyOrder(
                        "/api/session",
                        "/api/session/end",
                        "/api/session/password",
                        "/api/panel/begin",
                        "/api/papers/make",
                        "/api/papers/stop",
                        "/api/coverage/stop",
                        "/api/sequence/prove",
                        "/api/panel/go",
                        "/api/alternative/text");
        Team viewer = Team.signedIn(studio, "Vera");
        Team checker = Team.signedIn(studio, "Carl");
        Team designer = Team.signedIn(studio, "Dora");
        JsonNode before = viewer.json("api/text");
        for (Map.Entry<String, String> call : roles.entrySet()) {
            if (call.getValue().equals("anyone")) {
                continue;
            }
            String path = call.getKey().substring(1);
            String body =
                    "{\"version\":1,\"text\":\"x\",\"path\":\"plant.name\",\"value\":\"x\",\"what\":\"split\",\"run\":\"HP1\",\"steps\":-1,\"name\":\"x\",\"author\":\"x\",\"revision\":1}";
            assertThat(viewer.post(path, body).statusCode()).as(path).isEqualTo(403);
            assertThat(viewer.post(path + "/", body).statusCode())
                    .as(path + "/")
                    .isIn(403, 404);
            boolean checks = call.getValue().equals("checker");
            assertThat((checks ? designer : checker).post(path, body).statusCode())
                    .as(path)
                    .isEqualTo(403);
            if (checks) {
                assertThat(designer.post(path, body).body()).contains("you are set up as a designer");
            }
        }
        assertThat(viewer.json("api/text")).isEqualTo(before);
        assertThat(viewer.json("api/revisions")).isEmpty();
        assertThat(viewer.json("api/alternatives")).isEmpty();
    }

    @Test
    void a_revision_carries_who_is_signed_in_and_who_signed_it_off_for_good() throws Exception {
        Team designer = Team.signedIn(studio, "Dora");
        assertThat(designer.tube("HP1", "T2").statusCode()).isEqualTo(200);
        long version = designer.json("api/plant").path("version").asLong();
        JsonNode revision = Team.JSON.readTree(
                designer.post("api/accept", "{\"version\":" + version + ",\"author\":\"Somebody Else\"}")
                        .body());
        assertThat(revision.path("author").asText()).isEqualTo("Dora");
        Team checker = Team.signedIn(studio, "carl");
        assertThat(checker.post("api/sign", "{\"revision\":7}").statusCode()).isEqualTo(422);
        assertThat(checker.post("api/sign", "{\"revision\":1,\"note\":\"as discussed\"}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(checker.post("api/sign", "{\"revision\":1,\"note\":\"on second thoughts\"}")
                        .statusCode())
                .isEqualTo(422);
        JsonNode signed = checker.json("api/revisions").get(0).path("signed");
        assertThat(signed).hasSize(1);
        assertThat(signed.get(0).path("by").asText()).isEqualTo("Carl");
        assertThat(signed.get(0).path("note").asText()).isEqualTo("as discussed");
        assertThat(signed.get(0).path("at").asText()).matches("20\\d\\d-.*Z");
    }

    @Test
    void nobody_signs_off_what_the_same_person_accepted_however_the_name_is_written() throws Exception {
        Team designer = Team.signedIn(studio, "Dora");
        assertThat(designer.post("api/accept", "{\"version\":1}").statusCode()).isEqualTo(200);
        for (String written : List.of("Dora", "dORA", "Ｄｏｒａ")) {
            new People(store).put(written, Role.CHECKER, Team.PASSWORD.toCharArray());
            Team now = Team.signedIn(studio, written);
            HttpResponse<String> refused = now.post("api/sign", "{\"revision\":1}");
            assertThat(refused.statusCode()).as(written).isEqualTo(422);
            assertThat(refused.body()).contains("somebody else");
            new People(store).remove(written);
        }
        assertThat(designer.get("api/plant").statusCode()).isEqualTo(401);
    }

    @Test
    void back_over_the_step_of_somebody_else_names_who_and_what_and_waits_to_be_told() throws Exception {
        new People(store).put("Zoe", Role.DESIGNER, Team.PASSWORD.toCharArray());
        assertThat(Team.signedIn(studio, "Zoe").tube("HP1", "T2").statusCode()).isEqualTo(200);
        Team dora = Team.signedIn(studio, "Dora");
        HttpResponse<String> asked = dora.post("api/walk", "{\"version\":2,\"steps\":-1}");
        assertThat(asked.statusCode()).isEqualTo(422);
        JsonNode why = Team.JSON.readTree(asked.body());
        assertThat(why.path("whose").asText()).isEqualTo("Zoe");
        assertThat(why.path("why").asText()).contains("made by Zoe").contains("runs.HP1.tube: T2");
        JsonNode back = Team.JSON.readTree(dora.post("api/walk", "{\"version\":2,\"steps\":-1,\"over\":\"Zoe\"}")
                .body());
        assertThat(back.path("step").asInt()).isEqualTo(1);
        assertThat(back.path("mover").asText()).isEqualTo("Dora");
        assertThat(Team.JSON
                        .readTree(dora.tube("HP11", "T2").body())
                        .path("left")
                        .asInt())
                .isEqualTo(1);
        JsonNode left = dora.json("api/left").get(0);
        assertThat(left.path("author").asText()).isEqualTo("Zoe");
        assertThat(left.path("leaver").asText()).isEqualTo("Dora");
    }

    @Test
    void one_person_signs_a_revision_off_once_however_the_name_is_written() throws Exception {
        assertThat(Team.signedIn(studio, "Dora")
                        .post("api/accept", "{\"version\":1}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(Team.signedIn(studio, "Carl")
                        .post("api/sign", "{\"revision\":1}")
                        .statusCode())
                .isEqualTo(200);
        new People(store).put(" cARL", Role.CHECKER, Team.PASSWORD.toCharArray());
        Team again = Team.signedIn(studio, "Carl");
        assertThat(again.post("api/sign", "{\"revision\":1}").statusCode()).isEqualTo(422);
        assertThat(again.json("api/revisions").get(0).path("signed")).hasSize(1);
    }

    @Test
    void a_revision_can_be_refused_with_a_reason_that_is_kept_and_stands() throws Exception {
        Team designer = Team.signedIn(studio, "Dora");
        assertThat(designer.post("api/accept", "{\"version\":1}").statusCode()).isEqualTo(200);
        Team checker = Team.signedIn(studio, "Carl");
        HttpResponse<String> without = checker.post("api/sign", "{\"revision\":1,\"refused\":true,\"note\":\" \"}");
        assertThat(without.statusCode()).isEqualTo(422);
        assertThat(without.body()).contains("reason");
        assertThat(checker.post("api/sign", "{\"revision\":1,\"refused\":true,\"note\":\"no relief valve\"}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(checker.post("api/sign", "{\"revision\":1}").statusCode()).isEqualTo(422);
        JsonNode signed = designer.json("api/revisions").get(0).path("signed").get(0);
        assertThat(signed.path("refused").asBoolean()).isTrue();
        assertThat(signed.path("note").asText()).isEqualTo("no relief valve");
        assertThat(designer.json("api/papers").path("standing").asText()).endsWith("accepted by Dora, refused by Carl");
    }

    @Test
    void a_revision_that_is_no_longer_the_working_copy_is_covered_for_whoever_checks_it() throws Exception {
        Team designer = Team.signedIn(studio, "Dora");
        assertThat(designer.post("api/accept", "{\"version\":1}").statusCode()).isEqualTo(200);
        assertThat(designer.tube("HP1", "T2").statusCode()).isEqualTo(200);
        Team checker = Team.signedIn(studio, "Carl");
        assertThat(verdictOfFirst(checker)).isNotEmpty();
        assertThat(checker.get("api/revision/coverage?revision=9").statusCode()).isEqualTo(404);
    }

    /** Of the coverage of revision 1, once it is done. */
    private static String verdictOfFirst(Team checker) throws Exception {
        JsonNode told = checker.json("api/revision/coverage?revision=1");
        for (int n = 0; n < 400 && !told.path("done").asBoolean(); n++) {
            Thread.sleep(200);
            told = checker.json("api/revision/coverage?revision=1");
        }
        return told.path("verdict").asText();
    }

    @Test
    void nobody_stops_the_coverage_that_a_checker_waits_for() throws Exception {
        Team designer = Team.signedIn(studio, "Dora");
        assertThat(designer.post("api/accept", "{\"version\":1}").statusCode()).isEqualTo(200);
        Team checker = Team.signedIn(studio, "Carl");
        checker.json("api/revision/coverage?revision=1");
        assertThat(designer.post("api/coverage/stop", "{\"version\":1}").statusCode())
                .isEqualTo(200);
        assertThat(verdictOfFirst(checker)).isNotEmpty().doesNotContain("stopped");
    }

    @Test
    void a_step_taken_back_is_the_one_that_was_named_and_none_that_came_meanwhile() throws Exception {
        new People(store).put("Zoe", Role.DESIGNER, Team.PASSWORD.toCharArray());
        Team dora = Team.signedIn(studio, "Dora");
        Team zoe = Team.signedIn(studio, "Zoe");
        assertThat(zoe.tube("HP1", "T2").statusCode()).isEqualTo(200);
        HttpResponse<String> asked = dora.post("api/walk", "{\"version\":2,\"steps\":-1}");
        assertThat(Team.JSON.readTree(asked.body()).path("whose").asText()).isEqualTo("Zoe");
        assertThat(zoe.post("api/value", "{\"version\":2,\"path\":\"plant.name\",\"value\":\"new\",\"plain\":true}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(dora.post("api/walk", "{\"version\":2,\"steps\":-1,\"over\":\"Zoe\"}")
                        .statusCode())
                .isEqualTo(409);
    }

    @Test
    void a_page_of_somebody_else_changes_nothing_though_the_browser_is_signed_in() throws Exception {
        Team designer = Team.signedIn(studio, "Dora");
        String body = "{\"version\":1,\"path\":\"plant.name\",\"value\":\"taken over\",\"plain\":true}";
        assertThat(designer.post("api/value", body, "Origin", "http://elsewhere.example")
                        .statusCode())
                .isEqualTo(403);
        assertThat(designer.post("api/value", body, "Origin", "null").statusCode())
                .isEqualTo(403);
        assertThat(designer.post("api/value", body, "Sec-Fetch-Site", "cross-site")
                        .statusCode())
                .isEqualTo(403);
        assertThat(designer.post("api/value", body, "Sec-Fetch-Site", "same-site")
                        .statusCode())
                .isEqualTo(403);
        HttpRequest.Builder form = HttpRequest.newBuilder(URI.create(studio.address() + "api/value"))
                .POST(HttpRequest.BodyPublishers.ofString(body));
        assertThat(designer.send(form, "Content-Type", "text/plain").statusCode())
                .isEqualTo(403);
        assertThat(designer.get("api/text", "Sec-Fetch-Site", "cross-site").statusCode())
                .isEqualTo(403);
        assertThat(new Team(studio.address())
                        .post(
                                "api/session",
                                "{\"name\":\"Dora\",\"password\":\"" + Team.PASSWORD + "\"}",
                                "Origin",
                                "http://elsewhere.example")
                        .statusCode())
                .isEqualTo(403);
        assertThat(designer.json("api/plant").path("version").asLong()).isEqualTo(1);
    }

    @Test
    void a_token_brought_along_is_worth_nothing_before_or_after_signing_in() throws Exception {
        String name = Team.signedIn(studio, "Dora").cookie().replaceFirst("=.*", "");
        Team victim = new Team(studio.address());
        victim.cookie(name + "=planted");
        String given = Team.given(victim.signIn("Dora", Team.PASSWORD)).orElseThrow();
        assertThat(given)
                .contains("HttpOnly")
                .contains("SameSite=Strict")
                .contains("Path=/")
                .doesNotContain("planted");
        String first = victim.cookie();
        Team attacker = new Team(studio.address());
        attacker.cookie(name + "=planted");
        assertThat(attacker.get("api/plant").statusCode()).isEqualTo(401);
        victim.signIn("Dora", Team.PASSWORD);
        assertThat(victim.cookie()).isNotEqualTo(first);
        attacker.cookie(first);
        assertThat(attacker.get("api/plant").statusCode())
                .as("the token before")
                .isEqualTo(401);
    }

    @Test
    void signing_out_or_being_taken_out_ends_what_the_token_was_worth() throws Exception {
        Team designer = Team.signedIn(studio, "Dora");
        String token = designer.cookie();
        assertThat(designer.post("api/session/end", "{}").statusCode()).isEqualTo(200);
        designer.cookie(token);
        assertThat(designer.get("api/plant").statusCode()).isEqualTo(401);
        Team viewer = Team.signedIn(studio, "Vera");
        assertThat(new People(store).remove("vera")).isTrue();
        assertThat(viewer.get("api/plant").statusCode()).isEqualTo(401);
        assertThat(viewer.signIn("Vera", Team.PASSWORD).statusCode()).isEqualTo(401);
    }

    @Test
    void one_changes_ones_own_password_by_the_old_one_and_is_signed_out_everywhere_else() throws Exception {
        Team here = Team.signedIn(studio, "Vera");
        Team elsewhere = Team.signedIn(studio, "Vera");
        String next = "\"new\":\"other dull words\"}";
        HttpResponse<String> wrong = here.post("api/session/password", "{\"old\":\"not it at all\"," + next);
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("old password is not right");
        assertThat(here.post("api/session/password", "{\"old\":\"" + Team.PASSWORD + "\",\"new\":\"short\"}")
                        .statusCode())
                .isEqualTo(422);
        assertThat(elsewhere.get("api/plant").statusCode()).isEqualTo(200);
        assertThat(here.post("api/session/password", "{\"old\":\"" + Team.PASSWORD + "\"," + next)
                        .statusCode())
                .isEqualTo(200);
        assertThat(here.get("api/plant").statusCode()).isEqualTo(200);
        assertThat(elsewhere.get("api/plant").statusCode()).isEqualTo(401);
        assertThat(elsewhere.signIn("Vera", Team.PASSWORD).statusCode()).isEqualTo(401);
        assertThat(elsewhere.signIn("Vera", "other dull words").statusCode()).isEqualTo(200);
        assertThat(new Team(studio.address()).post("api/session/password", "{}").statusCode())
                .isEqualTo(401);
    }

    @Test
    void an_old_password_is_guessed_at_as_slowly_as_one_to_sign_in_with() throws Exception {
        Team stolen = Team.signedIn(studio, "Dora");
        int last = 0;
        for (int n = 0; n < 8; n++) {
            last = stolen.post("api/session/password", "{\"old\":\"guess " + n + "\",\"new\":\"other dull words\"}")
                    .statusCode();
        }
        assertThat(last).isEqualTo(429);
        assertThat(new Team(studio.address()).signIn("Dora", Team.PASSWORD).statusCode())
                .isEqualTo(429);
    }

    @Test
    void passwords_are_guessed_at_ever_more_slowly_also_all_at_once() throws Exception {
        List<Integer> answers = new ArrayList<>();
        ExecutorService many = Executors.newFixedThreadPool(10);
        try {
            List<Future<Integer>> tries = new ArrayList<>();
            for (int n = 0; n < 40; n++) {
                String guess = "a guess, number " + n;
                tries.add(many.submit(
                        () -> new Team(studio.address()).signIn("Dora", guess).statusCode()));
            }
            for (Future<Integer> each : tries) {
                answers.add(each.get());
            }
        } finally {
            many.shutdownNow();
        }
        assertThat(answers).containsOnly(401, 429);
        assertThat(answers.stream().filter(a -> a == 401).count()).isBetween(5L, 10L);
    }

    @Test
    void waits_double_per_person_and_per_address_and_end_at_five_minutes() {
        Later clock = new Later();
        People people = new People(store, clock);
        List<Long> waits = new ArrayList<>();
        for (int n = 0; n < 32; n++) {
            long wait = people.signIn("Dora", "wrong".toCharArray(), "a" + n, Optional.empty())
                    .wait_s();
            if (wait > 0) {
                waits.add(wait);
                clock.now = clock.now.plusSeconds(n < 31 ? wait : 0);
            }
        }
        assertThat(waits.subList(0, 5)).isEqualTo(List.of(1L, 2L, 4L, 8L, 16L));
        assertThat(waits.get(waits.size() - 1)).isEqualTo(300);
        assertThat(people.signIn("Dora", Team.PASSWORD.toCharArray(), "d", Optional.empty())
                        .wait_s())
                .as("the right password waits too")
                .isPositive();
        for (int n = 0; n < 20; n++) {
            assertThat(people.signIn("no one " + n, "wrong".toCharArray(), "c", Optional.empty())
                            .wait_s())
                    .isZero();
        }
        assertThat(people.signIn("Vera", Team.PASSWORD.toCharArray(), "c", Optional.empty())
                        .wait_s())
                .isPositive();
    }

    @Test
    void a_name_that_is_not_there_is_answered_like_one_that_is() throws Exception {
        HttpResponse<String> there = new Team(studio.address()).signIn("Dora", "not the password");
        HttpResponse<String> not = new Team(studio.address()).signIn("Nobody", "not the password");
        assertThat(not.statusCode()).isEqualTo(there.statusCode());
        assertThat(not.body()).isEqualTo(there.body());
    }

    @Test
    void being_signed_in_ends_unused_after_two_hours_and_used_after_twelve() {
        Later clock = new Later();
        People people = new People(store, clock);
        String token = people.signIn("Dora", Team.PASSWORD.toCharArray(), "a", Optional.empty())
                .token()
                .orElseThrow();
        for (int hour = 1; hour <= 11; hour++) {
            clock.now = clock.now.plus(Duration.ofHours(1));
            assertThat(people.of(token)).as("hour " + hour).isPresent();
        }
        clock.now = clock.now.plus(Duration.ofHours(2));
        assertThat(people.of(token)).isEmpty();
        String other = people.signIn("Dora", Team.PASSWORD.toCharArray(), "a", Optional.empty())
                .token()
                .orElseThrow();
        clock.now = clock.now.plus(Duration.ofMinutes(121));
        assertThat(people.of(other)).isEmpty();
    }

    /** Neither passwords nor tokens lie readable in the database. */
    @Test
    void what_the_database_holds_opens_nothing() throws Exception {
        Team designer = Team.signedIn(studio, "Dora");
        String token = designer.cookie().replaceFirst(".*=", "");
        List<String> kept = new ArrayList<>(store.all("SELECT secret FROM person", row -> row.getString(1)));
        kept.addAll(store.all("SELECT token FROM session", row -> row.getString(1)));
        assertThat(kept).hasSize(4).noneMatch(k -> k.contains(token) || k.contains(Team.PASSWORD));
        assertThat(kept.stream().filter(k -> k.startsWith("$argon2id$v=19$m=19456,t=2,p=1$")))
                .hasSize(3);
    }

    /** The text form and the hash of the reference program of RFC 9106: printf password | argon2 somesalt -id -t 2 -m 16 -p 1 -l 32 -e (Debian argon2 0~20171227). */
    @Test
    void a_password_kept_by_the_reference_program_is_known_again() {
        String kept = "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";
        assertThat(Secret.is("password".toCharArray(), kept)).isTrue();
        assertThat(Secret.is("Password".toCharArray(), kept)).isFalse();
    }

    private static final class Later extends Clock {
        private Instant now = Instant.parse("2026-03-02T08:00:00Z");

        @Override
        public ZoneOffset getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}
