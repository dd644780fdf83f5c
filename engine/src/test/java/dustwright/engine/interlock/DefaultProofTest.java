package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every default variant is proven, a drum for a bag in two of them, since it changes words only; the search itself is held by properties that must
 * not hold.
 */
class DefaultProofTest {
    @ParameterizedTest
    @ValueSource(
            ints = {
                0, 1, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 31, 32, 62, 64, 98, 128, 130, 132, 144,
                158, 160, 190, 192, 256, 320, 384, 400, 448, 512, 576, 592, 608, 639, 640, 704, 766
            })
    void every_variant_is_proven(int variant) {
        Options options = Options.numbered(variant);
        Proof proof = Proof.of(DefaultSequence.of(options.words().toString(), options), Proof.Adversary.PLAIN);

        assertThat(proof.broken()).isEmpty();
        assertThat(proof.stepsNeverReached()).isEmpty();
        assertThat(proof.timelessLoop()).isEmpty();
        assertThat(proof.deadEnd()).isEqualTo(Story.NONE);
        assertThat(proof.cakedForEver()).isEqualTo(Story.NONE);
        assertThat(proof.states()).isGreaterThan(options.discharge() == Options.Discharge.STRAIGHT ? 1000 : 5000);
    }

    @Test
    void any_two_bad_contacts_in_each_scan_change_no_verdict() {
        Sequence sequence = DefaultSequence.of("bag", Options.USUAL);
        Proof plain = Proof.of(sequence, Proof.Adversary.PLAIN);
        Proof usual = Proof.of(sequence, Proof.Adversary.TWO_BAD);

        assertThat(usual.broken()).isEmpty();
        assertThat(usual.states()).isGreaterThan(plain.states());
    }

    @Test
    void properties_that_do_not_apply_speak_of_devices_that_are_not_there() {
        Proof proof = Proof.of(DefaultSequence.of("bag", Options.USUAL), Proof.Adversary.PLAIN);

        assertThat(proof.doNotApply())
                .extracting(Property::id)
                .containsExactlyInAnyOrder(
                        "line-shut",
                        "line-open",
                        "producer-lost",
                        "staggered",
                        "at-speed",
                        "at-speed-two",
                        "speed-held",
                        "cleaning-asked",
                        "one-goes-on",
                        "clean-button",
                        "container-stops-pump",
                        "soft-keeps-pump",
                        "lid-locked",
                        "idle-asked",
                        "idle-wakes",
                        "idle-ends",
                        "lamp-idle",
                        "stop-twice",
                        "bleed-shut",
                        "purge-held",
                        "purge-works",
                        "purge-cleans",
                        "purge-goes-on",
                        "purge-ends",
                        "never-dead-headed",
                        "suction-order",
                        "suction-shuts-on",
                        "suction-lost",
                        "still-receiver",
                        "line-follows",
                        "bleed-follows",
                        "lid-follows",
                        "suction-opens",
                        "still-holds",
                        "message-suction");
    }

    /** A contact that is renamed is not judged in silence: both names are told. */
    @Test
    void names_that_properties_do_not_find_are_told_and_contacts_they_do_not_know() {
        Sequence whole = DefaultSequence.of("bag", Options.USUAL);
        Proof proof = Proof.of(
                new Sequence(
                        whole.title(),
                        whole.options(),
                        whole.scan_s(),
                        whole.inputs().stream()
                                .map(i -> i.name().equals("fire_ok")
                                        ? new Sequence.Input(
                                                "no_fire", i.tag(), i.words(), i.good(), i.bad(), i.filter())
                                        : i)
                                .toList(),
                        whole.buttons(),
                        whole.outputs(),
                        whole.timers(),
                        whole.rules(),
                        whole.causes().stream()
                                .filter(c -> !c.name().equals("fire"))
                                .toList(),
                        whole.steps(),
                        whole.lamps()),
                Proof.Adversary.PLAIN);

        assertThat(proof.absent()).contains("fire_ok");
        assertThat(proof.unjudged()).containsExactly("no_fire");
        assertThat(Proof.of(whole, Proof.Adversary.PLAIN).unjudged()).isEmpty();
    }

    /** Facts about the plant, not about the logic: what is lost when the vent sticks shut, and what still holds. */
    @Test
    void a_vent_that_sticks_shut_leaves_vacuum_but_the_producer_is_still_switched_off() {
        Sequence bag = DefaultSequence.of("bag", Options.USUAL);
        Set<String> lost = Proof.defeated(bag, fault(bag, "vent-sticks-shut"));

        assertThat(lost).contains("vacuum-gone").doesNotContain("pump-side", "container-high-vent", "stop-all");
    }

    @Test
    void a_dead_bag_probe_defeats_what_depends_on_it() {
        Sequence bag = DefaultSequence.of("bag", Options.USUAL);
        Set<String> lost = Proof.defeated(bag, fault(bag, "container-probe-reads-free"));

        assertThat(lost)
                .contains("container-high-vent", "container-high-valve")
                .doesNotContain("stop-all", "receiver-high-vent");
    }

    /** What an engineer adds is judged too: an output nobody knows must be off where everything is said to be off, and is named. */
    @Test
    void an_added_output_that_runs_after_an_emergency_stop_breaks_what_says_that_everything_is_off() {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(128));
        Sequence.Output shaker = new Sequence.Output(
                "shaker", "XY-300", "hopper shaker", "shakes", "still", "still", Expr.Constant.NO, List.of());
        Sequence shaken = with(drum, List.of(), List.of(shaker), List.of());
        Proof runs = Proof.of(
                Mutants.withSteps(
                        shaken,
                        drum.steps().stream()
                                .map(s -> s.name().equals("tripped")
                                        ? new Sequence.Step(
                                                s.name(), s.words(), List.of("shaker"), s.keep(), s.time(), s.exits())
                                        : s)
                                .toList()),
                Proof.Adversary.PLAIN);
        assertThat(runs.broken()).containsExactly("stop-all");
        assertThat(runs.unjudged()).containsExactly("shaker");
        assertThat(Proof.of(shaken, Proof.Adversary.PLAIN).broken()).isEmpty();
    }

    /** A trip of one's own on a contact of one's own is judged with those that stop the same; one that is forgotten in a latch is found. */
    @Test
    void an_added_trip_is_proven_with_those_that_stop_the_same() {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(128));
        Sequence.Input bearing =
                new Sequence.Input("bearing_cool_enough", "TSH-300", "bearing", "cool", "hot", Optional.empty());
        Sequence.Cause overload = drum.causes().stream()
                .filter(c -> c.name().equals("overload"))
                .findFirst()
                .orElseThrow();
        Proof latched =
                Proof.of(with(drum, List.of(bearing), List.of(), List.of(trip(overload, true))), Proof.Adversary.PLAIN);
        assertThat(latched.holds()).isTrue();
        assertThat(latched.unjudged()).isEmpty();
        Proof forgotten = Proof.of(
                with(drum, List.of(bearing), List.of(), List.of(trip(overload, false))), Proof.Adversary.PLAIN);
        assertThat(forgotten.broken()).isNotEmpty();
    }

    /** A condition of one's own for START: with a message that says why it refuses, all holds; without one, with a wrong one, and with one that nobody can meet, it does not. */
    @Test
    void an_added_permissive_is_proven_with_its_message() {
        assertThat(permitted("gate_open", "not gate_open").holds()).isTrue();
        assertThat(permitted("gate_open", "not gate_open").unjudged()).containsExactly("bag_gate_spare");
        assertThat(permitted("gate_open", "not bag_gate_spare").broken()).containsExactly("refusal-says-why");
        assertThat(permitted("gate_open", "gate_open").broken()).containsExactly("refusal-says-why");
        assertThat(permitted("gate_open and not gate_open", "not gate_open").stepsNeverReached())
                .contains("vacuuming");
        assertThat(permitted("not gate_open", "gate_open").deadEnd()).isNotEqualTo(Story.NONE);
    }

    private static Proof permitted(String permissive, String message) {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(128));
        Sequence more = with(
                drum,
                List.of(
                        new Sequence.Input("gate_open", "ZSO-300", "slide gate", "open", "shut", Optional.empty()),
                        new Sequence.Input("bag_gate_spare", "ZSO-301", "spare", "open", "shut", Optional.empty())),
                List.of(),
                List.of(new Sequence.Cause(
                        "gate_shut",
                        Expr.of(message),
                        Map.of(),
                        false,
                        Sequence.Priority.LOW,
                        "SLIDE GATE SHUT: NO START",
                        "START is refused",
                        "open it")));
        Sequence asked = Mutants.withSteps(
                more,
                more.steps().stream()
                        .map(s -> s.name().equals("standing")
                                ? new Sequence.Step(
                                        s.name(),
                                        s.words(),
                                        s.on(),
                                        s.keep(),
                                        s.time(),
                                        s.exits().stream()
                                                .map(x -> x.to().equals("warning")
                                                        ? new Sequence.Exit(
                                                                x.to(), x.when().and(Expr.of(permissive)))
                                                        : x)
                                                .toList())
                                : s)
                        .toList());
        return Proof.of(asked, Proof.Adversary.PLAIN);
    }

    /** A second level probe sees what the first sees: read by an "or" it stops alone, by an "and" it does not. */
    @Test
    void a_second_probe_is_judged_as_one_that_must_stop_alone() {
        Proof either = Proof.of(twoProbes("not container_free or not container_free_2"), Proof.Adversary.PLAIN);
        assertThat(either.holds()).isTrue();
        assertThat(either.unjudged()).isEmpty();
        assertThat(either.verdicts()).anyMatch(v -> v.property().id().equals("second-probe"));
        Sequence both = twoProbes("not container_free and not container_free_2");
        assertThat(Proof.of(both, Proof.Adversary.PLAIN).broken()).containsExactly("second-probe");
        assertThat(Proof.of(DefaultSequence.of("drum", Options.numbered(128)), Proof.Adversary.PLAIN)
                        .verdicts())
                .noneMatch(v -> v.property().id().equals("second-probe"));
    }

    /** What a second probe is bought for: a dead one defeats nothing that stops. */
    @Test
    void with_two_probes_a_dead_one_defeats_nothing_that_stops() {
        Sequence two = twoProbes("not container_free or not container_free_2");
        assertThat(Proof.defeated(two, fault(two, "container-probe-reads-free-2")))
                .doesNotContain("container-high-vent", "container-held");
    }

    private static Sequence twoProbes(String covered) {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(128));
        Sequence more = with(
                drum,
                List.of(new Sequence.Input(
                        "container_free_2", "LSH-311", "second probe", "free", "covered", Optional.empty())),
                List.of(),
                List.of());
        return Mutants.withRules(
                more,
                more.rules().stream()
                        .map(r -> r instanceof Sequence.Rule.After after
                                        && r.name().equals("container_full")
                                ? new Sequence.Rule.After(after.name(), Expr.of(covered), after.timer(), after.words())
                                : r)
                        .toList());
    }

    /** A run-on that empties a valve has one range, in the file and where it is judged. */
    @Test
    void a_time_is_judged_by_the_range_of_sequences_with_the_same_devices() {
        Sequence bag = DefaultSequence.of("bag", Options.USUAL);
        assertThat(Times.judged(bag))
                .extracting(Times.Judged::words)
                .contains("step run_on: 100 s, usual from 60 s to 300 s");
        assertThat(Times.judged(DefaultSequence.of("drum", Options.numbered(128))))
                .extracting(Times.Judged::words)
                .noneMatch(w -> w.startsWith("step run_on: ") && w.endsWith("to 300 s"));
    }

    /** Somebody holds STOP down, or its wire is broken: START does nothing, and the panel says why. */
    @Test
    void a_STOP_that_stays_down_says_so() {
        Controller panel = new Controller(DefaultSequence.of("bag", Options.USUAL));
        DefaultSequence.of("bag", Options.USUAL).inputs().forEach(i -> panel.contact(i.name(), true));
        panel.scan(100);
        panel.press("stop", true);
        panel.press("reset", true);
        panel.scan(100);
        panel.scan(100);
        assertThat(panel.is("trip")).isTrue();
        assertThat(panel.causes()).extracting(Sequence.Cause::name).contains("stop_held");
        panel.press("stop", false);
        panel.scan(100);
        assertThat(panel.causes()).extracting(Sequence.Cause::name).doesNotContain("stop_held");
    }

    /** A contact that is given another name is missed under its own. */
    @Test
    void a_renamed_probe_is_told_under_both_names() {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(128));
        Sequence without = new Sequence(
                drum.title(),
                drum.options(),
                drum.scan_s(),
                drum.inputs().stream()
                        .map(i -> i.name().equals("container_free")
                                ? new Sequence.Input("bag_probe", i.tag(), i.words(), i.good(), i.bad(), i.filter())
                                : i)
                        .toList(),
                drum.buttons(),
                drum.outputs(),
                drum.timers(),
                drum.rules(),
                drum.causes(),
                drum.steps(),
                drum.lamps());
        World world = World.of(without, Optional.empty());
        assertThat(world.absent()).contains("container_free").doesNotContain("motion", "receiver_free", "no_vacuum");
        assertThat(world.unjudged()).containsExactly("bag_probe");
    }

    private static Sequence.Cause trip(Sequence.Cause like, boolean latched) {
        return new Sequence.Cause(
                "bearing",
                Expr.of("not bearing_cool_enough"),
                like.demands(),
                latched,
                like.priority(),
                "BEARING HOT",
                like.consequence(),
                like.response());
    }

    private static Sequence with(
            Sequence s, List<Sequence.Input> inputs, List<Sequence.Output> outputs, List<Sequence.Cause> causes) {
        return new Sequence(
                s.title(),
                s.options(),
                s.scan_s(),
                Stream.concat(s.inputs().stream(), inputs.stream()).toList(),
                s.buttons(),
                Stream.concat(s.outputs().stream(), outputs.stream()).toList(),
                s.timers(),
                s.rules(),
                Stream.concat(s.causes().stream(), causes.stream()).toList(),
                s.steps(),
                s.lamps());
    }

    /** With two producers: the line valve of one that stays shut, or open, is lost; what stops still stops. */
    @Test
    void a_line_valve_that_does_not_follow_its_producer_defeats_just_that_and_what_counts_on_vacuum() {
        Sequence two = DefaultSequence.of("drum, two producers", Options.numbered(130));
        for (String id : List.of("line-valve-1-stays-shut", "line-valve-2-stays-open")) {
            assertThat(Proof.defeated(two, fault(two, id))).containsExactly("line-follows");
        }
        assertThat(DeviceFault.of(DefaultSequence.of("bag", Options.USUAL)))
                .extracting(DeviceFault::id)
                .noneMatch(id -> id.startsWith("line-"));
    }

    /** A trip's contact that is bridged: whoever judges goes by what it should have told. */
    @Test
    void a_trip_contact_that_always_reads_good_defeats_its_trip_and_one_that_always_reads_bad_only_service() {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(136));
        assertThat(Proof.defeated(drum, fault(drum, "isolation-ready-reads-good")))
                .contains("stop-all", "lamp-fault");
        assertThat(Proof.defeated(drum, fault(drum, "isolation-ready-reads-bad")))
                .contains("no-false-trip")
                .doesNotContain("stop-all", "pump-side", "container-held");
        assertThat(fault(drum, "overload-ok-reads-bad").test()).contains("MOTOR OVERLOAD");
    }

    /** STOP opens when pressed: with a broken wire nothing can be started; welded, it stops nothing. */
    @Test
    void a_broken_wire_of_STOP_defeats_nothing_that_stops_and_a_welded_contact_defeats_STOP() {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(128));
        assertThat(Proof.defeated(drum, fault(drum, "stop-dead")))
                .contains("stop-button")
                .doesNotContain("stop-all");
        assertThat(Proof.defeated(drum, fault(drum, "stop-stuck"))).doesNotContain("stop-button", "pump-session");
    }

    /** The table searches contacts that are only met together once; each by itself comes to the same. */
    @Test
    void the_table_of_device_faults_says_of_each_what_a_search_of_its_own_says() {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(128));
        FaultTable table = FaultTable.of(drum);
        assertThat(table.rows()).extracting(FaultTable.Row::fault).containsExactlyElementsOf(DeviceFault.of(drum));
        assertThat(table.rows())
                .filteredOn(r -> r.fault().id().matches("(fire|winding|guard|overload|estop).*"))
                .hasSizeGreaterThan(6)
                .allSatisfy(r -> assertThat(r.defeats()).isEqualTo(Proof.defeated(drum, r.fault())));
    }

    private static DeviceFault fault(Sequence sequence, String id) {
        return DeviceFault.of(sequence).stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_table_of_device_faults_names_only_devices_that_are_there() {
        Sequence drum = DefaultSequence.of("drum under vacuum", Options.numbered(128));
        assertThat(DeviceFault.of(drum))
                .extracting(DeviceFault::target)
                .contains("t_vent_open", "container_free", "start", "estop_ok", "press_stop")
                .doesNotContain("t_rotor", "motion", "receiver_free");
    }

    /** Without the container's latch the story is short, and each of its scans is told. */
    @Test
    void a_violation_is_told_as_the_shortest_story() {
        Sequence whole = DefaultSequence.of("bag", Options.USUAL);
        Sequence broken = Mutants.withCauses(
                whole,
                whole.causes().stream().filter(c -> !c.name().equals("estop")).toList());
        Proof proof = Proof.of(broken, Proof.Adversary.PLAIN);

        Proof.Verdict verdict = proof.verdicts().stream()
                .filter(v -> v.property().id().equals("stop-all"))
                .findFirst()
                .orElseThrow();
        List<Story.Scan> scans = verdict.story().scans();
        assertThat(verdict.holds()).isFalse();
        assertThat(scans.get(0).happens()).contains("power comes on");
        assertThat(scans)
                .anySatisfy(s -> assertThat(s.happens()).anyMatch(h -> h.contains("emergency stop chain: pressed")));
        assertThat(scans).hasSizeBetween(4, 8);
    }

    /** A lamp that shows a contact lags by what the contact said when the scan began; beside an output that changes this is said. */
    @Test
    void a_lamp_that_lights_in_the_scan_of_STOP_is_told_with_what_was_read() {
        Sequence whole = DefaultSequence.of("bag", Options.USUAL);
        Sequence lit = Mutants.withLamps(
                whole,
                whole.lamps().stream()
                        .map(l -> l.name().equals("lamp_stopping")
                                ? new Sequence.Lamp(
                                        l.name(), l.tag(), l.colour(), l.flashes(), l.words(), Expr.of("in_run_on"))
                                : l)
                        .toList());
        assertThat(Proof.of(lit, Proof.Adversary.PLAIN).verdicts())
                .filteredOn(v -> v.property().id().equals("lamp-stopping"))
                .singleElement()
                .satisfies(v -> {
                    List<Story.Scan> scans = v.story().scans();
                    Story.Scan last = scans.get(scans.size() - 1);
                    assertThat(last.happens()).contains("STOP is pressed");
                    assertThat(last.changes())
                            .contains("vent valve: open")
                            .contains("lamp VACUUMING: on (its contact was read before that)");
                });
    }

    @Test
    void a_state_without_a_way_back_is_found() {
        Sequence whole = DefaultSequence.of("bag", Options.USUAL);
        Sequence stuck = Mutants.withSteps(
                whole,
                whole.steps().stream()
                        .map(s -> s.name().equals("run_on")
                                ? new Sequence.Step(
                                        s.name(),
                                        s.words(),
                                        s.on(),
                                        s.keep(),
                                        s.time(),
                                        List.of(s.exits().get(0)))
                                : s)
                        .toList());

        Proof proof = Proof.of(stuck, Optional.empty(), Proof.Adversary.PLAIN);
        assertThat(proof.deadEnd().scans()).isNotEmpty();
        assertThat(proof.deadEnd()
                        .scans()
                        .get(proof.deadEnd().scans().size() - 1)
                        .step())
                .isEqualTo("run_on");
    }
}
