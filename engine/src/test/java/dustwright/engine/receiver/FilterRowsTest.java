package dustwright.engine.receiver;

import dustwright.engine.ComputedRows;
import dustwright.engine.cost.CompressedAir;
import dustwright.engine.cost.Energy;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every row of the filter table; units of the rows are turned into SI and back here. */
class FilterRowsTest {
    private static final double FT_m = 0.3048;
    private static final double FPM_mPerS = FT_m / 60;
    private static final double INH2O_Pa = 249.089;
    private static final double PSI_Pa = 6894.757;
    private static final double CFM_m3PerS = 4.719474e-4;
    private static final double LB_kg = 0.45359237;
    private static final double GRAINS_kgPerM3 = 64.79891e-6 / (FT_m * FT_m * FT_m);
    private static final double LB_PER_FT2_kgPerM2 = LB_kg / (FT_m * FT_m);
    private static final double DRAG_PaSPerM = INH2O_Pa / FPM_mPerS;
    private static final double CAKE_perS = DRAG_PaSPerM / LB_PER_FT2_kgPerM2;

    private static double factorMethod(double a, double b, double fahrenheit, double grains, double micrometres) {
        return AirToCloth.pulseJet(a, b, (fahrenheit + 459.67) / 1.8, grains * GRAINS_kgPerM3, micrometres * 1e-6)
                        .velocity_mPerS()
                / FPM_mPerS;
    }

    private static double manualExampleDrop(double feetPerMinute, double psi) {
        double v = feetPerMinute * FPM_mPerS;
        double load = FilterDrop.load_kgPerM2(4 * GRAINS_kgPerM3, v, 600);
        return FilterDrop.pulseJet_Pa(v, psi * PSI_Pa, 15 * CAKE_perS, load) / INH2O_Pa;
    }

    private static final double SHELL_CLOTH_m2 = AirToCloth.bagCloth_m2(32, 0.15, 2.4);
    private static final double CUT_m = CyclonicInlet.cutSize_m(2.08e-5, 0.15, 8, 20, 1000, 0);

    private static Map<String, Supplier<Object>> answers() {
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("FLT-01", () -> factorMethod(9, 0.8, 325, 4, 7));
        a.put("FLT-02", () -> factorMethod(9, 0.8, 325, 4, 7) * FPM_mPerS);
        double tableRatio_mPerS = AirToCloth.tabulatedWoven_mPerS("Fly ash");
        a.put("FLT-03", () -> 50_000 * CFM_m3PerS / tableRatio_mPerS / (FT_m * FT_m));
        a.put("FLT-04", () -> AirToCloth.grossCloth_m2(20_000 * FT_m * FT_m) / (FT_m * FT_m));
        a.put("FLT-05", () -> factorMethod(15, 1, 70, 10, 50));
        a.put("FLT-06", () -> factorMethod(10, 0.9, 90, 20, 15));
        a.put("FLT-07", () -> factorMethod(9, 1, 100, 1, 1));
        a.put("FLT-08", () -> factorMethod(9, 1, 100, 1, 150));
        a.put("FLT-09", () -> factorMethod(12, 0.9, 70, 400, 40));
        a.put("FLT-10", () -> factorMethod(12, 0.9, 20, 5, 40));
        a.put("FLT-11", () -> FilterDrop.residual_Pa(5 * FPM_mPerS, 60 * PSI_Pa) / INH2O_Pa);
        a.put("FLT-12", () -> FilterDrop.residual_Pa(0.0254, 413_685));
        a.put("FLT-13", () -> FilterDrop.load_kgPerM2(4 * GRAINS_kgPerM3, 5 * FPM_mPerS, 600) / LB_PER_FT2_kgPerM2);
        a.put("FLT-14", () -> manualExampleDrop(5, 60));
        a.put(
                "FLT-15",
                () -> FilterDrop.drop_Pa(4 * FPM_mPerS, 0.3 * DRAG_PaSPerM, 10 * CAKE_perS, 0.05 * LB_PER_FT2_kgPerM2)
                        / INH2O_Pa);
        a.put("FLT-16", () -> FilterDrop.drop_Pa(FPM_mPerS, DRAG_PaSPerM, 0, 0) / FPM_mPerS);
        a.put("FLT-17", () -> FilterDrop.drop_Pa(FPM_mPerS, 0, CAKE_perS, 1) / FPM_mPerS);
        a.put("FLT-18", () -> FilterDrop.load_kgPerM2(GRAINS_kgPerM3, 0.1, 10) * 1000);
        a.put("FLT-19", () -> Energy.airPower_W(CFM_m3PerS, INH2O_Pa, 0.65) / 1000);
        a.put(
                "FLT-20",
                () -> Energy.annual_kWh(Energy.airPower_W(50_000 * CFM_m3PerS, 10.3 * INH2O_Pa, 0.65), 1, 1, 8640));
        a.put("FLT-21", () -> AirToCloth.bagCloth_m2(1, 0.1524, 3.048) / (FT_m * FT_m));
        a.put("FLT-22", () -> AirToCloth.bagCloth_m2(100, 0.1524, 3.048) / (FT_m * FT_m));
        a.put("FLT-23", () -> AirToCloth.canVelocity_mPerS(1, 1.5));
        a.put("FLT-24", () -> AirToCloth.interstitialVelocity_mPerS(1, 1.5, 32, 0.15));
        a.put("FLT-25", () -> AirToCloth.velocity_mPerS(1, SHELL_CLOTH_m2));
        a.put(
                "FLT-26",
                () -> AirToCloth.actualFlow_m3PerS(500 * CFM_m3PerS, 29.92 * 3386.389, 17.92 * 3386.389) / CFM_m3PerS);
        a.put(
                "FLT-27",
                () -> 1e6 * AfterFilter.penetration(AfterFilter.ofClass("H13").integral()));
        a.put(
                "FLT-28",
                () -> 1e6 * AfterFilter.penetration(AfterFilter.ofClass("H14").integral()));
        a.put("FLT-29", () -> AfterFilter.penetration(0.999, 0.9995));
        a.put("FLT-30", () -> CompressedAir.usualPulseAir_m3PerS(2000 * CFM_m3PerS) / CFM_m3PerS);
        a.put("FLT-31", () -> CyclonicInlet.LAPPLE_TURNS);
        a.put("FLT-32", () -> CUT_m * 1e6);
        a.put("FLT-33", () -> CyclonicInlet.gradeEfficiency(CUT_m, 10e-6));
        a.put("FLT-34", () -> 1e6 * CyclonicInlet.cutSize_m(0.075 / 3600, 0.25, 6, 20, 1600, 1.01));
        a.put("FLT-35", () -> CyclonicInlet.velocityHeads(CyclonicInlet.SHEPHERD_LAPPLE_K, 0.5, 0.25, 0.5));
        a.put("FLT-36", () -> CyclonicInlet.drop_Pa(8, 1.01, 20));
        a.put("FLT-37", () -> fahrenheit(FilterMedium.named("polyester").continuous_K()));
        a.put("FLT-38", () -> fahrenheit(FilterMedium.named("polypropylene").continuous_K()));
        a.put("FLT-39", () -> manualExampleDrop(4.6892, 100));
        return a;
    }

    private static double fahrenheit(double kelvin) {
        return kelvin * 1.8 - 459.67;
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-filters.csv", "id", answers());
    }
}
