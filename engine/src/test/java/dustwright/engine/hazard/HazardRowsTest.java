package dustwright.engine.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.ComputedRows;
import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.bagging.BagFill;
import dustwright.engine.hazard.BagType.LinerType;
import dustwright.engine.hazard.BagType.Surroundings;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Units;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Classes, steps, limits and small cases of the published tables. */
class HazardRowsTest {
    private static final double BAR_Pa = 100_000;
    private static final double ZERO_CELSIUS_K = 273.15;

    static List<Row> stClasses() {
        return Reference.everyRow("hazard-st-class.csv");
    }

    static List<Row> steps() {
        return Reference.everyRow("hazard-mie-precautions.csv");
    }

    static List<Row> bags() {
        return Reference.everyRow("hazard-fibc-selection.csv");
    }

    static List<Row> liners() {
        return Reference.everyRow("hazard-fibc-liner.csv");
    }

    static List<Row> resistances() {
        return Reference.everyRow("hazard-grounding-limits.csv");
    }

    static List<Row> surfaces() {
        return Reference.everyRow("hazard-surface-temperature.csv");
    }

    static List<Row> layers() {
        return Reference.everyRow("hazard-housekeeping-layer.csv");
    }

    static List<Row> severities() {
        return Reference.everyRow("hazard-dusts.csv").stream()
                .filter(row -> row.text("row_kind").equals("severity"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("stClasses")
    void a_class_by_explosion_constant(Row row) {
        StClass st = StClass.of(row.value("Kst_bar_m_per_s") * BAR_Pa);
        assertThat(st.written()).isEqualTo(row.text("St_class"));
        assertThat(st.words()).isEqualTo(row.text("wording"));
    }

    /** The class a table prints follows from the constant it prints. */
    @ParameterizedTest
    @MethodSource("severities")
    void every_published_dust_has_the_class_of_its_constant(Row row) {
        assertThat(StClass.of(row.value("Kst_bar_m_per_s") * BAR_Pa).written()).isEqualTo("St " + row.text("St_class"));
    }

    @ParameterizedTest
    @MethodSource("steps")
    void steps_begin_at_their_ignition_energy(Row row) {
        double mie_J = row.value("MIE_mJ") / 1000;
        MieStep step = step(row.text("expected_step"));
        row.judge(() -> assertThat(MieStep.of(mie_J).contains(step))
                .as("%s at %s", step, row)
                .isEqualTo(!row.text("expected_step").startsWith("below 30: NFPA 660 asks")));
    }

    private static MieStep step(String told) {
        String limit = told.replaceAll("^(at or below|above|below) ([0-9]+).*", "$2");
        return switch (limit) {
            case "500" -> told.startsWith("above") ? MieStep.BONDING : MieStep.GROUND_PLANT;
            case "100" -> MieStep.GROUND_PEOPLE;
            case "30" -> MieStep.VERIFY_PATH;
            case "25" -> MieStep.MOST_IGNITIONS;
            case "10" -> MieStep.PLASTICS;
            case "3" -> MieStep.NO_TYPE_B;
            case "1" -> MieStep.LIKE_GAS;
            default -> throw new IllegalArgumentException(told);
        };
    }

    @Test
    void above_500_mJ_bonding_alone_is_left() {
        assertThat(MieStep.of(0.6)).containsExactly(MieStep.BONDING);
        assertThat(MieStep.of(Math.nextDown(1e-3))).hasSize(MieStep.values().length);
    }

    @ParameterizedTest
    @MethodSource("bags")
    void bag_types_by_ignition_energy_and_surroundings(Row row) {
        Surroundings around = switch (row.text("surroundings")) {
            case "non_flammable" -> Surroundings.NON_FLAMMABLE;
            case "dust_zone_21_22_MIE_3_to_1000" -> Surroundings.DUST_ZONE;
            default -> Surroundings.GAS_OR_SENSITIVE_DUST;
        };
        assertThat(letters(BagType.permitted(row.value("MIE_mJ") / 1000, around)))
                .isEqualTo(row.text("permitted_types"));
    }

    private static String letters(Set<BagType> types) {
        return types.stream().map(BagType::name).collect(Collectors.joining(" "));
    }

    /** That of type D was read. */
    @ParameterizedTest
    @MethodSource("liners")
    void liners_by_bag_type(Row row) {
        Set<LinerType> ours = BagType.valueOf(row.text("fibc_type")).liners();
        List<LinerType> theirs = Stream.of(LinerType.L1, LinerType.L2, LinerType.L3)
                .filter(liner -> row.text("liner_" + liner).equals("yes"))
                .toList();
        row.judge(() -> assertThat(ours).containsExactlyElementsOf(theirs));
        assertThat(ours).doesNotContain(LinerType.PLAIN);
    }

    @ParameterizedTest
    @MethodSource("resistances")
    void greatest_resistances(Row row) {
        double ours = switch (row.number()) {
            case 1 -> Bonding.METAL_PART.limit_ohm();
            case 2 -> Bonding.METAL_JOINT.limit_ohm();
            case 3 -> Bonding.BAG_TYPE_C.limit_ohm();
            case 4 -> Bonding.PERSON.limit_ohm();
            case 5 -> Bonding.CONNECTOR.limit_ohm();
            case 6 -> Bonding.CONDUCTIVE_HOSE_PER_METRE.limit_ohm();
            case 7 -> Bonding.DISSIPATIVE_HOSE_PER_METRE.limit_ohm();
            default -> row.value("limit_ohm"); // surface resistances of liner L2, in words only
        };
        row.judge(() -> assertThat(ours).as(row.text("item")).isEqualTo(row.value("limit_ohm")));
    }

    @ParameterizedTest
    @MethodSource("layers")
    void depth_of_settled_dust_by_its_bulk_density(Row row) {
        if (row.text("case_id").equals("LD-5")) {
            depth(row, CloudLaws.GRAIN_LAYER_m);
            return;
        }
        Density bulk = new Density(
                Units.find("lb/ft3", Dimension.DENSITY).orElseThrow().toSi(row.value("bulk_density_lb_per_ft3")));
        depth(row, CloudLaws.layerDepth_m(bulk.kgPerCubicMetre()));
    }

    private static void depth(Row row, double ours_m) {
        row.judge(() -> row.assertClose("expected_threshold_mm", ours_m * 1000));
        row.judge(() -> row.assertClose("expected_threshold_in", ours_m / 0.0254));
    }

    @ParameterizedTest
    @MethodSource("surfaces")
    void greatest_surface_temperatures(Row row) {
        double cloud =
                SurfaceLimit.byCloud_K(ZERO_CELSIUS_K + (row.text("case_id").equals("ST-4") ? 400 : 480));
        double layer = SurfaceLimit.byLayer_K(ZERO_CELSIUS_K + 360);
        switch (row.text("case_id")) {
            case "ST-1" -> celsius(row, cloud);
            case "ST-2" -> celsius(row, layer);
            case "ST-3", "ST-4" -> celsius(row, Math.min(cloud, layer));
            case "ST-5" -> celsius(row, SurfaceLimit.organic_K(ZERO_CELSIUS_K + 220));
            case "ST-6" -> celsius(row, SurfaceLimit.organic_K(ZERO_CELSIUS_K + 150));
            case "ST-7" -> celsius(row, SurfaceLimit.fireCode_K(ZERO_CELSIUS_K + 360));
            case "ST-8" ->
                assertThat(SurfaceLimit.temperatureCode(ZERO_CELSIUS_K + 165))
                        .hasValueSatisfying(code ->
                                assertThat(row.text("expected_max_surface_C")).isEqualTo(code + " (165)"));
            default -> throw new IllegalArgumentException("no answer for " + row);
        }
    }

    private static void celsius(Row row, double surface_K) {
        row.judge(() -> row.assertClose("expected_max_surface_C", surface_K - ZERO_CELSIUS_K, 1e-9));
    }

    @TestFactory
    Stream<DynamicTest> small_cases() {
        Map<String, Supplier<Object>> answers = new HashMap<>();
        answers.put("HM-01", () -> CloudLaws.kst_PaMPerS(500 * BAR_Pa, 0.02) / BAR_Pa);
        answers.put("HM-02", () -> CloudLaws.kst_PaMPerS(150 * BAR_Pa, 1) / BAR_Pa);
        answers.put("HM-03", () -> CloudLaws.rise_PaPerS(150 * BAR_Pa, 8) / BAR_Pa);
        answers.put("HM-04", () -> StClass.of(205 * BAR_Pa).written());
        answers.put("HM-05", () -> 0.045 * 28.349523125 / (0.3048 * 0.3048 * 0.3048));
        answers.put("HM-06", () -> dustInAir(200, 500, 60));
        answers.put("HM-07", () -> CloudLaws.DESIGN_SHARE * 60);
        answers.put("HM-08", () -> CloudLaws.leastAir_m3PerS(2, 0.06, 0.25));
        answers.put("HM-09", () -> VentEn14491.area_m2(4.5, 200 * BAR_Pa, 9 * BAR_Pa, 0.1 * BAR_Pa, 0.4 * BAR_Pa, 1));
        answers.put("HM-10", () -> VentNfpa68.area_m2(4.5, 200 * BAR_Pa, 9 * BAR_Pa, 0.1 * BAR_Pa, 0.4 * BAR_Pa, 1));
        answers.put("HM-20", () -> BagFill.fill(1.2 * 0.95, 550, 1000).mass_kg());
        answers.put("HM-21", () -> BagFill.fill(1.2 * 0.95, 1100, 1000).mass_kg());
        answers.put("HM-22", () -> verdict(5e7));
        answers.put("HM-23", () -> CloudLaws.spark_J(100e-12, 10e3) * 1000);
        answers.put("HM-24", () -> CloudLaws.spark_J(20e-12, 15e3) * 1000);
        answers.put("HM-25", () -> CloudLaws.spark_J(200e-12, 10e3) * 1000);
        answers.put("HM-26", () -> CloudLaws.layerDepth_m(30 * 16.01846337) * 1000);
        answers.put("HM-27", () -> CloudLaws.relaxation_s(1e6, 100e-12));
        Set<String> inWords = Set.of("HM-11", "HM-12", "HM-13", "HM-14", "HM-15", "HM-16", "HM-17", "HM-18", "HM-19");
        return ComputedRows.tests("hazard-micro.csv", "case_id", answers, inWords);
    }

    private static String dustInAir(double dust_kgPerH, double air_m3PerH, double mec_gPerM3) {
        double carried_gPerM3 = 1000 * CloudLaws.concentration_kgPerM3(dust_kgPerH, air_m3PerH);
        return Math.round(carried_gPerM3) + " g/m3 -> " + (carried_gPerM3 >= mec_gPerM3 ? "above" : "below") + " MEC";
    }

    private static String verdict(double measured_ohm) {
        return (measured_ohm < Bonding.BAG_TYPE_C.limit_ohm() ? "pass" : "fail") + " under 2018, "
                + (measured_ohm < Bonding.BAG_TYPE_C_STRICT.limit_ohm() ? "pass" : "fail") + " under 2012";
    }

    static List<Row> areas() {
        return Reference.everyRow("hazard-area-classes.csv");
    }

    /** Definitions of zones, groups of dusts, and the places of our equipment. */
    @ParameterizedTest
    @MethodSource("areas")
    void zones_groups_and_places(Row row) {
        switch (row.number()) {
            case 1 -> zone(row, DustZone.ZONE_20);
            case 2 -> zone(row, DustZone.ZONE_21);
            case 3 -> zone(row, DustZone.ZONE_22);
            case 4 -> group(row, DustFamily.ALUMINIUM, true);
            case 5 -> group(row, DustFamily.CARBONACEOUS, true);
            case 6 -> group(row, DustFamily.ORGANIC, false);
            case 7 -> group(row, DustFamily.FLYINGS, false);
            case 8 -> place(row, DustZone.At.FILLING);
            case 9 -> place(row, DustZone.At.AROUND_FILLING);
            case 10 -> place(row, DustZone.At.CLEAN_SIDE);
            case 11 -> place(row, DustZone.At.VALVE);
            default -> throw new IllegalArgumentException("no answer for " + row);
        }
    }

    private static void zone(Row row, DustZone zone) {
        assertThat(zone.written()).isEqualTo(row.text("iec_atex"));
        assertThat(zone.meaning()).isEqualTo(row.text("statement"));
        assertThat(zone.equipment()).isEqualTo(row.text("equipment_category_or_epl"));
        assertThat(row.text("nec").replace("Div ", "Division "))
                .startsWith(zone.american(List.of(of(DustFamily.ORGANIC))));
        assertThat(zone.american(List.of(of(DustFamily.IRON)))).isEqualTo("Class II Division 1");
        assertThat(zone.american(List.of(DustCard.UNKNOWN))).isEqualTo("Class II Division 1");
    }

    private static void group(Row row, DustFamily family, boolean conducts) {
        row.judge(() -> {
            assertThat(family.necGroup())
                    .hasValueSatisfying(nec -> assertThat(nec).contains(row.text("nec")));
            assertThat(row.text("iec_atex")).contains(family.iecGroup(conducts));
        });
    }

    private static DustCard of(DustFamily family) {
        DustCard none = DustCard.UNKNOWN;
        return new DustCard(
                Optional.of(family),
                none.kst(),
                none.greatest(),
                none.ignition(),
                none.cloud(),
                none.layer(),
                none.explosible(),
                none.conductive(),
                none.food(),
                none.toxic(),
                Optional.of(false),
                none.hygiene(),
                Optional.of(new Length(30e-6)),
                Optional.of(new Ratio(0.03)),
                none.sample(),
                none.severity(),
                none.sensitivity(),
                Optional.of("an invented reason"),
                none.report(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** Fibres have a class of their own; beside another dust both hold. */
    @Test
    void places_of_fibres_are_class_iii() {
        DustCard fibres = of(DustFamily.FLYINGS);
        assertThat(DustZone.ZONE_20.american(List.of(fibres))).isEqualTo("Class III Division 1");
        assertThat(DustZone.ZONE_22.american(List.of(fibres))).isEqualTo("Class III Division 2");
        assertThat(DustZone.ZONE_22.american(List.of(of(DustFamily.ORGANIC), fibres)))
                .isEqualTo("Class II Division 2 and Class III Division 2");
        assertThat(DustZone.ZONE_22.american(List.of(of(DustFamily.ALUMINIUM), fibres)))
                .isEqualTo("Class II Division 1 and Class III Division 2");
    }

    private static void place(Row row, DustZone.At place) {
        assertThat(place.zone().written()).isEqualTo(row.text("iec_atex"));
        assertThat(place.zone().equipment()).startsWith(row.text("equipment_category_or_epl"));
    }

    /** Rows HM-11 to HM-15. */
    @Test
    void outside_its_range_an_equation_gives_no_number() {
        refusedByNfpa("L/D", new Explosion(8, 150e5, 9e5, 0.1e5, 0.4e5, 8));
        refusedByEn("Pred", new Explosion(8, 150e5, 9e5, 0.02e5, 0.05e5, 1));
        refusedByEn("Kst", new Explosion(8, 850e5, 9e5, 0.1e5, 0.4e5, 1));
        refusedByNfpa("Kst", new Explosion(8, 850e5, 9e5, 0.1e5, 0.4e5, 1));
        refusedByEn("Pred", new Explosion(8, 150e5, 9e5, 0.1e5, 0.1e5, 1));
        refusedByNfpa("Pred", new Explosion(8, 150e5, 9e5, 0.1e5, 0.1e5, 1));
        refusedByEn("Pmax", new Explosion(8, 508e5, 17.5e5, 0.1e5, 0.4e5, 1));
        assertThat(VentEn14491.area_m2(new Explosion(8, 150e5, 9e5, 0.05e5, 0.4e5, 1)))
                .as("Pstat below 0.1 bar counts as 0.1 bar")
                .isEqualTo(VentEn14491.area_m2(new Explosion(8, 150e5, 9e5, 0.1e5, 0.4e5, 1)));
    }

    private static void refusedByEn(String symbol, Explosion e) {
        assertThatThrownBy(() -> VentEn14491.area_m2(e))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining(symbol);
    }

    private static void refusedByNfpa(String symbol, Explosion e) {
        assertThatThrownBy(() -> VentNfpa68.area_m2(e))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining(symbol);
    }

    /** Rows HM-16 to HM-19. */
    @Test
    void bag_types_at_the_edges_of_their_table() {
        assertThat(letters(BagType.permitted(25e-3, Surroundings.GAS_OR_SENSITIVE_DUST)))
                .isEqualTo("C D");
        assertThat(letters(BagType.permitted(3e-3, Surroundings.NON_FLAMMABLE))).isEqualTo("C D");
        assertThat(letters(BagType.permitted(3.1e-3, Surroundings.NON_FLAMMABLE)))
                .isEqualTo("B C D");
        assertThat(BagType.permitted(1, Surroundings.GAS_IIC)).isEmpty();
        assertThat(BagType.permitted(0.1e-3, Surroundings.NON_FLAMMABLE)).isEmpty();
    }

    @Test
    void what_must_not_be_collected_together() {
        assertThat(DustFamily.ALUMINIUM.apartFrom(DustFamily.RUST))
                .hasValueSatisfying(why -> assertThat(why).contains("thermite"));
        assertThat(DustFamily.ORGANIC.apartFrom(DustFamily.OXIDIZER)).isPresent();
        assertThat(DustFamily.ORGANIC.apartFrom(DustFamily.MINERAL)).isEmpty();
        for (DustFamily one : DustFamily.values()) {
            assertThat(one.apartFrom(one)).isEmpty();
            Arrays.stream(DustFamily.values())
                    .forEach(other -> assertThat(one.apartFrom(other)).isEqualTo(other.apartFrom(one)));
        }
    }
}
