package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.bagging.BagAir;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.rotaryvalve.ValveCapacity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Air of a container: blown in before it fills, pushed out by dust, drawn up by the valve, and the cloth that passes it. */
final class ContainerAirLines {
    private static final Source VOLUME_BALANCE = Source.published("volume balance");
    private static final Source BALANCE_OF_FORCES =
            Source.ownReading("balance of forces on the cloth: a lower bound, folds and a liner take more");
    private static final Source PRACTICE = Source.commonPractice();
    private static final Source OPEN_TO_VACUUM = Source.ownReading("what is open to the vacuum has its pressure");
    private static final String NO_VALVE =
            "No rotary valve: the container stands under the receiver's vacuum, and no vent sock may open it.";

    private final Plant plant;
    private final Station station;
    private final Container container;
    private final Writing writing;

    ContainerAirLines(Plant plant, Station station, Container container, Writing writing) {
        this.plant = plant;
        this.station = station;
        this.container = container;
        this.writing = writing;
    }

    void write(StationDust load, List<DutyPoint> duties) {
        container.bag().ifPresent(this::inflation);
        Optional<RotaryValve> valve = station.rotaryValve();
        if (valve.isEmpty()) {
            underVacuum();
            return;
        }
        Optional<Double> loose_kgPerM3 = load.loose_kgPerM3(plant);
        if (loose_kgPerM3.isEmpty()) {
            noSock(
                    "sock",
                    "Air through the vent sock",
                    load.rate_kgPerS() > 0
                            ? "Enter the bulk density of every dust that comes here."
                            : load.whyNothing());
            return;
        }
        if (!valve.get().fillKnown()) {
            noSock("sock", "Air through the vent sock", RotaryValveSheet.TOO_FAST);
            return;
        }
        List<Step> outward = List.of(displaced(valve.get(), loose_kgPerM3.get()));
        writing.known("air-out", "Air pushed out at full discharge, vacuum off", result(outward), outward);
        Optional<List<Step>> inward = deepest(duties).map(deep -> inward(valve.get(), deep));
        inward.ifPresentOrElse(
                steps -> writing.known("air-in", "Air drawn in while no dust falls, vacuum on", result(steps), steps),
                () -> writing.unknown(
                        "air-in", "Air drawn in while no dust falls", "No solved state makes a vacuum here."));
        sock(outward, inward);
    }

    /** A drum may bear what its receiver does; a bag is cloth. */
    private void underVacuum() {
        writing.words("sock", "Air of the container", NO_VALVE, List.of(), OPEN_TO_VACUUM);
        plant.operation()
                .asked()
                .sockVelocity()
                .ifPresent(limit -> writing.unjudged(
                        FindingCode.SOCK_VELOCITY, Place.Kind.CONTAINER, Side.AT_MOST, limit, NO_VALVE));
        if (container.bag().isPresent()) {
            writing.none(
                    FindingCode.BAG_UNDER_VACUUM,
                    Place.Kind.CONTAINER,
                    "bulk bags open to the receiver's vacuum",
                    1,
                    OPEN_TO_VACUUM);
        } else {
            drum();
        }
    }

    /** A drum under the vacuum that the receiver's shell is held against. */
    private void drum() {
        Air air = plant.site().air();
        Optional<Limit<PressureDifference>> deepest = ShellLines.deepestAsked(station, air);
        if (deepest.isEmpty()) {
            return;
        }
        if (container.greatestVacuum().isEmpty()) {
            writing.unjudged(
                    FindingCode.DRUM_VACUUM,
                    Place.Kind.CONTAINER,
                    Side.AT_LEAST,
                    deepest.get(),
                    "Enter \"greatest vacuum\" of the drum as its maker states it, or fit a rotary valve.");
            return;
        }
        PressureDifference borne = container.greatestVacuum().get();
        BlockedVacuum blocked = BlockedVacuum.relieved(station, air);
        List<Step> steps =
                Writing.statedThen(Writing.stated("v", "vacuum it bears", borne, Source.entered()), blocked.steps());
        BlockedVacuum.judge(
                writing,
                blocked.notMeasured(),
                FindingCode.DRUM_VACUUM,
                Place.Kind.CONTAINER,
                new BlockedVacuum.Judged(Side.AT_LEAST, borne, deepest.get(), steps));
    }

    private static ActualVolumeFlow result(List<Step> steps) {
        return (ActualVolumeFlow) steps.get(steps.size() - 1).result().value();
    }

    // ---- before filling

    private void inflation(BulkBag bag) {
        writing.known(
                "inflation-volume",
                "Air to inflate it first",
                container.volume(),
                List.of(step(
                        "BAG-16",
                        "V_air = V, a few inH2O of pressure left out",
                        VOLUME_BALANCE,
                        new Term("V_air", "air at the barometer", container.volume()),
                        new Term("V", "volume of the bag", container.volume()))));
        bag.stand()
                .inflation()
                .ifPresentOrElse(
                        fan -> fan(bag, fan),
                        () -> writing.unknown(
                                "inflation-time",
                                "Time to inflate it first",
                                "Nothing inflates the bag: enter \"inflation: {flow, pressure}\" of its stand."));
        if (bag.fillsByUnknownShare()) {
            writing.unknown(
                    "fills-short",
                    "Volume that fills, not inflated",
                    "A bag that is not inflated fills short, here its whole volume is taken: enter"
                            + " \"fill without inflation\".");
        }
    }

    private void fan(BulkBag bag, BulkBag.Inflation fan) {
        writing.tried("inflation-time", "Time to inflate it first", () -> List.of(inflated(fan)))
                .ifPresent(time -> writing.asked(
                        FindingCode.INFLATION_TIME,
                        Place.Kind.CONTAINER,
                        Sheet.ANY_SET,
                        Side.AT_MOST,
                        time,
                        new Limit<>(container.changing().time(), Source.entered())));
        if (fan.pressure().isEmpty() || bag.empty().isEmpty() || bag.size().isEmpty()) {
            String why =
                    "Enter \"pressure\" of its \"inflation\", and \"empty\" and \"size\" of the bag; a few inches of water are usual.";
            writing.unknown("inflation-pressure", "Pressure that lifts the empty bag", why);
            writing.notSaid(FindingCode.INFLATION_PRESSURE, Place.Kind.CONTAINER, BALANCE_OF_FORCES, why);
            return;
        }
        Step lifts = lifts(bag.empty().get(), bag.size().get());
        PressureDifference least = (PressureDifference) lifts.result().value();
        writing.known("inflation-pressure", "Pressure that lifts the empty bag, least", least, List.of(lifts));
        writing.asked(
                FindingCode.INFLATION_PRESSURE,
                Place.Kind.CONTAINER,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                fan.pressure().get(),
                new Limit<>(least, BALANCE_OF_FORCES),
                Writing.statedThen(
                        Writing.stated(
                                "p", "pressure the fan can make", fan.pressure().get(), Source.entered()),
                        List.of(lifts)));
    }

    /** Air that opens a bag carries at least its cloth. */
    private static Step lifts(Mass empty, BulkBag.Size size) {
        double least_Pa = BagAir.liftingPressure_Pa(
                empty.kilograms(), size.width().metres() * size.depth().metres());
        return step(
                "BAG-22",
                "p = m g / (W D)",
                BALANCE_OF_FORCES,
                new Term("p", "pressure that carries the empty bag", new PressureDifference(least_Pa)),
                new Term("m", "empty bag with its liner", empty),
                new Term("W", "width", size.width()),
                new Term("D", "depth", size.depth()));
    }

    private Step inflated(BulkBag.Inflation fan) {
        double time_s =
                BagAir.inflation_s(container.volume().cubicMetres(), fan.flow().cubicMetresPerSecond());
        return step(
                "BAG-16",
                "t = V / Q",
                VOLUME_BALANCE,
                new Term("t", "time to inflate the bag", new Duration(time_s)),
                new Term("V", "volume of the bag", container.volume()),
                new Term("Q", "fan or air supply, at the barometer", fan.flow()));
    }

    // ---- while it fills

    private Step displaced(RotaryValve valve, double loose_kgPerM3) {
        double capacity_kgPerS = ValveCapacity.capacity_kgPerS(
                valve.swept().cubicMetres(), valve.speed().revolutionsPerSecond(), valve.fill(), loose_kgPerM3);
        return step(
                "BAG-12",
                "Q = ṁ / ρ_B",
                VOLUME_BALANCE,
                new Term(
                        "Q",
                        "air pushed out",
                        new ActualVolumeFlow(BagAir.displaced_m3PerS(capacity_kgPerS, loose_kgPerM3))),
                new Term("ṁ", "dust the full valve discharges (RTV-1)", new MassFlow(capacity_kgPerS)),
                new Term("ρ_B", "loose bulk density of what comes", new Density(loose_kgPerM3)));
    }

    private Optional<StationResult> deepest(List<DutyPoint> duties) {
        return duties.stream()
                .flatMap(duty -> duty.stations().stream())
                .filter(result -> result.id().equals(station.id()))
                .filter(result -> result.receiver().pascals()
                        < plant.site().air().ambient().pascals())
                .min(Comparator.comparingDouble(result -> result.receiver().pascals()));
    }

    /** Deepest vacuum of all sets, no dust falling: the sock passes air inward. */
    private List<Step> inward(RotaryValve valve, StationResult deep) {
        Air air = plant.site().air();
        AbsolutePressure receiver = deep.receiver();
        double pockets_m3PerS = BagAir.drawnByPockets_m3PerS(
                valve.swept().cubicMetres(), valve.speed().revolutionsPerSecond());
        double clearance_kgPerS = valve.clearanceAir_kgPerS(receiver.pascals(), air);
        double clearance_m3PerS =
                clearance_kgPerS / air.density_kgPerM3(air.ambient().pascals());
        double net_m3PerS = -BagAir.throughSock_m3PerS(0, pockets_m3PerS, clearance_m3PerS);
        Term pockets = new Term("Q_pockets", "taken up by returning pockets", new ActualVolumeFlow(pockets_m3PerS));
        Term gaps = new Term("Q_gaps", "drawn up through the gaps", new ActualVolumeFlow(clearance_m3PerS));
        return List.of(
                step(
                        "BAG-13",
                        "Q_pockets = V_rev n",
                        Source.published("each returning pocket leaves full of air of the container"),
                        pockets,
                        new Term("V_rev", "volume of all pockets", valve.swept()),
                        new Term("n", "speed of the rotor", valve.speed())),
                step(
                        "RV-1",
                        "Q_gaps = w / ρ_a, nozzle through the clearance",
                        Source.published("isentropic nozzle"),
                        gaps,
                        new Term("p", "lowest pressure in the receiver", receiver),
                        new Term("A", "clearance", valve.clearance()),
                        new Term("w", "air through the gaps", new MassFlow(clearance_kgPerS))),
                step(
                        "BAG-14",
                        "Q = Q_pockets + Q_gaps − Q_displaced",
                        VOLUME_BALANCE,
                        new Term("Q", "air drawn in", new ActualVolumeFlow(net_m3PerS)),
                        pockets,
                        gaps));
    }

    // ---- the sock

    private void sock(List<Step> outward, Optional<List<Step>> inward) {
        boolean suction = inward.filter(
                        steps -> result(steps).si() > result(outward).si())
                .isPresent();
        List<Step> governing = suction ? inward.orElseThrow() : outward;
        ActualVolumeFlow flow = result(governing);
        writing.words(
                "sock-direction",
                "The vent sock passes more air",
                suction
                        ? "inward: the bag is under suction while vacuum is on, and a loose liner may be drawn into the spout"
                        : "outward, pushed out by dust",
                governing,
                VOLUME_BALANCE);
        for (double velocity_mPerS : new double[] {BagAir.USUAL_SOCK_GREATEST_mPerS, BagAir.USUAL_SOCK_LEAST_mPerS}) {
            boolean least = velocity_mPerS == BagAir.USUAL_SOCK_GREATEST_mPerS;
            writing.tried(
                    least ? "sock-least" : "sock-ample",
                    "Vent sock, " + (least ? "least area" : "ample area, at half that velocity"),
                    () -> with(governing, area(flow, velocity_mPerS)));
        }
        container
                .ventSock()
                .ifPresentOrElse(
                        area -> through(governing, flow, area),
                        () -> noSock(
                                "sock-velocity", "Velocity through the vent sock", "Enter the area of \"vent sock\"."));
    }

    private void noSock(String what, String name, String why) {
        writing.unknown(what, name, why);
        plant.operation()
                .asked()
                .sockVelocity()
                .ifPresent(limit ->
                        writing.unjudged(FindingCode.SOCK_VELOCITY, Place.Kind.CONTAINER, Side.AT_MOST, limit, why));
    }

    private static List<Step> with(List<Step> steps, Step last) {
        List<Step> all = new ArrayList<>(steps);
        all.add(last);
        return all;
    }

    private static Step area(ActualVolumeFlow flow, double velocity_mPerS) {
        return step(
                "BAG-15",
                "A = Q / v",
                PRACTICE,
                new Term(
                        "A",
                        "area of cloth",
                        new Area(BagAir.sockArea_m2(flow.cubicMetresPerSecond(), velocity_mPerS))),
                new Term("Q", "larger flow of both directions", flow),
                new Term("v", "usual velocity through the cloth", new Velocity(velocity_mPerS)));
    }

    private void through(List<Step> governing, ActualVolumeFlow flow, Area area) {
        Velocity velocity = new Velocity(flow.cubicMetresPerSecond() / area.squareMetres());
        List<Step> steps = with(
                governing,
                step(
                        "BAG-15",
                        "v = Q / A",
                        Source.published("definition"),
                        new Term("v", "velocity through the cloth", velocity),
                        new Term("Q", "larger flow of both directions", flow),
                        new Term("A", "area of the vent sock", area)));
        writing.known("sock-velocity", "Velocity through the vent sock", velocity, steps);
        plant.operation()
                .asked()
                .sockVelocity()
                .ifPresent(limit -> writing.asked(
                        FindingCode.SOCK_VELOCITY,
                        Place.Kind.CONTAINER,
                        Sheet.ANY_SET,
                        Side.AT_MOST,
                        velocity,
                        limit,
                        steps));
    }
}
