package dustwright.engine.coverage;

import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Source;
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
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Inlet;
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
