package dustwright.documents.control;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.ScanProgram;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.Statement;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A sequence as one function block in Structured Text after IEC 61131-3: the lines of the scan in their order, times as TON with the same presets. It uses no
 * platform's extensions.
 */
public final class StructuredText {
    private static final Set<String> RESERVED = Set.of(
            "and",
            "or",
            "not",
            "xor",
            "mod",
            "if",
            "then",
            "else",
            "elsif",
            "end_if",
            "case",
            "of",
            "for",
            "to",
            "by",
            "do",
            "while",
            "repeat",
            "until",
            "exit",
            "return",
            "true",
            "false",
            "var",
            "step",
            "action",
            "transition",
            "program",
            "function",
            "task",
            "with",
            "at",
            "type",
            "struct",
            "array",
            "string",
            "time",
            "date",
            "int",
            "bool",
            "real",
            "byte",
            "word",
            "ton",
            "tof",
            "tp",
            "ctu",
            "ctd",
            "sr",
            "rs");

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

    private void write() {
        line("(* " + sequence.title().replace("*)", "* )") + " *)");
        line(
                "(* For review. Code made from it must be tested on the real controller before use. Emergency stop, guard and fire contact");
        line("   take power away by their own wiring; this block reads a copy. *)");
        line("FUNCTION_BLOCK station_sequence");
        inputs();
        outputs();
        variables();
        forgetWithoutPower();
        program.all().forEach(this::statement);
        line("END_FUNCTION_BLOCK");
    }

    private void inputs() {
        line("VAR_INPUT");
        line("  first_scan : BOOL; (* true in the first scan after power returned *)");
        line("  cycle : TIME; (* time since the scan before *)");
        sequence.inputs()
                .forEach(i -> line("  " + contact(i) + " : BOOL; (* " + i.tag() + " " + i.words() + ": 1 " + i.good()
                        + ", 0 " + i.bad() + " *)"));
        sequence.buttons()
                .forEach(b -> line("  " + id(b.name()) + " : BOOL; (* " + b.tag() + " " + b.words() + ", contact "
                        + (b.opensWhenPressed() ? "opens" : "closes") + " when pressed *)"));
        line("END_VAR");
    }

    private void outputs() {
        line("VAR_OUTPUT");
        sequence.outputs()
                .forEach(o -> line("  " + id(o.name()) + " : BOOL; (* " + o.tag() + " " + o.words() + ": 1 " + o.on()
                        + ", 0 " + o.off() + " *)"));
        sequence.lamps()
                .forEach(l -> line("  " + id(l.name()) + " : BOOL; (* " + l.tag() + " lamp " + l.colour() + " "
                        + l.words() + " *)"));
        sequence.causes().forEach(c -> {
            if (!program.kept().contains(c.name())) {
                line("  " + id(c.name()) + " : BOOL; (* message " + c.message() + " *)");
            }
        });
        line("END_VAR");
        line("VAR_OUTPUT RETAIN");
        sequence.causes().forEach(c -> {
            if (program.kept().contains(c.name())) {
                line("  " + id(c.name()) + " : BOOL; (* message " + c.message() + " *)");
            }
        });
        line("END_VAR");
    }

    private void variables() {
        Set<String> shown = new LinkedHashSet<>();
        sequence.outputs().forEach(o -> shown.add(o.name()));
        sequence.lamps().forEach(l -> shown.add(l.name()));
        sequence.causes().forEach(c -> shown.add(c.name()));
        List<Statement> inner =
                program.all().stream().filter(s -> !shown.contains(s.name())).toList();
        line("VAR RETAIN");
        inner.stream()
                .filter(s -> program.kept().contains(s.name()))
                .forEach(s -> line("  " + id(s.name()) + " : BOOL;"));
        line("END_VAR");
        line("VAR");
        inner.stream()
                .filter(s -> !program.kept().contains(s.name()))
                .forEach(s -> line("  " + id(s.name()) + " : BOOL;"));
        for (Statement statement : program.all()) {
            if (statement instanceof Statement.Delay) {
                line("  t_" + statement.name() + " : TON;");
            } else if (statement instanceof Statement.Sum) {
                line("  c_" + statement.name() + " : TIME;");
                line("  r_" + statement.name() + " : BOOL;");
            } else if (statement instanceof Statement.Count) {
                line("  n_" + statement.name() + " : INT;");
            }
        }
        line("END_VAR");
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
