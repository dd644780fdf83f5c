package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One scan as a list of lines: read (edges of buttons, filters of inputs), decide (rules, causes, step), write (outputs, lamps). Simulation,
 * proof and exports all work on this one list, so that they cannot disagree.
 *
 * @param read lines that make signals of contacts
 * @param decide lines that make outputs and lamps of signals and memory
 * @param kept names that survive a loss of power
 * @param startOn names that are true when power returns; all others that do not survive are false
 */
public record ScanProgram(List<Statement> read, List<Statement> decide, Set<String> kept, Set<String> startOn) {
    /** What a filtered input's contact is called. */
    static String contact(String input) {
        return input + "_contact";
    }

    /** What a button's state of the scan before is called. */
    static String before(String button) {
        return button + "_before";
    }

    /** What says that a button that opens is down, or its wire broken: it holds back those below it. */
    static String down(String button) {
        return "down_" + button;
    }

    /** What says that an exit of a step is taken, counted from 0. */
    static String exit(String step, int number) {
        return "exit_" + step + "_" + number;
    }

    /** What says that a step's time is out. */
    static String timeIn(String step) {
        return "time_in_" + step;
    }

    /** The whole scan. */
    public List<Statement> all() {
        return Stream.concat(read.stream(), decide.stream()).toList();
    }

    /** The scan of a sequence, every cause with its own latch. */
    public static ScanProgram of(Sequence sequence) {
        return new Writer(
                        sequence,
                        sequence.causes().stream().map(c -> List.of(c)).toList())
                .write();
    }

    /**
     * The scan in which latched causes that demand the same share one latch. Outputs, steps and common lamps cannot tell the difference: the
     * shared latch is set while one of the causes is present and cleared by a RESET without any of them, which is just when the last of the
     * single latches clears.
     */
    static ScanProgram withSharedLatches(Sequence sequence) {
        Map<Map<String, String>, List<Sequence.Cause>> rows = new LinkedHashMap<>();
        List<List<Sequence.Cause>> groups = new ArrayList<>();
        Set<String> asked = asked(sequence);
        for (Sequence.Cause cause : sequence.causes()) {
            if (!cause.latched() || asked.contains(cause.name())) {
                groups.add(List.of(cause));
            } else {
                rows.computeIfAbsent(cause.demands(), d -> {
                            List<Sequence.Cause> row = new ArrayList<>();
                            groups.add(row);
                            return row;
                        })
                        .add(cause);
            }
        }
        return new Writer(sequence, groups).write();
    }

    /** Names that rules, causes, outputs, exits or lamps ask for. */
    private static Set<String> asked(Sequence sequence) {
        Set<String> asked = new LinkedHashSet<>();
        conditions(sequence).forEach(c -> asked.addAll(c.names()));
        return asked;
    }

    private static Stream<Expr> conditions(Sequence sequence) {
        return Stream.of(
                        sequence.rules().stream().flatMap(r -> Rules.conditions(r).stream()),
                        sequence.causes().stream().map(Sequence.Cause::when),
                        sequence.outputs().stream().map(Sequence.Output::offWhen),
                        sequence.steps().stream()
                                .flatMap(s -> s.exits().stream())
                                .map(Sequence.Exit::when),
                        sequence.lamps().stream().map(Sequence.Lamp::when))
                .flatMap(s -> s);
    }

    /** Writes the lines in their order. */
    private static final class Writer {
        private final Sequence sequence;
        private final List<List<Sequence.Cause>> groups;
        private final List<Statement> decide = new ArrayList<>();
        private final Set<String> kept = new LinkedHashSet<>();
        private final Set<String> startOn = new LinkedHashSet<>();

        Writer(Sequence sequence, List<List<Sequence.Cause>> groups) {
            this.sequence = sequence;
            this.groups = groups;
        }

        ScanProgram write() {
            List<Statement> read = read();
            sequence.rules().forEach(this::rule);
            causes();
            steps();
            outputs();
            sequence.lamps().forEach(l -> assign(l.name(), l.when()));
            return new ScanProgram(read, List.copyOf(decide), kept, startOn);
        }

        private List<Statement> read() {
            List<Statement> read = new ArrayList<>();
            for (Sequence.Input input : sequence.inputs()) {
                input.filter().ifPresent(timer -> {
                    String bad = input.name() + "_bad";
                    read.add(new Statement.Delay(
                            bad, Expr.name(contact(input.name())).not(), timer));
                    read.add(new Statement.Assign(input.name(), Expr.name(bad).not()));
                });
            }
            Expr higher = Expr.Constant.NO;
            for (Sequence.Button button : sequence.buttons()) {
                Expr contact = Expr.name(button.name());
                Expr pressed = button.opensWhenPressed() ? contact.not() : contact;
                Expr before = Expr.name(before(button.name()));
                Expr press = Expr.name("press_" + button.name());
                read.add(new Statement.Assign(
                        "press_" + button.name(), Expr.and(List.of(pressed, before.not(), higher.not()))));
                read.add(new Statement.Assign(before(button.name()), pressed));
                startOn.add(before(button.name()));
                if (button.opensWhenPressed()) {
                    read.add(new Statement.Assign(down(button.name()), pressed));
                    higher = higher.or(Expr.name(down(button.name())));
                } else {
                    higher = higher.or(press);
                }
            }
            return read;
        }

        private void rule(Sequence.Rule rule) {
            Expr self = Expr.name(rule.name());
            if (rule instanceof Sequence.Rule.Is is) {
                assign(is.name(), is.when());
            } else if (rule instanceof Sequence.Rule.After after) {
                decide.add(new Statement.Delay(after.name(), after.when(), after.timer()));
            } else if (rule instanceof Sequence.Rule.InAll sum) {
                decide.add(new Statement.Sum(sum.name(), sum.when(), sum.forget(), sum.timer()));
            } else if (rule instanceof Sequence.Rule.Times times) {
                decide.add(new Statement.Count(times.name(), times.event(), times.forget(), times.limit()));
            } else {
                Sequence.Rule.Latch latch = (Sequence.Rule.Latch) rule;
                assign(latch.name(), latch.set().or(self.and(latch.reset().not())));
                if (latch.keptWithoutPower()) {
                    kept.add(latch.name());
                }
                if (latch.startsOn()) {
                    startOn.add(latch.name());
                }
            }
        }

        private void causes() {
            List<Expr> trips = new ArrayList<>();
            Map<String, List<Expr>> stops = new LinkedHashMap<>();
            sequence.outputs().forEach(o -> stops.put(o.name(), new ArrayList<>()));
            for (List<Sequence.Cause> group : groups) {
                String name = String.join(
                        "_", group.stream().map(Sequence.Cause::name).toList());
                Expr present = Expr.or(group.stream().map(Sequence.Cause::when).toList());
                Expr self = Expr.name(name);
                if (group.get(0).latched()) {
                    assign(name, present.or(self.and(Expr.name("press_reset").not())));
                    kept.add(name);
                    trips.add(self);
                } else {
                    assign(name, present);
                }
                group.get(0).demands().forEach((output, word) -> {
                    if (word.equals(sequence.output(output).stop())) {
                        stops.getOrDefault(output, new ArrayList<>()).add(self);
                    }
                });
            }
            assign("trip", Expr.or(trips));
            for (Sequence.Output output : sequence.outputs()) {
                assign("stops_" + output.name(), Expr.or(stops.getOrDefault(output.name(), List.of())));
            }
        }

        private void steps() {
            for (Sequence.Step step : sequence.steps()) {
                step.time()
                        .ifPresent(
                                timer -> decide.add(new Statement.Delay(timeIn(step.name()), in(step.name()), timer)));
            }
            Map<String, List<Expr>> arrivals = new LinkedHashMap<>();
            for (Sequence.Step step : sequence.steps()) {
                List<Expr> earlier = new ArrayList<>();
                for (Sequence.Exit exit : step.exits()) {
                    Expr when = exit.when()
                            .replace(n -> n.equals(Expr.name("time_out")) ? Expr.name(timeIn(step.name())) : n);
                    String taken = exit(step.name(), earlier.size());
                    assign(
                            taken,
                            Expr.and(List.of(
                                    in(step.name()), when, Expr.or(earlier).not())));
                    arrivals.computeIfAbsent(exit.to(), t -> new ArrayList<>()).add(Expr.name(taken));
                    earlier.add(when);
                }
                arrivals.computeIfAbsent(step.name(), t -> new ArrayList<>())
                        .add(in(step.name()).and(Expr.or(earlier).not()));
            }
            for (Sequence.Step step : sequence.steps()) {
                assign("next_" + step.name(), Expr.or(arrivals.getOrDefault(step.name(), List.of())));
            }
            for (Sequence.Step step : sequence.steps()) {
                assign("in_" + step.name(), Expr.name("next_" + step.name()));
            }
            startOn.add("in_" + sequence.steps().get(0).name());
        }

        private void outputs() {
            for (Sequence.Output output : sequence.outputs()) {
                Expr on = Expr.or(steps(output.name(), true));
                Expr keep = Expr.or(steps(output.name(), false)).and(Expr.name(output.name()));
                assign(
                        output.name(),
                        Expr.and(List.of(
                                on.or(keep),
                                Expr.name("stops_" + output.name()).not(),
                                output.offWhen().not())));
            }
        }

        private List<Expr> steps(String output, boolean on) {
            return sequence.steps().stream()
                    .filter(s -> (on ? s.on() : s.keep()).contains(output))
                    .map(s -> in(s.name()))
                    .toList();
        }

        private static Expr in(String step) {
            return Expr.name("in_" + step);
        }

        private void assign(String name, Expr value) {
            decide.add(new Statement.Assign(name, value));
        }
    }
}
