package dustwright.engine.quantity;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitsTest {
    /** Our symbol for each unit of the table. */
    private static final Map<String, String> SYMBOL = Map.of(
            "inHg conventional", "inHg",
            "inHg 32 degF", "inHg(32degF)",
            "inHg 60 degF", "inHg(60degF)",
            "inH2O conventional", "inH2O",
            "inH2O 39.2 degF", "inH2O(39.2degF)",
            "inH2O 60 degF", "inH2O(60degF)",
            "mmHg conventional", "mmHg",
            "mmH2O conventional", "mmH2O",
            "psi", "psi",
            "mbar", "mbar");

    static List<Row> pressureUnits() {
        return Reference.rows("air-pressure-units.csv");
    }

    static List<Row> vacuums() {
        return Reference.rows("air-vacuum-conversions.csv");
    }

    static List<Row> flows() {
        return Reference.rows("air-scfm-acfm.csv");
    }

    @ParameterizedTest
    @CsvSource({
        "3 m m",
        "3 c m",
        "3 f t",
        "3 k m",
        "3 m m2",
        "3 k Pa",
        "3 mm H 2O",
        "3 k g/h",
        "3 r pm",
        "3 in ch",
    })
    void a_space_inside_a_word_of_a_unit_makes_it_no_unit(String text) {
        assertThat(QuantityText.read(text, List.of(Dimension.values()))).isInstanceOf(QuantityText.Read.Bad.class);
    }

    @ParameterizedTest
    @CsvSource({
        "3 in H2O", "3 in Hg", "3 mm Hg", "3 kPa abs", "3 inHg abs", "3 m3/h free", "3 m³ / h free", "3 sq ft",
                "3 deg C",
        "3 ° C", "3 K", "3 in. Hg", "3 inHg (32 degF)", "3 in wg", "3 EUR/1000 scf", "3 N m", "3 kg / (s·Pa)",
                "3 degC rise",
        "3 ft3/min actual", "3 per week",
    })
    void a_space_between_the_words_of_a_unit_does_not(String text) {
        assertThat(QuantityText.read(text, List.of(Dimension.values()))).isInstanceOf(QuantityText.Read.Good.class);
    }

    @ParameterizedTest
    @MethodSource("pressureUnits")
    void pressure_units_match_the_published_factors(Row row) {
        String name = row.text("unit");
        Unit unit = name.equals("atm")
                ? Units.find("atm", Dimension.ABSOLUTE_PRESSURE).orElseThrow()
                : Units.find(SYMBOL.getOrDefault(name, "none"), Dimension.PRESSURE_DIFFERENCE)
                        .orElseThrow();
        row.assertClose("pressure_Pa", unit.toSi(1));
    }

    @ParameterizedTest
    @MethodSource("vacuums")
    void one_vacuum_said_in_five_units_is_one_vacuum(Row row) {
        double inHg_Pa = si(row.text("vacuum_inHg") + " inHg", Dimension.PRESSURE_DIFFERENCE);
        for (String unit : List.of("inH2O", "kPa", "mbar", "psi")) {
            double other_Pa = si(row.text("vacuum_" + unit) + " " + unit, Dimension.PRESSURE_DIFFERENCE);
            assertClose(row + " " + unit, other_Pa, inHg_Pa, row.tolerance());
        }
        row.assertClose(
                "absolute_at_101325_Pa",
                new AbsolutePressure(101_325)
                        .minus(new PressureDifference(inHg_Pa))
                        .pascals());
    }

    @ParameterizedTest
    @MethodSource("flows")
    void standard_flow_is_a_mass_and_actual_flow_a_volume(Row row) {
        FreeAirFlow free = new FreeAirFlow(si(row.text("flow_scfm") + " scfm", Dimension.FREE_AIR_FLOW));
        row.assertClose("mass_flow_kg_s", free.mass().kgPerSecond());
        double acfm_m3PerS = si(row.text("flow_acfm") + " acfm", Dimension.ACTUAL_FLOW);
        assertClose(
                row + " acfm as m3/h",
                acfm_m3PerS,
                si(row.text("flow_actual_m3_h") + " m3/h", Dimension.ACTUAL_FLOW),
                row.tolerance());
        double mass_kgPerS = acfm_m3PerS * row.value("pressure_Pa") / (287.05287 * row.value("temperature_K"));
        row.assertClose("mass_flow_kg_s", mass_kgPerS);
    }

    @Test
    void a_normal_cubic_metre_holds_the_mass_of_air_at_zero_celsius() {
        Row normal = Reference.rows("air-standard-conditions.csv").get(0); // DIN 1343
        double perReference = si("1 Nm3/h", Dimension.FREE_AIR_FLOW) / si("1 m3/h free", Dimension.FREE_AIR_FLOW);
        normal.assertClose("mass_per_volume_relative_to_20degC_101325_dry", perReference);
    }

    /** Exact definitions: international foot and pound 1959, standard gravity, horsepower of 550 ft·lbf/s, US gallon of 231 in³. */
    @ParameterizedTest
    @CsvSource({
        "12 in,           0.3048,             LENGTH",
        "1 1/2 in,        0.0381,             LENGTH",
        "3/4 in,          0.01905,            LENGTH",
        "25 ft,           7.62,               LENGTH",
        "65 mil,          0.001651,           LENGTH",
        "1 ft2,           0.09290304,         AREA",
        "4 cm2,           0.0004,             AREA",
        "1 ft3,           0.028316846592,     VOLUME",
        "1 gal,           0.003785411784,     VOLUME",
        "1 hp,            745.69987158227022, POWER",
        "1 lb/min,        0.00755987283333,   MASS_FLOW",
        "3600 kg/h,       1,                  MASS_FLOW",
        "1 lb/ft3,        16.018463373960142, DENSITY",
        "1860 rpm,        31,                 ROTATIONAL_SPEED",
        "3000 ft/min,     15.24,              VELOCITY",
        "180 deg,         3.141592653589793,  ANGLE",
        "20 degC,         293.15,             TEMPERATURE",
        "68 F,            293.15,             TEMPERATURE",
        "212 °F,          373.15,             TEMPERATURE",
        "234 degF rise,   130,                TEMPERATURE_RISE",
        "130 K,           130,                TEMPERATURE_RISE",
        "35 %,            0.35,               RATIO",
        "0.62,            0.62,               RATIO",
        "14.695948775 psia, 101325,           ABSOLUTE_PRESSURE",
        "80 kPa abs,      80000,              ABSOLUTE_PRESSURE",
        "29.921255580 inHg abs, 101325,          ABSOLUTE_PRESSURE",
        "-3 m,            -3,                 LENGTH",
        "2 d,             172800,             DURATION",
        "1 kWh,           3600000,            ENERGY",
        "604800 /week,    1,                  FREQUENCY",
        "85 dB(A),        85,                 SOUND_LEVEL",
        "25 dB,           25,                 LEVEL_DIFFERENCE",
        "1 scf,           0.028316846592,     FREE_AIR_VOLUME",
        "3600000 EUR/kWh, 1,                  ENERGY_PRICE",
        "7200 USD/h,      2,                  TIME_PRICE",
        "0.028316846592 USD/scf, 1,           AIR_PRICE",
        "0.028316846592 USD/ft3 free, 1,      AIR_PRICE",
        "28.316846592 USD/1000 scf, 1,        AIR_PRICE",
        "14.5 GBP,        14.5,               MONEY",
        "8e-9 kg/(s.Pa),  8e-9,               LEAK_COEFFICIENT",
    })
    void quantities_are_read_to_their_exact_definitions(String text, double expected, Dimension dimension) {
        assertClose(text, si(text, dimension), expected, 1e-8);
    }

    /** Codes of the Unified Code for Units of Measure. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12 [in_i'Hg]   | 12 inHg     | PRESSURE_DIFFERENCE",
                "60 [in_i'H2O]  | 60 inH2O    | PRESSURE_DIFFERENCE",
                "0.178 m[Hg]    | 178 mmHg    | PRESSURE_DIFFERENCE",
                "7 [psi]        | 7 psi       | PRESSURE_DIFFERENCE",
                "3 [in_i]       | 3 in        | LENGTH",
                "84 [sft_i]     | 84 ft2      | AREA",
                "15 [HP]        | 15 hp       | POWER",
                "20 Cel         | 20 degC     | TEMPERATURE",
                "68 [degF]      | 68 degF     | TEMPERATURE",
                "2 [lb_av]/min  | 2 lb/min    | MASS_FLOW",
                "3000 [ft_i]/min| 3000 fpm    | VELOCITY",
                "5 in H₂O       | 5 inH2O     | PRESSURE_DIFFERENCE",
                "5 in. w.g.     | 5 inH2O     | PRESSURE_DIFFERENCE",
                "170 m³/h       | 170 m3/h    | ACTUAL_FLOW",
                "24 kPa absolute| 24 kPa abs  | ABSOLUTE_PRESSURE",
            })
    void ucum_codes_and_printed_forms_mean_the_same(String text, String plain, Dimension dimension) {
        assertThat(si(text, dimension)).isEqualTo(si(plain, dimension));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "100 cfm       | FREE_AIR_FLOW      | free air at 101 325 Pa  | scfm for free air, acfm for actual flow",
                "100 [cft_i]/min | ACTUAL_FLOW      | free air at 101 325 Pa  | scfm for free air, acfm for actual flow",
                "100 acfm      | FREE_AIR_FLOW      | actual volume flow (acfm) where a free-air flow belongs | scfm",
                "12 inHg       | ABSOLUTE_PRESSURE  | where an absolute pressure belongs | 12 inHg abs",
                "80 kPa abs    | PRESSURE_DIFFERENCE| absolute pressure (kPa abs) where a vacuum | without",
                "5 psig        | PRESSURE_DIFFERENCE| counted from the barometer upward | 12 inHg",
                "12 inhG       | PRESSURE_DIFFERENCE| unknown unit            | inHg",
                "25 fet        | LENGTH             | unknown unit            | ft",
                "20 degC       | TEMPERATURE_RISE   | where a temperature difference | K",
            })
    void a_wrong_unit_is_named_and_the_right_one_offered(
            String text, Dimension dimension, String message, String suggestion) {
        QuantityText.Read.Bad bad = (QuantityText.Read.Bad) QuantityText.read(text, List.of(dimension));
        assertThat(bad.message()).contains(message);
        assertThat(bad.suggestion().orElse("")).contains(suggestion);
    }

    @ParameterizedTest
    @CsvSource({
        "25,           without a unit",
        "'1,200 ft',   comma",
        "ft,           does not start with a number",
        "1e999 ft,     finite",
        "1/0 in,       finite",
        "NaN m,        does not start with a number",
        "'',           does not start with a number",
        "- 5 m,        does not start with a number",
    })
    void what_is_no_length_is_refused_with_a_reason(String text, String message) {
        QuantityText.Read.Bad bad = (QuantityText.Read.Bad) QuantityText.read(text, List.of(Dimension.LENGTH));
        assertThat(bad.message()).contains(message);
    }

    @ParameterizedTest
    @CsvSource({"4 psi, 4.0 psi, 27.6 kPa", "4 psig, 4.0 psi, 27.6 kPa", "0.3 barg, 4.4 psi, 30.0 kPa"})
    void what_a_gauge_shows_is_read_and_printed_in_psi_or_kilopascals(String text, String us, String si) {
        Quantity gauge =
                ((QuantityText.Read.Good) QuantityText.read(text, List.of(Dimension.GAUGE_PRESSURE))).quantity();
        assertThat(UnitSystem.US.format(gauge)).hasToString(us);
        assertThat(UnitSystem.SI.format(gauge)).hasToString(si);
    }

    @Test
    void a_time_below_three_seconds_keeps_its_decimals() {
        assertThat(UnitSystem.US.format(new Duration(0.5))).hasToString("0.50 s");
        assertThat(UnitSystem.SI.format(new Duration(16))).hasToString("16 s");
    }

    @Test
    void negative_absolute_values_are_refused() {
        assertThat(QuantityText.read("-1 kPa abs", List.of(Dimension.ABSOLUTE_PRESSURE)))
                .isEqualTo(new QuantityText.Read.Bad("a negative absolute pressure", Optional.empty()));
        assertThat(QuantityText.read("-300 degC", List.of(Dimension.TEMPERATURE)))
                .isEqualTo(new QuantityText.Read.Bad("a negative temperature", Optional.empty()));
    }

    @Test
    void every_unit_reads_back_what_it_writes() {
        for (Unit unit : Units.all()) {
            double si = unit.toSi(3.7);
            assertClose(unit.symbol(), unit.fromSi(si), 3.7, 1e-12);
            assertThat(Units.find(unit.symbol(), unit.dimension()))
                    .as(unit.symbol())
                    .contains(unit);
        }
    }

    @Test
    void a_quantity_is_not_said_in_a_unit_of_another_kind() {
        Unit psi = Units.find("psi", Dimension.PRESSURE_DIFFERENCE).orElseThrow();
        assertThat(psi.of(new PressureDifference(psi.toSi(1)))).isEqualTo(1);
        assertThatThrownBy(() -> psi.of(new AbsolutePressure(101_325)))
                .hasMessage("absolute pressure cannot be said in psi, a unit of vacuum or pressure difference");
    }

    private static double si(String text, Dimension dimension) {
        QuantityText.Read read = QuantityText.read(text, List.of(dimension));
        assertThat(read).as(text).isInstanceOf(QuantityText.Read.Good.class);
        return ((QuantityText.Read.Good) read).quantity().si();
    }

    /** What its type refuses is refused as text, with a sentence: never a fault of the program. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void a_kind_that_cannot_be_negative_is_refused_where_it_is_read(Dimension dimension) {
        boolean refused = false;
        try {
            dimension.of(-1);
        } catch (IllegalArgumentException negative) {
            refused = true;
        }
        for (Unit unit : Units.of(dimension)) {
            if (refused) {
                assertThat(QuantityText.read("-1e6 " + unit.symbol(), List.of(dimension)))
                        .as(unit.symbol())
                        .isInstanceOf(QuantityText.Read.Bad.class);
            }
        }
    }
}
