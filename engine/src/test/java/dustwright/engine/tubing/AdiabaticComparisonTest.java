package dustwright.engine.tubing;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How good the isothermal law is: adiabatic flow between the same pressures differs by less than one percent in this service. */
class AdiabaticComparisonTest {
    static List<Row> fanno() {
        return Reference.rows("pipe-fanno.csv");
    }

    static List<Row> comparisons() {
        return Reference.rows("pipe-adiabatic-vs-isothermal.csv");
    }

    @ParameterizedTest
    @MethodSource("fanno")
    void the_referee_reproduces_the_printed_example(Row row) {
        double in = row.value("mach_in");
        double out = row.value("mach_out");
        row.assertClose("fL_over_D_darcy_printed", FannoFlow.lengthToChoke(in) - FannoFlow.lengthToChoke(out));
        row.assertClose("p2_over_p1_printed", FannoFlow.pressureOverChoke(out) / FannoFlow.pressureOverChoke(in));
    }

    @ParameterizedTest
    @MethodSource("comparisons")
    void isothermal_flow_lies_within_one_percent_below_adiabatic_flow(Row row) {
        double bore = row.value("diameter_m");
        double area = Math.PI / 4 * bore * bore;
        double rt = 287.05287 * row.value("inlet_temperature_K");
        double resistance = row.value("f_darcy") * row.value("length_m") / bore;
        double isothermal =
                IsothermalFlow.massFlow_kgPerS(row.value("p1_Pa"), row.value("p2_Pa"), resistance, area, rt);
        double adiabatic = FannoFlow.massFlow_kgPerS(row.value("p1_Pa"), row.value("p2_Pa"), resistance, area, rt);

        row.assertClose("mass_flow_isothermal_kg_s", isothermal);
        row.assertClose("mass_flow_adiabatic_kg_s", adiabatic);
        assertClose("difference", adiabatic / isothermal - 1, row.value("difference_rel"), 0.01, 2e-6);
        assertThat(adiabatic / isothermal).isBetween(1.0, 1.01);
    }
}
