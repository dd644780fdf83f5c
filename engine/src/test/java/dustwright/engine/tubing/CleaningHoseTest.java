package dustwright.engine.tubing;

import static dustwright.engine.Reference.assertClose;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Vacuum needed at the hose cock of rubber cleaning hose: M. S. Cooley, Vacuum Cleaning Systems, 1913, tables 9 and 16. */
class CleaningHoseTest {
    private static final double INHG_Pa = 3386.389;

    static List<Row> hoses() {
        return Reference.rows("pipe-hose-cooley1913.csv");
    }

    @ParameterizedTest
    @MethodSource("hoses")
    void one_friction_factor_gives_the_printed_vacuum_at_the_cock(Row row) {
        double bore = row.value("diameter_m");
        double cock_Pa = IsothermalFlow.outletPressure_Pa(
                row.value("p_tool_Pa"),
                row.value("mass_flow_kg_s"),
                0.025 * row.value("length_m") / bore,
                Math.PI / 4 * bore * bore,
                287.05287 * 293.15);
        double vacuum_inHg = (101_325 - cock_Pa) / INHG_Pa;
        row.assertClose("vacuum_hose_cock_printed_inHg", vacuum_inHg);
        assertClose("predicted", vacuum_inHg, row.value("vacuum_hose_cock_predicted_f0p025_inHg"), 1e-3);
    }
}
