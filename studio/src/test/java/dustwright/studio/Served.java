package dustwright.studio;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests that ask a studio as a program would, each on a studio of its own with a copy of an example. */
abstract class Served {
    static final ObjectMapper JSON = new ObjectMapper();

    private final String example;
    private final HttpClient client = HttpClient.newHttpClient();

    @SuppressWarnings("NullAway.Init")
    @TempDir
    Path folder;

    @SuppressWarnings("NullAway.Init")
    Path file;

    @SuppressWarnings("NullAway.Init")
    Studio studio;

    Served(String example) {
        this.example = example;
    }

    @BeforeEach
    void open() throws IOException {
        file = Plants.copy(example, folder);
        studio = Studio.open(file, folder.resolve("kept.db"), 0, "dustwright test");
    }

    @AfterEach
    void close() {
        studio.close();
    }

    HttpResponse<String> post(String path, String body) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(studio.address() + path))
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .header(Guard.OWN_HEADER, "studio")
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    String get(String path) throws IOException, InterruptedException {
        return client.send(
                        HttpRequest.newBuilder(URI.create(studio.address() + path))
                                .build(),
                        HttpResponse.BodyHandlers.ofString())
                .body();
    }

    JsonNode json(String path) throws IOException, InterruptedException {
        return JSON.readTree(get(path));
    }
}
