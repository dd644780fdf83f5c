package dustwright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.writing.Show;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.UnitSystem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ShowTest {
    private static List<PressureDifference> drops(double... drops_Pa) {
        return java.util.Arrays.stream(drops_Pa)
                .mapToObj(PressureDifference::new)
                .toList();
    }

    private static Stream<String> shown(UnitSystem system, List<PressureDifference> table) {
        Show show = new Show(system).across(table);
        return table.stream().map(show::full).map(text -> text.replace('\u00A0', ' '));
    }

    /** 1 inH2O is 249.089 Pa and 1 inHg 3386.389 Pa (NIST SP 811). */
    @Test
    void pressure_drops_of_one_table_stand_in_one_unit() {
        assertThat(shown(UnitSystem.US, drops(249.089, 996.356, 1494.53, 4982)))
                .containsExactly("1.00 inH₂O", "4.00 inH₂O", "6.00 inH₂O", "20.00 inH₂O");
        assertThat(shown(UnitSystem.SI, drops(250, 990, 1600))).containsExactly("250 Pa", "990 Pa", "1\u202F600 Pa");
        assertThat(shown(UnitSystem.US, drops(16_931.9, 485, 33_863.9)))
                .containsExactly("5.00 inHg", "0.14 inHg", "10.00 inHg");
    }

    @Test
    void where_as_many_stand_in_either_unit_the_finer_one_is_taken() {
        assertThat(shown(UnitSystem.US, drops(33_863.9, 498.178))).containsExactly("135.95 inH₂O", "2.00 inH₂O");
    }
}
