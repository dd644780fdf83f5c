package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The world of a sequence in Promela, for the model checker SPIN: the same assignments in the same order, written out by other code and searched
 * by another program. One process repeats: choose what happens, carry out one scan, assert every property. What is chosen is
 * set back to zero after the scan, and what a scan only notes down is hidden from the state, so that SPIN's states are just our states.
 */
public final class Promela {
    private final World world;
    private final Set<String> remembered;

    private Promela(World world, Circuit circuit) {
        this.world = world;
        remembered = new LinkedHashSet<>(circuit.memoryByName.keySet());
    }

    /** The model under the plain adversary, one event and one bad contact in a scan. */
    public static String of(Sequence sequence, Optional<DeviceFault> fault) {
        World world = World.of(sequence, fault);
        return new Promela(world, world.circuit()).text(world.circuit());
    }

    private String text(Circuit circuit) {
        StringBuilder text = new StringBuilder();
        List<String> happen = circuit.choices.stream()
                .filter(c -> !world.contacts().contains(c))
                .toList();
        List<String> bad =
                circuit.choices.stream().filter(world.contacts()::contains).toList();
        List<Statement.Assign> lines = needed(circuit);
        Set<String> scratch = new LinkedHashSet<>();
        lines.forEach(l -> scratch.add(l.name()));
        scratch.removeAll(remembered);
        text.append(
                "/* One process: what happens, then one scan. Made for SPIN 6.5; check with: spin -a model.pml; cc -O2 -DSAFETY -DNOREDUCE"
                        + " -DVECTORSZ=4096 -DMEMLIM=3000 -o pan pan.c; ./pan -m4000000 -n. Memory in MB, depth in steps: where pan says max search depth too small, out of memory or VECTORSZ too small the search was cut off, and"
                        + " errors: 0 says nothing; then raise it. It judges this"
                        + " model, not the plant, its wiring or a person: local code, the authority having jurisdiction and a licensed engineer"
                        + " decide. */\n");
        remembered.forEach(
                n -> text.append("bit ").append(id(n)).append(world.startOn().contains(n) ? " = 1;\n" : ";\n"));
        circuit.choices.forEach(n -> text.append("bit ").append(id(n)).append(";\n"));
        scratch.forEach(n -> text.append("hidden byte ").append(id(n)).append(";\n"));
        text.append("active proctype plant_and_controller() {\n  do\n  :: atomic {\n");
        choose(text, happen);
        choose(text, bad);
        text.append("    d_step {\n");
        for (Statement.Assign line : lines) {
            text.append("      ")
                    .append(id(line.name()))
                    .append(" = ")
                    .append(written(line.value()))
                    .append(";\n");
        }
        for (int p = 0; p < world.properties().size(); p++) {
            text.append("      assert(")
                    .append(id("holds_" + p))
                    .append("); /* ")
                    .append(world.properties().get(p).id())
                    .append(" */\n");
        }
        circuit.choices.forEach(n -> text.append("      ").append(id(n)).append(" = 0;\n"));
        text.append("    }\n  }\n  od\n}\n");
        return text.toString();
    }

    private static void choose(StringBuilder text, List<String> among) {
        text.append("    if\n    :: skip\n");
        among.forEach(c -> text.append("    :: ").append(id(c)).append(" = 1\n"));
        text.append("    fi;\n");
    }

    /** Lines on which memory or a property depends. */
    private List<Statement.Assign> needed(Circuit circuit) {
        List<Statement.Assign> lines = new ArrayList<>();
        Set<String> wanted = new LinkedHashSet<>(remembered);
        wanted.addAll(circuit.watched);
        for (int i = world.lines().size() - 1; i >= 0; i--) {
            Statement.Assign line = world.lines().get(i);
            if (wanted.remove(line.name())) {
                wanted.addAll(line.value().names());
                lines.add(0, line);
            }
        }
        return lines;
    }

    private static String written(Expr expr) {
        if (expr instanceof Expr.Constant constant) {
            return constant.value() ? "1" : "0";
        }
        return expr.replace(n -> Expr.name(id(((Expr.Name) n).name()))).text("&&", "||", "!", false);
    }

    /** No name may be one of Promela's own words. */
    private static String id(String name) {
        return "w_" + name;
    }
}
