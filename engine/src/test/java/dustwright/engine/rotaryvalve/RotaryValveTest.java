package dustwright.engine.rotaryvalve;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.air.Air;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Volume;
import dustwright.engine.tubing.Nozzle;
import org.junit.jupiter.api.Test;

class RotaryValveTest {
    private static final Air AIR = new Air(new AbsolutePressure(101_325), new Temperature(293.15), 287.05, 1.8134e-5);

    private static void check(String id, double actual) {
        Row row = Reference.everyRow("equipment-rotary-valves.csv").stream()
                .filter(each -> each.text("id").equals(id))
                .findFirst()
                .orElseThrow();
        assertClose(id + " " + row.text("case"), actual, row.value("expected"), row.value("tol_rel"));
    }

    private static RotaryValve valve(double fill) {
        return new RotaryValve(new Volume(0.0113), RotationalSpeed.ofRpm(20), fill, new Area(1.5e-4), 0.6);
    }

    @Test
    void air_leaks_back_through_pockets_and_clearance_as_published() {
        double pockets_kgPerS = valve(0.3).pocketAir_kgPerS(AIR);
        check("RTV-07", pockets_kgPerS);
        check("RTV-08", pockets_kgPerS / AIR.density_kgPerM3(60_688));
        check("RTV-10", valve(0.3).clearanceAir_kgPerS(60_688, AIR));
        check("RTV-12", Nozzle.CRITICAL_RATIO);
        check("RTV-13", 101_325 * (1 - Nozzle.CRITICAL_RATIO) / 3386.389);
    }

    @Test
    void the_receiver_sees_the_leak_at_its_own_density_not_at_that_of_the_room() {
        double seen_m3PerS = valve(0.3).pocketAir_kgPerS(AIR) / AIR.density_kgPerM3(60_688);
        assertThat(seen_m3PerS).isGreaterThan(1.5 * 0.00376667); // TRP-14, what the room loses
    }

    @Test
    void pockets_come_back_full_of_air_however_full_of_dust_they_went_down() {
        assertThat(valve(1).pocketAir_kgPerS(AIR)).isEqualTo(valve(0.3).pocketAir_kgPerS(AIR));
        check("RTV-07", valve(0.75).pocketAir_kgPerS(AIR));
    }
}
