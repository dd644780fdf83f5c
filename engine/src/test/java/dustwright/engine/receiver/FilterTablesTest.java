package dustwright.engine.receiver;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.receiver.FilterMedium.Duty;
import dustwright.engine.receiver.FilterMedium.Reason;
import dustwright.engine.reference.ReferenceTable;
import org.junit.jupiter.api.Test;

/** The tables of filters, to the digit: they are look-ups, and make no claim about the world. */
class FilterTablesTest {
    private static final double FPM_mPerS = 0.3048 / 60;

    private static double celsius(double celsius) {
        return celsius + 273.15;
    }

    @Test
    void gas_to_cloth_ratios_are_the_tabulated_ones() {
        for (Row row : Reference.everyRow("equipment-table-gas-to-cloth.csv")) {
            String dust = row.text("dust");
            assertClose(
                    dust,
                    AirToCloth.tabulatedWoven_mPerS(dust) / FPM_mPerS,
                    row.value("woven_shaker_or_reverse_air_ft_min"),
                    1e-12);
            assertThat(AirToCloth.tabulatedPulseJet_mPerS(dust).isPresent())
                    .as(dust)
                    .isEqualTo(row.has("felt_pulse_jet_ft_min"));
            AirToCloth.tabulatedPulseJet_mPerS(dust).ifPresent(ratio -> {
                assertClose(dust, ratio / FPM_mPerS, row.value("felt_pulse_jet_ft_min"), 1e-12);
                assertClose(dust, ratio, row.value("felt_pulse_jet_m_s"), 1e-12);
            });
        }
    }

    @Test
    void pulse_jet_factors_are_the_tabulated_ones() {
        for (Row row : Reference.everyRow("equipment-table-pulse-jet-factors.csv")) {
            double ours = row.text("factor").equals("A")
                    ? AirToCloth.materialFactor(row.text("item"))
                    : AirToCloth.applicationFactor(row.text("item"));
            assertThat(ours).as(row.text("item")).isEqualTo(row.value("value"));
        }
        assertThatThrownBy(() -> AirToCloth.applicationFactor("flour")).hasMessageContaining("is a factor A, not B");
    }

    @Test
    void filter_media_are_the_tabulated_ones() {
        ReferenceTable bundled = ReferenceTable.bundled("receiver/filter-media.csv");
        for (Row row : Reference.everyRow("equipment-table-filter-media.csv")) {
            String fibre = row.text("fibre");
            assertThat(bundled.row("fibre", fibre).text("flex_abrasion")).isEqualTo(row.text("flex_abrasion"));
            if (row.has("continuous_F")) {
                FilterMedium medium = FilterMedium.named(fibre);
                assertClose(fibre, medium.continuous_K() * 1.8 - 459.67, row.value("continuous_F"), 1e-12);
                assertClose(fibre, medium.surge_K() * 1.8 - 459.67, row.value("surge_F"), 1e-12);
                assertClose(fibre, medium.continuous_K() - 273.15, row.value("continuous_C"), 0, 0.5); // whole degrees
                assertThat(medium.acid()).isEqualTo(row.text("acid"));
                assertThat(medium.alkali()).isEqualTo(row.text("alkali"));
            } else {
                assertThatThrownBy(() -> FilterMedium.named(fibre)).hasMessageContaining("no published limit");
            }
        }
    }

    @Test
    void after_filter_classes_are_the_tabulated_ones_under_both_names() {
        for (Row row : Reference.everyRow("equipment-table-hepa-classes.csv")) {
            for (String column : new String[] {"en1822", "iso29463"}) {
                if (row.has(column)) {
                    AfterFilter filter = AfterFilter.ofClass(row.text(column));
                    assertClose(
                            row.toString(),
                            100 * filter.integral(),
                            row.value("integral_mpps_efficiency_percent"),
                            1e-12);
                    assertThat(filter.local().isPresent()).isEqualTo(row.has("local_efficiency_percent"));
                    filter.local()
                            .ifPresent(local -> assertClose(
                                    row.toString(), 100 * local, row.value("local_efficiency_percent"), 1e-12));
                }
            }
        }
        assertThatThrownBy(() -> AfterFilter.ofClass("H12")).hasMessageContaining("no high-efficiency filter class");
    }

    @Test
    void the_medium_is_chosen_by_what_it_must_bear_and_says_why() {
        Duty room = new Duty(celsius(40), celsius(60), true, true, false);
        assertThat(FilterMedium.choose(room)).map(FilterMedium::fibre).contains("polyester");
        assertThat(FilterMedium.named("polyester").reasons(room))
                .containsExactly(Reason.ASK_DISSIPATIVE, Reason.ASK_NON_STICK, Reason.ASK_MAKER);

        Duty hot = new Duty(celsius(170), celsius(180), false, false, false);
        assertThat(FilterMedium.named("polyester").reasons(hot))
                .contains(Reason.TOO_HOT_CONTINUOUS, Reason.TOO_HOT_SURGE);
        assertThat(FilterMedium.choose(hot)).map(FilterMedium::fibre).contains("polyphenylene sulphide (PPS)");

        Duty damp = new Duty(celsius(80), celsius(90), false, false, true);
        assertThat(FilterMedium.named("polyester").suits(damp)).isFalse();
        assertThat(FilterMedium.choose(damp)).map(FilterMedium::fibre).contains("polypropylene");

        assertThat(FilterMedium.choose(new Duty(celsius(400), celsius(400), false, false, false)))
                .isEmpty();
    }
}
