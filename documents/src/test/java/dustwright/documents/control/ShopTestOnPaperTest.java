package dustwright.documents.control;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.report.ControlReport;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Somebody reads the printed shop test line by line and carries it out with a watch on the exported function block: every line can be ticked. Contacts by their tags, buttons by their words, times by
 * their names; nothing but the page is read.
 */
class ShopTestOnPaperTest {
    private static final long SCAN_ms = 100;
    private static final long SECOND_ms = 1000;
    private static final long LONG_ms = 5_000_000;
    private static final Pattern ROW = Pattern.compile("<tr>(.*?)</tr>", Pattern.DOTALL);
    private static final Pattern CELL = Pattern.compile("<td[^>]*>(.*?)</td>", Pattern.DOTALL);
    private static final Pattern TAG = Pattern.compile("[A-Z]+-[0-9]+");

    @ParameterizedTest
    @ValueSource(ints = {0, 20, 34, 62, 64, 128, 608})
    void every_line_can_be_ticked(int variant) {
        Sequence sequence = DefaultSequence.of("panel", Options.numbered(variant));
        Tester tester = new Tester(sequence);
        List<List<String>> lines = lines(ControlReport.of(sequence).html());
        assertThat(lines).hasSizeGreaterThan(100);
        List<String> notTicked = new ArrayList<>();
        for (List<String> line : lines) {
            String seen = tester.tick(line.get(1));
            if (!seen.equals(line.get(3)) || !tester.step().equals(line.get(2))) {
                notTicked.add(line + " but seen " + seen + " in " + tester.step());
            }
        }
        assertThat(notTicked).isEmpty();
    }

    private static List<List<String>> lines(String page) {
        String test = page.substring(page.indexOf("<h2>Shop test</h2>"));
        List<List<String>> lines = new ArrayList<>();
        Matcher row = ROW.matcher(test);
        while (row.find()) {
            List<String> cells = CELL.matcher(row.group(1))
                    .results()
                    .map(c -> c.group(1).replaceAll("<[^>]*>", ""))
                    .toList();
            if (!cells.isEmpty()) {
                lines.add(cells);
            }
        }
        return lines;
    }

    /** One line, by its words. */
    private static final class Tester {
        private final Sequence sequence;
        private final StructuredTextRunner block;
        private final Set<String> covered = new HashSet<>();
        private final Set<String> bad = new HashSet<>();
        private final Set<String> down = new HashSet<>();
        private Map<String, String> seen = new LinkedHashMap<>();
        private String plant = "";
        private boolean first = true;
        private String inStep = "";
        private long inStep_ms;
        private final Map<String, Integer> driven = new HashMap<>();

        Tester(Sequence sequence) {
            this.sequence = sequence;
            block = new StructuredTextRunner(StructuredText.of(sequence).replaceAll("(>=|<) [0-9]+", "$1 9999"));
            seen = panel();
        }

        String step() {
            return sequence.steps().stream()
                    .map(Sequence.Step::name)
                    .filter(s -> is("in_" + s))
                    .findFirst()
                    .orElseThrow()
                    .replace('_', ' ');
        }

        String tick(String line) {
            List<String> doings = List.of(line.split("; at once ", -1));
            for (String doing : doings) {
                carryOut(doing);
            }
            for (long moment_ms = 0; moment_ms < SECOND_ms; moment_ms += SCAN_ms) {
                scan();
            }
            Map<String, String> now = panel();
            List<String> changes = new ArrayList<>();
            now.forEach((sign, word) -> {
                if (!word.equals(seen.get(sign))) {
                    changes.add(sign + ": " + word);
                }
            });
            seen = now;
            return changes.isEmpty() ? "no change" : String.join(", ", changes);
        }

        private void carryOut(String line) {
            String before = first ? "" : step();
            bad.clear();
            down.clear();
            plant = line;
            long filter_ms = 0;
            List<String> pressed = new ArrayList<>();
            List<BooleanSupplier> until = new ArrayList<>();
            for (String part : line.split("; (?:then )?", -1)) {
                if (part.equals("power is lost and returns")) {
                    first = true;
                    driven.clear();
                } else if (part.startsWith("dust ")) {
                    boolean covers = part.startsWith("dust covers");
                    tags(part).forEach(t -> covered.removeIf(t::equals));
                    if (covers) {
                        covered.addAll(tags(part));
                    }
                } else if (part.endsWith(" is pressed")) {
                    pressed.add(button(part.substring(0, part.length() - " is pressed".length())));
                } else if (part.endsWith(" is held down")) {
                    down.add(button(part.substring(0, part.length() - " is held down".length())));
                } else if (part.startsWith("time out: ")) {
                    String time = part.substring("time out: ".length()).replace(' ', '_');
                    until.add(() -> is(time));
                } else if (part.startsWith("the time of ")) {
                    until.add(() -> inStep_ms >= time_ms(before));
                } else if (part.startsWith("wait for ")) {
                    until.add(() -> step().equals(part.substring("wait for ".length())));
                } else if (part.endsWith(")") || part.endsWith(" is missing")) {
                    if (!part.startsWith("the ")) {
                        bad.addAll(tags(part));
                    }
                } else {
                    assertThat(part).isIn("wait", "power comes on", "STOP is let go");
                }
            }
            for (Sequence.Input input : sequence.inputs()) {
                if (bad.contains(input.tag()) && input.filter().isPresent()) {
                    filter_ms = Math.max(
                            filter_ms,
                            Math.round(
                                    1000 * sequence.timer(input.filter().get()).time_s()));
                }
            }
            for (long waited_ms = 0; waited_ms <= filter_ms; waited_ms += SCAN_ms) {
                scan();
            }
            if (!pressed.isEmpty()) {
                Set<String> held = Set.copyOf(down);
                down.addAll(pressed);
                for (int scan = 0; scan < 3; scan++) {
                    scan();
                }
                down.retainAll(held);
            }
            long passed_ms = 0;
            while (!until.isEmpty()
                    && (before.isEmpty() || step().equals(before))
                    && !until.stream().allMatch(BooleanSupplier::getAsBoolean)
                    && passed_ms < LONG_ms) {
                scan();
                passed_ms += SCAN_ms;
            }
        }

        private static List<String> tags(String part) {
            return TAG.matcher(part).results().map(t -> t.group()).toList();
        }

        private String button(String words) {
            return sequence.buttons().stream()
                    .filter(b -> b.words().equals(words))
                    .map(Sequence.Button::name)
                    .findFirst()
                    .orElseThrow();
        }

        private Map<String, String> panel() {
            Map<String, String> panel = new LinkedHashMap<>();
            sequence.outputs().forEach(o -> panel.put(o.words(), is(o.name()) ? o.on() : o.off()));
            sequence.lamps().forEach(l -> panel.put("lamp " + l.words(), is(l.name()) ? "on" : "off"));
            sequence.causes().forEach(c -> panel.put("message " + c.message(), is(c.name()) ? "appears" : "goes"));
            return panel;
        }

        /** From the list of times. */
        private long time_ms(String step) {
            return Math.round(1000
                    * sequence.timer(
                                    sequence.step(step.replace(' ', '_')).time().orElseThrow())
                            .time_s());
        }

        private boolean is(String name) {
            return block.is(StructuredText.id(name));
        }

        private void scan() {
            for (Sequence.Output output : sequence.outputs()) {
                boolean on = !first && is(output.name());
                driven.put(output.name(), on ? driven.getOrDefault(output.name(), 0) + 1 : 0);
            }
            Map<String, Boolean> contacts = new HashMap<>();
            boolean open = first || !is("vent_shut") || plant.contains("the vent stays open");
            boolean runs =
                    sequence.outputs().stream().anyMatch(o -> o.name().startsWith("pump") && is(o.name())) && !first;
            contacts.put("vent_open_limit", open);
            contacts.put("suction", runs && !open);
            contacts.put("no_vacuum", !(runs && !open));
            contacts.put(
                    "motion",
                    (driven.getOrDefault("valve", 0) > 15 && !plant.contains("the rotor stands"))
                            || plant.contains("the rotor turns though nothing drives it"));
            for (String producer : List.of("", "_1", "_2")) {
                contacts.put("at_speed" + producer, driven.getOrDefault("pump" + producer, 0) > 15);
            }
            contacts.put(
                    "suction_open",
                    first
                            || sequence.outputs().stream()
                                    .noneMatch(o -> o.name().equals("suction_shut") && is(o.name())));
            for (Sequence.Input input : sequence.inputs()) {
                boolean good = contacts.getOrDefault(input.name(), true)
                        && !bad.contains(input.tag())
                        && !covered.contains(input.tag());
                block.set(StructuredText.contact(input), good);
            }
            sequence.buttons()
                    .forEach(b ->
                            block.set(StructuredText.id(b.name()), down.contains(b.name()) != b.opensWhenPressed()));
            block.set("first_scan", first);
            block.set("cycle", SCAN_ms);
            block.call(SCAN_ms);
            first = false;
            inStep_ms = step().equals(inStep) ? inStep_ms + SCAN_ms : 0;
            inStep = step();
        }
    }
}
