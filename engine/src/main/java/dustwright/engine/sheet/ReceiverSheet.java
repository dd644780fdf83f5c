package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

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
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Opening;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.AirToCloth;
import dustwright.engine.receiver.HoldUp;
import dustwright.engine.receiver.Hopper;
import dustwright.engine.receiver.LevelProbe;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.receiver.ReceiverInlet;
import dustwright.engine.receiver.SidePlace;
import java.util.List;
import java.util.Optional;

/** What a receiver's shell, hopper and fittings come to. */
final class ReceiverSheet {
    private static final Source GEOMETRY = Source.published("geometry");
    private static final Source PLACES = new Source(
            "three places 90° apart, and nearer than half of that is the same place; the probe moves when the inlet takes its own: common practice, no source",
            Confidence.COMMON_PRACTICE);
    private static final Limit<Angle> APART = new Limit<>(Angle.ofDegrees(45), PLACES);

    private static final Source BELOW = new Source(
            "dust at the probe leaves the filter elements and the inlet free: common practice, no source",
            Confidence.COMMON_PRACTICE);
    /** Why a level that only the probe is known to end is not taken. */
    static final String ABOVE =
            "Whether dust at the level probe would stand over filter elements or inlet is not known: enter \"elements down to\" of the"
                    + " receiver and \"low edge\" of its \"inlet\".";

    private static final String PROBE =
            "Enter \"diameter\", \"hopper: {half angle, outlet}\" and \"level probe: {height}\" of the receiver.";

    private final Arrivals arrivals;
    private final Plant plant;
    private final Station station;
    private final Receiver receiver;
    private final Writing writing;

    private ReceiverSheet(Arrivals arrivals) {
        this.arrivals = arrivals;
        this.plant = arrivals.plant();
        this.station = arrivals.station();
        this.receiver = station.receiver();
        this.writing = new Writing(station.id());
    }

    static Sheet of(Arrivals arrivals) {
        return new ReceiverSheet(arrivals).sheet();
    }

    private Sheet sheet() {
        arrivals.fastest().ifPresent(this::rising);
        CyclonicLines.write(writing, arrivals);
        places();
        probeHeight();
        holdUp(arrivals.dustiest());
        HopperLines.write(writing, receiver.hopper(), arrivals.dusts());
        ReliefLines.write(writing, station, plant.site().air());
        ShellLines.write(writing, station, plant.site().air());
        return writing.sheet("receiver", "Receiver", Place.Kind.RECEIVER);
    }

    // ---- air rising in it

    private void rising(DustArrival arrival) {
        ActualVolumeFlow flow = arrival.station().receiverFlow();
        writing.known("flow", "Actual flow, " + arrival.state(), flow, List.of(flow(arrival)));
        receiver.diameter()
                .ifPresentOrElse(
                        diameter -> writing.tried(
                                "rising",
                                "Air rises in the shell at",
                                () -> List.of(flow(arrival), can(flow, diameter))),
                        () -> writing.unknown(
                                "rising",
                                "Air rises in the shell at",
                                "The shell's diameter is not stated: enter \"diameter\" of the receiver."));
        receiver.freeArea()
                .ifPresentOrElse(
                        free -> writing.known(
                                "between",
                                "Air rises between the filters at",
                                between(flow, free),
                                List.of(flow(arrival), between(free, flow))),
                        this::betweenNotKnown);
    }

    private void betweenNotKnown() {
        String why = "The cross-section between them is not stated: enter \"free area\" of the receiver.";
        writing.unknown("between", "Air rises between the filters at", why);
        plant.requirements()
                .canVelocity()
                .ifPresent(limit ->
                        writing.unjudged(FindingCode.CAN_VELOCITY, Place.Kind.RECEIVER, Side.AT_MOST, limit, why));
    }

    private Step flow(DustArrival arrival) {
        StationResult result = arrival.station();
        return step(
                "RCV-1",
                "Q = w R T / p",
                Source.published("ideal gas law"),
                new Term("Q", "actual flow in the receiver", result.receiverFlow()),
                new Term("w", "air through the filter", result.throughFilter()),
                new Term(
                        "T",
                        "air temperature at the cloth",
                        station.filter().temperature(plant.site().air().temperature())),
                new Term("p", "static pressure in the receiver", result.receiver()));
    }

    private static Step can(ActualVolumeFlow flow, Length diameter) {
        double velocity = AirToCloth.canVelocity_mPerS(flow.cubicMetresPerSecond(), diameter.metres());
        return step(
                "FLT-13",
                "v = 4 Q / (π D²)",
                Source.published("definition"),
                new Term("v", "upward velocity in the whole shell", new Velocity(velocity)),
                new Term("Q", "actual flow in the receiver", flow),
                new Term("D", "diameter of the shell", diameter));
    }

    private static Velocity between(ActualVolumeFlow flow, Area free) {
        return new Velocity(flow.cubicMetresPerSecond() / free.squareMetres());
    }

    private static Step between(Area free, ActualVolumeFlow flow) {
        return step(
                "RCV-2",
                "v = Q / A",
                Source.published("continuity"),
                new Term("v", "upward velocity between the filter elements", between(flow, free)),
                new Term("Q", "actual flow in the receiver", flow),
                new Term("A", "free cross-section between the filter elements", free));
    }

    // ---- where inlet and probe sit

    private void places() {
        Optional<SidePlace> inlet = receiver.inlet().flatMap(ReceiverInlet::place);
        Optional<SidePlace> probe = receiver.probe().flatMap(LevelProbe::place);
        if (inlet.isEmpty() || probe.isEmpty()) {
            String why = "Enter \"inlet: {place: ...}\" and \"level probe: {}\" of the receiver.";
            writing.unknown("places", "Inlet and level probe apart by", why);
            writing.unjudged(FindingCode.LEVEL_PROBE_PLACE, Place.Kind.RECEIVER, Side.AT_LEAST, APART, why);
            return;
        }
        Angle apart = inlet.get().angleTo(probe.get());
        writing.known(
                "places",
                "Inlet " + inlet.get().words() + ", level probe " + probe.get().words() + ": apart by",
                apart,
                List.of(step(
                        "RCV-20",
                        "left, rear and right are 90° apart, seen from the access door",
                        PLACES,
                        new Term("α", "angle around the shell from inlet to probe", apart))));
        writing.asked(FindingCode.LEVEL_PROBE_PLACE, Place.Kind.RECEIVER, Sheet.ANY_SET, Side.AT_LEAST, apart, APART);
    }

    /** Dust at the probe must leave elements and inlet free; a probe nobody describes is asked for with its place. */
    private void probeHeight() {
        if (receiver.probe().isEmpty()) {
            return;
        }
        Optional<Length> height = receiver.probe().flatMap(LevelProbe::height);
        Optional<Length> lowest = receiver.lowestAbove();
        receiver.elementsDownTo().ifPresent(low -> writing.given("elements", "Filter elements hang down to", low));
        receiver.inlet()
                .flatMap(ReceiverInlet::lowEdge)
                .ifPresent(edge -> writing.given("inlet-edge", "Lower edge of the inlet", edge));
        boolean above = height.isPresent()
                && lowest.filter(low -> low.compareTo(height.get()) < 0).isPresent();
        if (above || (height.isPresent() && receiver.knownAbove())) {
            writing.asked(
                    FindingCode.LEVEL_PROBE_HEIGHT,
                    Place.Kind.RECEIVER,
                    Sheet.ANY_SET,
                    Side.AT_MOST,
                    height.get(),
                    new Limit<>(lowest.orElseThrow(), BELOW),
                    List.of(Writing.stated("h", "level probe, over the outlet", height.get(), Source.entered())));
            return;
        }
        writing.notSaid(
                FindingCode.LEVEL_PROBE_HEIGHT,
                Place.Kind.RECEIVER,
                BELOW,
                height.isEmpty() ? "Enter \"height\" of the \"level probe\"." : ABOVE);
    }

    // ---- hold-up

    private void holdUp(Optional<DustArrival> dustiest) {
        Optional<Volume> volume = workingVolume();
        if (volume.isEmpty()) {
            holdUpNotKnown(Sheet.ANY_SET, "The working volume up to the probe is not known. " + PROBE);
            return;
        }
        String name = "Time to high level without discharge";
        if (dustiest.isEmpty()) {
            String why = "No dust reaches this receiver: enter \"feed\" of the inlets that are open together.";
            writing.unknown("hold-up", name, why);
            if (arrivals.noFeedStated()) {
                holdUpNotKnown(Sheet.ANY_SET, why);
            }
            return;
        }
        DustArrival arrival = dustiest.get();
        Optional<Density> density = arrival.density();
        if (density.isEmpty()) {
            String why = arrival.whyNoVolume();
            writing.unknown("hold-up", name, why);
            holdUpNotKnown(arrival.state(), why);
            return;
        }
        arrivals.ofUnknownVolume().ifPresent(other -> holdUpNotKnown(other.state(), other.whyNoVolume()));
        Optional<Quantity> time = writing.tried(
                "hold-up", name + ", " + arrival.state(), () -> holdUpSteps(volume.get(), arrival, density.get()));
        time.ifPresentOrElse(
                value -> plant.requirements().receiver().holdUp().ifPresent(limit -> {
                    if (receiver.knownAbove() || value.si() < limit.value().si()) {
                        writing.asked(
                                FindingCode.HOLD_UP, Place.Kind.RECEIVER, arrival.state(), Side.AT_LEAST, value, limit);
                    } else {
                        holdUpNotKnown(arrival.state(), ABOVE);
                    }
                }),
                () -> holdUpNotKnown(arrival.state(), "Outside the formula of the hold-up, see the receiver's sheet."));
    }

    private void holdUpNotKnown(String state, String why) {
        plant.requirements()
                .receiver()
                .holdUp()
                .ifPresent(limit ->
                        writing.unjudged(FindingCode.HOLD_UP, Place.Kind.RECEIVER, state, Side.AT_LEAST, limit, why));
    }

    private Optional<Volume> workingVolume() {
        Optional<Length> height = receiver.highestLevel();
        boolean byProbe = height.equals(receiver.probe().flatMap(LevelProbe::height));
        String name = byProbe
                ? "Working volume up to the probe"
                        + (receiver.knownAbove() ? "" : ", if elements and inlet end above it")
                : "Working volume, up to elements or inlet below the probe";
        if (receiver.diameter().isEmpty() || receiver.hopper().isEmpty() || height.isEmpty()) {
            writing.unknown("working-volume", name, PROBE);
            return Optional.empty();
        }
        return writing.tried(
                        "working-volume",
                        name,
                        () -> List.of(volumeStep(
                                receiver.diameter().get(), receiver.hopper().get(), height.get())))
                .map(Volume.class::cast);
    }

    private static Step volumeStep(Length diameter, Hopper hopper, Length level) {
        Length inCone =
                new Length(Math.min(level.metres(), hopper.heightTo(diameter).metres()));
        return step(
                "RCV-8",
                "V = π h (D² + D d + d²)/12 + π D² h_c/4",
                GEOMETRY,
                new Term("V", "volume up to the highest level", hopper.volumeUpTo(level, diameter)),
                new Term("D", "diameter at the top of the dust or of the cone", hopper.diameterAt(inCone)),
                new Term("d", "diameter of the outlet", new Opening(hopper.outlet())),
                new Term("h", "height in the cone", inCone),
                new Term("h_c", "height in the cylinder", new Length(level.metres() - inCone.metres())));
    }

    private static List<Step> holdUpSteps(Volume volume, DustArrival arrival, Density density) {
        double time_s = HoldUp.timeToHighLevel_s(
                volume.cubicMetres(), density.kgPerCubicMetre(), arrival.total().kgPerSecond());
        MassFlow rate = arrival.total();
        return List.of(step(
                "RCV-9",
                "t = V ρ_B / ṁ",
                Source.published("mass balance"),
                new Term("t", "time to the highest level", new Duration(time_s)),
                new Term("V", "volume up to the highest level", volume),
                new Term("ρ_B", "loose bulk density of what arrives", density),
                new Term("ṁ", "dust into the receiver, " + arrival.state(), rate)));
    }
}
