package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the search does not carry out leads nowhere new: shown move by move in states of small and large variants. */
class FeltTest {
    private static final int EVERY = 401;

    @ParameterizedTest
    @ValueSource(ints = {0, 128, 608, 703})
    void a_move_leads_where_the_same_move_leads_without_what_is_not_felt(int variant) {
        World world = World.of(DefaultSequence.of("x", Options.numbered(variant)), Optional.empty());
        Circuit circuit = world.circuit();
        Moves all = world.moves(circuit, 1, 1);
        Search.Result found = Search.run(circuit, all, false);
        Felt.Reader reader = new Felt(circuit, all).reader();
        Lanes lanes = new Lanes(circuit);
        int left = 0;
        for (int s = 0; s < found.states(); s += EVERY) {
            int at = s * circuit.words();
            reader.read(found.visited().bits, at, 1);
            boolean[] felt = felt(reader.moves(0), circuit.choices.size());
            for (int move = 0; move < all.count(); move++) {
                boolean[] whole = all.choices(move);
                boolean[] less = whole.clone();
                for (int c = 0; c < less.length; c++) {
                    less[c] &= felt[c];
                }
                if (!Arrays.equals(whole, less)) {
                    left++;
                    assertThat(after(circuit, lanes, found, at, whole))
                            .isEqualTo(after(circuit, lanes, found, at, less));
                }
            }
        }
        assertThat(left).as("moves that need not be carried out").isPositive();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 128, 608})
    void carrying_out_what_is_felt_alone_leads_where_whole_scans_lead(int variant) {
        World world = World.of(DefaultSequence.of("x", Options.numbered(variant)), Optional.empty());
        Circuit circuit = world.circuit();
        Moves all = world.moves(circuit, 1, 1);
        Search.Result found = Search.run(circuit, all, false);
        FeltLanes felt = new FeltLanes(circuit, new Felt(circuit, all));
        Lanes whole = new Lanes(circuit);
        long[] into = new long[64 * circuit.words()];
        int[] lane = new int[64];
        for (int from = 0; from < found.states(); from += 16 * EVERY) {
            int count = Math.min(64, found.states() - from);
            felt.read(found.visited().bits, from * circuit.words(), count);
            for (int s = 0; s < count; s += 9) {
                Moves moves = felt.stand(s);
                for (int block = 0; block < moves.blocks(); block++) {
                    felt.evaluate(moves.masks(block));
                    int distinct = felt.states(moves.used(block), into, lane);
                    List<String> are = new ArrayList<>();
                    for (int d = 0; d < distinct; d++) {
                        int at = d * circuit.words();
                        are.add(Arrays.toString(Arrays.copyOfRange(into, at, at + circuit.words())));
                    }
                    long[] broken = new long[circuit.watch.length];
                    for (int r = 0; r < felt.reached(); r++) {
                        broken[felt.reached(r)] = felt.broken(r, s);
                    }
                    Set<String> expected = new LinkedHashSet<>();
                    long[] expectedBroken = new long[broken.length];
                    for (int l = 0; l < moves.used(block); l++) {
                        boolean[] move = moves.choices(block * 64 + l);
                        long[] after = after(circuit, whole, found, (from + s) * circuit.words(), move);
                        expected.add(Arrays.toString(Arrays.copyOf(after, circuit.words())));
                        for (int w = 0; w < broken.length; w++) {
                            expectedBroken[w] |= (1 - after[circuit.words() + w]) << l;
                        }
                    }
                    assertThat(are).containsExactlyElementsOf(expected);
                    for (int w = 0; w < broken.length; w++) {
                        assertThat(broken[w] << (64 - moves.used(block)))
                                .isEqualTo(expectedBroken[w] << (64 - moves.used(block)));
                    }
                }
            }
        }
    }

    private static boolean[] felt(Moves moves, int choices) {
        boolean[] felt = new boolean[choices];
        for (int move = 0; move < moves.count(); move++) {
            boolean[] made = moves.choices(move);
            for (int c = 0; c < choices; c++) {
                felt[c] |= made[c];
            }
        }
        return felt;
    }

    /** The next state, and what is watched behind it. */
    private static long[] after(Circuit circuit, Lanes lanes, Search.Result found, int at, boolean[] move) {
        lanes.setState(found.visited().bits, at);
        long[] choices = new long[move.length];
        for (int c = 0; c < move.length; c++) {
            choices[c] = move[c] ? 1 : 0;
        }
        lanes.setChoices(choices);
        lanes.evaluate();
        long[] after = new long[circuit.words() + circuit.watch.length];
        lanes.state(0, after, 0);
        for (int w = 0; w < circuit.watch.length; w++) {
            after[circuit.words() + w] = lanes.value(circuit.watch[w]) & 1;
        }
        return after;
    }
}
