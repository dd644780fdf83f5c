package dustwright.engine.producer;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.air.Air;
import dustwright.engine.air.SaturationPressure;
import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.electrical.Motor;
import dustwright.engine.producer.Machine.CurveMachine;
import dustwright.engine.producer.Machine.CurvePoint;
import dustwright.engine.producer.Machine.LobePump;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class VacuumProducerTest {
    private static final double INHG_Pa = 3386.389;
    private static final double ATMOSPHERE_Pa = 101_325;
    private static final double CFM_m3PerS = 4.719474e-4;
    private static final double HP_W = 745.70;
    private static final double PSI_Pa = 6894.757;

    private static final Air AIR =
            new Air(new AbsolutePressure(ATMOSPHERE_Pa), new Temperature(293.15), 287.05, 1.8134e-5);
    /** The model machine of the published rows; its mechanical loss is a fixed 2 kW. */
    private static final LobePump LOBE =
            new LobePump(new Volume(0.010), RotationalSpeed.ofRpm(150), 1, new Power(2000));

    private static final double FULL_perS = 30;

    private static Row row(String id) {
        return Reference.everyRow("equipment-blowers.csv").stream()
                .filter(row -> row.text("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static void check(String id, double actual) {
        Row row = row(id);
        assertClose(id + " " + row.text("case"), actual, row.value("expected"), row.value("tol_rel"));
    }

    private static void checkNot(String id, double actual) {
        Row row = Reference.everyRow("equipment-traps.csv").stream()
                .filter(each -> each.text("id").equals(id))
                .findFirst()
                .orElseThrow();
        double wrong = row.value("expected");
        assertThat(Math.abs(actual - wrong)).as(id).isGreaterThan(row.value("tol_rel") * wrong);
    }

    private static double density(double vacuum_inHg) {
        return AIR.density_kgPerM3(ATMOSPHERE_Pa - vacuum_inHg * INHG_Pa);
    }

    private static double flow(double vacuum_inHg, double speed_perS) {
        return LOBE.inletFlow_m3PerS(vacuum_inHg * INHG_Pa, density(vacuum_inHg), speed_perS);
    }

    private static VacuumProducer producer(Machine machine, Optional<StatedLoss> silencer) {
        return new VacuumProducer(
                "P1",
                machine,
                new Drive.Fixed(RotationalSpeed.ofRpm(1800)),
                Motor.of(new Power(15_000)),
                new PressureDifference(16 * INHG_Pa),
                new TemperatureRise(130),
                RotationalSpeed.ofRpm(700),
                RotationalSpeed.ofRpm(2200),
                silencer,
                false);
    }

    private static ProducerLaw law(Machine machine) {
        return new ProducerLaw(producer(machine, Optional.empty()), AIR);
    }

    private static double rise(double vacuum_inHg, double speed_perS) {
        double inlet_Pa = ATMOSPHERE_Pa - vacuum_inHg * INHG_Pa;
        ProducerLaw law = law(LOBE);
        return law.rise_K(inlet_Pa, law.massFlow_kgPerS(inlet_Pa, speed_perS), speed_perS);
    }

    @Test
    void lobe_pump_gives_the_published_slip_flow_and_power() {
        check(
                "BLW-01",
                AIR.ambient().minus(new PressureDifference(12 * INHG_Pa)).pascals());
        check("BLW-02", LOBE.inletFlow_m3PerS(0, 1.2, FULL_perS));
        check("BLW-03", 60 * LOBE.slip_perS(12 * INHG_Pa, density(12)));
        checkNot("TRP-01", 60 * LOBE.slip_perS(12 * INHG_Pa, density(12)));
        check("BLW-04", flow(12, FULL_perS));
        check("BLW-05", flow(12, FULL_perS) / 0.3);
        check("BLW-06", LOBE.airPower_W(12 * INHG_Pa, density(12), FULL_perS));
        checkNot("TRP-02", LOBE.airPower_W(12 * INHG_Pa, density(12), FULL_perS));
        check("BLW-07", LOBE.shaftPower_W(12 * INHG_Pa, density(12), FULL_perS));
        check("BLW-08", law(LOBE).massFlow_kgPerS(ATMOSPHERE_Pa - 12 * INHG_Pa, FULL_perS));
        check("BLW-11", flow(16, FULL_perS));
        check("BLW-12", flow(12, FULL_perS / 2) / flow(12, FULL_perS));
        check("BLW-14", LOBE.airPower_W(6 * PSI_Pa, 1, 1000 * CFM_m3PerS / 0.010) / HP_W);
        double hot = (150 + 459.67) / (68 + 459.67);
        check("BLW-15", LOBE.slip_perS(1e4, 1 / hot) / LOBE.slip_perS(1e4, 1));
    }

    @Test
    void lobe_pump_heats_its_air_as_the_energy_balance_says() {
        check("BLW-09", rise(12, FULL_perS));
        checkNot("TRP-03", rise(12, FULL_perS));
        check("BLW-10", rise(16, FULL_perS));
        check("BLW-13", rise(12, FULL_perS / 2));
    }

    @Test
    void work_per_turn_is_reported_beside_a_remembered_example() {
        double work_kJ = new LobePump(new Volume(0.03), RotationalSpeed.ofRpm(1), 1, new Power(0))
                        .airPower_W(0.5 * 1.013e5, 1, 1)
                / 1000;
        Reference.report(row("BLW-16"), "from memory, not asserted: printed 1.5195, computed " + work_kJ + " kJ");
        assertClose("V dp", work_kJ, 0.03 * 50.65, 1e-12); // by definition
    }

    @Test
    void speed_for_a_flow_gives_back_that_flow() {
        for (Machine machine : List.of(LOBE, CENTRIFUGAL, CLAW)) {
            ProducerLaw law = law(machine);
            double inlet_Pa = ATMOSPHERE_Pa - 5 * INHG_Pa;
            double w = law.massFlow_kgPerS(inlet_Pa, 31);
            assertClose("speed", law.speed_perS(inlet_Pa, w), 31, 1e-12);
        }
    }

    @Test
    void speed_stays_within_the_drives_range() {
        ProducerLaw law = law(LOBE);
        assertClose("least", law.speed_perS(80_000, 0), 700 / 60.0, 1e-15);
        assertClose("greatest", law.speed_perS(80_000, 9), 2200 / 60.0, 1e-15);
    }

    @Test
    void check_valve_lets_nothing_run_back() {
        assertThat(law(LOBE).massFlow_kgPerS(30_000, 700 / 60.0)).isZero();
        assertThat(law(LOBE).massFlowSlope_kgPerSPa(30_000, 0, 700 / 60.0)).isZero();
    }

    @Test
    void silencer_loss_belongs_to_the_pumps_pressure_difference() {
        StatedLoss silencer =
                new StatedLoss(new PressureDifference(2000), new FreeAirFlow(0.16), StatedLoss.State.SITE);
        for (Machine machine : List.of(LOBE, CENTRIFUGAL, CLAW)) {
            ProducerLaw law = new ProducerLaw(producer(machine, Optional.of(silencer)), AIR);
            double inlet_Pa = ATMOSPHERE_Pa - 4 * INHG_Pa;
            double w = law.massFlow_kgPerS(inlet_Pa, FULL_perS);
            double difference_Pa =
                    4 * INHG_Pa + 2000 * Math.pow(w / silencer.at().mass().kgPerSecond(), 2);
            double density = AIR.density_kgPerM3(inlet_Pa);
            assertClose("difference", law.difference_Pa(inlet_Pa, w), difference_Pa, 1e-12);
            assertClose(
                    "flow",
                    w,
                    density * machine.law(AIR.ambient()).inletFlow_m3PerS(difference_Pa, density, FULL_perS),
                    1e-12);
            assertThat(w).isLessThan(law(machine).massFlow_kgPerS(inlet_Pa, FULL_perS));
        }
    }

    /** A rating on standard air, 1.2041 kg/m³, at a barometer of 84 560 Pa and 20 °C dry: 1.2041/1.00486 as much at one mass flow. */
    @Test
    void a_loss_rated_on_standard_air_is_greater_where_the_air_is_thinner() {
        Air thin = new Air(new AbsolutePressure(84_560), new Temperature(293.15), 287.05, 1.8134e-5);
        StatedLoss rated =
                new StatedLoss(new PressureDifference(2000), new FreeAirFlow(0.16), StatedLoss.State.STANDARD);
        assertClose("standard", rated.atSite(thin).pascals(), 2000 * 101_325 / 84_560.0, 1e-4);
        StatedLoss own = new StatedLoss(new PressureDifference(2000), new FreeAirFlow(0.16), StatedLoss.State.SITE);
        assertThat(own.atSite(thin).pascals()).isEqualTo(2000);
        double ratio = rated.squaredPressurePerSquareFlow(thin) / own.squaredPressurePerSquareFlow(thin);
        assertClose("in the suction line", ratio, 101_325 / 84_560.0, 1e-4);
    }

    @Test
    void slopes_are_those_of_the_flow() {
        StatedLoss silencer =
                new StatedLoss(new PressureDifference(2000), new FreeAirFlow(0.16), StatedLoss.State.SITE);
        SplittableRandom random = new SplittableRandom(3);
        for (Machine machine : List.of(LOBE, CENTRIFUGAL, CLAW)) {
            ProducerLaw law = new ProducerLaw(producer(machine, Optional.of(silencer)), AIR);
            for (int n = 0; n < 200; n++) {
                double inlet_Pa = random.nextDouble(75_000, 97_000);
                double speed_perS = random.nextDouble(28, 37);
                double w = law.massFlow_kgPerS(inlet_Pa, speed_perS);
                double numeric = (law.massFlow_kgPerS(inlet_Pa + 0.5, speed_perS)
                        - law.massFlow_kgPerS(inlet_Pa - 0.5, speed_perS));
                assertClose("slope", law.massFlowSlope_kgPerSPa(inlet_Pa, w, speed_perS), numeric, 1e-4, 1e-10);
            }
        }
    }

    @Test
    void deepest_vacuum_follows_the_barometer() {
        VacuumProducer rated = producer(LOBE, Optional.empty());
        double mountain_Pa = StandardAtmosphere.pressure_Pa(1524);
        check("BLW-21", mountain_Pa / 1000);
        check("BLW-22", rated.deepestVacuumAt(new AbsolutePressure(mountain_Pa)).pascals() / INHG_Pa);
        check(
                "BLW-20",
                rated.deepestVacuumAt(new AbsolutePressure(22 * INHG_Pa)).pascals() * 24 / 16 / INHG_Pa);
        check("BLW-23", (ATMOSPHERE_Pa - SaturationPressure.of_Pa(303.15)) / INHG_Pa);
    }

    /** Invented curve through the duty of the published affinity rows: 1000 cfm and 80 inH2O at 30 hp and 3550 rpm. */
    /** PRD-29 against the work dW = V dp of cooled compression, p V constant, summed over 100 000 steps of pressure. */
    @Test
    void no_machine_takes_less_than_slow_cooled_compression() {
        double outlet = 101_325;
        double inlet = outlet - 18_000;
        double step = (outlet - inlet) / 100_000;
        double work = 0;
        for (int n = 0; n < 100_000; n++) {
            work += 0.07 * inlet / (inlet + (n + 0.5) * step) * step;
        }
        assertClose(
                "least power",
                LeastPower.of(new ActualVolumeFlow(0.07), new PressureDifference(18_000))
                        .watts(),
                work,
                1e-8);
    }

    private static final CurveMachine CENTRIFUGAL = new CurveMachine(
            "multistage centrifugal",
            RotationalSpeed.ofRpm(1800),
            new Density(1.2041),
            true,
            List.of(
                    point(1600 * CFM_m3PerS, 40 * 249.089, 38 * HP_W),
                    point(1000 * CFM_m3PerS, 80 * 249.089, 30 * HP_W),
                    point(300 * CFM_m3PerS, 100 * 249.089, 18 * HP_W)));

    private static final CurveMachine CLAW = new CurveMachine(
            "claw",
            RotationalSpeed.ofRpm(1800),
            new Density(1.2041),
            false,
            List.of(point(0.16, 5000, 4000), point(0.155, 20_000, 6000), point(0.14, 40_000, 9000)));

    private static CurvePoint point(double flow_m3PerS, double vacuum_Pa, double power_W) {
        return new CurvePoint(new ActualVolumeFlow(flow_m3PerS), new PressureDifference(vacuum_Pa), new Power(power_W));
    }

    @Test
    void affinity_carries_a_centrifugal_curve_to_another_speed_and_density() {
        MachineLaw law = CENTRIFUGAL.law(AIR.ambient());
        double slower = 30 * 3000 / 3550.0;
        double difference_Pa = row("BLW-25").value("expected") * 249.089;
        check("BLW-24", law.inletFlow_m3PerS(difference_Pa, 1.2041, slower) / CFM_m3PerS);
        check("BLW-26", law.shaftPower_W(difference_Pa, 1.2041, slower) / HP_W);
        double thin = 1.2041 * StandardAtmosphere.pressure_Pa(1524) / ATMOSPHERE_Pa;
        double high_Pa = row("BLW-27").value("expected") * 249.089;
        assertClose("BLW-27", law.inletFlow_m3PerS(high_Pa, thin, 30) / CFM_m3PerS, 1000, 0.002);
    }

    @Test
    void a_curve_says_where_it_was_measured() {
        MachineLaw law = CLAW.law(AIR.ambient());
        assertThat(law.measuredFrom_Pa(1, 30)).isLessThan(20_000);
        assertThat(law.measuredTo_Pa(1, 30)).isBetween(20_000.0, 50_000.0);
        assertThat(LOBE.measuredTo_Pa(1, 30)).isInfinite();
    }

    /**
     * Machine Design, "Vacuum pumps": 24 inHg at sea level are 17.6 inHg at a barometer of 22 inHg, the same pressure ratio. Drawn down to
     * 14.4 kPa at 3000 m a pump meets the ratio 4.87, that of 80.5 kPa of vacuum at sea level.
     */
    @Test
    void a_displacement_curve_holds_at_a_lower_barometer_at_the_same_pressure_ratio() {
        CurveMachine ring = new CurveMachine(
                "liquid ring",
                RotationalSpeed.ofRpm(1800),
                new Density(1.2041),
                false,
                List.of(point(0.14, 5000, 5000), point(0.08, 24 * INHG_Pa, 7000), point(0.02, 25 * INHG_Pa, 7000)));
        AbsolutePressure barometer = new AbsolutePressure(22 * INHG_Pa * 101_325 / (29.92 * INHG_Pa));
        MachineLaw high = ring.law(barometer);
        MachineLaw sea = ring.law(new AbsolutePressure(101_325));
        assertThat(high.inletFlow_m3PerS(17.6 * INHG_Pa, 0.2, 30)).isCloseTo(0.08, within(0.002));
        assertThat(sea.inletFlow_m3PerS(24 * INHG_Pa, 0.2, 30)).isCloseTo(0.08, within(1e-12));
        for (double inlet_Pa : new double[] {14_400, 20_000, 40_000, 60_000}) {
            AbsolutePressure thin = StandardAtmosphere.pressure(new Length(3000));
            double ratio = thin.pascals() / inlet_Pa;
            assertThat(ring.law(thin).inletFlow_m3PerS(thin.pascals() - inlet_Pa, 0.2, 30))
                    .isCloseTo(sea.inletFlow_m3PerS(101_325 * (1 - 1 / ratio), 0.2, 30), within(1e-9));
            assertThat(ring.law(thin).measuredTo_Pa(0.2, 30))
                    .isCloseTo(25 * INHG_Pa * thin.pascals() / 101_325, within(1e-6));
        }
    }

    @Test
    void no_temperature_is_said_without_flow() {
        assertThatThrownBy(() -> law(LOBE).rise_K(80_000, 0, 30)).hasMessageContaining("without flow");
    }

    /** By hand: at 18 kPa the inlet has 0.82235 of the density with the inlet open, so 18 kPa and 10 kW there are 21.888 kPa and 12.160 kW. */
    @Test
    void a_point_taken_under_its_own_vacuum_is_brought_to_the_density_of_the_open_inlet() {
        Machine.CurvePoint point = new Machine.CurvePoint(
                        new ActualVolumeFlow(0.25), new PressureDifference(18_000), new Power(10_000))
                .atRatedDensity();
        assertClose("flow", point.flow().cubicMetresPerSecond(), 0.25, 1e-12);
        assertClose("vacuum", point.vacuum().pascals(), 21_888.4, 1e-5);
        assertClose("power", point.power().watts(), 12_160.2, 1e-5);
    }
}
