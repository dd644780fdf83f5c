package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.PerformanceLevel;
import dustwright.engine.interlock.SafetyFunction;
import dustwright.engine.interlock.Sequence;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sequence files: what is written is read back, and what is wrong is told with its line. */
class SequenceReaderTest {
    private static final String WHOLE = SequenceText.of(DefaultSequence.of("Bag, one producer", Options.USUAL));

    @Test
    void every_default_sequence_is_read_as_it_was_written() {
        for (int variant = 0; variant < Options.COUNT; variant += variant < 32 ? 1 : 7) {
            Options options = Options.numbered(variant);
            var sequence = DefaultSequence.of("Station \"R\": " + options.container(), options);
            SequenceReading reading = SequenceReader.read(SequenceText.of(sequence));
            assertThat(reading).isInstanceOf(SequenceReading.Read.class);
            assertThat(((SequenceReading.Read) reading).sequence()).isEqualTo(sequence);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "when: valve and not motion | when: valve and not motoin | there is no device or signal \"motoin\" | \"motion\"",
                "after: no_motion | after: no_moton | there is no time \"no_moton\" | \"no_motion\"",
                "keep: [pump, valve] | keep: [pum, valve] | there is no output \"pum\" | \"pump\"",
                "{to: run_up, | {to: run_upp, | there is no step \"run_upp\" | \"run_up\"",
                "on: [horn] | on: [horn, pump] | \"pump\" is both switched on and kept | one of the two lists",
                "on: [valve, pulses] | on: [valve, pulses, vent_shut] | together with \"vent_shut\" | one of the two",
                "vent_shut: open, valve: turns | vent_shut: opn, valve: turns | \"opn\" is no demand on \"vent_shut\" | \"open\", its stop word",
                "tag: HS-201 | tag: HS-100 | \"HS-100\" is already the tag of inputs.estop_ok | a tag of its own",
                "contact: opens | contact: closes | dead button when its wire is broken | \"opens\"",
                "contact: closes | contact: opens | a broken wire would press RESET by itself | \"closes\": only STOP opens",
                "message: FIRE OR EXPLOSION SIGNAL | message: EMERGENCY STOP | cause \"estop\" already has this message | a message of its own",
                "consequence: flame may travel through tubing and valve | consequence: \"\" | nothing is written here | words that people read",
                "shows: RECEIVER HIGH LEVEL | shows: BAG HIGH LEVEL | already has this sign | a sign of its own",
                "what: STOP | what: START | bears the sign of \"start\" | a sign that says what it does",
                "colour: red | colour: green | does not look like one | red",
                "priority: high | priority: status | somebody has to act on it | high, medium or low",
                "time: 8 s | time: 0 s | a time of zero | longer than one scan",
                "time: 150 s | time: 400 s | outside its own range | between",
                "when: receiver_high and returns_used | when: receiver_high and returns_used or | the condition ends too early | names joined"
            })
    void what_is_wrong_is_told_with_its_line(String right, String wrong, String message, String expected) {
        assertThat(WHOLE).contains(right);
        String spoilt = WHOLE.replaceFirst(java.util.regex.Pattern.quote(right), wrong);
        int line = (int) WHOLE.substring(0, WHOLE.indexOf(right))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;

        assertThat(faults(spoilt)).anySatisfy(f -> {
            assertThat(f.text()).contains(message).contains(expected);
            assertThat(f.line())
                    .as("its line, or that of the other of two keys that contradict")
                    .isBetween(line, line + 1);
        });
    }

    private static final String GUARD = """
              guard:
                what: guard
                severity: S2
                exposure: F1
                avoidance: P2
                category: "3"
                common cause: 65
                channels:
                  - parts:
                      - {what: switch, B10d: 2000000, operated: 300 /year, coverage: 90 %}
                      - {what: contactor, MTTFd: 75.5 years, coverage: 99 %}
                  - parts:
                      - {what: relay, MTTFd: 30 years, coverage: 60 %}
            """;

    /** Parts as they are entered are written and read back alike, and screened. */
    @Test
    void safety_functions_are_read_with_their_parts() {
        String file = withSafety(GUARD);
        Sequence sequence = ((SequenceReading.Read) SequenceReader.read(file)).sequence();
        assertThat(((SequenceReading.Read) SequenceReader.read(SequenceText.of(sequence))).sequence())
                .isEqualTo(sequence);
        assertThat(sequence.safety()).singleElement().satisfies(f -> {
            assertThat(f.channels().get(0).get(0).endurance_years().getAsDouble())
                    .isCloseTo(66_666.7, within(0.1));
            assertThat(f.reached())
                    .isInstanceOfSatisfying(
                            SafetyFunction.Screened.Reached.class,
                            r -> assertThat(r.level()).isEqualTo(PerformanceLevel.D));
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "category: \"3\" | category: \"2\" | 2 channels in category 2 | two in 3 and 4",
                "category: \"3\" | category: \"5\" | 5 | B, 1, 2, 3",
                ", operated: 300 /year | | B10d and operated go together | or its MTTFd",
                "MTTFd: 75.5 years | MTTFd: 75.5 years, B10d: 1000, operated: 1 /year | MTTFd beside B10d | one of the two",
                "coverage: 90 % | coverage: 100 % | 100 % | 99.9 %",
                "MTTFd: 30 years | MTTFd: 30 | a number without a unit | years",
                "common cause: 65 | common cause: 101 | 101 | 100",
                "severity: S2 | severity: S3 | S3 | S2"
            })
    void wrong_safety_functions_are_told(String right, String wrong, String message, String expected) {
        assertThat(GUARD).contains(right);
        assertThat(faults(withSafety(GUARD.replace(right, wrong == null ? "" : wrong))))
                .anySatisfy(f -> assertThat(f.text()).contains(message).contains(expected));
    }

    private static String withSafety(String functions) {
        return WHOLE.substring(0, WHOLE.indexOf("\nsafety:")) + "\nsafety:\n" + functions;
    }

    /** Of two buttons the upper acts, of two messages the upper is read first. */
    @Test
    void stop_stands_above_all_buttons_and_the_fire_signal_right_below_the_emergency_stop() {
        String stop = "  stop:\n    tag: HS-201\n    what: STOP\n    contact: opens\n";
        String below = WHOLE.replace(stop, "").replace("\noutputs:", stop + "\noutputs:");
        assertThat(faults(below)).singleElement().satisfies(f -> {
            assertThat(f.text()).contains("STOP stands below").contains("the first of the buttons");
            assertThat(f.line()).isEqualTo(lineOf(below, "  stop:"));
        });
        String late = WHOLE.replaceFirst("(?s)(  fire:\n.*?)(  power:\n.*?)(  rotor_stands:)", "$2$1$3");
        assertThat(faults(late)).singleElement().satisfies(f -> {
            assertThat(f.text()).contains("the fire signal stands below \"power\"");
            assertThat(f.line()).isEqualTo(lineOf(late, "  fire:"));
        });
    }

    @Test
    void a_step_nobody_leads_to_is_told_at_its_line() {
        String spoilt =
                WHOLE.replace("  tripped:\n    what", "  spare:\n    what: never\n    exits: []\n  tripped:\n    what");

        assertThat(faults(spoilt)).singleElement().satisfies(f -> {
            assertThat(f.text()).contains("no way leads to step \"spare\"");
            assertThat(f.line()).isEqualTo(lineOf(spoilt, "  spare:"));
        });
    }

    @Test
    void steps_that_follow_each_other_without_time_are_told() {
        String spoilt = WHOLE.replace("- {to: valve_proving, when: time_out}", "- {to: valve_proving, when: yes}")
                .replace(
                        "- {to: run_up, when: motion and not receiver_high and receiver_free}",
                        "- {to: warning, when: motion}");

        assertThat(faults(spoilt)).anySatisfy(f -> {
            assertThat(f.text())
                    .contains("can follow each other for ever without time passing")
                    .contains("warning, valve_proving");
            assertThat(f.line()).isEqualTo(lineOf(spoilt, "  warning:"));
        });
    }

    /** The search makes names of its own; one name for two things would be a proof of something else. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "t_rotor",
                "was_pump",
                "next_warning",
                "dip_now",
                "press_start",
                "powered",
                "stops_pump",
                "o_trip",
                "motion_contact",
                "cycle"
            })
    void a_name_the_search_or_the_block_makes_itself_is_refused(String name) {
        String spoilt = WHOLE.replace("vent_proved", name);

        assertThat(faults(spoilt)).singleElement().satisfies(f -> {
            assertThat(f.text()).contains("\"" + name + "\" is or holds");
            assertThat(f.line()).isEqualTo(lineOf(spoilt, "  " + name + ":"));
        });
    }

    @ParameterizedTest
    @CsvSource({"vent_shut, outputs:", "pump, outputs:", "estop_ok, inputs:", "press_reset, buttons:", "valve, outputs:"
    })
    void without_what_the_search_knows_by_name_there_is_no_proof(String name, String section) {
        String button = name.replace("press_", "");
        String spoilt = WHOLE.replaceAll("\\b" + name + "\\b", "renamed_" + name)
                .replaceAll("  reset:", "  renamed:")
                .replace("renamed_press_reset", "press_renamed");

        assertThat(faults(spoilt)).anySatisfy(f -> {
            assertThat(f.text()).contains("no ").contains("\"" + button + "\"");
            assertThat(f.line()).isEqualTo(lineOf(spoilt, section));
        });
    }

    /** 20 000 contacts more, and remarks of 10 MB: read in seconds. */
    @Test
    void a_huge_file_is_read() {
        StringBuilder huge = new StringBuilder(WHOLE);
        StringBuilder contacts = new StringBuilder();
        for (int i = 0; i < 20_000; i++) {
            contacts.append("  spare")
                    .append(i)
                    .append(":\n    tag: A-")
                    .append(i)
                    .append("\n    what: w\n    good: g\n    bad: b\n");
        }
        huge.insert(huge.indexOf("buttons:"), contacts);
        huge.append(("# " + "x".repeat(998) + "\n").repeat(10_000));

        assertThat(SequenceReader.read(huge.toString())).isInstanceOf(SequenceReading.Read.class);
    }

    @Test
    void the_column_of_a_condition_is_that_of_the_sign_that_does_not_fit() {
        String spoilt = WHOLE.replaceFirst("when: valve and not motion", "when: valve and & motion");

        assertThat(faults(spoilt)).singleElement().satisfies(f -> {
            String line = spoilt.lines().toList().get(f.line() - 1);
            assertThat(line.charAt(f.column() - 1)).isEqualTo('&');
        });
    }

    private static List<Fault> faults(String text) {
        SequenceReading reading = SequenceReader.read(text);
        assertThat(reading).isInstanceOf(SequenceReading.Faults.class);
        return ((SequenceReading.Faults) reading).faults();
    }

    private static int lineOf(String text, String start) {
        List<String> lines = text.lines().toList();
        return IntStream.range(0, lines.size())
                        .filter(i -> lines.get(i).startsWith(start))
                        .findFirst()
                        .orElseThrow()
                + 1;
    }
}
