package dustwright.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class UnitSystemTest {
    private static final PressureDifference EIGHT_INCHES = new PressureDifference(8 * 3386.388640341);

    @Test
    void american_readers_see_inches_of_mercury_and_cubic_feet_with_their_reference() {
        assertThat(UnitSystem.US.format(EIGHT_INCHES)).hasToString("8.00 inHg");
        assertThat(UnitSystem.US.format(new AbsolutePressure(101_325))).hasToString("29.92 inHg abs");
        assertThat(UnitSystem.US.format(new FreeAirFlow(0.0471947443))).hasToString("100.0 scfm");
        assertThat(UnitSystem.US.format(new ActualVolumeFlow(0.0471947443))).hasToString("100.0 acfm");
        assertThat(UnitSystem.US.format(new Length(0.0381))).hasToString("1.500 in");
        assertThat(UnitSystem.US.format(new Length(7.62))).hasToString("25.0 ft");
        assertThat(UnitSystem.US.format(new Velocity(15.24))).hasToString("3000 ft/min");
        assertThat(UnitSystem.US.format(new Temperature(293.15))).hasToString("68.0 °F");
    }

    @Test
    void others_see_metric_units_with_their_reference() {
        assertThat(UnitSystem.SI.format(EIGHT_INCHES)).hasToString("27.09 kPa");
        assertThat(UnitSystem.SI.format(new AbsolutePressure(101_325))).hasToString("101.33 kPa abs");
        assertThat(UnitSystem.SI.format(new FreeAirFlow(0.05))).hasToString("180.0 m³/h free");
        assertThat(UnitSystem.SI.format(new ActualVolumeFlow(0.05))).hasToString("180.0 m³/h");
        assertThat(UnitSystem.SI.format(new Length(0.0729))).hasToString("72.9 mm");
        assertThat(UnitSystem.SI.format(new RotationalSpeed(31))).hasToString("1860 rpm");
    }

    @Test
    void numbers_without_a_row_keep_four_figures() {
        assertThat(UnitSystem.US.format(new LeakCoefficient(3e-9))).hasToString("3e-9 kg/(s·Pa)");
        assertThat(UnitSystem.SI.format(new Ratio(0.0271828))).hasToString("0.02718");
        assertThat(UnitSystem.SI.format(new Ratio(100))).hasToString("100");
        assertThat(UnitSystem.SI.format(new Ratio(0))).hasToString("0");
        assertThat(UnitSystem.US.format(new Count(190))).hasToString("190");
        assertThat(UnitSystem.US.format(new Count(12_345))).hasToString("12345");
    }

    /** A day of work has no twenty-four hours: a year's hours are never told in days. */
    @Test
    void hours_of_work_are_told_in_hours_and_spans_of_time_in_days() {
        assertThat(UnitSystem.SI.format(new WorkingTime(5_896_800))).hasToString("1638.0 h");
        assertThat(UnitSystem.SI.format(new Duration(5_896_800))).hasToString("68.3 d");
        assertThat(UnitSystem.US.format(new WorkingTime(1800))).hasToString("30 min");
    }

    /** By hand: 0.157 m/s is 30.9 ft/min; 12 in are 304.8 mm. */
    @Test
    void tips_and_openings_have_one_unit_at_every_size() {
        assertThat(UnitSystem.SI.format(new TipSpeed(0.157))).hasToString("0.16 m/s");
        assertThat(UnitSystem.SI.format(new TipSpeed(2.5))).hasToString("2.50 m/s");
        assertThat(UnitSystem.US.format(new TipSpeed(0.157))).hasToString("30.9 ft/min");
        assertThat(UnitSystem.US.format(new TipSpeed(0.8))).hasToString("157.5 ft/min");
        assertThat(UnitSystem.US.format(new Opening(0.254))).hasToString("10.00 in");
        assertThat(UnitSystem.US.format(new Opening(0.6096))).hasToString("24.00 in");
        assertThat(UnitSystem.SI.format(new Opening(0.6096))).hasToString("609.6 mm");
    }

    @Test
    void a_slow_rotor_is_not_told_as_standing() {
        assertThat(UnitSystem.SI.format(new RotationalSpeed(0.0065104))).hasToString("0.3906 rpm");
        assertThat(UnitSystem.SI.format(RotationalSpeed.ofRpm(7.25))).hasToString("7.25 rpm");
        assertThat(UnitSystem.SI.format(RotationalSpeed.ofRpm(15))).hasToString("15 rpm");
    }

    @Test
    void what_rounds_to_zero_carries_no_sign() {
        assertThat(UnitSystem.SI.format(new PressureDifference(-0.1))).hasToString("0 Pa");
        assertThat(UnitSystem.US.format(new PressureDifference(996))).hasToString("4.00 inH₂O");
    }

    @Test
    void a_printed_quantity_can_be_typed_into_a_plant_file() {
        for (UnitSystem system : UnitSystem.values()) {
            for (Dimension dimension : Dimension.values()) {
                if (Units.of(dimension).isEmpty()) {
                    continue; // a kind that only results have
                }
                Quantity quantity = dimension.of(0.25);
                String text = system.format(quantity).toString();
                assertThat(QuantityText.read(text, List.of(dimension)))
                        .as(text)
                        .isInstanceOf(QuantityText.Read.Good.class);
            }
        }
    }

    /** A price of what no unit here measures is told in the currency that was typed, never as a sign of our table. */
    @Test
    void a_wrong_unit_of_a_price_is_told_in_its_currency() {
        QuantityText.Read read = QuantityText.read("2 USD/cuyd free", List.of(Dimension.AIR_PRICE));
        assertThat(read).isInstanceOfSatisfying(QuantityText.Read.Bad.class, bad -> {
            assertThat(bad.message()).contains("USD/cuyd free").doesNotContain("¤");
            assertThat(bad.suggestion().orElse("")).doesNotContain("¤");
        });
        assertThat(QuantityText.read("2 USD/kWh", List.of(Dimension.AIR_PRICE)))
                .isInstanceOfSatisfying(
                        QuantityText.Read.Bad.class,
                        bad -> assertThat(bad.message()).contains("USD/kWh").doesNotContain("¤"));
    }

    @Test
    void money_keeps_the_name_of_its_currency() {
        assertThat(read("0.115 EUR/kWh", Dimension.ENERGY_PRICE)).hasToString("0.1150 EUR/kWh");
        assertThat(read("14 USD", Dimension.MONEY)).hasToString("14.00 USD");
        assertThat(read("38 CHF/h", Dimension.TIME_PRICE)).hasToString("38.00 CHF/h");
        assertThat(QuantityText.read("14 usd", List.of(Dimension.MONEY))).isInstanceOf(QuantityText.Read.Bad.class);
        assertThat(QuantityText.read("14 USD/kWh", List.of(Dimension.MONEY))).isInstanceOf(QuantityText.Read.Bad.class);
    }

    private static UnitSystem.Text read(String text, Dimension dimension) {
        return UnitSystem.SI.format(((QuantityText.Read.Good) QuantityText.read(text, List.of(dimension))).quantity());
    }
}
