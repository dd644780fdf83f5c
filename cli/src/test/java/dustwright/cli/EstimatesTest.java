package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Units;
import dustwright.engine.receiver.FilterCondition;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The air of the example plants against estimates by hand, on the estimate's inputs: where a plant was built otherwise, overrides in its file put
 * the estimate's drops, valves and pump in place.
 */
class EstimatesTest {
    private static final double TOLERANCE = 0.15;
    private static final Map<String, Plant> PLANTS = new HashMap<>();

    private static final Map<String, List<String>> ESTIMATED_WITH = Map.of(
            "cement-packing",
            List.of(
                    "tubes.T3.outside, to: 2.5 in",
                    "bleeds.BA.open, to: no",
                    "bleeds.BB.open, to: no",
                    "bleeds.BC.open, to: no",
                    "stations.REC.relief valve.set, to: 10.5 inHg",
                    "stations.REC.relief valve.full, to: 12.5 inHg",
                    "stations.REC.producers.P1.displacement, to: 0.0196 m3",
                    "stations.REC.producers.P2.displacement, to: 0.0196 m3"),
            "plastics",
            List.of("tubes.T25.outside, to: 2.125 in", "stations.REC.producers.P1.displacement, to: 0.0123 m3"),
            "furniture",
            List.of("tubes.T25.outside, to: 2.125 in"));

    @ParameterizedTest(name = "{0} {1}: {2} {3}")
    @CsvFileSource(resources = "/estimates-by-hand.csv", delimiter = ';', useHeadersInDisplayName = true)
    void the_engine_agrees_with_the_estimate_on_equal_inputs(
            String plant, String open, String figure, String at, double estimate) {
        DutyPoint duty = solve(plant, List.of(open.split("\\+")));
        double engine = switch (figure) {
            case "tool scfm" -> scfm(inlet(duty, at).flow());
            case "filter scfm" -> scfm(station(duty, at).throughFilter());
            case "vacuum inHg" -> read(station(duty, at).producers().get(0).vacuum(), "inHg");
            case "shaft hp" -> read(producer(duty, at).shaftPower(), "hp");
            case "slowest m/s" -> leg(duty, at).slowest().metresPerSecond();
            case "fastest m/s" -> leg(duty, at).fastest().metresPerSecond();
            default -> throw new IllegalArgumentException(figure);
        };
        assertThat(engine).isCloseTo(estimate, within(TOLERANCE * estimate));
    }

    private static DutyPoint solve(String plantName, List<String> open) {
        Plant plant = PLANTS.computeIfAbsent(plantName, EstimatesTest::asEstimated);
        return Study.of(plant, List.of(States.withoutDust(States.open(plant, open, FilterCondition.NORMAL))))
                .states()
                .get(0)
                .duty()
                .match(duty -> duty, why -> {
                    throw new AssertionError(plantName + ": " + why);
                });
    }

    private static Plant asEstimated(String name) {
        StringBuilder text = new StringBuilder(file(name));
        List<String> overrides = ESTIMATED_WITH.getOrDefault(name, List.of());
        text.append(overrides.isEmpty() ? "" : "\noverrides:\n");
        overrides.forEach(o ->
                text.append("  - {set: ").append(o).append(", reason: inputs of the estimate by hand, by: test}\n"));
        Reading reading = PlantReader.read(text.toString());
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).plant();
    }

    private static String file(String name) {
        try {
            return Files.readString(Path.of("..", "examples", name, "plant.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double scfm(MassFlow flow) {
        return read(FreeAirFlow.of(flow), "scfm");
    }

    private static double read(Quantity quantity, String unit) {
        return Units.find(unit, quantity.dimension()).orElseThrow().fromSi(quantity.si());
    }

    private static StationResult station(DutyPoint duty, String id) {
        return duty.stations().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static InletResult inlet(DutyPoint duty, String id) {
        return duty.inlets().stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
    }

    private static ProducerResult producer(DutyPoint duty, String id) {
        return duty.stations().stream()
                .flatMap(s -> s.producers().stream())
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static LegResult leg(DutyPoint duty, String id) {
        return duty.legs().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
    }
}
