package dustwright.engine.rotaryvalve;

import dustwright.engine.ComputedRows;
import dustwright.engine.tubing.Nozzle;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every row of the rotary valve table. */
class RotaryValveRowsTest {
    private static final double RT_JPerKg = 287.05 * 293.15;
    private static final double RPM20_perS = 20 / 60.0;
    private static final double SWEPT_m3 = 0.0113;
    private static final double CLEARANCE_m2 = 1.5e-4;

    private static final double POCKETS_kgPerS = ValveLeakage.pockets_kgPerS(SWEPT_m3, RPM20_perS, 101_325 / RT_JPerKg);

    private static Map<String, Supplier<Object>> answers() {
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("RTV-01", () -> ValveCapacity.pocketTime_s(8, RPM20_perS));
        a.put("RTV-02", () -> 5 / ValveCapacity.pocketTime_s(8, RPM20_perS));
        a.put("RTV-03", () -> ValveCapacity.capacity_kgPerS(SWEPT_m3, RPM20_perS, 0.75, 600) * 3600);
        a.put("RTV-04", () -> ValveCapacity.speed_perS(1000 / 3600.0, SWEPT_m3, 0.75, 600) * 60);
        a.put("RTV-05", () -> ValveCapacity.tipSpeed_mPerS(0.25, RPM20_perS));
        a.put("RTV-06", () -> ValveCapacity.swept_m3(0.25, 0.06, 0.25, 8, 0.006));
        a.put("RTV-07", () -> POCKETS_kgPerS);
        a.put("RTV-08", () -> ValveLeakage.inReceiver_m3PerS(POCKETS_kgPerS, 60_688, RT_JPerKg));
        a.put("RTV-09", () -> ValveLeakage.orifice_kgPerS(0.6, CLEARANCE_m2, 1.2, 40_637));
        a.put("RTV-10", () -> ValveLeakage.nozzle_kgPerS(0.6, CLEARANCE_m2, 101_325, 60_688, RT_JPerKg));
        a.put("RTV-11", () -> ValveLeakage.labyrinth_kgPerS(0.6, CLEARANCE_m2, 3, 101_325, 60_688, RT_JPerKg));
        a.put("RTV-12", () -> Nozzle.CRITICAL_RATIO);
        a.put("RTV-13", () -> ValveLeakage.chokingVacuum_Pa(101_325) / 3386.389);
        a.put("RTV-14", () -> ValveDrive.torque_Nm(750, 0.85, RPM20_perS));
        a.put("RTV-15", () -> ValveLeakage.tipArea_m2(0.25, 0.15e-3));
        a.put("RTV-16", () -> ValveLeakage.WIDEST_CLEARANCE_m * 1000);
        return a;
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-rotary-valves.csv", "id", answers());
    }
}
