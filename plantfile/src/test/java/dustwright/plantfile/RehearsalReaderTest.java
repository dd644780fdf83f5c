package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.rehearsal.PlantFault;
import dustwright.engine.rehearsal.Script;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scripts of rehearsals: what is said is taken, what is wrong is told with its line. */
class RehearsalReaderTest {
    private static final String WHOLE = Drills.text("bridged-hopper");

    @Test
    void every_drill_says_what_is_seen_and_done_and_what_must_be_so() {
        for (String name : Drills.names()) {
            Script script = Drills.script(name);
            assertThat(script.sees()).as(name).isNotEmpty();
            assertThat(script.does()).as(name).isNotEmpty();
            assertThat(script.must()).as(name).hasSizeGreaterThan(1);
        }
    }

    @Test
    void a_script_is_taken_as_it_is_written() {
        Script script = Drills.script("bridged-hopper");
        assertThat(script.begins_s()).isEqualTo(9 * 3600);
        assertThat(script.lasts_s()).isEqualTo(5400);
        assertThat(script.receiverLeft_s()).contains(120.0);
        assertThat(script.people()).contains(new Script.Answering(180, 480));
        assertThat(script.acts().get(1)).isEqualTo(new Script.Act.Breaks(70, PlantFault.HOPPER_BRIDGED));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "begins: \"09:00\" | begins: \"25:00\" | no time of day",
                "lasts: 90 min | lasts: 1 s | lasts",
                "breaks: hopper bridged | breaks: hopper bridge | \"hopper bridged\"",
                "breaks: hopper bridged | breaks: hopper bridged, press: stop | an act is one thing",
                "{at: 70 s, | {at: 3 s, | before the act above it",
                "people come by: 8 min | people come by: 1 min | that is not shorter",
                "people come by: 8 min | feed: 50 % | only one end",
                "sometime: blocked | sometime: blocked and | ends too early",
                "sometime: blocked | sometime: blocked, never: trip | a demand is one thing",
                "seed: 3 | sead: 3 | sead"
            })
    void what_is_wrong_is_told_with_its_line(String right, String wrong, String message) {
        assertThat(WHOLE).contains(right);
        RehearsalReading reading =
                RehearsalReader.read(WHOLE.replaceFirst(java.util.regex.Pattern.quote(right), wrong));
        int line = (int) WHOLE.substring(0, WHOLE.indexOf(right))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;

        assertThat(reading).isInstanceOf(RehearsalReading.Faults.class);
        List<Fault> faults = ((RehearsalReading.Faults) reading).faults();
        assertThat(faults).anySatisfy(f -> {
            assertThat(f.text()).contains(message);
            assertThat(f.line()).isBetween(line - 1, line);
        });
    }
}
