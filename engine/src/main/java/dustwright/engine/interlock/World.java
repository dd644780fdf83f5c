package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The sequence together with a plant that may do anything at any scan, the observers and the properties: assignments only, carried out in
 * their order once per scan, with free choices in it.
 *
 * @param lines the scan
 * @param events names of what may happen at one moment: a button, a probe that changes, a time that is out
 * @param contacts names of contacts that may be bad, each scan anew
 * @param startOn memory that is true in the beginning
 * @param properties those that apply; property {@code i} holds after a scan when {@code holds_i} is true
 * @param doNotApply those that speak of devices the sequence does not have
 * @param absent contacts, buttons, outputs, steps and lamps that observers and properties name and the sequence does not have: taken as healthy and never there
 * @param without for every property the names of these that it would judge too, itself or by an observer it names
 * @param unjudged contacts, outputs and lamps of the sequence that neither the plant nor any observer or property knows
 */
record World(
        List<Statement.Assign> lines,
        List<String> events,
        List<String> contacts,
        Set<String> startOn,
        List<Property> properties,
        List<Property> doNotApply,
        Set<String> absent,
        List<Set<String>> without,
        Set<String> unjudged) {
    /** Of these a broken wire can be had in any scan too; what the others would then say is among what the plant does anyway. */
    private static final Set<String> BROKEN_WIRES = Set.of("vent_open_limit", "no_vacuum", "suction", "suction_open");

    /** Beginnings of outputs whose devices do what they are told one travel later. */
    private static final List<String> FOLLOW = List.of("line_", "pulses", "bleed_open", "lid_free");

    /** Where nothing turns, what turns and what stands is as it should be. */
    private static final Set<String> STANDS_FOR_NOTHING =
            Set.of("valve", "was_valve", "valve_off", "t_rotor", "t_suction_open");

    /** Counts, not times: a sequence that does not count is told so. */
    private static final Set<String> COUNTED =
            Set.of("out_returns_used", "out_starts_used", "out_cloth_lost", "out_cleaned_in_vain");

    /** Names that observers and properties speak of. */
    private static final Set<String> JUDGED = Stream.concat(
                    Observers.ALL.stream().map(Observers.Observer::is),
                    Obligations.ALL.stream().map(Property::logic))
            .flatMap(l -> Expr.of(l).names().stream())
            .collect(Collectors.toSet());

    /** Properties that say of everything that it is off. */
    private static final Set<String> EVERYTHING_OFF = Set.of("stop-all", "standing-off");

    /** Contacts that follow what truly is and prove it to the program. */
    private static final Set<String> PROOFS = Set.of("vent_open_limit", "no_vacuum", "suction_open");

    /** No fault: people have shut all inlets. */
    private static final String NO_INLET_OPEN = "bad_inlet_used";

    static World of(Sequence sequence, Optional<DeviceFault> fault) {
        return new Writer(sequence, ScanProgram.withSharedLatches(sequence), fault, true).write();
    }

    /** Every cause with its own latch and every input on its own: for reading a story, and for comparing. */
    static World inFull(Sequence sequence, Optional<DeviceFault> fault) {
        return new Writer(sequence, ScanProgram.of(sequence), fault, false).write();
    }

    /** Every free contact with the first of those that scan and judges only meet together with it. */
    static Map<String, String> alike(Sequence sequence) {
        return Twins.firsts(new Writer(sequence, ScanProgram.withSharedLatches(sequence), Optional.empty(), false)
                .write()
                .lines());
    }

    /** What the plant and the scan know by name. */
    Set<String> named() {
        return lines.stream().map(Statement.Assign::name).collect(Collectors.toSet());
    }

    /** The network to search. */
    Circuit circuit() {
        List<String> watched = new ArrayList<>();
        for (int i = 0; i < properties.size(); i++) {
            watched.add("holds_" + i);
        }
        return Circuit.of(
                lines, Stream.concat(events.stream(), contacts.stream()).toList(), startOn, watched);
    }

    /** What may happen in one scan: so many events, and so many bad contacts besides. */
    Moves moves(Circuit circuit, int mostEvents, int mostBad) {
        List<Integer> happen = new ArrayList<>();
        List<Integer> bad = new ArrayList<>();
        for (int c = 0; c < circuit.choices.size(); c++) {
            (contacts.contains(circuit.choices.get(c)) ? bad : happen).add(c);
        }
        int inlets = circuit.choices.indexOf(NO_INLET_OPEN);
        if (bad.remove((Integer) inlets)) {
            bad.add(0, inlets);
        }
        return Moves.of(happen, mostEvents, bad, mostBad, inlets < 0 ? 0 : 1, circuit.choices.size());
    }

    private static final class Writer {
        private final Sequence sequence;
        private final ScanProgram program;
        private final Optional<DeviceFault> fault;
        private final boolean twins;
        private final List<Statement.Assign> lines = new ArrayList<>();
        private final Set<String> choices = new LinkedHashSet<>();
        private final Set<String> contacts = new LinkedHashSet<>();
        private final Set<String> startOn = new LinkedHashSet<>();
        private final List<Property> applied = new ArrayList<>();
        private final List<Property> notApplied = new ArrayList<>();
        private final Set<String> absent = new LinkedHashSet<>();
        private final List<Set<String>> without = new ArrayList<>();
        private final Map<String, Set<String>> missing = new LinkedHashMap<>();
        private final Set<String> known = new LinkedHashSet<>(Witnesses.firsts());
        /** Outputs nobody who judges knows by name: all that is said of them is that everything is off. */
        private final Set<String> beyond;

        /** Contacts that are a second of one that those who judge know, by its name. */
        private final Map<String, List<String>> seconds;

        Writer(Sequence sequence, ScanProgram program, Optional<DeviceFault> fault, boolean twins) {
            this.sequence = sequence;
            this.program = program;
            this.fault = fault;
            this.twins = twins;
            beyond = sequence.outputs().stream()
                    .map(Sequence.Output::name)
                    .filter(o -> !JUDGED.contains(o) && !JUDGED.contains("was_" + o))
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            seconds = sequence.inputs().stream()
                    .map(Sequence.Input::name)
                    .filter(i -> seconded(i).isPresent())
                    .collect(Collectors.groupingBy(i -> seconded(i).orElseThrow()));
        }

        /** Contacts of the plant itself that only another name can hide; the others go with devices that need not be there. */
        private boolean isExpected(String witness) {
            return switch (witness) {
                case "suction_open" -> false;
                case "motion", "receiver_free" -> turns();
                default -> true;
            };
        }

        World write() {
            assign("dip_now", "dip or not powered");
            choices.add("dip");
            assign("powered", "yes");
            copiesOfTheScanBefore();
            plant();
            program.decide().stream().map(Statement::name).distinct().forEach(this::forgetWithoutPower);
            assign("first_scan", "dip_now");
            sequence.outputs().forEach(o -> assign("was_" + o.name(), o.name()));
            if (sequence.lamps().stream().anyMatch(l -> l.name().equals("pump"))) {
                assign("was_pump", "pump");
            }
            sequence.steps().forEach(s -> assign("was_in_" + s.name(), "in_" + s.name()));
            program.decide().forEach(this::decide);
            observers();
            properties();
            Witnesses.firsts().stream().filter(w -> !has(w) && isExpected(w)).forEach(absent::add);
            List<Statement.Assign> all = twins ? Twins.merged(lines) : lines;
            Set<String> unjudged = new LinkedHashSet<>();
            Stream.of(
                            sequence.inputs().stream().map(Sequence.Input::name),
                            sequence.outputs().stream()
                                    .map(Sequence.Output::name)
                                    .filter(beyond::contains),
                            sequence.lamps().stream().map(Sequence.Lamp::name).filter(l -> !l.equals("pump")))
                    .flatMap(n -> n)
                    .filter(n -> beyond.contains(n) || !known.contains(n))
                    .forEach(unjudged::add);
            return new World(
                    List.copyOf(all),
                    List.copyOf(choices),
                    List.copyOf(contacts),
                    startOn,
                    applied,
                    notApplied,
                    absent,
                    List.copyOf(without),
                    unjudged);
        }

        private void copiesOfTheScanBefore() {
            assign("told_open", "not vent_shut");
            assign("told_pump", "pump");
            if (turns()) {
                assign("told_valve", "valve");
            }
            FOLLOW.stream().flatMap(o -> outputs(o).stream()).forEach(o -> assign("told_" + o, o));
            for (String observer : List.of("session", "waiting", "asked_cleaning", "stopping")) {
                assign("was_" + observer, "o_" + observer);
            }
        }

        /** What moves between two scans, and what the contacts then say. */
        private void plant() {
            if (fault.isPresent()) {
                choices.add("breaks");
                assign("broken", "broken or breaks");
            }
            level("t_container_covered", false);
            contact("t_container_there");
            if (sees("receiver_free")) {
                level("t_receiver_covered", false);
            }
            if (turns()) {
                contacts.add("bad_t_jam");
                assign("t_jam", "bad_t_jam");
                contacts.add("bad_t_spins");
                assign("t_spins", "bad_t_spins");
            }
            choices.add("coasted");
            truth("t_pump_turning", "pump or (t_pump_turning and not coasted)");
            contacts.add("bad_t_vent");
            truth("t_vent_open", "not vent_shut or bad_t_vent");
            if (sees("suction_open")) {
                truth("t_suction_open", "not suction_shut");
            }
            FOLLOW.stream().flatMap(o -> outputs(o).stream()).forEach(o -> truth("t_" + o, o));
            List<String> lineValves = outputs("line_");
            truth(
                    "t_vacuum",
                    "t_pump_turning and not t_vent_open"
                            + (lineValves.isEmpty() ? "" : " and (" + String.join(" or ", truths(lineValves)) + ")"));
            if (turns()) {
                truth("t_rotor", "(valve and not t_jam) or t_spins");
            }
            for (Sequence.Input input : sequence.inputs()) {
                Optional<String> witness = Witnesses.sees(input.name());
                if (witness.isEmpty()) {
                    contact(input.name());
                } else if (Witnesses.first(input.name())
                        .filter(BROKEN_WIRES::contains)
                        .isPresent()) {
                    contacts.add("bad_" + input.name());
                    truth(input.name(), "(" + witness.get() + ") and not bad_" + input.name());
                } else {
                    truth(input.name(), witness.get());
                }
                witness.ifPresent(t -> known.add(input.name()));
            }
            buttons();
        }

        private List<String> outputs(String beginning) {
            return sequence.outputs().stream()
                    .map(Sequence.Output::name)
                    .filter(o -> o.startsWith(beginning))
                    .toList();
        }

        private static List<String> truths(List<String> devices) {
            return devices.stream().map(d -> "t_" + d).toList();
        }

        private boolean turns() {
            return sequence.outputs().stream().anyMatch(o -> o.name().equals("valve"));
        }

        private boolean has(String input) {
            return sequence.inputs().stream().anyMatch(i -> i.name().equals(input));
        }

        private boolean sees(String first) {
            return !Witnesses.alike(sequence, first).isEmpty();
        }

        /** Buttons are pressed for one scan; START may be held, since held buttons must do nothing. */
        private void buttons() {
            Expr higher = Expr.Constant.NO;
            for (Sequence.Button button : sequence.buttons()) {
                String name = button.name();
                if (name.equals("start") || isStuck(name)) {
                    assign(ScanProgram.before(name), name);
                    forget(ScanProgram.before(name), true);
                    level(name, false);
                    assign("press_" + name, name + " and not " + ScanProgram.before(name));
                } else {
                    choices.add("push_" + name);
                    seen("press_" + name, "push_" + name);
                }
                Expr press = Expr.name("press_" + name);
                lines.add(new Statement.Assign("press_" + name, press.and(higher.not())));
                if (button.opensWhenPressed()) {
                    assign(ScanProgram.down(name), isStuck(name) ? Expr.name(name) : press);
                    higher = higher.or(Expr.name(ScanProgram.down(name)));
                } else {
                    higher = higher.or(press);
                }
            }
        }

        private boolean isStuck(String name) {
            return fault.filter(f -> f.target().equals(name)).isPresent();
        }

        /** A contact that may be bad in any scan. */
        private void contact(String name) {
            contacts.add("bad_" + name);
            seen(name, "not bad_" + name);
        }

        /** What a contact or button tells. Where it is the one that breaks, observers and properties go by what it should have told. */
        private void seen(String name, String is) {
            if (isStuck(name)) {
                assign(name + "_healthy", is);
                truth(name, name + "_healthy");
            } else {
                assign(name, is);
            }
        }

        /** Something that stays as it is until it changes. */
        private void level(String name, boolean startsOn) {
            choices.add("flip_" + name);
            if (startsOn) {
                startOn.add(name);
            }
            assign(name, "(" + name + " and not flip_" + name + ") or (not " + name + " and flip_" + name + ")");
            fault.filter(f -> f.target().equals(name)).ifPresent(f -> {
                String raw = name + "_healthy";
                lines.remove(lines.size() - 1);
                if (startsOn) {
                    startOn.add(raw);
                }
                assign(raw, "(" + raw + " and not flip_" + name + ") or (not " + raw + " and flip_" + name + ")");
                assign(name, f.is().replace("as_it_should", raw));
            });
        }

        private void truth(String name, String is) {
            assign(
                    name,
                    fault.filter(f -> f.target().equals(name))
                            .map(f -> f.is().replace("as_it_should", "(" + is + ")"))
                            .orElse(is));
        }

        private void forgetWithoutPower(String name) {
            if (!program.kept().contains(name)) {
                forget(name, program.startOn().contains(name));
            }
        }

        private void forget(String name, boolean startsOn) {
            assign(name, startsOn ? name + " or dip_now" : name + " and not dip_now");
        }

        /**
         * A time may be out at any scan in which it runs, and a count may be full or not in any scan: every setting is then among what is
         * searched.
         */
        private void decide(Statement statement) {
            String name = statement.name();
            Expr self = Expr.name(name);
            Expr out = Expr.name("out_" + name);
            if (statement instanceof Statement.Assign assign) {
                lines.add(assign);
            } else if (statement instanceof Statement.Delay delay) {
                choices.add("out_" + name);
                lines.add(new Statement.Assign(name, delay.run().and(self.or(out))));
            } else if (statement instanceof Statement.Sum sum) {
                choices.add("out_" + name);
                Expr begun = Expr.name("begun_" + name);
                lines.add(
                        new Statement.Assign("begun_" + name, sum.forget().not().and(begun.or(sum.run()))));
                lines.add(new Statement.Assign(
                        name, sum.forget().not().and(self.or(sum.run().and(out)))));
            } else {
                Statement.Count count = (Statement.Count) statement;
                lines.add(new Statement.Assign("event_" + name, count.event()));
                lines.add(new Statement.Assign("forget_" + name, count.forget()));
                contacts.add("out_" + name);
                lines.add(new Statement.Assign(name, out));
            }
        }

        private void observers() {
            if (turns()) {
                assign("valve_off", "not valve");
            }
            Set<String> names = names();
            Observers.ALL.forEach(o -> names.add(o.name()));
            clocksOfTheirOwn(Observers.ALL.stream().map(Observers.Observer::is), names);
            Map<String, List<Expr>> own = ownTrips();
            ownPermissives("standing", "");
            ownPermissives("holding", "_resume");
            for (Observers.Observer observer : Observers.ALL) {
                if (observer.startsOn()) {
                    startOn.add(observer.name());
                }
                if (!observer.survivesPower()) {
                    forget(observer.name(), observer.startsOn());
                }
                List<Expr> is = new ArrayList<>(own.getOrDefault(observer.name(), List.of()));
                is.add(judged(withSeconds(Expr.of(observer.is())), names));
                lines.add(new Statement.Assign(observer.name(), withoutMissing(Expr.or(is), names)));
                missing.put(observer.name(), named(Expr.of(observer.is()), names));
            }
        }

        /**
         * Trips an engineer has added on contacts of his own: a latched cause that is nothing but contacts nobody who judges knows is a reason to stop what it stops, as good as those that are known. It is
         * judged with the trips that stop the same.
         */
        private Map<String, List<Expr>> ownTrips() {
            Set<String> contacts = ownContacts();
            Map<String, List<Expr>> own = new LinkedHashMap<>();
            for (Sequence.Cause cause : sequence.causes()) {
                Set<String> names = cause.when().names();
                if (cause.latched() && !names.isEmpty() && contacts.containsAll(names)) {
                    stoppedAs(cause).ifPresent(o -> {
                        known.addAll(names);
                        own.computeIfAbsent(o, n -> new ArrayList<>()).add(judged(cause.when(), names()));
                    });
                }
            }
            return own;
        }

        /**
         * A second contact of what bears its name with a number is as good as the first: well is what both say. Of one producer {@code overload_ok_2} is no second
         * producer's.
         */
        private Expr withSeconds(Expr logic) {
            return logic.replace(n -> {
                if (seconded(((Expr.Name) n).name()).isPresent()) {
                    return Expr.Constant.YES;
                }
                List<String> others = seconds.getOrDefault(((Expr.Name) n).name(), List.of());
                known.addAll(others);
                return Expr.and(Stream.concat(Stream.of(n), others.stream().map(Expr::name))
                        .toList());
            });
        }

        /** The contact those who judge know of which this one is a second. */
        private Optional<String> seconded(String input) {
            String first = Witnesses.unnumbered(input);
            return Optional.of(first)
                    .filter(f -> !f.equals(input) && JUDGED.contains(f) && has(f))
                    .filter(f -> Witnesses.first(f).isEmpty() || PROOFS.contains(f));
        }

        /** Contacts nobody who judges knows. */
        private Set<String> ownContacts() {
            return sequence.inputs().stream()
                    .map(Sequence.Input::name)
                    .filter(n -> !JUDGED.contains(n)
                            && Witnesses.first(n).isEmpty()
                            && seconded(n).isEmpty())
                    .collect(Collectors.toSet());
        }

        /**
         * What an engineer has added to the way from a step to the warning: conditions on contacts of his own. Without them START is refused, and then a message that comes of the same contacts has to say why:
         * {@code o_permitted} and {@code o_refused}.
         */
        private void ownPermissives(String step, String end) {
            List<Expr> permissives = sequence.steps().stream()
                    .filter(s -> s.name().equals(step))
                    .flatMap(s -> s.exits().stream())
                    .filter(x -> x.to().equals("warning"))
                    .flatMap(x -> allOf(x.when()))
                    .filter(this::isOwn)
                    .toList();
            List<Expr> refused = new ArrayList<>();
            for (Expr permissive : permissives) {
                List<Sequence.Input> behind = sequence.contactsBehind(permissive);
                behind.forEach(i -> known.add(i.name()));
                Expr said = Expr.or(sequence.causes().stream()
                        .filter(c -> sequence.contactsBehind(c.when()).stream().anyMatch(behind::contains))
                        .map(c -> Expr.name(c.name()))
                        .toList());
                refused.add(judged(permissive, names()).not().and(said));
            }
            assign("o_permitted" + end, judged(Expr.and(permissives), names()));
            assign("o_refused" + end, Expr.or(refused));
        }

        /** What must all be so for a condition to be. */
        private static Stream<Expr> allOf(Expr condition) {
            return condition instanceof Expr.And
                    ? condition.terms().stream().flatMap(Writer::allOf)
                    : Stream.of(condition);
        }

        /** Whether a condition is nothing but contacts nobody who judges knows, itself or by way of rules. */
        private boolean isOwn(Expr condition) {
            Set<String> contacts = ownContacts();
            Set<String> names = sequence.namesBehind(condition);
            return !names.isEmpty()
                    && names.stream()
                            .allMatch(n -> contacts.contains(n)
                                    || sequence.rules().stream()
                                            .anyMatch(r -> r.name().equals(n)))
                    && names.stream().anyMatch(contacts::contains);
        }

        /** The observer of the trips that stop what this cause stops; nothing when it stops less than any of them. */
        private Optional<String> stoppedAs(Sequence.Cause cause) {
            Set<String> stops = sequence.outputs().stream()
                    .filter(o -> o.stop().equals(cause.demands().get(o.name())))
                    .map(Sequence.Output::name)
                    .collect(Collectors.toSet());
            boolean pump = stops.stream().anyMatch(o -> o.startsWith("pump"));
            if (!stops.contains("vent_shut")) {
                return Optional.empty();
            }
            if (stops.contains("valve")) {
                return Optional.of(pump ? "o_stop_all" : "o_rotor");
            }
            return pump ? Optional.of("o_pump") : Optional.empty();
        }

        /** Where a time is not in the sequence, who judges still has one: a supervision is missed though it is left out with its rule. */
        private void clocksOfTheirOwn(Stream<String> logic, Set<String> names) {
            logic.flatMap(l -> Expr.of(l).names().stream())
                    .filter(n -> n.startsWith("out_") && !n.startsWith("out_time_in_"))
                    .filter(n -> !names.contains(n) && !COUNTED.contains(n))
                    .forEach(n -> {
                        choices.add(n);
                        names.add(n);
                    });
        }

        /** Who judges is not deceived by a contact or button that tells what is not so. */
        private Expr judged(Expr logic, Set<String> names) {
            return logic.replace(n -> {
                String healthy = ((Expr.Name) n).name() + "_healthy";
                return deceives(healthy, names) ? Expr.name(healthy) : n;
            });
        }

        private boolean deceives(String healthy, Set<String> names) {
            return names.contains(healthy)
                    && fault.filter(f -> (f.target() + "_healthy").equals(healthy)
                                    && sequence.buttons().stream()
                                            .noneMatch(b -> b.name().equals(f.target())))
                            .isPresent();
        }

        private void properties() {
            Set<String> names = names();
            for (Property property : Obligations.ALL) {
                boolean applies = (property.needs().isEmpty() || names.contains(property.needs()))
                        && !names.contains(property.without());
                if (!applies) {
                    notApplied.add(property);
                    continue;
                }
                Property whole = EVERYTHING_OFF.contains(property.id()) ? property.also(beyond) : property;
                clocksOfTheirOwn(Stream.of(whole.logic()), names);
                assign(
                        "holds_" + applied.size(),
                        withoutMissing(judged(withSeconds(Expr.of(whole.logic())), names), names));
                applied.add(whole);
                without.add(missing(Expr.of(whole.logic()), names));
            }
        }

        private Set<String> names() {
            return Stream.of(lines.stream().map(Statement.Assign::name), choices.stream(), contacts.stream())
                    .flatMap(n -> n)
                    .collect(Collectors.toCollection(LinkedHashSet::new));
        }

        /** Contacts that are not there and would be judged by a property: those it names, and those of the observers it names. */
        private Set<String> missing(Expr expr, Set<String> names) {
            Set<String> missing = new LinkedHashSet<>(named(expr, names));
            expr.names().forEach(n -> missing.addAll(this.missing.getOrDefault(n, Set.of())));
            return missing;
        }

        private static Set<String> named(Expr expr, Set<String> names) {
            Set<String> missing = new LinkedHashSet<>(expr.names());
            missing.removeIf(n -> names.contains(n) || !isHealthyWhenAbsent(n));
            return missing;
        }

        /** A device that is not there is healthy, never pressed, never in that step, never timed out. */
        private Expr withoutMissing(Expr expr, Set<String> names) {
            known.addAll(expr.names());
            return expr.replace(n -> {
                String name = ((Expr.Name) n).name();
                if (names.contains(name)) {
                    return n;
                }
                String said = name.startsWith("out_") ? name.substring(4) : name;
                if (said.startsWith("in_") || Reserved.in(said).isEmpty()) {
                    absent.add(said);
                }
                if (name.equals("receiver_absent") || name.equals("valve_absent")) {
                    boolean there = names.contains(name.startsWith("valve") ? "valve" : "receiver_free");
                    return there ? Expr.Constant.NO : Expr.Constant.YES;
                }
                if (STANDS_FOR_NOTHING.contains(name)) {
                    return Expr.Constant.YES;
                }
                if (name.equals("purge_fitted")) {
                    return names.contains("in_purging") ? Expr.Constant.YES : Expr.Constant.NO;
                }
                if (name.equals("clean_fitted")) {
                    return names.contains("press_clean") ? Expr.Constant.YES : Expr.Constant.NO;
                }
                return isHealthyWhenAbsent(name) ? Expr.Constant.YES : Expr.Constant.NO;
            });
        }

        private static boolean isHealthyWhenAbsent(String name) {
            return name.endsWith("_ok")
                    || name.contains("_ok_")
                    || name.contains("_cool")
                    || name.contains("at_speed")
                    || name.equals("suction_open")
                    || name.equals("guard_shut")
                    || name.equals("isolation_ready");
        }

        private void assign(String name, String is) {
            assign(name, Expr.of(is));
        }

        private void assign(String name, Expr is) {
            lines.add(new Statement.Assign(name, is));
        }
    }
}
