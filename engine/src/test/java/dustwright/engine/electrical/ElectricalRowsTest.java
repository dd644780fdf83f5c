package dustwright.engine.electrical;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.ComputedRows;
import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.cost.Energy;
import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.electrical.Enclosure.Exposure;
import dustwright.engine.electrical.Enclosure.Purge;
import dustwright.engine.electrical.MotorCircuit.Conductor;
import dustwright.engine.electrical.MotorCircuit.Device;
import dustwright.engine.electrical.MotorCircuit.MotorType;
import dustwright.engine.electrical.MotorEfficiency.Cooling;
import dustwright.engine.quantity.Units;
import dustwright.engine.reference.ReferenceTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every electrical row: tables to the digit, worked circuits and small figures. */
class ElectricalRowsTest {
    @Test
    void full_load_currents_are_the_printed_ones() {
        for (Row row : Reference.rows("electrical-nec-430-250.csv")) {
            for (int volts : new int[] {200, 208, 230, 460, 575}) {
                assertThat(MotorCurrent.tableFullLoad_A(row.value("motor_hp"), volts))
                        .as("%s at %s V", row, volts)
                        .isEqualTo(row.value("flc_" + volts + "V_A"));
            }
        }
    }

    @Test
    void ampacities_are_the_printed_ones_and_the_next_size_follows_them() {
        for (Row row : Reference.rows("electrical-nec-310-16-cu75.csv")) {
            double ampacity = row.value("ampacity_75C_cu_A");
            assertThat(MotorCircuit.conductor(ampacity))
                    .contains(new Conductor(row.text("size_AWG_or_kcmil"), ampacity));
        }
    }

    @Test
    void standard_ratings_are_the_printed_ones_and_the_smallest_are_fuses_only() {
        for (Row row : Reference.rows("electrical-nec-240-6-sizes.csv")) {
            double rating = row.value("standard_rating_A");
            assertThat(MotorCircuit.nextStandard_A(rating, Device.BREAKER)).isEqualTo(rating);
            assertThat(MotorCircuit.standardUpTo_A(rating, Device.BREAKER)).isEqualTo(rating);
        }
        assertThat(MotorCircuit.nextStandard_A(2, Device.FUSE)).isEqualTo(3);
        assertThat(MotorCircuit.nextStandard_A(2, Device.BREAKER)).isEqualTo(15);
    }

    @Test
    void short_circuit_percentages_are_the_printed_ones() {
        ReferenceTable bundled = ReferenceTable.bundled("electrical/short-circuit-percent.csv");
        for (Row row : Reference.rows("electrical-nec-430-52.csv")) {
            ReferenceTable.Row ours = bundled.row("motor", row.text("motor_type"));
            assertThat(ours.number("non_time_delay_fuse")).isEqualTo(row.value("nontime_delay_fuse_pct"));
            assertThat(ours.number("dual_element_fuse")).isEqualTo(row.value("dual_element_fuse_pct"));
            assertThat(ours.number("instantaneous_breaker")).isEqualTo(row.value("instantaneous_breaker_pct"));
            assertThat(ours.number("inverse_time_breaker")).isEqualTo(row.value("inverse_time_breaker_pct"));
        }
        for (MotorType type : MotorType.values()) {
            assertThat(MotorCircuit.of(50, 460, type).instantaneousTrip_A())
                    .as(type.words())
                    .isEqualTo(65 * bundled.row("motor", type.words()).number("instantaneous_breaker") / 100);
        }
    }

    static List<Row> circuits() {
        return Reference.rows("electrical-nec-motor-circuit.csv");
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void worked_circuits_come_out_as_printed(Row row) {
        MotorCircuit circuit = MotorCircuit.of(row.value("motor_hp"), (int) row.value("motor_V"), MotorType.DESIGN_B);
        row.assertClose("flc_A", circuit.fullLoad_A());
        row.assertClose("min_conductor_ampacity_A", circuit.leastAmpacity_A());
        assertThat(circuit.conductor().map(Conductor::size).orElse("parallel sets"))
                .isEqualTo(row.text("min_conductor_cu75C"));
        row.assertClose("max_nontime_fuse_std_A", circuit.nonTimeDelayFuse_A());
        row.assertClose("max_dual_element_fuse_std_A", circuit.dualElementFuse_A());
        row.assertClose("max_inverse_time_breaker_std_A", circuit.inverseTimeBreaker_A());
        row.assertClose("max_instantaneous_trip_1100pct_A", circuit.instantaneousTrip_A());
        row.assertClose("min_disconnect_A_115pct", circuit.leastDisconnect_A());
    }

    @Test
    void efficiencies_are_the_printed_ones() {
        for (Row row : Reference.rows("electrical-efficiency-nema-premium.csv")) {
            for (Cooling cooling : Cooling.values()) {
                for (int poles : new int[] {2, 4, 6}) {
                    String column = (cooling == Cooling.OPEN ? "open_" : "enclosed_") + poles + "pole_pct";
                    assertClose(
                            row + column,
                            100 * MotorEfficiency.premium(row.value("motor_hp"), cooling, poles),
                            row.value(column),
                            1e-12);
                }
            }
        }
        for (Row row : Reference.rows("electrical-efficiency-ie3-50hz.csv")) {
            for (int poles : new int[] {2, 4, 6}) {
                row.assertClose("pole" + poles + "_pct", 100 * MotorEfficiency.ie3(row.value("motor_kW"), poles));
            }
        }
        for (Row row : Reference.everyRow("equipment-table-motor-efficiency.csv")) {
            assertClose(
                    row.toString(),
                    100 * MotorEfficiency.act1992(row.value("hp")),
                    row.value("enclosed_4pole_1992_percent"),
                    1e-12);
            assertClose(
                    row.toString(),
                    100 * MotorEfficiency.premium(row.value("hp"), Cooling.ENCLOSED, 4),
                    row.value("enclosed_4pole_premium_percent"),
                    1e-12);
        }
    }

    @Test
    void enclosure_types_are_the_printed_ones() {
        for (Row row : Reference.rows("electrical-enclosures.csv")) {
            Enclosure type = Enclosure.ofType(row.text("nema_type"));
            assertThat(type.indoor()).isEqualTo(row.text("indoor").equals("yes"));
            assertThat(type.outdoor()).isEqualTo(row.text("outdoor").equals("yes"));
            assertThat(type.protectsAgainst()).isEqualTo(row.text("protects_against"));
            assertThat(type.leastIp()).isEqualTo(row.text("iec_ip_at_least"));
        }
    }

    @Test
    void every_area_class_has_a_route_that_says_what_does_not_do() {
        List<String> areas = Reference.everyRow("electrical-enclosure-vs-area.csv").stream()
                .map(row -> row.text("area"))
                .toList();
        for (AreaClass area : AreaClass.values()) {
            assertThat(areas).contains(area.words());
            assertThat(Enclosure.forArea(area).acceptable()).isNotEmpty();
            assertThat(Enclosure.forArea(area).notAcceptable()).isNotEmpty();
        }
    }

    /** IEC currents, overload percentages, purge types and instrument letters are remembered: printed beside ours, deciding nothing. */
    @Test
    void remembered_tables_are_printed_beside_ours() {
        for (Row row : Reference.everyRow("electrical-iec-motor-currents.csv")) {
            Reference.report(
                    row,
                    row.text("current_400V_A") + " A, ours " + MotorCurrent.guideAt400V_A(row.value("motor_kW"))
                            + " A");
        }
        for (Row row : Reference.everyRow("electrical-nec-overload.csv")) {
            Optional<Double> rise = row.has("nameplate_temp_rise_C")
                    ? Optional.of(row.value("nameplate_temp_rise_C"))
                    : Optional.empty();
            double factor = row.value("nameplate_service_factor");
            Reference.report(
                    row,
                    row.text("max_trip_pct_of_nameplate_A") + " %, ours "
                            + MotorCircuit.overloadTrip_A(100, factor, rise, false));
            Reference.report(
                    row,
                    row.text("relaxed_pct_if_motor_does_not_start") + " %, ours "
                            + MotorCircuit.overloadTrip_A(100, factor, rise, true));
        }
        for (Row row : Reference.everyRow("electrical-purge.csv").subList(0, 3)) {
            Purge purge = Purge.valueOf(row.text("type"));
            Reference.report(row, "ours " + purge.leastPressure_Pa() + " Pa, " + purge.onLossOfPressure());
        }
        for (Row row : Reference.everyRow("controls-isa51-letters.csv")) {
            Reference.report(row, row.text("reading") + ", ours " + Instrument.of(row.text("tag")));
        }
    }

    private static Map<String, Supplier<Object>> answers() {
        MotorCircuit hp25 = MotorCircuit.of(25, 460, MotorType.DESIGN_B);
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("EM-01", hp25::fullLoad_A);
        a.put("EM-02", hp25::leastAmpacity_A);
        a.put("EM-03", () -> hp25.conductor().orElseThrow().size() + " AWG");
        a.put("EM-04", hp25::inverseTimeBreaker_A);
        a.put("EM-05", hp25::dualElementFuse_A);
        a.put("EM-06", hp25::nonTimeDelayFuse_A);
        a.put("EM-07", () -> MotorCircuit.of(30, 460, MotorType.WOUND_ROTOR).nonTimeDelayFuse_A());
        a.put("EM-08", () -> MotorCircuit.feederAmpacity_A(34, 40, 40));
        a.put("EM-09", () -> MotorCircuit.feederDevice_A(110, Device.FUSE, 40, 40));
        a.put("EM-10", () -> MotorCircuit.overloadTrip_A(32, 1.15, Optional.empty(), false));
        a.put("EM-11", () -> MotorCircuit.overloadTrip_A(32, 1, Optional.of(80.0), false));
        a.put("EM-12", () -> MotorCircuit.of(50, 460, MotorType.DESIGN_B).leastDisconnect_A());
        a.put("EM-13", () -> MotorCurrent.input_W(20_500, 0.936) / 1000);
        a.put("EM-14", () -> MotorCurrent.fromPower_A(22_000, 400, 0.85, 0.93));
        a.put("EM-15", () -> whole(MotorRating.nextHorsepower(27.9 * Units.HORSEPOWER_W, 0.1)) + " hp");
        a.put("EM-16", () -> 30 * Units.HORSEPOWER_W / 1000);
        a.put("EM-17", () -> 100 * MotorEfficiency.premium(30, Cooling.ENCLOSED, 4));
        a.put("EM-18", () -> 100 * MotorEfficiency.premium(100, Cooling.OPEN, 2));
        a.put("EM-19", () -> Energy.annual_kWh(22_000, 0.936, 1, 4000));
        a.put(
                "EM-20",
                () -> Enclosure.forUnclassified(Exposure.HOSED_DOWN_CORROSIVE).type());
        a.put("EM-21", () -> Purge.of(1, false).name());
        a.put("EM-22", () -> Purge.of(2, false).name());
        a.put("EM-23", () -> MotorCurrent.voltageDrop_V(34, 0.778 / 304.8, 30.48));
        a.put("EM-24", () -> MotorCircuit.nextStandard_A(2.5 * 40, Device.BREAKER));
        a.put("EM-25", () -> MotorCurrent.starStart_A(6.5 * 41));
        a.put("EM-26", () -> "use the 460 V column: " + whole(MotorCurrent.tableFullLoad_A(10, 480)));
        return a;
    }

    private static String whole(double value) {
        return String.valueOf((int) value);
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("electrical-micro.csv", "case_id", answers());
    }
}
