package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.air.Air;
import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Step;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.Model;
import dustwright.engine.producer.ProducerLaw;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.receiver.FilterCondition;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is asked of a vacuum producer, in states that break it and states that keep it. */
class ProducerChecksTest {
    private static final double INCH_OF_MERCURY_Pa = 3386.389;
    private static final double HORSEPOWER_W = 745.6999;

    private static Machine curve(String kind, double shutOff_kPa) {
        return new Machine.CurveMachine(
                kind,
                RotationalSpeed.ofRpm(3500),
                new Density(1.2),
                kind.equals("side channel"),
                List.of(
                        point(0.12, 0.2 * shutOff_kPa, 2000),
                        point(0.08, 0.6 * shutOff_kPa, 2500),
                        point(0, shutOff_kPa, 3000)));
    }

    private static Machine.CurvePoint point(double flow_m3PerS, double vacuum_kPa, double power_W) {
        return new Machine.CurvePoint(
                new ActualVolumeFlow(flow_m3PerS), new PressureDifference(1000 * vacuum_kPa), new Power(power_W));
    }

    /** A lobe pump, and beside it a machine that makes 10 kPa at the most. */
    private static Plant pair(Machine beside) {
        return new PlantSketch()
                .tube("T3", 0.0729, 4.5e-5)
                .points("J")
                .inlet("A")
                .run("D", "A", "J", "T3", 10, 1)
                .run("M", "J", "REC", "T3", 20, 1)
                .station("REC")
                .lobe("P1", 0.2)
                .producer("P2", beside, new Drive.Fixed(RotationalSpeed.ofRpm(3500)))
                .and()
                .plant();
    }

    private static List<Finding> findings(Plant plant) {
        State state = States.open(plant, List.of("A"), FilterCondition.CLEAN);
        return Study.of(plant, List.of(state)).states().get(0).findings();
    }

    private static List<Finding> of(Plant plant, String producer) {
        return findings(plant).stream()
                .filter(f -> f.where().id().equals(producer))
                .toList();
    }

    @Test
    void a_producer_that_runs_behind_a_shut_check_valve_is_told_and_its_temperature_is_not_called_fine() {
        List<Finding> weak = of(pair(curve("side channel", 10)), "P2");
        assertThat(weak)
                .extracting(Finding::code)
                .contains(FindingCode.PRODUCER_SHUT)
                .doesNotContain(FindingCode.PRODUCER_TEMPERATURE);
        Finding shut = weak.stream()
                .filter(f -> f.code() == FindingCode.PRODUCER_SHUT)
                .findFirst()
                .orElseThrow();
        assertThat(shut.holds()).isFalse();
        assertThat(shut.value().si()).isGreaterThan(shut.limit().si());
        Step last = shut.derivation().steps().get(0);
        assertThat(last.result().value()).isEqualTo(shut.limit());
        assertThat(of(pair(curve("side channel", 400)), "P2"))
                .extracting(Finding::code)
                .contains(FindingCode.PRODUCER_TEMPERATURE)
                .doesNotContain(FindingCode.PRODUCER_SHUT);
    }

    @Test
    void the_vacuum_without_flow_parts_vacuums_at_which_air_passes_from_those_at_which_none_does() {
        SplittableRandom random = new SplittableRandom(20261125);
        for (int n = 0; n < 200; n++) {
            double shutOff_kPa = 3 + 40 * random.nextDouble();
            double speed_perS = (2000 + 2000 * random.nextDouble()) / 60;
            VacuumProducer producer = pair(curve(random.nextBoolean() ? "side channel" : "claw", shutOff_kPa))
                    .station("REC")
                    .producers()
                    .get(1);
            ProducerLaw law = new ProducerLaw(producer, PlantSketch.SEA_LEVEL_AIR);
            double between_Pa = law.vacuumWithoutFlow_Pa(speed_perS, 90_000);
            assertThat(law.massFlow_kgPerS(101_325 - between_Pa + 20, speed_perS))
                    .isPositive();
            assertThat(law.massFlow_kgPerS(101_325 - between_Pa - 20, speed_perS))
                    .isZero();
        }
    }

    private static VacuumProducer with(
            Drive drive, double serviceFactor, Optional<Model> model, Optional<Temperature> sealWater, String kind) {
        return new VacuumProducer(
                "P1",
                curve(kind, 80),
                drive,
                new Motor(
                        new Power(10 * HORSEPOWER_W),
                        serviceFactor,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                new PressureDifference(25 * INCH_OF_MERCURY_Pa),
                new TemperatureRise(100),
                RotationalSpeed.ofRpm(1000),
                RotationalSpeed.ofRpm(3600),
                Optional.empty(),
                false,
                model,
                Optional.empty(),
                sealWater,
                VacuumProducer.Sound.UNKNOWN);
    }

    @Test
    void a_service_factor_raises_the_limit_of_a_motor_but_not_on_a_drive_nor_on_a_mountain() {
        AbsolutePressure sea = new AbsolutePressure(101_325);
        Drive fixed = new Drive.Fixed(RotationalSpeed.ofRpm(3500));
        Drive holding = new Drive.Holding(
                RotationalSpeed.ofRpm(1000), RotationalSpeed.ofRpm(3600), new PressureDifference(20_000));
        VacuumProducer belted = with(fixed, 1.15, Optional.empty(), Optional.empty(), "claw");
        assertThat(belted.powerLimit(air(sea, 20)).watts()).isCloseTo(11.5 * HORSEPOWER_W, within(1e-6));
        assertThat(belted.powerLimit(air(new AbsolutePressure(84_500), 20)).watts())
                .isCloseTo(10 * HORSEPOWER_W, within(1e-6));
        assertThat(belted.powerLimit(air(sea, 55)).watts()).isCloseTo(10 * HORSEPOWER_W, within(1e-6));
        assertThat(with(holding, 1.15, Optional.empty(), Optional.empty(), "claw")
                        .powerLimit(air(sea, 20))
                        .watts())
                .isCloseTo(10 * HORSEPOWER_W, within(1e-6));
    }

    private static Air air(AbsolutePressure barometer, double celsius) {
        return new Air(barometer, new Temperature(273.15 + celsius), 287.05, 1.8134e-5);
    }

    /** Machine Design, "Vacuum pumps": 24 inHg at sea level is 17.6 inHg at a barometer of 22 inHg. */
    @Test
    void a_limit_of_vacuum_is_carried_to_the_barometer_whoever_states_it() {
        AbsolutePressure mountain = new AbsolutePressure(22 * INCH_OF_MERCURY_Pa);
        Drive fixed = new Drive.Fixed(RotationalSpeed.ofRpm(3500));
        Model model = new Model("X", "Shop", "own tests", false);
        VacuumProducer listed = with(fixed, 1, Optional.of(model), Optional.empty(), "claw");
        assertThat(listed.vacuumLimit(mountain).pascals())
                .isCloseTo(25 * INCH_OF_MERCURY_Pa * 17.6 / 24, within(0.003 * 25 * INCH_OF_MERCURY_Pa));
        assertThat(listed.sourceOf("deepest vacuum").confidence()).isEqualTo(Confidence.CATALOGUE);
        VacuumProducer stated =
                with(fixed, 1, Optional.of(model.with(List.of("deepest vacuum"), List.of())), Optional.empty(), "claw");
        assertThat(stated.vacuumLimit(mountain)).isEqualTo(listed.vacuumLimit(mountain));
        assertThat(stated.sourceOf("deepest vacuum").confidence()).isEqualTo(Confidence.ENTERED);
    }

    /** Water of 60 °C boils at 19.95 kPa (IAPWS): 101.325 − 19.95 = 81.4 kPa, less than the stated 25 inHg = 84.7 kPa. */
    @Test
    void hot_seal_water_takes_vacuum_from_a_liquid_ring_pump_and_cold_water_does_not() {
        AbsolutePressure sea = new AbsolutePressure(101_325);
        Drive fixed = new Drive.Fixed(RotationalSpeed.ofRpm(3500));
        VacuumProducer hot = with(fixed, 1, Optional.empty(), Optional.of(new Temperature(333.15)), "liquid ring");
        assertThat(hot.vacuumLimit(sea).pascals()).isCloseTo(81_380, within(100.0));
        VacuumProducer cold = with(fixed, 1, Optional.empty(), Optional.of(new Temperature(288.15)), "liquid ring");
        assertThat(cold.vacuumLimit(sea).pascals()).isCloseTo(25 * INCH_OF_MERCURY_Pa, within(1e-6));
    }

    @Test
    void no_temperature_is_judged_where_seal_water_takes_the_heat() {
        Plant plant = pair(curve("liquid ring", 80));
        assertThat(of(plant, "P2"))
                .extracting(Finding::code)
                .contains(FindingCode.PRODUCER_POWER)
                .doesNotContain(FindingCode.PRODUCER_TEMPERATURE);
        assertThat(of(plant, "P1")).extracting(Finding::code).contains(FindingCode.PRODUCER_TEMPERATURE);
    }

    private static VacuumProducer ofOneSpeed(VacuumProducer producer) {
        RotationalSpeed speed = ((Drive.Fixed) producer.drive()).speed();
        return new VacuumProducer(
                producer.id(),
                producer.machine(),
                producer.drive(),
                producer.motor(),
                producer.deepestVacuum(),
                producer.greatestRise(),
                speed,
                speed,
                producer.silencer(),
                producer.standby());
    }

    @Test
    void a_speed_is_judged_where_the_machine_has_a_range_of_speeds_and_nowhere_else() {
        Plant ranges = pair(curve("side channel", 400));
        assertThat(of(ranges, "P2")).extracting(Finding::code).contains(FindingCode.PRODUCER_SPEED);
        Station station = ranges.stations().get(0);
        List<VacuumProducer> oneSpeed =
                station.producers().stream().map(ProducerChecksTest::ofOneSpeed).toList();
        assertThat(findings(ranges.withStation(station.withProducers(oneSpeed, station.relief()))))
                .extracting(Finding::code)
                .contains(FindingCode.PRODUCER_POWER)
                .doesNotContain(FindingCode.PRODUCER_SPEED);
    }

    /** A lobe pump on a drive of 700 to 2200 rpm. */
    private static Optional<Finding> held(double asked_inHg) {
        Plant plant = new PlantSketch()
                .tube("T3", 0.0729, 4.5e-5)
                .points("J")
                .inlet("A")
                .run("D", "A", "J", "T3", 10, 1)
                .run("M", "J", "REC", "T3", 20, 1)
                .station("REC")
                .holdingLobe("P1", 0.2, asked_inHg)
                .and()
                .plant();
        return of(plant, "P1").stream()
                .filter(f -> f.code() == FindingCode.DRIVE_VACUUM)
                .findFirst();
    }

    @Test
    void a_drive_that_cannot_hold_its_vacuum_is_told_in_the_state_that_shows_it_from_either_side() {
        assertThat(held(6)).isEmpty();
        Finding weak = held(18).orElseThrow();
        assertThat(weak.holds()).isFalse();
        assertThat(weak.side()).isEqualTo(Side.AT_LEAST);
        assertThat(weak.value().si()).isLessThan(weak.limit().si());
        Finding deep = held(0.5).orElseThrow();
        assertThat(deep.holds()).isFalse();
        assertThat(deep.side()).isEqualTo(Side.AT_MOST);
    }

    @Test
    void a_standing_by_producer_is_not_judged_until_it_runs() {
        Station station = pair(curve("claw", 60)).station("REC");
        assertThat(station.producers()).hasSize(2);
        Plant plant = pair(curve("claw", 60));
        State one = States.open(plant, List.of("A"), FilterCondition.CLEAN).withRunning(java.util.Set.of("P1"));
        List<Finding> findings = Study.of(plant, List.of(one)).states().get(0).findings();
        assertThat(findings).noneMatch(f -> f.where().id().equals("P2"));
    }
}
