package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.air.Air;
import dustwright.engine.air.MoistAir;
import dustwright.engine.producer.Duty;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The invented machines behave as the trade knows machines of their kind and size: common practice, no source, unless another stands
 * beside the check. The bands are wide because the machines are invented.
 */
class DemoCatalogueTest {
    private static final double INCH_OF_MERCURY_Pa = 3386.389;
    private static final double HORSEPOWER_W = 745.6999;
    private static final double CUBIC_FOOT_PER_MINUTE = 0.3048 * 0.3048 * 0.3048 / 60;
    private static final Air SEA_LEVEL = MoistAir.atAltitude(new Length(0), new Temperature(293.15), 0.5);

    static List<VacuumProducer> all() {
        return CatalogueReader.demo().producers();
    }

    static Stream<VacuumProducer> lobes() {
        return all().stream().filter(p -> p.machine() instanceof Machine.LobePump);
    }

    private static VacuumProducer model(String name) {
        return all().stream().filter(p -> p.id().equals(name)).findFirst().orElseThrow();
    }

    private static PressureDifference inHg(double vacuum) {
        return new PressureDifference(vacuum * INCH_OF_MERCURY_Pa);
    }

    private static double hp(Duty duty) {
        return duty.shaftPower().watts() / HORSEPOWER_W;
    }

    @Test
    void there_is_a_lobe_pump_for_every_motor_from_3_to_100_hp() {
        assertThat(lobes().mapToDouble(p -> p.nameplate().watts() / HORSEPOWER_W))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-3 ? 0 : Double.compare(a, b))
                .containsExactly(3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 75.0, 100.0);
    }

    /** A 15 hp lobe pump serves such a system up to about 14 inHg; so do the other sizes with their motors. */
    @ParameterizedTest
    @MethodSource("lobes")
    void the_motor_carries_its_lobe_pump_to_about_14_inHg(VacuumProducer pump) {
        assertThat(Duty.at(pump, SEA_LEVEL, inHg(13.3)).misses()).isEmpty();
        assertThat(Duty.at(pump, SEA_LEVEL, inHg(14.7)).misses()).contains(Duty.Miss.POWER);
    }

    /** Three users of 95 to 100 scfm with leaks: 325 scfm at about 7 inHg, a pump near 500 cfm, 9 hp at the shaft, 15 hp motor. */
    @Test
    void three_users_take_the_15_hp_lobe_pump_and_no_smaller_one() {
        List<Duty> serving = lobes().map(
                        p -> Duty.of(p, SEA_LEVEL, inHg(7), new FreeAirFlow(325 * CUBIC_FOOT_PER_MINUTE)))
                .filter(Duty::serves)
                .toList();
        Duty smallest = serving.get(0);
        assertThat(smallest.producer().id()).isEqualTo("DL-15");
        assertThat(hp(smallest)).isCloseTo(9, within(0.1 * 9));
        double displaced_m3PerS = ((Machine.LobePump) smallest.producer().machine())
                        .displacement()
                        .cubicMetres()
                * smallest.speed().revolutionsPerSecond();
        assertThat(displaced_m3PerS / CUBIC_FOOT_PER_MINUTE).isCloseTo(500, within(50.0));
    }

    /** ΔT = T1 · (Δp/p1) · 0.286/η with η 0.75: own calculation of the trade's rule, 20 °C at sea level. */
    @ParameterizedTest
    @CsvSource({"8, 41", "10, 56", "12, 75", "15, 112"})
    void the_air_of_a_lobe_pump_rises_as_the_rule_says(double vacuum_inHg, double rise_K) {
        double ours_K = Duty.at(model("DL-15"), SEA_LEVEL, inHg(vacuum_inHg))
                .rise()
                .orElseThrow()
                .kelvin();
        assertThat(ours_K).isCloseTo(rise_K, within(0.15 * rise_K));
    }

    /** hp = 0.00436 · displaced cfm · psi / 0.9: the factor is 144 in²/ft² over 33 000 ft·lbf/(min·hp). */
    @ParameterizedTest
    @MethodSource("lobes")
    void the_power_of_a_lobe_pump_follows_the_rule_of_the_trade(VacuumProducer pump) {
        double vacuum_psi = 10 * INCH_OF_MERCURY_Pa / 6894.757;
        Duty duty = Duty.at(pump, SEA_LEVEL, inHg(10));
        double displaced_cfm =
                ((Machine.LobePump) pump.machine()).displacement().cubicMetres()
                        * duty.speed().revolutionsPerSecond()
                        / CUBIC_FOOT_PER_MINUTE;
        assertThat(hp(duty)).isCloseTo(0.00436 * displaced_cfm * vacuum_psi / 0.9, within(0.05 * hp(duty)));
    }

    /** Dynamic machines end at 5 to 8 inHg; what a system asks beyond that takes a displacement machine. */
    @ParameterizedTest
    @CsvSource({"multistage centrifugal, 5, 8.5", "side channel, 4, 8.5"})
    void dynamic_machines_end_where_the_trade_expects(String kind, double serves_inHg, double never_inHg) {
        all().stream().filter(p -> p.machine().kind().equals(kind)).forEach(p -> {
            assertThat(deepest_inHg(p)).as(p.id()).isBetween(serves_inHg, never_inHg);
        });
    }

    private static double deepest_inHg(VacuumProducer p) {
        return Stream.iterate(0.1, v -> v < 25, v -> v + 0.1)
                .filter(v -> Duty.at(p, SEA_LEVEL, inHg(v)).serves())
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("all")
    void every_machine_serves_some_duty_at_its_own_speed(VacuumProducer p) {
        assertThat(deepest_inHg(p)).isPositive();
    }

    /** Machine Design, "Vacuum pumps": 24 inHg at sea level is 17.6 inHg at a barometer of 22 inHg: the ratio stays. */
    @Test
    void a_high_site_takes_vacuum_from_every_machine_in_proportion_to_its_barometer() {
        Air high = MoistAir.atAltitude(new Length(1500), new Temperature(293.15), 0.5);
        double share = high.ambient().pascals() / 101_325;
        assertThat(share).isCloseTo(0.835, within(0.001));
        assertThat(all()).allSatisfy(p -> {
            double limit_Pa = p.deepestVacuum().pascals() * share;
            assertThat(Duty.at(p, high, new PressureDifference(1.01 * limit_Pa)).misses())
                    .contains(Duty.Miss.VACUUM);
            assertThat(Duty.at(p, high, new PressureDifference(0.99 * limit_Pa)).misses())
                    .doesNotContain(Duty.Miss.VACUUM);
        });
    }

    /** Its water takes the heat: an energy balance on the air alone would show a liquid-ring pump as hot as a dry one. */
    @Test
    void no_temperature_rise_of_the_air_is_claimed_for_a_liquid_ring_pump() {
        assertThat(Duty.at(model("DR-15"), SEA_LEVEL, inHg(15)).rise()).isEqualTo(Optional.empty());
        assertThat(Duty.at(model("DK-15"), SEA_LEVEL, inHg(15))
                        .rise()
                        .orElseThrow()
                        .kelvin())
                .isPositive();
    }
}
