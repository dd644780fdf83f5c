package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Tube;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;

/**
 * One of the trade's remedies where some set of open inlets does not hold, with what comes of it, found by covering the changed plant. Never the
 * relief valve: its air does not pass the tubing.
 *
 * @param what the change, for people
 * @param failing requirements and places that do not hold in some set
 * @param least the least margin of all; empty where nothing is checked
 * @param decided whether every number of users and condition has a verdict
 * @param partial whether the work was stopped before they all could have
 */
public record Remedy(String what, int failing, Optional<Worst> least, boolean decided, boolean partial) {
    /** Speeds and set-points tried, over those of the plant file. */
    private static final double[] SPEEDS = {0.8, 0.9, 1.1, 1.2};
    /** Bores of far-end bleed openings tried [m]. */
    private static final double[] BLEEDS_m = {0.02, 0.03, 0.04};
    /** Discharge coefficient of a plain, sharp-edged opening: from memory, so it is told with the remedy. */
    private static final double OPENING = 0.6;

    /** Inlets opened together in a purge, at most: more than a crew opens. */
    private static final int MOST_PURGED = 8;

    /** A change to try: the plant and the question then. */
    public record Change(String what, Plant plant, Question question) {}

    /**
     * The plant as it is first, then the remedies: those decided for every set, the fewest failing places first, then the others, of which
     * more may fail.
     *
     * @param found what coverage said of the plant as it is
     */
    public static List<Remedy> of(Plant plant, Coverage found, Judgings judgings, Effort effort) {
        List<Change> changes = new ArrayList<>(changes(plant, found));
        slowestRun(found).ifPresent(run -> {
            smaller(plant, found, run).ifPresent(changes::add);
            changes.addAll(headers(plant, found.question(), run));
        });
        List<Remedy> remedies = new ArrayList<>();
        for (Change change : changes) {
            Coverage coverage =
                    Coverage.of(change.plant, change.question, judgings.of(change.plant), effort.withoutKnown());
            remedies.add(of(change.what, coverage));
        }
        purge(plant, found, judgings.of(plant), effort).ifPresent(remedies::add);
        remedies.sort(Comparator.comparing((Remedy r) -> !r.decided)
                .thenComparingInt(Remedy::failing)
                .thenComparing(r -> -r.least.map(w -> w.finding().margin()).orElse(0.0)));
        remedies.add(0, of("as it is", found));
        return List.copyOf(remedies);
    }

    /** What can be changed but for sizes: fewer users, speed or held vacuum, a bleed at the far end of the slowest run. */
    public static List<Change> changes(Plant plant, Coverage found) {
        List<Change> changes = new ArrayList<>();
        fewerUsers(plant, found).ifPresent(changes::add);
        changes.addAll(speeds(plant, found.question()));
        slowestRun(found).ifPresent(run -> changes.addAll(bleeds(plant, found.question(), run)));
        return changes;
    }

    private static Remedy of(String what, Coverage coverage) {
        List<Worst> places = coverage.worstPerPlace();
        return new Remedy(what, failing(places), places.stream().findFirst(), decided(coverage), coverage.partial());
    }

    private static int failing(List<Worst> places) {
        return (int) places.stream().filter(w -> w.finding().fails()).count();
    }

    private static boolean decided(Coverage coverage) {
        return coverage.answers().stream()
                .noneMatch(a -> a.verdict() == Verdict.UNDECIDED || a.verdict() == Verdict.NOT_DONE);
    }

    private static Optional<Change> fewerUsers(Plant plant, Coverage found) {
        List<Integer> users = found.question().users();
        if (users.size() < 2) {
            return Optional.empty();
        }
        Question fewer = new Question(
                users.subList(0, users.size() - 1),
                found.question().atMost(),
                found.question().conditions());
        int most = users.get(users.size() - 2);
        return Optional.of(new Change("at most " + most + (most == 1 ? " user" : " users"), plant, fewer));
    }

    private static List<Change> speeds(Plant plant, Question question) {
        List<Change> changes = new ArrayList<>();
        for (double share : SPEEDS) {
            Plant changed = plant;
            boolean any = false;
            for (Station station : plant.stations()) {
                List<VacuumProducer> producers = new ArrayList<>();
                for (VacuumProducer producer : station.producers()) {
                    Optional<Drive> drive = turned(producer, share);
                    any |= drive.isPresent();
                    producers.add(drive.map(producer::withDrive).orElse(producer));
                }
                changed = changed.withStation(station.withProducers(producers, station.relief()));
            }
            if (any) {
                String percent = (share > 1 ? "+" : "-") + Math.round(100 * Math.abs(share - 1)) + " %";
                changes.add(new Change("speed or held vacuum of the producers " + percent, changed, question));
            }
        }
        return changes;
    }

    private static Optional<Drive> turned(VacuumProducer producer, double share) {
        if (producer.drive() instanceof Drive.Holding held) {
            PressureDifference vacuum =
                    new PressureDifference(share * held.vacuum().pascals());
            return Optional.of(new Drive.Holding(held.least(), held.greatest(), vacuum));
        }
        RotationalSpeed speed = RotationalSpeed.ofRpm(
                share * ((Drive.Fixed) producer.drive()).speed().rpm());
        boolean allowed = speed.rpm() >= producer.leastSpeed().rpm()
                && speed.rpm() <= producer.greatestSpeed().rpm();
        return allowed ? Optional.of(new Drive.Fixed(speed)) : Optional.empty();
    }

    /** The run whose air is too slow by most. */
    private static Optional<String> slowestRun(Coverage found) {
        return found.answers().stream()
                .flatMap(answer -> answer.worst().stream())
                .map(Worst::finding)
                .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY && f.fails())
                .filter(f -> f.where().kind() == Place.Kind.RUN)
                .min(Comparator.comparingDouble(Finding::margin))
                .map(f -> f.where().id());
    }

    private static List<Change> bleeds(Plant plant, Question question, String run) {
        String point = plant.run(run).from();
        String id = "remedy at " + point;
        List<Change> changes = new ArrayList<>();
        for (double bore_m : BLEEDS_m) {
            List<Bleed> bleeds = new ArrayList<>(plant.bleeds());
            bleeds.add(new Bleed(id, point, new Length(bore_m).circle(), OPENING, true));
            List<State> open = question.conditions().stream()
                    .map(state -> {
                        Set<String> all = new TreeSet<>(state.openBleeds());
                        all.add(id);
                        return state.withOpenBleeds(all);
                    })
                    .toList();
            changes.add(new Change(
                    "a bleed always open at " + point + ", opening of " + Math.round(1000 * bore_m)
                            + " mm (discharge coefficient " + OPENING + " assumed)",
                    plant.withTubing(plant.runs(), bleeds),
                    new Question(question.users(), question.atMost(), open)));
        }
        return changes;
    }

    private static List<Change> headers(Plant plant, Question question, String run) {
        SeparateHeaders headers = new SeparateHeaders(plant);
        List<Change> changes = new ArrayList<>();
        headers.of(run, false)
                .ifPresent(changed ->
                        changes.add(new Change("separate headers that meet only at the receiver", changed, question)));
        headers.of(run, true)
                .ifPresent(changed -> changes.add(new Change(
                        "separate headers that meet only at the receiver, in the next smaller tube",
                        changed,
                        question)));
        return changes;
    }

    /**
     * Runs that are too slow only while few are at work are blown through after each shift. What fails besides stays. Empty where no run is
     * too slow, or nothing but such runs could be helped.
     */
    private static Optional<Remedy> purge(Plant plant, Coverage found, Judging judging, Effort effort) {
        List<Worst> places = found.worstPerPlace();
        List<String> slow = places.stream()
                .map(Worst::finding)
                .filter(Remedy::slowRun)
                .map(f -> f.where().id())
                .toList();
        if (slow.isEmpty()) {
            return Optional.empty();
        }
        int most = Math.min(MOST_PURGED, plant.inlets().size());
        State dirty =
                found.question().conditions().get(found.question().conditions().size() - 1);
        Watch watch = new Watch(effort.cancelled(), effort.progress());
        Purge purge;
        try {
            purge = Purge.of(plant, dirty, slow, most, judging, watch);
        } catch (CancellationException stopped) {
            return Optional.of(new Remedy("a purge after each shift", 0, Optional.empty(), false, true));
        }
        List<Worst> rest = new ArrayList<>(
                places.stream().filter(w -> !slowRun(w.finding())).toList());
        purge.left().forEach(f -> rest.add(new Worst(f, List.of(f.state()))));
        purge.least().ifPresent(f -> rest.add(new Worst(f, List.of(f.state()))));
        String how = purge.sets().isEmpty()
                ? "no set of up to " + most + " inlets blows the slow runs through"
                : "open together, one set after another: "
                        + purge.sets().stream()
                                .map(set -> String.join("+", set))
                                .distinct()
                                .collect(Collectors.joining("; "));
        return Optional.of(new Remedy(
                "a purge after each shift, " + how + "; until then dust lies in slow runs",
                failing(rest),
                rest.stream().min(Comparator.comparingDouble(w -> w.finding().margin())),
                decided(found),
                found.partial()));
    }

    private static boolean slowRun(Finding finding) {
        return finding.code() == FindingCode.TRANSPORT_VELOCITY
                && finding.where().kind() == Place.Kind.RUN
                && finding.fails();
    }

    /** The next smaller tube of the plant for every run of the size of the one that is too slow, with one user fewer. */
    private static Optional<Change> smaller(Plant plant, Coverage found, String run) {
        String size = plant.run(run).tube();
        double bore_m = plant.tube(size).bore().metres();
        Optional<Tube> next = plant.tubes().stream()
                .filter(tube -> tube.bore().metres() < bore_m)
                .max(Comparator.comparing(Tube::bore));
        Plant changed = next.map(tube -> plant.withTubing(
                        plant.runs().stream()
                                .map(r -> r.tube().equals(size) ? r.in(tube.id()) : r)
                                .toList(),
                        plant.bleeds()))
                .orElse(plant);
        return next.flatMap(tube -> fewerUsers(changed, found)
                .map(fewer -> new Change(
                        tube.id() + " in place of every " + size + ", " + fewer.what, changed, fewer.question)));
    }
}
