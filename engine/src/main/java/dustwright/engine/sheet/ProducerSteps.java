package dustwright.engine.sheet;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.ProducerLaw;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.GasConstant;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.TemperatureRise;
import java.util.ArrayList;
import java.util.List;

/** The calculation of a vacuum producer's duty, step by step: speed, flow, power, temperature rise, and its limits. */
public final class ProducerSteps {
    private static final Source SLIP =
            Source.fromMemory("slip law of lobe-type pumps: slip speed grows with √(Δp/1 psi) and"
                    + " √(1.2041 kg/m³ / ρ); form confirmed in a public technical note, figure per machine");
    private static final Source HOLDING =
            Source.ownReading("the speed that holds the vacuum asked, else the nearer end of the range");
    private static final Source POWER =
            Source.published("rectangular indicator diagram of a displacement machine: displaced volume times"
                    + " pressure difference (CAGI handbook, blowers, 2022)");
    /** Rise up to which a temperature is told: beyond it oil and seals are gone and no casing keeps the heat in the air [K]. */
    private static final double MOST_TOLD_K = 500;

    private static final Source ENERGY =
            Source.published("first law: the work done on the air stays in it, cp 1005 J/(kg K)");

    private static final Source BALANCE = Source.published("the machine works between its inlet and its outlet");
    private static final Source SHUTS = Source.ownReading(
            "an ideal check valve opens when the machine would move air against the station's vacuum");
    private static final Source BAROMETER = Source.published("the pressure ratio stays: Machine Design, Vacuum pumps");
    private static final Source SEAL = Source.fromMemory(
            "Ryans and Roper, Process Vacuum System Design and Operation; vapour pressure by IAPWS-IF97");
    private static final Source SERVICE_FACTOR = Source.published("NEMA MG 1, definition of service factor");

    private final VacuumProducer producer;
    private final Air air;
    private final List<Step> steps = new ArrayList<>();

    private ProducerSteps(VacuumProducer producer, Air air) {
        this.producer = producer;
        this.air = air;
    }

    /** Flow, shaft power and temperature rise in a state. */
    public static List<Step> duty(VacuumProducer producer, Air air, ProducerResult result) {
        ProducerSteps writing = new ProducerSteps(producer, air);
        writing.flowAndPower(result);
        writing.rise(result);
        return writing.steps;
    }

    /** Flow and shaft power in a state; the last step gives the power. */
    public static List<Step> power(VacuumProducer producer, Air air, ProducerResult result) {
        ProducerSteps writing = new ProducerSteps(producer, air);
        writing.flowAndPower(result);
        return writing.steps;
    }

    /** How its speed comes about: as stated, by its belt, or by the drive that holds a vacuum; then the flow that goes with it. */
    public static List<Step> speed(VacuumProducer producer, Air air, ProducerResult result) {
        ProducerSteps writing = new ProducerSteps(producer, air);
        writing.speed(result);
        if (producer.drive() instanceof Drive.Holding
                && producer.machine() instanceof Machine.LobePump lobe
                && !result.checkValveShut()) {
            writing.flow(lobe, result);
        }
        return writing.steps;
    }

    /** The same from the network's solution on; the last step gives the speed. */
    static List<Step> speedFromSolution(VacuumProducer producer, Air air, ProducerResult result) {
        ProducerSteps writing = new ProducerSteps(producer, air);
        if (producer.machine() instanceof Machine.LobePump lobe && !result.checkValveShut()) {
            writing.steps.addAll(difference(air, result));
            writing.turns(lobe, result);
        } else {
            writing.steps.add(vacuum(air, result));
        }
        writing.speed(result);
        return writing.steps;
    }

    /** The step that gives the limit which binds at a site: its barometer, or what the seal water leaves. */
    static List<Step> bindingVacuumLimit(VacuumProducer producer, Air air) {
        return vacuumLimit(producer, air).stream()
                .filter(step -> step.result().value().equals(producer.vacuumLimit(air.ambient())))
                .toList();
    }

    /** How its limit of vacuum comes about: carried to the barometer, or left by the seal water. */
    public static List<Step> vacuumLimit(VacuumProducer producer, Air air) {
        ProducerSteps writing = new ProducerSteps(producer, air);
        writing.vacuumLimit(air.ambient());
        return writing.steps;
    }

    /** The motor's limit where its service factor raises it. */
    public static List<Step> powerLimit(VacuumProducer producer, Air air) {
        ProducerSteps writing = new ProducerSteps(producer, air);
        writing.powerLimit();
        return writing.steps;
    }

    private void add(String equation, String formula, List<Term> inputs, Term result, Source source) {
        steps.add(new Step(equation, formula, inputs, result, source));
    }

    private void flowAndPower(ProducerResult result) {
        AbsolutePressure inlet = result.inletPressure();
        PressureDifference difference = result.difference();
        if (result.checkValveShut()) {
            difference = ownVacuum(result);
            inlet = air.ambient().minus(difference);
            ownInlet(result, inlet, difference);
        } else {
            steps.addAll(difference(air, result));
        }
        if (producer.machine() instanceof Machine.LobePump lobe) {
            if (!result.checkValveShut()) {
                flow(lobe, result);
            }
            power(lobe, difference, result);
        } else if (producer.machine() instanceof Machine.CurveMachine curve) {
            steps.addAll(CurveSteps.duty(producer, curve, air, inlet, difference, result));
        }
    }

    /** The vacuum at which it takes no air any more at its speed (equation PRD-22). */
    public static List<Step> withoutFlow(VacuumProducer producer, Air air, ProducerResult result) {
        ProducerSteps writing = new ProducerSteps(producer, air);
        writing.withoutFlow(result);
        return writing.steps;
    }

    /** That vacuum: behind a shut check valve it stands at the machine's own inlet. */
    public static PressureDifference vacuumWithoutFlow(VacuumProducer producer, Air air, ProducerResult result) {
        return new ProducerSteps(producer, air).ownVacuum(result);
    }

    /** Whether that vacuum lies within the points of its curve; for a formula always. */
    public static boolean restsOnPoints(VacuumProducer producer, Air air, ProducerResult result) {
        double vacuum_Pa = new ProducerSteps(producer, air).ownVacuum(result).pascals();
        return new ProducerLaw(producer, air)
                .covers(air.ambient().pascals() - vacuum_Pa, 0, result.speed().revolutionsPerSecond());
    }

    private PressureDifference ownVacuum(ProducerResult result) {
        return new PressureDifference(new ProducerLaw(producer, air)
                .vacuumWithoutFlow_Pa(
                        result.speed().revolutionsPerSecond(), result.vacuum().pascals()));
    }

    private void withoutFlow(ProducerResult result) {
        PressureDifference own = ownVacuum(result);
        Term vacuum = new Term("v", "vacuum at which it takes no air any more", own);
        if (producer.machine() instanceof Machine.LobePump lobe) {
            add(
                    "PRD-22",
                    "v = p_a k/(1 + k), k = (n/n_s)² 1 psi/(1.2041 kg/m³ R T), where slip takes all that is displaced",
                    List.of(
                            new Term("p_a", "site barometer", air.ambient()),
                            new Term("n", "speed", result.speed()),
                            new Term("n_s", "slip speed at 1 psi", lobe.slipAtOnePsi()),
                            new Term("R", "gas constant of the moist air", new GasConstant(air.gasConstant_JPerKgK())),
                            new Term("T", "air temperature", air.temperature())),
                    vacuum,
                    SHUTS);
        } else if (producer.machine() instanceof Machine.CurveMachine curve) {
            steps.addAll(CurveSteps.withoutFlow(producer, curve, air, result, vacuum, SHUTS));
        }
    }

    /** Behind a shut check valve the machine's own inlet stands less deep than the header; its silencer takes nothing. */
    private void ownInlet(ProducerResult result, AbsolutePressure inlet, PressureDifference difference) {
        withoutFlow(result);
        add(
                "PRD-32",
                "p_in = p_a − v, Δp = v",
                List.of(
                        new Term("p_a", "site barometer", air.ambient()),
                        new Term("v", "vacuum at which it takes no air any more", difference)),
                new Term("p_in", "static pressure at the machine's own inlet, behind its shut check valve", inlet),
                SHUTS);
    }

    private void rise(ProducerResult result) {
        add(
                "PRD-3",
                producer.machine() instanceof Machine.LobePump ? "ΔT = D n Δp / (w cp)" : "ΔT = P / (w cp)",
                heating(result),
                new Term("ΔT", "temperature rise of the air", result.rise()),
                ENERGY);
    }

    /**
     * Whether a rise is worth a temperature: a trickle of air would be thousands of kelvin hot by the balance, which leaves out that casing
     * and oil take the heat then.
     */
    public static boolean tellsTemperature(TemperatureRise rise) {
        return rise.kelvin() <= MOST_TOLD_K;
    }

    /** The air that would carry its heat away at a rise, in a state with less of it (equation PRD-38). */
    public static List<Step> airForRise(VacuumProducer producer, Air air, ProducerResult result, TemperatureRise most) {
        ProducerSteps writing = new ProducerSteps(producer, air);
        writing.flowAndPower(result);
        List<Term> inputs = new ArrayList<>(writing.heating(result));
        inputs.remove(inputs.size() - 1);
        inputs.add(new Term("ΔT_most", "rise it may have", most));
        writing.add(
                "PRD-38",
                producer.machine() instanceof Machine.LobePump
                        ? "w_least = D n Δp / (cp ΔT_most)"
                        : "w_least = P / (cp ΔT_most)",
                inputs,
                new Term("w_least", "air that carries its heat away at that rise", airForRise(result, most)),
                ENERGY);
        return writing.steps;
    }

    /** The same, as free air. */
    public static FreeAirFlow airForRise(ProducerResult result, TemperatureRise most) {
        return FreeAirFlow.of(
                new MassFlow(result.flow().kgPerSecond() * result.rise().kelvin() / most.kelvin()));
    }

    private void vacuumLimit(AbsolutePressure barometer) {
        add(
                "PRD-6",
                "v = v_0 p_a / 101 325 Pa",
                List.of(
                        new Term(
                                "v_0",
                                "stated limit, taken at sea level ("
                                        + producer.sourceOf("deepest vacuum").text() + ")",
                                producer.deepestVacuum()),
                        new Term("p_a", "barometer", barometer)),
                new Term("v", "limit at the site", producer.deepestVacuumAt(barometer)),
                BAROMETER);
        producer.sealVacuum(barometer)
                .ifPresent(seal -> add(
                        "PRD-11",
                        "v = p_a − p_v",
                        List.of(
                                new Term("p_a", "barometer", barometer),
                                new Term("T", "seal water", producer.sealWater().orElseThrow())),
                        new Term("v", "deepest vacuum its seal water leaves", seal),
                        SEAL));
    }

    private void powerLimit() {
        if (producer.powerLimit(air).compareTo(producer.nameplate()) > 0) {
            add(
                    "ELE-3",
                    "P = P_nameplate × service factor",
                    List.of(
                            new Term("P_nameplate", "nameplate", producer.nameplate()),
                            new Term(
                                    "sf",
                                    "service factor",
                                    new Ratio(producer.motor().serviceFactor()))),
                    new Term("P", "limit of the motor", producer.powerLimit(air)),
                    SERVICE_FACTOR);
        }
    }

    private List<Term> heating(ProducerResult result) {
        Term air = new Term("w", "air through the producer", result.flow());
        if (producer.machine() instanceof Machine.LobePump lobe) {
            return List.of(
                    new Term("D", "displacement per turn", lobe.displacement()),
                    new Term("n", "speed", result.speed()),
                    new Term("Δp", "pressure difference, silencer included", result.difference()),
                    air);
        }
        return List.of(new Term("P", "shaft power", result.shaftPower()), air);
    }

    private void speed(ProducerResult result) {
        Term speed = new Term("n", "speed of the producer", result.speed());
        if (producer.drive() instanceof Drive.Holding holding) {
            boolean holds = holding.holds(result.vacuum());
            add(
                    "PRD-28",
                    holds ? "n so that v = v_set" : "n = the end of its range nearer to v = v_set",
                    List.of(
                            new Term("v_set", "vacuum asked of the drive", holding.vacuum()),
                            new Term("n_least", "least speed of the drive", holding.least()),
                            new Term("n_greatest", "greatest speed of the drive", holding.greatest()),
                            new Term("v", "vacuum at the producer's inlet", result.vacuum())),
                    speed,
                    HOLDING);
        } else {
            add(
                    Step.STATED,
                    "n as stated, or by belt or coupling as its sheet shows",
                    List.of(),
                    speed,
                    producer.sourceOf("speed"));
        }
    }

    /** Turns that move the air of the solution and what slips back. */
    private void turns(Machine.LobePump lobe, ProducerResult result) {
        Density inlet = density(result.inletPressure());
        add(
                "PRD-1",
                "n = Q / D + n_s √(Δp/1 psi) √(1.2041 kg/m³ / ρ_in)",
                List.of(
                        new Term("Q", "actual flow at its inlet, by the network's solution", result.inletFlow()),
                        new Term("D", "displacement per turn", lobe.displacement()),
                        new Term("n_s", "slip speed at 1 psi", lobe.slipAtOnePsi()),
                        new Term("Δp", "pressure difference, silencer included", result.difference()),
                        new Term("ρ_in", "density at the producer's inlet", inlet)),
                new Term("n", "speed that moves this air", result.speed()),
                SLIP);
    }

    private void flow(Machine.LobePump lobe, ProducerResult result) {
        Density inlet = density(result.inletPressure());
        add(
                "PRD-1",
                "Q = D n − D n_s √(Δp/1 psi) √(1.2041 kg/m³ / ρ_in)",
                List.of(
                        new Term("D", "displacement per turn", lobe.displacement()),
                        new Term("n", "speed", result.speed()),
                        new Term("n_s", "slip speed at 1 psi", lobe.slipAtOnePsi()),
                        new Term("Δp", "pressure difference, silencer included", result.difference()),
                        new Term("ρ_in", "density at the producer's inlet", inlet)),
                new Term("Q", "actual flow at its inlet", result.inletFlow()),
                SLIP);
    }

    private void power(Machine.LobePump lobe, PressureDifference difference, ProducerResult result) {
        add(
                "PRD-2",
                "P = D n Δp / η + P_idle",
                List.of(
                        new Term("D", "displacement per turn", lobe.displacement()),
                        new Term("n", "speed", result.speed()),
                        new Term("Δp", "pressure difference, silencer included", difference),
                        new Term("η", "mechanical efficiency", new Ratio(lobe.mechanicalEfficiency())),
                        new Term("P_idle", "idle loss", lobe.idleLoss())),
                new Term("P", "shaft power", result.shaftPower()),
                POWER);
    }

    /** Over the machine, from the pressures of the network's solution: what the silencer takes is the rest. */
    static List<Step> difference(Air air, ProducerResult result) {
        Step difference = new Step(
                "PRD-30",
                "Δp = v + Δp_silencer",
                List.of(
                        new Term("v", "vacuum at the producer's inlet", result.vacuum()),
                        new Term(
                                "Δp_silencer",
                                "pressure over the barometer after it, in silencer and exhaust",
                                new PressureDifference(result.difference().pascals()
                                        - result.vacuum().pascals()))),
                new Term("Δp", "pressure difference, silencer included", result.difference()),
                BALANCE);
        return List.of(vacuum(air, result), difference);
    }

    /** The vacuum at its inlet. */
    static Step vacuum(Air air, ProducerResult result) {
        return new Step(
                "AIR-3",
                "v = p_a − p_in",
                List.of(
                        new Term("p_a", "site barometer", air.ambient()),
                        new Term(
                                "p_in",
                                "static pressure at the producer's inlet, by the network's solution",
                                result.inletPressure())),
                new Term("v", "vacuum at the producer's inlet", result.vacuum()),
                Source.published("definition"));
    }

    private Density density(AbsolutePressure inlet) {
        Density density = new Density(inlet.pascals() / air.rt());
        add(
                "AIR-1",
                "ρ_in = p_in / (R T)",
                List.of(
                        new Term("p_in", "static pressure at the producer's inlet, by the network's solution", inlet),
                        new Term("R", "gas constant of the moist air", new GasConstant(air.gasConstant_JPerKgK())),
                        new Term("T", "air temperature", air.temperature())),
                new Term("ρ_in", "density at the producer's inlet", density),
                Source.published("ideal gas law"));
        return density;
    }
}
