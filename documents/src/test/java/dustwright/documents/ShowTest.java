package dustwright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.writing.Show;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.ElectricalEnergy;
import dustwright.engine.quantity.Frequency;
import dustwright.engine.quantity.Mass;
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

    private static Stream<String> shown(Show show, List<PressureDifference> table) {
        return table.stream().map(show::full).map(text -> text.replace('\u00A0', ' '));
    }

    /** 1 inH2O is 249.089 Pa and 1 inHg 3386.389 Pa (NIST SP 811). */
    @Test
    void a_drop_stands_in_inches_of_water_and_a_vacuum_in_inches_of_mercury_however_much_it_is() {
        Show us = new Show(UnitSystem.US);
        assertThat(shown(us.losses(), drops(249.089, 996.356, 1494.53, 4982)))
                .containsExactly("1.00 inH₂O", "4.00 inH₂O", "6.00 inH₂O", "20.00 inH₂O");
        assertThat(shown(us.vacua(), drops(16_931.9, 485, 33_863.9)))
                .containsExactly("5.00 inHg", "0.14 inHg", "10.00 inHg");
        Show si = new Show(UnitSystem.SI);
        assertThat(shown(si.losses(), drops(250, 990, 1600))).containsExactly("250 Pa", "990 Pa", "1\u202F600 Pa");
        assertThat(shown(si.vacua(), drops(250, 36_000))).containsExactly("0.25 kPa", "36.00 kPa");
    }

    /** 0.149000 m² is 1.603823 ft² (1 ft = 0.3048 m). */
    @Test
    void the_least_that_is_needed_is_rounded_up_and_never_down() {
        Show us = new Show(UnitSystem.US);
        Show si = new Show(UnitSystem.SI);
        assertThat(us.least(new Area(0.149)).replace('\u00A0', ' ')).isEqualTo("1.61 ft²");
        assertThat(si.least(new Area(0.149)).replace('\u00A0', ' ')).isEqualTo("0.149 m²");
        assertThat(si.least(new Area(0.14901)).replace('\u00A0', ' ')).isEqualTo("0.150 m²");
        assertThat(si.least(new Area(1.2301)).replace('\u00A0', ' ')).isEqualTo("1.24 m²");
    }

    @Test
    void what_comes_seldom_or_weighs_little_is_not_printed_as_nothing() {
        Show show = new Show(UnitSystem.SI);
        assertThat(show.full(new Frequency(2 / (50 * 604_800.0))).replace('\u00A0', ' '))
                .isEqualTo("0.0400 /week");
        assertThat(show.full(new Mass(0.012)).replace('\u00A0', ' ')).isEqualTo("0.012 kg");
        assertThat(show.full(new ElectricalEnergy(36_000)).replace('\u00A0', ' '))
                .isEqualTo("0.010 kWh");
    }
}
