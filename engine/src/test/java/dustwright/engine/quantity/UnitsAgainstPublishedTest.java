package dustwright.engine.quantity;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.air.Air;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UnitsAgainstPublishedTest {
    static List<Row> pressureUnits() {
        return Reference.everyRow("air-pressure-units.csv");
    }

    static List<Row> vacuums() {
        return Reference.rows("air-vacuum-conversions.csv");
    }

    static List<Row> flows() {
        return Reference.rows("air-scfm-acfm.csv");
    }

    private static double si(double number, String unit, Dimension dimension) {
        return Units.find(unit, dimension).orElseThrow().toSi(number);
    }

    private static double read(double si, String unit, Dimension dimension) {
        return Units.find(unit, dimension).orElseThrow().fromSi(si);
    }

    /** The factors were remembered, though consistent; only exact definitions are asserted. */
    @ParameterizedTest
    @MethodSource("pressureUnits")
    void units_of_pressure_are_worth_what_is_published(Row row) {
        String name = row.text("unit").replace(" conventional", "").replace(" degF", "degF");
        String symbol = name.replaceFirst(" (.*)", "($1)");
        double factor_Pa = symbol.equals("atm")
                ? si(1, symbol, Dimension.ABSOLUTE_PRESSURE)
                : si(1, symbol, Dimension.PRESSURE_DIFFERENCE);
        if (row.text("source").startsWith("exact")) {
            row.assertClose("pressure_Pa", factor_Pa);
        } else {
            assertThat(factor_Pa).isPositive();
            Reference.report(
                    row, "from memory, not asserted: published over ours " + row.value("pressure_Pa") / factor_Pa);
        }
    }

    @ParameterizedTest
    @MethodSource("vacuums")
    void a_vacuum_reads_the_same_in_five_units_and_is_never_an_absolute_pressure(Row row) {
        double vacuum_Pa = si(row.value("vacuum_inHg"), "inHg", Dimension.PRESSURE_DIFFERENCE);
        row.assertClose("vacuum_inH2O", read(vacuum_Pa, "inH2O", Dimension.PRESSURE_DIFFERENCE));
        row.assertClose("vacuum_kPa", read(vacuum_Pa, "kPa", Dimension.PRESSURE_DIFFERENCE));
        row.assertClose("vacuum_mbar", read(vacuum_Pa, "mbar", Dimension.PRESSURE_DIFFERENCE));
        row.assertClose("vacuum_psi", read(vacuum_Pa, "psi", Dimension.PRESSURE_DIFFERENCE));
        AbsolutePressure absolute = new AbsolutePressure(101_325).minus(new PressureDifference(vacuum_Pa));
        row.assertClose("absolute_at_101325_Pa", absolute.pascals());
    }

    @ParameterizedTest
    @MethodSource("flows")
    void free_air_becomes_actual_flow_at_the_pressure_of_the_place(Row row) {
        FreeAirFlow free = new FreeAirFlow(si(row.value("flow_scfm"), "scfm", Dimension.FREE_AIR_FLOW));
        Air air = new Air(
                new AbsolutePressure(row.value("barometric_pressure_Pa")),
                new Temperature(row.value("temperature_K")),
                287.05287,
                1.8e-5);
        double vacuum_Pa = si(row.value("vacuum_inHg"), "inHg", Dimension.PRESSURE_DIFFERENCE);
        double pressure_Pa =
                air.ambient().minus(new PressureDifference(vacuum_Pa)).pascals();
        double mass_kgPerS = free.mass().kgPerSecond();
        double actual_m3PerS = mass_kgPerS / air.density_kgPerM3(pressure_Pa);

        row.assertClose("pressure_Pa", pressure_Pa);
        row.assertClose("mass_flow_kg_s", mass_kgPerS);
        row.assertClose("flow_acfm", read(actual_m3PerS, "acfm", Dimension.ACTUAL_FLOW));
        row.assertClose("flow_actual_m3_h", read(actual_m3PerS, "m3/h", Dimension.ACTUAL_FLOW));
        row.assertClose("scfm_over_acfm", free.cubicMetresPerSecond() / actual_m3PerS);
        double atBarometer_m3PerS =
                mass_kgPerS / air.density_kgPerM3(air.ambient().pascals());
        assertClose(
                "free air at the barometer",
                read(atBarometer_m3PerS, "acfm", Dimension.ACTUAL_FLOW),
                row.value("free_air_acfm_at_barometric"),
                row.tolerance());
    }
}
