package dustwright.documents.control;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.ScanProgram;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.Statement;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A sequence as one function block in Structured Text after IEC 61131-3: the lines of the scan in their order, times as TON with the same presets. It uses no
 * platform's extensions.
 */
public final class StructuredText {
    /** Words of the language, its types, functions and function blocks, in small letters. */
    private static final Set<String> RESERVED = Set.of(
            ("and or not xor mod if then else elsif end_if case of end_case for to by do end_for while end_while repeat until end_repeat exit return continue true false null "
                            + "var var_input var_output var_in_out var_temp var_external var_global var_access var_config end_var constant retain non_retain at step initial_step end_step action end_action "
                            + "transition end_transition from program end_program function end_function function_block end_function_block class method interface extends implements this super task with resource "
                            + "configuration read_only read_write type end_type struct end_struct array ref ref_to string wstring char wchar time ltime date ldate tod ltod dt ldt time_of_day date_and_time "
                            + "int sint dint lint uint usint udint ulint bool real lreal byte word dword lword any ton tof tp ctu ctd ctud sr rs r_trig f_trig rtc sema abs sqrt ln log exp sin cos tan asin acos "
                            + "atan add mul sub div expt move shl shr ror rol sel max min limit mux gt ge eq le lt ne len left right mid concat insert delete replace find en eno trunc ld st cal ret jmp s r")
                    .split(" "));
    /** What the block is called. */
    static final String NAME = "station_sequence";

    /** What the block asks of whoever uses it. */
    static final String REVIEW =
            "For review. Code made from it must be tested on the real controller before use. Emergency stop, guard and fire contact take"
                    + " power away by their own wiring; this block reads a copy.";

    private final Sequence sequence;
    private final ScanProgram program;
    private final StringBuilder text = new StringBuilder();

    private StructuredText(Sequence sequence) {
        this.sequence = sequence;
        program = ScanProgram.of(sequence);
    }

    /** The function block's text. */
    public static String of(Sequence sequence) {
        StructuredText writer = new StructuredText(sequence);
        writer.write();
        return writer.text.toString();
    }

    /** A name as the function block calls it. */
    public static String id(String name) {
        return RESERVED.contains(name.toLowerCase(Locale.ROOT)) ? name + "_" : name;
    }

    /** What a contact is called as input of the block. */
    public static String contact(Sequence.Input input) {
        return id(input.filter().isPresent() ? input.name() + "_contact" : input.name());
    }

    /**
     * Variables that are declared together.
     *
     * @param kind VAR_INPUT, VAR_OUTPUT or VAR
     * @param retained whether they keep their values without power
     */
    record Section(String kind, boolean retained, List<Variable> variables) {}

    /** A variable with its type and what it stands for; no words for what only the block itself uses. */
    record Variable(String name, String type, String words) {}

    private void write() {
        line("(* " + sequence.title().replace("*)", "* )") + " *)");
        line("(* " + REVIEW + " *)");
        line("FUNCTION_BLOCK " + NAME);
        for (Section section : sections()) {
            line(section.kind() + (section.retained() ? " RETAIN" : ""));
            section.variables()
                    .forEach(v -> line("  " + v.name() + " : " + v.type() + ";"
                            + (v.words().isEmpty() ? "" : " (* " + v.words().replace("*)", "* )") + " *)")));
            line("END_VAR");
        }
        writeBody();
        line("END_FUNCTION_BLOCK");
    }

    private void writeBody() {
        forgetWithoutPower();
        program.all().forEach(this::statement);
    }

    /** What the block does in every scan, without its declarations. */
    static String body(Sequence sequence) {
        StructuredText writer = new StructuredText(sequence);
        writer.writeBody();
        return writer.text.toString();
    }

    /** The block's declarations. */
    static List<Section> sections(Sequence sequence) {
        return new StructuredText(sequence).sections();
    }

    private List<Section> sections() {
        return List.of(
                new Section("VAR_INPUT", false, inputs()),
                new Section("VAR_OUTPUT", false, shown(false)),
                new Section("VAR_OUTPUT", true, shown(true)),
                new Section("VAR", true, inner(true)),
                new Section("VAR", false, inner(false)));
    }

    private List<Variable> inputs() {
        List<Variable> inputs = new ArrayList<>();
        inputs.add(new Variable("first_scan", "BOOL", "true in the first scan after power returned"));
        inputs.add(new Variable("cycle", "TIME", "time since the scan before"));
        sequence.inputs()
                .forEach(i ->
                        inputs.add(bool(contact(i), i.tag() + " " + i.words() + ": 1 " + i.good() + ", 0 " + i.bad())));
        sequence.buttons()
                .forEach(b -> inputs.add(bool(
                        id(b.name()),
                        b.tag() + " " + b.words() + ", contact " + (b.opensWhenPressed() ? "opens" : "closes")
                                + " when pressed")));
        return inputs;
    }

    /** What leaves the block: outputs, lamps, messages. */
    private List<Variable> shown(boolean retained) {
        List<Variable> shown = new ArrayList<>();
        if (!retained) {
            sequence.outputs()
                    .forEach(o -> shown.add(
                            bool(id(o.name()), o.tag() + " " + o.words() + ": 1 " + o.on() + ", 0 " + o.off())));
            sequence.lamps()
                    .forEach(l -> shown.add(bool(id(l.name()), l.tag() + " lamp " + l.colour() + " " + l.words())));
        }
        sequence.causes().stream()
                .filter(c -> program.kept().contains(c.name()) == retained)
                .forEach(c -> shown.add(bool(id(c.name()), "message " + c.message())));
        return shown;
    }

    private List<Variable> inner(boolean retained) {
        Set<String> shown = new LinkedHashSet<>();
        sequence.outputs().forEach(o -> shown.add(o.name()));
        sequence.lamps().forEach(l -> shown.add(l.name()));
        sequence.causes().forEach(c -> shown.add(c.name()));
        List<Variable> inner = new ArrayList<>();
        program.all().stream()
                .map(Statement::name)
                .filter(n -> !shown.contains(n) && program.kept().contains(n) == retained)
                .forEach(n -> inner.add(bool(id(n), "")));
        if (!retained) {
            program.all().forEach(s -> inner.addAll(clocks(s)));
        }
        return inner;
    }

    private static List<Variable> clocks(Statement statement) {
        String name = statement.name();
        if (statement instanceof Statement.Delay) {
            return List.of(new Variable("t_" + name, "TON", ""));
        }
        if (statement instanceof Statement.Sum) {
            return List.of(new Variable("c_" + name, "TIME", ""), bool("r_" + name, ""));
        }
        return statement instanceof Statement.Count ? List.of(new Variable("n_" + name, "INT", "")) : List.of();
    }

    private static Variable bool(String name, String words) {
        return new Variable(name, "BOOL", words);
    }

    private void forgetWithoutPower() {
        line("IF first_scan THEN");
        for (Statement statement : program.all()) {
            if (!program.kept().contains(statement.name())) {
                line("  " + id(statement.name()) + " := "
                        + (program.startOn().contains(statement.name()) ? "TRUE" : "FALSE") + ";");
            }
            if (statement instanceof Statement.Delay delay) {
                line("  t_" + statement.name() + "(IN := FALSE, PT := " + time(delay.timer()) + ");");
            } else if (statement instanceof Statement.Sum) {
                line("  c_" + statement.name() + " := T#0ms;");
                line("  r_" + statement.name() + " := FALSE;");
            } else if (statement instanceof Statement.Count) {
                line("  n_" + statement.name() + " := 0;");
            }
        }
        line("END_IF;");
    }

    private void statement(Statement statement) {
        String name = statement.name();
        String to = id(name);
        if (statement instanceof Statement.Assign assign) {
            line(to + " := " + written(assign.value()) + ";");
        } else if (statement instanceof Statement.Delay delay) {
            line("t_" + name + "(IN := " + written(delay.run()) + ", PT := " + time(delay.timer()) + ");");
            line(to + " := t_" + name + ".Q;");
        } else if (statement instanceof Statement.Sum sum) {
            sum(sum, to);
        } else if (statement instanceof Statement.Count count) {
            line("IF " + written(count.forget()) + " THEN");
            line("  n_" + name + " := 0;");
            line("ELSIF (" + written(count.event()) + ") AND n_" + name + " < " + count.limit() + " THEN");
            line("  n_" + name + " := n_" + name + " + 1;");
            line("END_IF;");
            line(to + " := n_" + name + " >= " + count.limit() + ";");
        }
    }

    private void sum(Statement.Sum sum, String to) {
        String name = sum.name();
        line("IF " + written(sum.forget()) + " THEN");
        line("  c_" + name + " := T#0ms;");
        line("  r_" + name + " := FALSE;");
        line("ELSE");
        line("  IF (" + written(sum.run()) + ") AND r_" + name + " AND c_" + name + " < " + time(sum.timer())
                + " THEN");
        line("    c_" + name + " := c_" + name + " + cycle;");
        line("  END_IF;");
        line("  r_" + name + " := " + written(sum.run()) + ";");
        line("END_IF;");
        line(to + " := NOT (" + written(sum.forget()) + ") AND c_" + name + " >= " + time(sum.timer()) + ";");
    }

    private String time(String timer) {
        return "T#" + Math.round(1000 * sequence.timer(timer).time_s()) + "ms";
    }

    private static String written(Expr expr) {
        if (expr instanceof Expr.Constant constant) {
            return constant.value() ? "TRUE" : "FALSE";
        }
        return expr.replace(n -> Expr.name(id(((Expr.Name) n).name()))).text("AND", "OR", "NOT ", false);
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
