package dustwright.engine.receiver;

import dustwright.engine.ComputedRows;
import dustwright.engine.receiver.HopperOutlet.Shape;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every row of the receiver table. */
class ReceiverRowsTest {
    private static final double PSI_Pa = 6894.757;
    private static final double INCH_m = 0.0254;
    private static final double STEEL_Pa = 200e9;

    private static double outlet(Shape shape, double degrees, double kilopascal, double density) {
        return HopperOutlet.archingOutlet_m(shape, Math.toRadians(degrees), kilopascal * 1000, density, 9.81);
    }

    private static Map<String, Supplier<Object>> answers() {
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("RCV-01", () -> HopperOutlet.criticalStrength_Pa(1, 0.68, 1.4) / 1000);
        a.put("RCV-02", () -> outlet(Shape.CONE, 35, 2.043, 1800));
        a.put("RCV-03", () -> outlet(Shape.SLOT, 35, 2.043, 1800));
        a.put("RCV-04", () -> outlet(Shape.CONE, 29.5, 1.82, 900));
        a.put("RCV-05", () -> outlet(Shape.SLOT, 29.5, 1.82, 900));
        a.put("RCV-06", () -> HopperOutlet.beverloo_kgPerS(0.58, 1.4, 800, 0.2, 0.003, 9.81));
        a.put("RCV-07", () -> HopperOutlet.johanson_kgPerS(Shape.CONE, Math.toRadians(20), 0.3, 0.3, 800, 9.81));
        a.put("RCV-08", () -> HopperOutlet.beverloo_kgPerS(0.58, 1.4, 800, 0.004, 0.003, 9.81));
        a.put("RCV-09", () -> HoldUp.workingVolume_m3(1.2, 0.25, 0.9, 0));
        a.put("RCV-10", () -> HoldUp.workingVolume_m3(1.2, 0.25, 0.9, 0.8));
        a.put(
                "RCV-11",
                () -> HoldUp.timeToHighLevel_s(HoldUp.workingVolume_m3(1.2, 0.25, 0.9, 0.8), 500, 300 / 3600.0) / 3600);
        a.put("RCV-12", () -> ShellBuckling.longTube_Pa(29e6 * PSI_Pa, 0.29, 13.5 * INCH_m, 0.375 * INCH_m) / PSI_Pa);
        a.put("RCV-13", () -> ShellBuckling.longTube_Pa(STEEL_Pa, 0.3, 1, 0.01) / 1e6);
        a.put("RCV-14", () -> ShellBuckling.windenbergTrilling_Pa(STEEL_Pa, 0.3, 1.2, 0.003, 1.8));
        a.put(
                "RCV-15",
                () -> ShellBuckling.allowedVacuum_Pa(
                                ShellBuckling.collapse(STEEL_Pa, 0.3, 1.2, 0.003, 1.8)
                                        .pressure_Pa(),
                                ShellBuckling.USUAL_FACTOR)
                        / 3386.389);
        a.put("RCV-16", () -> ShellBuckling.roarkShort_Pa(STEEL_Pa, 0.3, 1.2, 0.003, 1.8));
        a.put("RCV-17", () -> PowderFlow.ofRepose(Math.toRadians(38)).words());
        a.put("RCV-18", () -> PowderFlow.hausner(500, 650));
        a.put("RCV-19", () -> PowderFlow.carr(500, 650) * 100);
        return a;
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-receivers.csv", "id", answers());
    }
}
