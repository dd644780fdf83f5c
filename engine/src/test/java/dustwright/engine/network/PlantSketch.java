package dustwright.engine.network;

import dustwright.engine.air.Air;
import dustwright.engine.bagging.Container;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.conveying.Particle;
import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Held;
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
import dustwright.engine.producer.VentValve;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Angle;
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
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.Filter;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import dustwright.engine.tubing.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Draws small invented plants for tests, in SI numbers; what a test does not mention is ordinary. */
public final class PlantSketch {
    /** Dry air at the reference state, viscosity by Sutherland from memory: ordinary, not a reference value. */
    public static final Air SEA_LEVEL_AIR =
            new Air(new AbsolutePressure(101_325), new Temperature(293.15), 287.05287, 1.81e-5);

    private static final double INCH_OF_MERCURY_Pa = 3386.389;

    private Air air = SEA_LEVEL_AIR;
    private Optional<Requirements> requirements = Optional.empty();
    private final List<Dust> dusts = new ArrayList<>();
    private final List<Tube> tubes = new ArrayList<>();
    private final List<Hose> hoses = new ArrayList<>();
    private final List<Tool> tools = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();
    private final List<Inlet> inlets = new ArrayList<>();
    private final List<Bleed> bleeds = new ArrayList<>();
    private final List<Held> held = new ArrayList<>();
    private final List<StationSketch> stations = new ArrayList<>();
    private Optional<Double> saltationFactor = Optional.empty();
    private Optional<Double> loadingRatio = Optional.empty();

    /** A sketch with a 25 ft hose of 38 mm ("H") and a floor tool of K 6 ("floor"). */
    public PlantSketch() {
        hose("H", 0.0381, 7.62, 0.0003);
        tool("floor", new Tool.Law.VelocityHeads(6));
    }

    public PlantSketch air(Air other) {
        air = other;
        return this;
    }

    public PlantSketch tube(String id, double bore_m, double roughness_m) {
        return tube(id, bore_m, new Wall.Rough(new Length(roughness_m)));
    }

    public PlantSketch tube(String id, double bore_m, Wall wall) {
        tubes.add(new Tube(id, new Length(bore_m), Optional.empty(), wall));
        return this;
    }

    public PlantSketch hose(String id, double bore_m, double length_m, double roughness_m) {
        hoses.add(new Hose(id, new Length(bore_m), new Length(length_m), new Wall.Rough(new Length(roughness_m))));
        return this;
    }

    public PlantSketch tool(String id, Tool.Law law) {
        tools.add(new Tool(id, law));
        return this;
    }

    public PlantSketch points(String... ids) {
        Stream.of(ids).forEach(id -> points.add(new Point(id, Optional.empty())));
        return this;
    }

    public PlantSketch run(String id, String from, String to, String tube, double length_m, double k) {
        return run(id, from, to, tube, new Run.Route.Measured(new Length(length_m), k), Optional.empty());
    }

    /** A run that enters its downstream point as a branch. */
    public PlantSketch branch(
            String id, String from, String to, String tube, double length_m, double k, double degrees) {
        Optional<Angle> wye = Optional.of(new Angle(Math.toRadians(degrees)));
        return run(id, from, to, tube, new Run.Route.Measured(new Length(length_m), k), wye);
    }

    public PlantSketch run(String id, String from, String to, String tube, Run.Route route, Optional<Angle> wye) {
        runs.add(new Run(id, from, to, tube, route, List.of(), wye, true));
        return this;
    }

    /** An inlet with the ordinary hose and floor tool, leaking 8e-9 kg/(s Pa) when shut and picking up 60 kg/h. */
    public PlantSketch inlet(String id) {
        return inlet(id, "H", "floor", 8e-9);
    }

    public PlantSketch inlet(String id, String hose, String tool, double leak) {
        return inlet(id, hose, tool, leak, Optional.empty(), 60.0 / 3600);
    }

    /** An inlet with the ordinary hose and floor tool that picks up a dust. */
    public PlantSketch inlet(String id, String dust, double feed_kgPerS) {
        return inlet(id, "H", "floor", 8e-9, Optional.of(dust), feed_kgPerS);
    }

    public PlantSketch inlet(
            String id, String hose, String tool, double leak, Optional<String> dust, double feed_kgPerS) {
        inlets.add(new Inlet(
                id, Optional.empty(), hose, tool, 0.5, new LeakCoefficient(leak), "", dust, new MassFlow(feed_kgPerS)));
        return this;
    }

    /** A dry powder of this particle size and density. */
    public PlantSketch dust(String id, double size_m, double density_kgPerM3) {
        Particle particle = new Particle(new Length(size_m), new Density(density_kgPerM3));
        dusts.add(new Dust(
                id,
                "dust " + id,
                Optional.of(DustClass.DRY_POWDER),
                DustClass.DRY_POWDER.minimum(),
                DustClass.SOURCE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(particle),
                LevelFriction.usual(particle)));
        return this;
    }

    /** A dust as it is. */
    public PlantSketch dust(Dust dust) {
        dusts.add(dust);
        return this;
    }

    /** What is asked of the plant, in place of nothing. */
    public PlantSketch asking(Requirements asked) {
        requirements = Optional.of(asked);
        return this;
    }

    /** A measured run of K 0.5 that rises. */
    public PlantSketch riser(String id, String from, String to, String tube, double length_m, double rise_m) {
        return run(
                id,
                from,
                to,
                tube,
                new Run.Route.Measured(new Length(length_m), 0.5, new Length(rise_m)),
                Optional.empty());
    }

    public PlantSketch bleed(String id, String point, double area_m2) {
        bleeds.add(new Bleed(id, point, new Area(area_m2), 0.6, false));
        return this;
    }

    public PlantSketch holdPressure(String point, double pressure_Pa) {
        held.add(new Held.Pressure(point, new AbsolutePressure(pressure_Pa)));
        return this;
    }

    public PlantSketch supply(String point, double into_kgPerS) {
        held.add(new Held.Supply(point, new MassFlow(into_kgPerS)));
        return this;
    }

    /** Starts a station; what is asked of it afterwards goes to it. */
    public StationSketch station(String id) {
        StationSketch station = new StationSketch(this, id);
        stations.add(station);
        return station;
    }

    /** Asks a margin on computed saltation and choking velocities, and a greatest mass of dust per mass of air. */
    public PlantSketch askOfDust(Optional<Double> factor, Optional<Double> loading) {
        saltationFactor = factor;
        loadingRatio = loading;
        return this;
    }

    private static Limit<Ratio> limit(double value) {
        return new Limit<>(new Ratio(value), Source.commonPractice());
    }

    /** The plant as drawn so far. */
    public Plant plant() {
        return new Plant(
                "sketch",
                "invented for a test",
                new Site(air, Optional.empty(), 0),
                dusts,
                tubes,
                hoses,
                tools,
                points,
                runs,
                inlets,
                bleeds,
                held,
                stations.stream().map(StationSketch::build).toList(),
                new Usage(1, List.of(), List.of()),
                requirements.orElseGet(() -> new Requirements(
                        Optional.empty(),
                        Optional.empty(),
                        new Limit<>(new Ratio(1), Source.commonPractice()),
                        saltationFactor.map(PlantSketch::limit),
                        loadingRatio.map(PlantSketch::limit),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        ReceiverLimits.NONE)),
                List.of(),
                List.of());
    }

    /** The state with these inlets open, all picking up dust. */
    public static State feeding(Plant plant, String... inlets) {
        return open(plant, inlets).withFeeding(Set.of(inlets));
    }

    /** The state with these inlets open, a clean filter, valves shut and every producer running; nobody picks up dust. */
    public static State open(Plant plant, String... inlets) {
        return new State(
                String.join("+", inlets),
                List.of(inlets),
                FilterCondition.NORMAL,
                Set.of(),
                Set.of(),
                Set.copyOf(plant.stations().stream()
                        .flatMap(s -> s.producers().stream())
                        .map(VacuumProducer::id)
                        .toList()));
    }

    /** A station while it is being drawn: 7.8 m² of cloth, no valves, no producer. */
    public static final class StationSketch {
        private final PlantSketch plant;
        private final String id;
        private Receiver receiver = new Receiver(Optional.empty(), Optional.empty());
        private Filter filter = filter(7.8, 50_000);
        private Optional<StatedLoss> safetyFilter = Optional.empty();
        private Optional<ReliefValve> relief = Optional.empty();
        private Optional<VentValve> vent = Optional.empty();
        private Optional<RotaryValve> rotary = Optional.empty();
        private Optional<Container> container = Optional.empty();
        private SafetyFilterRating rating = SafetyFilterRating.UNKNOWN;
        private Optional<StatedLoss> silencer = Optional.empty();
        private final List<VacuumProducer> producers = new ArrayList<>();

        private StationSketch(PlantSketch plant, String id) {
            this.plant = plant;
            this.id = id;
        }

        private static Filter filter(double cloth_m2, double normal_PaSPerM) {
            return new Filter(
                    new Area(cloth_m2),
                    new FilterResistance(normal_PaSPerM / 4),
                    new FilterResistance(normal_PaSPerM),
                    new FilterResistance(normal_PaSPerM * 1.5));
        }

        public StationSketch cloth(double cloth_m2, double normal_PaSPerM) {
            filter = filter(cloth_m2, normal_PaSPerM);
            return this;
        }

        public StationSketch safetyFilter(double loss_Pa, double at_m3PerS) {
            safetyFilter = Optional.of(loss(loss_Pa, at_m3PerS));
            return this;
        }

        public StationSketch relief(double set_inHg, double full_inHg, double rated_m3PerS) {
            relief = Optional.of(new ReliefValve(
                    new PressureDifference(set_inHg * INCH_OF_MERCURY_Pa),
                    new PressureDifference((full_inHg - set_inHg) * INCH_OF_MERCURY_Pa),
                    new FreeAirFlow(rated_m3PerS)));
            return this;
        }

        public StationSketch vent(double diameter_m) {
            vent = Optional.of(new VentValve(new Area(Math.PI / 4 * diameter_m * diameter_m), 0.6));
            return this;
        }

        public StationSketch receiver(Receiver other) {
            receiver = other;
            return this;
        }

        public StationSketch rotaryValve(RotaryValve other) {
            rotary = Optional.of(other);
            return this;
        }

        public StationSketch container(Container other) {
            container = Optional.of(other);
            return this;
        }

        /** Class of the safety filter. */
        public StationSketch filterClass(String name) {
            rating = new SafetyFilterRating(Optional.of(name), Optional.empty());
            return this;
        }

        public StationSketch rotaryValve() {
            rotary = Optional.of(
                    new RotaryValve(new Volume(0.0113), RotationalSpeed.ofRpm(15), 0.3, new Area(0.75e-4), 0.6));
            return this;
        }

        /** Silencer of every producer added from here on. */
        public StationSketch silencer(double loss_Pa, double at_m3PerS) {
            silencer = Optional.of(loss(loss_Pa, at_m3PerS));
            return this;
        }

        /** A lobe pump of a displacement per minute, belt-driven at 1860 rpm. */
        public StationSketch lobe(String producer, double displacement_m3PerS) {
            return producer(producer, lobe(displacement_m3PerS), new Drive.Fixed(RotationalSpeed.ofRpm(1860)));
        }

        /** The same with a drive that holds a vacuum between 700 and 2200 rpm. */
        public StationSketch holdingLobe(String producer, double displacement_m3PerS, double vacuum_inHg) {
            return producer(
                    producer,
                    lobe(displacement_m3PerS),
                    new Drive.Holding(
                            RotationalSpeed.ofRpm(700),
                            RotationalSpeed.ofRpm(2200),
                            new PressureDifference(vacuum_inHg * INCH_OF_MERCURY_Pa)));
        }

        public StationSketch producer(String producer, Machine machine, Drive drive) {
            producers.add(new VacuumProducer(
                    producer,
                    machine,
                    drive,
                    Motor.of(new Power(11_186)),
                    new PressureDifference(14 * INCH_OF_MERCURY_Pa),
                    new TemperatureRise(130),
                    RotationalSpeed.ofRpm(700),
                    RotationalSpeed.ofRpm(2200),
                    silencer,
                    false));
            return this;
        }

        private static Machine lobe(double displacement_m3PerS) {
            return new Machine.LobePump(
                    new Volume(displacement_m3PerS / (1860.0 / 60)), RotationalSpeed.ofRpm(130), 0.9, new Power(300));
        }

        private static StatedLoss loss(double loss_Pa, double at_m3PerS) {
            return new StatedLoss(new PressureDifference(loss_Pa), new FreeAirFlow(at_m3PerS), StatedLoss.State.SITE);
        }

        /** Back to the plant. */
        public PlantSketch and() {
            return plant;
        }

        private Station build() {
            return new Station(
                    id,
                    Optional.empty(),
                    receiver,
                    filter,
                    safetyFilter,
                    rating,
                    relief,
                    vent,
                    rotary,
                    container,
                    producers);
        }
    }
}
