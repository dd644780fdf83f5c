package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The picture of the floor: where two points put it, what is refused, what is kept. */
class FloorPlanTest extends Served {
    FloorPlanTest() {
        super("bakery");
    }

    private static final FloorPlan UPRIGHT = new FloorPlan(1, "image/png", 800, 600, 0, 6, 0.01, 0);

    @Test
    void two_points_lay_the_picture_as_scale_turn_and_place_one_after_the_other_do() throws Exception {
        Random random = new Random(7);
        for (int n = 0; n < 200; n++) {
            double turned = (random.nextDouble() - 0.5) * 6;
            double scale = 0.002 + random.nextDouble();
            // an independent way: java.awt's transforms, picture downwards, building upwards
            AffineTransform truth = new AffineTransform();
            truth.translate(random.nextDouble() * 100, random.nextDouble() * 100);
            truth.rotate(turned);
            truth.scale(scale, -scale);
            FloorPlan laid = UPRIGHT.pinned(2, pin(truth, 10, 20), pin(truth, 700, 80 + random.nextInt(400)));
            FloorPlan.Pin other = pin(truth, 333, 222);
            assertThat(laid.metresPerPoint()).isCloseTo(scale, within(1e-9));
            assertThat(laid.x_m() + scale * (333 * Math.cos(laid.turned()) + 222 * Math.sin(laid.turned())))
                    .isCloseTo(other.x_m(), within(1e-7));
            assertThat(laid.y_m() + scale * (333 * Math.sin(laid.turned()) - 222 * Math.cos(laid.turned())))
                    .isCloseTo(other.y_m(), within(1e-7));
        }
    }

    private static FloorPlan.Pin pin(AffineTransform truth, double u, double v) {
        Point2D at = truth.transform(new Point2D.Double(u, v), null);
        return new FloorPlan.Pin(u, v, at.getX(), at.getY());
    }

    @Test
    void points_that_lie_on_each_other_or_nowhere_are_refused_in_words() {
        FloorPlan.Pin a = new FloorPlan.Pin(10, 10, 0, 0);
        assertThatThrownBy(() -> UPRIGHT.pinned(2, a, new FloorPlan.Pin(10, 11, 5, 0)))
                .hasMessageContaining("lie apart on the picture");
        assertThatThrownBy(() -> UPRIGHT.pinned(2, a, new FloorPlan.Pin(90, 11, 0, 0)))
                .hasMessageContaining("distance in the building");
        assertThatThrownBy(() -> UPRIGHT.pinned(2, a, new FloorPlan.Pin(90, 11, Double.NaN, 0)))
                .hasMessageContaining("metres");
        assertThatThrownBy(() -> UPRIGHT.pinned(2, a, new FloorPlan.Pin(90, 11, 1e300, 0)))
                .hasMessageContaining("metres");
    }

    @Test
    void a_picture_is_kept_with_its_place_through_a_new_start_and_goes_when_taken_away() throws Exception {
        byte[] picture = png(640, 480);
        JsonNode first = JSON.readTree(hand(picture).body());
        assertThat(first.path("width_px").asInt()).isEqualTo(640);
        JsonNode pinned = JSON.readTree(post(
                        "api/floorplan",
                        "{\"number\":" + first.path("number")
                                + ",\"pins\":[{\"u\":0,\"v\":480,\"x\":0,\"y\":0},{\"u\":640,\"v\":480,\"x\":32,\"y\":0}]}")
                .body());
        assertThat(pinned.path("metresPerPoint").asDouble()).isCloseTo(0.05, within(1e-12));
        assertThat(pinned.path("y_m").asDouble()).isCloseTo(24, within(1e-9));
        studio.close();
        studio = Studio.open(file, folder.resolve("kept.db"), 0, "dustwright test");
        assertThat(json("api/floorplan")).isEqualTo(pinned);
        HttpResponse<byte[]> back = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(studio.address() + "api/floorplan/picture"))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertThat(back.body()).isEqualTo(picture);
        assertThat(back.headers().firstValue("Content-Type")).contains("image/png");
        assertThat(post("api/floorplan/away", "{\"number\":1}").statusCode()).isEqualTo(409);
        post("api/floorplan/away", "{\"number\":" + pinned.path("number") + "}");
        assertThat(json("api/floorplan").path("number").asInt()).isZero();
        assertThat(get("api/floorplan/picture")).contains("no floor plan");
    }

    @Test
    void bringing_laying_and_taking_away_are_steps_with_their_way_back_and_forth() throws Exception {
        long brought = JSON.readTree(hand(png(64, 48)).body()).path("number").asLong();
        String pins = ",\"pins\":[{\"u\":0,\"v\":48,\"x\":0,\"y\":0},{\"u\":64,\"v\":48,\"x\":32,\"y\":0}]}";
        long laid = JSON.readTree(
                        post("api/floorplan", "{\"number\":" + brought + pins).body())
                .path("number")
                .asLong();
        JsonNode placed = json("api/floorplan");
        post("api/floorplan/away", "{\"number\":" + laid + "}");
        assertThat(json("api/plant").path("step").asInt()).isEqualTo(4);
        assertThat(json("api/plant").path("what").asText()).isEqualTo("floor plan: taken away");
        walk(-1);
        assertThat(json("api/floorplan")).isEqualTo(placed);
        assertThat(json("api/plant").path("floor").asLong()).isEqualTo(laid);
        walk(-1);
        assertThat(json("api/floorplan").path("number").asLong()).isEqualTo(brought);
        walk(-1);
        assertThat(json("api/floorplan").path("number").asLong()).isZero();
        walk(1);
        assertThat(post("api/floorplan", "{\"number\":" + brought + pins).statusCode())
                .isEqualTo(200);
        assertThat(json("api/floorplan").path("number").asLong()).isGreaterThan(laid);
        assertThat(json("api/left")).hasSize(2);
        long version = json("api/plant").path("version").asLong();
        post("api/text", "{\"version\":" + version + ",\"text\":\"dustwright: 2\"}");
        assertThat(json("api/floorplan").path("metresPerPoint").asDouble())
                .as("an edit keeps the floor plan")
                .isCloseTo(0.5, within(1e-12));
    }

    private void walk(int steps) throws Exception {
        long version = json("api/plant").path("version").asLong();
        assertThat(post("api/walk", "{\"version\":" + version + ",\"steps\":" + steps + "}")
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void of_two_who_lay_one_picture_or_bring_two_the_second_is_told_and_nothing_is_overwritten() throws Exception {
        long first = JSON.readTree(hand(png(64, 48)).body()).path("number").asLong();
        HttpResponse<String> other = hand(png(32, 24));
        assertThat(other.statusCode()).isEqualTo(409);
        assertThat(other.body()).contains("changed elsewhere");
        String pins = ",\"pins\":[{\"u\":0,\"v\":48,\"x\":0,\"y\":0},{\"u\":64,\"v\":48,\"x\":32,\"y\":0}]}";
        assertThat(post("api/floorplan", "{\"number\":" + first + pins).statusCode())
                .isEqualTo(200);
        assertThat(post("api/floorplan", "{\"number\":" + first + pins).statusCode())
                .isEqualTo(409);
        assertThat(json("api/floorplan").path("metresPerPoint").asDouble()).isCloseTo(0.5, within(1e-12));
        long now = json("api/floorplan").path("number").asLong();
        assertThat(hand(png(32, 24), now).statusCode()).isEqualTo(200);
        assertThat(json("api/floorplan").path("width_px").asInt()).isEqualTo(32);
    }

    @Test
    void what_is_no_picture_is_refused_and_the_one_there_stays() throws Exception {
        hand(png(64, 48));
        HttpResponse<String> refused = hand(
                "<svg xmlns='http://www.w3.org/2000/svg'><script>1</script></svg>".getBytes(StandardCharsets.UTF_8));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("PNG, a JPEG or a PDF");
        assertThat(json("api/floorplan").path("width_px").asInt()).isEqualTo(64);
        String number = "{\"number\":" + json("api/floorplan").path("number");
        assertThat(post("api/floorplan", number + ",\"pins\":[]}").statusCode()).isEqualTo(422);
        assertThat(post("api/floorplan", number + ",\"pins\":[{\"u\":\"x\"},{\"u\":1}]}")
                        .statusCode())
                .isEqualTo(422);
    }

    private HttpResponse<String> hand(byte[] bytes) throws Exception {
        return hand(bytes, 0);
    }

    private HttpResponse<String> hand(byte[] bytes, long on) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(studio.address() + "api/floorplan/picture?number=" + on))
                                .header(Guard.OWN_HEADER, "studio")
                                .POST(HttpRequest.BodyPublishers.ofByteArray(bytes))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    static byte[] png(int width, int height) throws Exception {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var ink = image.createGraphics();
        ink.setColor(java.awt.Color.WHITE);
        ink.fillRect(0, 0, width, height);
        ink.setColor(java.awt.Color.GRAY);
        ink.drawRect(width / 10, height / 10, width * 8 / 10, height * 8 / 10);
        ink.drawLine(width / 2, height / 10, width / 2, height / 2);
        ink.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }
}
