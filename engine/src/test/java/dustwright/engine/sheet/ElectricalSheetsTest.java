package dustwright.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.conveying.Dust;
import dustwright.engine.electrical.DustMarking;
import dustwright.engine.electrical.Electrical;
import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.electrical.Enclosure.Exposure;
import dustwright.engine.electrical.Instrument.Signal;
import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.Panel;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.SetPoint;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Coupling;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.SupplyFrequency;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Units;
import dustwright.engine.quantity.Voltage;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.rotaryvalve.ValveBuild;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Motor circuits, supply and panel as a plant's own: the formulas beneath are held against published tables elsewhere. */
class ElectricalSheetsTest {
    private static final double INCH_OF_MERCURY_Pa = 3386.389;

    private static Motor motor(double horsepower, Motor.Starting starting, Optional<Double> nameplate_A) {
        return new Motor(
                new Power(horsepower * Units.HORSEPOWER_W),
                1.15,
                Optional.of(4),
                Optional.of(starting),
                nameplate_A.map(ElectricCurrent::new),
                Optional.empty(),
                Optional.empty());
    }

    private static Motor turning(Motor m, double plate_rpm, Optional<SupplyFrequency> at) {
        return new Motor(
                m.nameplate(),
                m.serviceFactor(),
                m.poles(),
                m.starting(),
                m.nameplateCurrent(),
                m.efficiency(),
                m.powerFactor(),
                Optional.of(new Motor.NameplateSpeed(RotationalSpeed.ofRpm(plate_rpm), at)),
                m.slip(),
                m.driveInput(),
                m.atSite());
    }

    private static Supply nec(double volts) {
        return new Supply(
                new Voltage(volts),
                3,
                new SupplyFrequency(60),
                Supply.Basis.NEC,
                Optional.of(new ElectricCurrent(22_000)));
    }

    private static Supply iec(double volts) {
        return new Supply(new Voltage(volts), 3, new SupplyFrequency(50), Supply.Basis.IEC, Optional.empty());
    }

    private static Panel panel(Optional<AreaClass> area, Optional<String> by, Optional<Area> surface) {
        return new Panel(
                area,
                by,
                Optional.empty(),
                Optional.empty(),
                Optional.of(Exposure.HOSED_DOWN),
                Panel.Control.DC_24,
                Optional.of(new Temperature(308.15)),
                new Temperature(323.15),
                surface,
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Plant plant(Motor motor, boolean driven, Optional<Coupling> coupling, Electrical electrical) {
        PlantSketch sketch =
                new PlantSketch().tube("T3", 0.0729, 4.5e-5).points("J").inlet("A");
        sketch.run("D", "A", "J", "T3", 10, 1).run("M", "J", "REC", "T3", 20, 1);
        Plant plain = sketch.station("REC").rotaryValve().lobe("P1", 0.2).and().plant();
        Station station = plain.station("REC");
        VacuumProducer p = station.producers().get(0);
        Drive drive = driven
                ? new Drive.Holding(p.leastSpeed(), p.greatestSpeed(), new PressureDifference(7 * INCH_OF_MERCURY_Pa))
                : p.drive();
        VacuumProducer other = new VacuumProducer(
                p.id(),
                p.machine(),
                drive,
                motor,
                p.deepestVacuum(),
                p.greatestRise(),
                p.leastSpeed(),
                p.greatestSpeed(),
                p.silencer(),
                false,
                Optional.empty(),
                coupling,
                Optional.empty(),
                VacuumProducer.Sound.UNKNOWN);
        return with(plain.withStation(station.withProducers(List.of(other), Optional.empty())), electrical);
    }

    private static Plant with(Plant p, Electrical electrical) {
        return p.withElectrical(electrical);
    }

    private static Plant direct(double horsepower, Supply supply) {
        return plant(
                motor(horsepower, Motor.Starting.DIRECT, Optional.of(18.0)),
                false,
                Optional.empty(),
                new Electrical(Optional.of(supply), Optional.empty()));
    }

    private static Answer answer(Plant plant, String id) {
        return EquipmentSketch.sheets(plant, List.of()).stream()
                .flatMap(s -> s.entries().stream())
                .filter(e -> e.id().equals(id))
                .map(Entry::answer)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no figure " + id));
    }

    private static double known(Plant plant, String id) {
        Quantity value = ((Answer.Known) answer(plant, id)).value();
        return value.si();
    }

    private static String words(Plant plant, String id) {
        return ((Answer.Words) answer(plant, id)).text();
    }

    private static String unknown(Plant plant, String id) {
        return ((Answer.Unknown) answer(plant, id)).why();
    }

    /** NEC Table 430.250: 15 hp at 460 V 21 A, 10 hp at 230 V 28 A, 25 hp at 575 V 27 A; 1.25 of it by Table 310.16. */
    @ParameterizedTest
    @CsvSource({
        "15, 480, 21, copper 10 AWG, 40, 60",
        "10, 240, 28, copper 10 AWG, 50, 70",
        "25, 600, 27, copper 10 AWG, 50, 70",
        "100, 480, 124, copper 2/0 AWG, 225, 350"
    })
    void a_branch_of_the_national_code(double hp, double volts, double i, String wire, double fuse, double breaker) {
        Plant plant = direct(hp, nec(volts));
        assertThat(known(plant, "full-load-current/P1")).isEqualTo(i);
        assertThat(words(plant, "conductor/P1")).startsWith(wire);
        assertThat(known(plant, "dual-element-fuse/P1")).isEqualTo(fuse);
        assertThat(known(plant, "inverse-time-breaker/P1")).isEqualTo(breaker);
        assertThat(known(plant, "disconnect/P1")).isCloseTo(1.15 * i, within(1e-9));
        // 125 % of the nameplate's 18 A, as its service factor is 1.15: NEC 430.32 (from memory)
        assertThat(known(plant, "overload/P1")).isCloseTo(22.5, within(1e-9));
    }

    @Test
    void on_an_iec_supply_no_figure_of_the_national_code_appears() {
        Motor eleven = new Motor(
                new Power(11_000),
                1,
                Optional.empty(),
                Optional.of(Motor.Starting.STAR_DELTA),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Plant plant = plant(eleven, false, Optional.empty(), new Electrical(Optional.of(iec(400)), Optional.empty()));
        // IEC 60947-4-1 Annex G, from memory: 11 kW is 22 A; star start a third of six times
        assertThat(known(plant, "full-load-current/P1")).isEqualTo(22);
        assertThat(known(plant, "start-current/P1")).isCloseTo(44, within(1e-9));
        assertThat(unknown(plant, "conductor/P1")).contains("IEC 60364-5-52");
        assertThat(unknown(plant, "short-circuit/P1")).contains("IEC 60947-4-1");
        // by hand: each of main and delta contactor sees 22 A / √3, that of the star 22 A / 3
        assertThat(known(plant, "contactor/P1")).isCloseTo(12.7017, within(1e-3));
        assertThat(known(plant, "contactor-star/P1")).isCloseTo(7.3333, within(1e-3));
        // set to the plate, and no plate's current is stated
        assertThat(unknown(plant, "overload/P1")).contains("not a table's", "nameplate current");
        assertThat(known(direct(15, iec(400)), "overload/P1")).isEqualTo(18);
        // one motor: six times its full-load current, stalled
        assertThat(known(plant, "main-disconnect")).isCloseTo(132, within(1e-9));
        assertThat(EquipmentSketch.sheets(plant, List.of()).stream()
                        .filter(s -> s.id().startsWith("motor") || s.id().equals("supply"))
                        .flatMap(s -> s.entries().stream())
                        .filter(e -> e.answer() instanceof Answer.Known)
                        .flatMap(e -> e.derivation().steps().stream()))
                .noneMatch(step -> step.source().text().contains("NEC"));
    }

    @Test
    void what_is_not_stated_stays_unknown_and_says_what_to_enter() {
        Plant nothing =
                plant(motor(15, Motor.Starting.DIRECT, Optional.empty()), false, Optional.empty(), Electrical.UNKNOWN);
        assertThat(unknown(nothing, "full-load-current/P1")).contains("supply: {volts");
        assertThat(unknown(nothing, "supply-volts")).contains("fault current");
        assertThat(unknown(nothing, "enclosure")).contains("classified by");
        Plant supplied = plant(
                motor(15, Motor.Starting.DIRECT, Optional.empty()),
                false,
                Optional.empty(),
                new Electrical(Optional.of(nec(480)), Optional.empty()));
        assertThat(unknown(supplied, "overload/P1")).contains("nameplate current");
        assertThat(unknown(direct(250, nec(480)), "full-load-current/P1")).contains("Not in the table");
        assertThat(unknown(direct(15, nec(415)), "full-load-current/P1")).contains("415 V");
        assertThat(unknown(
                        plant(
                                motor(15, Motor.Starting.DIRECT, Optional.empty()),
                                false,
                                Optional.empty(),
                                new Electrical(Optional.of(iec(690)), Optional.empty())),
                        "full-load-current/P1"))
                .contains("motor efficiency");
    }

    @Test
    void a_drive_starts_its_motor_and_has_its_own_circuit_and_its_heat_is_in_the_panel() {
        Electrical electrical = new Electrical(
                Optional.of(nec(480)),
                Optional.of(panel(Optional.empty(), Optional.empty(), Optional.of(new Area(2)))));
        Plant driven = plant(motor(15, Motor.Starting.DIRECT, Optional.empty()), true, Optional.empty(), electrical);
        assertThat(words(driven, "start/P1")).contains("by its drive");
        assertThat(unknown(driven, "conductor/P1")).contains("drive input current");
        assertThat(unknown(driven, "short-circuit/P1")).contains("maker");
        // what the branch does not know the feeder does not know either: never the motor's 21 A for the drive's
        assertThat(unknown(driven, "connected-current")).contains("drive input current");
        assertThat(unknown(driven, "feeder")).contains("drive input current");
        // 15 hp · (1/0.97 − 1) = 346 W of the drive on top of the control load
        assertThat(known(driven, "panel-heat") - known(driven, "control-load")).isCloseTo(345.9, within(0.2));
        // by hand: walls 5.5 · 2 · 15 = 165 W; the rest over 1.204 · 1005 · 15
        double air = (known(driven, "panel-heat") - 165) / (1.2041 * 1005 * 15);
        assertThat(known(driven, "panel-cooling")).isCloseTo(air, within(0.01 * air));
    }

    /** By hand: 15 hp are 11 185.5 W; over √3 · 480 V that is 13.45 A without any loss, so a plate of 2 A is another motor's. */
    @ParameterizedTest
    @CsvSource({"2, false", "13.4, false", "13.5, true", "18, true"})
    void less_current_than_the_power_takes_without_loss_is_a_finding(double plate_A, boolean holds) {
        Plant plant = plant(
                motor(15, Motor.Starting.DIRECT, Optional.of(plate_A)),
                false,
                Optional.empty(),
                new Electrical(Optional.of(nec(480)), Optional.empty()));
        Finding finding = EquipmentSketch.sheets(plant, List.of()).stream()
                .flatMap(s -> s.findings().stream())
                .filter(f -> f.code() == FindingCode.NAMEPLATE_CURRENT)
                .findFirst()
                .orElseThrow();
        assertThat(finding.holds()).isEqualTo(holds);
        assertThat(finding.limit().si()).isCloseTo(13.454, within(1e-3));
    }

    /**
     * By hand, NEC: 15 hp at 480 V is 21 A by table, 26.25 A of ampacity, so 10 AWG with 35 A at 75 °C; a motor with service factor 1.15
     * trips at 125 % at most, and 35 A / 1.25 = 28 A. IEC: 11 kW at 400 V is 22 A by guide, a quarter more is 27.5 A.
     */
    @ParameterizedTest
    @CsvSource({"NEC, 28, true", "NEC, 28.1, false", "NEC, 90, false", "IEC, 27.5, true", "IEC, 28, false"})
    void more_current_than_a_motor_of_this_power_takes_is_a_finding(Supply.Basis basis, double plate_A, boolean holds) {
        boolean nec = basis == Supply.Basis.NEC;
        Motor motor = motor(15, Motor.Starting.DIRECT, Optional.of(plate_A));
        Motor rated = new Motor(
                nec ? motor.nameplate() : new Power(11_000),
                1.15,
                Optional.empty(),
                motor.starting(),
                motor.nameplateCurrent(),
                Optional.empty(),
                Optional.empty());
        Plant plant = plant(
                rated,
                false,
                Optional.empty(),
                new Electrical(Optional.of(nec ? nec(480) : iec(400)), Optional.empty()));
        Finding finding = EquipmentSketch.sheets(plant, List.of()).stream()
                .flatMap(s -> s.findings().stream())
                .filter(f -> f.code() == FindingCode.NAMEPLATE_EXCESS)
                .findFirst()
                .orElseThrow();
        assertThat(finding.holds()).isEqualTo(holds);
        assertThat(finding.limit().si()).isCloseTo(nec ? 28 : 27.5, within(1e-9));
        assertThat(finding.state()).isEqualTo(Sheet.ANY_SET);
    }

    /**
     * IEC 60364-4-43: I_B ≤ I_n ≤ I_z, the overload set to the nameplate current, so conductor and contactor carry no less. By hand:
     * 15 kW / (√3 · 690 V · 0.84 · 0.9) = 16.602 A by the motor's power; a plate of 20 A is the greater, one of 15 A the less, and
     * in star-delta each contactor of a 24 A motor sees 24 A / √3 = 13.856 A.
     */
    @ParameterizedTest
    @CsvSource({
        "20, DIRECT, 20, 20, 120",
        "15, DIRECT, 16.6025, 16.6025, 99.615",
        "24, STAR_DELTA, 24, 13.8564, 48",
    })
    void no_iec_circuit_carries_less_than_its_overload_is_set_to(
            double plate_A, Motor.Starting starting, double circuit_A, double contactor_A, double start_A) {
        Motor motor = new Motor(
                new Power(15_000),
                1,
                Optional.of(4),
                Optional.of(starting),
                Optional.of(new ElectricCurrent(plate_A)),
                Optional.of(0.9),
                Optional.of(0.84));
        Plant plant = plant(motor, false, Optional.empty(), new Electrical(Optional.of(iec(690)), Optional.empty()));
        assertThat(known(plant, "overload/P1")).isEqualTo(plate_A);
        assertThat(known(plant, "full-load-current/P1")).isCloseTo(circuit_A, within(1e-3));
        assertThat(known(plant, "conductor-current/P1"))
                .isCloseTo(circuit_A, within(1e-3))
                .isGreaterThanOrEqualTo(plate_A);
        assertThat(known(plant, "contactor/P1")).isCloseTo(contactor_A, within(1e-3));
        assertThat(known(plant, "start-current/P1")).isCloseTo(start_A, within(1e-2));
        assertThat(known(plant, "connected-current")).isCloseTo(circuit_A, within(1e-3));
    }

    @Test
    void a_nameplate_current_is_the_full_load_current_where_nothing_else_tells_it_and_never_a_nec_conductors() {
        assertThat(known(direct(15, iec(690)), "full-load-current/P1")).isEqualTo(18);
        assertThat(known(direct(15, iec(690)), "conductor-current/P1")).isEqualTo(18);
        // NEC table 430.250: 15 hp at 460 V is 21 A, and that sizes the conductor whatever the plate says
        assertThat(known(direct(15, nec(480)), "full-load-current/P1")).isEqualTo(21);
    }

    /** By hand: 15 hp · (1/0.97 − 1) = 345.9 W, 30 hp 691.9 W; of two that take turns one runs, and the greater counts. */
    @Test
    void a_drive_that_stands_by_adds_no_heat_to_the_panel() {
        Electrical electrical = new Electrical(
                Optional.of(nec(480)),
                Optional.of(panel(Optional.empty(), Optional.empty(), Optional.of(new Area(2)))));
        Plant one = plant(motor(15, Motor.Starting.DIRECT, Optional.empty()), true, Optional.empty(), electrical);
        Station station = one.station("REC");
        VacuumProducer duty = station.producers().get(0);
        for (double horsepower : new double[] {15, 30}) {
            VacuumProducer other = standingBy(duty, motor(horsepower, Motor.Starting.DIRECT, Optional.empty()));
            Plant two = one.withStation(station.withProducers(List.of(duty, other), Optional.empty()));
            assertThat(known(two, "panel-heat") - known(two, "control-load"))
                    .isCloseTo(horsepower == 15 ? 345.9 : 691.9, within(0.2));
            assertThat(EquipmentSketch.sheets(two, List.of()).stream()
                            .flatMap(s -> s.entries().stream())
                            .filter(e -> e.id().equals("panel-heat")))
                    .singleElement()
                    .satisfies(e -> assertThat(e.name())
                            .contains(horsepower == 15 ? "drive of P2 at rest" : "drive of P1 at rest"));
        }
    }

    private static VacuumProducer standingBy(VacuumProducer p, Motor motor) {
        return new VacuumProducer(
                "P2",
                p.machine(),
                p.drive(),
                motor,
                p.deepestVacuum(),
                p.greatestRise(),
                p.leastSpeed(),
                p.greatestSpeed(),
                p.silencer(),
                true);
    }

    /** By hand: 2200 W / (230 V · 0.9 · 0.8) = 13.285 A. */
    @Test
    void one_phase_is_known_by_the_plate_on_an_iec_basis_and_said_not_to_be_screened_on_the_national_code() {
        Motor motor = new Motor(
                new Power(2200),
                1,
                Optional.empty(),
                Optional.of(Motor.Starting.DIRECT),
                Optional.empty(),
                Optional.of(0.8),
                Optional.of(0.9));
        Supply one = new Supply(new Voltage(230), 1, new SupplyFrequency(50), Supply.Basis.IEC, Optional.empty());
        Plant plant = plant(motor, false, Optional.empty(), new Electrical(Optional.of(one), Optional.empty()));
        assertThat(known(plant, "full-load-current/P1")).isCloseTo(13.285, within(1e-3));
        assertThat(known(plant, "connected-current")).isCloseTo(13.285, within(1e-3));
        Supply code = new Supply(new Voltage(240), 1, new SupplyFrequency(60), Supply.Basis.NEC, Optional.empty());
        Plant american = plant(motor, false, Optional.empty(), new Electrical(Optional.of(code), Optional.empty()));
        assertThat(unknown(american, "full-load-current/P1")).contains("not screened here", "430.248", "licensed");
        assertThat(unknown(american, "branch-circuit/P1")).contains("430.248");
    }

    /** NEMA 250: 12 is for circulating dust and drips, 3R for rain but not dust, 4 for hose water and windblown dust, 13 for oil spray. */
    @ParameterizedTest
    @CsvSource({
        "12, HOSED_DOWN, false",
        "4, HOSED_DOWN, true",
        "6, HOSED_DOWN, true",
        "4, HOSED_DOWN_CORROSIVE, false",
        "4X, HOSED_DOWN_CORROSIVE, true",
        "12, DUSTY_INDOOR, true",
        "3R, DUSTY_INDOOR, false",
        "7, DUSTY_INDOOR, false",
        "12, DUSTY_INDOOR_WITH_OIL, false",
        "13, DUSTY_INDOOR_WITH_OIL, true"
    })
    void the_type_of_a_panel_is_judged_by_what_reaches_it(String type, Exposure exposure, boolean holds) {
        assertThat(panelFinding(AreaClass.UNCLASSIFIED_DUSTY_INDOOR, type, exposure)
                        .holds())
                .isEqualTo(holds);
    }

    @ParameterizedTest
    @CsvSource({"3R, OUTDOOR, true", "3R, OUTDOOR_DUSTY, false", "3, OUTDOOR_DUSTY, true", "4, OUTDOOR_DUSTY, true"})
    void windblown_dust_asks_more_of_a_panel_than_rain(String type, Exposure exposure, boolean holds) {
        assertThat(panelFinding(AreaClass.UNCLASSIFIED_OUTDOOR, type, exposure).holds())
                .isEqualTo(holds);
    }

    @Test
    void what_does_for_both_area_and_exposure_is_named_as_it_goes_with_the_supply() {
        Panel panel = panel(Optional.of(AreaClass.UNCLASSIFIED_DUSTY_INDOOR), Optional.of("owner"), Optional.empty());
        Plant plain = direct(15, nec(480));
        assertThat(words(
                        plain.withElectrical(new Electrical(Optional.of(nec(480)), Optional.of(panel))),
                        "enclosure-both"))
                .isEqualTo("NEMA 4, NEMA 4X, NEMA 6");
        assertThat(words(
                        plain.withElectrical(new Electrical(Optional.of(iec(400)), Optional.of(panel))),
                        "enclosure-both"))
                .isEqualTo("IP55, IP65, IP66");
    }

    @Test
    void hose_water_is_judged_in_a_classified_area_too_and_a_purge_says_nothing_of_it() {
        assertThat(panelFinding(AreaClass.CLASS_II_DIVISION_2, "12", Exposure.HOSED_DOWN)
                        .fails())
                .isTrue();
        Finding purged = panelFinding(AreaClass.CLASS_II_DIVISION_2, "purged", Exposure.HOSED_DOWN);
        assertThat(purged.unjudged()).isTrue();
        assertThat(purged.derivation().steps().get(0).formula()).contains("hose water", "NEMA type");
    }

    @ParameterizedTest
    @CsvSource({
        "purged,ZONE_20,false,none", "4X,ZONE_20,true,certificate", "4X,ZONE_21,true,certificate",
        "12,ZONE_22_IIIC,true,certificate", "purged,ZONE_21,true,pxb or pyb", "purged,ZONE_22_IIIC,true,pzc"
    })
    void an_enclosure_offered_in_a_zone_is_judged_or_said_to_be_not_known(
            String type, AreaClass area, boolean open, String says) {
        Finding finding = panelFinding(FindingCode.PANEL_AREA, area, type, Exposure.DUSTY_INDOOR);
        assertThat(finding.unjudged()).isEqualTo(open);
        assertThat(finding.fails()).isEqualTo(!open);
        if (open) {
            assertThat(finding.derivation().steps().get(0).formula()).contains(says);
        }
    }

    /** IEC 60529, from memory: first digit 5 dust-protected, 6 dust-tight; second digit 4 splashes, 5 jets; of oil and corrosion nothing. */
    @ParameterizedTest
    @CsvSource({
        "IP54, DUSTY_INDOOR, holds",
        "IP54, OUTDOOR, holds",
        "IP54, OUTDOOR_DUSTY, fails",
        "IP65, OUTDOOR_DUSTY, holds",
        "IP54, HOSED_DOWN, fails",
        "IP55, HOSED_DOWN, holds",
        "IP54, HOSED_DOWN_CORROSIVE, fails",
        "IP66, HOSED_DOWN_CORROSIVE, open",
        "IP65, DUSTY_INDOOR_WITH_OIL, open"
    })
    void an_ip_code_is_judged_by_its_digits(String code, Exposure exposure, String says) {
        assertThat(verdict(panelFinding(AreaClass.UNCLASSIFIED_OUTDOOR, code, exposure)))
                .isEqualTo(says);
    }

    /** EPL and dust groups of IEC 60079-0 and 60079-14, from memory; no dust that burns is sketched here, so IIIC may come. */
    @ParameterizedTest
    @CsvSource({
        "ZONE_20, IIIC Da, holds",
        "ZONE_20, IIIC Db, fails",
        "ZONE_21, IIIC Db, holds",
        "ZONE_21, IIIC Dc, fails",
        "ZONE_22_IIIC, IIIC Dc, holds",
        "ZONE_22_IIIC, IIIB Db, fails",
        "ZONE_22_IIIA_IIIB, IIIB Dc, holds",
        "ZONE_21, IIIB Db, open",
        "CLASS_II_DIVISION_2, IIIC Db, open"
    })
    void a_certificate_does_by_its_level_and_its_group(AreaClass area, String marked, String says) {
        DustMarking marking = DustMarking.all().stream()
                .filter(m -> m.words().equals(marked))
                .findFirst()
                .orElseThrow();
        assertThat(verdict(panelFinding(
                        FindingCode.PANEL_AREA, area, "IP66", Optional.of(marking), Exposure.DUSTY_INDOOR)))
                .isEqualTo(says);
    }

    /** IEC 60079-31, from memory: IP5X does in Zone 21 for flyings alone, in Zone 22 for what does not conduct; no dust is sketched here. */
    @ParameterizedTest
    @CsvSource({
        "ZONE_22_IIIC, IP54, IIIC Da, fails",
        "ZONE_20, IP55, IIIC Da, fails",
        "ZONE_21, IP54, IIIC Db, open",
        "ZONE_22_IIIA_IIIB, IP54, IIIC Dc, holds",
        "ZONE_21, IP65, IIIC Db, holds"
    })
    void a_marking_does_not_mend_an_ip_code_too_low_for_the_zone(
            AreaClass zone, String code, String marked, String says) {
        Optional<DustMarking> marking =
                DustMarking.all().stream().filter(m -> m.words().equals(marked)).findFirst();
        assertThat(verdict(panelFinding(FindingCode.PANEL_AREA, zone, code, marking, Exposure.DUSTY_INDOOR)))
                .isEqualTo(says);
    }

    /** NFPA 496, types of purge: in Division 1 type X cuts power, Y asks for equipment for Division 2 inside, Z is for Division 2. */
    @ParameterizedTest
    @CsvSource({
        "CLASS_II_DIVISION_1, purged, open", "CLASS_II_DIVISION_1, purged X, holds",
                "CLASS_II_DIVISION_1, purged Y, open",
        "CLASS_II_GROUP_E, purged Z, fails", "CLASS_II_DIVISION_2, purged Z, holds",
                "CLASS_II_DIVISION_2, purged, holds"
    })
    void a_purge_is_judged_by_its_type(AreaClass area, String offered, String says) {
        assertThat(verdict(panelFinding(FindingCode.PANEL_AREA, area, offered, Exposure.DUSTY_INDOOR)))
                .isEqualTo(says);
    }

    private static String verdict(Finding finding) {
        return finding.unjudged() ? "open" : finding.holds() ? "holds" : "fails";
    }

    private static Finding panelFinding(AreaClass area, String type, Exposure exposure) {
        return panelFinding(FindingCode.PANEL_EXPOSURE, area, type, exposure);
    }

    private static Finding panelFinding(FindingCode code, AreaClass area, String type, Exposure exposure) {
        return panelFinding(code, area, type, Optional.empty(), exposure);
    }

    private static Finding panelFinding(
            FindingCode code, AreaClass area, String type, Optional<DustMarking> marking, Exposure exposure) {
        Panel bare = panel(Optional.of(area), Optional.of("owner"), Optional.empty());
        Panel panel = new Panel(
                bare.area(),
                bare.classifiedBy(),
                Optional.of(type),
                marking,
                Optional.of(exposure),
                bare.control(),
                bare.ambient(),
                bare.inside(),
                bare.surface(),
                bare.drivesInside(),
                bare.powerPathHeat(),
                bare.cooler(),
                bare.coolingAir());
        Plant plant = direct(15, nec(480)).withElectrical(new Electrical(Optional.of(nec(480)), Optional.of(panel)));
        return EquipmentSketch.sheets(plant, List.of()).stream()
                .flatMap(s -> s.findings().stream())
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow();
    }

    /** The group of the area is the owner's, the group of the dust is the dust's: what does for the worse of both is told. */
    @Test
    void an_area_of_a_lesser_group_than_the_dust_that_may_come_is_told() {
        Optional<String> by = Optional.of("owner");
        Plant lesser = direct(15, nec(480))
                .withElectrical(new Electrical(
                        Optional.of(iec(400)),
                        Optional.of(panel(Optional.of(AreaClass.ZONE_22_IIIA_IIIB), by, Optional.empty()))));
        List<Dust> untested = lesser.dusts();
        assertThat(untested)
                .as("no dust is sketched here: the area's own group counts")
                .isEmpty();
        assertThat(words(lesser, "enclosure")).contains("IP5X");
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.combustible = Optional.of(true);
        Plant dusty = sketch.plant()
                .withElectrical(new Electrical(
                        Optional.of(iec(400)),
                        Optional.of(panel(Optional.of(AreaClass.ZONE_22_IIIA_IIIB), by, Optional.empty()))));
        assertThat(words(dusty, "area-group")).startsWith("IIIC until");
        assertThat(words(dusty, "enclosure")).contains("IP6X");
    }

    @Test
    void an_area_class_counts_for_nothing_without_the_name_of_who_classified_it() {
        Optional<AreaClass> division2 = Optional.of(AreaClass.CLASS_II_DIVISION_2);
        Plant nameless = direct(15, nec(480))
                .withElectrical(new Electrical(
                        Optional.of(nec(480)), Optional.of(panel(division2, Optional.empty(), Optional.empty()))));
        assertThat(unknown(nameless, "enclosure")).contains("not who classified");
        Plant named = nameless.withElectrical(new Electrical(
                Optional.of(nec(480)), Optional.of(panel(division2, Optional.of("owner"), Optional.empty()))));
        assertThat(words(named, "enclosure")).contains("dusttight");
        assertThat(words(named, "purge")).startsWith("type Z");
        Plant zone20 = nameless.withElectrical(new Electrical(
                Optional.of(nec(480)),
                Optional.of(panel(Optional.of(AreaClass.ZONE_20), Optional.of("owner"), Optional.empty()))));
        // IEC 60079-2 knows pxb and pyb for Zone 21 and pzc for Zone 22, from memory
        assertThat(words(zone20, "purge")).startsWith("none");
        for (AreaClass zone : List.of(AreaClass.ZONE_21, AreaClass.ZONE_22_IIIC, AreaClass.ZONE_22_IIIA_IIIB)) {
            Plant zoned = nameless.withElectrical(new Electrical(
                    Optional.of(iec(400)),
                    Optional.of(panel(Optional.of(zone), Optional.of("owner"), Optional.empty()))));
            assertThat(words(zoned, "purge")).startsWith(zone == AreaClass.ZONE_21 ? "Ex pxb or pyb" : "Ex pzc");
        }
        Plant sized = nameless.withElectrical(new Electrical(
                Optional.of(nec(480)),
                Optional.of(panel(division2, Optional.of("owner"), Optional.of(new Area(0.1))))));
        // by hand: walls 5.5 · 0.1 · 15 = 8.25 W; no room air may carry the rest
        assertThat(known(sized, "panel-cooler")).isCloseTo(known(sized, "panel-heat") - 8.25, within(1e-9));
        assertThat(words(sized, "panel-cooling")).contains("none may");
        assertThat(unknown(named, "panel-cooling")).contains("surface");
    }

    @Test
    void the_feeder_of_one_motor_is_its_branch_and_more_motors_never_ask_less() {
        SplittableRandom random = new SplittableRandom(7);
        double[] ratings = {3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100};
        for (int n = 0; n < 50; n++) {
            double hp = ratings[random.nextInt(ratings.length)];
            Plant plant = direct(hp, nec(480));
            double i = known(plant, "full-load-current/P1");
            assertThat(known(plant, "feeder-ampacity")).isCloseTo(1.25 * i, within(1e-9));
            assertThat(known(plant, "connected-current")).isEqualTo(i);
            assertThat(known(plant, "feeder-device")).isEqualTo(known(plant, "dual-element-fuse/P1"));
        }
    }

    @Test
    void instruments_follow_what_the_plant_has_and_no_tag_stands_twice() {
        Plant plant = direct(15, nec(480));
        List<String> tags =
                Instruments.of(plant).stream().map(Instruments.Tagged::tag).toList();
        assertThat(tags).anyMatch(t -> t.startsWith("SSL"));
        assertThat(tags).hasSameSizeAs(Set.copyOf(tags));
    }

    private static List<String> tags(Plant plant, Signal signal) {
        return Instruments.of(plant).stream()
                .filter(tagged -> tagged.signal() == signal)
                .map(Instruments.Tagged::tag)
                .toList();
    }

    /** The list and the papers of the sequence are of one panel: all that is wired there stands here, by the same tags. */
    @Test
    void all_that_the_default_sequence_wires_stands_in_the_list_of_instruments() {
        Plant one = direct(15, nec(480));
        Station station = one.station("REC");
        VacuumProducer p = station.producers().get(0);
        Plant three =
                one.withStation(station.withProducers(List.of(p, named(p, "P2"), named(p, "P3")), Optional.empty()));
        for (Plant plant : List.of(one, three)) {
            Sequence sequence = DefaultSequence.of("", Options.of(plant.station("REC"), Set.of()));
            assertThat(tags(plant, Signal.DIGITAL_INPUT))
                    .doesNotHaveDuplicates()
                    .containsAll(
                            sequence.inputs().stream().map(Sequence.Input::tag).toList())
                    .containsAll(sequence.buttons().stream()
                            .map(Sequence.Button::tag)
                            .toList());
            assertThat(tags(plant, Signal.DIGITAL_OUTPUT))
                    .doesNotHaveDuplicates()
                    .contains("XY-101", "XV-106")
                    .containsAll(sequence.outputs().stream()
                            .map(Sequence.Output::tag)
                            .toList())
                    .containsAll(
                            sequence.lamps().stream().map(Sequence.Lamp::tag).toList());
        }
        assertThat(tags(three, Signal.DIGITAL_OUTPUT)).contains("XY-120", "XY-130", "XY-320");
    }

    /** Of two producers one has a drive; neither vent valve nor safety filter, container nor receiver probe are described. */
    @Test
    void what_the_plant_does_not_describe_is_said_so_and_counted_nowhere() {
        Plant one = direct(15, nec(480));
        Station station = one.station("REC");
        VacuumProducer p = station.producers().get(0);
        VacuumProducer driven = named(
                p.withDrive(new Drive.Holding(
                        p.leastSpeed(), p.greatestSpeed(), new PressureDifference(7 * INCH_OF_MERCURY_Pa))),
                "P2");
        Plant two = one.withStation(station.withProducers(List.of(p, driven), Optional.empty()));
        List<Instruments.Tagged> missing = Instruments.of(two).stream()
                .filter(tagged -> tagged.missing().isPresent())
                .toList();
        assertThat(missing)
                .extracting(Instruments.Tagged::tag)
                .contains("YS-123", "SSH-123", "PDSH-105", "ZSO-106", "XV-106", "LSH-111", "LSH-101")
                .contains("YS-100", "XV-121", "XV-131")
                .doesNotContain("YS-133", "SSH-133", "SSL-110", "XY-110");
        List<Sheet> sheets = EquipmentSketch.sheets(
                two.withElectrical(new Electrical(
                        Optional.of(nec(480)),
                        Optional.of(panel(Optional.empty(), Optional.empty(), Optional.empty())))),
                List.of());
        List<String> words = sheets.stream()
                .filter(sheet -> sheet.id().equals("instruments/REC"))
                .flatMap(sheet -> sheet.entries().stream())
                .map(entry -> ((Answer.Words) entry.answer()).text())
                .toList();
        String signals = sheets.stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(entry -> entry.id().equals("signals"))
                .map(entry -> ((Answer.Words) entry.answer()).text())
                .findFirst()
                .orElseThrow();
        assertThat(signals)
                .startsWith(counted(words, "digital input") + " digital in, " + counted(words, "analogue input")
                        + " analogue in, " + counted(words, "digital output") + " digital out;")
                .contains("nor " + notCounted(words, "digital input") + " digital in, ");
        assertThat(words).contains("digital input; not counted: this plant describes no drive of producer P1");
        assertThat(Instruments.of(one.withStation(station.withProducers(List.of(named(p, "P1")), Optional.empty()))))
                .extracting(Instruments.Tagged::tag)
                .doesNotContain("YS-123");
    }

    /** By hand: 10 in of water are 2.49 kPa, 6 in 1.49 kPa; a sequence serves plants of either system of units. */
    @Test
    void set_points_stand_in_both_systems_of_units_and_are_those_the_filter_is_held_to() {
        List<String> names = Instruments.of(direct(15, nec(480)), 0).stream()
                .map(t -> t.tag() + " " + t.service())
                .toList();
        assertThat(names)
                .anyMatch(n -> n.startsWith("PDSH-102") && n.contains("below 10 inH2O (2.49 kPa)"))
                .anyMatch(n -> n.startsWith("PDSH-101") && n.contains("below 6 inH2O (1.49 kPa)"))
                .noneMatch(n -> n.contains("inWC"));
        assertThat(SetPoint.FILTER_HIGH.drop().pascals()).isCloseTo(2490, within(1.0));
        assertThat(SetPoint.CLEANING_DUE.drop().pascals()).isCloseTo(1494, within(1.0));
    }

    private static long counted(List<String> words, String signal) {
        return words.stream().filter(signal::equals).count();
    }

    private static long notCounted(List<String> words, String signal) {
        return words.stream()
                .filter(w -> w.startsWith(signal + "; not counted"))
                .count();
    }

    private static VacuumProducer named(VacuumProducer p, String id) {
        return new VacuumProducer(
                id,
                p.machine(),
                p.drive(),
                p.motor(),
                p.deepestVacuum(),
                p.greatestRise(),
                p.leastSpeed(),
                p.greatestSpeed(),
                p.silencer(),
                false,
                Optional.empty(),
                p.coupling(),
                Optional.empty(),
                VacuumProducer.Sound.UNKNOWN);
    }

    private static Finding heat(Panel panel) {
        Plant plant = direct(15, nec(480)).withElectrical(new Electrical(Optional.of(nec(480)), Optional.of(panel)));
        return EquipmentSketch.sheets(plant, List.of()).stream()
                .flatMap(s -> s.findings().stream())
                .filter(f -> f.code() == FindingCode.PANEL_HEAT)
                .findFirst()
                .orElseThrow();
    }

    private static Panel panel(
            double ambient_C, Optional<Double> path_W, double cooler_W, double air_m3PerS, AreaClass area) {
        Panel bare = panel(Optional.of(area), Optional.of("owner"), Optional.of(new Area(2)));
        return new Panel(
                bare.area(),
                bare.classifiedBy(),
                bare.enclosure(),
                bare.marking(),
                bare.exposure(),
                bare.control(),
                Optional.of(new Temperature(273.15 + ambient_C)),
                bare.inside(),
                bare.surface(),
                bare.drivesInside(),
                path_W.map(Power::new),
                cooler_W > 0 ? Optional.of(new Power(cooler_W)) : Optional.empty(),
                air_m3PerS > 0 ? Optional.of(new ActualVolumeFlow(air_m3PerS)) : Optional.empty());
    }

    /** By hand: walls of 2 m² pass 5.5 · 2 · 15 = 165 W at 35 °C around and 50 °C inside, and let in 55 W at 55 °C. */
    @Test
    void a_panel_that_gets_hotter_than_its_parts_may_stand_fails_until_a_cooler_carries_what_is_left() {
        AreaClass dusty = AreaClass.UNCLASSIFIED_DUSTY_INDOOR;
        Finding cool = heat(panel(35, Optional.of(20.0), 0, 0, dusty));
        assertThat(cool.value().si()).isCloseTo(165, within(1e-9));
        double made_W = cool.limit().si();
        assertThat(heat(panel(55, Optional.of(20.0), 0, 0, dusty)).fails()).isTrue();
        assertThat(heat(panel(55, Optional.empty(), 0, 0, dusty)).fails())
                .as("even of what is known")
                .isTrue();
        assertThat(heat(panel(55, Optional.of(20.0), made_W + 54, 0, dusty)).fails())
                .isTrue();
        assertThat(heat(panel(55, Optional.of(20.0), made_W + 56, 0, dusty)).holds())
                .isTrue();
        // by hand: 0.02 m³/s carry 1.2041 · 1005 · 0.02 · 15 = 363 W, in a classified area none may pass
        assertThat(heat(panel(35, Optional.of(480.0), 0, 0, dusty)).fails()).isTrue();
        assertThat(heat(panel(35, Optional.of(380.0), 0, 0.02, dusty)).value().si())
                .isCloseTo(165 + 363.0, within(0.1));
        assertThat(heat(panel(35, Optional.of(380.0), 0, 0.02, AreaClass.CLASS_II_DIVISION_2))
                        .fails())
                .isTrue();
    }

    @Test
    void a_panel_whose_heat_or_ambient_is_not_stated_is_not_said_to_stay_cool() {
        Finding path = heat(panel(20, Optional.empty(), 0, 0, AreaClass.UNCLASSIFIED_DUSTY_INDOOR));
        assertThat(path.unjudged()).isTrue();
        assertThat(path.derivation().steps().get(0).formula()).contains("power path heat");
        Finding walls = heat(panel(Optional.empty(), Optional.empty(), Optional.empty()));
        assertThat(walls.unjudged()).isTrue();
        assertThat(walls.derivation().steps().get(0).formula()).contains("surface");
    }

    @Test
    void ids_of_figures_are_unique_in_a_plant() {
        Plant plant = direct(15, nec(480))
                .withElectrical(new Electrical(
                        Optional.of(nec(480)),
                        Optional.of(panel(
                                Optional.of(AreaClass.ZONE_21), Optional.of("owner"), Optional.of(new Area(2))))));
        Set<String> seen = new HashSet<>();
        EquipmentSketch.sheets(plant, List.of()).stream()
                .flatMap(s -> s.entries().stream())
                .forEach(e -> assertThat(seen.add(e.id())).as(e.id()).isTrue());
    }

    /** By hand: 1750 rpm on an 18 in sheave is π · 0.4572 m · 29.17/s = 41.9 m/s, above the 33 m/s of cast iron. */
    @Test
    void a_belt_too_fast_for_cast_iron_is_a_finding() {
        Coupling belt = new Coupling.Belt(new Length(0.4572), new Length(0.4), new Ratio(0.01));
        Motor motor = turning(motor(15, Motor.Starting.DIRECT, Optional.empty()), 1750, Optional.empty());
        Plant plant = plant(motor, false, Optional.of(belt), Electrical.UNKNOWN);
        Sheet sheet = EquipmentSketch.sheets(plant, List.of()).stream()
                .filter(s -> s.id().equals("producer/P1"))
                .findFirst()
                .orElseThrow();
        assertThat(sheet.findings()).singleElement().satisfies(f -> {
            assertThat(f.holds()).isFalse();
            assertThat(f.value().si()).isCloseTo(41.9, within(0.1));
        });
        assertThat(known(plant, "coupled-speed/P1") * 60).isCloseTo(1750 * 0.4572 / 0.4 * 0.99, within(1e-6));
    }

    private static Motor kilowatts(double kW, Optional<Double> driveInput_A) {
        return new Motor(
                new Power(1000 * kW),
                1,
                Optional.empty(),
                Optional.of(Motor.Starting.DIRECT),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0.02,
                driveInput_A.map(ElectricCurrent::new),
                Optional.empty());
    }

    /** NEC Table 430.250 at 460 V: 3/4 hp 1.6 A, 1 hp 2.1 A, 7.5 hp 11 A, 15 hp 21 A. */
    @ParameterizedTest
    @CsvSource({"0.55, 0.75, 1.6", "0.75, 1, 2.1", "4, 7.5, 11", "11, 15, 21"})
    void a_motor_in_kilowatts_on_the_national_code_is_looked_up_as_the_next_listed_size_and_says_so(
            double kW, double hp, double current_A) {
        Plant plant = plant(
                kilowatts(kW, Optional.empty()),
                false,
                Optional.empty(),
                new Electrical(Optional.of(nec(480)), Optional.empty()));
        assertThat(known(plant, "full-load-current/P1")).isEqualTo(current_A);
        assertThat(known(plant, "table-rating/P1")).isCloseTo(hp * Units.HORSEPOWER_W, within(1e-6));
        assertThat(known(plant, "connected-current")).isEqualTo(current_A);
    }

    /** IEC 60947-4-1 Annex G, from memory: 15 hp is the size of 11 kW, 22 A; 12 kW is looked up as 15 kW, 29 A. */
    @Test
    void a_motor_in_horsepower_on_an_iec_supply_is_looked_up_by_its_metric_size() {
        Plant plant = direct(15, iec(400));
        assertThat(known(plant, "full-load-current/P1")).isEqualTo(22);
        assertThat(known(plant, "table-rating/P1")).isEqualTo(11_000);
        Plant between = plant(
                kilowatts(12, Optional.empty()),
                false,
                Optional.empty(),
                new Electrical(Optional.of(iec(400)), Optional.empty()));
        assertThat(known(between, "full-load-current/P1")).isEqualTo(29);
    }

    /** By hand: 125 % of 20 A is 25 A, 12 AWG in NEC Table 310.16 at 75 °C; 115 % is 23 A. */
    @Test
    void the_branch_of_a_drive_is_sized_on_its_rated_input_current() {
        Plant plant = plant(
                kilowatts(11, Optional.of(20.0)),
                true,
                Optional.empty(),
                new Electrical(Optional.of(nec(480)), Optional.empty()));
        assertThat(words(plant, "conductor/P1")).startsWith("copper 12 AWG");
        assertThat(known(plant, "disconnect/P1")).isCloseTo(23, within(1e-9));
        assertThat(known(plant, "connected-current")).isEqualTo(20);
        assertThat(unknown(plant, "short-circuit/P1")).contains("430.130");
    }

    /** The table's current at 460 V for 1 hp is 2.1 A; NEC 430.250. */
    @Test
    void the_gearmotor_of_a_rotary_valve_has_its_circuit_and_counts_in_the_supply() {
        Plant plain = direct(15, nec(480));
        Station station = plain.station("REC");
        RotaryValve valve = station.rotaryValve().orElseThrow();
        ValveBuild build = new ValveBuild(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Power(Units.HORSEPOWER_W)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Plant plant = plain.withStation(new Station(
                station.id(),
                station.at(),
                station.receiver(),
                station.filter(),
                station.safetyFilter(),
                station.safetyRating(),
                station.relief(),
                station.vent(),
                Optional.of(new RotaryValve(
                        valve.swept(),
                        valve.speed(),
                        valve.fill(),
                        valve.clearance(),
                        valve.dischargeCoefficient(),
                        build)),
                station.container(),
                station.producers()));
        List<Sheet> sheets = EquipmentSketch.sheets(plant, List.of());
        Sheet motor = sheets.stream()
                .filter(s -> s.id().equals("motor/valve/REC"))
                .findFirst()
                .orElseThrow();
        assertThat(known(motor, "full-load-current/valve/REC").si()).isEqualTo(2.1);
        Sheet supply =
                sheets.stream().filter(s -> s.id().equals("supply")).findFirst().orElseThrow();
        assertThat(known(supply, "connected-current").si()).isCloseTo(21 + 2.1, within(1e-9));
    }

    private static Quantity known(Sheet sheet, String id) {
        Entry entry = sheet.entries().stream()
                .filter(e -> e.id().equals(id))
                .findFirst()
                .orElseThrow();
        return ((Answer.Known) entry.answer()).value();
    }
}
