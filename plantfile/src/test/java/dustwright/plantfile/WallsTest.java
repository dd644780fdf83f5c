package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.plant.BuildingWall;
import dustwright.engine.plant.Plant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Walls of the building: read in the plant's unit, refused with their line. */
class WallsTest {
    private static final Path FOLDER = Path.of("../examples/bakery");
    private static final Path BAKERY = FOLDER.resolve("plant.yaml");

    @Test
    void walls_are_read_from_corner_to_corner_in_the_units_they_are_written_in() throws IOException {
        Plant plant =
                plant(Files.readString(BAKERY).replace("walls: {", "walls: {shed: [[10 ft, 0, 0], [20 ft, 0, 0]], "));
        List<BuildingWall> walls = plant.site().walls();
        assertThat(walls).extracting(BuildingWall::id).containsExactly("shed", "hall", "allergen-room");
        assertThat(walls.get(0).corners().get(1).x_m()).isCloseTo(6.096, org.assertj.core.data.Offset.offset(1e-12));
    }

    @Test
    void a_wall_of_one_corner_or_beyond_reason_is_told_with_its_line() throws IOException {
        String text = Files.readString(BAKERY);
        int line = text.substring(0, text.indexOf("walls:")).split("\n", -1).length;
        for (String wrong : List.of(
                "bad: [[0, 0, 0]], ",
                "bad: [[0, 0, 0], [1, 2]], ",
                "bad: [[0, 0, 0], [20 km, 0, 0]], ",
                "bad: north, ")) {
            Reading reading = PlantReader.read(text.replace("walls: {", "walls: {" + wrong), FOLDER);
            assertThat(reading).isInstanceOf(Reading.Faults.class);
            assertThat(((Reading.Faults) reading).faults().get(0).line()).isEqualTo(line);
        }
    }

    private static Plant plant(String text) {
        return ((Reading.Read) PlantReader.read(text, FOLDER)).plant();
    }
}
