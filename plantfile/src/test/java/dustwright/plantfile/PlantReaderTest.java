package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.plant.Plant;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PlantReaderTest {
    static String resource(String name) {
        try (InputStream in = PlantReaderTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Plant plant(String text) {
        Reading reading = PlantReader.read(text);
        if (reading instanceof Reading.Faults faults) {
            throw new AssertionError(
                    String.join("\n", faults.faults().stream().map(Fault::text).toList()));
        }
        return ((Reading.Read) reading).plant();
    }

    @Test
    void a_plant_with_every_kind_of_part_is_read() {
        Plant plant = plant(resource("two-inlets.yaml"));
        assertThat(plant.inlets()).hasSize(2);
        assertThat(plant.overrides()).hasSize(1);
    }

    @Test
    void a_measured_network_with_a_loop_is_read() {
        Plant plant = plant(resource("measured-loop.yaml"));
        assertThat(plant.held()).hasSize(3);
        assertThat(plant.runs()).hasSize(7);
    }
}
