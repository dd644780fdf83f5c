package dustwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.receiver.FilterCondition;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Whole networks against an independent solution of the same equations with SciPy, single legs against python3-fluids: see {@code
 * bench/peers/network_peer.py}. Skipped, and said so, where Python with both libraries is not installed.
 */
class NetworkPeerTest {
    private static final Path NETWORKS = Path.of("networks");
    private static final String PYTHON = "/usr/bin/python3";
    private static final ObjectMapper JSON = new ObjectMapper();

    /** A network file with the state it is solved in. */
    private record Case(String name, Set<String> open, FilterCondition filter, boolean bleed, boolean vent) {
        static Case of(String name, String... open) {
            return new Case(name, Set.of(open), FilterCondition.NORMAL, false, false);
        }

        Plant plant() {
            Reading reading = PlantReader.read(NETWORKS.resolve(name + ".yaml"));
            assertThat(reading).as(name).isInstanceOf(Reading.Read.class);
            return ((Reading.Read) reading).plant();
        }

        State state(Plant plant) {
            Set<String> running = plant.stations().stream()
                    .flatMap(s -> s.producers().stream())
                    .map(VacuumProducer::id)
                    .collect(Collectors.toSet());
            Set<String> bleeds = bleed ? Set.of("B1") : Set.of();
            return new State(
                    name,
                    open.stream().sorted().toList(),
                    open,
                    filter,
                    bleeds,
                    vent ? Set.of("REC") : Set.of(),
                    running);
        }
    }

    private static final List<Case> CASES = List.of(
            Case.of("series"),
            Case.of("tree", "A", "C"),
            Case.of("loop", "A", "D"),
            Case.of("reverse-flow"),
            Case.of("all-closed"),
            Case.of("relief-open", "B"),
            Case.of("two-producers", "A", "B", "D"),
            Case.of("check-valve-shut", "A", "C"),
            new Case("dirty-filter", Set.of("A", "B", "C"), FilterCondition.DIRTY, false, false),
            Case.of("altitude", "A", "B"),
            Case.of("near-choked"),
            Case.of("choked"),
            Case.of("wyes", "A", "B", "D"),
            Case.of("held-pressures"),
            new Case("bleed-open", Set.of("C"), FilterCondition.CLEAN, true, false),
            new Case("vent-open", Set.of("A"), FilterCondition.NORMAL, false, true),
            Case.of("holding-drive", "A", "D"),
            Case.of("two-stations", "A", "B", "C"),
            Case.of("bridge"),
            Case.of("grid"),
            Case.of("dusty-tree", "A", "B", "C"),
            Case.of("dusty-loop", "A", "D"),
            Case.of("dusty-wyes", "A", "B", "D"),
            Case.of("dusty-two-stations", "A", "B", "C"));

    @Test
    void every_network_file_is_a_case() throws IOException {
        try (Stream<Path> files = Files.list(NETWORKS)) {
            assertThat(files.map(f -> f.getFileName().toString().replace(".yaml", "")))
                    .containsExactlyInAnyOrderElementsOf(
                            CASES.stream().map(Case::name).toList());
        }
    }

    @TestFactory
    Stream<DynamicTest> networks_agree_with_an_independent_solution() throws IOException, InterruptedException {
        ObjectNode asked = JSON.createObjectNode();
        List<Plant> plants = new ArrayList<>();
        for (Case each : CASES) {
            plants.add(each.plant());
            asked.withArray("networks")
                    .add(PeerNetwork.of(each.name(), plants.get(plants.size() - 1), each.state(each.plant())));
        }
        JsonNode answers = ask(asked).get("networks");
        return Stream.iterate(0, n -> n + 1)
                .limit(CASES.size())
                .map(n -> DynamicTest.dynamicTest(
                        CASES.get(n).name(), () -> compare(plants.get(n), CASES.get(n), answers.get(n))));
    }

    /** Pressures to 1e-8, flows to 1e-7 of themselves or, where a flow is next to nothing, of 1e-5 kg/s. */
    private static void compare(Plant plant, Case asked, JsonNode peer) {
        assertThat(peer.get("misfit").asDouble()).as("the peer's own misfit").isLessThan(1e-10);
        DutyPoint duty = DutyPointSolver.solve(plant, asked.state(plant)).match(solved -> solved, why -> {
            throw new AssertionError(why);
        });
        duty.nodes().forEach(node -> {
            double expected = peer.get("pressures").get(node.id()).asDouble();
            assertThat(node.pressure().pascals()).as(node.id()).isCloseTo(expected, within(1e-8 * expected));
        });
        for (LegResult leg : duty.legs()) {
            String name = "leg " + (leg.kind() == LegResult.Kind.HOSE ? "hose " : "") + leg.id();
            flow(name, leg.flow().kgPerSecond(), peer);
            double dust = peer.get("dust").get(name).asDouble();
            assertThat(leg.dust().kgPerSecond())
                    .as("dust in " + name)
                    .isCloseTo(dust, within(1e-7 * Math.max(dust, 1e-5)));
        }
        duty.stations().forEach(station -> {
            flow("filter " + station.id(), station.throughFilter().kgPerSecond(), peer);
            station.producers().forEach(p -> flow("pump " + p.id(), p.flow().kgPerSecond(), peer));
        });
    }

    private static void flow(String name, double ours, JsonNode peer) {
        double expected = peer.get("flows").get(name).asDouble();
        assertThat(ours).as(name).isCloseTo(expected, within(1e-7 * Math.max(Math.abs(expected), 1e-5)));
    }

    @Test
    void the_cases_are_what_their_names_say() {
        DutyPoint choked = solve("choked");
        assertThat(choked.unchoked()).isFalse();
        assertThat(solve("near-choked").unchoked()).isTrue();
        assertThat(leg(solve("reverse-flow"), "R3").flow().kgPerSecond()).isNegative();
        assertThat(solve("relief-open").stations().get(0).relief().kgPerSecond())
                .isPositive();
        assertThat(solve("check-valve-shut")
                        .stations()
                        .get(0)
                        .producers()
                        .get(1)
                        .checkValveShut())
                .isTrue();
        assertThat(leg(solve("wyes"), "M1").junctionLoss().pascals()).isNotZero();
        assertThat(solve("all-closed").inlets()).allMatch(i -> i.flow().kgPerSecond() > 0);
        for (String dusty : List.of("dusty-tree", "dusty-loop", "dusty-wyes", "dusty-two-stations")) {
            assertThat(solve(dusty).dilute()).as(dusty).isTrue();
            assertThat(solve(dusty).legs())
                    .as(dusty)
                    .anyMatch(leg -> leg.solidsDrop().pascals() > 300);
        }
        assertThat(leg(solve("dusty-tree"), "M1").streams()).hasSize(2);
    }

    private static DutyPoint solve(String name) {
        Case asked =
                CASES.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
        Plant plant = asked.plant();
        return DutyPointSolver.solve(plant, asked.state(plant)).match(solved -> solved, why -> {
            throw new AssertionError(why);
        });
    }

    private static LegResult leg(DutyPoint duty, String id) {
        return duty.legs().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
    }

    /** Legs from easy to a hair above choking, and below it. */
    @TestFactory
    Stream<DynamicTest> single_legs_agree_with_a_published_library() throws IOException, InterruptedException {
        Plant drawn = Case.of("choked").plant();
        double rt = drawn.site().air().rt();
        double viscosity = drawn.site().air().viscosity_PaS();
        ObjectNode asked = JSON.createObjectNode();
        List<String> files = new ArrayList<>();
        double[] outlets_kPa = {101, 95, 80, 60, 45, 36, 34, 33, 20};
        double[][] pieces = {{0.0381, 7.62, 0.0003, 7.5}, {0.0475, 3, 4.5e-5, 0.5}, {0.0729, 40, 4.5e-5, 2}};
        for (double[] piece : pieces) {
            for (double outlet_kPa : outlets_kPa) {
                asked.withArray("legs")
                        .addObject()
                        .put("p1", 101_325)
                        .put("p2", outlet_kPa * 1000)
                        .put("bore", piece[0])
                        .put("length", piece[1])
                        .put("roughness", piece[2])
                        .put("k", piece[3])
                        .put("rt", rt)
                        .put("viscosity", viscosity);
                files.add(singleLeg(piece, outlet_kPa));
            }
        }
        JsonNode answers = ask(asked).get("legs");
        return Stream.iterate(0, n -> n + 1)
                .limit(files.size())
                .map(n -> DynamicTest.dynamicTest("leg " + n, () -> {
                    Plant plant = ((Reading.Read) PlantReader.read(files.get(n))).plant();
                    DutyPoint duty = DutyPointSolver.solve(plant, Case.of("leg").state(plant))
                            .match(solved -> solved, why -> {
                                throw new AssertionError(why);
                            });
                    double expected = answers.get(n).get("flow").asDouble();
                    assertThat(leg(duty, "R").flow().kgPerSecond()).isCloseTo(expected, within(1e-6 * expected));
                }));
    }

    private static String singleLeg(double[] piece, double outlet_kPa) {
        return """
                dustwright: 1
                plant: {name: leg}
                site: {barometer: 101325 Pa abs, temperature: 20 degC, humidity: 0 %%}
                tubes: {T: {bore: %s m, roughness: %s m}}
                points: {X: {}, Y: {}}
                runs: {R: {from: X, to: Y, tube: T, length: %s m, k: %s}}
                held: {X: {pressure: 101.325 kPa abs}, Y: {pressure: %s kPa abs}}
                """.formatted(
                        String.valueOf(piece[0]),
                        java.math.BigDecimal.valueOf(piece[2]).toPlainString(),
                        String.valueOf(piece[1]),
                        String.valueOf(piece[3]),
                        String.valueOf(outlet_kPa));
    }

    private static JsonNode ask(JsonNode asked) throws IOException, InterruptedException {
        if (!Files.isExecutable(Path.of(PYTHON))) {
            skip("there is no " + PYTHON);
        }
        Process peer = new ProcessBuilder(PYTHON, "peers/network_peer.py")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (OutputStream to = peer.getOutputStream()) {
            to.write(JSON.writeValueAsBytes(asked));
        }
        String answer = new String(peer.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int status = peer.waitFor();
        if (status == 3) {
            skip("Python has no SciPy or no fluids (Debian: python3-scipy, python3-fluids)");
        }
        assertThat(status).as("exit status of the peer").isZero();
        return JSON.readTree(answer);
    }

    private static void skip(String why) {
        System.out.println("SKIPPED: no comparison with an independent network solution, " + why);
        Assumptions.abort(why);
    }
}
