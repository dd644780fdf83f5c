package dustwright.studio;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dustwright.studio.People.Role;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Optional;

/** Asks a studio as one person does who signs in. */
final class Team {
    static final String PASSWORD = "long and dull words";
    static final ObjectMapper JSON = new ObjectMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final String address;
    private String cookie = "";

    Team(String address) {
        this.address = address;
    }

    /** Sets one of each role up: Vera looks, Dora designs, Carl checks. */
    static void setUp(Store store) {
        People people = new People(store);
        people.put("Vera", Role.VIEWER, PASSWORD.toCharArray());
        people.put("Dora", Role.DESIGNER, PASSWORD.toCharArray());
        people.put("Carl", Role.CHECKER, PASSWORD.toCharArray());
    }

    static Team signedIn(Studio studio, String name) throws IOException, InterruptedException {
        Team team = new Team(studio.address());
        HttpResponse<String> answer = team.signIn(name, PASSWORD);
        if (answer.statusCode() != 200) {
            throw new AssertionError(answer.body());
        }
        return team;
    }

    HttpResponse<String> signIn(String name, String password) throws IOException, InterruptedException {
        HttpResponse<String> answer = post(
                "api/session",
                JSON.createObjectNode()
                        .put("name", name)
                        .put("password", password)
                        .toString());
        given(answer).ifPresent(given -> cookie = given.replaceFirst(";.*", ""));
        return answer;
    }

    static Optional<String> given(HttpResponse<String> answer) {
        return answer.headers().firstValue("Set-Cookie");
    }

    String cookie() {
        return cookie;
    }

    void cookie(String other) {
        cookie = other;
    }

    HttpResponse<String> post(String path, String body, String... headers) throws IOException, InterruptedException {
        return send(
                HttpRequest.newBuilder(URI.create(address + path))
                        .header(Guard.OWN_HEADER, "studio")
                        .POST(HttpRequest.BodyPublishers.ofString(body)),
                headers);
    }

    HttpResponse<String> get(String path, String... headers) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(URI.create(address + path)), headers);
    }

    JsonNode json(String path) throws IOException, InterruptedException {
        return JSON.readTree(get(path).body());
    }

    HttpResponse<String> send(HttpRequest.Builder request, String... headers) throws IOException, InterruptedException {
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        for (int n = 0; n < headers.length; n += 2) {
            request.setHeader(headers[n], headers[n + 1]);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    /** Makes the tube of a run another one, on the version that is there now. */
    HttpResponse<String> tube(String run, String tube) throws IOException, InterruptedException {
        return post(
                "api/value",
                JSON.createObjectNode()
                        .put("version", json("api/plant").path("version").asLong())
                        .put("path", "runs." + run + ".tube")
                        .put("value", tube)
                        .put("plain", true)
                        .toString());
    }
}
