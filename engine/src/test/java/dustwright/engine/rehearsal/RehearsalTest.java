package dustwright.engine.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.discharge.DischargeLine;
import dustwright.engine.interlock.Controller;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sequence and station side by side: laws that hold whatever happens, and what each fault leads to. */
class RehearsalTest {
    private static final Sequence SEQUENCE = DefaultSequence.of("bag", Options.USUAL);
    private static final double FEED_kgPerS = 0.02;
    private static final double FULL_kg = 200;

    /** An invented station: what its figures are does not matter here, only that they are in proportion. */
    private static final StationModel STATION = station(1);

    static StationModel station(int producers) {
        return station(Collections.nCopies(producers, 130.0));
    }

    private static StationModel station(List<Double> greatestRise_K) {
        int producers = greatestRise_K.size();
        List<Optional<Operating.Table>> tables = new ArrayList<>();
        for (int key = 0; key < 16; key++) {
            boolean vented = (key & 8) != 0;
            boolean users = (key & 4) != 0;
            tables.add(
                    (key & 3) == 0 || (key & 3) >= 1 << producers
                            ? Optional.empty()
                            : Optional.of(new Operating.Table(
                                    List.of(20_000.0, 200_000.0),
                                    List.of(
                                            point(producers, vented, users, 400),
                                            point(producers, vented, users, 4000)))));
        }
        return new StationModel(
                "R",
                "all",
                producers,
                new DischargeLine(OptionalDouble.of(0.5), 30, FULL_kg, 300, false),
                FEED_kgPerS,
                0.05,
                9,
                20_000,
                OptionalDouble.of(1e5),
                greatestRise_K,
                tables,
                List.of());
    }

    private static Operating point(int producers, boolean vented, boolean users, double drop_Pa) {
        return vented
                ? new Operating(300, 50, List.of(4.0), Collections.nCopies(producers, 20.0))
                : new Operating(
                        users ? 22_000 : 30_000,
                        drop_Pa,
                        List.of(11.0),
                        Collections.nCopies(producers, users ? 50.0 : 60.0));
    }

    private static Script script(double lasts_s, long seed, Script.Act... acts) {
        return new Script(
                "test",
                3600,
                lasts_s,
                seed,
                1,
                Optional.of(900.0),
                Optional.empty(),
                Optional.of(new Script.Answering(60, 180)),
                List.of(acts),
                List.of(),
                List.of(),
                List.of(new Script.Must(Script.When.NEVER, Expr.of("pulses and vent_shut"))));
    }

    private static Script.Act users(double at_s, boolean begin) {
        return new Script.Act.Users(at_s, begin);
    }

    @Test
    void scans_that_are_left_out_change_nothing() {
        Script script = script(
                5400,
                7,
                users(10, true),
                new Script.Act.Breaks(1000, PlantFault.HOPPER_BRIDGED),
                new Script.Act.Mended(3000, PlantFault.HOPPER_BRIDGED),
                new Script.Act.Breaks(3600, PlantFault.POWER_LOST),
                new Script.Act.Mended(3700, PlantFault.POWER_LOST),
                users(5000, false));
        Rehearsal all = new Rehearsal(SEQUENCE, STATION, script, true);
        all.runTo(5_400_000);
        Played each = all.played();
        Played few = Rehearsal.play(SEQUENCE, STATION, script);

        assertThat(few.moments()).isEqualTo(each.moments());
        assertThat(few.lanes()).isEqualTo(each.lanes());
        assertThat(few.removed_kg()).isEqualTo(each.removed_kg(), within(1e-9));
        assertThat(few.scans()).isLessThan(each.scans() / 20);
        assertThat(few.moments()).hasSizeGreaterThan(60);
    }

    @ParameterizedTest
    @EnumSource(PlantFault.class)
    void no_dust_is_lost_whatever_breaks(PlantFault fault) {
        Played played = Rehearsal.play(
                SEQUENCE,
                STATION,
                script(
                        7200,
                        1,
                        users(10, true),
                        new Script.Act.Breaks(600, fault),
                        new Script.Act.Mended(3000, fault)));

        assertThat(played.imbalance_kg()).isEqualTo(0, within(1e-8));
        assertThat(played.collected_kg()).isPositive();
        assertThat(played.holds()).isTrue();
    }

    /** What the operator reads first; a blind probe nobody reads, which is why it is simulated monthly. */
    @ParameterizedTest
    @CsvSource({
        "HOPPER_BRIDGED, RECEIVER BLOCKED",
        "AIR_LOST, COMPRESSED AIR TOO LOW",
        "CHAIN_BROKEN, ROTARY VALVE NOT TURNING",
        "ROTOR_JAMMED, ROTARY VALVE MOTOR OVERLOAD",
        "VENT_STICKS_OPEN, NO VACUUM",
        "RECEIVER_PROBE_CAKED, RECEIVER BLOCKED",
        "MOTION_SWITCH_BROKEN, ROTARY VALVE NOT TURNING",
        "CONTAINER_OFF, BAG NOT IN PLACE OR NOT BONDED",
        "FILTER_TORN, DUST BEHIND THE FILTER",
        "PRODUCER_OVERLOAD, PRODUCER: MOTOR OVERLOAD",
        "FIRE_SIGNAL, FIRE OR EXPLOSION SIGNAL",
        "EMERGENCY_STOP, EMERGENCY STOP",
        "GUARD_OPEN, ROTARY VALVE GUARD OPEN",
        "POWER_LOST, POWER WAS LOST"
    })
    void a_fault_is_told_to_the_operator(PlantFault fault, String message) {
        Played played = Rehearsal.play(
                SEQUENCE,
                STATION,
                script(
                        3000,
                        1,
                        users(10, true),
                        new Script.Act.Breaks(300, fault),
                        new Script.Act.Mended(2900, fault)));

        assertThat(played.moments())
                .filteredOn(m -> m.who() == Played.Who.MESSAGE && m.at_ms() >= 300_000)
                .anySatisfy(m -> assertThat(m.words()).startsWith(message));
    }

    /** Who reaches into valve or hopper has locked it out: nothing is switched on before it is mended. */
    @ParameterizedTest
    @EnumSource(names = {"HOPPER_BRIDGED", "CHAIN_BROKEN", "ROTOR_JAMMED"})
    void nobody_starts_the_machine_under_the_fitter(PlantFault fault) {
        Played played = Rehearsal.play(
                SEQUENCE,
                STATION,
                script(
                        3000,
                        1,
                        users(10, true),
                        new Script.Act.Breaks(120, fault),
                        new Script.Act.Mended(2400, fault)));
        List<Played.Moment> moments = played.moments();
        int locked = first(moments, "locks the valve out");
        int mended = first(moments, "mended");

        assertThat(locked).isLessThan(mended);
        assertThat(moments.subList(locked, mended))
                .extracting(Played.Moment::words)
                .noneMatch(w -> w.contains("presses RESET")
                        || w.contains("presses START")
                        || w.contains("motor: turns")
                        || w.contains("motor: runs"));
        assertThat(moments.subList(mended, moments.size()))
                .extracting(Played.Moment::words)
                .anyMatch(w -> w.contains("presses RESET"));
    }

    private static int first(List<Played.Moment> moments, String words) {
        return IntStream.range(0, moments.size())
                .filter(m -> moments.get(m).words().contains(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_blind_container_probe_lets_the_container_overflow() {
        Played played = Rehearsal.play(
                SEQUENCE,
                STATION,
                script(7200, 1, users(10, true), new Script.Act.Breaks(20, PlantFault.CONTAINER_PROBE_BLIND)));

        assertThat(played.moments()).anySatisfy(m -> assertThat(m.words()).isEqualTo("the container overflows"));
        assertThat(played.moments()).noneSatisfy(m -> assertThat(m.words()).startsWith("BAG HIGH LEVEL"));
        assertThat(played.spilt_kg())
                .as("what a bag does not hold is on the floor")
                .isPositive();
        assertThat(played.traces())
                .filteredOn(t -> t.quantity() == Played.Amount.CONTAINER)
                .flatExtracting(Played.Trace::points)
                .allSatisfy(p -> assertThat(p.value()).isLessThanOrEqualTo(1.1 * FULL_kg * (1 + 1e-12)));
        assertThat(played.removed_kg() + played.spilt_kg() + played.left_kg())
                .isEqualTo(played.begun_kg() + played.collected_kg(), within(1e-8));
    }

    /** A fire signal that stands is not reset away: whoever comes waits until it is put right, then resets once. */
    @Test
    void nobody_presses_RESET_against_a_signal_that_stands() {
        Played played = Rehearsal.play(
                SEQUENCE,
                STATION,
                script(
                        3600,
                        1,
                        users(10, true),
                        new Script.Act.Breaks(300, PlantFault.FIRE_SIGNAL),
                        new Script.Act.Mended(2700, PlantFault.FIRE_SIGNAL)));
        assertThat(played.moments())
                .filteredOn(m -> m.words().endsWith("presses RESET"))
                .extracting(Played.Moment::at_ms)
                .hasSize(1)
                .allSatisfy(at -> assertThat(at).isGreaterThan(2_700_000));
        assertThat(played.moments()).anySatisfy(m -> assertThat(m.words()).contains("no RESET until it is put right"));
    }

    /** Who reads that START does nothing yet waits; the air comes back, then somebody starts. */
    @Test
    void nobody_presses_START_in_vain_while_a_lamp_says_wait() {
        Played played = Rehearsal.play(
                SEQUENCE,
                STATION,
                script(
                        2400,
                        1,
                        users(10, true),
                        new Script.Act.Breaks(300, PlantFault.AIR_LOST),
                        new Script.Act.Mended(1500, PlantFault.AIR_LOST)));
        assertThat(played.moments())
                .filteredOn(m -> m.words().endsWith("presses START"))
                .extracting(Played.Moment::at_ms)
                .hasSize(2)
                .satisfies(at -> assertThat(at.get(1)).isGreaterThan(1_500_000));
    }

    /** What a second probe is bought for. */
    @Test
    void a_second_container_probe_stops_what_a_blind_first_one_lets_overflow() {
        List<Sequence.Input> inputs = new ArrayList<>(SEQUENCE.inputs());
        inputs.add(
                new Sequence.Input("container_free_2", "LSH-311", "second probe", "free", "covered", Optional.empty()));
        Sequence two = new Sequence(
                SEQUENCE.title(),
                SEQUENCE.options(),
                SEQUENCE.scan_s(),
                inputs,
                SEQUENCE.buttons(),
                SEQUENCE.outputs(),
                SEQUENCE.timers(),
                SEQUENCE.rules().stream()
                        .map(r -> r instanceof Sequence.Rule.After after
                                        && r.name().equals("container_full")
                                ? new Sequence.Rule.After(
                                        after.name(),
                                        Expr.of("not container_free or not container_free_2"),
                                        after.timer(),
                                        after.words())
                                : r)
                        .toList(),
                SEQUENCE.causes(),
                SEQUENCE.steps(),
                SEQUENCE.lamps());
        Played played = Rehearsal.play(
                two,
                STATION,
                script(7200, 1, users(10, true), new Script.Act.Breaks(20, PlantFault.CONTAINER_PROBE_BLIND)));
        assertThat(played.moments()).noneSatisfy(m -> assertThat(m.words()).isEqualTo("the container overflows"));
        assertThat(played.moments()).anySatisfy(m -> assertThat(m.words()).startsWith("BAG HIGH LEVEL"));
    }

    /** What lay there and what came in is what was taken away and what lies there. */
    @Test
    void the_dust_of_a_rehearsal_adds_up() {
        Played played = Rehearsal.play(SEQUENCE, STATION, script(7200, 1, users(10, true)));
        assertThat(played.removed_kg()).isPositive();
        assertThat(played.left_kg()).isPositive();
        assertThat(played.removed_kg() + played.left_kg())
                .isEqualTo(played.begun_kg() + played.collected_kg(), within(1e-8));
    }

    /** Time of the feed by hand: 900 s at 0.02 kg/s, of which 5 % lies on the cloth until the next cleaning. */
    @Test
    void the_container_is_full_when_the_dust_says_so() {
        Played played = Rehearsal.play(SEQUENCE, STATION, script(1800, 1, users(10, true)));

        double suction_s = at_s(played, "users have suction");
        double full_s = at_s(played, "the container is full");
        assertThat(full_s - suction_s).isEqualTo(900 / 0.95, within(0.2));
    }

    private static double at_s(Played played, String words) {
        return played.moments().stream()
                        .filter(m -> m.words().equals(words))
                        .findFirst()
                        .orElseThrow()
                        .at_ms()
                / 1000.0;
    }

    @Test
    void the_same_seed_goes_the_same_way_and_another_one_another() {
        Played one = Rehearsal.play(SEQUENCE, STATION, script(7200, 1, users(10, true)));

        assertThat(Rehearsal.play(SEQUENCE, STATION, script(7200, 1, users(10, true))))
                .isEqualTo(one);
        assertThat(Rehearsal.play(SEQUENCE, STATION, script(7200, 2, users(10, true)))
                        .moments())
                .isNotEqualTo(one.moments());
    }

    @Test
    void a_week_takes_less_than_a_thousandth_of_a_week() {
        double week_s = 7 * 24 * 3600.0;
        long begun = System.nanoTime();
        Played played = Rehearsal.play(SEQUENCE, STATION, script(week_s, 1, users(10, true)));

        assertThat((System.nanoTime() - begun) / 1e9).isLessThan(week_s / 1000 / 10);
        assertThat(played.removed_kg()).isGreaterThan(20 * FULL_kg);
    }

    @Test
    void two_producers_lose_one_and_go_on() {
        Options options = Options.numbered(2);
        Played played = Rehearsal.play(
                DefaultSequence.of("two", options),
                station(2),
                script(1200, 1, users(10, true), new Script.Act.Breaks(600, PlantFault.PRODUCER_OVERLOAD)));

        assertThat(played.lanes().stream()
                        .filter(l -> l.name().equals("pump_2"))
                        .findFirst()
                        .orElseThrow()
                        .spans())
                .last()
                .satisfies(s -> assertThat(s.to_ms()).isGreaterThan(700_000));
    }

    /** By hand: towards 50 K with a time constant of 480 s, 20 K are there after 480 s ln(50/30) = 245 s, a little less for what warmed up before. */
    @Test
    void users_wait_15_K_below_the_greatest_rise_of_the_plant() {
        Script script = script(450, 1, users(10, true));
        Played played = Rehearsal.play(SEQUENCE, station(List.of(35.0)), script);
        double warm_s = first_s(played, "WAIT: DISCHARGE AIR WARM");
        assertThat(warm_s - at_s(played, "users have suction")).isBetween(225.0, 480 * Math.log(50.0 / 30));
        assertThat(Rehearsal.play(SEQUENCE, station(List.of(65.5)), script(3600, 1, users(10, true)))
                        .moments())
                .as("50 K never come within 15 K of it")
                .noneSatisfy(m -> assertThat(m.words()).contains("DISCHARGE AIR"));
    }

    /** By hand: 22 K of 50 K are there after 480 s ln(50/28) = 278.3 s, counted from 1 s on, when both pull; the other producer is good for 130 K. */
    @Test
    void each_producer_is_at_its_limit_at_its_own_greatest_rise() {
        StationPhysics plant = new StationPhysics(station(List.of(130.0, 22.0)));
        plant.users = true;
        plant.vent.command(true, 0);
        plant.pumps.forEach(p -> p.command(true, 0));
        assertThat(saysCool(plant, 279_200)).containsExactly(true, true);
        assertThat(saysCool(plant, 279_400)).containsExactly(true, false);
    }

    /** What the switches behind both producers say at a time. */
    private static List<Boolean> saysCool(StationPhysics plant, long at_ms) {
        for (long next = plant.next_ms(); next < at_ms; next = plant.next_ms()) {
            plant.goOn(next);
        }
        plant.goOn(at_ms);
        Sequence two = DefaultSequence.of("two", Options.numbered(2));
        Controller controller = new Controller(two);
        new Contacts(two).read(plant, controller);
        controller.scan(100);
        return Stream.of("discharge_cool_1", "discharge_cool_2")
                .map(controller::is)
                .toList();
    }

    private static double first_s(Played played, String words) {
        return played.moments().stream()
                        .filter(m -> m.words().startsWith(words))
                        .findFirst()
                        .orElseThrow()
                        .at_ms()
                / 1000.0;
    }

    @Test
    void it_can_be_gone_through_by_hand() {
        Script script = new Script(
                "by hand",
                0,
                600,
                1,
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        Rehearsal rehearsal = new Rehearsal(SEQUENCE, STATION, script);
        rehearsal.runTo(1000);
        rehearsal.press("start");
        rehearsal.users(true);
        rehearsal.runTo(30_000);
        assertThat(rehearsal.view().step()).isEqualTo("vacuuming");
        rehearsal.breaks(PlantFault.GUARD_OPEN);
        rehearsal.runTo(30_200);

        assertThat(rehearsal.view().messages())
                .extracting(Sequence.Cause::message)
                .contains("ROTARY VALVE GUARD OPEN");
        assertThat(rehearsal.why("vent_shut")).extracting(Sequence.Cause::name).containsExactly("guard");
    }

    @Test
    void a_script_that_asks_for_what_the_sequence_lacks_is_refused_in_words() {
        Script script = new Script(
                "wrong",
                0,
                60,
                1,
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Script.Must(Script.When.NEVER, Expr.of("drawbridge"))));

        assertThatThrownBy(() -> Rehearsal.play(SEQUENCE, STATION, script)).hasMessageContaining("drawbridge");
    }
}
