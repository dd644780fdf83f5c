package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Every small slip in the default sequence is noticed: otherwise a property would be missing, or a condition would be idle. First by the search with
 * healthy devices, then by running with real times, by what a single device fault may not defeat, by two bad contacts and by two events in one scan. A slip that changes nothing anybody
 * could see is none; that too is shown by a search ({@link Alike}).
 */
class MutantsTest {
    private static final Sequence WHOLE = DefaultSequence.of("bag", Options.USUAL);

    /** Faults after which a second witness or a supervision still has to do its work. */
    private static final List<String> FAULTS = List.of(
            "vent-sticks-shut",
            "valve-contactor-welded",
            "vent-limit-reads-not-open",
            "low-switch-reads-vacuum",
            "motion-reads-standing",
            "pump-does-not-start",
            "vent-sticks-open",
            "suction-limit-reads-not-open",
            "suction-valve-sticks-shut",
            "suction-valve-sticks-open");

    /** Those that still exist where dust falls straight into a drum under vacuum, and inlets have switches. */
    private static final Sequence DRUM = DefaultSequence.of("drum under vacuum", Options.numbered(160));

    /** With everything that can be added: suction valve, purge, inlet switches. */
    private static final Sequence SWEPT = DefaultSequence.of("swept", Options.numbered(608));

    private static final int ONE_IN = 8;

    private final Map<String, Set<String>> defeatedAnyway = new ConcurrentHashMap<>();

    @Test
    void every_mutant_is_caught() {
        assertThat(Mutants.of(WHOLE)).hasSizeGreaterThan(250);
        assertThat(alive(WHOLE)).isEmpty();
    }

    @Test
    void every_mutant_of_a_drum_under_vacuum_is_caught() {
        assertThat(Mutants.of(DRUM)).hasSizeGreaterThan(130);
        assertThat(alive(DRUM)).isEmpty();
    }

    /** With suction valve and purge: what is not already a mutant without them. */
    @Test
    void every_mutant_of_what_a_suction_valve_and_a_purge_add_is_caught() {
        assertThat(Mutants.of(SWEPT).keySet().stream()
                        .filter(m -> !Mutants.of(WHOLE).containsKey(m)))
                .hasSizeGreaterThan(40);
        assertThat(alive(SWEPT)).isEmpty();
    }

    /** Slips are taken as none only when a search shows that nobody can see them. */
    @Test
    void a_slip_is_no_slip_only_where_both_sequences_are_seen_to_do_the_same() {
        Map<String, Sequence> mutants = Mutants.of(WHOLE);
        assertThat(Alike.of(WHOLE, WHOLE)).isTrue();
        mutants.keySet()
                .retainAll(List.of(
                        "reset of deep_held without in_standing",
                        "exit from run_up to settling without receiver_free",
                        "rule cleaning_due without not cleaned_in_vain"));
        assertThat(mutants).hasSize(3);
        assertThat(mutants.entrySet().stream()
                        .filter(m -> Alike.of(WHOLE, m.getValue()))
                        .map(Map.Entry::getKey))
                .containsExactly("reset of deep_held without in_standing");
    }

    /** Every {@value #ONE_IN}th mutant; with {@code -Ddustwright.mutants.all=true} each of them, which took more than half an hour beside other work. */
    private List<String> alive(Sequence whole) {
        Set<String> judged = whole.equals(SWEPT) ? Mutants.of(WHOLE).keySet() : Set.of();
        List<Map.Entry<String, Sequence>> asked = Mutants.of(whole).entrySet().stream()
                .filter(m -> !judged.contains(m.getKey()))
                .toList();
        return IntStream.range(0, asked.size())
                .parallel()
                .filter(n -> Boolean.getBoolean("dustwright.mutants.all") || n % ONE_IN == 0)
                .mapToObj(asked::get)
                .filter(m -> !Alike.of(whole, m.getValue()) && !isCaught(whole, m.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private boolean isCaught(Sequence whole, Sequence mutant) {
        return !TripMessages.judged(mutant).scans().isEmpty()
                || !Judged.of(mutant, Optional.empty(), 1, 1, Set.of()).holds()
                || !countsAreRight(whole, mutant)
                || DeviceFault.of(whole).stream()
                        .filter(f -> FAULTS.contains(f.id()))
                        .anyMatch(f -> isCaughtUnder(f, whole, mutant))
                || Judged.of(mutant, Optional.empty(), 1, 2, Set.of()).isBroken()
                || Judged.of(mutant, Optional.empty(), 2, 1, Set.of()).isBroken();
    }

    /** Own returns are counted only where there is a receiver probe. */
    private static boolean countsAreRight(Sequence whole, Sequence mutant) {
        return !whole.equals(DRUM) ? CountsTest.countsAreRight(mutant) : CountsTest.startsAreRight(mutant);
    }

    private boolean isCaughtUnder(DeviceFault fault, Sequence whole, Sequence mutant) {
        Set<String> anyway =
                defeatedAnyway.computeIfAbsent(whole.title() + "/" + fault.id(), f -> Proof.defeated(whole, fault));
        return Judged.of(mutant, Optional.of(fault), 1, 1, anyway).isBroken();
    }

    /** One search, ended as soon as a property is broken that is not defeated anyway. */
    private record Judged(Sequence sequence, World world, Circuit circuit, Search.Result result, Set<String> anyway) {
        static Judged of(Sequence sequence, Optional<DeviceFault> fault, int events, int bad, Set<String> anyway) {
            World world = World.of(sequence, fault);
            Circuit circuit = world.circuit();
            boolean[] wanted = new boolean[world.properties().size()];
            for (int p = 0; p < wanted.length; p++) {
                wanted[p] = !anyway.contains(world.properties().get(p).id());
            }
            Search.Result result = Search.runUntil(circuit, world.moves(circuit, events, bad), wanted);
            return new Judged(sequence, world, circuit, result, anyway);
        }

        boolean isBroken() {
            return IntStream.range(0, world.properties().size())
                    .anyMatch(p -> !result.holds(p)
                            && !anyway.contains(world.properties().get(p).id()));
        }

        /** No property broken, every step reached, no loop without time, no dead end. */
        boolean holds() {
            if (isBroken() || !Proof.neverReached(sequence, circuit, result).isEmpty()) {
                return false;
            }
            Recovery recovery = Recovery.of(world, circuit, result);
            return recovery.timelessLoop(sequence).isEmpty()
                    && recovery.deadEnd(sequence, world, circuit, result)
                            .scans()
                            .isEmpty();
        }
    }
}
