package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The search finds what a plain one finds that carries out every move of every state as a whole scan: the same states in the same order, and the same stories. */
class PlainSearchTest {
    private static final int EVERY = 31;

    static List<Sequence> sequences() {
        Sequence drum = DefaultSequence.of("x", Options.numbered(128));
        List<Sequence> mutants = List.copyOf(Mutants.of(drum).values());
        List<Sequence> some = new ArrayList<>(List.of(drum));
        for (int m = 0; m < mutants.size(); m += EVERY) {
            some.add(mutants.get(m));
        }
        return some;
    }

    @ParameterizedTest
    @MethodSource("sequences")
    void finds_what_a_plain_search_finds(Sequence sequence) {
        World world = World.of(sequence, Optional.empty());
        Circuit circuit = world.circuit();
        Moves moves = world.moves(circuit, 1, 1);
        Plain plain = new Plain(circuit, moves);
        Search.Result found = Search.run(circuit, moves, false);
        assertThat(found.states()).isEqualTo(plain.states.size());
        for (int s = 0; s < found.states(); s++) {
            int at = s * circuit.words();
            assertThat(Arrays.copyOfRange(found.visited().bits, at, at + circuit.words()))
                    .isEqualTo(plain.states.get(s));
        }
        for (int w = 0; w < circuit.watch.length; w++) {
            assertThat(found.stories().get(w)).containsExactlyElementsOf(plain.story(w));
        }
    }

    @Test
    void among_them_are_sequences_with_stories_to_compare() {
        assertThat(sequences()).anySatisfy(sequence -> {
            World world = World.of(sequence, Optional.empty());
            Circuit circuit = world.circuit();
            assertThat(Search.run(circuit, world.moves(circuit, 1, 1), false).stories())
                    .anySatisfy(story -> assertThat(story).hasSizeGreaterThan(1));
        });
    }

    /** One move after another, whether it is felt or not. */
    private static final class Plain {
        private final Moves moves;
        private final List<long[]> states = new ArrayList<>();
        private final List<int[]> came = new ArrayList<>();
        private final Map<Integer, int[]> broken = new LinkedHashMap<>();

        Plain(Circuit circuit, Moves moves) {
            this.moves = moves;
            Map<String, Integer> known = new LinkedHashMap<>();
            Lanes lanes = new Lanes(circuit);
            known.put(Arrays.toString(circuit.start), 0);
            states.add(circuit.start);
            came.add(new int[] {-1, 0});
            for (int s = 0; s < states.size(); s++) {
                lanes.setState(states.get(s), 0);
                for (int move = 0; move < moves.count(); move++) {
                    if (move % 64 == 0) {
                        lanes.setChoices(moves.masks(move / 64));
                        lanes.evaluate();
                    }
                    long[] next = new long[circuit.words()];
                    lanes.state(move % 64, next, 0);
                    int[] by = {s, move};
                    if (known.putIfAbsent(Arrays.toString(next), states.size()) == null) {
                        states.add(next);
                        came.add(by);
                    }
                    for (int w = 0; w < circuit.watch.length; w++) {
                        if ((lanes.value(circuit.watch[w]) >>> (move % 64) & 1) == 0) {
                            broken.putIfAbsent(w, by);
                        }
                    }
                }
            }
        }

        List<boolean[]> story(int watched) {
            List<boolean[]> story = new ArrayList<>();
            for (int[] by = broken.get(watched); by != null && by[0] >= 0; by = came.get(by[0])) {
                story.add(0, moves.choices(by[1]));
            }
            return story;
        }
    }
}
