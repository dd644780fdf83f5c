package dustwright.studio;

import dustwright.studio.People.Role;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Many people at once, each on a plant of his own, all on one PostgreSQL and in one program: {@code Crowd PLANT [PEOPLE] [EDITS]}. Each
 * signs in, then edits again and again as a page does it: the change, the set drawn anew, a look at what is worked out behind; then one
 * to three seconds of thought. The first edits of each warm the program up and are kept like the others, but not timed. Prints the times of an edit and of a set, and whether every acknowledged edit is kept.
 */
final class Crowd {
    private static final int LEAST_THOUGHT_ms = 1000;
    private static final int MORE_THOUGHT_ms = 2000;
    private static final int WARM = 6;
    private static final double MS = 1e-6;

    private final Studio studio;
    private final String name;
    private final Random random;
    private final List<Double> edits = new ArrayList<>();
    private final List<Double> sets = new ArrayList<>();
    private int made;
    private long version;
    private String last = "";

    private Crowd(Studio studio, String name, int seed) {
        this.studio = studio;
        this.name = name;
        this.random = new Random(seed);
    }

    public static void main(String[] arguments) throws Exception {
        Path plant = Path.of(arguments[0]);
        int people = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 50;
        int edits = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 20;
        Path folder = Files.createTempDirectory("crowd");
        try (Postgres server = Postgres.start();
                Store store = Store.open(server.database())) {
            List<Crowd> crowd = new ArrayList<>();
            for (int n = 0; n < people; n++) {
                Path file = Files.copy(plant, folder.resolve("plant" + n + ".yaml"));
                new People(store).put("Person " + n, Role.DESIGNER, Team.PASSWORD.toCharArray());
                crowd.add(new Crowd(
                        Studio.open(store, new Studio.Opening(file, "", "127.0.0.1", 0, "dustwright crowd", false)),
                        "Person " + n,
                        n));
            }
            ExecutorService hands = Executors.newFixedThreadPool(people);
            List<Future<?>> working = new ArrayList<>();
            for (Crowd one : crowd) {
                working.add(hands.submit(() -> {
                    one.work(edits);
                    return one;
                }));
            }
            for (Future<?> one : working) {
                one.get();
            }
            hands.shutdownNow();
            int lost = 0;
            for (int n = 0; n < people; n++) {
                lost += crowd.get(n).lost(store, folder.resolve("plant" + n + ".yaml"));
            }
            System.out.printf(
                    Locale.ROOT, "%d people on %d plants, %d edits each, %d lost%n", people, people, edits, lost);
            print("edit", crowd.stream().flatMap(c -> c.edits.stream()).toList());
            print("set", crowd.stream().flatMap(c -> c.sets.stream()).toList());
        }
        System.exit(0);
    }

    private void work(int count) throws IOException, InterruptedException {
        Team team = new Team(studio.address());
        Thread.sleep(random.nextInt(LEAST_THOUGHT_ms + MORE_THOUGHT_ms));
        HttpResponse<String> signedIn = team.signIn(name, Team.PASSWORD);
        while (signedIn.statusCode() == 429) {
            Thread.sleep(LEAST_THOUGHT_ms);
            signedIn = team.signIn(name, Team.PASSWORD);
        }
        version = team.json("api/plant").path("version").asLong();
        for (int n = 0; n < count; n++) {
            last = (20 + random.nextInt(20)) + "." + n + " kg/h";
            String body = Team.JSON
                    .createObjectNode()
                    .put("version", version)
                    .put("path", "inlets.A1.feed")
                    .put("value", last)
                    .put("plain", true)
                    .toString();
            long begun = System.nanoTime();
            HttpResponse<String> answer = team.post("api/value", body);
            time(edits, n, begun);
            if (answer.statusCode() != 200) {
                throw new AssertionError(answer.body());
            }
            version = Team.JSON.readTree(answer.body()).path("version").asLong();
            begun = System.nanoTime();
            team.get("api/set?open=A1");
            time(sets, n, begun);
            team.get("api/sets");
            team.get("api/coverage");
            Thread.sleep(LEAST_THOUGHT_ms + random.nextInt(MORE_THOUGHT_ms));
        }
    }

    private void time(List<Double> times, int edit, long begun) {
        if (edit >= WARM) {
            times.add((System.nanoTime() - begun) * MS);
        }
        made = edit + 1;
    }

    /** Each edit made one version and one step, and the last one stands in the text. */
    private int lost(Store store, Path file) {
        Kept kept = new Kept(store, Kept.nameOf(file));
        int steps = 0;
        while (kept.step(steps + 1).isPresent()) {
            steps++;
        }
        boolean stands = kept.now().orElseThrow().text().contains("feed: " + last);
        return made + 1 - steps + (stands && kept.version() == version ? 0 : 1);
    }

    private static void print(String what, List<Double> times) {
        List<Double> sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%s: %d times, least %.0f, median %.0f, 95 of 100 below %.0f, 99 below %.0f, most %.0f ms%n",
                what,
                sorted.size(),
                sorted.get(0),
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 95 / 100),
                sorted.get(sorted.size() * 99 / 100),
                sorted.get(sorted.size() - 1));
    }
}
