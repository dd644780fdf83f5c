package dustwright.engine.cost;

import dustwright.engine.ComputedRows;
import dustwright.engine.bagging.BagFill;
import dustwright.engine.cost.LifeCycle.Once;
import dustwright.engine.electrical.MotorEfficiency;
import dustwright.engine.electrical.MotorEfficiency.Cooling;
import dustwright.engine.quantity.Units;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every row of the energy and cost table. */
class EnergyCostRowsTest {
    private static double energy() {
        return Energy.annual_kWh(18_600, 0.93, 0.95, 4000);
    }

    /** The worked example gives its own factor for electricity, so that part comes in as a first cost. */
    private static double worked(double first, double replacement, double residual, double electricity, double upkeep) {
        return LifeCycle.cost(
                first + electricity * 15.13,
                List.of(new Once(replacement, 12), new Once(-residual, 20)),
                List.of(new LifeCycle.Yearly(upkeep, 0)),
                0.03,
                20);
    }

    private static Map<String, Supplier<Object>> answers() {
        double hp25_W = 25 * Units.HORSEPOWER_W;
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("ENC-01", EnergyCostRowsTest::energy);
        a.put("ENC-02", () -> Energy.cost(energy(), 0.10));
        a.put("ENC-03", () -> 100 * MotorEfficiency.act1992(25));
        a.put("ENC-04", () -> 100 * MotorEfficiency.act1992(50));
        a.put("ENC-05", () -> 100 * MotorEfficiency.premium(10, Cooling.ENCLOSED, 4));
        a.put(
                "ENC-06",
                () -> Energy.annual_kWh(hp25_W, MotorEfficiency.act1992(25), 1, 6000)
                        - Energy.annual_kWh(hp25_W, MotorEfficiency.premium(25, Cooling.ENCLOSED, 4), 1, 6000));
        a.put("ENC-07", () -> LifeCycle.single(0.03, 20));
        a.put("ENC-08", () -> LifeCycle.uniform(0.03, 20));
        a.put("ENC-09", () -> LifeCycle.single(0.03, 12));
        a.put("ENC-10", () -> worked(103_000, 12_000, 3500, 20_000, 7000));
        a.put("ENC-11", () -> worked(110_000, 12_500, 3700, 13_000, 8000));
        a.put("ENC-12", () -> LifeCycle.growing(0.03, 0.01, 20));
        a.put("ENC-13", () -> LifeCycle.growing(0.03, 0.03, 20));
        a.put("ENC-14", () -> LifeCycle.uniform(0, 10));
        a.put("ENC-15", () -> BagFill.containers(600, 0.2082, 0.9));
        a.put("ENC-16", () -> BagFill.containers(600, 1.0037, 0.9));
        a.put("ENC-17", () -> LifeCycle.changeLabour(3203, 12 * 60, 35));
        a.put("ENC-18", () -> hp25_W / 1000);
        a.put("ENC-19", () -> LifeCycle.payback_years(7000, 7000 - 1000));
        a.put("ENC-20", () -> LifeCycle.capitalRecovery(0.06, 10));
        return a;
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-energy-cost.csv", "id", answers());
    }
}
