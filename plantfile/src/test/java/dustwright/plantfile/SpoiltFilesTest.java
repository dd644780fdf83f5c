package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Seeded damage to good files: the reader always answers with a plant or with faults that have a message, never with an exception. */
class SpoiltFilesTest {
    private static final String ALPHABET =
            "abcdefghijklmnopqrstuvwxyz ABCZ 0123456789 :{}[],.-#&*!|>'\"%@`\t\n\\/?=~<é漢😀\u0000\uFEFF\u0085";

    @ParameterizedTest
    @ValueSource(strings = {"two-inlets.yaml", "measured-loop.yaml"})
    void a_file_cut_anywhere_is_read_or_refused(String name) {
        String text = PlantReaderTest.resource(name);
        for (int end = 0; end <= text.length(); end += 41) {
            answer(text.substring(0, end));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"two-inlets.yaml", "measured-loop.yaml"})
    void a_file_with_random_characters_replaced_is_read_or_refused(String name) {
        String text = PlantReaderTest.resource(name);
        Random random = new Random(20261125);
        for (int trial = 0; trial < 300; trial++) {
            StringBuilder spoilt = new StringBuilder(text);
            for (int n = 0; n <= trial % 4; n++) {
                spoilt.setCharAt(random.nextInt(spoilt.length()), ALPHABET.charAt(random.nextInt(ALPHABET.length())));
            }
            answer(spoilt.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"two-inlets.yaml", "measured-loop.yaml"})
    void a_file_with_lines_removed_doubled_or_moved_is_read_or_refused(String name) {
        String[] lines = PlantReaderTest.resource(name).split("\n", -1);
        Random random = new Random(7);
        for (int trial = 0; trial < 300; trial++) {
            String[] spoilt = lines.clone();
            spoilt[random.nextInt(lines.length)] = trial % 2 == 0 ? "" : lines[random.nextInt(lines.length)];
            answer(String.join("\n", spoilt));
        }
    }

    @Test
    void values_replaced_by_hostile_ones_are_read_or_refused() {
        String text = PlantReaderTest.resource("two-inlets.yaml");
        String[] hostile = {
            "",
            "~",
            "[]",
            "{}",
            "[[]]",
            "{{}}",
            "NaN m",
            "1e308 m",
            "-0 m",
            "1e-320 inHg",
            "'",
            "\"",
            "0x1F",
            "1:30",
            "2026-11-25",
            ".inf",
            "<<",
            "=",
            "yes",
            "1/0 in",
            "99999 9999/9999 in"
        };
        int[] colons = java.util.stream.IntStream.range(0, text.length())
                .filter(i -> text.startsWith(": ", i))
                .toArray();
        for (int colon : colons) {
            int end = colon + 2;
            while (end < text.length() && ",}]\n".indexOf(text.charAt(end)) < 0) {
                end++;
            }
            for (String value : hostile) {
                answer(text.substring(0, colon + 2) + value + text.substring(end));
            }
        }
    }

    private static void answer(String text) {
        Reading reading;
        try {
            reading = PlantReader.read(text);
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError("an exception instead of an answer for\n" + text, e);
        }
        if (reading instanceof Reading.Faults faults) {
            assertThat(faults.faults())
                    .isNotEmpty()
                    .allSatisfy(f -> assertThat(f.message()).isNotBlank());
        }
    }
}
