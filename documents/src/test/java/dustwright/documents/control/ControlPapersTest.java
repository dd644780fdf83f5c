package dustwright.documents.control;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.report.ControlReport;
import dustwright.documents.report.PaperSize;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.FaultTable;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Proof;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.ShopTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Papers and workbook say what the sequence says. */
class ControlPapersTest {
    private static final Sequence SEQUENCE = DefaultSequence.of("Bag & one producer", Options.USUAL);

    /** Seen bonded again it still waits to be confirmed: the alarm list says by which buttons. */
    @Test
    void a_container_that_was_off_is_cleared_by_change_and_in_place() {
        Lists.Rows alarms = Lists.alarms(SEQUENCE);
        int cleared = alarms.head().indexOf("Cleared by");
        assertThat(alarms.rows())
                .filteredOn(r -> r.get(0).startsWith("BAG WAS OFF"))
                .extracting(r -> r.get(cleared))
                .containsExactly("BAG CHANGE; vacuuming returns with BAG IN PLACE, then START");
        assertThat(alarms.rows())
                .filteredOn(r -> r.get(0).startsWith("BAG NOT IN PLACE"))
                .extracting(r -> r.get(cleared))
                .containsExactly("by itself; vacuuming returns with BAG CHANGE, then BAG IN PLACE, then START");
    }

    /** Who programs from the matrix must not let come back by itself what waits for START; the model says which (tried on it), the trade which it must be: common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            RECEIVER HIGH LEVEL | by itself; vacuuming returns by itself
            BAG IS BEING CHANGED | BAG IN PLACE; vacuuming returns with START
            WAIT: DISCHARGE AIR WARM, COOLING | by itself; vacuuming returns with START
            WAIT: FILTER DROP TOO HIGH | START, and the end of step pulsing
            WAIT: VACUUM TOO DEEP | START
            COMPRESSED AIR TOO LOW | by itself; vacuuming returns with START
            COMPRESSED AIR LOW: NO FILTER CLEANING | by itself
            BAG HIGH LEVEL: CHANGE BAG | BAG CHANGE, then BAG IN PLACE; vacuuming returns with START
            EMERGENCY STOP | RESET, then START
            """)
    void matrix_and_alarms_say_what_returns_by_itself(String message, String released) {
        for (Lists.Rows table : List.of(Lists.alarms(SEQUENCE), Lists.causesAndEffects(SEQUENCE))) {
            assertThat(table.rows())
                    .filteredOn(r -> r.get(0).equals(message))
                    .extracting(r -> r.get(r.size() - 1))
                    .containsExactly(released);
        }
    }

    /** A sequence that lets vacuum come back after every hold is told as such. */
    @Test
    void what_the_papers_say_follows_the_model() {
        Sequence returning = new Sequence(
                SEQUENCE.title(),
                SEQUENCE.options(),
                SEQUENCE.scan_s(),
                SEQUENCE.inputs(),
                SEQUENCE.buttons(),
                SEQUENCE.outputs(),
                SEQUENCE.timers(),
                SEQUENCE.rules(),
                SEQUENCE.causes(),
                SEQUENCE.steps().stream()
                        .map(s -> !s.name().equals("holding")
                                ? s
                                : new Sequence.Step(
                                        s.name(),
                                        s.words(),
                                        s.on(),
                                        s.keep(),
                                        s.time(),
                                        s.exits().stream()
                                                .map(x -> x.to().equals("vacuuming")
                                                        ? new Sequence.Exit(
                                                                x.to(),
                                                                Expr.of(
                                                                        "not container_hold and not soft_hold and receiver_clear and motion and vent_proved"))
                                                        : x)
                                                .toList()))
                        .toList(),
                SEQUENCE.lamps());
        assertThat(Lists.alarms(returning).rows())
                .filteredOn(r -> r.get(0).startsWith("WAIT: DISCHARGE AIR WARM"))
                .extracting(r -> r.get(6))
                .containsExactly("by itself; vacuuming returns by itself");
    }

    @Test
    void a_contact_that_only_has_to_be_good_besides_brings_nothing_about() {
        Map<String, List<String>> byCause = new HashMap<>();
        Lists.causesAndEffects(SEQUENCE).rows().forEach(r -> byCause.put(r.get(0), r.subList(2, 4)));
        assertThat(byCause.get("BAG WAS OFF: CONFIRM IT")).containsExactly("ZSC-111", "0.2 s");
        assertThat(byCause.get("FILTER DOES NOT COME CLEAN")).containsExactly("PDSH-101", "");
    }

    @Test
    void sentences_bear_tags() {
        String prose = Narrative.of(SEQUENCE).stream()
                .flatMap(p -> p.entries().stream())
                .flatMap(e -> Stream.concat(Stream.of(e.title()), e.lines().stream()))
                .collect(Collectors.joining("\n"));
        Stream.of(
                        SEQUENCE.outputs().stream().map(Sequence.Output::tag),
                        SEQUENCE.inputs().stream().map(Sequence.Input::tag),
                        SEQUENCE.lamps().stream().map(Sequence.Lamp::tag))
                .flatMap(t -> t)
                .forEach(t -> assertThat(prose).contains(t));
    }

    /** The search takes counts as full in any scan: what it does not judge is said. */
    @Test
    void a_proof_says_that_forgetting_counts_is_not_judged() {
        String proof = ProofText.of(
                Proof.of(DefaultSequence.of("drum", Options.numbered(128)), Proof.Adversary.PLAIN), false, 2000);
        assertThat(proof)
                .contains("Not judged: that counts are forgotten when they should. The search", "starts_used")
                .contains("[count-of-starts]");
    }

    @Test
    void the_workbook_read_back_holds_every_cell_of_every_table() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Workbooks.write(Lists.all(SEQUENCE), out);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            for (Lists.Rows table : Lists.all(SEQUENCE)) {
                List<Row> rows = book.findSheet(table.title()).orElseThrow().read();
                List<List<String>> expected = new ArrayList<>(List.of(table.head()));
                expected.addAll(table.rows());
                assertThat(rows).hasSameSizeAs(expected);
                for (int r = 0; r < rows.size(); r++) {
                    for (int c = 0; c < table.head().size(); c++) {
                        String cell = rows.get(r).getCellAsString(c).orElse("");
                        assertThat(cell).isEqualTo(expected.get(r).get(c));
                    }
                }
            }
        }
    }

    /** Whoever reads what a fault defeats finds each name in the table of what was proven, on the page and in the workbook. */
    @Test
    void device_faults_and_what_they_defeat_are_on_paper_and_in_the_workbook() throws IOException {
        Sequence drum = DefaultSequence.of("drum", Options.numbered(130));
        Lists.Rows proven = Lists.proven(Proof.of(drum, Proof.Adversary.PLAIN));
        Lists.Rows faults = Lists.faults(FaultTable.of(drum));
        List<Lists.Rows> besides = List.of(proven, faults);

        Set<String> names = new HashSet<>();
        proven.rows().forEach(r -> names.add(r.get(0)));
        assertThat(faults.rows())
                .allSatisfy(r -> assertThat(r.get(2).equals("nothing that is proven")
                                || names.containsAll(List.of(r.get(2).split(", ", -1))))
                        .as(r.get(2))
                        .isTrue());
        assertThat(faults.rows())
                .extracting(r -> r.get(0))
                .contains(
                        "Line valve 1 stays shut",
                        "Emergency stop chain HS-100 reads closed",
                        "Fire or explosion detector YS-100 reads signals (broken wire)");
        String page = ControlReport.of(drum, besides).html();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Workbooks.write(besides, out);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            for (Lists.Rows table : besides) {
                assertThat(page).contains("<h2>" + table.title() + "</h2>");
                assertThat(book.findSheet(table.title()).orElseThrow().read())
                        .hasSize(1 + table.rows().size());
            }
        }
    }

    @Test
    void a_workbook_made_later_is_the_same_to_the_byte() throws Exception {
        ByteArrayOutputStream first = new ByteArrayOutputStream();
        Workbooks.write(Lists.all(SEQUENCE), first);
        Thread.sleep(2100); // times in an archive are whole even seconds
        ByteArrayOutputStream second = new ByteArrayOutputStream();
        Workbooks.write(Lists.all(SEQUENCE), second);

        assertThat(second.toByteArray()).isEqualTo(first.toByteArray());
    }

    @Test
    void the_list_of_signals_holds_every_contact_button_output_and_lamp_once() {
        Set<String> tags = new HashSet<>();
        Lists.signals(SEQUENCE)
                .rows()
                .forEach(r -> assertThat(tags.add(r.get(0) + " " + r.get(3))).isTrue());
        assertThat(tags)
                .hasSize(SEQUENCE.inputs().size()
                        + SEQUENCE.buttons().size()
                        + SEQUENCE.outputs().size()
                        + SEQUENCE.lamps().size());
        assertThat(Lists.signals(SEQUENCE).rows())
                .allSatisfy(r -> assertThat(r.get(2)).as(r.get(0)).isNotEmpty());
    }

    /** On paper a pair of causes is a pair of letters; each cause that demands something stands under one letter. */
    @Test
    void every_cause_that_demands_something_is_in_one_group_and_every_two_groups_are_paired() {
        List<List<String>> groups = Lists.groupsOfCauses(SEQUENCE).rows();
        List<String> members = groups.stream()
                .flatMap(g -> Stream.of(g.get(1).split("; ", -1)))
                .toList();

        assertThat(members)
                .containsExactlyInAnyOrderElementsOf(SEQUENCE.causes().stream()
                        .filter(c -> !c.demands().isEmpty())
                        .map(Sequence.Cause::message)
                        .toList());
        assertThat(Lists.pairsOfGroups(SEQUENCE).rows()).hasSize(groups.size() * (groups.size() - 1) / 2);
    }

    @Test
    void what_is_read_is_in_words_and_not_in_names_of_the_file() {
        Narrative.of(SEQUENCE)
                .forEach(part -> part.entries()
                        .forEach(e -> assertThat(e.lines())
                                .as(e.title())
                                .allSatisfy(l -> assertThat(l).doesNotContain("_"))));
        Stream.of(Lists.causesAndEffects(SEQUENCE), Lists.alarms(SEQUENCE))
                .flatMap(t -> t.rows().stream())
                .forEach(r -> assertThat(String.join(" ", r)).doesNotContain("_"));
        assertThat(StateDiagram.svg(SEQUENCE).markup()).doesNotContainPattern("[a-z]_[a-z]");
    }

    @ParameterizedTest
    @CsvSource({
        "the bag is full, the bag is not full",
        "the producer has rested, the producer has not rested",
        "the rotor was not seen turning in time, the rotor was seen turning in time",
        "all inlets are shut for long, all inlets are not shut for long",
        "power returns, not: power returns"
    })
    void the_opposite_of_what_a_signal_says(String says, String opposite) {
        assertThat(Narrative.not(says)).isEqualTo(opposite);
    }

    /** Every way has an arrow or joins a line that has one, a fault or a STOP too, and is told in words beside the step it leaves. */
    @Test
    void the_diagram_tells_every_way_by_number_and_words() {
        String drawn = StateDiagram.svg(SEQUENCE).markup();
        StateDiagram.ways(SEQUENCE)
                .forEach(w -> assertThat(drawn)
                        .contains(">" + w.number() + (w.from().isPresent() ? "  to " : "  from every other step")));
        Map<String, Long> numbers = Pattern.compile("<text[^>]*>([0-9]+)</text>")
                .matcher(drawn)
                .results()
                .collect(Collectors.groupingBy(n -> n.group(1), Collectors.counting()));
        StateDiagram.ways(SEQUENCE)
                .forEach(w -> assertThat(numbers.getOrDefault(String.valueOf(w.number()), 0L))
                        .as("way %d is drawn once for each step it leaves", w.number())
                        .isEqualTo(w.from().isPresent() ? 1 : SEQUENCE.steps().size() - 1));
    }

    @Test
    void a_sheet_prints_across_with_its_head_on_every_page_and_lines_as_high_as_their_words() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Workbooks.write(Lists.all(SEQUENCE), out);
        Map<String, String> parts = new HashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                parts.put(part.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        assertThat(parts.get("xl/workbook.xml")).contains("_xlnm.Print_Titles");
        assertThat(parts.get("xl/worksheets/sheet1.xml")).contains("ht=");
        for (int sheet = 2; sheet <= 7; sheet++) {
            assertThat(parts.get("xl/worksheets/sheet" + sheet + ".xml"))
                    .contains(
                            "orientation=\"landscape\"", "fitToPage=\"true\"", "fitToWidth=\"1\"", "autoFilter", "ht=");
        }
    }

    @Test
    void the_list_of_signals_says_how_contacts_act_and_what_is_wired_beside_the_program() {
        Map<String, List<String>> byTag = new HashMap<>();
        Lists.signals(SEQUENCE).rows().forEach(r -> byTag.put(r.get(0), r));
        assertThat(byTag.get("HS-100"))
                .endsWith("opens when bad", "yes, this is a copy; cuts XY-120, XV-106, XY-110, XY-101");
        assertThat(byTag.get("HS-201")).endsWith("opens when pressed", "");
        assertThat(byTag.get("HS-205")).endsWith("closes when pressed", "");
        assertThat(byTag.get("XV-106")).endsWith("energised: shut", "cut by emergency stop chain HS-100");
        assertThat(byTag.get("ZSC-110")).endsWith("opens when bad", "yes, this is a copy; cuts XY-110");
        assertThat(byTag.get("XY-110"))
                .endsWith(
                        "energised: turns",
                        "cut by emergency stop chain HS-100, fire or explosion detector YS-100, rotary valve guard ZSC-110");
        assertThat(byTag.get("XY-120"))
                .endsWith("energised: runs", "cut by emergency stop chain HS-100, fire or explosion detector YS-100");
    }

    /** Who wires the panel needs no other list to see which contact acts, and how soon. */
    @Test
    void the_matrix_names_the_contacts_of_each_cause_and_how_long_it_takes() {
        Lists.Rows matrix = Lists.causesAndEffects(SEQUENCE);
        assertThat(matrix.head().subList(0, 4)).containsExactly("Cause", "When", "Contacts", "Within");
        Map<String, List<String>> byCause = new HashMap<>();
        matrix.rows().forEach(r -> byCause.put(r.get(0), r.subList(2, 4)));
        assertThat(byCause.get("EMERGENCY STOP")).containsExactly("HS-100", "0.2 s");
        assertThat(byCause.get("BAG HIGH LEVEL: CHANGE BAG")).containsExactly("LSH-111", "3.2 s");
        assertThat(byCause.get("RECEIVER BLOCKED")).containsExactly("LSH-101", "153.2 s");
    }

    @Test
    void a_pair_takes_the_strictest_demand_for_each_output() {
        List<String> pair = Lists.pairs(SEQUENCE).rows().stream()
                .filter(r -> r.get(0).startsWith("BAG HIGH") && r.get(1).equals("RECEIVER HIGH LEVEL"))
                .findFirst()
                .orElseThrow();
        assertThat(pair.subList(2, 6)).containsExactly("limit", "open", "off", "no");
    }

    @Test
    void the_shop_test_takes_every_way_but_one_that_has_to_be_timed_within_settling() {
        ShopTest test = ShopTest.of(SEQUENCE);
        int exits = SEQUENCE.steps().stream().mapToInt(s -> s.exits().size()).sum();

        assertThat(test.notTaken()).containsExactly(new ShopTest.Exit("settling", 4, "dust_fall"));
        assertThat(test.acts().stream().flatMap(a -> a.takes().stream()).distinct())
                .hasSize(exits - 1);
        assertThat(test.acts()).hasSizeLessThan(20 * exits);
        assertThat(test.acts())
                .as("the full bag is tried while users vacuum, and its message is read")
                .anySatisfy(a -> assertThat(a.scan().changes())
                        .contains("message BAG HIGH LEVEL: CHANGE BAG: appears", "vent valve: open"));
        assertThat(test.acts().get(0).scan().changes()).contains("lamp FAULT: on", "message POWER WAS LOST: appears");
    }

    @Test
    void the_papers_name_every_cause_and_step_and_never_call_anything_safe() throws IOException {
        ControlReport report = ControlReport.of(SEQUENCE);
        String page = report.html();
        SEQUENCE.causes().forEach(c -> assertThat(page).contains(c.message()));
        SEQUENCE.steps().forEach(s -> assertThat(page).containsIgnoringCase(s.words()));
        assertThat(page).contains("design aid").doesNotContainPattern("\\bsafe\\b");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        report.pdf(PaperSize.A4, out);
        try (var pdf = Loader.loadPDF(out.toByteArray())) {
            assertThat(pdf.getNumberOfPages()).isBetween(10, 60);
        }
    }
}
