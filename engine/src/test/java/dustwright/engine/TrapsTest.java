package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference.Row;
import dustwright.engine.air.Air;
import dustwright.engine.air.MoistAir;
import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.conveying.Conveyed;
import dustwright.engine.conveying.LineDrop;
import dustwright.engine.conveying.Particle;
import dustwright.engine.conveying.Saltation;
import dustwright.engine.conveying.TerminalVelocity;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Units;
import dustwright.engine.quantity.Viscosity;
import dustwright.engine.tubing.BendLoss;
import dustwright.engine.tubing.EntryLoss;
import dustwright.engine.tubing.Friction;
import dustwright.engine.tubing.IsothermalFlow;
import dustwright.engine.tubing.JunctionLoss;
import dustwright.engine.tubing.Nozzle;
import dustwright.engine.tubing.Orifice;
import dustwright.engine.tubing.ReducerLoss;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Common mistakes of this trade: the right value comes out, and the value of the mistake does not. */
class TrapsTest {
    private static final double RT = 287.05287 * 293.15;
    private static final double SEA_LEVEL_Pa = 101_325;
    /** Harmless: its wrong value lies inside the tolerance. */
    private static final String HARMLESS = "T19";

    static List<Row> traps() {
        return Reference.rows("pipe-traps.csv");
    }

    @ParameterizedTest
    @MethodSource("traps")
    void the_right_value_comes_out_and_the_wrong_one_does_not(Row row) {
        double actual = compute(row.text("trap_id"));
        row.assertClose("right_value", actual);
        double wrong = row.value("wrong_value");
        if (!row.text("trap_id").equals(HARMLESS)) {
            assertThat(Math.abs(actual - wrong))
                    .as(row.text("trap"))
                    .isGreaterThan(row.tolerance() * Math.abs(row.value("right_value")));
        }
    }

    private static double compute(String trap) {
        return switch (trap) {
            case "T01", "T06" -> flow(SEA_LEVEL_Pa, 80_000, 0.0985, 100, 0.017);
            case "T02", "T03", "T04", "T05" -> flow(SEA_LEVEL_Pa, 45_000, 0.0475, 10, 0.02);
            case "T07" -> flow(SEA_LEVEL_Pa, 20_000, 0.0381, 5, 0.03);
            case "T08" -> machAtChoke();
            case "T09" -> IsothermalFlow.outletPressure_Pa(SEA_LEVEL_Pa, 0.14, 0.03 * 5 / 0.0381, area(0.0381), RT);
            case "T10" -> absolute(SEA_LEVEL_Pa);
            case "T11" -> absolute(84_556);
            case "T12", "T13" -> actualFlow();
            case "T14" -> velocity(0.1, 0.0985, 60_000);
            case "T15" -> Math.min(velocity(0.1, 0.0728, 98_000), velocity(0.1, 0.0728, 62_000));
            case "T16" -> dryAir().density_kgPerM3(SEA_LEVEL_Pa);
            case "T17" -> humidAir().density_kgPerM3(SEA_LEVEL_Pa);
            case "T18" -> MoistAir.vapourPressure_Pa(293.15, 0.5);
            case "T19" -> StandardAtmosphere.pressure_Pa(3000);
            case "T20", "T21" -> Friction.darcy(1e5, 1e-3);
            case "T22" -> Friction.darcy(1500, 0);
            case "T23", "T24" -> Friction.reynolds(0.1, 0.0985, dryAir().viscosity_PaS());
            case "T25" -> ReducerLoss.suddenExpansion(0.0381 / 0.0603);
            case "T26" -> ReducerLoss.suddenExpansionRise_Pa(960, 0.0381 / 0.0603);
            case "T27" -> entryDrop();
            case "T28" -> JunctionLoss.crane(Math.toRadians(45), 0.3).branch(0.2) * Math.pow(0.3 / 0.2, 2);
            case "T29" -> JunctionLoss.crane(Math.toRadians(45), 1).branch(0.1);
            case "T30" -> new Orifice(0.1, 0.06).expansibility(0.80);
            case "T31" -> Saltation.rizk_mPerS(0.25, 100e-6, 1.2, 0.078);
            case "T32" -> Saltation.rizk_mPerS(0.1, 200e-6, 0.7, 0.0603);
            case "T33" -> sandLine().solidsAcceleration_Pa();
            case "T34" -> sandLine().gasFrictionLevel_Pa();
            case "T35" ->
                TerminalVelocity.ofSphere(sand(500e-6, 2650), 1.2041, 1.8134e-5).metresPerSecond();
            case "T36" ->
                Units.find("inH2O", Dimension.PRESSURE_DIFFERENCE).orElseThrow().toSi(60);
            case "T37" -> normalCubicMetre();
            case "T38" -> gradientInTwoInchTube();
            case "T39" -> flow(SEA_LEVEL_Pa, 60_000, 0.0603, 30, 0.0195);
            case "T40" -> BendLoss.rennels(Math.PI / 2, 5).k(0.018);
            case "T41" -> Nozzle.massFlow_kgPerS(area(0.025), SEA_LEVEL_Pa, 20_000, RT);
            case "T42" -> (0.05 + 0.05) * RT / 80_000;
            case "T43" -> IsothermalFlow.massFlow_kgPerS(1000, 100, 0.0328 * 30 / 0.15, area(0.15), 286.62 * 293);
            default -> throw new IllegalArgumentException("no check for trap " + trap);
        };
    }

    private static double flow(double p1, double p2, double bore, double length, double darcy) {
        return IsothermalFlow.massFlow_kgPerS(p1, p2, darcy * length / bore, area(bore), RT);
    }

    /** Worked example: 900 kg/h of sand through 30 m of 78 mm at 1.5 times its saltation velocity. */
    private static LineDrop sandLine() {
        Conveyed stream = Conveyed.of(
                new MassFlow(0.25), sand(100e-6, 2500), new Density(1.2), new Viscosity(1.84e-5), new Length(0.078));
        return LineDrop.of(new LineDrop.Line(30, 10, 6, OptionalDouble.empty()), stream, 14.824964);
    }

    private static Particle sand(double size_m, double density_kgPerM3) {
        return new Particle(new Length(size_m), new Density(density_kgPerM3));
    }

    private static double machAtChoke() {
        double choke = IsothermalFlow.chokePressure_Pa(SEA_LEVEL_Pa, 3);
        double w = IsothermalFlow.chokedFlow_kgPerS(SEA_LEVEL_Pa, 3, 1e-3, RT);
        return IsothermalFlow.mach(w / 1e-3, choke, RT);
    }

    private static double absolute(double barometer_Pa) {
        double vacuum_Pa =
                Units.find("inHg", Dimension.PRESSURE_DIFFERENCE).orElseThrow().toSi(10);
        return new AbsolutePressure(barometer_Pa)
                .minus(new PressureDifference(vacuum_Pa))
                .pascals();
    }

    private static double actualFlow() {
        FreeAirFlow free = new FreeAirFlow(
                Units.find("scfm", Dimension.FREE_AIR_FLOW).orElseThrow().toSi(100));
        double vacuum_Pa =
                Units.find("inHg", Dimension.PRESSURE_DIFFERENCE).orElseThrow().toSi(12);
        return free.mass().kgPerSecond() / dryAir().density_kgPerM3(SEA_LEVEL_Pa - vacuum_Pa);
    }

    private static double normalCubicMetre() {
        return new FreeAirFlow(Units.find("Nm3/s", Dimension.FREE_AIR_FLOW)
                        .orElseThrow()
                        .toSi(1))
                .mass()
                .kgPerSecond();
    }

    private static double velocity(double w, double bore, double pressure) {
        return w / (dryAir().density_kgPerM3(pressure) * area(bore));
    }

    /** 40 m/s at 1.2 kg/m³ inside the mouth: the pressure there is 1.2 times R T. */
    private static double entryDrop() {
        double inside = SEA_LEVEL_Pa - 1440;
        return SEA_LEVEL_Pa
                - IsothermalFlow.entryPressure_Pa(SEA_LEVEL_Pa, 1.2 * 40, EntryLoss.SHARP_CRANE, 1, inside / 1.2);
    }

    /** In thin-wall tube of 2 in outside and 0.065 in wall; far from choking, where the gradient is that of a liquid. */
    private static double gradientInTwoInchTube() {
        double bore = new Length((2 - 2 * 0.065) * 0.0254).metres();
        double high_Pa = 1e8;
        double rt = high_Pa / 1.1;
        return high_Pa - IsothermalFlow.outletPressure_Pa(high_Pa, 0.05, 0.02 / bore, area(bore), rt);
    }

    private static Air dryAir() {
        return MoistAir.atBarometer(new AbsolutePressure(SEA_LEVEL_Pa), new Temperature(293.15), 0);
    }

    private static Air humidAir() {
        return MoistAir.atBarometer(new AbsolutePressure(SEA_LEVEL_Pa), new Temperature(293.15), 0.5);
    }

    private static double area(double bore) {
        return new Length(bore).circle().squareMetres();
    }
}
