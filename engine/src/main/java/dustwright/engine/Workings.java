package dustwright.engine;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.GasConstant;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Viscosity;
import dustwright.engine.tubing.Fitting;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.RunGeometry;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import dustwright.engine.tubing.Wall;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The calculation sheet of one piece, line by line, from a solved state: every number in it can be checked by hand. */
final class Workings {
    static final Source GAS_LAW = Source.published("ideal gas law");
    static final Source ISOTHERMAL =
            Source.published("isothermal compressible flow in a tube: Crane TP-410 (2009); Perry; Rennels and"
                    + " Hudson, Pipe Flow (2012)");
    private static final Source COLEBROOK = Source.published("Colebrook (1939)");
    private static final Source RENNELS =
            Source.published("Rennels and Hudson, Pipe Flow (2012): bends, their wall friction included");
    private static final Source IN_SERIES =
            Source.published("losses on one bore add; k0 of bends by TUB-13, the others from the plant file");
    private static final String SOLUTION = ", by the network's solution";
    private static final double SAME_ANGLE_rad = 1e-9;
    private static final double LAMINAR_TO = 2000;
    private static final double TURBULENT_FROM = 4000;
    static final Source CONTINUITY = Source.published("continuity");

    private final Plant plant;
    private final Air air;
    private final List<Step> steps = new ArrayList<>();

    Workings(Plant plant) {
        this.plant = plant;
        this.air = plant.site().air();
    }

    List<Step> steps() {
        return steps;
    }

    void addAll(List<Step> more) {
        steps.addAll(more);
    }

    void add(String equation, String formula, List<Term> inputs, Term result, Source source) {
        steps.add(new Step(equation, formula, inputs, result, source));
    }

    /** What enters a run at its upstream end, so that its mass flow can be added up by hand. */
    void inflow(DutyPoint duty, LegResult leg) {
        boolean forward = leg.flow().kgPerSecond() >= 0;
        String node = forward ? leg.from() : leg.to();
        if (fedFromOutside(node)) {
            return;
        }
        List<Term> streams = new ArrayList<>();
        for (LegResult other : duty.legs()) {
            if (other.kind() == leg.kind() && other.id().equals(leg.id())) {
                continue;
            }
            double w = other.flow().kgPerSecond();
            if (other.to().equals(node) || other.from().equals(node)) {
                double into = other.to().equals(node) ? w : -w;
                String meaning =
                        into >= 0 ? "air from " + other.id() : "air that leaves into " + other.id() + ", below zero";
                streams.add(new Term("w(" + other.id() + ")", meaning, new MassFlow(into)));
            }
        }
        for (InletResult inlet : duty.inlets()) {
            if (inlet.id().equals(node) && !inlet.open()) {
                streams.add(new Term("w(leak)", "leak of closed inlet " + inlet.id(), inlet.flow()));
            }
        }
        duty.bleeds().stream()
                .filter(b -> b.open() && b.point().equals(node))
                .forEach(b -> streams.add(new Term("w(" + b.id() + ")", "air of far-end bleed " + b.id(), b.flow())));
        if (!streams.isEmpty()) {
            add(
                    "NET-20",
                    "w = Σ w into the point",
                    streams,
                    new Term("w", "mass flow in " + leg.id(), flow(leg)),
                    Source.published("conservation of mass"));
        }
    }

    /** Still air, a station's receiver, a held point: what enters there is no sum of pieces. */
    private boolean fedFromOutside(String node) {
        return node.equals(Run.STILL_AIR)
                || plant.stations().stream().anyMatch(s -> s.id().equals(node))
                || plant.held().stream().anyMatch(h -> h.point().equals(node));
    }

    /** Geometry, Reynolds number, friction factor and the isothermal law of a leg. */
    void legLaw(DutyPoint duty, LegResult leg) {
        Wall wall = leg.kind() == LegResult.Kind.RUN ? run(leg) : hose(leg);
        friction(leg, wall);
        if (leg.junctionLoss().pascals() != 0) {
            new JunctionWorkings(plant, this, duty, leg).charge();
        }
        boolean dusty = leg.solidsDrop().pascals() > 0;
        if (dusty) {
            new SolidsWorkings(plant, this).drop(leg);
        }
        boolean forward = leg.flow().kgPerSecond() >= 0;
        AbsolutePressure up = forward ? leg.pressureFrom() : leg.pressureTo();
        AbsolutePressure down = forward ? leg.pressureTo() : leg.pressureFrom();
        List<Term> terms = new ArrayList<>(List.of(
                new Term("p1", "static pressure at " + upstream(leg) + SOLUTION, up),
                new Term("w", "mass flow" + SOLUTION, flow(leg)),
                new Term("A", "cross-section", leg.bore().circle()),
                new Term("R", "gas constant of the moist air", new GasConstant(air.gasConstant_JPerKgK())),
                new Term("T", "air temperature", air.temperature()),
                new Term("f", "friction factor", new Ratio(leg.frictionFactor())),
                new Term("L/D", "length over bore, bends' share included", new Ratio(leg.frictionLength())),
                new Term("ΣK", "loss coefficients on this bore", new Ratio(leg.k()))));
        if (leg.junctionLoss().pascals() != 0) {
            terms.add(new Term("Δpj", "loss at the junction, between p2 and the point it enters", leg.junctionLoss()));
        }
        if (dusty) {
            terms.add(new Term("Δps", "what all dust adds, at the mean pressure", leg.solidsDrop()));
        }
        add(
                dusty ? "NET-12" : "TUB-5",
                "p1² − p2² = (w/A)² R T [ f L/D + ΣK + 2 ln(p1/p2) ]" + (dusty ? " + (p1 + p2) Δps" : ""),
                terms,
                new Term("p2", "static pressure at the end of " + leg.id(), down),
                ISOTHERMAL);
        if (!leg.choked()) {
            arrives(duty, leg, down);
        }
    }

    /** What the law gives at the end of a leg is the pressure of the point there: flow and pressures are the solution. */
    private void arrives(DutyPoint duty, LegResult leg, AbsolutePressure end) {
        String point = FlowPath.downstreamEnd(leg);
        Term arrived = new Term(
                "p_j",
                "static pressure at " + point + SOLUTION + ": so flow and pressures fit",
                duty.pressureAt(point));
        List<Term> terms = new ArrayList<>(List.of(new Term("p2", "static pressure at the end of " + leg.id(), end)));
        boolean junction = leg.junctionLoss().pascals() != 0;
        if (junction) {
            terms.add(new Term("Δpj", "loss at the junction", leg.junctionLoss()));
        }
        add("NET-23", junction ? "p_j² = p2² − 2 p_j Δpj" : "p_j = p2", terms, arrived, ISOTHERMAL);
    }

    private static String upstream(LegResult leg) {
        String node = leg.flow().kgPerSecond() >= 0 ? leg.from() : leg.to();
        return node.equals(Run.STILL_AIR) ? "rest, in still air" : node;
    }

    /** How a run's L/D and ΣK come about: straight tube, bends, fittings. */
    private Wall run(LegResult leg) {
        Run run = plant.run(leg.id());
        Tube tube = plant.tube(run.tube());
        RunGeometry geometry = RunGeometry.of(run, tube);
        Length radius = geometry.bends().isEmpty()
                ? new Length(0)
                : geometry.bends().get(0).radius();
        if (!geometry.bends().isEmpty()) {
            List<Term> terms = new ArrayList<>();
            terms.add(new Term("L", "length from corner to corner, the whole run", geometry.developed()));
            terms.add(new Term("r", "bend radius", radius));
            geometry.bends().forEach(b -> terms.add(new Term("α", "bend", new Angle(b.angle_rad()))));
            add(
                    "TUB-14",
                    "L_straight = L − Σ 2 r tan(α/2)",
                    terms,
                    new Term("L_straight", "straight tube", geometry.straight()),
                    Source.published("geometry"));
        }
        List<Term> terms = new ArrayList<>(List.of(
                new Term("L_straight", "straight tube", geometry.straight()), new Term("D", "bore", tube.bore())));
        List<RunGeometry.Bend> kinds = kinds(geometry.bends());
        kinds.forEach(kind -> bend(kind, number(kinds, kind), tube.bore()));
        for (RunGeometry.Bend bend : geometry.bends()) {
            terms.add(new Term(
                    "k1" + number(kinds, bend),
                    "bend, share that goes with f",
                    new Ratio(bend.loss().perFriction())));
        }
        add(
                "TUB-13",
                kinds.isEmpty() ? "L/D = L_straight / D" : "L/D = L_straight/D + Σ k1",
                terms,
                new Term("L/D", "length over bore, bends' share included", new Ratio(leg.frictionLength())),
                kinds.isEmpty() ? Source.published("geometry") : RENNELS);
        List<Term> losses = new ArrayList<>();
        for (RunGeometry.Bend bend : geometry.bends()) {
            losses.add(new Term(
                    "k0" + number(kinds, bend),
                    "bend, share without f",
                    new Ratio(bend.loss().constant())));
        }
        for (Fitting fitting : run.fittings()) {
            Term each = new Term("K", fitting.name() + " (" + fitting.source().text() + ")", new Ratio(fitting.k()));
            losses.addAll(Collections.nCopies(fitting.count(), each));
        }
        if (run.route() instanceof Run.Route.Measured measured) {
            losses.add(new Term("K", "summed K as measured", new Ratio(measured.k())));
        }
        if (run.from().equals(Run.STILL_AIR)) {
            losses.add(new Term("K", "velocity head from still air", new Ratio(1)));
        }
        sumOfLosses(leg, losses);
        return tube.wall();
    }

    /** Which of the kinds of bend of a run this is; nothing where it has one kind only. */
    private static String number(List<RunGeometry.Bend> kinds, RunGeometry.Bend bend) {
        if (kinds.size() == 1) {
            return "";
        }
        int at = 0;
        while (!alike(kinds.get(at), bend)) {
            at++;
        }
        return "[" + (at + 1) + "]";
    }

    private static List<RunGeometry.Bend> kinds(List<RunGeometry.Bend> bends) {
        List<RunGeometry.Bend> kinds = new ArrayList<>();
        for (RunGeometry.Bend bend : bends) {
            if (kinds.stream().noneMatch(kind -> alike(kind, bend))) {
                kinds.add(bend);
            }
        }
        return kinds;
    }

    /** Bends of a run have one radius; angles come from corners, with their rounding. */
    private static boolean alike(RunGeometry.Bend a, RunGeometry.Bend b) {
        return Math.abs(a.angle_rad() - b.angle_rad()) < SAME_ANGLE_rad;
    }

    private void bend(RunGeometry.Bend bend, String number, Length bore) {
        Term angle = new Term("α" + number, "bend", new Angle(bend.angle_rad()));
        add(
                "TUB-13",
                "k0 = 0.10 sin(α/2), bend K = k0 + k1 f",
                List.of(angle),
                new Term(
                        "k0" + number,
                        "bend, share without f",
                        new Ratio(bend.loss().constant())),
                RENNELS);
        add(
                "TUB-13",
                "k1 = α r/D + 2.4 sin(α/2) + 6.6 [√sin(α/2) + sin(α/2)] / (r/D)^(4α/π)",
                List.of(angle, new Term("r", "bend radius", bend.radius()), new Term("D", "bore", bore)),
                new Term(
                        "k1" + number,
                        "bend, share that goes with f",
                        new Ratio(bend.loss().perFriction())),
                RENNELS);
    }

    /** How a hose's L/D and ΣK come about: its length, the tool, the head the air gains, the valve. */
    private Wall hose(LegResult leg) {
        Inlet inlet = plant.inlet(leg.id());
        Hose hose = plant.hose(inlet.hose());
        add(
                "TUB-13",
                "L/D of the hose",
                List.of(new Term("L", "hose length", hose.length()), new Term("D", "bore", hose.bore())),
                new Term("L/D", "length over bore", new Ratio(leg.frictionLength())),
                Source.published("geometry"));
        List<Term> losses = new ArrayList<>();
        if (plant.tool(inlet.tool()).law() instanceof Tool.Law.VelocityHeads heads) {
            losses.add(new Term("K", "tool " + inlet.tool(), new Ratio(heads.k())));
            losses.add(new Term("K", "velocity head from still air", new Ratio(1)));
        }
        losses.add(new Term("K", "inlet valve", new Ratio(inlet.valveK())));
        sumOfLosses(leg, losses);
        return hose.wall();
    }

    private void sumOfLosses(LegResult leg, List<Term> losses) {
        if (!losses.isEmpty()) {
            add(
                    "NET-22",
                    "ΣK = sum of what is on this bore",
                    losses,
                    new Term("ΣK", "loss coefficients on this bore", new Ratio(leg.k())),
                    losses.stream().anyMatch(loss -> loss.symbol().startsWith("k0")) ? IN_SERIES : Source.entered());
        }
    }

    private void friction(LegResult leg, Wall wall) {
        add(
                "TUB-1",
                "Re = 4 w / (π D µ)",
                List.of(
                        new Term("w", "mass flow" + SOLUTION, flow(leg)),
                        new Term("D", "bore", leg.bore()),
                        new Term("µ", "viscosity of the air", new Viscosity(air.viscosity_PaS()))),
                new Term("Re", "Reynolds number", new Ratio(leg.reynolds())),
                CONTINUITY);
        Term reynolds = new Term("Re", "Reynolds number", new Ratio(leg.reynolds()));
        Term bore = new Term("D", "bore", leg.bore());
        Term factor = new Term("f", "Darcy friction factor", new Ratio(leg.frictionFactor()));
        if (wall instanceof Wall.FixedFactor) {
            add(Step.STATED, "f as stated", List.of(), factor, Source.entered());
        } else if (wall instanceof Wall.Corrugated corrugated) {
            add(
                    "TUB-22",
                    "f = (D/S) [1 − (D/(D + 0.438 S))²]²",
                    List.of(bore, new Term("S", "corrugation pitch", corrugated.pitch())),
                    factor,
                    Source.published("Hawthorne, Product Engineering, 10 June 1963, 98-100; an upper estimate"));
        } else if (wall instanceof Wall.Rough rough) {
            Term roughness = new Term("ε", "wall roughness", rough.roughness());
            if (leg.reynolds() <= LAMINAR_TO) {
                add(
                        "TUB-3",
                        "f = 64/Re",
                        List.of(reynolds),
                        factor,
                        Source.published("laminar flow, Hagen and Poiseuille"));
            } else if (leg.reynolds() < TURBULENT_FROM) {
                add(
                        "TUB-4",
                        "f = (1 − s) 64/Re + s f_Colebrook, s = x²(3 − 2x), x = (Re − 2000)/2000",
                        List.of(reynolds, roughness, bore),
                        factor,
                        Source.ownReading("blend between Re 2000 and 4000, no published law"));
            } else {
                add(
                        "TUB-2",
                        "1/√f = −2 log10[ ε/(3.7 D) + 2.51/(Re √f) ]",
                        List.of(reynolds, roughness, bore),
                        factor,
                        COLEBROOK);
            }
        }
    }

    /** Gas velocity at one end of a leg. */
    void velocity(LegResult leg, AbsolutePressure at, Velocity velocity, String where) {
        velocity(leg, at, velocity, "", where);
    }

    /** The same with letters of their own. */
    void velocity(LegResult leg, AbsolutePressure at, Velocity velocity, String index, String where) {
        Density density = density(at, "p" + index, "ρ" + index, where);
        add(
                "TUB-6",
                "v" + index + " = w / (ρ" + index + " A)",
                List.of(
                        new Term("w", "mass flow", flow(leg)),
                        new Term("ρ" + index, "density " + where, density),
                        new Term("A", "cross-section of " + leg.id(), leg.bore().circle())),
                new Term("v" + index, "gas velocity " + where, velocity),
                CONTINUITY);
    }

    /** Density of the air at a pressure. */
    Density density(AbsolutePressure at, String pressure, String symbol, String where) {
        Density density = new Density(at.pascals() / air.rt());
        add(
                "AIR-1",
                symbol + " = " + pressure + " / (R T)",
                List.of(
                        new Term(pressure, "static pressure " + where + SOLUTION, at),
                        new Term("R", "gas constant of the moist air", new GasConstant(air.gasConstant_JPerKgK())),
                        new Term("T", "air temperature", air.temperature())),
                new Term(symbol, "density " + where, density),
                GAS_LAW);
        return density;
    }

    /** A mass flow said as free air. */
    void freeAir(MassFlow mass, String of) {
        add(
                "AIR-2",
                "Q = w / ρ_ref, ρ_ref at 101 325 Pa, 20 °C, dry",
                List.of(
                        new Term("w", of, mass),
                        new Term("ρ_ref", "reference density", new Density(FreeAirFlow.REFERENCE_DENSITY_kgPerM3))),
                new Term("Q", "free air", FreeAirFlow.of(mass)),
                Source.ownReading("reference state of free air: 101 325 Pa, 20 °C, dry"));
    }

    /** How far a pressure lies below the site barometer. */
    void vacuum(AbsolutePressure pressure, String where) {
        add(
                "AIR-3",
                "vacuum = p_a − p",
                List.of(
                        new Term("p_a", "site barometer", air.ambient()),
                        new Term("p", "static pressure " + where, pressure)),
                new Term("vacuum", "vacuum " + where, air.ambient().above(pressure)),
                Source.published("definition"));
    }

    private static MassFlow flow(LegResult leg) {
        return new MassFlow(Math.abs(leg.flow().kgPerSecond()));
    }

    /** Pressure drop over a leg in the direction of its flow. */
    static PressureDifference drop(LegResult leg) {
        return leg.flow().kgPerSecond() >= 0
                ? leg.pressureFrom().above(leg.pressureTo())
                : leg.pressureTo().above(leg.pressureFrom());
    }
}
