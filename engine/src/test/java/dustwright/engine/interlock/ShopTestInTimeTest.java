package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The walk for the panel's test is carried out with real times, by somebody who does only what its lines say, on a controller with a healthy plant. */
class ShopTestInTimeTest {
    /**
     * Every way is taken but one that would have to be timed within settling; every trip comes while a producer runs; only what needs counting is left, a drive that must already be slow, a suction valve that does not follow, and what takes longer than
     * the step in which it would end it.
     */
    @ParameterizedTest
    @ValueSource(ints = {0, 20, 34, 62, 64, 128, 608})
    void nothing_is_left_out_by_the_watch_but_what_needs_counting(int variant) {
        ShopTest walk = ShopTest.of(DefaultSequence.of("panel", Options.numbered(variant)));
        assertThat(walk.notTaken()).isSubsetOf(new ShopTest.Exit("settling", 4, "dust_fall"));
        assertThat(walk.notSeen())
                .isSubsetOf(Stream.concat(
                                Stream.of(
                                        "high_too_often",
                                        "starts",
                                        "START refused in standing with starts_used",
                                        "drive",
                                        "time out of drive_slow",
                                        "cloth_caked",
                                        "cloth_weak",
                                        "lid_free off by not rested",
                                        "suction_leaks",
                                        "time out of suction_not_shut",
                                        "settling to dust_fall by not air_good",
                                        "run_up to holding by filter_uncleaned and not air_good",
                                        "run_up_2 to holding by filter_uncleaned and not air_good",
                                        "run_up_2 to run_on by (container_hold or soft_hold or receiver_high) and not pump"),
                                walk.notSeen().stream()
                                        .filter(s ->
                                                s.matches(".* to run_on by (not air_enough|unloaded_out|not pump)")))
                        .toList());
    }

    /** STOP held down is a line of its own; START and RESET do nothing while it is down. */
    @Test
    void start_and_reset_are_pressed_while_stop_is_down() {
        List<Story.Scan> lines = ShopTest.of(DefaultSequence.of("panel", Options.USUAL)).acts().stream()
                .map(ShopTest.Act::scan)
                .toList();
        for (String button : List.of("START", "RESET")) {
            int at = IntStream.range(0, lines.size())
                    .filter(l -> lines.get(l)
                            .happens()
                            .equals(List.of("STOP is held down", "then " + button + " is pressed")))
                    .findFirst()
                    .orElseThrow();
            assertThat(lines.get(at - 1).changes()).contains("message STOP IS DOWN: NO OTHER BUTTON ACTS: appears");
            assertThat(lines.get(at).changes()).isEmpty();
            assertThat(lines.get(at).step()).isEqualTo(lines.get(at - 1).step());
            assertThat(lines.get(at + 1).changes()).contains("message STOP IS DOWN: NO OTHER BUTTON ACTS: goes");
        }
    }

    /** A panel with one thing wrong shows it somewhere in the walk: step, an output, a lamp or a message is otherwise than at a right panel. */
    @Test
    void a_wrong_panel_is_found_out_by_the_walk() {
        Sequence right = ShopTest.neverCountedOut(DefaultSequence.of("panel", Options.USUAL));
        List<ShopTest.Act> acts = ShopTest.of(right).acts();
        Map<String, Sequence> wrong = WrongPanels.of(right);
        assertThat(wrong).hasSize(19);
        assertThat(wrong.entrySet().stream()
                        .filter(w -> !isFoundOut(w.getValue(), acts))
                        .map(Map.Entry::getKey))
                .as("the horn sounds for one scan: heard, but no line can say so")
                .containsExactly("START ends a hold while the container is held");
        assertThat(wrong.values()).doesNotContain(right);
        assertThat(isFoundOut(right, acts)).isFalse();
    }

    private static boolean isFoundOut(Sequence panel, List<ShopTest.Act> acts) {
        ShopTestByTheWatch watch = new ShopTestByTheWatch(panel, new HashMap<>());
        return acts.stream().anyMatch(a -> !watch.tick(a).equals(a.scan()));
    }
}
