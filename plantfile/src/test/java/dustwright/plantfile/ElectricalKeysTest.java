package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.electrical.Electrical;
import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.Panel;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Assumption;
import dustwright.engine.plant.Plant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElectricalKeysTest {
    private static final String TEXT = PlantReaderTest.resource("two-inlets.yaml") + """
            supply: {volts: 480 V, hertz: 60 Hz, fault current: 22 kA}
            panel: {area class: Class II Div 2, classified by: owner, ambient: 40 degC, surface: 3 m2}
            """;

    @Test
    void supply_and_panel_are_read_with_their_units() {
        Electrical electrical = PlantReaderTest.plant(TEXT).electrical();
        Supply supply = electrical.supply().orElseThrow();
        assertThat(supply.volts().volts()).isEqualTo(480);
        assertThat(supply.faultCurrent().orElseThrow().amperes()).isCloseTo(22_000, within(1e-9));
        assertThat(supply.basis()).isEqualTo(Supply.Basis.NEC);
        Panel panel = electrical.panel().orElseThrow();
        assertThat(panel.area()).contains(AreaClass.CLASS_II_DIVISION_2);
        assertThat(panel.control()).isEqualTo(Panel.Control.DC_24);
        assertThat(panel.inside().kelvin()).isCloseTo(323.15, within(1e-9));
    }

    @Test
    void the_basis_follows_the_frequency_and_is_listed_as_taken() {
        Plant plant = PlantReaderTest.plant(TEXT.replace("480 V, hertz: 60 Hz", "400 V, hertz: 50 Hz"));
        assertThat(plant.electrical().supply().orElseThrow().basis()).isEqualTo(Supply.Basis.IEC);
        assertThat(plant.assumptions())
                .extracting(Assumption::what)
                .contains("basis IEC", "phases 3", "control 24 V DC");
    }

    @Test
    void one_phase_has_neither_star_nor_delta() {
        String one = TEXT.replace("hertz: 60 Hz", "hertz: 60 Hz, phases: 1")
                .replaceFirst("motor: 15 hp", "motor: 15 hp\n        start: star-delta");
        assertThat(FaultsTest.faults(one))
                .anySatisfy(f -> assertThat(f.text()).contains("star and delta on a supply of one phase"));
    }

    @Test
    void a_plant_that_says_nothing_of_them_is_read_and_leaves_them_unknown() {
        assertThat(PlantReaderTest.plant(PlantReaderTest.resource("two-inlets.yaml"))
                        .electrical())
                .isEqualTo(Electrical.UNKNOWN);
    }

    @Test
    void the_nameplate_of_a_motor_is_read() {
        String keys = "motor: 15 hp, service factor: 1.15, poles: 4, nameplate current: 18 A, start: star-delta";
        Motor motor = PlantReaderTest.plant(TEXT.replaceFirst("motor: 15 hp", keys.replace(", ", "\n        ")))
                .station("REC")
                .producers()
                .get(0)
                .motor();
        assertThat(motor.serviceFactor()).isCloseTo(1.15, within(1e-12));
        assertThat(motor.poles()).contains(4);
        assertThat(motor.starting()).contains(Motor.Starting.STAR_DELTA);
        assertThat(motor.nameplateCurrent().orElseThrow().amperes()).isEqualTo(18);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "volts: 480 V,            | ''                          | the electrical supply without \"volts\"   | 480 V",
                "volts: 480 V             | volts: 480                  | a number without a unit                  | 480 V",
                "volts: 480 V             | volts: 480 A                | an electric current (A) where            | a voltage",
                "volts: 480 V             | volts: 48 V                 | outside what is sensible                 | 100 V to 15 kV",
                "hertz: 60 Hz             | hertz: 400 Hz               | outside what is sensible                 | 50 Hz to 60 Hz",
                "hertz: 60 Hz             | hertz: 50 Hz, basis: NEC    | hold at 60 Hz                            | IEC",
                "hertz: 60 Hz             | hertz: 55 Hz                | a supply that no grid has                | 50 Hz or 60 Hz",
                "speed: 1860 rpm          | hold: 7 inHg; start: soft starter | another start than by the drive    | start: drive",
                "hertz: 60 Hz             | hertz: 60 Hz, basis: UL     | none of the words known here             | NEC, IEC",
                "hertz: 60 Hz             | hertz: 60 Hz, phases: 2     | a supply of 2 phases                     | 3 or 1",
                "volts: 480 V             | volts: 0 V                  | outside what is sensible                 | 100 V to 15 kV",
                "hertz: 60 Hz             | hertz: 0 Hz                 | outside what is sensible                 | 50 Hz to 60 Hz",
                "motor: 15 hp             | motor: 15 hp; poles: 3      | a motor of 3 poles                       | 2, 4, 6 or 8",
                "motor: 15 hp             | motor: 15 hp; poles: 0      | does not fit                             | 2 to 8",
                "motor: 15 hp             | motor: 15 hp; motor speed: 1760 | a number without a unit | 1765 rpm",
                "motor: 15 hp             | motor: 15 hp; motor speed: 60000 rpm | outside what is sensible | 100 rpm to 12000 rpm",
                "motor: 15 hp             | motor: 15 hp; motor hertz: 400 Hz | outside what is sensible           | 50 Hz to 60 Hz",
                "motor: 15 hp             | motor: 15 hp; motor slip: 20 % | outside what is sensible              | 0 % to 8 %",
                "motor: 15 hp             | motor: 15 hp; coupled: belt | none of the words known here             | direct",
                "motor: 15 hp             | motor: 15 hp; drive input current: 0 A | outside what is sensible    | 0.1 A",
                "motor: 15 hp             | motor: 15 hp; motor at site: 0 hp | outside what is sensible         | 0.1 kW",
                "motor: 15 hp             | motor: 15 hp; casing sound: 88   | a number without a unit           | 88 dBA",
                "motor: 15 hp             | motor: 15 hp; discharge sound: 200 dBA | outside what is sensible    | 140 dBA",
                "speed: 1860 rpm          | coupled: direct             | the motor's speed is not known           | poles",
                "speed: 1860 rpm          | poles: 4; coupled: direct; hold: 7 inHg; speed: 1800 rpm | with both speed and hold | at most one",
                "speed: 1860 rpm          | poles: 4; coupled: direct; belt: {motor sheave: 8 in, machine sheave: 7 in} | with both belt and coupled | at most one",
                "speed: 1860 rpm          | poles: 4                    | without speed, or hold, or belt, or coupled | one of them",
                "fault current: 22 kA     | fault current: 22           | a number without a unit                  | 22 kA",
                "area class: Class II Div 2 | area class: Class II Div 3 | none of the words known here            | \"Class II Div 1\"",
                "area class: Class II Div 2 | area class: \"unclassified, outdoor\", exposure: dusty indoor | exposure \"dusty indoor\" in an area | outdoor dusty",
                "area class: Class II Div 2 | area class: \"unclassified, dusty indoor\", exposure: outdoor | exposure \"outdoor\" in an area | hosed down",
                "time there: 1 h          | time there: 9 h             | more time there than a shift has         | at most the shift",
                "ambient: 40 degC         | ambient: 55 degC, inside: 50 degC | may not get warmer than the air    | above",
                "surface: 3 m2            | control: 12 V DC            | none of the words known here             | 24 V DC",
                "surface: 3 m2            | power path heat: 90 kW      | outside what is sensible                 | 1 W to 20 kW",
                "motor: 15 hp             | service factor: 2           | outside what is sensible                 | 1 to 1.5",
                "motor: 15 hp             | poles: 40                   | does not fit                             | a whole number",
                "motor: 15 hp             | start: slowly               | none of the words known here             | direct",
                "motor: 15 hp             | power factor: 86            | outside what is sensible                 | 0.1 to 1",
            })
    void a_wrong_value_is_a_fault_with_its_way_out(String good, String bad, String message, String expected) {
        String text = TEXT.replaceFirst(
                java.util.regex.Pattern.quote(good), bad == null ? "" : bad.replace("; ", "\n        "));
        assertThat(text).isNotEqualTo(TEXT);
        assertThat(FaultsTest.faults(text))
                .anySatisfy(f -> assertThat(f.text())
                        .containsPattern("line [1-9][0-9]*, column [1-9][0-9]*: ")
                        .contains(message)
                        .contains(expected));
    }
}
