package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is found about dust in one state: margins to saltation and choking, dust per air, no dilute flow. */
class DustChecksTest {
    @Test
    void a_riser_without_dilute_flow_fails_by_name_and_says_how_far_it_is() {
        Finding wide = find(plant(0.15, Optional.empty(), Optional.empty()), FindingCode.NEAR_CHOKING, "UP");
        assertThat(wide.holds()).isFalse();
        assertThat(wide.value().si()).isLessThan(wide.limit().si());
        assertThat(wide.derivation().steps()).anyMatch(step -> step.equation().equals("CON-44"));
        assertThat(find(plant(0.048, Optional.empty(), Optional.empty()), FindingCode.NEAR_CHOKING, "UP")
                        .holds())
                .isTrue();
    }

    /** Pellets of 3 mm up 8 m of 60 mm tube, then a level header; the pipe is the same however it is divided into runs. */
    @ParameterizedTest
    @CsvSource({"120, 4.4", "120, 6", "900, 14", "900, 30"})
    void a_riser_passes_or_fails_alike_drawn_as_one_run_with_its_header_or_as_two(double header_m, double vacuum_kPa) {
        UnaryOperator<PlantSketch> end = plant -> plant.holdPressure("E", 101_325 - 1000 * vacuum_kPa);
        assertThat(joined(header_m, end).holds()).isEqualTo(split(header_m, end).holds());
    }

    /** With the flow given, nothing is left of the way the solver spreads the drop. */
    @ParameterizedTest
    @CsvSource({"120, 0.030", "120, 0.040", "900, 0.034", "900, 0.040"})
    void at_one_flow_its_margin_is_the_same_to_the_last_figures(double header_m, double air_kgPerS) {
        UnaryOperator<PlantSketch> end = plant -> plant.supply("E", -air_kgPerS);
        Reference.assertClose(
                "margin over 1",
                1 + joined(header_m, end).margin(),
                1 + split(header_m, end).margin(),
                1e-9);
    }

    /** Where level tube comes first, the pressure at the foot is estimated from both ends. */
    @Test
    void after_level_tube_the_foot_is_found_within_a_thousandth() {
        Position corner = new Position(60, 0, 0);
        Position top = new Position(60, 0, 8);
        Finding one = find(
                pellets()
                        .run("UP", "A", "E", "T", drawn(START, corner, top), Optional.empty())
                        .supply("E", -0.040)
                        .plant(),
                FindingCode.NEAR_CHOKING,
                "UP");
        Finding two = find(
                pellets()
                        .points("M")
                        .run("ON", "A", "M", "T", drawn(START, corner), Optional.empty())
                        .run("UP", "M", "E", "T", drawn(corner, top), Optional.empty())
                        .supply("E", -0.040)
                        .plant(),
                FindingCode.NEAR_CHOKING,
                "UP");
        Reference.assertClose("margin over 1", 1 + one.margin(), 1 + two.margin(), 1e-3);
        assertThat(one.derivation().steps()).anyMatch(step -> step.equation().equals("CON-45"));
    }

    private static final Position START = new Position(0, 0, 0);
    private static final Position TOP = new Position(0, 0, 8);

    private static Finding joined(double header_m, UnaryOperator<PlantSketch> end) {
        PlantSketch plant =
                pellets().run("UP", "A", "E", "T", drawn(START, TOP, new Position(header_m, 0, 8)), Optional.empty());
        return find(end.apply(plant).plant(), FindingCode.NEAR_CHOKING, "UP");
    }

    private static Finding split(double header_m, UnaryOperator<PlantSketch> end) {
        Position past = new Position(0.5, 0, 8);
        PlantSketch plant = pellets()
                .points("M")
                .run("UP", "A", "M", "T", drawn(START, TOP, past), Optional.empty())
                .run("ON", "M", "E", "T", drawn(past, new Position(header_m, 0, 8)), Optional.empty());
        return find(end.apply(plant).plant(), FindingCode.NEAR_CHOKING, "UP");
    }

    private static PlantSketch pellets() {
        return new PlantSketch()
                .dust("pellets", 3e-3, 920)
                .hose("hose", 0.05, 8, 3e-4)
                .tube("T", 0.06, 4.5e-5)
                .points("E")
                .inlet("A", "hose", "floor", 0, Optional.of("pellets"), 20.0 / 3600);
    }

    private static Run.Route drawn(Position... corners) {
        return new Run.Route.Drawn(List.of(corners), new Length(0.25));
    }

    @Test
    void a_margin_on_saltation_and_choking_is_checked_only_when_asked_and_names_its_author() {
        assertThat(findings(plant(0.048, Optional.empty(), Optional.empty())))
                .noneMatch(f -> f.code() == FindingCode.CARRYING_VELOCITY);
        Plant asked = plant(0.048, Optional.of(1.5), Optional.empty());
        Finding level = find(asked, FindingCode.CARRYING_VELOCITY, "M");
        Finding doubled = find(plant(0.048, Optional.of(3.0), Optional.empty()), FindingCode.CARRYING_VELOCITY, "M");
        Reference.assertClose("limit", doubled.limit().si(), 2 * level.limit().si(), 1e-12);
        assertThat(level.derivation().steps())
                .anyMatch(step ->
                        step.equation().matches("CON-1[0-6]") && step.formula().contains("19"));
    }

    @Test
    void dust_per_air_is_checked_when_asked() {
        Finding found = find(plant(0.048, Optional.empty(), Optional.of(0.5)), FindingCode.LOADING_RATIO, "M");
        assertThat(found.holds()).isEqualTo(found.value().si() <= 0.5);
        assertThat(found.value().si()).isBetween(0.3, 3.0);
    }

    /** 12 mm granules: a hose of 10 mm, a tool's opening of 8 mm or a tube of 11 mm holds them up, wider ones do not. */
    @Test
    void a_piece_wider_than_tool_hose_or_tube_is_found_where_it_stops() {
        assertThat(lumps(0.038, 2e-3, 0.048)).isEmpty();
        assertThat(lumps(0.010, 2e-3, 0.048)).containsExactly("hose at A");
        assertThat(lumps(0.038, Math.PI / 4 * 0.008 * 0.008, 0.048)).containsExactly("tool nozzle at A");
        assertThat(lumps(0.038, 2e-3, 0.011)).containsExactly("run M");
    }

    private static List<String> lumps(double hose_m, double opening_m2, double bore_m) {
        Plant plant = new PlantSketch()
                .dust("granules", 0.012, 900)
                .hose("hose", hose_m, 5, 1e-4)
                .tool("nozzle", new Tool.Law.Opening(new Area(opening_m2), 0.9))
                .tube("T", bore_m, 4.5e-5)
                .inlet("A", "hose", "nozzle", 0, Optional.of("granules"), 1e-4)
                .run("M", "A", "REC", "T", 5, 0.5)
                .station("REC")
                .lobe("P", 0.05)
                .and()
                .plant();
        List<Finding> found = findings(plant).stream()
                .filter(f -> f.code() == FindingCode.LUMP)
                .toList();
        assertThat(found).allMatch(f -> !f.holds() && f.limit().si() == 0.012);
        return found.stream().map(f -> f.where().toString()).toList();
    }

    private static Finding find(Plant plant, FindingCode code, String piece) {
        return findings(plant).stream()
                .filter(f -> f.code() == code && f.where().id().equals(piece))
                .findFirst()
                .orElseThrow();
    }

    private static List<Finding> findings(Plant plant) {
        return Study.of(plant, List.of(PlantSketch.feeding(plant, "A")))
                .states()
                .get(0)
                .findings();
    }

    /** One user lifts sand 12 m through a tube of this bore, then it lies level. */
    private static Plant plant(double bore_m, Optional<Double> saltationFactor, Optional<Double> loadingRatio) {
        return new PlantSketch()
                .dust("sand", 5e-4, 2650)
                .tube("T", bore_m, 4.5e-5)
                .points("J")
                .inlet("A", "sand", 0.05)
                .riser("UP", "A", "J", "T", 12, 12)
                .run("M", "J", "REC", "T", 20, 0.5)
                .station("REC")
                .lobe("P", 0.1)
                .and()
                .askOfDust(saltationFactor, loadingRatio)
                .plant();
    }
}
