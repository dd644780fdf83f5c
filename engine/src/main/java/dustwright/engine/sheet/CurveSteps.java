package dustwright.engine.sheet;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.producer.LeastPower;
import dustwright.engine.producer.Machine.CurveMachine;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.GasConstant;
import dustwright.engine.quantity.MeasuredCurve;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.RotationalSpeed;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** How flow and power of a machine known by its curve come about: onto the curve, between two of its points, and back to its state. */
public final class CurveSteps {
    private static final Source AFFINITY = Source.published("affinity laws: ASHRAE Handbook, Fans; AMCA 201");
    private static final Source PROPORTIONAL = Source.ownReading(
            "a displacement machine moves and takes in proportion to its speed, at the same difference");
    private static final Source SAME_RATIO = Source.published(
            "the pressure ratio stays: Machine Design, Vacuum pumps; a curve is taken at 101 325 Pa behind the machine");
    private static final Source THROUGH_POINTS = Source.published(
            "Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5(2), 1984: a curve that rises or falls where the points do");
    private static final Source CARRIED_ON = Source.ownReading(
            "beyond the measured points, on straight: no measured figure, and none that is known to be on one side");
    private static final Source NO_LESS = Source.ownReading(
            "beyond the measured points, on straight but no less than at the last one on that side: no measured figure");
    private static final Source ISOTHERMAL =
            Source.published("isothermal work of an ideal gas: no machine takes less; more than its curve gives here");
    private static final Source GAS_LAW = Source.published("ideal gas law");

    private final VacuumProducer producer;
    private final CurveMachine curve;
    private final Air air;
    private final AbsolutePressure inlet;
    private final PressureDifference difference;
    private final RotationalSpeed speed;
    private final List<Step> steps = new ArrayList<>();

    private CurveSteps(
            VacuumProducer producer,
            CurveMachine curve,
            Air air,
            AbsolutePressure inlet,
            PressureDifference difference,
            RotationalSpeed speed) {
        this.producer = producer;
        this.curve = curve;
        this.air = air;
        this.inlet = inlet;
        this.difference = difference;
        this.speed = speed;
    }

    /**
     * Flow and power in a state; the last step gives the power.
     *
     * @param inlet pressure at the machine's own inlet
     * @param difference over the machine
     */
    static List<Step> duty(
            VacuumProducer producer,
            CurveMachine curve,
            Air air,
            AbsolutePressure inlet,
            PressureDifference difference,
            ProducerResult result) {
        CurveSteps writing = new CurveSteps(producer, curve, air, inlet, difference, result.speed());
        double onCurve_Pa = writing.onCurve();
        if (!result.checkValveShut()) {
            writing.flow(onCurve_Pa, result);
        }
        writing.power(onCurve_Pa, result);
        return writing.steps;
    }

    /** Where the curve ends at a speed and a density, and the difference that is held against it. */
    public static List<Step> end(
            VacuumProducer producer,
            CurveMachine curve,
            Air air,
            ProducerResult result,
            Side side,
            PressureDifference limit) {
        CurveSteps writing =
                new CurveSteps(producer, curve, air, result.inletPressure(), result.difference(), result.speed());
        boolean deep = side == Side.AT_MOST;
        String which = deep ? "last" : "first";
        double point_Pa =
                deep ? curve.flow_m3PerS().last() : curve.flow_m3PerS().first();
        List<Term> inputs = new ArrayList<>();
        inputs.add(new Term(
                "Δp0",
                "vacuum of the " + which + " point of its curve" + origin(producer),
                new PressureDifference(point_Pa)));
        if (curve.dynamic()) {
            writing.density();
            inputs.addAll(writing.state());
        } else {
            inputs.add(writing.barometer());
        }
        writing.add(
                curve.dynamic() ? "PRD-34" : "PRD-35",
                curve.dynamic() ? "Δp_" + which + " = Δp0 (n/n0)² ρ_in/ρ0" : "Δp_" + which + " = Δp0 p_a / 101 325 Pa",
                inputs,
                new Term(
                        "Δp_" + which,
                        curve.dynamic()
                                ? "where its curve ends at this speed and density"
                                : "where its curve ends at this barometer",
                        limit),
                curve.dynamic() ? AFFINITY : SAME_RATIO);
        List<Step> all = new ArrayList<>(writing.steps);
        all.addAll(ProducerSteps.difference(air, result));
        return all;
    }

    /** The vacuum at which it takes no air any more: that of its curve, brought to speed and density. */
    static List<Step> withoutFlow(
            VacuumProducer producer, CurveMachine curve, Air air, ProducerResult result, Term vacuum, Source shuts) {
        PressureDifference own = (PressureDifference) vacuum.value();
        CurveSteps writing = new CurveSteps(producer, curve, air, air.ambient().minus(own), own, result.speed());
        Term onCurve = writing.onCurveWithoutFlow();
        if (!curve.dynamic()) {
            writing.add(
                    "PRD-22", "v = Δp_00 p_a / 101 325 Pa", List.of(onCurve, writing.barometer()), vacuum, SAME_RATIO);
            return writing.steps;
        }
        List<Term> inputs = new ArrayList<>(List.of(
                onCurve,
                new Term("p_a", "site barometer", air.ambient()),
                new Term("ρ0", "density of its curve", curve.ratedDensity()),
                new Term("R", "gas constant of the moist air", new GasConstant(air.gasConstant_JPerKgK())),
                new Term("T", "air temperature", air.temperature())));
        inputs.addAll(writing.speeds());
        writing.add("PRD-22", "v = p_a c/(1 + c), c = Δp_00 (n/n0)²/(ρ0 R T)", inputs, vacuum, shuts);
        return writing.steps;
    }

    /** Where the curve itself reaches no flow: at its last point, or where its last chord gets there. */
    private Term onCurveWithoutFlow() {
        MeasuredCurve flow = curve.flow_m3PerS();
        MeasuredCurve.Piece last = flow.piece(flow.last());
        String point = origin(producer);
        boolean measured = last.y1() == 0;
        double none_Pa =
                measured ? last.x1() : last.x1() + last.y1() * (last.x1() - last.x0()) / (last.y0() - last.y1());
        Term none = new Term(
                "Δp_00",
                measured
                        ? "last point of its curve, without flow" + point
                        : "where its curve, carried on straight beyond its last point, reaches no flow: no measured figure",
                new PressureDifference(none_Pa));
        if (!measured) {
            add(
                    "PRD-34",
                    "Δp_00 = Δp_b + Q_b (Δp_b − Δp_a)/(Q_a − Q_b), on straight beyond its last point: no measured figure",
                    List.of(
                            new Term(
                                    "Δp_a",
                                    "vacuum of the point before the last" + point,
                                    new PressureDifference(last.x0())),
                            new Term(
                                    "Δp_b",
                                    "vacuum of the last point of its curve" + point,
                                    new PressureDifference(last.x1())),
                            new Term("Q_a", "flow of the one" + point, new ActualVolumeFlow(last.y0())),
                            new Term("Q_b", "flow of the other" + point, new ActualVolumeFlow(last.y1()))),
                    none,
                    CARRIED_ON);
        }
        return none;
    }

    private static String origin(VacuumProducer producer) {
        return " (" + producer.sourceOf("curve").text() + ")";
    }

    private void add(String equation, String formula, List<Term> inputs, Term result, Source source) {
        steps.add(new Step(equation, formula, inputs, result, source));
    }

    private void density() {
        add(
                "AIR-1",
                "ρ_in = p_in / (R T)",
                List.of(
                        new Term("p_in", "static pressure at the machine's inlet", inlet),
                        new Term("R", "gas constant of the moist air", new GasConstant(air.gasConstant_JPerKgK())),
                        new Term("T", "air temperature", air.temperature())),
                new Term("ρ_in", "density at the machine's inlet", inletDensity()),
                GAS_LAW);
    }

    private Density inletDensity() {
        return new Density(inlet.pascals() / air.rt());
    }

    /** What carries the curve to the state. */
    private List<Term> state() {
        List<Term> terms = new ArrayList<>(speeds());
        terms.add(new Term("ρ_in", "density at the machine's inlet", inletDensity()));
        terms.add(new Term("ρ0", "density of its curve", curve.ratedDensity()));
        return terms;
    }

    private Term barometer() {
        return new Term("p_a", "site barometer", air.ambient());
    }

    private List<Term> speeds() {
        return List.of(new Term("n", "speed", speed), new Term("n0", "speed of its curve", curve.ratedSpeed()));
    }

    private double speedRatio() {
        return speed.revolutionsPerSecond() / curve.ratedSpeed().revolutionsPerSecond();
    }

    /** The difference on the curve as it was measured. */
    private double onCurve() {
        if (!curve.dynamic()) {
            double seaLevel_Pa = difference.pascals() * curve.toSeaLevel(air.ambient());
            add(
                    "PRD-35",
                    "Δp0 = Δp 101 325 Pa / p_a",
                    List.of(new Term("Δp", "pressure difference, silencer included", difference), barometer()),
                    new Term(
                            "Δp0",
                            "the same on its curve, at the same pressure ratio",
                            new PressureDifference(seaLevel_Pa)),
                    SAME_RATIO);
            return seaLevel_Pa;
        }
        density();
        double onCurve_Pa = difference.pascals()
                * curve.ratedDensity().kgPerCubicMetre()
                / (inletDensity().kgPerCubicMetre() * speedRatio() * speedRatio());
        List<Term> inputs = new ArrayList<>();
        inputs.add(new Term("Δp", "pressure difference, silencer included", difference));
        inputs.addAll(state());
        add(
                "PRD-4",
                "Δp0 = Δp (n0/n)² ρ0/ρ_in",
                inputs,
                new Term("Δp0", "the same on its curve", new PressureDifference(onCurve_Pa)),
                AFFINITY);
        return onCurve_Pa;
    }

    private void flow(double onCurve_Pa, ProducerResult result) {
        double flow0 = read("Q", "flow", curve.flow_m3PerS(), onCurve_Pa, ActualVolumeFlow::new, false);
        List<Term> inputs = new ArrayList<>();
        inputs.add(new Term("Q0", "flow by its curve", new ActualVolumeFlow(flow0)));
        inputs.addAll(speeds());
        add(
                "PRD-4",
                "Q = Q0 n/n0",
                inputs,
                new Term("Q", "actual flow at its inlet", result.inletFlow()),
                curve.dynamic() ? AFFINITY : PROPORTIONAL);
    }

    private void power(double onCurve_Pa, ProducerResult result) {
        double power0 = read("P", "power", curve.power_W(), onCurve_Pa, Power::new, true);
        List<Term> inputs = new ArrayList<>();
        inputs.add(new Term("P0", "shaft power by its curve", new Power(power0)));
        inputs.addAll(curve.dynamic() ? state() : speeds());
        double ratio = curve.dynamic()
                ? Math.pow(speedRatio(), 3)
                        * inletDensity().kgPerCubicMetre()
                        / curve.ratedDensity().kgPerCubicMetre()
                : speedRatio();
        double least_W =
                LeastPower.of_W(inlet.pascals(), result.inletFlow().cubicMetresPerSecond(), difference.pascals());
        boolean bound = least_W > power0 * ratio;
        add(
                "PRD-4",
                curve.dynamic() ? "P = P0 (n/n0)³ ρ_in/ρ0" : "P = P0 n/n0",
                inputs,
                new Term("P", "shaft power", bound ? new Power(power0 * ratio) : result.shaftPower()),
                curve.dynamic() ? AFFINITY : PROPORTIONAL);
        if (bound) {
            add(
                    "PRD-33",
                    "P = p_in Q ln(1 + Δp/p_in)",
                    List.of(
                            new Term("p_in", "static pressure at the machine's inlet", inlet),
                            new Term("Q", "actual flow at its inlet", result.inletFlow()),
                            new Term("Δp", "pressure difference, silencer included", difference)),
                    new Term("P", "least shaft power of any machine", result.shaftPower()),
                    ISOTHERMAL);
        }
    }

    /** A figure of the curve at a difference, from the two points it lies between; beyond them on straight. */
    private double read(
            String symbol,
            String what,
            MeasuredCurve measured,
            double at_Pa,
            DoubleFunction<Quantity> unit,
            boolean noLess) {
        MeasuredCurve.Piece piece = measured.piece(at_Pa);
        double width_Pa = piece.x1() - piece.x0();
        String point = origin(producer);
        Term on = new Term("Δp0", "difference on its curve", new PressureDifference(at_Pa));
        List<Term> inputs = new ArrayList<>(List.of(
                on,
                new Term("Δp_a", "vacuum of a point of its curve" + point, new PressureDifference(piece.x0())),
                new Term("Δp_b", "vacuum of its next point" + point, new PressureDifference(piece.x1())),
                new Term(symbol + "_a", what + " of the one" + point, unit.apply(piece.y0())),
                new Term(symbol + "_b", what + " of the other" + point, unit.apply(piece.y1()))));
        if (measured.covers(at_Pa)) {
            String small = symbol.equals("Q") ? "q" : "r";
            inputs.add(new Term(
                    small + "_a", "slope in the one times Δp_b − Δp_a", unit.apply(piece.slope0() * width_Pa)));
            inputs.add(new Term(
                    small + "_b", "slope in the other times Δp_b − Δp_a", unit.apply(piece.slope1() * width_Pa)));
            add(
                    "PRD-5",
                    symbol + "0 = " + symbol + "_a + x²(3 − 2x)(" + symbol + "_b − " + symbol + "_a) + x(1 − x)² "
                            + small + "_a − x²(1 − x) " + small + "_b, x = (Δp0 − Δp_a)/(Δp_b − Δp_a)",
                    inputs,
                    new Term(symbol + "0", what + " by its curve, between two points", unit.apply(measured.at(at_Pa))),
                    THROUGH_POINTS);
            return measured.at(at_Pa);
        }
        boolean deep = at_Pa > measured.last();
        String end = deep ? "b" : "a";
        double endFigure = deep ? piece.y1() : piece.y0();
        double figure = noLess ? Math.max(endFigure, measured.at(at_Pa)) : measured.at(at_Pa);
        String straight =
                symbol + "_" + end + " + (Δp0 − Δp_" + end + ")(" + symbol + "_b − " + symbol + "_a)/(Δp_b − Δp_a)";
        add(
                "PRD-34",
                symbol + "0 = " + straight + (noLess ? ", no less than " + symbol + "_" + end : ""),
                inputs,
                new Term(
                        symbol + "0",
                        what + " by its curve carried on beyond its " + (deep ? "last" : "first")
                                + " point, not measured",
                        unit.apply(figure)),
                noLess ? NO_LESS : CARRIED_ON);
        return figure;
    }
}
