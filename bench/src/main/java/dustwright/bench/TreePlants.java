package dustwright.bench;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.conveying.Particle;
import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Source;
import dustwright.engine.network.State;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Point;
import dustwright.engine.plant.ReceiverLimits;
import dustwright.engine.plant.Requirements;
import dustwright.engine.plant.Site;
import dustwright.engine.plant.Station;
import dustwright.engine.plant.Usage;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.SafetyFilterRating;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.LeakCoefficient;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.Filter;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import dustwright.engine.tubing.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Invented tree plants for measuring: a trunk with mains, each main a row of tees, at every tee a drop with an inlet. Lengths are drawn
 * from a seed; sizes are those of an ordinary system. No wyes, so that the tubing folds.
 */
final class TreePlants {
    private static final double ROUGHNESS_m = 4.5e-5;
    private static final double LEAK_kgPerSPa = 3e-9;
    private static final String POWDER = "powder";
    private static final double FEED_kgPerS = 40.0 / 3600;

    private final SplittableRandom random;
    private final ReliefValve relief;
    private final List<Point> points = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();
    private final List<Inlet> inlets = new ArrayList<>();

    private TreePlants(long seed, ReliefValve relief) {
        random = new SplittableRandom(seed);
        this.relief = relief;
    }

    /** The usual one: so many mains of so many inlets each, sized for four users; the relief valve opens at 10 inHg. */
    static Plant plant(int mains, int inletsPerMain) {
        return plant(
                mains,
                inletsPerMain,
                new ReliefValve(new PressureDifference(33_864), new PressureDifference(6_773), new FreeAirFlow(0.236)));
    }

    /** The usual one by its name, with a dust at every inlet and limits for tool, velocity, filter and wear. */
    static Plant demanding(String tree) {
        Plant plain = named(tree);
        Dust dust = new Dust(
                "dust",
                "dry dust",
                Optional.of(DustClass.DRY_POWDER),
                DustClass.DRY_POWDER.minimum(),
                DustClass.SOURCE,
                Optional.empty(),
                Optional.empty(),
                powder().particle(),
                LevelFriction.YANG);
        List<Inlet> dusty = plain.inlets().stream()
                .map(i -> new Inlet(
                        i.id(),
                        i.at(),
                        i.hose(),
                        i.tool(),
                        i.valveK(),
                        i.leak(),
                        i.zone(),
                        Optional.of("dust"),
                        i.feed()))
                .toList();
        return new Plant(
                plain.name(),
                plain.note(),
                plain.site(),
                List.of(dust),
                plain.tubes(),
                plain.hoses(),
                plain.tools(),
                plain.points(),
                plain.runs(),
                dusty,
                plain.bleeds(),
                plain.held(),
                plain.stations(),
                plain.usage(),
                new Requirements(
                        Optional.of(new Limit<>(new FreeAirFlow(0.03), Source.entered())),
                        Optional.of(new Limit<>(new PressureDifference(5_000), Source.entered())),
                        new Limit<>(new Ratio(1), Source.entered()),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Limit<>(new Velocity(60), Source.entered())),
                        Optional.of(new Limit<>(new Velocity(0.05), Source.entered())),
                        Optional.empty()),
                plain.overrides(),
                plain.assumptions());
    }

    /** The usual one by its name, mains x inlets per main, such as {@code 5x12}. */
    static Plant named(String tree) {
        int cross = tree.indexOf('x');
        return plant(Integer.parseInt(tree.substring(0, cross)), Integer.parseInt(tree.substring(cross + 1)));
    }

    static Plant plant(int mains, int inletsPerMain, ReliefValve relief) {
        return new TreePlants(20_260_101L + mains * 1000L + inletsPerMain, relief).build(mains, inletsPerMain);
    }

    /** A state of such a plant, by numbers of the open inlets. */
    static State state(Plant plant, int... open) {
        List<String> ids =
                IntStream.of(open).mapToObj(n -> plant.inlets().get(n).id()).toList();
        return new State("measured", ids, FilterCondition.NORMAL, Set.of(), Set.of(), Set.of("P1"));
    }

    /** The same while every user picks up 40 kg/h of fine powder. */
    static State feeding(Plant plant, int... open) {
        State state = state(plant, open);
        return state.withFeeding(Set.copyOf(state.open()));
    }

    private static Dust powder() {
        return new Dust(
                POWDER,
                "Invented powder",
                Optional.of(DustClass.VERY_FINE_LIGHT),
                DustClass.VERY_FINE_LIGHT.minimum(),
                DustClass.SOURCE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Particle(new Length(6e-5), new Density(1450))),
                LevelFriction.YANG);
    }

    /** States drawn from a seed: so many of the inlets open, each set equally likely. */
    static int[][] states(int count, int inlets, int open, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[][] states = new int[count][];
        for (int n = 0; n < count; n++) {
            states[n] = random.ints(0, inlets).distinct().limit(open).toArray();
        }
        return states;
    }

    private Plant build(int mains, int inletsPerMain) {
        String below = "REC";
        for (int main = 1; main <= mains; main++) {
            String tee = "T" + main;
            run("trunk" + main, tee, below, "T5", between(4, 12), between(0.2, 1));
            main(main, inletsPerMain, tee);
            below = tee;
        }
        Wall steel = new Wall.Rough(new Length(ROUGHNESS_m));
        return new Plant(
                "Measuring tree " + mains + " x " + inletsPerMain,
                "Invented for measuring speed.",
                new Site(
                        new Air(new AbsolutePressure(101_325), new Temperature(293.15), 287.05287, 1.8134e-5),
                        Optional.empty(),
                        0),
                List.of(powder()),
                List.of(
                        tube("T5", 0.1216, steel),
                        tube("T4", 0.0972, steel),
                        tube("T3", 0.0729, steel),
                        tube("T2", 0.0475, steel)),
                List.of(new Hose("H15", new Length(0.0381), new Length(7.6), new Wall.Rough(new Length(1e-4)))),
                List.of(new Tool("floor", new Tool.Law.VelocityHeads(6))),
                points,
                runs,
                inlets,
                List.of(),
                List.of(),
                List.of(station()),
                new Usage(4, List.of(), List.of()),
                requirements(),
                List.of(),
                List.of());
    }

    private void main(int main, int inletsPerMain, String start) {
        String below = start;
        for (int n = 1; n <= inletsPerMain; n++) {
            String tee = String.format(Locale.ROOT, "M%d.%d", main, n);
            String inlet = String.format(Locale.ROOT, "I%d.%d", main, n);
            String size = n <= inletsPerMain / 2 ? "T4" : "T3";
            run("main" + main + "." + n, tee, below, size, between(2, 8), between(0.1, 0.6));
            run("drop" + main + "." + n, inlet, tee, "T2", between(2.5, 6), between(0.5, 1.2));
            inlets.add(new Inlet(
                    inlet,
                    Optional.empty(),
                    "H15",
                    "floor",
                    0.5,
                    new LeakCoefficient(LEAK_kgPerSPa),
                    "",
                    Optional.of(POWDER),
                    new MassFlow(FEED_kgPerS)));
            below = tee;
        }
    }

    private void run(String id, String from, String to, String tube, double length_m, double k) {
        if (!from.startsWith("I")) {
            points.add(new Point(from, Optional.empty()));
        }
        runs.add(new Run(
                id,
                from,
                to,
                tube,
                new Run.Route.Measured(new Length(length_m), k),
                List.of(),
                Optional.empty(),
                true));
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static Tube tube(String id, double bore_m, Wall wall) {
        return new Tube(id, new Length(bore_m), Optional.empty(), wall);
    }

    private Station station() {
        VacuumProducer pump = new VacuumProducer(
                "P1",
                new Machine.LobePump(new Volume(0.0076), RotationalSpeed.ofRpm(130), 0.9, new Power(300)),
                new Drive.Fixed(RotationalSpeed.ofRpm(1860)),
                Motor.of(new Power(11_185)),
                new PressureDifference(47_400),
                new TemperatureRise(130),
                RotationalSpeed.ofRpm(700),
                RotationalSpeed.ofRpm(2200),
                Optional.of(
                        new StatedLoss(new PressureDifference(2000), new FreeAirFlow(0.156), StatedLoss.State.SITE)),
                false);
        return new Station(
                "REC",
                Optional.empty(),
                new Receiver(Optional.empty(), Optional.empty()),
                new Filter(
                        new Area(8.8),
                        new FilterResistance(10_000),
                        new FilterResistance(41_000),
                        new FilterResistance(62_000)),
                Optional.of(new StatedLoss(new PressureDifference(500), new FreeAirFlow(0.165), StatedLoss.State.SITE)),
                SafetyFilterRating.UNKNOWN,
                Optional.of(relief),
                Optional.empty(),
                Optional.of(new RotaryValve(new Volume(0.0113), RotationalSpeed.ofRpm(15), 0.3, new Area(7.5e-5), 0.6)),
                Optional.empty(),
                List.of(pump));
    }

    private static Requirements requirements() {
        return new Requirements(
                Optional.empty(),
                Optional.empty(),
                new Limit<>(new Ratio(1), Source.entered()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                ReceiverLimits.NONE);
    }
}
