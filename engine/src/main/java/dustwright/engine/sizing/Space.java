package dustwright.engine.sizing;

import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.receiver.Filter;
import dustwright.engine.sizing.Choice.Priced;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.RunGeometry;
import dustwright.engine.tubing.Tube;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All designs a plant's choices allow. A design is one number per choice; numbers of a choice rise with its size: bore, cloth area. A fit
 * is one number per part, so that parts of one choice may differ: no design, but a plant that bounds many.
 */
final class Space {
    /** Fixed by the plant file. */
    static final int FIXED = -1;

    private final Plant plant;
    private final List<Choice> choices;
    private final List<List<Priced>> sorted = new ArrayList<>();
    private final double[][] cost;
    private final int[] ofRun;
    private final int[] ofInlet;
    private final Map<String, Integer> producersOf = new HashMap<>();
    private final Map<String, Integer> clothOf = new HashMap<>();

    Space(Plant plant, List<Choice> choices) {
        this.plant = plant;
        this.choices = List.copyOf(choices);
        ofRun = new int[plant.runs().size()];
        ofInlet = new int[plant.inlets().size()];
        Arrays.fill(ofRun, FIXED);
        Arrays.fill(ofInlet, FIXED);
        cost = new double[choices.size()][];
        for (int v = 0; v < choices.size(); v++) {
            List<Priced> options = usable(choices.get(v)).stream()
                    .sorted(Comparator.comparingDouble(size(choices.get(v))))
                    .toList();
            sorted.add(options);
            double quantity = place(choices.get(v), v);
            cost[v] = options.stream().mapToDouble(o -> quantity * o.price()).toArray();
        }
    }

    /** Notes which parts a choice is about. Returns how many of its unit are bought. */
    private double place(Choice choice, int v) {
        if (choice instanceof Choice.Tubes tubes) {
            double length_m = 0;
            for (int n = 0; n < ofRun.length; n++) {
                Run run = plant.runs().get(n);
                if (tubes.runs().contains(run.id())) {
                    ofRun[n] = v;
                    length_m += length_m(run);
                }
            }
            return length_m;
        }
        if (choice instanceof Choice.Hoses hoses) {
            for (int n = 0; n < ofInlet.length; n++) {
                if (hoses.inlets().contains(plant.inlets().get(n).id())) {
                    ofInlet[n] = v;
                }
            }
            return hoses.inlets().size();
        }
        (choice instanceof Choice.Producers ? producersOf : clothOf).put(choice.id(), v);
        return 1;
    }

    /** Length as ordered: corner to corner. */
    private static double length_m(Run run) {
        if (run.route() instanceof Run.Route.Measured measured) {
            return measured.length().metres();
        }
        Run.Route.Drawn drawn = (Run.Route.Drawn) run.route();
        double length_m = 0;
        for (int n = 1; n < drawn.corners().size(); n++) {
            length_m += drawn.corners()
                    .get(n)
                    .distanceTo(drawn.corners().get(n - 1))
                    .metres();
        }
        return length_m;
    }

    /** Options whose bends fit between the corners of every run. */
    private List<Priced> usable(Choice choice) {
        if (!(choice instanceof Choice.Tubes tubes)) {
            return choice.options();
        }
        return tubes.options().stream()
                .filter(option ->
                        tubes.runs().stream().allMatch(run -> bendsFit(plant.run(run), plant.tube(option.id()))))
                .toList();
    }

    private static boolean bendsFit(Run run, Tube tube) {
        try {
            RunGeometry.of(run, tube);
            return true;
        } catch (IllegalArgumentException tooTight) {
            return false;
        }
    }

    private java.util.function.ToDoubleFunction<Priced> size(Choice choice) {
        if (choice instanceof Choice.Tubes) {
            return option -> plant.tube(option.id()).bore().metres();
        }
        if (choice instanceof Choice.Hoses) {
            return option -> plant.hose(option.id()).bore().metres();
        }
        if (choice instanceof Choice.Cloth cloth) {
            return option -> cloth.areas().get(cloth.options().indexOf(option)).squareMetres();
        }
        return Priced::price;
    }

    Plant plant() {
        return plant;
    }

    List<Choice> choices() {
        return choices;
    }

    int size() {
        return choices.size();
    }

    /** What a choice may be, smallest first; producers by price. */
    List<Priced> options(int choice) {
        return sorted.get(choice);
    }

    /** Numbers of options by their ids. */
    int[] numbers(List<String> ids) {
        int[] numbers = new int[ids.size()];
        for (int v = 0; v < numbers.length; v++) {
            numbers[v] = sorted.get(v).stream().map(Priced::id).toList().indexOf(ids.get(v));
        }
        return numbers;
    }

    /** First cost of an option of a choice, all parts together. */
    double cost(int choice, int option) {
        return cost[choice][option];
    }

    int ofRun(int run) {
        return ofRun[run];
    }

    int ofInlet(int inlet) {
        return ofInlet[inlet];
    }

    Optional<Integer> producersOf(String station) {
        return Optional.ofNullable(producersOf.get(station));
    }

    Optional<Integer> clothOf(String station) {
        return Optional.ofNullable(clothOf.get(station));
    }

    /** Every option of every choice. */
    long[] all() {
        long[] box = new long[size()];
        for (int v = 0; v < box.length; v++) {
            int options = options(v).size();
            box[v] = options == 0 ? 0 : -1L >>> (Long.SIZE - options);
        }
        return box;
    }

    /** Number of an inlet; FIXED where none is called so. */
    int inlet(String id) {
        for (int n = 0; n < plant.inlets().size(); n++) {
            if (plant.inlets().get(n).id().equals(id)) {
                return n;
            }
        }
        return FIXED;
    }

    /** Whether a choice is about a station: its producers or its cloth. */
    boolean isOfStation(int choice) {
        return isProducer(choice) || choices.get(choice) instanceof Choice.Cloth;
    }

    boolean isProducer(int choice) {
        return choices.get(choice) instanceof Choice.Producers;
    }

    /** Bore of a run, by the option of its choice. */
    double bore_m(int run, int option) {
        String tube = ofRun[run] == FIXED
                ? plant.runs().get(run).tube()
                : sorted.get(ofRun[run]).get(option).id();
        return plant.tube(tube).bore().metres();
    }

    /** A fit of its parts: one option number per run, inlet and choice of a station, as indexes of the choices' options. */
    static final class Fit {
        private final int[] runs;
        private final int[] inlets;
        private final int[] stations;

        Fit(int[] runs, int[] inlets, int[] stations) {
            this.runs = runs;
            this.inlets = inlets;
            this.stations = stations;
        }
    }

    /** The fit of a design. */
    Fit fit(int[] design) {
        int[] runs = new int[ofRun.length];
        for (int n = 0; n < runs.length; n++) {
            runs[n] = ofRun[n] == FIXED ? 0 : design[ofRun[n]];
        }
        int[] inlets = new int[ofInlet.length];
        for (int n = 0; n < inlets.length; n++) {
            inlets[n] = ofInlet[n] == FIXED ? 0 : design[ofInlet[n]];
        }
        return new Fit(runs, inlets, design.clone());
    }

    /** The plant with these parts. */
    Plant with(Fit fit) {
        List<Run> runs = new ArrayList<>(ofRun.length);
        for (int n = 0; n < ofRun.length; n++) {
            Run run = plant.runs().get(n);
            runs.add(
                    ofRun[n] == FIXED
                            ? run
                            : run.in(sorted.get(ofRun[n]).get(fit.runs[n]).id()));
        }
        List<Inlet> inlets = new ArrayList<>(ofInlet.length);
        for (int n = 0; n < ofInlet.length; n++) {
            Inlet inlet = plant.inlets().get(n);
            inlets.add(
                    ofInlet[n] == FIXED
                            ? inlet
                            : inlet.with(
                                    sorted.get(ofInlet[n]).get(fit.inlets[n]).id()));
        }
        List<Station> stations =
                plant.stations().stream().map(s -> station(s, fit.stations)).toList();
        return plant.with(runs, inlets, stations);
    }

    private Station station(Station station, int[] options) {
        Station fitted = station;
        if (producersOf.containsKey(station.id())) {
            int v = producersOf.get(station.id());
            String chosen = sorted.get(v).get(options[v]).id();
            List<String> candidates = sorted.get(v).stream().map(Priced::id).toList();
            List<VacuumProducer> kept = station.producers().stream()
                    .filter(p -> p.id().equals(chosen) || !candidates.contains(p.id()))
                    .map(p -> p.id().equals(chosen) ? p.inService() : p)
                    .toList();
            fitted = fitted.withProducers(kept, station.relief());
        }
        if (clothOf.containsKey(station.id())) {
            int v = clothOf.get(station.id());
            Choice.Cloth cloth = (Choice.Cloth) choices.get(v);
            Priced option = sorted.get(v).get(options[v]);
            Filter filter = fitted.filter();
            fitted = fitted.withFilter(new Filter(
                    cloth.areas().get(cloth.options().indexOf(option)),
                    filter.clean(),
                    filter.normal(),
                    filter.dirty(),
                    filter.service()));
        }
        return fitted;
    }
}
