package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Opening;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.TipSpeed;
import dustwright.engine.quantity.Torque;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.rotaryvalve.ValveBuild;
import dustwright.engine.rotaryvalve.ValveCapacity;
import dustwright.engine.rotaryvalve.ValveDrive;
import dustwright.engine.rotaryvalve.ValveLeakage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a rotary valve discharges, lets up, and needs to turn. */
final class RotaryValveSheet {
    /** Why a fast rotor's discharge is not known. */
    static final String TOO_FAST =
            "How far the pockets still fill above a tip speed of 0.8 m/s (157 ft/min) is not known: turn it slower, or fit a larger valve.";

    private static final Source SIZING = Source.published("geometry; as in public sizing articles");
    private static final Source LEDGE = new Source(
            "a valve as wide as the hopper's outlet, so that no ledge holds dust: common practice, no source",
            Confidence.COMMON_PRACTICE);
    private static final Source POWER = Source.published("definition of power");

    /** What stands in the place of a figure of the maker's that is not stated. */
    private static final Limit<Count> MAKERS =
            new Limit<>(new Count(0), Source.ownReading("the maker's figure is not stated"));

    private final Arrivals arrivals;
    private final Plant plant;
    private final RotaryValve valve;
    private final ValveBuild build;
    private final Optional<DustArrival> shut;
    private final Writing writing;

    private RotaryValveSheet(Arrivals arrivals, Optional<DustArrival> shut, RotaryValve valve) {
        this.arrivals = arrivals;
        this.shut = shut;
        this.plant = arrivals.plant();
        this.valve = valve;
        this.build = valve.build();
        this.writing = new Writing(arrivals.station().id());
    }

    /** @param shut what the station does with all inlets shut; absent where that has no answer */
    static Optional<Sheet> of(Arrivals arrivals, Optional<DustArrival> shut) {
        return arrivals.station().rotaryValve().map(valve -> new RotaryValveSheet(arrivals, shut, valve).sheet());
    }

    /** The deepest vacuum over it, of the sets and of every pause with the producers on. */
    private Optional<DustArrival> deepest() {
        return Stream.concat(arrivals.deepest().stream(), shut.stream())
                .min(Comparator.comparing(arrival -> arrival.station().receiver()));
    }

    private Sheet sheet() {
        capacity();
        speeds();
        Optional<DustArrival> deepest = deepest();
        deepest.ifPresent(this::leak);
        ToolCost.write(writing, arrivals);
        deepest.ifPresent(this::difference);
        drive();
        throat();
        return writing.sheet("rotary-valve", "Rotary valve", Place.Kind.ROTARY_VALVE);
    }

    // ---- throughput

    private void capacity() {
        String name = "Discharge over the largest dust rate";
        Optional<DustArrival> dustiest = arrivals.dustiest();
        if (dustiest.isEmpty()) {
            String why = "No dust reaches it: enter \"feed\" of the inlets that are open together.";
            writing.unknown("capacity", name, why);
            if (arrivals.noFeedStated()) {
                notJudged(Sheet.ANY_SET, why);
            }
            return;
        }
        DustArrival arrival = dustiest.get();
        Optional<Density> loose = arrival.density();
        if (loose.isEmpty()) {
            String why = arrival.whyNoVolume();
            writing.unknown("capacity", name, why);
            notJudged(arrival.state(), why);
            return;
        }
        arrivals.ofUnknownVolume().ifPresent(other -> notJudged(other.state(), other.whyNoVolume()));
        if (!valve.fillKnown()) {
            writing.unknown("capacity", name + ", " + arrival.state(), TOO_FAST);
            notJudged(arrival.state(), TOO_FAST);
            return;
        }
        Density density = loose.get();
        writing.tried(
                "valve-discharge",
                "Dust it discharges, hopper full, " + arrival.state(),
                () -> List.of(discharge(density)));
        Optional<Quantity> ratio =
                writing.tried("capacity", name + ", " + arrival.state(), () -> capacitySteps(arrival, density));
        if (ratio.isEmpty()) {
            notJudged(arrival.state(), "Outside the formula of the valve's capacity, see its sheet.");
        } else {
            plant.requirements()
                    .receiver()
                    .valveCapacity()
                    .ifPresent(limit -> writing.asked(
                            FindingCode.VALVE_CAPACITY,
                            Place.Kind.ROTARY_VALVE,
                            arrival.state(),
                            Side.AT_LEAST,
                            ratio.get(),
                            limit));
        }
        neededSpeed(arrival, density);
    }

    private void notJudged(String state, String why) {
        plant.requirements()
                .receiver()
                .valveCapacity()
                .ifPresent(limit -> writing.unjudged(
                        FindingCode.VALVE_CAPACITY, Place.Kind.ROTARY_VALVE, state, Side.AT_LEAST, limit, why));
    }

    private Step discharge(Density density) {
        double rate_kgPerS = ValveCapacity.capacity_kgPerS(
                valve.swept().cubicMetres(),
                valve.speed().revolutionsPerSecond(),
                valve.fill(),
                density.kgPerCubicMetre());
        return step(
                "RTV-1",
                "ṁ = V n fill ρ_B",
                SIZING,
                new Term("ṁ", "dust discharged when the hopper is full", new MassFlow(rate_kgPerS)),
                new Term("V", "volume of all pockets", valve.swept()),
                new Term("n", "speed of the rotor", valve.speed()),
                new Term("fill", "share of the pockets that fills", new Ratio(valve.fill())),
                new Term("ρ_B", "loose bulk density of what arrives", density));
    }

    private List<Step> capacitySteps(DustArrival arrival, Density density) {
        Step discharge = discharge(density);
        double ratio = discharge.result().value().si() / arrival.total().kgPerSecond();
        return List.of(
                discharge,
                step(
                        "RTV-7",
                        "ratio = ṁ / ṁ_collected",
                        Source.commonPractice(),
                        new Term("ratio", "discharge over the largest rate of dust", new Ratio(ratio)),
                        discharge.result(),
                        new Term("ṁ_collected", "dust into the receiver, " + arrival.state(), arrival.total())));
    }

    private void neededSpeed(DustArrival arrival, Density density) {
        double margin = plant.requirements()
                .receiver()
                .valveCapacity()
                .map(limit -> limit.value().value())
                .orElse(ValveCapacity.USUAL_MARGIN);
        MassFlow asked = new MassFlow(margin * arrival.total().kgPerSecond());
        writing.tried("needed-speed", "Speed it needs for the capacity asked", () -> {
            double speed_perS = ValveCapacity.speed_perS(
                    asked.kgPerSecond(), valve.swept().cubicMetres(), valve.fill(), density.kgPerCubicMetre());
            return List.of(step(
                    "RTV-2",
                    "n = ṁ / (V fill ρ_B)",
                    SIZING,
                    new Term("n", "speed needed", new RotationalSpeed(speed_perS)),
                    new Term("ṁ", "capacity asked: the margin times the largest rate", asked),
                    new Term("V", "volume of all pockets", valve.swept()),
                    new Term("fill", "share of the pockets that fills", new Ratio(valve.fill())),
                    new Term("ρ_B", "loose bulk density of what arrives", density)));
        });
    }

    private void speeds() {
        build.rotor()
                .ifPresentOrElse(
                        this::tips,
                        () -> notStated(
                                FindingCode.VALVE_TIP_SPEED,
                                Side.AT_MOST,
                                new Limit<>(new TipSpeed(ValveCapacity.GREATEST_TIP_mPerS), Source.commonPractice()),
                                "tip-speed",
                                "Speed of the blade tips",
                                "Enter \"rotor\" of the rotary valve."));
        build.vanes()
                .ifPresent(vanes -> writing.tried("pocket-time", "Time of one pocket", () -> {
                    double time_s =
                            ValveCapacity.pocketTime_s(vanes, valve.speed().revolutionsPerSecond());
                    return List.of(step(
                            "RTV-9",
                            "t = 1/(z n)",
                            Source.published("Mills, Pneumatic Conveying Design Guide, rotary valve section"),
                            new Term("t", "time of one pocket", new Duration(time_s)),
                            new Term("z", "blades", new Ratio(vanes)),
                            new Term("n", "speed of the rotor", valve.speed())));
                }));
    }

    private void tips(Length rotor) {
        double tip_mPerS =
                ValveCapacity.tipSpeed_mPerS(rotor.metres(), valve.speed().revolutionsPerSecond());
        TipSpeed tip = new TipSpeed(tip_mPerS);
        Step speed = step(
                "RTV-3",
                "v = π D n",
                Source.published("geometry"),
                new Term("v", "speed of the blade tips", tip),
                new Term("D", "diameter over the blade tips", rotor),
                new Term("n", "speed of the rotor", valve.speed()));
        writing.known("tip-speed", "Speed of the blade tips", tip, List.of(speed));
        writing.asked(
                FindingCode.VALVE_TIP_SPEED,
                Place.Kind.ROTARY_VALVE,
                Sheet.ANY_SET,
                Side.AT_MOST,
                tip,
                new Limit<>(new TipSpeed(ValveCapacity.GREATEST_TIP_mPerS), Source.commonPractice()));
        if (tip_mPerS <= ValveCapacity.GREATEST_TIP_mPerS && valve.fill() > ValveCapacity.usualFill(tip_mPerS)) {
            writing.words(
                    "fill-stated",
                    "Fill as stated",
                    "more than is usual at this speed: what it discharges rests on it. Ask its maker, or enter the usual fill.",
                    List.of(Writing.stated(
                            "fill", "share of the pockets that fills", new Ratio(valve.fill()), Source.entered())),
                    Source.commonPractice());
        }
        writing.tried(
                "usual-fill",
                "Usual fill at that speed",
                () -> List.of(
                        speed,
                        step(
                                "RTV-4",
                                "fill 0.75 up to 0.3 m/s, then straight down to 0.4 at 0.8 m/s",
                                Source.commonPractice(),
                                new Term(
                                        "fill",
                                        "usual share of the pockets that fills",
                                        new Ratio(ValveCapacity.usualFill(tip_mPerS))),
                                new Term("v", "speed of the blade tips", tip))));
    }

    // ---- air

    private void leak(DustArrival arrival) {
        StationResult result = arrival.station();
        Air air = plant.site().air();
        ValveAir leak = ValveAir.of(valve, air, result);
        known("leak-gaps", "Leak of its gaps, " + arrival.state(), leak.throughGaps());
        known("leak-pockets", "Leak of its returning pockets", leak.inPockets());
        known("leak", "Leak in all, " + arrival.state(), leak.all());
        otherWays(result, air);
    }

    private void known(String what, String name, List<Step> steps) {
        writing.known(what, name, steps.get(steps.size() - 1).result().value(), steps);
    }

    /** What other published ways make of the same gap: the choice is a factor of two. */
    private void otherWays(StationResult result, Air air) {
        Term area = new Term("A", "area of the gaps", valve.clearance());
        Term receiver = new Term("p", "static pressure in the receiver", result.receiver());
        writing.tried("leak-labyrinth", "Leak of its gaps as a labyrinth of 2 tips", () -> {
            double flow = ValveLeakage.labyrinth_kgPerS(
                    valve.dischargeCoefficient(),
                    valve.clearance().squareMetres(),
                    2,
                    air.ambient().pascals(),
                    result.receiver().pascals(),
                    air.rt());
            return List.of(step(
                    "RTV-15",
                    "w = Cd A p_a/√(R T) √((1 − r²)/(2 + ln 1/r)), r = p/p_a",
                    Source.fromMemory("Martin, Engineering (London), 1908, labyrinth packings"),
                    new Term("Q", "the same as free air", FreeAirFlow.of(new MassFlow(flow))),
                    area,
                    receiver));
        });
        AbsolutePressure choking = new AbsolutePressure(air.ambient().pascals()
                - ValveLeakage.chokingVacuum_Pa(air.ambient().pascals()));
        writing.known(
                "choking",
                "Vacuum at which its gaps choke",
                air.ambient().above(choking),
                List.of(step(
                        "RTV-16",
                        "vacuum = p_a (1 − 0.528282)",
                        Source.published("isentropic flow, γ = 1.4"),
                        new Term(
                                "vacuum",
                                "vacuum beyond which the gaps let up no more",
                                air.ambient().above(choking)),
                        new Term("p_a", "site barometer", air.ambient()))));
    }

    private void difference(DustArrival arrival) {
        PressureDifference across =
                plant.site().air().ambient().above(arrival.station().receiver());
        writing.known(
                "difference",
                "Pressure across it, " + arrival.state(),
                across,
                List.of(step(
                        "AIR-3",
                        "vacuum = p_a − p",
                        Source.published("definition"),
                        new Term("vacuum", "vacuum in the receiver", across),
                        new Term("p_a", "site barometer", plant.site().air().ambient()),
                        new Term(
                                "p",
                                "static pressure in the receiver",
                                arrival.station().receiver()))));
        build.greatestDifference()
                .ifPresentOrElse(
                        greatest -> writing.asked(
                                FindingCode.VALVE_DIFFERENCE,
                                Place.Kind.ROTARY_VALVE,
                                arrival.state(),
                                Side.AT_MOST,
                                across,
                                new Limit<>(greatest, Source.entered())),
                        () -> notStated(
                                FindingCode.VALVE_DIFFERENCE,
                                Side.AT_MOST,
                                MAKERS,
                                "greatest-difference",
                                "Greatest pressure its maker allows",
                                "Enter \"greatest difference\" of the rotary valve; about 1 bar (15 psi) is usual (common practice, no source)."));
    }

    /** An entry that decides a requirement and is not there: not known on the sheet, and not passed. */
    private void notStated(
            FindingCode code, Side side, Limit<? extends Quantity> limit, String what, String name, String why) {
        writing.unknown(what, name, why);
        writing.unjudged(code, Place.Kind.ROTARY_VALVE, side, limit, why);
    }

    // ---- drive

    private void drive() {
        if (build.motor().isEmpty() || build.gearEfficiency().isEmpty()) {
            notStated(
                    FindingCode.VALVE_TORQUE,
                    build.torque().isPresent() ? Side.AT_LEAST : Side.AT_MOST,
                    build.torque()
                            .<Limit<? extends Quantity>>map(t -> new Limit<>(t, Source.entered()))
                            .orElse(MAKERS),
                    "torque",
                    "Torque its motor gives at the rotor",
                    "Enter \"motor\" of the rotary valve; 0.37 to 1.5 kW (0.5 to 2 hp) is usual (common practice, no source).");
            return;
        }
        Power motor = build.motor().get();
        double efficiency = build.gearEfficiency().get();
        Optional<Quantity> torque = writing.tried(
                "torque",
                "Torque its motor gives at the rotor",
                () -> List.of(step(
                        "RTV-17",
                        "T = P η/(2 π n)",
                        POWER,
                        new Term(
                                "T",
                                "torque at the rotor",
                                new Torque(ValveDrive.torque_Nm(
                                        motor.watts(), efficiency, valve.speed().revolutionsPerSecond()))),
                        new Term("P", "motor nameplate", motor),
                        new Term("η", "efficiency of gear and chain", new Ratio(efficiency)),
                        new Term("n", "speed of the rotor", valve.speed()))));
        boolean usual = motor.watts() >= ValveDrive.USUAL_LEAST_W && motor.watts() <= ValveDrive.USUAL_GREATEST_W;
        writing.words(
                "motor",
                "Size of its motor",
                (usual ? "within" : "outside") + " 0.37 to 1.5 kW (0.5 to 2 hp), the usual size for a receiver.",
                List.of(),
                Source.commonPractice());
        torque.ifPresent(given -> build.torque()
                .ifPresentOrElse(
                        needed -> torqueAsked(given, needed),
                        () -> notStated(
                                FindingCode.VALVE_TORQUE,
                                Side.AT_MOST,
                                MAKERS,
                                "needed-torque",
                                "Torque the full rotor needs",
                                "Enter \"torque\" of the rotary valve, as its maker states it.")));
    }

    private void torqueAsked(Quantity given, Torque needed) {
        double efficiency = build.gearEfficiency().orElseThrow();
        double motor_W = ValveDrive.motor_W(
                needed.newtonMetres(), efficiency, valve.speed().revolutionsPerSecond());
        writing.known(
                "needed-motor",
                "Motor power for the stated torque",
                new Power(motor_W),
                List.of(step(
                        "RTV-18",
                        "P = 2 π n T/η",
                        POWER,
                        new Term("P", "motor power", new Power(motor_W)),
                        new Term("T", "torque the full rotor needs", needed),
                        new Term("n", "speed of the rotor", valve.speed()),
                        new Term("η", "efficiency of gear and chain", new Ratio(efficiency)))));
        writing.asked(
                FindingCode.VALVE_TORQUE,
                Place.Kind.ROTARY_VALVE,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                given,
                new Limit<>(needed, Source.entered()));
    }

    // ---- throat and gaps

    /** A hopper that ends wider than the valve under it leaves a ledge, and then the throat is the outlet. */
    private void ledge() {
        build.throat()
                .ifPresent(throat -> arrivals.station()
                        .receiver()
                        .hopper()
                        .ifPresent(hopper -> writing.asked(
                                FindingCode.HOPPER_LEDGE,
                                Place.Kind.ROTARY_VALVE,
                                Sheet.ANY_SET,
                                Side.AT_LEAST,
                                new Opening(throat),
                                new Limit<>(new Opening(hopper.outlet()), LEDGE),
                                List.of(
                                        Writing.stated(
                                                "B_in",
                                                "inlet opening of the valve",
                                                new Opening(throat),
                                                Source.entered()),
                                        Writing.stated(
                                                "B_out",
                                                "outlet of the hopper",
                                                new Opening(hopper.outlet()),
                                                Source.entered())))));
    }

    private void throat() {
        List<Step> largest = new ArrayList<>();
        for (Dust dust : arrivals.dusts()) {
            dust.inHopper().largestLump().ifPresent(lump -> largest.add(HopperLines.lumps(lump)));
        }
        build.throat()
                .ifPresentOrElse(
                        throat -> writing.given("throat", "Width of its inlet opening", new Opening(throat)),
                        () -> notStated(
                                FindingCode.VALVE_THROAT,
                                Side.AT_MOST,
                                MAKERS,
                                "throat",
                                "Width of its inlet opening",
                                "Enter \"throat\" of the rotary valve."));
        ledge();
        largest.stream()
                .max(Comparator.comparingDouble(step -> step.result().value().si()))
                .ifPresent(least -> build.throat()
                        .ifPresent(throat -> writing.asked(
                                FindingCode.VALVE_THROAT,
                                Place.Kind.ROTARY_VALVE,
                                Sheet.ANY_SET,
                                Side.AT_LEAST,
                                new Opening(throat),
                                new Limit<>(least.result().value(), least.source()),
                                Writing.statedThen(
                                        Writing.stated(
                                                "B_in",
                                                "inlet opening of the valve",
                                                new Opening(throat),
                                                Source.entered()),
                                        List.of(least)))));
        build.tipGap()
                .ifPresent(gap -> writing.words(
                        "tip-gap",
                        "Gap at the blade tips",
                        gap.metres() <= ValveLeakage.WIDEST_CLEARANCE_m
                                ? "not wider than 0.2 mm (0.0079 in), the most that is quoted for a valve that holds pressure."
                                : "wider than 0.2 mm (0.0079 in), the most that is quoted for a valve that holds pressure: worn, or not made to seal.",
                        List.of(),
                        Source.published(
                                "trade article on rotary valves: 0.2 mm (0.0079 in) at most where pressure is held")));
    }
}
