package dustwright.engine;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.GasConstant;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Viscosity;
import java.util.ArrayList;
import java.util.List;

/** The calculation sheet of one piece, line by line, from a solved state: every number in it can be checked by hand. */
final class Workings {
    static final Source GAS_LAW = Source.published("ideal gas law");
    static final Source ISOTHERMAL =
            Source.published("isothermal compressible flow in a tube: Crane TP-410 (2009); Perry; Rennels and"
                    + " Hudson, Pipe Flow (2012)");
    static final Source COLEBROOK = Source.published("Colebrook (1939) from Re 4000, 64/Re to Re 2000");
    static final Source CONTINUITY = Source.published("continuity");

    private final Air air;
    private final List<Step> steps = new ArrayList<>();

    Workings(Air air) {
        this.air = air;
    }

    List<Step> steps() {
        return steps;
    }

    void add(String equation, String formula, List<Term> inputs, Term result, Source source) {
        steps.add(new Step(equation, formula, inputs, result, source));
    }

    /** What enters a run at its upstream end, so that its mass flow can be added up by hand. */
    void inflow(DutyPoint duty, LegResult leg) {
        boolean forward = leg.flow().kgPerSecond() >= 0;
        String node = forward ? leg.from() : leg.to();
        List<Term> streams = new ArrayList<>();
        for (LegResult other : duty.legs()) {
            if (other.id().equals(leg.id())) {
                continue;
            }
            double w = other.flow().kgPerSecond();
            if (other.to().equals(node) || other.from().equals(node)) {
                double into = other.to().equals(node) ? w : -w;
                streams.add(new Term("w(" + other.id() + ")", "air from " + other.id(), new MassFlow(into)));
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
                    "NET-1",
                    "w = Σ w into the point",
                    streams,
                    new Term("w", "mass flow in " + leg.id(), flow(leg)),
                    Source.published("conservation of mass"));
        }
    }

    /** Reynolds number, friction factor and the isothermal law of a leg. */
    void legLaw(LegResult leg) {
        double w = Math.abs(leg.flow().kgPerSecond());
        Area area = leg.bore().circle();
        add(
                "TUB-1",
                "Re = 4 w / (π D µ)",
                List.of(
                        new Term("w", "mass flow", new MassFlow(w)),
                        new Term("D", "bore", leg.bore()),
                        new Term("µ", "viscosity of the air", new Viscosity(air.viscosity_PaS()))),
                new Term("Re", "Reynolds number", new Ratio(leg.reynolds())),
                CONTINUITY);
        add(
                "TUB-2",
                "1/√f = −2 log10[ ε/(3.7 D) + 2.51/(Re √f) ]",
                List.of(new Term("Re", "Reynolds number", new Ratio(leg.reynolds()))),
                new Term("f", "Darcy friction factor", new Ratio(leg.frictionFactor())),
                COLEBROOK);
        boolean forward = leg.flow().kgPerSecond() >= 0;
        AbsolutePressure up = forward ? leg.pressureFrom() : leg.pressureTo();
        AbsolutePressure down = forward ? leg.pressureTo() : leg.pressureFrom();
        List<Term> terms = new ArrayList<>(List.of(
                new Term("p1", "static pressure upstream", up),
                new Term("w", "mass flow", new MassFlow(w)),
                new Term("A", "cross-section", area),
                new Term("R", "gas constant of the moist air", new GasConstant(air.gasConstant_JPerKgK())),
                new Term("T", "air temperature", air.temperature()),
                new Term("f", "friction factor", new Ratio(leg.frictionFactor())),
                new Term("L/D", "length over bore, bends' share included", new Ratio(leg.frictionLength())),
                new Term("ΣK", "loss coefficients on this bore", new Ratio(leg.k()))));
        if (leg.junctionLoss().pascals() != 0) {
            terms.add(new Term("Δpj", "loss at the junction it enters, taken off p2", leg.junctionLoss()));
        }
        add(
                "TUB-5",
                "p1² − p2² = (w/A)² R T [ f L/D + ΣK + 2 ln(p1/p2) ]",
                terms,
                new Term("p2", "static pressure downstream", down),
                ISOTHERMAL);
    }

    /** Gas velocity at one end of a leg. */
    void velocity(LegResult leg, AbsolutePressure at, Velocity velocity, String where) {
        Density density = new Density(at.pascals() / air.rt());
        add(
                "AIR-1",
                "ρ = p / (R T)",
                List.of(
                        new Term("p", "static pressure " + where, at),
                        new Term("R", "gas constant of the moist air", new GasConstant(air.gasConstant_JPerKgK())),
                        new Term("T", "air temperature", air.temperature())),
                new Term("ρ", "density " + where, density),
                GAS_LAW);
        add(
                "TUB-6",
                "v = w / (ρ A)",
                List.of(
                        new Term("w", "mass flow", flow(leg)),
                        new Term("ρ", "density " + where, density),
                        new Term("A", "cross-section of " + leg.id(), leg.bore().circle())),
                new Term("v", "gas velocity " + where, velocity),
                CONTINUITY);
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
