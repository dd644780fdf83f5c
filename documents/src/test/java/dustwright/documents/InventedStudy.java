package dustwright.documents;

import dustwright.engine.OneUserVelocity;
import dustwright.engine.OperatingChart;
import dustwright.engine.OperatingChart.ChartPoint;
import dustwright.engine.PressureProfile;
import dustwright.engine.StateAnswer;
import dustwright.engine.StationCurves;
import dustwright.engine.Study;
import dustwright.engine.air.Air;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.electrical.Motor;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.Convergence;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.NodeResult;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Point;
import dustwright.engine.plant.ReasonedOverride;
import dustwright.engine.plant.ReceiverLimits;
import dustwright.engine.plant.Requirements;
import dustwright.engine.plant.Site;
import dustwright.engine.plant.Station;
import dustwright.engine.plant.Usage;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.SafetyFilterRating;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.*;
import dustwright.engine.receiver.Filter;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.sheet.Entry;
import dustwright.engine.sheet.Sheet;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import dustwright.engine.tubing.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Studies with invented figures, to see and test how they are written. Nothing in them is computed. */
public final class InventedStudy {
    private static final int PER_HEADER = 10;
    private static final double AMBIENT_Pa = 101_325;

    private final int count;
    private final boolean placed;
    private final String prefix;
    private final String name;
    private final List<Point> points = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();
    private final List<Inlet> inlets = new ArrayList<>();

    private InventedStudy(int count, boolean placed, String prefix, String name) {
        this.count = count;
        this.placed = placed;
        this.prefix = prefix;
        this.name = name;
    }

    public static Study of(int inlets) {
        return new InventedStudy(inlets, true, "", "Invented ingredients room").study();
    }

    public static Study withoutPlaces(int inlets) {
        return new InventedStudy(inlets, false, "", "Invented survey").study();
    }

    public static Study named(int inlets, String prefix, String name) {
        return new InventedStudy(inlets, true, prefix, name).study();
    }

    private Study study() {
        Plant plant = plant();
        List<String> far = List.of(inlets.get(0).id());
        List<String> three = List.of(
                inlets.get(0).id(),
                inlets.get(count / 3).id(),
                inlets.get(count - 2).id());
        List<StateAnswer> states = List.of(answer(plant, far, 0.62), answer(plant, three, 1.0), unsolved());
        return new Study(plant, states, oneUser(), List.of(chart(states.get(1))), List.of(profile()), List.of(sheet()));
    }

    private Plant plant() {
        int headers = (count + PER_HEADER - 1) / PER_HEADER;
        for (int i = 0; i < count; i++) {
            addInlet(i);
        }
        for (int h = 0; h < headers; h++) {
            addHeader(h, Math.min(PER_HEADER, count - h * PER_HEADER), headers);
        }
        Source memory = Source.commonPractice();
        Requirements requirements = new Requirements(
                Optional.of(new Limit<>(new FreeAirFlow(0.0425), Source.entered())),
                Optional.of(new Limit<>(new PressureDifference(10_000), memory)),
                new Limit<>(new Ratio(1), Source.entered()),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Limit<>(new Velocity(40), memory)),
                Optional.empty(),
                Optional.empty(),
                ReceiverLimits.NONE);
        return new Plant(
                name,
                "Invented demo plant.",
                new Site(air(), Optional.of(new Length(120)), 0.5),
                List.of(new Dust(
                        "flour",
                        "Wheat flour",
                        Optional.of(DustClass.DRY_POWDER),
                        DustClass.DRY_POWDER.minimum(),
                        DustClass.SOURCE,
                        Optional.of(new Density(550)),
                        Optional.empty(),
                        Optional.empty(),
                        LevelFriction.YANG)),
                List.of(
                        new Tube(
                                "T2",
                                new Length(0.0475),
                                Optional.of(new Length(0.0508)),
                                new Wall.Rough(new Length(4.5e-5))),
                        new Tube(
                                "T3",
                                new Length(0.0729),
                                Optional.of(new Length(0.0762)),
                                new Wall.Rough(new Length(4.5e-5)))),
                List.of(new Hose("H15", new Length(0.0381), new Length(7.62), new Wall.Rough(new Length(3e-4)))),
                List.of(new Tool("floor", new Tool.Law.VelocityHeads(6))),
                points,
                runs,
                inlets,
                List.of(),
                List.of(),
                List.of(station()),
                new Usage(3, List.of(), List.of()),
                requirements,
                List.of(new ReasonedOverride(
                        new Place(Place.Kind.RUN, runs.get(0).id()), "length 31 m", "as built", "R.K.")),
                List.of(
                        new Assumption(new Place(Place.Kind.TOOL, "floor"), "tool K 6", memory),
                        new Assumption(
                                new Place(Place.Kind.PLANT, ""),
                                "air column's weight left out",
                                Source.ownReading("tens of pascals that nearly cancel"))));
    }

    private static Air air() {
        return new Air(new AbsolutePressure(AMBIENT_Pa), new Temperature(293.15), 288.2, 1.81e-5);
    }

    private String inletId(int i) {
        return prefix + (char) ('A' + i / PER_HEADER) + (i % PER_HEADER + 1);
    }

    private String junction(int h, int i) {
        return prefix + "J" + (char) ('A' + h) + (i + 1);
    }

    private static double x(int i) {
        return 4 + 9 * i;
    }

    private static double y(int h) {
        return 6 + 10 * h;
    }

    private Position inletPlace(int i) {
        int h = i / PER_HEADER;
        int k = i % PER_HEADER;
        return new Position(x(k), y(h) + (k % 2 == 0 ? 3 : -3), k % 5 == 4 ? 5 : 1);
    }

    private void addInlet(int i) {
        Position at = inletPlace(i);
        inlets.add(new Inlet(
                inletId(i),
                placed ? Optional.of(at) : Optional.empty(),
                "H15",
                "floor",
                0.5,
                new LeakCoefficient(8e-9),
                "",
                Optional.of("flour"),
                new MassFlow(0.0167)));
        String to = junction(i / PER_HEADER, i % PER_HEADER);
        double level = 6;
        Run.Route route = placed
                ? new Run.Route.Drawn(
                        List.of(
                                at,
                                new Position(at.x_m(), at.y_m(), level),
                                new Position(at.x_m(), y(i / PER_HEADER), level)),
                        new Length(0.3))
                : new Run.Route.Measured(new Length(7), 1.3);
        runs.add(new Run(
                "D" + inletId(i), inletId(i), to, "T2", route, List.of(), Optional.of(new Angle(Math.PI / 4)), true));
    }

    private void addHeader(int h, int length, int headers) {
        double middle = y((headers - 1) / 2);
        for (int i = 0; i < length; i++) {
            Position at = new Position(x(i), y(h), 6);
            points.add(new Point(junction(h, i), placed ? Optional.of(at) : Optional.empty()));
            boolean last = i == length - 1;
            double pipeline = x(PER_HEADER) + 1.2 * h;
            List<Position> corners = last
                    ? List.of(
                            at,
                            new Position(pipeline, y(h), 6),
                            new Position(pipeline, middle, 6),
                            new Position(x(PER_HEADER) + 16, middle, 6),
                            new Position(x(PER_HEADER) + 16, middle, 0))
                    : List.of(at, new Position(x(i + 1), y(h), 6));
            Run.Route route =
                    placed ? new Run.Route.Drawn(corners, new Length(0.3)) : new Run.Route.Measured(new Length(9), 0.4);
            runs.add(new Run(
                    prefix + "M" + (char) ('A' + h) + (i + 1),
                    junction(h, i),
                    last ? "REC" : junction(h, i + 1),
                    "T3",
                    route,
                    List.of(),
                    Optional.empty(),
                    true));
        }
    }

    private Station station() {
        int headers = (count + PER_HEADER - 1) / PER_HEADER;
        Position at = new Position(x(PER_HEADER) + 16, y((headers - 1) / 2), 0);
        VacuumProducer lobe = new VacuumProducer(
                "P1",
                new Machine.LobePump(new Volume(0.0076), new RotationalSpeed(130 / 60.0), 0.9, new Power(300)),
                new Drive.Fixed(new RotationalSpeed(31)),
                Motor.of(new Power(11_186)),
                new PressureDifference(47_000),
                new TemperatureRise(130),
                new RotationalSpeed(12),
                new RotationalSpeed(37),
                Optional.empty(),
                false);
        VacuumProducer standby = new VacuumProducer(
                "P2",
                new Machine.CurveMachine(
                        "side channel",
                        new RotationalSpeed(59),
                        new Density(1.2),
                        true,
                        List.of(
                                new Machine.CurvePoint(
                                        new ActualVolumeFlow(0.1), new PressureDifference(10_000), new Power(4000)),
                                new Machine.CurvePoint(
                                        new ActualVolumeFlow(0.05), new PressureDifference(15_000), new Power(5000)))),
                new Drive.Fixed(new RotationalSpeed(59)),
                Motor.of(new Power(7_500)),
                new PressureDifference(27_000),
                new TemperatureRise(100),
                new RotationalSpeed(50),
                new RotationalSpeed(60),
                Optional.empty(),
                true);
        return new Station(
                "REC",
                placed ? Optional.of(at) : Optional.empty(),
                new Receiver(Optional.of(new Length(1.2)), Optional.of(new Area(0.8))),
                new Filter(
                        new Area(8.8),
                        new FilterResistance(10_000),
                        new FilterResistance(40_000),
                        new FilterResistance(60_000)),
                Optional.empty(),
                SafetyFilterRating.UNKNOWN,
                Optional.of(new ReliefValve(
                        new PressureDifference(28_800), new PressureDifference(8_500), new FreeAirFlow(0.236))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(lobe, standby));
    }

    /** Velocity falls along each header away from the receiver; invented. */
    private double velocity_mPerS(Run run, double share) {
        int at = runs.indexOf(run);
        int k = (at < count ? at : at - count) % PER_HEADER;
        return at < count ? 34 - k * 0.7 : (11.5 + 1.9 * k) * (0.7 + 0.3 * share);
    }

    private static Derivation derivation(double velocity_mPerS) {
        return new Derivation(
                List.of(
                        new Step(
                                "AIR-1",
                                "rho = p/(R T)",
                                List.of(
                                        new Term(
                                                "p",
                                                "static pressure at the upstream end",
                                                new AbsolutePressure(77_600)),
                                        new Term("T", "temperature of the air", new Temperature(293.15))),
                                new Term("rho", "density", new Density(0.9218)),
                                Source.published("ideal gas law")),
                        new Step(
                                "TUB-1",
                                "v = w/(rho A)",
                                List.of(
                                        new Term("w", "mass flow", new MassFlow(0.0687)),
                                        new Term("rho", "density", new Density(0.9218)),
                                        new Term("A", "cross-section", new Area(0.004174))),
                                new Term("v", "velocity at the slow end", new Velocity(velocity_mPerS)),
                                Source.published("continuity"))),
                DustClass.SOURCE);
    }

    private StateAnswer answer(Plant plant, List<String> open, double share) {
        State state = new State(
                (open.size() == 1 ? open.get(0) + " alone" : String.join("+", open)) + ", filter normal",
                open,
                FilterCondition.NORMAL,
                Set.of(),
                Set.of(),
                Set.of("P1"));
        List<Finding> findings = new ArrayList<>();
        List<LegResult> legs = new ArrayList<>();
        double least = DustClass.DRY_POWDER.minimum().metresPerSecond();
        for (Run run : runs) {
            boolean carries = carries(run, open);
            double velocity = carries ? velocity_mPerS(run, share) : 0.4;
            legs.add(leg(plant, run, velocity, carries));
            if (carries) {
                Place place = new Place(Place.Kind.RUN, run.id());
                findings.add(Finding.of(
                        FindingCode.TRANSPORT_VELOCITY,
                        place,
                        state.name(),
                        Side.AT_LEAST,
                        new Velocity(velocity),
                        new Velocity(least),
                        derivation(velocity)));
                findings.add(Finding.of(
                        FindingCode.WEAR_VELOCITY,
                        place,
                        state.name(),
                        Side.AT_MOST,
                        new Velocity(velocity * 1.1),
                        new Velocity(36.5),
                        derivation(velocity * 1.1)));
            }
        }
        for (String inlet : open) {
            findings.add(Finding.of(
                    FindingCode.TOOL_FLOW,
                    new Place(Place.Kind.INLET, inlet),
                    state.name(),
                    Side.AT_LEAST,
                    new FreeAirFlow(0.0424 / share),
                    new FreeAirFlow(0.0425),
                    derivation(22)));
        }
        findings.add(Finding.of(
                FindingCode.PRODUCER_POWER,
                new Place(Place.Kind.PRODUCER, "P1"),
                state.name(),
                Side.AT_MOST,
                new Power(7_900),
                new Power(11_186),
                derivation(20)));
        return new StateAnswer(state, new Outcome.Solved<>(duty(plant, state, legs, open, share)), findings);
    }

    private boolean carries(Run run, List<String> open) {
        int at = runs.indexOf(run);
        if (at < count) {
            return open.contains(run.from());
        }
        int h = (at - count) / PER_HEADER;
        int k = (at - count) % PER_HEADER;
        return open.stream().anyMatch(id -> {
            int i = inlets.stream().map(Inlet::id).toList().indexOf(id);
            return i / PER_HEADER == h && i % PER_HEADER <= k;
        });
    }

    private static LegResult leg(Plant plant, Run run, double velocity_mPerS, boolean carries) {
        return new LegResult(
                run.id(),
                LegResult.Kind.RUN,
                run.from(),
                run.to(),
                plant.tube(run.tube()).bore(),
                new MassFlow(carries ? 0.0687 : 0.0003),
                new AbsolutePressure(78_300),
                new AbsolutePressure(77_600),
                new Velocity(velocity_mPerS),
                new Velocity(velocity_mPerS * 1.01),
                66_300,
                0.0213,
                123.4,
                0.35,
                new PressureDifference(12),
                new MassFlow(carries ? 0.0167 : 0),
                List.of(),
                false);
    }

    private DutyPoint duty(Plant plant, State state, List<LegResult> legs, List<String> open, double share) {
        List<NodeResult> nodes = plant.points().stream()
                .map(p -> new NodeResult(p.id(), new AbsolutePressure(77_900), new PressureDifference(23_425)))
                .toList();
        List<InletResult> results = inlets.stream()
                .map(i -> new InletResult(
                        i.id(),
                        open.contains(i.id()),
                        new MassFlow(open.contains(i.id()) ? 0.0511 / share : 0.00019),
                        new PressureDifference(16_600),
                        false))
                .toList();
        ProducerResult p1 = new ProducerResult(
                "P1",
                true,
                false,
                false,
                new RotationalSpeed(31),
                new MassFlow(0.187),
                new ActualVolumeFlow(0.21),
                new AbsolutePressure(74_200),
                new PressureDifference(27_100),
                new PressureDifference(29_000),
                new Power(7_900),
                new TemperatureRise(48));
        StationResult station = new StationResult(
                "REC",
                new AbsolutePressure(76_100),
                new MassFlow(0.187),
                new ActualVolumeFlow(0.205),
                new PressureDifference(900),
                new PressureDifference(0),
                new AbsolutePressure(74_200),
                new MassFlow(0),
                new MassFlow(0),
                new MassFlow(0),
                List.of(p1));
        return new DutyPoint(
                state,
                nodes,
                legs,
                results,
                List.of(),
                List.of(station),
                new Convergence("Newton on a tree", 6, new MassFlow(3e-16), 4e-15));
    }

    private StateAnswer unsolved() {
        State state = new State(
                "all closed, filter dirty", List.of(), FilterCondition.DIRTY, Set.of(), Set.of(), Set.of("P1"));
        return new StateAnswer(
                state,
                new Outcome.NotSolved<>("The hose at " + inletId(2) + " is choked; 60 steps were tried."),
                List.of());
    }

    private List<OneUserVelocity> oneUser() {
        Velocity least = DustClass.DRY_POWDER.minimum();
        return runs.stream()
                .map(run -> {
                    double velocity = velocity_mPerS(run, 0.6) * 0.95;
                    return new OneUserVelocity(
                            run.id(),
                            inlets.get(0).id(),
                            inlets.get(0).id() + " alone, filter normal",
                            new Velocity(velocity),
                            least,
                            velocity / least.metresPerSecond() - 1);
                })
                .toList();
    }

    private static StationCurves chart(StateAnswer answer) {
        List<ChartPoint> system = new ArrayList<>();
        List<ChartPoint> producer = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            double vacuum = 2000.0 * i;
            system.add(
                    new ChartPoint(new FreeAirFlow(0.0015 * Math.sqrt(vacuum / 2.6)), new PressureDifference(vacuum)));
            producer.add(new ChartPoint(
                    new FreeAirFlow(0.215 * (1 - vacuum / 101_325) - 0.0001 * Math.sqrt(vacuum)),
                    new PressureDifference(vacuum)));
        }
        return new StationCurves(
                answer.state().open().size(),
                new OperatingChart(
                        "REC",
                        answer.state().name(),
                        system,
                        producer,
                        new ChartPoint(new FreeAirFlow(0.153), new PressureDifference(27_100))));
    }

    private PressureProfile profile() {
        List<PressureProfile.Stretch> stretches = new ArrayList<>();
        stretches.add(stretch("tool and hose", 7.62, 0, 16_000, 49, -1));
        stretches.add(stretch("D" + inletId(0), 5, 16_000, 17_200, 33, 16.8));
        double vacuum = 17_200;
        for (int i = 0; i < Math.min(count, PER_HEADER); i++) {
            stretches.add(stretch(
                    prefix + "MA" + (i + 1), i == PER_HEADER - 1 ? 30 : 9, vacuum, vacuum + 700, 11 + 1.4 * i, 15.24));
            vacuum += 700;
        }
        stretches.add(stretch("filter", 0, vacuum, vacuum + 900, -1, -1));
        stretches.add(stretch("safety filter", 0, vacuum + 900, vacuum + 1500, -1, -1));
        return new PressureProfile(inlets.get(0).id(), inlets.get(0).id(), stretches);
    }

    private static PressureProfile.Stretch stretch(
            String piece, double length_m, double from_Pa, double to_Pa, double velocity_mPerS, double least_mPerS) {
        return new PressureProfile.Stretch(
                piece,
                new Length(length_m),
                new PressureDifference(from_Pa),
                new PressureDifference(to_Pa),
                velocity_mPerS < 0 ? Optional.empty() : Optional.of(new Velocity(velocity_mPerS)),
                velocity_mPerS < 0 ? Optional.empty() : Optional.of(new Velocity(velocity_mPerS * 1.02)),
                least_mPerS < 0 ? Optional.empty() : Optional.of(new Velocity(least_mPerS)),
                Optional.empty());
    }

    /** One figure, one answer in words, one that is not known. */
    private static Sheet sheet() {
        Step step = new Step(
                "BAG-4",
                "m = min(V ρ_B, SWL)",
                List.of(new Term("V", "volume to the level probe", new Volume(0.9))),
                new Term("m", "dust in one fill", new Mass(495)),
                Source.published("an invented standard"));
        return new Sheet(
                "container/REC",
                "Bulk bag",
                new Place(Place.Kind.CONTAINER, "REC"),
                List.of(
                        Entry.known("fill-flour/REC", "One fill of flour", new Mass(495), List.of(step)),
                        Entry.words(
                                "loops/REC", "What holds the bag", "The floor.", List.of(), Source.commonPractice()),
                        Entry.unknown(
                                "load/REC", "Safe working load", "Enter \"safe working load\" of the container.")),
                List.of());
    }
}
