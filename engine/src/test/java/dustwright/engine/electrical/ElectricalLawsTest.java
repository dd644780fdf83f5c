package dustwright.engine.electrical;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.electrical.Enclosure.Exposure;
import dustwright.engine.electrical.Enclosure.Purge;
import dustwright.engine.electrical.Instrument.Signal;
import dustwright.engine.electrical.MotorCircuit.Device;
import dustwright.engine.electrical.MotorCircuit.MotorType;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.Units;
import org.junit.jupiter.api.Test;

/** What must hold for motors and panel whatever the numbers, and what is refused. */
class ElectricalLawsTest {
    @Test
    void a_motor_takes_the_next_rating_and_an_exact_one_stays() {
        double hp = Units.HORSEPOWER_W;
        assertThat(MotorRating.nextHorsepower(10 * hp, 0)).isEqualTo(10);
        assertThat(MotorRating.nextHorsepower(10.01 * hp, 0)).isEqualTo(15);
        assertThat(MotorRating.nextKilowatts(7500, 0)).isEqualTo(7.5);
        assertThat(MotorRating.nextKilowatts(7500, 0.1)).isEqualTo(11);
        assertThatThrownBy(() -> MotorRating.nextHorsepower(201 * hp, 0))
                .hasMessageContaining("beyond the largest tabulated motor, 200.0 hp");
    }

    @Test
    void a_feeder_of_one_motor_is_its_branch() {
        MotorCircuit circuit = MotorCircuit.of(25, 460, MotorType.DESIGN_B);
        assertClose("feeder", MotorCircuit.feederAmpacity_A(circuit.fullLoad_A()), circuit.leastAmpacity_A(), 1e-12);
    }

    @Test
    void a_feeders_device_is_rounded_down_and_a_branchs_up() {
        assertThat(MotorCircuit.standardUpTo_A(190, Device.FUSE)).isEqualTo(175);
        assertThat(MotorCircuit.nextStandard_A(190, Device.FUSE)).isEqualTo(200);
        assertThatThrownBy(() -> MotorCircuit.standardUpTo_A(0.5, Device.FUSE)).hasMessageContaining("as small as");
        assertThatThrownBy(() -> MotorCircuit.nextStandard_A(7000, Device.FUSE)).hasMessageContaining("reaches");
    }

    @Test
    void motors_and_voltages_outside_the_table_are_refused() {
        assertThatThrownBy(() -> MotorCircuit.of(12, 460, MotorType.DESIGN_B))
                .hasMessageContaining("has no motor_hp 12.0; it holds: 0.5, 0.75");
        assertThatThrownBy(() -> MotorCircuit.of(10, 400, MotorType.DESIGN_B))
                .hasMessageContaining("400 V is no system");
    }

    @Test
    void a_hose_down_panel_may_stand_outdoors_and_a_dusty_indoor_one_may_not() {
        assertThat(Enclosure.forUnclassified(Exposure.HOSED_DOWN).outdoor()).isTrue();
        assertThat(Enclosure.forUnclassified(Exposure.DUSTY_INDOOR).outdoor()).isFalse();
        assertThat(Enclosure.forUnclassified(Exposure.OUTDOOR).type()).isEqualTo("3R");
        assertThatThrownBy(() -> Enclosure.ofType("5")).hasMessageContaining("it holds: 1, 3, 3R");
    }

    @Test
    void division_one_with_lesser_equipment_inside_is_purged_by_y() {
        assertThat(Purge.of(1, true)).isEqualTo(Purge.Y);
        assertThatThrownBy(() -> Purge.of(3, true)).hasMessageContaining("divisions are 1 and 2");
    }

    @Test
    void air_is_needed_only_for_the_heat_the_walls_do_not_pass() {
        assertThat(PanelHeat.coolingAir_m3PerS(100, 165, 10, 1.2)).isZero();
        double air = PanelHeat.coolingAir_m3PerS(500, 165, 10, 1.2);
        assertClose("heat carried", air * 1.2 * 1005 * 10, 335, 1e-12);
        assertThatThrownBy(() -> PanelHeat.driveLoss_W(1000, 1.1)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void letters_say_how_an_instrument_meets_the_controller() {
        assertThat(Instrument.of("LSH").signal()).isEqualTo(Signal.DIGITAL_INPUT);
        assertThat(Instrument.of("PDSH").signal()).isEqualTo(Signal.DIGITAL_INPUT);
        assertThat(Instrument.of("ZSO").signal()).isEqualTo(Signal.DIGITAL_INPUT);
        assertThat(Instrument.of("PDIT").signal()).isEqualTo(Signal.ANALOGUE_INPUT);
        assertThat(Instrument.of("ST").signal()).isEqualTo(Signal.ANALOGUE_INPUT);
        assertThat(Instrument.of("XV").signal()).isEqualTo(Signal.DIGITAL_OUTPUT);
        assertThat(Instrument.of("YL").signal()).isEqualTo(Signal.DIGITAL_OUTPUT);
        assertThat(Instrument.of("PSV").signal()).isEqualTo(Signal.NO_WIRE);
        assertThat(Instrument.of("LAH").signal()).isEqualTo(Signal.NO_WIRE);
        assertThat(Instrument.of("PI").signal()).isEqualTo(Signal.NO_WIRE);
        assertThat(Instrument.of("PDIT").tag(101)).isEqualTo("PDIT-101");
        assertThat(Instrument.all()).hasSize(37);
        assertThatThrownBy(() -> Instrument.of("QQ")).hasMessageContaining("no letters 'QQ'");
    }
}
