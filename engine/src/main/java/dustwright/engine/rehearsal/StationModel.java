package dustwright.engine.rehearsal;

import dustwright.engine.discharge.DischargeLine;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Outcome;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.sheet.DustWeek;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What a rehearsal knows of a station: where its dust goes, and the air network solved beforehand for every set of running producers, with users and without, vent
 * shut and open, over the filter's resistance.
 *
 * @param feed_kgPerS dust of all users in the set with the largest rate [kg/s]
 * @param toCloth share of the dust that reaches the cloth [-]
 * @param cake_perS specific resistance of the cake [1/s]; empty where not stated: then the filter stays as it is
 * @param greatestRise_K of the air over each producer, as the plant file states it [K]; infinite where seal water takes the heat
 * @param tables by running producers as bits, then 4 for users and 8 for an open vent
 */
public record StationModel(
        String station,
        String set,
        int producers,
        DischargeLine line,
        double feed_kgPerS,
        double toCloth,
        double cloth_m2,
        double cleaned_PaSPerM,
        OptionalDouble cake_perS,
        List<Double> greatestRise_K,
        List<Optional<Operating.Table>> tables,
        List<Assumption> assumptions) {
    static final int USERS = 4;
    static final int VENTED = 8;

    public StationModel {
        greatestRise_K = List.copyOf(greatestRise_K);
        tables = List.copyOf(tables);
        assumptions = List.copyOf(assumptions);
    }

    /** The model of a station, or what the plant file must say first. */
    public static Outcome<StationModel> of(Plant plant, Station station) {
        Optional<DustWeek> week = DustWeek.of(plant, station, StationSolving.ways(plant));
        if (week.isEmpty()) {
            return new Outcome.NotSolved<>("A rehearsal of station " + station.id()
                    + " needs to know its dust: enter \"shifts\" under operation, \"feed\" of the inlets, the loose bulk density of their"
                    + " dusts and the \"container\" of the station.");
        }
        if (station.rotaryValve().isPresent() && !(week.get().line().hopper_kg() > 0)) {
            return new Outcome.NotSolved<>(
                    "A rehearsal of station " + station.id()
                            + " needs the volume of its receiver up to the level probe: enter \"hopper\" and \"level probe\" of the receiver.");
        }
        if (station.producers().size() > 2) {
            return new Outcome.NotSolved<>("A rehearsal is made for one or two producers.");
        }
        for (VacuumProducer producer : station.producers()) {
            if (StationSolving.greatestRise_K(producer) <= StationPhysics.WARNED_BELOW_K) {
                return new Outcome.NotSolved<>("A rehearsal needs a \"greatest rise\" of more than 15 K of producer "
                        + producer.id() + ": the warning 15 K below it stands at rest, and nobody could start.");
            }
        }
        return new StationSolving(plant, station, week.get()).build();
    }

    /** The most an amount comes to in any of the states that were solved; 0 where there is none. */
    public double most(ToDoubleFunction<Operating> amount) {
        return tables.stream()
                .flatMap(Optional::stream)
                .flatMap(table -> table.points().stream())
                .mapToDouble(amount)
                .max()
                .orElse(0);
    }

    /** What the station does; the vent, users and producers as they are now. */
    Operating at(int running, boolean users, boolean vented, double resistance_PaSPerM) {
        return running == 0
                ? Operating.REST
                : tables.get(key(running, users, vented))
                        .map(t -> t.at(resistance_PaSPerM))
                        .orElse(Operating.REST);
    }

    /** Resistance at which the filter drop reaches a limit [Pa·s/m]; infinite when it never does. */
    double whereDropIs(int running, boolean users, boolean vented, double drop_Pa) {
        return running == 0
                ? Double.POSITIVE_INFINITY
                : tables.get(key(running, users, vented))
                        .map(t -> t.whereDropIs(drop_Pa))
                        .orElse(Double.POSITIVE_INFINITY);
    }

    private static int key(int running, boolean users, boolean vented) {
        return running + (users ? USERS : 0) + (vented ? VENTED : 0);
    }
}
