package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The studio's process is killed at any moment, again and again, on either database: nothing it said is kept is lost. 100 times with
 * {@code -Ddustwright.kills=100}.
 */
class KillDrillTest {
    private static final int KILLS = Integer.getInteger("dustwright.kills", 4);
    private static final ObjectMapper JSON = new ObjectMapper();

    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path folder;

    /** What the page was last told is kept, and what it sent after that and heard nothing of. */
    private String acknowledged = "40 kg/h";

    private String underWay = "40 kg/h";

    private int edits;

    /** Opened by the first edit that was acknowledged by a process. */
    private CountDownLatch told = new CountDownLatch(1);

    private final HttpClient client = HttpClient.newHttpClient();

    /** The studio alone, as a process one can kill. */
    static final class Alone {
        private Alone() {}

        public static void main(String[] arguments) throws IOException, InterruptedException {
            Studio studio = Studio.open(
                    Store.open(arguments[1]),
                    new Studio.Opening(Path.of(arguments[0]), "", "127.0.0.1", 0, "dustwright test", false));
            System.out.println(studio.address());
            Thread.currentThread().join();
        }
    }

    /** Compiled in haste only: the process lives for seconds. */
    private static Process start(Path file, String database) throws IOException {
        return new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Alone.class.getName(),
                        file.toString(),
                        database))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    @Test
    void nothing_said_to_be_kept_in_a_file_is_lost_when_the_process_is_killed() throws Exception {
        drill(folder.resolve("kept.db").toString());
    }

    @Test
    void nothing_said_to_be_kept_in_postgresql_is_lost_when_the_process_is_killed() throws Exception {
        try (Postgres server = Postgres.start()) {
            drill(server.database());
        }
    }

    private void drill(String database) throws Exception {
        Path file = Plants.copy("bakery", folder);
        Random random = new Random(7);
        for (int kill = 0; kill < KILLS; kill++) {
            Process process = start(file, database);
            String address = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))
                    .readLine();
            JsonNode text = JSON.readTree(get(address + "api/text"));
            assertThat(text.path("text").asText())
                    .as("after kill " + kill)
                    .containsAnyOf("feed: " + acknowledged, "feed: " + underWay);
            acknowledged = text.path("text").asText().contains("feed: " + underWay) ? underWay : acknowledged;
            told = new CountDownLatch(1);
            Thread killer = new Thread(() -> {
                try {
                    if (told.await(60, TimeUnit.SECONDS)) {
                        TimeUnit.MILLISECONDS.sleep(random.nextInt(1500));
                    }
                } catch (InterruptedException stopped) {
                    Thread.currentThread().interrupt();
                }
                process.destroyForcibly();
            });
            killer.start();
            editUntilKilled(address, text.path("version").asLong(), kill);
            killer.join();
            process.waitFor();
        }
        System.out.println(KILLS + " kills, " + edits + " edits acknowledged, none lost: "
                + (Store.isServer(database) ? "PostgreSQL" : "file"));
        assertThat(acknowledged).isNotEqualTo("40 kg/h");
    }

    private void editUntilKilled(String address, long version, int kill) {
        long at = version;
        for (int n = 1; ; n++) {
            String feed = (100 * kill + n) + ".5 kg/h";
            underWay = feed;
            try {
                HttpResponse<String> answer = client.send(
                        HttpRequest.newBuilder(URI.create(address + "api/value"))
                                .header(Guard.OWN_HEADER, "studio")
                                .POST(HttpRequest.BodyPublishers.ofString("{\"version\":" + at
                                        + ",\"path\":\"inlets.A1.feed\",\"value\":\"" + feed + "\",\"plain\":true}"))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
                if (answer.statusCode() != 200) {
                    throw new AssertionError(answer.body());
                }
                at = JSON.readTree(answer.body()).path("version").asLong();
                acknowledged = feed;
                edits++;
                told.countDown();
            } catch (IOException killed) {
                return;
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private String get(String address) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }
}
