package dustwright.engine.coverage;

import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Source;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.network.State;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Requirements;
import dustwright.engine.plant.Station;
import dustwright.engine.plant.Usage;
import dustwright.engine.plant.Zone;
import dustwright.engine.producer.Coupling;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.LeakCoefficient;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Wall;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** Gives a drawn plant dusts, zones and limits from a seed, so that there is something to prove. */
public final class AskedPlants {
    private AskedPlants() {}

    static Plant asked(Plant plant, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int dusts = random.nextInt(1, 3);
        boolean someClean = random.nextInt(4) == 0;
        int zones = random.nextInt(3);
        List<Inlet> inlets = new ArrayList<>();
        for (Inlet inlet : plant.inlets()) {
            boolean clean = someClean && random.nextInt(3) == 0;
            inlets.add(new Inlet(
                    inlet.id(),
                    inlet.at(),
                    inlet.hose(),
                    inlet.tool(),
                    inlet.valveK(),
                    inlet.leak(),
                    zones == 0 ? "" : "zone" + random.nextInt(zones),
                    clean ? Optional.empty() : Optional.of("dust" + random.nextInt(dusts)),
                    inlet.feed()));
        }
        List<Zone> limits = new ArrayList<>();
        for (int n = 0; n < zones; n++) {
            limits.add(new Zone("zone" + n, "Zone " + n, Optional.of(random.nextInt(1, 4))));
        }
        return with(
                plant, inlets, List.of(dust("dust0", DustClass.DRY_POWDER), dust("dust1", DustClass.HEAVY)), limits);
    }

    /** A main with drops at even distances, joining by wyes, and a relief valve that opens as a second user comes: nearly all sets are alike. */
    static Plant evenMain(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        PlantSketch sketch = new PlantSketch()
                .tube("main", random.nextDouble(0.06, 0.1), 4.5e-5)
                .tube("wide", 0.1, 4.5e-5)
                .tube("drop", random.nextDouble(0.04, 0.06), 4.5e-5)
                .tool("opening", new Tool.Law.Opening(new Area(4e-4), 0.62));
        int drops = random.nextInt(10, 18);
        int narrow = random.nextInt(drops);
        String below = "REC";
        for (int n = 1; n <= drops; n++) {
            String tube = n > drops - narrow ? "main" : "wide";
            sketch.points("T" + n).run("M" + n, "T" + n, below, tube, random.nextDouble(2, 6), 0.1);
            sketch.inlet("A" + n);
            sketch.branch("D" + n, "A" + n, "T" + n, "drop", random.nextInt(2, 5), 0.5, random.nextBoolean() ? 30 : 45);
            below = "T" + n;
        }
        double set_inHg = random.nextDouble(4, 10);
        sketch.station("REC")
                .relief(set_inHg, set_inHg + random.nextDouble(0.5, 3), 0.15)
                .lobe("P", random.nextDouble(0.05, 0.15));
        return sketch.plant();
    }

    /** The same plant with three hoses, tools by loss, opening and curve, and valves that leak not at all, a little or much. */
    static Plant mixed(Plant plant, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Hose> hoses = List.of(
                new Hose("H38", new Length(0.038), new Length(7.5), new Wall.Rough(new Length(3e-4))),
                new Hose("H50", new Length(0.05), new Length(10), new Wall.Rough(new Length(3e-4))),
                new Hose("H32", new Length(0.032), new Length(15), new Wall.Rough(new Length(3e-4))));
        List<Tool> tools = List.of(
                new Tool("mouth", new Tool.Law.VelocityHeads(6)),
                new Tool("slot", new Tool.Law.Opening(new Area(4e-4), 0.62)));
        double[] leaks = {0, 3e-9, 8e-9, 2e-7};
        List<Inlet> inlets = plant.inlets().stream()
                .map(i -> new Inlet(
                        i.id(),
                        i.at(),
                        hoses.get(Math.max(0, random.nextInt(5) - 2)).id(),
                        tools.get(random.nextInt(4) / 3).id(),
                        i.valveK(),
                        new LeakCoefficient(leaks[random.nextInt(4)]),
                        i.zone(),
                        i.dust(),
                        i.feed()))
                .toList();
        return new Plant(
                plant.name(),
                plant.note(),
                plant.site(),
                plant.dusts(),
                plant.tubes(),
                hoses,
                tools,
                plant.points(),
                plant.runs(),
                inlets,
                plant.bleeds(),
                plant.held(),
                plant.stations(),
                plant.usage(),
                plant.requirements(),
                List.of(),
                List.of());
    }

    /** The same plant with machines known by curves in place of its producers, as large as they; some hold a vacuum. */
    static Plant byCurves(Plant plant, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Plant changed = plant;
        for (Station station : plant.stations()) {
            List<VacuumProducer> producers = new ArrayList<>();
            for (VacuumProducer producer : station.producers()) {
                double flow_m3PerS =
                        ((Machine.LobePump) producer.machine()).displacement().cubicMetres() * 31;
                RotationalSpeed speed = RotationalSpeed.ofRpm(2900);
                Drive drive = random.nextInt(3) == 0
                        ? new Drive.Holding(
                                RotationalSpeed.ofRpm(2000),
                                speed,
                                new PressureDifference(random.nextDouble(5_000, 15_000)))
                        : new Drive.Fixed(speed);
                Machine curve = curve(random, flow_m3PerS * random.nextDouble(0.6, 1.4));
                producers.add(new VacuumProducer(
                        producer.id(),
                        curve,
                        drive,
                        ofSpeed(producer.motor(), speed),
                        producer.deepestVacuum(),
                        producer.greatestRise(),
                        RotationalSpeed.ofRpm(2000),
                        speed,
                        producer.silencer(),
                        producer.standby(),
                        Optional.empty(),
                        Optional.of(new Coupling.Direct()),
                        Optional.empty(),
                        VacuumProducer.Sound.UNKNOWN));
            }
            changed = changed.withStation(station.withProducers(producers, station.relief()));
        }
        return changed;
    }

    private static Motor ofSpeed(Motor motor, RotationalSpeed speed) {
        return new Motor(
                motor.nameplate(),
                motor.serviceFactor(),
                motor.poles(),
                motor.starting(),
                motor.nameplateCurrent(),
                motor.efficiency(),
                motor.powerFactor(),
                Optional.of(new Motor.NameplateSpeed(speed, Optional.empty())),
                motor.slip(),
                motor.driveInput(),
                motor.atSite());
    }

    private static Machine curve(SplittableRandom random, double flow_m3PerS) {
        boolean dynamic = random.nextInt(3) > 0;
        double deepest_Pa = random.nextDouble(6_000, 25_000);
        double power_W = flow_m3PerS * deepest_Pa;
        List<Machine.CurvePoint> points = new ArrayList<>();
        for (int n = 0; n < 4; n++) {
            points.add(new Machine.CurvePoint(
                    new ActualVolumeFlow(flow_m3PerS * (1 - 0.03 * n - 0.04 * n * n)),
                    new PressureDifference(deepest_Pa * (0.4 + 0.2 * n)),
                    new Power(power_W * (1.2 + 0.2 * n))));
        }
        return new Machine.CurveMachine(
                dynamic ? "side channel" : "claw", RotationalSpeed.ofRpm(2900), new Density(1.2), dynamic, points);
    }

    /** Limits for air, vacuum, velocity, wear and cloth, and those that dust asks for besides. */
    static Plant askedOfDust(Plant plant) {
        Requirements requirements = new Requirements(
                Optional.of(new Limit<>(new FreeAirFlow(0.03), Source.entered())),
                Optional.of(new Limit<>(new PressureDifference(8_000), Source.entered())),
                new Limit<>(new Ratio(1), Source.entered()),
                Optional.of(new Limit<>(new Ratio(1.2), Source.entered())),
                Optional.of(new Limit<>(new Ratio(0.5), Source.entered())),
                Optional.of(new Limit<>(new Velocity(35), Source.entered())),
                Optional.of(new Limit<>(new Velocity(0.03), Source.entered())),
                Optional.empty());
        return with(plant, plant.inlets(), plant.dusts(), List.of(), requirements);
    }

    public static Dust dust(String id, DustClass of) {
        return new Dust(
                id,
                of.words(),
                Optional.of(of),
                of.minimum(),
                DustClass.SOURCE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LevelFriction.YANG);
    }

    public static Plant with(Plant plant, List<Inlet> inlets, List<Dust> dusts, List<Zone> zones) {
        Requirements requirements = new Requirements(
                Optional.of(new Limit<>(new FreeAirFlow(0.03), Source.entered())),
                Optional.of(new Limit<>(new PressureDifference(8_000), Source.entered())),
                new Limit<>(new Ratio(1), Source.entered()),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Limit<>(new Velocity(35), Source.entered())),
                Optional.of(new Limit<>(new Velocity(0.03), Source.entered())),
                Optional.empty());
        return with(plant, inlets, dusts, zones, requirements);
    }

    private static Plant with(
            Plant plant, List<Inlet> inlets, List<Dust> dusts, List<Zone> zones, Requirements requirements) {
        return new Plant(
                plant.name(),
                plant.note(),
                plant.site(),
                dusts,
                plant.tubes(),
                plant.hoses(),
                plant.tools(),
                plant.points(),
                plant.runs(),
                inlets,
                plant.bleeds(),
                plant.held(),
                plant.stations(),
                new Usage(2, zones, List.of()),
                requirements,
                List.of(),
                List.of());
    }

    /** Every producer runs, bleed valves as drawn by the seed. */
    public static State condition(Plant plant, FilterCondition filter, boolean bleeds) {
        Set<String> running = plant.stations().stream()
                .map(Station::producers)
                .flatMap(List::stream)
                .map(VacuumProducer::id)
                .collect(Collectors.toSet());
        Set<String> open = new HashSet<>();
        if (bleeds) {
            plant.bleeds().forEach(b -> open.add(b.id()));
        }
        return new State("any", List.of(), filter, open, Set.of(), running);
    }
}
