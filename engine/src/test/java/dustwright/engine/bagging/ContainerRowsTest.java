package dustwright.engine.bagging;

import dustwright.engine.ComputedRows;
import dustwright.engine.bagging.BagSupport.Use;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every row of the container table. */
class ContainerRowsTest {
    private static final double INCH_m = 0.0254;
    private static final double FT3_m3 = 0.3048 * 0.3048 * 0.3048;
    private static final double LB_kg = 0.45359237;
    private static final double LB_PER_FT3_kgPerM3 = LB_kg / FT3_m3;
    private static final double CFM_m3PerS = 4.719474e-4;
    private static final double BAG_m3 = 35.45 * FT3_m3;

    private static double bag(double side_in, double height_in) {
        return BagFill.bagVolume_m3(side_in * INCH_m, side_in * INCH_m, height_in * INCH_m);
    }

    private static double drums() {
        return BagFill.drumsPerBag(bag(35, 50), BagFill.DRUM_55_GALLON_m3);
    }

    private static Map<String, Supplier<Object>> answers() {
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("CNT-01", () -> bag(35, 35) / FT3_m3);
        a.put("CNT-02", () -> bag(35, 50) / FT3_m3);
        a.put("CNT-03", () -> bag(35, 50));
        a.put("CNT-04", () -> BagSupport.breakingLoad_kg(Use.SINGLE_TRIP, 1000));
        a.put("CNT-05", () -> BagSupport.breakingLoad_kg(Use.STANDARD_REUSABLE, 1000));
        a.put(
                "CNT-06",
                () -> BagFill.fill(BAG_m3, 60 * LB_PER_FT3_kgPerM3, 2200 * LB_kg)
                                .mass_kg()
                        / LB_kg);
        a.put(
                "CNT-07",
                () -> BagFill.fill(BAG_m3, 94 * LB_PER_FT3_kgPerM3, 2200 * LB_kg)
                                .volume_m3()
                        / BAG_m3);
        double loadOfBag_kg = BagFill.fill(1.2, 1600, 2200 * LB_kg).mass_kg();
        a.put("CNT-08", () -> loadOfBag_kg / (50 * LB_kg));
        a.put("CNT-09", () -> BagFill.DRUM_55_GALLON_m3 / FT3_m3);
        a.put("CNT-10", () -> BagFill.DRUM_55_GALLON_m3);
        a.put("CNT-11", () -> BagFill.drumVolume_m3(22.5 * INCH_m, 33.5 * INCH_m) / BagFill.gallons_m3(1));
        a.put("CNT-12", () -> BagFill.containers(bag(35, 50), BagFill.DRUM_55_GALLON_m3, 1));
        a.put("CNT-13", () -> drums());
        a.put("CNT-14", () -> BagFill.gallons_m3(30) / FT3_m3);
        a.put("CNT-15", () -> BagAir.displaced_m3PerS(3000 / 3600.0, 500) * 3600);
        a.put("CNT-16", () -> BagAir.sockArea_m2(20 * CFM_m3PerS, 3 * 0.3048 / 60) / (0.3048 * 0.3048));
        a.put("CNT-17", () -> 1 / BagFill.settled_m3(1, 75 * LB_PER_FT3_kgPerM3, 94 * LB_PER_FT3_kgPerM3));
        a.put("CNT-18", () -> BagFill.probeHeight_m(1000, 961, 0.79));
        a.put(
                "CNT-19",
                () -> BagFill.changeInterval_s(BagFill.fill(1, 500, 1000).mass_kg(), 300 / 3600.0) / 3600);
        a.put("CNT-20", () -> BagAir.drawnByPockets_m3PerS(0.0113, 20 / 60.0) * 3600);
        return a;
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-containers.csv", "id", answers());
    }
}
