package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.Particle;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Viscosity;
import dustwright.engine.receiver.CyclonicInlet;
import dustwright.engine.receiver.Hopper;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.receiver.ReceiverInlet;
import dustwright.engine.receiver.ReceiverInlet.Slot;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a tangential inlet takes out before the cloth, by the laws of a Lapple cyclone: an estimate of the coarse cut only. */
final class CyclonicLines {
    private static final Source LAPPLE =
            Source.fromMemory("Lapple, as in EPA course material; a receiver is no Lapple cyclone");
    private static final Source FIT = Source.fromMemory("Theodore and De Paola's fit to Lapple's curve");

    private final Writing writing;
    private final Arrivals arrivals;

    private CyclonicLines(Writing writing, Arrivals arrivals) {
        this.writing = writing;
        this.arrivals = arrivals;
    }

    static void write(Writing writing, Arrivals arrivals) {
        Receiver receiver = arrivals.station().receiver();
        writing.given("pre-separation", "Taken to fall out before the cloth", receiver.preSeparation());
        Optional<Slot> slot = receiver.inlet().flatMap(ReceiverInlet::slot);
        Optional<DustArrival> fastest = arrivals.fastest();
        if (slot.isPresent() && fastest.isPresent()) {
            new CyclonicLines(writing, arrivals).write(slot.get(), fastest.get());
        }
    }

    private void write(Slot slot, DustArrival arrival) {
        Step velocity = velocity(slot, arrival);
        writing.known(
                "inlet-velocity",
                "Velocity in the tangential inlet",
                velocity.result().value(),
                List.of(velocity));
        for (Dust dust : arrivals.dusts()) {
            separated(dust, slot, arrival, (Velocity) velocity.result().value());
        }
    }

    private static Step velocity(Slot slot, DustArrival arrival) {
        double area_m2 = slot.width().metres() * slot.height().metres();
        Velocity velocity = new Velocity(arrival.station().receiverFlow().cubicMetresPerSecond() / area_m2);
        return step(
                "TUB-6",
                "v = Q / (W H)",
                Source.published("continuity"),
                new Term("v", "velocity in the inlet; 15 to 30 m/s is usual (Tan 2014)", velocity),
                new Term(
                        "Q",
                        "actual flow in the receiver, " + arrival.state(),
                        arrival.station().receiverFlow()),
                new Term("W", "width of the inlet", slot.width()),
                new Term("H", "height of the inlet", slot.height()));
    }

    private void separated(Dust dust, Slot slot, DustArrival arrival, Velocity velocity) {
        String id = "coarse-cut-" + dust.id();
        String name = "Coarse cut, estimated, " + dust.name();
        Receiver receiver = arrivals.station().receiver();
        if (dust.particle().isEmpty()
                || receiver.straightSide().isEmpty()
                || receiver.hopper().isEmpty()
                || receiver.diameter().isEmpty()) {
            writing.unknown(
                    id,
                    name,
                    "Enter \"particle size\" and \"particle density\" of the dust, and \"diameter\", \"straight side\" and"
                            + " \"hopper\" of the receiver.");
            return;
        }
        Length body = receiver.straightSide().get();
        Hopper hopper = receiver.hopper().get();
        Length cone = hopper.heightTo(receiver.diameter().get());
        double turns = CyclonicInlet.turns(slot.height().metres(), body.metres(), cone.metres());
        if (turns > CyclonicInlet.MOST_TURNS) {
            writing.unknown(
                    id,
                    name,
                    String.format(
                            Locale.ROOT,
                            "This vessel is too far from a cyclone: over an inlet so low for its height the law would have the air turn"
                                    + " %.0f times, where cyclones make 5 to 10 (from memory). Ask its maker what falls out before the"
                                    + " cloth.",
                            turns));
            return;
        }
        writing.tried(id, name, () -> steps(dust.particle().get(), slot, body, cone, arrival, velocity));
    }

    private List<Step> steps(
            Particle particle, Slot slot, Length body, Length cone, DustArrival arrival, Velocity velocity) {
        Air air = arrivals.plant().site().air();
        Density gas =
                new Density(air.density_kgPerM3(arrival.station().receiver().pascals()));
        double turns = CyclonicInlet.turns(slot.height().metres(), body.metres(), cone.metres());
        double cut_m = CyclonicInlet.cutSize_m(
                air.viscosity_PaS(),
                slot.width().metres(),
                turns,
                velocity.metresPerSecond(),
                particle.density().kgPerCubicMetre(),
                gas.kgPerCubicMetre());
        Term cut = new Term("d50", "size of which half is separated", new Length(cut_m));
        Term ne = new Term("Ne", "turns of the air", new Ratio(turns));
        return List.of(
                step(
                        "FLT-16",
                        "Ne = (Lb + Lc/2)/H",
                        LAPPLE,
                        ne,
                        new Term("Lb", "straight side", body),
                        new Term("Lc", "height of the cone", cone),
                        new Term("H", "height of the inlet", slot.height())),
                step(
                        "FLT-17",
                        "d50 = √(9 μ W/(2 π Ne v (ρ_p − ρ_g)))",
                        LAPPLE,
                        cut,
                        new Term("μ", "viscosity of the air", new Viscosity(air.viscosity_PaS())),
                        new Term("W", "width of the inlet", slot.width()),
                        ne,
                        new Term("v", "velocity in the inlet", velocity),
                        new Term("ρ_p", "density of the particles", particle.density()),
                        new Term("ρ_g", "density of the air in the receiver", gas)),
                step(
                        "FLT-18",
                        "η = 1/(1 + (d50/d)²)",
                        FIT,
                        new Term(
                                "η",
                                "share of its mean size that falls out",
                                new Ratio(CyclonicInlet.gradeEfficiency(
                                        cut_m, particle.size().metres()))),
                        cut,
                        new Term("d", "mean size", particle.size())));
    }
}
