package dustwright.documents.control;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Wording;
import dustwright.engine.electrical.Instrument;
import dustwright.engine.interlock.FaultTable;
import dustwright.engine.interlock.HardWired;
import dustwright.engine.interlock.PerformanceLevel;
import dustwright.engine.interlock.Proof;
import dustwright.engine.interlock.SafetyFunction;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.Times;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The tables a panel builder and a programmer work from, as rows of words: signals, alarms, causes and effects, times, combinations. */
public final class Lists {
    private static final String DEMANDS =
            "Contacts: tags behind the cause. Within: longest time from what brings it about until the outputs follow, two scans included, without the travel of devices. off, open, shut, no: at once, whatever the step says. limit: may run unloaded until its limit. run-on: turns on until its time is"
                    + " out. turns: keeps turning. Empty: no demand. Released by: what makes the message go once its cause is gone and, where it ended vacuuming, what brings vacuuming back. What a WAIT message remembers (filter drop, vacuum) is forgotten in a trip and without power, the vacuum after STOP too. Outputs no cause speaks of have no column. Steps and times are not in this matrix.";
    private static final String STRICTEST =
            "Each output takes the strictest demand of the causes that are present; the message line shows both, the upper one first.";

    private Lists() {}

    /** A table: head and rows of equal width, and what its words mean. */
    public record Rows(String title, String key, List<String> head, List<List<String>> rows) {}

    /** All tables of a sequence, every pair of causes for itself. */
    public static List<Rows> all(Sequence sequence) {
        return tables(sequence, List.of(pairs(sequence)));
    }

    /** The tables in the order of the papers, pairs of causes in groups. */
    public static List<Rows> onPaper(Sequence sequence) {
        return tables(sequence, List.of(groupsOfCauses(sequence), pairsOfGroups(sequence)));
    }

    private static List<Rows> tables(Sequence sequence, List<Rows> pairs) {
        List<Rows> tables = new ArrayList<>(List.of(causesAndEffects(sequence)));
        tables.addAll(pairs);
        tables.addAll(List.of(signals(sequence), alarms(sequence), times(sequence), safetyFunctions(sequence)));
        return List.copyOf(tables);
    }

    /** Inputs and outputs with their tags; letters after ISA-5.1. */
    public static Rows signals(Sequence sequence) {
        List<List<String>> rows = new ArrayList<>();
        for (Sequence.Input i : sequence.inputs()) {
            String filter = i.filter().map(f -> time(sequence, f)).orElse("");
            rows.add(List.of(
                    i.tag(),
                    "contact in",
                    reading(i.tag()),
                    i.words(),
                    i.good(),
                    i.bad(),
                    filter,
                    "opens when bad",
                    HardWired.is(i.name()) ? "yes, this is a copy; cuts " + cutBy(sequence, i.name()) : ""));
        }
        for (Sequence.Button b : sequence.buttons()) {
            String pressed = b.opensWhenPressed() ? "0" : "1";
            rows.add(List.of(
                    b.tag(),
                    "button in",
                    reading(b.tag()),
                    "button " + b.words(),
                    pressed.equals("1") ? "pressed" : "not pressed",
                    pressed.equals("0") ? "pressed" : "not pressed",
                    "",
                    b.opensWhenPressed() ? "opens when pressed" : "closes when pressed",
                    ""));
        }
        for (Sequence.Output o : sequence.outputs()) {
            rows.add(List.of(
                    o.tag(),
                    "drive out",
                    reading(o.tag()),
                    o.words(),
                    o.on(),
                    o.off(),
                    "",
                    "energised: " + o.on(),
                    cutters(sequence, o)));
        }
        for (Sequence.Lamp l : sequence.lamps()) {
            rows.add(List.of(
                    l.tag(),
                    "lamp out",
                    reading(l.tag()),
                    l.colour() + (l.flashes() ? " flashing" : "") + " lamp " + l.words(),
                    "lit",
                    "dark",
                    "",
                    "energised: lit",
                    ""));
        }
        return new Rows(
                "Signals",
                "A contact with a broken wire reads 0, so does an output without power; all signals are on or off. Filter: time for which the contact must be bad."
                        + " Hard-wired: takes power away from these outputs by its own wiring beside the program; wired into the program alone it protects nobody; of an output that no cause demands off the plant's engineer decides whether it needs such wiring. A point whose device the plant file does not describe (safety filter, relief or vent valve, drive of one producer of two) says so in the plant's list of instruments and is not counted there. Points of that list that are not here (what is measured, ground monitor and neck seal of a bag, what"
                        + " opens it) are outside this program: wire a contact that must stop the filling, such as the ground monitor's, in series with the container's contact.",
                List.of("Tag", "Kind", "Letters", "What", "1", "0", "Filter", "Contact", "Hard-wired"),
                rows);
    }

    /** Tags of the outputs a contact takes the power from. */
    private static String cutBy(Sequence sequence, String input) {
        return sequence.outputs().stream()
                .filter(o -> HardWired.cuts(sequence, input, o))
                .map(Sequence.Output::tag)
                .collect(Collectors.joining(", "));
    }

    /** Tags and words of the contacts that take the power from an output by their own wiring. */
    private static String cutters(Sequence sequence, Sequence.Output output) {
        String by = sequence.inputs().stream()
                .filter(i -> HardWired.cuts(sequence, i.name(), output))
                .map(i -> i.words() + " " + i.tag())
                .collect(Collectors.joining(", "));
        return by.isEmpty() ? "" : "cut by " + by;
    }

    /** Alarms with cause, consequence and response; a message nobody has to act on is a status and no alarm. */
    public static Rows alarms(Sequence sequence) {
        ReleasedBy released = ReleasedBy.of(sequence);
        List<List<String>> rows = new ArrayList<>();
        for (Sequence.Cause c : sequence.causes()) {
            rows.add(List.of(
                    c.message(),
                    c.priority() == Sequence.Priority.STATUS
                            ? "status, no alarm"
                            : c.priority().name().toLowerCase(Locale.ROOT),
                    within(c.priority()),
                    Narrative.when(sequence, c.when()),
                    c.consequence(),
                    c.response(),
                    released.words(c)));
        }
        return new Rows(
                "Alarms",
                "A message nobody has to act on is a status and no alarm. Cleared by: what makes the message go once its cause is gone and, where it ended vacuuming, what brings vacuuming back, as tried on the model. What a WAIT message remembers (filter drop, vacuum) is forgotten in a trip and without power, the vacuum after STOP too.",
                List.of("Message", "Priority", "Time to respond", "Set when", "Consequence", "Response", "Cleared by"),
                rows);
    }

    private static String within(Sequence.Priority priority) {
        return switch (priority) {
            case HIGH -> "at once";
            case MEDIUM -> "minutes";
            case LOW -> "the shift";
            case STATUS -> "";
        };
    }

    /** Causes against outputs: what each demands. Sequences are not in it. */
    public static Rows causesAndEffects(Sequence sequence) {
        List<String> head = head(sequence, "Cause", "When", "Contacts", "Within");
        Map<String, String> within = Times.reactions(sequence).stream()
                .collect(Collectors.toMap(Times.Reaction::message, r -> seconds(tenths(r.time_s()))));
        head.addAll(List.of("Latched", "Released by"));
        ReleasedBy released = ReleasedBy.of(sequence);
        List<List<String>> rows = new ArrayList<>();
        for (Sequence.Cause c : sequence.causes()) {
            List<String> row = new ArrayList<>(List.of(
                    c.message(),
                    Narrative.when(sequence, c.when()),
                    contacts(sequence, c),
                    within.getOrDefault(c.message(), "")));
            demanded(sequence).forEach(o -> row.add(c.demands().getOrDefault(o.name(), "")));
            row.add(c.latched() ? "yes" : "");
            row.add(released.words(c));
            rows.add(row);
        }
        return new Rows("Causes and effects", DEMANDS, head, rows);
    }

    /** Tags of the contacts that bring a cause about, by way of rules too. */
    private static String contacts(Sequence sequence, Sequence.Cause cause) {
        return sequence.broughtAboutBy(cause).stream().map(Sequence.Input::tag).collect(Collectors.joining(", "));
    }

    static double tenths(double time_s) {
        return Math.round(10 * time_s) / 10.0;
    }

    /** Two causes at once: the strictest demand of both, output by output; a table of its own beside the matrix. */
    public static Rows pairs(Sequence sequence) {
        List<Sequence.Cause> demanding =
                sequence.causes().stream().filter(c -> !c.demands().isEmpty()).toList();
        List<String> head = head(sequence, "Cause", "and cause");
        List<List<String>> rows = new ArrayList<>();
        for (int a = 0; a < demanding.size(); a++) {
            for (int b = a + 1; b < demanding.size(); b++) {
                List<String> row = new ArrayList<>(
                        List.of(demanding.get(a).message(), demanding.get(b).message()));
                row.addAll(together(
                        sequence, demanding.get(a).demands(), demanding.get(b).demands()));
                rows.add(row);
            }
        }
        return new Rows("Pairs of causes", STRICTEST, head, rows);
    }

    /** Causes with equal demands as one group with a letter, so that a paper needs no line for every pair. */
    private static Map<Map<String, String>, List<String>> groups(Sequence sequence) {
        Map<Map<String, String>, List<String>> groups = new LinkedHashMap<>();
        for (Sequence.Cause c : sequence.causes()) {
            if (!c.demands().isEmpty()) {
                groups.computeIfAbsent(c.demands(), d -> new ArrayList<>()).add(c.message());
            }
        }
        return groups;
    }

    private static String letter(int group) {
        return String.valueOf((char) ('A' + group));
    }

    /** The groups: letter, members, what each of them demands. */
    public static Rows groupsOfCauses(Sequence sequence) {
        List<List<String>> rows = new ArrayList<>();
        groups(sequence).forEach((demands, messages) -> {
            List<String> row = new ArrayList<>(List.of(letter(rows.size()), String.join("; ", messages)));
            row.addAll(together(sequence, demands, demands));
            rows.add(row);
        });
        return new Rows("Groups of causes", "Causes that demand the same.", head(sequence, "Group", "Causes"), rows);
    }

    /** What any cause of one group and any of another demand together. */
    public static Rows pairsOfGroups(Sequence sequence) {
        List<Map<String, String>> demands = List.copyOf(groups(sequence).keySet());
        List<List<String>> rows = new ArrayList<>();
        for (int a = 0; a < demands.size(); a++) {
            for (int b = a + 1; b < demands.size(); b++) {
                List<String> row = new ArrayList<>(List.of(letter(a), letter(b)));
                row.addAll(together(sequence, demands.get(a), demands.get(b)));
                rows.add(row);
            }
        }
        return new Rows("Pairs of causes", STRICTEST, head(sequence, "Any of", "and any of"), rows);
    }

    private static List<String> head(Sequence sequence, String... first) {
        List<String> head = new ArrayList<>(List.of(first));
        demanded(sequence).forEach(o -> head.add(o.words()));
        return head;
    }

    /** Outputs some cause speaks of; a horn that only steps sound has no column. */
    private static List<Sequence.Output> demanded(Sequence sequence) {
        return sequence.outputs().stream()
                .filter(o ->
                        sequence.causes().stream().anyMatch(c -> c.demands().containsKey(o.name())))
                .toList();
    }

    private static List<String> together(Sequence sequence, Map<String, String> a, Map<String, String> b) {
        return demanded(sequence).stream().map(o -> strictest(o, a, b)).toList();
    }

    private static String strictest(Sequence.Output output, Map<String, String> first, Map<String, String> second) {
        String a = first.getOrDefault(output.name(), "");
        String b = second.getOrDefault(output.name(), "");
        if (a.equals(output.stop()) || b.equals(output.stop())) {
            return output.stop();
        }
        List<String> weaker = List.of("limit", "run-on", "turns");
        int rank = Math.min(rank(weaker, a), rank(weaker, b));
        return rank < weaker.size() ? weaker.get(rank) : a.isEmpty() ? b : a;
    }

    private static int rank(List<String> words, String word) {
        int at = words.indexOf(word);
        return at < 0 ? words.size() : at;
    }

    /** Times with their ranges. */
    public static Rows times(Sequence sequence) {
        List<List<String>> rows = new ArrayList<>();
        sequence.timers()
                .forEach(t -> rows.add(List.of(
                        t.name(), t.words(), seconds(t.time_s()), seconds(t.least_s()), seconds(t.greatest_s()))));
        return new Rows(
                "Times",
                "Common practice without a published source; set them for the plant.",
                List.of("Name", "What for", "Time", "Least", "Greatest"),
                rows);
    }

    /**
     * Safety functions with the level their risk asks for and the level they reach as they are built, by the simplified method of ISO 13849-1. Where the file states none, the usual
     * ones; a risk that is our assumption says so. Bag-full and high-level stops protect product and plant and are not among them.
     */
    public static Rows safetyFunctions(Sequence sequence) {
        boolean guarded = sequence.inputs().stream().anyMatch(i -> i.name().equals("guard_shut"));
        List<SafetyFunction> functions =
                sequence.safety().isEmpty() ? SafetyFunction.usual(guarded) : sequence.safety();
        return new Rows(
                "Safety functions",
                "A screening by the simplified method of ISO 13849-1: the risk assessment sets the level, a validation on the finished panel"
                        + " shows whether it is reached. Stops for a full container or a high receiver protect product and plant and are not"
                        + " among them."
                        + (sequence.safety().isEmpty()
                                ? " The sequence states no safety functions; these are usual."
                                : "")
                        + (functions.stream().anyMatch(SafetyFunction::riskAsAssumed)
                                ? " Where it says \"assumed\", severity, exposure and avoidance are those taken here where nobody has"
                                        + " assessed them."
                                : " Severity, exposure and avoidance are as the sequence states them."),
                List.of("Function", "Risk", "Level asked", "Reached by", "Reached here"),
                functions.stream().map(Lists::function).toList());
    }

    /** What was proven, property by property, so that the table of device faults can name them. */
    public static Rows proven(Proof proof) {
        return new Rows(
                "What was proven",
                "All " + Figures.count(proof.states())
                        + " states that the sequence can reach with healthy devices were visited, with "
                        + Wording.counted(proof.mostEvents(), "event", "events") + " and "
                        + Wording.counted(proof.mostBad(), "bad contact", "bad contacts") + " in one scan. "
                        + ProofText.CAUTION,
                List.of("Name", "Protects", "Property", "Verdict"),
                proof.verdicts().stream()
                        .map(v -> List.of(
                                v.property().id(),
                                v.property().kind().words(),
                                v.property().words(),
                                v.holds() ? "holds" : "BROKEN"))
                        .toList());
    }

    /** Which single device fault defeats which property, and how it is noticed. */
    public static Rows faults(FaultTable table) {
        return new Rows(
                "Device faults",
                "One device breaks at any time and stays broken; every state was visited for each. Defeats: names of the properties that no longer hold, in the table of what was proven; all others survive."
                        + " Put what is not seen into the operator's manual with its monthly test. Wiring, two faults at once and what no contact or output speaks of are not in it.",
                List.of("Device that breaks", "Noticed", "Defeats"),
                table.rows().stream()
                        .map(r -> List.of(capital(r.fault().words()), r.fault().test(), defeats(r)))
                        .toList());
    }

    static String defeats(FaultTable.Row row) {
        return row.defeats().isEmpty() ? "nothing that is proven" : String.join(", ", row.defeats());
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static List<String> function(SafetyFunction function) {
        PerformanceLevel level = function.asked();
        return List.of(
                capital(function.words()),
                function.severity() + " " + function.exposure() + " " + function.avoidance()
                        + (function.riskAsAssumed() ? ", assumed: to be set by the risk assessment" : ", as stated"),
                words(level),
                builds(level),
                screened(function));
    }

    /** Every build that reaches a level, category by category: coverage, then the endurances that do with it. */
    private static String builds(PerformanceLevel level) {
        Map<String, Map<String, List<String>>> builds = new LinkedHashMap<>();
        level.buildsThatReach()
                .forEach(b -> builds.computeIfAbsent(words(b.category()), c -> new LinkedHashMap<>())
                        .computeIfAbsent(words(b.coverage()), c -> new ArrayList<>())
                        .add(words(b.endurance())));
        return builds.entrySet().stream()
                .map(category -> "category " + category.getKey() + ": "
                        + category.getValue().entrySet().stream()
                                .map(coverage -> (coverage.getKey().equals("none")
                                                ? ""
                                                : "diagnostic coverage " + coverage.getKey() + " with ")
                                        + "MTTFd " + String.join(" or ", coverage.getValue()))
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    private static String screened(SafetyFunction function) {
        SafetyFunction.Screened screened = function.reached();
        if (screened instanceof SafetyFunction.Screened.Unknown unknown) {
            return "not known; enter " + unknown.enter();
        }
        if (screened instanceof SafetyFunction.Screened.None none) {
            return "none: " + none.why();
        }
        SafetyFunction.Screened.Reached reached = (SafetyFunction.Screened.Reached) screened;
        boolean enough = reached.level().compareTo(function.asked()) >= 0;
        List<String> words = new ArrayList<>(List.of(
                words(reached.level()) + (enough ? ", as is asked or better" : ", less than is asked"),
                "category " + words(function.category().orElseThrow()),
                "MTTFd " + Figures.fixed(reached.mttfd_years(), 1) + " years",
                "diagnostic coverage " + Figures.fixed(100 * reached.coverage(), 0) + " %"));
        words.addAll(reached.remarks());
        return String.join("; ", words);
    }

    private static String words(Enum<?> word) {
        return switch (word.name()) {
            case "ONE" -> "1";
            case "TWO" -> "2";
            case "THREE" -> "3";
            case "FOUR" -> "4";
            case "B" -> word instanceof PerformanceLevel ? "b" : "B";
            default -> word.name().toLowerCase(Locale.ROOT);
        };
    }

    static String time(Sequence sequence, String timer) {
        return seconds(sequence.timer(timer).time_s());
    }

    static String seconds(double time_s) {
        return (time_s == Math.rint(time_s) ? String.valueOf((long) time_s) : String.valueOf(time_s)) + " s";
    }

    /** The letters of a tag in words, where our table of instruments holds them. */
    private static String reading(String tag) {
        String letters = tag.replaceAll("-.*", "");
        return Instrument.all().stream()
                .filter(i -> i.letters().equals(letters))
                .map(Instrument::reading)
                .findFirst()
                .orElse("");
    }
}
