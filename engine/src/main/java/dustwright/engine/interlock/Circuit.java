package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A scan as a network of and-gates with inverted edges, so that one pass over an array of longs carries out 64 scans at once. A literal is
 * twice the gate's number, plus one when inverted; gate 0 is constant false.
 *
 * <p>Memory is what a scan reads before it writes it. Memory that no watched signal depends on is left out, and memories that are equal in
 * the beginning and stay equal by the same gates are one memory.
 */
final class Circuit {
    private static final int FALSE = 0;
    private static final int TRUE = 1;

    /** Names of the memory, one bit of a state each, in this order. */
    final List<String> memory;

    /** Memory a name stands for; several names may be one memory. */
    final Map<String, Integer> memoryByName;

    /** State in which everything starts. */
    final long[] start;

    final List<String> choices;
    final List<String> watched;

    /** First gate that is neither constant, memory nor choice. */
    final int firstGate;

    final int[] left;
    final int[] right;

    /** Literal of every memory after the scan. */
    final int[] next;

    /** Literal of every watched signal after the scan. */
    final int[] watch;

    private Circuit(
            List<String> memory,
            Map<String, Integer> memoryByName,
            Set<String> startOn,
            List<String> choices,
            List<String> watched,
            Gates gates,
            int[] next,
            int[] watch) {
        this.memory = memory;
        this.memoryByName = memoryByName;
        this.choices = choices;
        this.watched = watched;
        this.firstGate = 1 + memory.size() + choices.size();
        this.left = gates.left();
        this.right = gates.right();
        this.next = next;
        this.watch = watch;
        this.start = new long[words()];
        for (int i = 0; i < memory.size(); i++) {
            if (startOn.contains(memory.get(i))) {
                start[i >> 6] |= 1L << (i & 63);
            }
        }
    }

    /** The same network with everything starting in another state. */
    Circuit startingAt(long[] state) {
        return new Circuit(this, state);
    }

    private Circuit(Circuit same, long[] start) {
        memory = same.memory;
        memoryByName = same.memoryByName;
        this.start = start.clone();
        choices = same.choices;
        watched = same.watched;
        firstGate = same.firstGate;
        left = same.left;
        right = same.right;
        next = same.next;
        watch = same.watch;
    }

    /** Longs of one state; the highest bit of the last is never used. */
    int words() {
        return (memory.size() >> 6) + 1;
    }

    int gates() {
        return left.length;
    }

    /**
     * The network of a scan.
     *
     * @param lines assignments only, in their order
     * @param choices names that are free in every scan; those that reach no watched signal are left out
     * @param startOn memory that is true in the beginning
     * @param watched names whose value after the scan matters
     */
    static Circuit of(List<Statement.Assign> lines, List<String> choices, Set<String> startOn, List<String> watched) {
        Set<String> read = new LinkedHashSet<>();
        List<String> memory = neededMemory(lines, choices, watched, read);
        List<String> felt = choices.stream().filter(read::contains).toList();
        Map<String, String> same = new LinkedHashMap<>();
        String anyOn = "";
        String anyOff = "";
        for (String name : memory) {
            if (startOn.contains(name)) {
                anyOn = anyOn.isEmpty() ? name : anyOn;
                same.put(name, anyOn);
            } else {
                anyOff = anyOff.isEmpty() ? name : anyOff;
                same.put(name, anyOff);
            }
        }
        while (true) {
            Build build = new Build(lines, felt, memory, same);
            Map<String, String> finer = new LinkedHashMap<>();
            Map<String, String> byNext = new HashMap<>();
            for (String name : memory) {
                String key = same.get(name) + "/" + build.after(name);
                finer.put(name, byNext.computeIfAbsent(key, k -> name));
            }
            if (finer.equals(same)) {
                return build.circuit(startOn, watched);
            }
            same = finer;
        }
    }

    private static List<String> neededMemory(
            List<Statement.Assign> lines, List<String> choices, List<String> watched, Set<String> read) {
        Set<String> free = new LinkedHashSet<>(choices);
        Set<String> needed = new LinkedHashSet<>(watched);
        Set<String> memory = new LinkedHashSet<>();
        boolean grew = true;
        while (grew) {
            Set<String> wanted = new LinkedHashSet<>(needed);
            wanted.addAll(memory);
            for (int i = lines.size() - 1; i >= 0; i--) {
                if (wanted.remove(lines.get(i).name())) {
                    wanted.addAll(lines.get(i).value().names());
                }
            }
            read.addAll(wanted);
            wanted.removeAll(free);
            grew = memory.addAll(wanted);
        }
        List<String> order = new ArrayList<>();
        lines.stream()
                .map(Statement.Assign::name)
                .distinct()
                .filter(memory::contains)
                .forEach(order::add);
        memory.stream().filter(m -> !order.contains(m)).findFirst().ifPresent(unknown -> {
            throw new IllegalArgumentException("nothing gives \"" + unknown + "\" a value");
        });
        return order;
    }

    /** Gates while they are made; equal gates are one. */
    private static final class Gates {
        private final Map<Long, Integer> known = new HashMap<>();
        private final List<int[]> gates = new ArrayList<>();
        private final int leaves;

        Gates(int leaves) {
            this.leaves = leaves;
        }

        int and(int a, int b) {
            if (a == FALSE || b == FALSE || a == (b ^ 1)) {
                return FALSE;
            }
            if (a == TRUE || a == b) {
                return b;
            }
            if (b == TRUE) {
                return a;
            }
            int low = Math.min(a, b);
            int high = Math.max(a, b);
            return known.computeIfAbsent(((long) low << 32) | high, k -> {
                gates.add(new int[] {low, high});
                return 2 * (leaves + gates.size() - 1);
            });
        }

        int[] left() {
            return gates.stream().mapToInt(g -> g[0]).toArray();
        }

        int[] right() {
            return gates.stream().mapToInt(g -> g[1]).toArray();
        }
    }

    /** One pass over the lines, with memories that are taken as one. */
    private static final class Build {
        private final List<String> choices;
        private final Map<String, String> same;
        private final List<String> leaders = new ArrayList<>();
        private final Map<String, Integer> values = new HashMap<>();
        private final Gates gates;

        Build(List<Statement.Assign> lines, List<String> choices, List<String> memory, Map<String, String> same) {
            this.choices = choices;
            this.same = same;
            memory.stream().map(m -> String.valueOf(same.get(m))).distinct().forEach(leaders::add);
            for (String name : memory) {
                values.put(name, 2 * (1 + leaders.indexOf(same.get(name))));
            }
            for (int i = 0; i < choices.size(); i++) {
                values.put(choices.get(i), 2 * (1 + leaders.size() + i));
            }
            gates = new Gates(1 + leaders.size() + choices.size());
            for (Statement.Assign line : lines) {
                if (values.keySet().containsAll(line.value().names())) {
                    values.put(line.name(), literal(line.value()));
                }
            }
        }

        int after(String name) {
            return java.util.Objects.requireNonNull(values.get(name), name);
        }

        private int literal(Expr expr) {
            if (expr instanceof Expr.Constant constant) {
                return constant.value() ? TRUE : FALSE;
            }
            if (expr instanceof Expr.Name name) {
                return after(name.name());
            }
            if (expr instanceof Expr.Not not) {
                return literal(not.of()) ^ 1;
            }
            boolean all = expr instanceof Expr.And;
            int value = TRUE;
            for (Expr term : expr.terms()) {
                value = gates.and(value, all ? literal(term) : literal(term) ^ 1);
            }
            return all ? value : value ^ 1;
        }

        Circuit circuit(Set<String> startOn, List<String> watched) {
            Map<String, Integer> byName = new LinkedHashMap<>();
            same.forEach((name, leader) -> byName.put(name, leaders.indexOf(leader)));
            return new Circuit(
                    List.copyOf(leaders),
                    byName,
                    startOn,
                    List.copyOf(choices),
                    List.copyOf(watched),
                    gates,
                    leaders.stream().mapToInt(this::after).toArray(),
                    watched.stream().mapToInt(this::after).toArray());
        }
    }
}
