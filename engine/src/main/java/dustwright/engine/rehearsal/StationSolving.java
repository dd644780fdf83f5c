package dustwright.engine.rehearsal;

import dustwright.engine.conveying.Dust;
import dustwright.engine.electrical.MotorCurrent;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.DustWays;
import dustwright.engine.sheet.DustWeek;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Solves the air network of a station beforehand, and notes what had to be taken. */
final class StationSolving {
    private static final double POWER_FACTOR = 0.86;
    private static final double EFFICIENCY = 0.9;
    /** Resistances for which the network is solved, as multiples of that after a cleaning. */
    private static final List<Double> GRID = List.of(1.0, 1.25, 1.6, 2.0, 2.6, 3.5, 5.0, 8.0, 14.0, 25.0);

    private final Plant plant;
    private final Station station;
    private final DustWeek week;
    private final List<Assumption> assumptions = new ArrayList<>();

    StationSolving(Plant plant, Station station, DustWeek week) {
        this.plant = plant;
        this.station = station;
        this.week = week;
    }

    Outcome<StationModel> build() {
        double cleaned = station.filter().normal().pascalSecondsPerMetre();
        List<Optional<Operating.Table>> tables = new ArrayList<>();
        for (int key = 0; key < 16; key++) {
            int running = key & 3;
            boolean wanted = running > 0 && running < (1 << station.producers().size());
            tables.add(
                    wanted
                            ? table(running, (key & StationModel.USERS) != 0, (key & StationModel.VENTED) != 0, cleaned)
                            : Optional.empty());
        }
        if (tables.get((1 << station.producers().size()) - 1 + StationModel.USERS)
                .isEmpty()) {
            return new Outcome.NotSolved<>("The air network has no solution with all users of \"" + week.set()
                    + "\" open, so there is nothing to rehearse: see verify.");
        }
        OptionalDouble cake = cake();
        assume();
        return new Outcome.Solved<>(new StationModel(
                station.id(),
                week.set(),
                station.producers().size(),
                week.line(),
                week.week().stretches().stream()
                        .mapToDouble(s -> s.feed_kgPerS())
                        .max()
                        .orElse(0),
                1 - station.receiver().preSeparation().value(),
                station.filter().cloth().squareMetres(),
                cleaned,
                cake,
                station.producers().stream().map(StationSolving::greatestRise_K).toList(),
                tables,
                assumptions));
    }

    private Optional<Operating.Table> table(int running, boolean users, boolean vented, double cleaned) {
        List<Double> resistances = new ArrayList<>();
        List<Operating> points = new ArrayList<>();
        for (double factor : GRID) {
            FilterResistance resistance = new FilterResistance(factor * cleaned);
            Station loaded = station.withFilter(station.filter().withResistance(resistance));
            solve(plant.withStation(loaded), state(running, users, vented)).ifPresent(point -> {
                resistances.add(resistance.pascalSecondsPerMetre());
                points.add(point);
            });
        }
        return points.isEmpty() ? Optional.empty() : Optional.of(new Operating.Table(resistances, points));
    }

    private State state(int running, boolean users, boolean vented) {
        Set<String> on = new HashSet<>();
        for (Station other : plant.stations()) {
            for (int p = 0; p < other.producers().size(); p++) {
                boolean here = other.id().equals(station.id());
                if (here ? (running >> p & 1) != 0 : !other.producers().get(p).standby()) {
                    on.add(other.producers().get(p).id());
                }
            }
        }
        List<String> open = users ? week.governing().open() : List.of();
        return new State(
                "rehearsal",
                open,
                feeding(plant),
                FilterCondition.NORMAL,
                Set.of(),
                vented ? Set.of(station.id()) : Set.of(),
                on);
    }

    private Optional<Operating> solve(Plant loaded, State state) {
        try {
            return new DutyPointSolver(Network.compile(loaded))
                    .solve(state)
                    .match(d -> Optional.of(operating(d)), why -> Optional.empty());
        } catch (IllegalArgumentException outsideFormula) {
            return Optional.empty();
        }
    }

    private Operating operating(DutyPoint duty) {
        StationResult result = duty.stations().stream()
                .filter(s -> s.id().equals(station.id()))
                .findFirst()
                .orElseThrow();
        double barometer_Pa = plant.site().air().ambient().pascals();
        return new Operating(
                Math.max(0, barometer_Pa - result.receiver().pascals()),
                result.filterLoss().pascals(),
                result.producers().stream()
                        .map(this::current_A)
                        .flatMap(Optional::stream)
                        .toList(),
                result.producers().stream().map(p -> p.rise().kelvin()).toList());
    }

    /** What its air may warm up by [K]; infinite where seal water takes the heat. */
    static double greatestRise_K(VacuumProducer producer) {
        return producer.machine().sealWaterTakesTheHeat()
                ? Double.POSITIVE_INFINITY
                : producer.greatestRise().kelvin();
    }

    private Optional<Double> current_A(ProducerResult result) {
        VacuumProducer producer = station.producers().stream()
                .filter(p -> p.id().equals(result.id()))
                .findFirst()
                .orElseThrow();
        return supply().map(supply -> !result.running()
                ? 0.0
                : MotorCurrent.fromPower_A(
                        result.shaftPower().watts(),
                        supply.volts().volts(),
                        producer.motor().powerFactor().orElse(POWER_FACTOR),
                        producer.motor().efficiency().orElse(EFFICIENCY)));
    }

    private Optional<Supply> supply() {
        return plant.electrical().supply().filter(s -> s.phases() == 3);
    }

    /** The greatest specific resistance among the dusts of the set; empty where one of them has none. */
    private OptionalDouble cake() {
        List<Dust> dusts = week.governing().open().stream()
                .map(plant::inlet)
                .filter(i -> i.feed().kgPerSecond() > 0)
                .flatMap(i -> i.dust().stream())
                .distinct()
                .map(plant::dust)
                .toList();
        boolean known = !dusts.isEmpty()
                && dusts.stream().allMatch(d -> d.onCloth().cake().isPresent());
        if (!known) {
            assume(
                    Place.Kind.FILTER,
                    "filter stays at its normal resistance: \"cake resistance\" of a dust is not stated");
            return OptionalDouble.empty();
        }
        return dusts.stream()
                .map(d -> d.onCloth().cake().orElse(null))
                .filter(Objects::nonNull)
                .mapToDouble(c -> c.perSecond())
                .max();
    }

    private void assume() {
        assume(
                Place.Kind.PRODUCER,
                "a producer pulls from 1 s after it is switched on until 10 s after it is switched off");
        assume(Place.Kind.VENT_VALVE, "the vent valve travels 1 s");
        assume(Place.Kind.ROTARY_VALVE, "the rotor turns, and stands, 0.5 s after its motor is switched");
        assume(
                Place.Kind.PRODUCER,
                "the air behind a producer warms up with a time constant of 8 min; it is at its limit at the greatest rise that the plant file states, and warm 15 K (27 °F) below");
        assume(Place.Kind.STATION, "compressed air: 6 bar, falls 0.05 bar/s without supply, rises 0.2 bar/s with it");
        assume(
                Place.Kind.RECEIVER,
                "wet dust: the valve discharges 0.3 of what it does, the cake resists 5 times as much, and pulses free a fifth of it; mended, clean elements are in, and what lay on the old ones was knocked out into the receiver");
        assume(Place.Kind.RECEIVER, "a level probe clears when the dust has fallen 5 % below it");
        if (supply().isPresent()) {
            boolean stated = station.producers().stream()
                    .allMatch(p -> p.motor().powerFactor().isPresent()
                            && p.motor().efficiency().isPresent());
            if (!stated) {
                assume(
                        Place.Kind.PRODUCER,
                        "motors: power factor 0.86, efficiency 0.9 where their nameplates are not entered");
            }
        }
    }

    private void assume(Place.Kind kind, String what) {
        assumptions.add(new Assumption(new Place(kind, station.id()), what, Source.commonPractice()));
    }

    /** The way of the dust in the plant's own sets, its producers running as usual. */
    static DustWays ways(Plant plant) {
        return DustWays.of(plant, open -> {
            try {
                return new DutyPointSolver(Network.compile(plant)).solve(usual(plant, open));
            } catch (IllegalArgumentException outsideFormula) {
                return new Outcome.NotSolved<>(String.valueOf(outsideFormula.getMessage()));
            }
        });
    }

    private static State usual(Plant plant, List<String> open) {
        Set<String> running = plant.stations().stream()
                .flatMap(s -> s.producers().stream())
                .filter(p -> !p.standby())
                .map(VacuumProducer::id)
                .collect(Collectors.toSet());
        return new State("rehearsal", open, feeding(plant), FilterCondition.NORMAL, Set.of(), Set.of(), running);
    }

    private static Set<String> feeding(Plant plant) {
        return plant.inlets().stream()
                .filter(i -> i.feed().kgPerSecond() > 0)
                .map(Inlet::id)
                .collect(Collectors.toSet());
    }
}
