package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the trade expects of a sequence (common practice, no source), shown on the default sequence with its real times. */
class TradeFactsOfControlTest {
    private Bench bench = new Bench(DefaultSequence.of("bench", Options.USUAL));

    @BeforeEach
    void start() {
        bench = Bench.vacuuming(DefaultSequence.of("bench", Options.USUAL));
        assertThat(bench.is("vent_shut")).isTrue();
    }

    @Test
    void bag_neck_high_level_opens_the_vent_and_stops_vacuuming_until_the_bag_is_changed() {
        bench.controller.contact("container_free", false);
        bench.run(2.9);
        assertThat(bench.is("vent_shut")).isTrue();
        bench.run(0.3);
        assertThat(bench.is("vent_shut")).isFalse();
        assertThat(bench.is("valve")).isFalse();
        assertThat(bench.is("lamp_container_high")).isTrue();

        bench.controller.contact("container_free", true);
        bench.push("start");
        bench.run(60);
        assertThat(bench.is("vent_shut"))
                .as("a probe that clears by itself changes nothing")
                .isFalse();

        bench.push("container_change");
        bench.controller.contact("container_in_place", false);
        bench.run(60);
        bench.controller.contact("container_in_place", true);
        bench.push("container_placed");
        bench.run(5);
        assertThat(bench.is("valve")).as("confirming moves nothing").isFalse();
        bench.push("start");
        assertThat(bench.is("horn")).isTrue();
        bench.until("vacuuming", 60);
        assertThat(bench.is("vent_shut")).isTrue();
    }

    /** Three things hold a container, and each says so by its own lamp and message. */
    @Test
    void a_missing_bag_lights_its_own_lamp_and_not_bag_high_level() {
        bench.controller.contact("container_in_place", false);
        bench.scan();
        assertThat(bench.is("lamp_container_off")).isTrue();
        assertThat(bench.is("lamp_container_high")).isFalse();
        assertThat(messages()).contains("BAG NOT IN PLACE OR NOT BONDED").noneMatch(m -> m.startsWith("BAG HIGH"));
        assertThat(bench.is("vent_shut")).isFalse();

        bench.controller.contact("container_in_place", true);
        bench.run(60);
        assertThat(bench.is("valve")).as("held until it is confirmed").isFalse();
        assertThat(messages()).contains("BAG WAS OFF: CONFIRM IT").noneMatch(m -> m.startsWith("BAG NOT IN PLACE"));

        bench.push("container_change");
        assertThat(bench.is("lamp_container_changing")).isTrue();
        assertThat(bench.is("lamp_container_off")).isFalse();
        bench.push("container_placed");
        assertThat(bench.is("lamp_container_changing")).isFalse();
        assertThat(bench.is("lamp_press_start")).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "discharge_warm_ok, lamp_cooling, 'WAIT: DISCHARGE AIR WARM, COOLING'",
        "filter_ok, lamp_filter, WAIT: FILTER DROP TOO HIGH",
        "relief_ok, lamp_relief, WAIT: VACUUM TOO DEEP",
        "air_enough, lamp_air, COMPRESSED AIR TOO LOW"
    })
    void whoever_waits_learns_for_what(String contact, String lamp, String message) {
        bench.controller.contact(contact, false);
        bench.run(6);
        assertThat(bench.is("vent_shut")).isFalse();
        assertThat(messages()).contains(message);
        assertThat(Stream.of("lamp_cooling", "lamp_filter", "lamp_relief", "lamp_air")
                        .filter(bench::is))
                .containsExactly(lamp);
    }

    /** After a fault of the rotary valve the producer runs on unloaded, after one of the producer the valve turns: STOP ends both at once. */
    @ParameterizedTest
    @CsvSource({"valve_drive_ok, pump", "overload_ok, valve"})
    void stop_in_a_trip_stops_what_still_runs(String contact, String runsOn) {
        bench.controller.contact(contact, false);
        bench.run(2);
        assertThat(bench.controller.step()).isEqualTo("tripped");
        assertThat(bench.is(runsOn)).isTrue();
        bench.push("stop");
        assertThat(bench.is(runsOn)).isFalse();
        bench.run(5);
        assertThat(bench.allOff()).isTrue();
    }

    /** The drop of a vented filter is low anyway. */
    @Test
    void a_very_low_filter_drop_is_told_only_when_it_stays_so_under_vacuum() {
        bench.controller.contact("filter_there", false);
        bench.run(4);
        assertThat(messages()).doesNotContain("FILTER DROP VERY LOW");
        bench.run(2);
        assertThat(messages()).contains("FILTER DROP VERY LOW");
    }

    @Test
    void a_vent_that_does_not_shut_is_told_apart_from_a_cap_left_open() {
        assertThat(messages()).doesNotContain("VENT VALVE DOES NOT SHUT");
        bench.ventStaysOpen = true;
        bench.run(4);
        assertThat(messages()).contains("VENT VALVE DOES NOT SHUT").doesNotContain("NO VACUUM");
        bench.run(8);
        assertThat(messages()).contains("VENT VALVE DOES NOT SHUT", "NO VACUUM");
    }

    /** With two producers the vent stands on the line: each that runs is open to it, in every step. */
    @Test
    void a_running_producer_is_never_shut_off_by_its_line_valve() {
        Bench two = new Bench(DefaultSequence.of("two", Options.numbered(2)));
        two.run(31);
        two.push("reset");
        two.push("start");
        for (int scan = 0; scan < 20_000; scan++) {
            two.scan();
            assertThat(two.is("line_1")).isEqualTo(two.is("pump_1"));
            assertThat(two.is("line_2")).isEqualTo(two.is("pump_2"));
        }
        assertThat(two.is("vent_shut")).isTrue();
    }

    private List<String> messages() {
        return bench.controller.causes().stream().map(Sequence.Cause::message).toList();
    }

    @Test
    void receiver_high_level_stops_vacuuming_the_valve_keeps_turning_and_vacuuming_returns_by_itself() {
        bench.controller.contact("receiver_free", false);
        bench.run(3.2);
        assertThat(bench.is("vent_shut")).isFalse();
        assertThat(bench.is("lamp_receiver_high")).isTrue();
        for (int second = 0; second < 60; second++) {
            bench.run(1);
            assertThat(bench.is("valve")).isTrue();
        }
        bench.controller.contact("receiver_free", true);
        bench.run(14.5);
        assertThat(bench.is("vent_shut")).isFalse();
        bench.run(1);
        assertThat(bench.is("vent_shut")).as("nobody pressed anything").isTrue();
    }

    @Test
    void a_probe_that_stays_covered_becomes_a_latched_fault_that_says_what_to_look_for() {
        bench.controller.contact("receiver_free", false);
        bench.run(3 + 151);
        assertThat(bench.controller.causes()).anySatisfy(c -> {
            assertThat(c.name()).isEqualTo("blocked");
            assertThat(c.response()).contains("plugged valve", "bridged material", "failed valve drive");
        });
        assertThat(bench.is("pump")).isFalse();
        bench.controller.contact("receiver_free", true);
        bench.run(60);
        assertThat(bench.controller.step()).as("latched").isEqualTo("tripped");
        assertThat(bench.is("lamp_fault")).isTrue();
        bench.push("reset");
        assertThat(bench.controller.step()).isEqualTo("standing");
    }

    @Test
    void filters_are_cleaned_with_the_vent_open_and_the_producer_off_load() {
        bench.run(1500);
        bench.until("pulsing", 30);
        assertThat(bench.is("pulses")).isTrue();
        assertThat(bench.is("pump")).isTrue();
        assertThat(bench.is("vent_shut")).isFalse();
        assertThat(bench.is("lamp_cleaning")).isTrue();
        bench.until("vacuuming", 60);
    }

    @Test
    void four_separate_lamps_tell_what_is_so() {
        bench.run(1);
        assertThat(bench.is("lamp_vacuuming")).isTrue();
        assertThat(bench.is("lamp_valve")).isTrue();
        assertThat(bench.is("lamp_container_high")).isFalse();
        assertThat(bench.is("lamp_receiver_high")).isFalse();
        bench.jammed = true;
        bench.scan();
        assertThat(bench.is("lamp_valve"))
                .as("from the rotor, not from the contactor")
                .isFalse();
    }

    @Test
    void emergency_stop_stops_everything_and_nothing_returns_without_reset_and_start() {
        bench.controller.contact("estop_ok", false);
        bench.scan();
        assertThat(bench.allOff()).isTrue();
        bench.controller.contact("estop_ok", true);
        bench.push("start");
        bench.run(300);
        assertThat(bench.allOff()).isTrue();
        bench.push("reset");
        bench.run(300);
        assertThat(bench.allOff()).as("a reset starts nothing").isTrue();
        bench.push("start");
        bench.until("vacuuming", 60);
    }

    @Test
    void after_a_loss_of_power_nothing_restarts_by_itself_not_even_with_start_held() {
        bench.controller.press("start", true);
        bench.controller.powerLost();
        assertThat(bench.allOff()).isTrue();
        bench.run(300);
        assertThat(bench.allOff()).isTrue();
        bench.push("reset");
        bench.run(300);
        assertThat(bench.allOff())
                .as("the button was never let go and pressed anew")
                .isTrue();
    }

    @Test
    void a_full_bag_outranks_the_turning_valve_and_fire_outranks_both() {
        bench.controller.contact("receiver_free", false);
        bench.run(4);
        assertThat(bench.is("valve")).isTrue();
        bench.controller.contact("container_free", false);
        bench.run(3.2);
        assertThat(bench.is("valve")).isFalse();
        bench.run(300);
        assertThat(bench.is("blocked"))
                .as("a standing valve cannot clear the probe: no false alarm")
                .isFalse();

        bench = Bench.vacuuming(DefaultSequence.of("bench", Options.USUAL));
        bench.controller.contact("receiver_free", false);
        bench.run(4);
        bench.controller.contact("fire_ok", false);
        bench.scan();
        assertThat(bench.allOff()).isTrue();
    }

    @Test
    void a_vent_that_sticks_shut_still_loses_its_vacuum_since_the_producer_is_switched_off() {
        bench.ventSticks = true;
        bench.controller.contact("container_free", false);
        bench.run(3.2 + 3.2);
        assertThat(bench.is("vent_stuck")).isTrue();
        assertThat(bench.is("pump")).isFalse();
    }

    /** Common practice, no source: 12 minutes with all inlets shut, then unloaded, 5 minutes more, then off; an inlet that is opened brings vacuum back. */
    @Test
    void vacuuming_nobody_uses_becomes_idle_and_an_opened_inlet_brings_it_back() {
        bench = Bench.vacuuming(DefaultSequence.of("bench", Options.numbered(32)));
        bench.controller.contact("inlet_used", false);
        bench.run(719);
        assertThat(bench.is("vent_shut")).isTrue();
        bench.run(2);
        assertThat(bench.controller.step()).isEqualTo("idle");
        assertThat(bench.is("vent_shut")).isFalse();
        assertThat(bench.is("pump")).isTrue();
        bench.controller.contact("inlet_used", true);
        bench.until("vacuuming", 2);
        bench.controller.contact("inlet_used", false);
        bench.run(722);
        bench.run(301);
        assertThat(bench.controller.step()).isEqualTo("run_on");
        assertThat(bench.is("pump")).isFalse();
    }

    /** Common practice, no source: the vent is proved open before the suction valve shuts, the suction valve before the vent shuts again. */
    @Test
    void a_suction_valve_shuts_after_the_vent_opened_and_opens_before_it_shuts() {
        bench = Bench.vacuuming(DefaultSequence.of("bench", Options.numbered(192)));
        assertThat(bench.is("suction_shut")).isFalse();
        bench.controller.contact("receiver_free", false);
        bench.until("holding", 4);
        assertThat(bench.is("suction_shut")).isFalse();
        bench.run(0.2);
        assertThat(bench.is("suction_shut")).isTrue();
        bench.controller.contact("receiver_free", true);
        while (bench.is("suction_shut")) {
            bench.scan();
        }
        assertThat(bench.controller.step()).isEqualTo("holding");
        bench.run(0.2);
        assertThat(bench.controller.step()).isEqualTo("vacuuming");
        bench.suctionSticks = true;
        bench.run(0.2);
        assertThat(bench.is("vent_shut")).isFalse();
        assertThat(bench.is("suction_stuck")).isTrue();
    }

    /** Common practice, no source: 45 s of air through the far-end bleed, then the filters are cleaned, then the producer stops. */
    @Test
    void a_purge_sweeps_the_line_for_its_time_before_the_closing_clean_and_a_second_stop_ends_it() {
        bench = Bench.vacuuming(DefaultSequence.of("bench", Options.numbered(384)));
        bench.push("stop");
        assertThat(bench.controller.step()).isEqualTo("purging");
        bench.run(44);
        assertThat(bench.is("bleed_open")).isTrue();
        assertThat(bench.is("vent_shut")).isTrue();
        assertThat(bench.is("lamp_stopping")).isTrue();
        bench.run(1);
        assertThat(bench.controller.step()).isEqualTo("settling");
        assertThat(bench.is("bleed_open")).isFalse();
        bench.until("run_on", 60);

        bench = Bench.vacuuming(DefaultSequence.of("bench", Options.numbered(384)));
        bench.push("stop");
        bench.run(5);
        bench.push("stop");
        assertThat(bench.controller.step()).isEqualTo("settling");
        assertThat(bench.is("vent_shut")).isFalse();
    }

    @Test
    void the_lid_of_a_drum_under_vacuum_is_locked_until_the_producer_has_stood_for_its_time() {
        bench = Bench.vacuuming(DefaultSequence.of("bench", Options.numbered(128)));
        assertThat(bench.is("lid_free")).isFalse();
        bench.controller.contact("container_free", false);
        bench.run(3.5);
        assertThat(bench.is("pump")).isFalse();
        assertThat(bench.is("vent_shut")).isFalse();
        bench.run(25);
        assertThat(bench.is("lid_free")).isFalse();
        bench.until("standing", 10);
        bench.run(1);
        assertThat(bench.is("lid_free")).isTrue();
    }
}
