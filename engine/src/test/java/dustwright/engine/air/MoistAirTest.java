package dustwright.engine.air;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MoistAirTest {
    static List<Row> atmosphere() {
        return Reference.rows("air-atmosphere.csv");
    }

    static List<Row> humid() {
        return Reference.everyRow(
                "air-humid.csv"); // only its CIPM-2007 column is from memory; it serves as a second opinion
    }

    static List<Row> saturation() {
        return Reference.rows("air-saturation.csv");
    }

    static List<Row> verification() {
        return Reference.rows("air-saturation-if97-verification.csv");
    }

    static List<Row> viscosity() {
        return Reference.everyRow(
                "air-viscosity.csv"); // only its three-coefficient column is from memory, and is not used
    }

    static List<Row> standardConditions() {
        return Reference.rows("air-standard-conditions.csv");
    }

    @ParameterizedTest
    @MethodSource("atmosphere")
    void barometer_falls_with_altitude_as_iso_2533_says(Row row) {
        double altitude_m = row.value("altitude_geometric_m");
        row.assertClose("altitude_geopotential_m", StandardAtmosphere.geopotential_m(altitude_m));
        row.assertClose("temperature_K", StandardAtmosphere.temperature_K(altitude_m));
        row.assertClose("pressure_Pa", StandardAtmosphere.pressure_Pa(altitude_m));
        row.assertClose("pressure_lib_Pa", StandardAtmosphere.pressure_Pa(altitude_m));
        double density_kgPerM3 = StandardAtmosphere.pressure_Pa(altitude_m)
                / (MoistAir.DRY_GAS_CONSTANT_JPerKgK * StandardAtmosphere.temperature_K(altitude_m));
        row.assertClose("density_kg_m3", density_kgPerM3);
    }

    @ParameterizedTest
    @MethodSource("verification")
    void saturation_pressure_meets_the_verification_values_of_its_standard(Row row) {
        row.assertClose("psat_Pa", SaturationPressure.if97_Pa(row.value("temperature_K")));
    }

    @ParameterizedTest
    @MethodSource("saturation")
    void saturation_pressure_over_water_and_ice(Row row) {
        double t = row.value("temperature_K");
        boolean ice = row.text("phase").equals("ice");
        row.assertClose(
                "psat_hyland_wexler_Pa",
                ice ? SaturationPressure.hylandWexlerOverIce_Pa(t) : SaturationPressure.hylandWexlerOverWater_Pa(t));
        if (row.has("psat_if97_Pa")) {
            row.assertClose("psat_if97_Pa", SaturationPressure.if97_Pa(t));
        }
        row.assertClose("psat_hyland_wexler_Pa", SaturationPressure.of_Pa(t));
        if (row.has("psat_magnus_Pa")) {
            assertClose("Magnus form", SaturationPressure.of_Pa(t), row.value("psat_magnus_Pa"), 6e-3);
        }
    }

    @ParameterizedTest
    @MethodSource("humid")
    void humid_air_has_the_density_of_the_ideal_mixture(Row row) {
        double pressure_Pa = row.value("pressure_Pa");
        double temperature_K = row.value("temperature_K");
        double humidity = row.value("relative_humidity");
        double vapour_Pa = MoistAir.vapourPressure_Pa(temperature_K, humidity);
        row.assertClose("psat_Pa", SaturationPressure.of_Pa(temperature_K));
        row.assertClose("vapour_pressure_Pa", vapour_Pa);
        row.assertClose("humidity_ratio_kg_kg", MoistAir.humidityRatio(pressure_Pa, vapour_Pa));

        Air air = MoistAir.atBarometer(new AbsolutePressure(pressure_Pa), new Temperature(temperature_K), humidity);
        assertClose("R", air.gasConstant_JPerKgK(), row.value("gas_constant_moist_J_kgK"), 1e-5);
        assertClose("density", air.density_kgPerM3(pressure_Pa), row.value("density_kg_m3"), 1e-5);
        if (row.has("density_cipm2007_kg_m3")) {
            Reference.report(
                    row,
                    "ideal mixture over CIPM-2007 (coefficients from memory): "
                            + air.density_kgPerM3(pressure_Pa) / row.value("density_cipm2007_kg_m3"));
        }
    }

    @ParameterizedTest
    @MethodSource("viscosity")
    void viscosity_is_that_of_the_standard_atmosphere(Row row) {
        assertClose(
                "viscosity",
                AirViscosity.sutherland_PaS(row.value("temperature_K")),
                row.value("viscosity_Pa_s"),
                1e-6);
    }

    @ParameterizedTest
    @MethodSource("standardConditions")
    void reference_states_of_the_trade_have_their_density(Row row) {
        double pressure_Pa = row.value("pressure_Pa");
        double vapour_Pa = MoistAir.vapourPressure_Pa(row.value("temperature_K"), row.value("relative_humidity"));
        double rt = MoistAir.gasConstant_JPerKgK(pressure_Pa, vapour_Pa) * row.value("temperature_K");
        row.assertClose("density_kg_m3", pressure_Pa / rt);
    }

    @Test
    void ice_and_water_meet_at_the_freezing_point() {
        assertClose(
                "0 degC",
                SaturationPressure.hylandWexlerOverIce_Pa(273.15),
                SaturationPressure.hylandWexlerOverWater_Pa(273.15),
                1e-4);
        assertClose("0 degC", SaturationPressure.of_Pa(273.1499999), SaturationPressure.of_Pa(273.15), 2e-4);
    }

    @Test
    void water_makes_air_lighter_and_altitude_thinner() {
        Temperature warm = new Temperature(303.15);
        Air dry = MoistAir.atAltitude(new Length(0), warm, 0);
        Air damp = MoistAir.atAltitude(new Length(0), warm, 0.9);
        Air high = MoistAir.atAltitude(new Length(1500), warm, 0);
        assertThat(damp.density_kgPerM3(101_325)).isLessThan(dry.density_kgPerM3(101_325));
        assertThat(high.ambient().pascals()).isBetween(84_000.0, 85_000.0);
    }

    @Test
    void percent_given_for_a_fraction_and_impossible_places_are_refused() {
        Temperature warm = new Temperature(293.15);
        assertThatThrownBy(() -> MoistAir.atAltitude(new Length(0), warm, 50))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("RH = 50 ");
        assertThatThrownBy(() -> MoistAir.atAltitude(new Length(12_000), warm, 0.5))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MoistAir.atBarometer(new AbsolutePressure(1013.25), warm, 0.5))
                .isInstanceOf(OutOfRangeException.class);
    }
}
