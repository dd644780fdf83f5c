package dustwright.bench;

import dustwright.engine.air.Air;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import dustwright.engine.tubing.Wall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A measuring tree written as plain SI numbers for programs in other languages: nodes numbered from the receiver outwards, every node
 * after the one it joins.
 */
final class PeerInput {
    /** Air on which slip of a lobe pump is stated: a stated figure, not the reference density computed. */
    private static final double SLIP_DENSITY_kgPerM3 = 1.2041;

    private final Plant plant;
    private final Air air;
    private final Map<String, Integer> number = new TreeMap<>();
    private final List<Run> runs = new ArrayList<>();

    PeerInput(Plant plant) {
        this.plant = plant;
        this.air = plant.site().air();
        number.put(plant.stations().get(0).id(), 0);
        while (runs.size() < plant.runs().size()) {
            plant.runs().stream()
                    .filter(run -> number.containsKey(run.to()) && !number.containsKey(run.from()))
                    .forEach(run -> {
                        number.put(run.from(), number.size());
                        runs.add(run);
                    });
        }
    }

    /**
     * The whole input.
     *
     * @param states inlets open in each state, as numbers in the order of the plant
     */
    String json(int[][] states) {
        return "{\n"
                + field("name", "\"" + plant.name() + "\"")
                + field("ambient_Pa", air.ambient().pascals())
                + field("rt_JPerKg", air.rt())
                + field("viscosity_PaS", air.viscosity_PaS())
                + tubing()
                + inlets()
                + station(plant.stations().get(0))
                + "\"states\": "
                + IntStream.range(0, states.length)
                        .mapToObj(n -> Arrays.toString(states[n]))
                        .collect(Collectors.joining(",\n", "[", "]"))
                + "\n}\n";
    }

    private String tubing() {
        return field("parent", numbers(runs.stream().map(run -> number.get(run.to()))))
                + field(
                        "bore_m",
                        numbers(runs.stream().map(run -> tube(run).bore().metres())))
                + field(
                        "roughness_m",
                        numbers(runs.stream().map(run -> roughness(tube(run).wall()))))
                + field(
                        "length_m",
                        numbers(runs.stream().map(run -> measured(run).length().metres())))
                + field("k", numbers(runs.stream().map(run -> measured(run).k())));
    }

    private String inlets() {
        List<Inlet> inlets = plant.inlets();
        return field("inlet_node", numbers(inlets.stream().map(inlet -> number.get(inlet.id()))))
                + field(
                        "leak_kgPerSPa",
                        numbers(inlets.stream().map(i -> i.leak().kgPerSecondPascal())))
                + field(
                        "hose_bore_m",
                        numbers(inlets.stream().map(i -> hose(i).bore().metres())))
                + field(
                        "hose_length_m",
                        numbers(inlets.stream().map(i -> hose(i).length().metres())))
                + field("hose_roughness_m", numbers(inlets.stream().map(i -> roughness(hose(i).wall()))))
                + field("hose_k", numbers(inlets.stream().map(i -> 1 + toolK(i) + i.valveK())));
    }

    private String station(Station station) {
        StatedLoss safety = station.safetyFilter().orElseThrow();
        ReliefValve relief = station.relief().orElseThrow();
        RotaryValve rotary = station.rotaryValve().orElseThrow();
        VacuumProducer pump = station.producers().get(0);
        StatedLoss silencer = pump.silencer().orElseThrow();
        Machine.LobePump lobe = (Machine.LobePump) pump.machine();
        Drive.Fixed drive = (Drive.Fixed) pump.drive();
        double resistance = station.filter().resistance(FilterCondition.NORMAL).pascalSecondsPerMetre();
        return field(
                        "filter_Pa2SPerKg",
                        2 * resistance * air.rt() / station.filter().cloth().squareMetres())
                + field("safety_loss_Pa", safety.loss().pascals())
                + field("safety_at_kgPerS", safety.at().mass().kgPerSecond())
                + field("relief_set_Pa", relief.set().pascals())
                + field("relief_accumulation_Pa", relief.accumulation().pascals())
                + field("relief_rated_kgPerS", relief.rated().mass().kgPerSecond())
                + field("rotary_area_m2", rotary.clearance().squareMetres() * rotary.dischargeCoefficient())
                + field("rotary_pockets_kgPerS", pockets_kgPerS(rotary))
                + field("pump_displacement_m3", lobe.displacement().cubicMetres())
                + field("pump_standard_kgPerM3", SLIP_DENSITY_kgPerM3)
                + field("pump_slip_perS", lobe.slipAtOnePsi().revolutionsPerSecond())
                + field("pump_speed_perS", drive.speed().revolutionsPerSecond())
                + field("silencer_loss_Pa", silencer.loss().pascals())
                + field("silencer_at_kgPerS", silencer.at().mass().kgPerSecond());
    }

    private double pockets_kgPerS(RotaryValve rotary) {
        return rotary.swept().cubicMetres()
                * rotary.speed().revolutionsPerSecond()
                * air.density_kgPerM3(air.ambient().pascals());
    }

    private Tube tube(Run run) {
        return plant.tube(run.tube());
    }

    private Hose hose(Inlet inlet) {
        return plant.hose(inlet.hose());
    }

    private double toolK(Inlet inlet) {
        return ((Tool.Law.VelocityHeads) plant.tool(inlet.tool()).law()).k();
    }

    private static Run.Route.Measured measured(Run run) {
        return (Run.Route.Measured) run.route();
    }

    private static double roughness(Wall wall) {
        return ((Wall.Rough) wall).roughness().metres();
    }

    private static String numbers(Stream<? extends Number> values) {
        return values.map(Object::toString).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String field(String name, Object value) {
        return "\"" + name + "\": " + value + ",\n";
    }
}
