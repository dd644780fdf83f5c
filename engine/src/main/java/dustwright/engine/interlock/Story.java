package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What happens scan by scan, from power on; the shortest way to something that must not be. */
public record Story(List<Scan> scans) {
    /** Nothing to tell. */
    public static final Story NONE = new Story(List.of());

    public Story {
        scans = List.copyOf(scans);
    }

    /**
     * One scan.
     *
     * @param happens what the plant and the people do, in words
     * @param step the step after the scan
     * @param changes outputs and lamps that changed, in words
     */
    public record Scan(List<String> happens, String step, List<String> changes) {}

    /** Tells moves of a searched circuit in words; scans in which nothing happens and nothing changes are kept, since time passes in them. */
    static Story told(
            Sequence sequence,
            World world,
            Optional<DeviceFault> fault,
            Circuit circuit,
            List<boolean[]> moves,
            int property) {
        return told(sequence, world, world.lines(), fault, circuit, moves, property, false);
    }

    /** Tells what is done in a walk over lines of its own; what is seen then only a watch can say. */
    static Story walked(
            Sequence sequence, World world, List<Statement.Assign> lines, Circuit circuit, List<boolean[]> moves) {
        return told(sequence, world, lines, Optional.empty(), circuit, moves, -1, true);
    }

    private static Story told(
            Sequence sequence,
            World world,
            List<Statement.Assign> lines,
            Optional<DeviceFault> fault,
            Circuit circuit,
            List<boolean[]> moves,
            int property,
            boolean walked) {
        if (moves.isEmpty()) {
            return NONE;
        }
        Map<String, Boolean> values = new HashMap<>();
        world.startOn().forEach(n -> values.put(n, true));
        Teller teller = new Teller(sequence, fault, values);
        List<Scan> scans = new ArrayList<>();
        Map<String, String> before = teller.shown();
        for (boolean[] move : moves) {
            for (int c = 0; c < move.length; c++) {
                values.put(circuit.choices.get(c), move[c]);
            }
            for (Statement.Assign line : lines) {
                values.put(line.name(), truth(line.value(), values));
            }
            List<String> happens = walked ? teller.done(circuit, move) : teller.happens(circuit, move);
            if (scans.isEmpty()) {
                happens.add(0, "power comes on");
            }
            Map<String, String> after = teller.shown();
            List<String> changes = walked ? List.of() : teller.withWhatWasRead(changes(before, after, scans.isEmpty()));
            scans.add(new Scan(happens, teller.step(), changes));
            before = after;
        }
        if (property >= 0 && values.getOrDefault("holds_" + property, false)) {
            throw new IllegalStateException("the story does not end where the search found it: "
                    + world.properties().get(property).id());
        }
        return new Story(scans);
    }

    private static List<String> changes(Map<String, String> before, Map<String, String> after, boolean first) {
        List<String> changes = new ArrayList<>();
        after.forEach((name, word) -> {
            if (!first && !word.equals(before.get(name))) {
                changes.add(name + ": " + word);
            }
        });
        return changes;
    }

    static boolean truth(Expr expr, Map<String, Boolean> values) {
        if (expr instanceof Expr.Constant constant) {
            return constant.value();
        }
        if (expr instanceof Expr.Name name) {
            return values.getOrDefault(name.name(), false);
        }
        if (expr instanceof Expr.Not not) {
            return !truth(not.of(), values);
        }
        boolean all = expr instanceof Expr.And;
        for (Expr term : expr.terms()) {
            if (truth(term, values) != all) {
                return !all;
            }
        }
        return all;
    }

    /** Words for what is seen. */
    private static final class Teller {
        private final Sequence sequence;
        private final Optional<DeviceFault> fault;
        private final Map<String, Boolean> values;

        Teller(Sequence sequence, Optional<DeviceFault> fault, Map<String, Boolean> values) {
            this.sequence = sequence;
            this.fault = fault;
            this.values = values;
        }

        private boolean is(String name) {
            return values.getOrDefault(name, false);
        }

        String step() {
            return sequence.steps().stream()
                    .map(Sequence.Step::name)
                    .filter(n -> is("in_" + n))
                    .findFirst()
                    .orElse("");
        }

        Map<String, String> shown() {
            Map<String, String> shown = new LinkedHashMap<>();
            sequence.outputs().forEach(o -> shown.put(o.words(), is(o.name()) ? o.on() : o.off()));
            sequence.lamps().forEach(l -> shown.put("lamp " + l.words(), is(l.name()) ? "on" : "off"));
            return shown;
        }

        /**
         * A lamp that shows a contact changes by what the contact said when the scan began. Beside an output that changes in the same scan this is said, since the contact can only follow that output later: a vent
         * that opens does not light VACUUMING.
         */
        List<String> withWhatWasRead(List<String> changes) {
            Set<String> contacts =
                    sequence.inputs().stream().map(Sequence.Input::name).collect(Collectors.toSet());
            List<String> byContact = sequence.lamps().stream()
                    .filter(l -> contacts.containsAll(l.when().names()))
                    .map(l -> "lamp " + l.words() + ": ")
                    .toList();
            boolean moves = changes.stream().anyMatch(c -> !c.startsWith("lamp "));
            return changes.stream()
                    .map(c -> moves && byContact.stream().anyMatch(c::startsWith)
                            ? c + " (its contact was read before that)"
                            : c)
                    .toList();
        }

        List<String> happens(Circuit circuit, boolean[] move) {
            List<String> happens = new ArrayList<>();
            for (int c = 0; c < move.length; c++) {
                if (move[c]) {
                    happens.add(words(circuit.choices.get(c)));
                }
            }
            return happens;
        }

        /** In the order in which somebody does it: contacts first, a button when they have been taken as bad. */
        List<String> done(Circuit circuit, boolean[] move) {
            List<String> done = new ArrayList<>();
            List<String> pressed = new ArrayList<>();
            for (int c = 0; c < move.length; c++) {
                if (move[c]) {
                    String choice = circuit.choices.get(c);
                    (isButton(choice) ? pressed : done).add(words(choice));
                }
            }
            boolean alone = done.isEmpty();
            pressed.forEach(p -> done.add(alone ? p : "then " + p));
            return done;
        }

        private boolean isButton(String choice) {
            return sequence.buttons().stream()
                    .map(Sequence.Button::name)
                    .anyMatch(b -> choice.equals("push_" + b) || choice.equals("flip_" + b));
        }

        private String words(String choice) {
            if (choice.startsWith("push_")) {
                return button(choice.substring(5)) + " is pressed";
            }
            if (choice.startsWith("flip_t_container")) {
                return "dust " + (is("t_container_covered") ? "covers" : "leaves") + " the "
                        + probe("container_free", "container probe");
            }
            if (choice.startsWith("flip_t_receiver")) {
                return "dust " + (is("t_receiver_covered") ? "covers" : "leaves") + " the "
                        + probe("receiver_free", "receiver probe");
            }
            if (choice.startsWith("flip_")) {
                String name = choice.substring(5);
                return button(name) + " is " + (is(name) ? "pressed and held" : "let go");
            }
            if (choice.startsWith("bad_")) {
                return contact(choice.substring(4));
            }
            if (choice.startsWith("out_")) {
                return time(choice.substring(4));
            }
            return switch (choice) {
                case "dip" -> "power is lost and returns";
                case "coasted" -> "the producer has coasted to a stand";
                case "breaks" -> "breaks: " + fault.map(DeviceFault::words).orElse("a device");
                default -> choice;
            };
        }

        /** As the panel and the list of signals call it. */
        private String probe(String name, String otherwise) {
            return sequence.inputs().stream()
                    .filter(i -> i.name().equals(name))
                    .map(i -> i.words() + " " + i.tag())
                    .findFirst()
                    .orElse(otherwise);
        }

        /** Of the contacts that see it. */
        private String tags(String... names) {
            String tags = sequence.inputs().stream()
                    .filter(i -> List.of(names).contains(i.name()))
                    .map(Sequence.Input::tag)
                    .collect(Collectors.joining(", "));
            return tags.isEmpty() ? "" : " (" + tags + ")";
        }

        private String button(String name) {
            return sequence.buttons().stream()
                    .filter(b -> b.name().equals(name))
                    .map(Sequence.Button::words)
                    .findFirst()
                    .orElse(name);
        }

        private String contact(String name) {
            return switch (name) {
                case "t_container_there" -> probe("container_in_place", "container") + " is missing";
                case "t_vent" ->
                    "the vent stays open though it is told to shut" + tags("vent_open_limit", "no_vacuum", "suction");
                case "t_jam" -> "the rotor stands though it is driven" + tags("motion");
                case "t_spins" -> "the rotor turns though nothing drives it" + tags("motion");
                default ->
                    sequence.inputs().stream()
                            .filter(i -> i.name().equals(name))
                            .map(i -> i.words() + ": " + i.bad() + " (" + i.tag() + ")")
                            .findFirst()
                            .orElse(name);
            };
        }

        private String time(String name) {
            if (name.startsWith("time_in_")) {
                return "the time of " + name.substring(8).replace('_', ' ') + " is out";
            }
            return sequence.rules().stream()
                    .filter(r -> r.name().equals(name))
                    .map(r -> "time out: " + r.name().replace('_', ' '))
                    .findFirst()
                    .orElse("time out: " + name);
        }
    }
}
