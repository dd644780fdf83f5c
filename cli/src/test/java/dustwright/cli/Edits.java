package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Entry;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;

/** Plant files with one thing changed, for tests that ask what the change does. */
final class Edits {
    private Edits() {}

    /** The text with every one of {@code good} replaced; fails where there is none. */
    static String with(String text, String good, String other) {
        return changed(text, good, text.replace(good, other));
    }

    /** The text with the first match of a pattern replaced; fails where there is none. */
    static String withFirst(String text, String pattern, String other) {
        return changed(text, pattern, text.replaceFirst(pattern, other));
    }

    /** The text with each match of a pattern replaced; fails where there is none. */
    static String withEach(String text, String pattern, String other) {
        return changed(text, pattern, text.replaceAll(pattern, other));
    }

    private static String changed(String text, String good, String changed) {
        assertThat(changed).as("a change of " + good).isNotEqualTo(text);
        return changed;
    }

    /** The plant of a text that must read without faults. */
    static Plant plant(String text) {
        Reading reading = PlantReader.read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).plant();
    }

    /** What is said of the plant of a text, over the states usually asked. */
    static Study study(String text) {
        Plant plant = plant(text);
        return Study.of(plant, States.usual(plant)).withSheets();
    }

    /** An entry of its sheets. */
    static Entry entry(Study study, String id) {
        return study.sheets().stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(e -> e.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " is on no sheet"));
    }
}
