package dustwright.engine.tubing;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.air.AirViscosity;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A path from still air to a main, element by element: each element on its own against the tabulated pressures at its ends. */
class SeriesPathTest {
    private static final double R_DRY = 287.05287;

    static List<Row> elements() {
        return Reference.rows("pipe-series-march.csv");
    }

    @ParameterizedTest
    @MethodSource("elements")
    void every_element_of_the_path_leads_to_the_tabulated_pressure(Row row) {
        double bore = row.value("diameter_m");
        double area = area(bore);
        double rt = R_DRY * row.value("temperature_K");
        double w = row.value("mass_flow_kg_s");
        double in = row.value("p_in_Pa");
        String element = row.text("element");
        double head_Pa = w * w * rt / (2 * in * area * area);

        double outBore = bore;
        double out;
        if (element.startsWith("sharp entry")) {
            out = IsothermalFlow.entryPressure_Pa(in, w, EntryLoss.SHARP_CRANE, area, rt);
        } else if (element.startsWith("straight")) {
            double length = Double.parseDouble(
                    element.substring(element.indexOf(" L ") + 3).replace(" m", ""));
            out = IsothermalFlow.outletPressure_Pa(in, w, friction(element, w, bore, row) * length / bore, area, rt);
        } else if (element.startsWith("sudden expansion")) {
            String[] bores = element.replaceAll("[^0-9. ]", "").trim().split(" +");
            outBore = Double.parseDouble(bores[1]);
            out = in + ReducerLoss.suddenExpansionRise_Pa(head_Pa, bore / outBore);
        } else {
            out = in - 0.25 * head_Pa;
        }
        row.assertClose("p_out_Pa", out);
        row.assertClose("velocity_out_m_s", w * rt / (out * area(outBore)));
    }

    private static double friction(String element, double w, double bore, Row row) {
        if (element.contains("f_darcy 0.025")) {
            return 0.025;
        }
        double viscosity = AirViscosity.sutherland_PaS(row.value("temperature_K"));
        return Friction.darcy(Friction.reynolds(w, bore, viscosity), 3e-5 / bore);
    }

    private static double area(double bore) {
        return Math.PI / 4 * bore * bore;
    }
}
