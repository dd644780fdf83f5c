package dustwright.engine.tubing;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.ComputedRows;
import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.quantity.OutOfRangeException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Tube as it is bought: every row of the tubing table, the gauges and the roughness of walls. */
class TubingRowsTest {
    private static final double INCH_m = 0.0254;
    /** Area, velocity, radius ratio are plain divisions; the weight of a gauge (TUB-18) says how the table was made. */
    private static final Set<String> PLAIN_DIVISIONS = Set.of("TUB-10", "TUB-11", "TUB-14", "TUB-18");

    private static double bore_in(double outside_in, int gauge) {
        return TubeStock.bore_m(outside_in * INCH_m, TubeGauge.TUBE.thickness_m(gauge)) / INCH_m;
    }

    private static double relative(String material, String condition, double bore_m) {
        return WallRoughness.of(material, condition).greatest_m() / bore_m;
    }

    private static Map<String, Supplier<Object>> answers() {
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("TUB-01", () -> bore_in(1.5, 16));
        a.put("TUB-02", () -> bore_in(2, 16));
        a.put("TUB-03", () -> bore_in(2.5, 16));
        a.put("TUB-04", () -> bore_in(3, 16));
        a.put("TUB-05", () -> bore_in(3.5, 16));
        a.put("TUB-06", () -> bore_in(4, 16));
        a.put("TUB-07", () -> bore_in(5, 14));
        a.put("TUB-08", () -> bore_in(6, 14));
        a.put("TUB-09", () -> bore_in(8, 12));
        a.put("TUB-12", () -> TubeStock.mass_kgPerM(4 * INCH_m, TubeGauge.TUBE.thickness_m(16), 7850));
        a.put("TUB-13", () -> TubeStock.bendLength_m(24 * INCH_m, Math.PI / 2) / INCH_m);
        a.put("TUB-15", () -> TubeGauge.TUBE.thickness_m(16) / INCH_m);
        a.put("TUB-16", () -> TubeGauge.SHEET.thickness_m(16) / INCH_m);
        a.put("TUB-17", () -> TubeGauge.GALVANIZED_SHEET.thickness_m(16) / INCH_m);
        a.put("TUB-19", () -> relative("steel", "commercial pipe, new", bore_in(4, 16) * INCH_m));
        a.put("TUB-20", () -> relative("rubber", "smoothed", 0.0381));
        a.put("TUB-21", () -> TubeStock.couplings(137 * 0.3048, 20 * 0.3048));
        return a;
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-tubing.csv", "id", answers(), PLAIN_DIVISIONS);
    }

    @Test
    void gauges_are_the_tabulated_ones_for_tube_and_each_sheet() {
        for (Row row : Reference.everyRow("equipment-table-gauges.csv")) {
            int gauge = (int) row.value("gauge");
            assertClose("tube", TubeGauge.TUBE.thickness_m(gauge) / INCH_m, row.value("tube_bwg_in"), 1e-12);
            assertClose("sheet", TubeGauge.SHEET.thickness_m(gauge) / INCH_m, row.value("sheet_msg_in"), 1e-12);
            assertClose(
                    "galvanized",
                    TubeGauge.GALVANIZED_SHEET.thickness_m(gauge) / INCH_m,
                    row.value("galvanized_sheet_in"),
                    1e-12);
            assertClose(
                    "stainless",
                    TubeGauge.STAINLESS_SHEET.thickness_m(gauge) / INCH_m,
                    row.value("stainless_sheet_in"),
                    1e-12);
        }
        assertThatThrownBy(() -> TubeGauge.TUBE.thickness_m(15)).hasMessageContaining("it holds: 10, 11, 12");
    }

    @Test
    void roughness_is_the_tabulated_one_and_ribbed_hose_has_none() {
        List<Row> rows = Reference.everyRow("equipment-table-roughness.csv").stream()
                .filter(row -> row.has("eps_mm"))
                .toList();
        List<WallRoughness> walls = WallRoughness.all();
        assertThat(walls).hasSameSizeAs(rows);
        for (int n = 0; n < rows.size(); n++) {
            Row row = rows.get(n);
            WallRoughness wall = walls.get(n);
            assertThat(wall.material()).isEqualTo(row.text("material"));
            assertThat(wall.condition()).isEqualTo(row.text("condition"));
            String[] ends = row.text("eps_mm").split("-", -1);
            assertClose(wall.toString(), wall.least_m() * 1000, Double.parseDouble(ends[0]), 1e-12);
            assertClose(wall.toString(), wall.greatest_m() * 1000, Double.parseDouble(ends[ends.length - 1]), 1e-12);
        }
        assertThatThrownBy(() -> WallRoughness.of("hose", "helically ribbed inside"))
                .hasMessageContaining("no tabulated roughness");
    }

    @Test
    void a_wall_as_thick_as_half_the_tube_is_refused() {
        assertThatThrownBy(() -> TubeStock.bore_m(0.05, 0.025)).isInstanceOf(OutOfRangeException.class);
    }
}
