package dustwright.engine.producer;

import dustwright.engine.ComputedRows;
import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.cost.Energy;
import dustwright.engine.producer.Machine.LobePump;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Volume;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every row of the blower table, on the model machine of those rows; its mechanical loss is 2 kW. */
class BlowerRowsTest {
    private static final double INHG_Pa = 3386.389;
    private static final double ATMOSPHERE_Pa = 101_325;
    private static final double RT_JPerKg = 287.05 * 293.15;
    private static final double FULL_perS = 30;
    private static final LobePump PUMP =
            new LobePump(new Volume(0.010), RotationalSpeed.ofRpm(150), 1, new Power(2000));

    private static double inlet_Pa(double vacuum_inHg) {
        return ATMOSPHERE_Pa - vacuum_inHg * INHG_Pa;
    }

    private static double flow(double vacuum_inHg, double speed_perS) {
        return PUMP.inletFlow_m3PerS(vacuum_inHg * INHG_Pa, inlet_Pa(vacuum_inHg) / RT_JPerKg, speed_perS);
    }

    private static double rise(double vacuum_inHg, double speed_perS) {
        double volumetric = flow(vacuum_inHg, speed_perS) / flow(0, speed_perS);
        // the row's specific heat, 1005 J/(kg K), is R γ/(γ−1) within 0.03 %
        return DisplacementWork.lobeRise_K(293.15, ATMOSPHERE_Pa / inlet_Pa(vacuum_inHg), volumetric);
    }

    private static double shaft_W() {
        return PUMP.shaftPower_W(12 * INHG_Pa, inlet_Pa(12) / RT_JPerKg, FULL_perS);
    }

    private static Map<String, Supplier<Object>> answers() {
        double hot = (150 + 459.67) / (68 + 459.67);
        double mountain_Pa = StandardAtmosphere.pressure_Pa(1524);
        double slower = 3000 / 3550.0;
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("BLW-01", () -> inlet_Pa(12));
        a.put("BLW-02", () -> flow(0, FULL_perS));
        a.put("BLW-03", () -> 60 * PUMP.slip_perS(12 * INHG_Pa, inlet_Pa(12) / RT_JPerKg));
        a.put("BLW-04", () -> flow(12, FULL_perS));
        a.put("BLW-05", () -> flow(12, FULL_perS) / flow(0, FULL_perS));
        a.put("BLW-06", () -> PUMP.airPower_W(12 * INHG_Pa, inlet_Pa(12) / RT_JPerKg, FULL_perS));
        a.put("BLW-07", BlowerRowsTest::shaft_W);
        a.put("BLW-08", () -> flow(12, FULL_perS) * inlet_Pa(12) / RT_JPerKg);
        a.put("BLW-09", () -> rise(12, FULL_perS));
        a.put("BLW-10", () -> rise(16, FULL_perS));
        a.put("BLW-11", () -> flow(16, FULL_perS));
        a.put("BLW-12", () -> flow(12, FULL_perS / 2) / flow(12, FULL_perS));
        a.put("BLW-13", () -> rise(12, FULL_perS / 2));
        a.put("BLW-14", () -> PUMP.airPower_W(6 * 6894.757, 1, 1000 * 4.719474e-4 / 0.010) / 745.70);
        a.put("BLW-15", () -> PUMP.slip_perS(1e4, 1 / hot) / PUMP.slip_perS(1e4, 1));
        a.put("BLW-16", () -> DisplacementWork.lobe_J(0.03, 1.013e5, 1.5) / 1000);
        a.put("BLW-17", () -> DisplacementWork.partlyInside_J(0.03, 1.013e5, 1.25, 1.5) / 1000);
        a.put("BLW-18", () -> DisplacementWork.lobe_J(0.06, 1e5, 1.45) / 1000);
        a.put("BLW-19", () -> DisplacementWork.adiabatic_J(0.06, 1e5, 1.45) / DisplacementWork.lobe_J(0.06, 1e5, 1.45));
        a.put("BLW-21", () -> mountain_Pa / 1000);
        a.put("BLW-23", () -> LiquidRing.deepestVacuum_Pa(ATMOSPHERE_Pa, 4247) / INHG_Pa);
        a.put("BLW-24", () -> Affinity.flow(1000, slower));
        a.put("BLW-25", () -> Affinity.rise(80, slower, 1));
        a.put("BLW-26", () -> Affinity.power(30, slower, 1));
        a.put("BLW-27", () -> Affinity.rise(80, 1, mountain_Pa / ATMOSPHERE_Pa));
        a.put("BLW-28", () -> 1.8 * DisplacementWork.lobeRise_K(490 / 1.8, (14.7 + 14) / 14.7, 0.70));
        a.put("BLW-29", () -> 1.8 * DisplacementWork.isentropic_K(490 / 1.8, 1.95));
        a.put("BLW-30", () -> Energy.specific_JPerM3(shaft_W(), flow(12, FULL_perS)) / 60_000);
        return a;
    }

    /** Vacuum limits at altitude are held on a producer in VacuumProducerTest; BLW-31 says how good published tables are. */
    private static final Set<String> ELSEWHERE = Set.of("BLW-20", "BLW-22", "BLW-31");

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-blowers.csv", "id", answers(), ELSEWHERE);
    }
}
