package dustwright.engine.coverage;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a person can check of why the worst set of the least margin of all is the worst: which inlet harms it how much, what is lost piece by
 * piece on the way to the receiver, and that no exchange of one open inlet for another makes it worse. It explains; the proof are the bounds.
 *
 * @param exchanges every exchange of one inlet in the worst set, smallest margin first
 * @param findings everything that is asked in the worst state
 * @param duty the worst state, solved
 * @param base inlet of the worst set that has the place's requirement by itself; empty where none has
 * @param alone margin with the base inlet alone
 * @param harms what every other inlet that the zones allow besides the base leaves of the margin, smallest first
 * @param mostHarmful of these the first that the zones allow together, as many as the worst set has besides the base
 * @param path pieces from an open inlet to the receiver, through the place asked where that is a run, in the worst set and in the nearest exchange
 */
public record ByHand(
        Exchanges exchanges,
        List<Finding> findings,
        DutyPoint duty,
        Optional<String> base,
        Optional<Double> alone,
        List<Harm> harms,
        List<String> mostHarmful,
        List<Piece> path) {
    /**
     * What one more inlet does.
     *
     * @param margin of the requirement with the base inlet and this one open
     */
    public record Harm(String inlet, double margin) {}

    /**
     * A piece on the way to the receiver.
     *
     * @param id of the run, or of the inlet whose hose it is
     * @param users inlets of the worst set whose air passes it, or some of it
     * @param air in the worst set
     * @param drop in the worst set
     * @param otherDrop likewise
     */
    public record Piece(
            String id,
            LegResult.Kind kind,
            List<String> users,
            MassFlow air,
            PressureDifference drop,
            Optional<PressureDifference> otherDrop) {
        public Piece {
            users = List.copyOf(users);
        }
    }

    public ByHand {
        findings = List.copyOf(findings);
        harms = List.copyOf(harms);
        mostHarmful = List.copyOf(mostHarmful);
        path = List.copyOf(path);
    }

    /** The worst set of the least margin of all answers; empty where nothing is checked. */
    public static Optional<ByHand> of(Plant plant, Coverage coverage, Judging judging) {
        return Exchanges.of(plant, coverage, judging)
                .flatMap(exchanges -> coverage.question().conditions().stream()
                        .filter(state -> ExactStates.words(state).equals(exchanges.condition()))
                        .findFirst()
                        .flatMap(state ->
                                new Explaining(plant, coverage.question(), state, judging, exchanges).explained()));
    }

    /** Whether the worst set is the base with those that harm it most one by one. */
    public boolean byHarmAlone() {
        List<String> others = exchanges.worst().open().stream()
                .filter(id -> !id.equals(base.orElse("")))
                .sorted()
                .toList();
        return others.equals(mostHarmful.stream().sorted().toList());
    }

    /** The work behind one explanation. */
    private static final class Explaining {
        private final Plant plant;
        private final Question question;
        private final State condition;
        private final Judging judging;
        private final Exchanges exchanges;
        private final Finding finding;
        private final DutyPointSolver solver;

        Explaining(Plant plant, Question question, State condition, Judging judging, Exchanges exchanges) {
            this.plant = plant;
            this.question = question;
            this.condition = condition;
            this.judging = judging;
            this.exchanges = exchanges;
            finding = exchanges.worst().finding();
            solver = new DutyPointSolver(Network.compile(plant));
        }

        Optional<ByHand> explained() {
            List<String> open = exchanges.worst().open();
            return duty(open).map(duty -> {
                Optional<String> base = base(open, duty);
                List<Harm> harms = harms(base);
                return new ByHand(
                        exchanges,
                        judging.of(duty),
                        duty,
                        base,
                        base.flatMap(id -> margin(List.of(id))),
                        harms,
                        together(base, harms, open.size()),
                        path(way(base.orElse(open.get(0)), new Ways(duty)), duty));
            });
        }

        private Optional<DutyPoint> duty(List<String> open) {
            return solver.solve(condition.withOpen(open)).match(Optional::of, why -> Optional.empty());
        }

        private Optional<Double> margin(List<String> open) {
            return duty(open)
                    .flatMap(duty -> judging.of(duty).stream()
                            .filter(f -> f.code() == finding.code() && f.where().equals(finding.where()))
                            .map(Finding::margin)
                            .findFirst());
        }

        /**
         * The inlet the requirement is about, or the first of the set with which alone it is asked at that place; one whose air passes there
         * goes before the others.
         */
        private Optional<String> base(List<String> open, DutyPoint duty) {
            Place where = finding.where();
            if (where.kind() == Place.Kind.INLET || where.kind() == Place.Kind.HOSE) {
                return open.stream().filter(id -> where.id().endsWith(id)).max(Comparator.comparingInt(String::length));
            }
            return where.kind() == Place.Kind.RUN
                    ? open.stream()
                            .filter(id -> margin(List.of(id)).isPresent())
                            .min(Comparator.comparing(id -> new Ways(duty)
                                    .passed(id).stream()
                                            .noneMatch(leg -> leg.kind() == LegResult.Kind.RUN
                                                    && leg.id().equals(where.id()))))
                    : Optional.empty();
        }

        private List<Harm> harms(Optional<String> base) {
            List<Harm> harms = new ArrayList<>();
            for (Inlet inlet : plant.inlets()) {
                if (!base.equals(Optional.of(inlet.id()))) {
                    List<String> open = new ArrayList<>(base.stream().toList());
                    open.add(inlet.id());
                    if (!question.allowsZones(plant, open)) {
                        continue;
                    }
                    margin(open).ifPresent(margin -> harms.add(new Harm(inlet.id(), margin)));
                }
            }
            harms.sort(Comparator.comparingDouble(Harm::margin));
            return harms;
        }

        /** The first by harm that the zones allow together, so many with the base. */
        private List<String> together(Optional<String> base, List<Harm> harms, int users) {
            List<String> open = new ArrayList<>(base.stream().toList());
            for (Harm harm : harms) {
                open.add(harm.inlet());
                if (open.size() > users || !question.allowsZones(plant, open)) {
                    open.remove(open.size() - 1);
                }
            }
            return open.subList(base.isPresent() ? 1 : 0, open.size());
        }

        /** The way through the run asked, else that of an inlet: a run of a ring may not lie on the way most of an inlet's air takes. */
        private List<LegResult> way(String inlet, Ways ways) {
            return finding.where().kind() == Place.Kind.RUN
                    ? ways.through(finding.where().id()).orElseGet(() -> ways.from(inlet))
                    : ways.from(inlet);
        }

        private List<Piece> path(List<LegResult> way, DutyPoint worst) {
            List<String> open = worst.state().open();
            String from = open.contains(way.get(0).id()) ? way.get(0).id() : open.get(0);
            Optional<DutyPoint> other = nearest(from).flatMap(this::duty);
            Map<String, List<String>> users = new TreeMap<>();
            Ways ways = new Ways(worst);
            for (String inlet : open) {
                ways.passed(inlet)
                        .forEach(leg -> users.computeIfAbsent(key(leg), k -> new ArrayList<>())
                                .add(inlet));
            }
            return way.stream()
                    .map(leg -> {
                        Optional<LegResult> there = other.flatMap(duty -> duty.legs().stream()
                                .filter(l -> key(l).equals(key(leg)))
                                .findFirst());
                        return new Piece(
                                leg.id(),
                                leg.kind(),
                                users.getOrDefault(key(leg), List.of()),
                                air(leg),
                                drop(leg),
                                there.map(Explaining::drop));
                    })
                    .toList();
        }

        /** The exchange with the smallest margin that leaves an inlet open. */
        private Optional<List<String>> nearest(String kept) {
            return exchanges.tried().stream()
                    .filter(e -> !e.shut().equals(kept))
                    .findFirst()
                    .map(e -> exchanges.worst().open().stream()
                            .map(id -> id.equals(e.shut()) ? e.opened() : id)
                            .collect(Collectors.toList()));
        }

        private static String key(LegResult leg) {
            return leg.kind() + "/" + leg.id();
        }

        private static MassFlow air(LegResult leg) {
            return new MassFlow(Math.abs(leg.flow().kgPerSecond()));
        }

        private static PressureDifference drop(LegResult leg) {
            return new PressureDifference(
                    Math.abs(leg.pressureFrom().pascals() - leg.pressureTo().pascals()));
        }
    }
}
