package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Carries out a sequence scan by scan, with real times. One call of {@link #scan} is one scan: it reads the contacts that were set, decides and
 * writes; between two calls nothing changes. Nothing else drives it, so a simulation, a panel or a test can step it as it likes.
 *
 * <pre>{@code
 * Controller controller = new Controller(sequence);
 * sequence.inputs().forEach(i -> controller.contact(i.name(), true));
 * controller.press("reset", true);
 * controller.scan(100);
 * controller.is("vent_shut");
 * }</pre>
 */
public final class Controller {
    private final Sequence sequence;
    private final ScanProgram program;
    private final Map<String, Integer> places = new HashMap<>();
    private final List<ScanLine> lines = new ArrayList<>();
    private final int firstScanPlace;
    private boolean[] values = new boolean[64];
    private boolean[] before = new boolean[64];
    private boolean changed = true;
    private boolean firstScan = true;

    /** A controller before its first scan: all off, contacts bad, buttons not pressed. */
    public Controller(Sequence sequence) {
        this.sequence = sequence;
        program = ScanProgram.of(sequence);
        firstScanPlace = place("first_scan");
        sequence.inputs().forEach(i -> place(contactName(i)));
        sequence.buttons().forEach(b -> place(b.name()));
        for (Statement statement : program.all()) {
            place(statement.name());
        }
        for (Statement statement : program.all()) {
            lines.add(line(statement));
        }
        sequence.buttons().forEach(b -> press(b.name(), false));
        powerLost();
    }

    private static String contactName(Sequence.Input input) {
        return input.filter().isPresent() ? ScanProgram.contact(input.name()) : input.name();
    }

    private int place(String name) {
        int place = places.computeIfAbsent(name, n -> places.size());
        if (place >= values.length) {
            values = java.util.Arrays.copyOf(values, 2 * values.length);
        }
        return place;
    }

    private int placeOf(String name) {
        Integer place = places.get(name);
        if (place == null) {
            throw new IllegalArgumentException("the sequence has no \"" + name + "\"");
        }
        return place;
    }

    /**
     * Sets a contact for the next scans.
     *
     * @param good true for 1
     */
    public void contact(String input, boolean good) {
        Sequence.Input declared = sequence.inputs().stream()
                .filter(i -> i.name().equals(input))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the sequence has no input \"" + input + "\""));
        values[placeOf(contactName(declared))] = good;
    }

    /** Presses a button or lets it go, for the next scans. */
    public void press(String button, boolean pressed) {
        Sequence.Button declared = sequence.buttons().stream()
                .filter(b -> b.name().equals(button))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the sequence has no button \"" + button + "\""));
        values[placeOf(button)] = pressed != declared.opensWhenPressed();
    }

    /**
     * One scan.
     *
     * @param sinceLast_ms time since the scan before [ms]
     */
    public void scan(long sinceLast_ms) {
        if (before.length != values.length) {
            before = new boolean[values.length];
        }
        System.arraycopy(values, 0, before, 0, values.length);
        values[firstScanPlace] = firstScan;
        for (ScanLine line : lines) {
            line.carryOut(values, sinceLast_ms);
        }
        changed = firstScan || !java.util.Arrays.equals(before, values);
        firstScan = false;
    }

    /** Whether the last scan changed a signal, an output or a lamp. */
    public boolean changed() {
        return changed;
    }

    /**
     * Time for which scans change nothing while no contact and no button changes [ms]: until the next running time is out; 0 when the next scan may
     * change something. One scan after this time does what many scans in it would have done.
     */
    public long quiet_ms() {
        long quiet_ms = changed ? 0 : Long.MAX_VALUE;
        for (ScanLine line : lines) {
            quiet_ms = Math.min(quiet_ms, line.quiet_ms(values));
        }
        return quiet_ms;
    }

    /** Takes the power away: outputs and lamps are off, times and steps forgotten; what is kept is kept until the next scan, the first again. */
    public void powerLost() {
        for (Statement statement : program.all()) {
            if (!program.kept().contains(statement.name())) {
                values[placeOf(statement.name())] = program.startOn().contains(statement.name());
            }
        }
        lines.forEach(ScanLine::forget);
        firstScan = true;
    }

    /** Value of an output, lamp, cause, rule or {@code in_<step>} after the last scan. */
    public boolean is(String name) {
        return values[placeOf(name)];
    }

    /** Another controller in the same state. */
    Controller copy() {
        Controller copy = new Controller(sequence);
        copy.values = values.clone();
        copy.changed = changed;
        copy.firstScan = firstScan;
        for (int line = 0; line < lines.size(); line++) {
            copy.lines.get(line).remember(lines.get(line));
        }
        return copy;
    }

    /** Whether the scan has a signal of this name. */
    boolean has(String name) {
        return places.containsKey(name);
    }

    /** The step after the last scan. */
    public String step() {
        return sequence.steps().stream()
                .map(Sequence.Step::name)
                .filter(s -> is("in_" + s))
                .findFirst()
                .orElseThrow();
    }

    /** Outputs after the last scan, by name, in the order of the sequence. */
    public Map<String, Boolean> outputs() {
        Map<String, Boolean> outputs = new LinkedHashMap<>();
        sequence.outputs().forEach(o -> outputs.put(o.name(), is(o.name())));
        return outputs;
    }

    /** Causes that are present after the last scan, the highest first. */
    public List<Sequence.Cause> causes() {
        return sequence.causes().stream().filter(c -> is(c.name())).toList();
    }

    /** Why an output is held off: the causes that demand it. */
    public List<Sequence.Cause> why(String output) {
        Optional<Sequence.Output> declared =
                sequence.outputs().stream().filter(o -> o.name().equals(output)).findFirst();
        return causes().stream()
                .filter(c -> declared.filter(o -> o.stop().equals(c.demands().get(output)))
                        .isPresent())
                .toList();
    }

    private ScanLine line(Statement statement) {
        int to = placeOf(statement.name());
        if (statement instanceof Statement.Assign assign) {
            return new ScanLine.Assigning(to, term(assign.value()));
        }
        if (statement instanceof Statement.Delay delay) {
            return new ScanLine.Timing(to, term(delay.run()), term(delay.run()).inverted(), time_ms(delay.timer()));
        }
        if (statement instanceof Statement.Sum sum) {
            return new ScanLine.Timing(to, term(sum.run()), term(sum.forget()), time_ms(sum.timer()));
        }
        Statement.Count count = (Statement.Count) statement;
        return new ScanLine.Counting(to, term(count.event()), term(count.forget()), count.limit());
    }

    private long time_ms(String timer) {
        return Math.round(1000 * sequence.timer(timer).time_s());
    }

    private ScanLine.Term term(Expr expr) {
        if (expr instanceof Expr.Constant constant) {
            return values -> constant.value();
        }
        if (expr instanceof Expr.Name name) {
            int place = placeOf(name.name());
            return values -> values[place];
        }
        if (expr instanceof Expr.Not not) {
            return term(not.of()).inverted();
        }
        boolean all = expr instanceof Expr.And;
        ScanLine.Term[] terms = expr.terms().stream().map(this::term).toArray(ScanLine.Term[]::new);
        return values -> {
            for (ScanLine.Term term : terms) {
                if (term.of(values) != all) {
                    return !all;
                }
            }
            return all;
        };
    }
}
