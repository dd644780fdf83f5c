package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.air.Air;
import dustwright.engine.bagging.BagFill;
import dustwright.engine.cost.LifeCycle;
import dustwright.engine.noise.Exposure;
import dustwright.engine.noise.Exposure.Rule;
import dustwright.engine.noise.SoundLevel;
import dustwright.engine.producer.DisplacementWork;
import dustwright.engine.producer.Machine.LobePump;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Units;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.AfterFilter;
import dustwright.engine.receiver.AirToCloth;
import dustwright.engine.receiver.HopperOutlet;
import dustwright.engine.receiver.HopperOutlet.Shape;
import dustwright.engine.receiver.ShellBuckling;
import dustwright.engine.rotaryvalve.ValveLeakage;
import dustwright.engine.tubing.TubeGauge;
import dustwright.engine.tubing.TubeStock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Common mistakes with equipment: what they return does not come out. */
class EquipmentTrapsTest {
    private static final double ATMOSPHERE_Pa = 101_325;
    private static final double VACUUM_Pa = 12 * 3386.389;
    private static final double SUCTION_Pa = ATMOSPHERE_Pa - VACUUM_Pa;
    private static final double INCH_m = 0.0254;
    private static final double FT3_m3 = 0.3048 * 0.3048 * 0.3048;
    private static final double LB_kg = 0.45359237;
    private static final Air AIR =
            new Air(new AbsolutePressure(ATMOSPHERE_Pa), new Temperature(293.15), 287.05, 1.8134e-5);
    private static final LobePump PUMP =
            new LobePump(new Volume(0.010), RotationalSpeed.ofRpm(150), 1, new Power(2000));

    private static double flow(double speed_perS) {
        return PUMP.inletFlow_m3PerS(VACUUM_Pa, AIR.density_kgPerM3(SUCTION_Pa), speed_perS);
    }

    private static double flyAsh_ftPerMin() {
        return AirToCloth.pulseJet(9, 0.8, (325 + 459.67) / 1.8, 0.0091534, 7e-6)
                        .velocity_mPerS()
                * 60
                / 0.3048;
    }

    private static Map<String, Supplier<Object>> answers() {
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("TRP-01", () -> 60 * PUMP.slip_perS(VACUUM_Pa, AIR.density_kgPerM3(SUCTION_Pa)));
        a.put("TRP-02", () -> PUMP.airPower_W(VACUUM_Pa, AIR.density_kgPerM3(SUCTION_Pa), 30));
        a.put("TRP-03", () -> DisplacementWork.lobeRise_K(293.15, ATMOSPHERE_Pa / SUCTION_Pa, flow(30) / 0.3));
        a.put("TRP-04", () -> AirToCloth.actualFlow_m3PerS(1, ATMOSPHERE_Pa, SUCTION_Pa));
        a.put(
                "TRP-05",
                () -> AIR.ambient().minus(new PressureDifference(VACUUM_Pa)).pascals());
        a.put("TRP-06", EquipmentTrapsTest::flyAsh_ftPerMin);
        a.put("TRP-07", EquipmentTrapsTest::flyAsh_ftPerMin);
        a.put("TRP-08", () -> HopperOutlet.shapeFactor(Shape.CONE, Math.toRadians(35)));
        a.put("TRP-09", () -> ShellBuckling.longTube_Pa(200e9, 0.3, 1, 0.01) / 1e6);
        a.put("TRP-10", () -> SoundLevel.sum_dB(70, 70));
        a.put("TRP-11", () -> Exposure.permitted_h(Rule.NIOSH, 95));
        a.put("TRP-12", () -> BagFill.gallons_m3(55) / FT3_m3);
        a.put("TRP-13", () -> TubeStock.bore_m(4 * INCH_m, TubeGauge.TUBE.thickness_m(16)) / INCH_m);
        a.put(
                "TRP-14",
                () -> ValveLeakage.inReceiver_m3PerS(
                        ValveLeakage.pockets_kgPerS(0.0113, 20 / 60.0, AIR.density_kgPerM3(ATMOSPHERE_Pa)),
                        SUCTION_Pa,
                        AIR.rt()));
        a.put(
                "TRP-15",
                () -> BagFill.fill(35.45 * FT3_m3, 94 * LB_kg / FT3_m3, 2200 * LB_kg)
                                .mass_kg()
                        / LB_kg);
        a.put("TRP-16", () -> LifeCycle.uniform(0, 10));
        a.put("TRP-17", () -> 100 * AfterFilter.ofClass("H13").local().orElseThrow());
        a.put("TRP-19", () -> flow(15) / flow(30));
        a.put("TRP-20", () -> HopperOutlet.archingOutlet_m(Shape.SLOT, Math.toRadians(35), 2043, 1800, 9.81));
        return a;
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-traps.csv", "id", answers(), Set.of("TRP-18"));
    }

    /** TRP-18 prints 16.0185 with a tolerance finer than its digits. */
    @Test
    void pounds_per_cubic_foot_are_the_printed_figure_to_its_last_digit() {
        double density = Units.find("lb/ft3", Dimension.DENSITY).orElseThrow().toSi(1);
        assertThat(Math.rint(density * 1e4) / 1e4).isEqualTo(16.0185);
    }
}
