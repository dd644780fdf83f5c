package dustwright.engine;

import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.RiserFoot;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.tubing.Tool;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What is asked of tubing and hoses in one solved state: carry the dust, do not wear, do not choke. */
final class TubeChecks {
    /** Air for which the velocities of dust classes are stated, near the atmosphere's [kg/m³]. */
    private static final double CLASS_AIR_kgPerM3 = 1.2;

    /** Dust over air beyond which there is as good as no air [kg/kg]. */
    private static final double NO_AIR = 1e6;

    private final Plant plant;
    private final DutyPoint duty;
    private final DustPaths paths;

    private TubeChecks(Plant plant, DutyPoint duty) {
        this.plant = plant;
        this.duty = duty;
        this.paths = DustPaths.of(plant, duty);
    }

    static List<Finding> of(Plant plant, DutyPoint duty) {
        TubeChecks checks = new TubeChecks(plant, duty);
        List<Finding> findings = new ArrayList<>();
        for (LegResult leg : duty.legs()) {
            checks.transport(leg).ifPresent(findings::add);
            checks.carrying(leg).ifPresent(findings::add);
            checks.loading(leg).ifPresent(findings::add);
            checks.nearChoking(leg).ifPresent(findings::add);
            checks.wear(leg).ifPresent(findings::add);
            checks.choked(leg).ifPresent(findings::add);
            checks.lump(leg).ifPresent(findings::add);
        }
        findings.addAll(checks.notCarriedForSure());
        return findings;
    }

    /** Whether dust comes along: followed from the inlets, whatever the plant file says of the run. */
    private boolean carriesDust(LegResult leg) {
        return paths.mostDemanding(leg).isPresent();
    }

    private Optional<Finding> transport(LegResult leg) {
        if (!carriesDust(leg)) {
            return Optional.empty();
        }
        Dust dust = paths.mostDemanding(leg).orElseThrow();
        Limit<Ratio> factor = plant.requirements().transportFactor();
        Velocity least = new Velocity(
                dust.minimumVelocity().metresPerSecond() * factor.value().value());
        return Optional.of(finding(
                FindingCode.TRANSPORT_VELOCITY,
                leg,
                Side.AT_LEAST,
                leg.slowest(),
                least,
                () -> transportSteps(leg, dust, factor, least),
                dust.basis()));
    }

    private List<Step> transportSteps(LegResult leg, Dust dust, Limit<Ratio> factor, Velocity least) {
        Workings workings = new Workings(plant);
        workings.inflow(duty, leg);
        slowest(workings, leg);
        workings.add(
                "CON-1",
                "v_least = factor · v_min(dust)",
                List.of(
                        new Term("factor", "transport factor", factor.value()),
                        new Term("v_min", "minimum velocity of " + dust.name(), dust.minimumVelocity())),
                new Term("v_least", "velocity needed", least),
                dust.basis());
        dust.dustClass().ifPresent(made -> thinAir(workings, leg, least));
        workings.legLaw(duty, leg);
        return workings.steps();
    }

    /** What the velocity of a class would be in the air of this piece: shown, not asked. */
    private void thinAir(Workings workings, LegResult leg, Velocity least) {
        Density density =
                new Density(plant.site().air().density_kgPerM3(leg.upstream().pascals()));
        double share = Math.sqrt(CLASS_AIR_kgPerM3 / density.kgPerCubicMetre());
        workings.add(
                "CON-46",
                "v_thin = v_least √(1.2 kg/m³ / ρ), shown and not asked",
                List.of(
                        new Term("v_least", "velocity needed in the air of the class's table", least),
                        new Term("ρ", "air density at the slowest point", density)),
                new Term("v_thin", "in air this thin", new Velocity(share * least.metresPerSecond())),
                Source.commonPractice());
    }

    private Optional<Finding> carrying(LegResult leg) {
        Optional<Limit<Ratio>> factor = plant.requirements().saltationFactor();
        Optional<CarryingVelocity.Binding> binding = factor.flatMap(f -> Carrying.binding(Carrying.of(plant, leg)));
        return binding.map(law -> finding(
                FindingCode.CARRYING_VELOCITY,
                leg,
                Side.AT_LEAST,
                leg.slowest(),
                new Velocity(factor.get().value().value() * law.velocity().metresPerSecond()),
                () -> carryingSteps(leg, law, factor.get()),
                factor.get().source()));
    }

    /** Where no published law may be asked: what is asked of them then neither holds nor fails, said once per dust with all its pieces. */
    private List<Finding> notCarriedForSure() {
        return plant.requirements().saltationFactor().stream()
                .flatMap(
                        factor -> LawsNotAsked.of(plant, duty).stream().map(dust -> dust.finding(duty.state(), factor)))
                .toList();
    }

    private List<Step> carryingSteps(LegResult leg, CarryingVelocity.Binding binding, Limit<Ratio> factor) {
        SolidsWorkings workings = new SolidsWorkings(plant);
        workings.air().inflow(duty, leg);
        slowest(workings.air(), leg);
        workings.carryingVelocity(leg, binding);
        workings.air()
                .add(
                        "CON-25",
                        "v_least = margin · U, stated or the greatest of all laws inside their range",
                        List.of(
                                new Term("margin", "margin asked", factor.value()),
                                new Term("U", "by " + binding.words(), binding.velocity())),
                        new Term(
                                "v_least",
                                "velocity needed",
                                new Velocity(factor.value().value()
                                        * binding.velocity().metresPerSecond())),
                        binding.source());
        workings.air().legLaw(duty, leg);
        return workings.air().steps();
    }

    private Optional<Finding> loading(LegResult leg) {
        return plant.requirements()
                .loadingRatio()
                .filter(limit -> leg.dust().kgPerSecond() > 0)
                .map(limit -> leg.loading() > NO_AIR ? becalmed(leg, limit) : loading(leg, limit));
    }

    /** No share of nothing: dust is fed, and as good as no air passes. */
    private Finding becalmed(LegResult leg, Limit<Ratio> limit) {
        return Finding.unjudged(
                FindingCode.LOADING_RATIO,
                place(leg),
                duty.state().name(),
                Side.AT_MOST,
                limit.value(),
                limit.source(),
                "Dust is fed here and no air passes: no producer runs in this set, or none draws from here.");
    }

    private Finding loading(LegResult leg, Limit<Ratio> limit) {
        return Finding.of(
                FindingCode.LOADING_RATIO,
                place(leg),
                duty.state().name(),
                Side.AT_MOST,
                new Ratio(leg.loading()),
                limit.value(),
                new Derivation(() -> loadingSteps(leg), limit.source()));
    }

    private List<Step> loadingSteps(LegResult leg) {
        SolidsWorkings workings = new SolidsWorkings(plant);
        workings.air().inflow(duty, leg);
        workings.loading(leg);
        return workings.air().steps();
    }

    /** How far the air at the foot of a rise is from the velocity of least drop, in the stream that is nearest. */
    private Optional<Finding> nearChoking(LegResult leg) {
        Optional<RiserFoot.Found> nearest = leg.streams().stream()
                .flatMap(stream -> stream.foot().stream())
                .max(Comparator.comparing(RiserFoot.Found::leastDrop));
        return nearest.map(foot -> finding(
                FindingCode.NEAR_CHOKING,
                leg,
                Side.AT_LEAST,
                foot.gas(),
                foot.leastDrop(),
                () -> nearChokingSteps(leg, foot),
                SolidsWorkings.LEAST_DROP));
    }

    private List<Step> nearChokingSteps(LegResult leg, RiserFoot.Found foot) {
        SolidsWorkings workings = new SolidsWorkings(plant);
        workings.air().inflow(duty, leg);
        workings.air().legLaw(duty, leg);
        workings.leastDrop(leg, foot);
        return workings.air().steps();
    }

    private static void slowest(Workings workings, LegResult leg) {
        workings.velocity(leg, leg.upstream(), leg.slowest(), "at the slowest point");
    }

    /** Asked while nobody picks up dust too: air that is slowed by little dust is hardly slower, and that dust wears. */
    private Optional<Finding> wear(LegResult leg) {
        Optional<Limit<Velocity>> limit = plant.requirements().wearVelocity();
        if (limit.isEmpty() || leg.kind() != LegResult.Kind.RUN || !carriesDust(leg)) {
            return Optional.empty();
        }
        return Optional.of(finding(
                FindingCode.WEAR_VELOCITY,
                leg,
                Side.AT_MOST,
                leg.fastest(),
                limit.get().value(),
                () -> wearSteps(leg),
                limit.get().source()));
    }

    private List<Step> wearSteps(LegResult leg) {
        Workings workings = new Workings(plant);
        workings.inflow(duty, leg);
        workings.legLaw(duty, leg);
        boolean fastAtFrom = leg.velocityFrom().compareTo(leg.velocityTo()) > 0;
        AbsolutePressure at = fastAtFrom ? leg.pressureFrom() : leg.pressureTo();
        workings.velocity(leg, at, leg.fastest(), "at the fastest point");
        return workings.steps();
    }

    /** A choked piece: the point after it lies below the sonic end pressure, and no more vacuum brings more air. */
    private Optional<Finding> choked(LegResult leg) {
        if (!leg.choked()) {
            return Optional.empty();
        }
        boolean forward = leg.flow().kgPerSecond() >= 0;
        String node = forward ? leg.to() : leg.from();
        AbsolutePressure sonic = forward ? leg.pressureTo() : leg.pressureFrom();
        AbsolutePressure point = duty.pressureAt(node);
        Workings workings = new Workings(plant);
        workings.legLaw(duty, leg);
        Source source = Source.published("isothermal choking at Mach 1/√γ: Crane TP-410 (2009); Perry");
        workings.add(
                "TUB-7",
                "p* = (w/A) √(R T)",
                List.of(new Term("w", "mass flow", leg.flow())),
                new Term("p*", "pressure at the sonic end", sonic),
                source);
        double margin = Math.min(Side.AT_LEAST.margin(point.pascals(), sonic.pascals()), -Double.MIN_VALUE);
        return Optional.of(new Finding(
                FindingCode.CHOKED + "/" + leg.id() + "/" + duty.state().name(),
                FindingCode.CHOKED,
                place(leg),
                duty.state().name(),
                Side.AT_LEAST,
                point,
                sonic,
                margin,
                new Derivation(workings.steps(), source)));
    }

    /** A lump that does not pass; one that passes is no news. */
    private Optional<Finding> lump(LegResult leg) {
        return paths.coarsest(leg).flatMap(dust -> {
            Length piece = dust.largestPiece().orElseThrow();
            Optional<Tool> tool = leg.kind() == LegResult.Kind.HOSE
                    ? Optional.of(plant.tool(plant.inlet(leg.id()).tool()))
                    : Optional.empty();
            Optional<Length> opening = tool.flatMap(Tool::widest).filter(widest -> widest.compareTo(leg.bore()) < 0);
            Length bore = opening.orElse(leg.bore());
            Place where = opening.isPresent()
                    ? new Place(Place.Kind.TOOL, tool.orElseThrow().id() + " at " + leg.id())
                    : place(leg);
            return bore.compareTo(piece) >= 0 ? Optional.empty() : Optional.of(tooNarrow(where, dust, piece, bore));
        });
    }

    private Finding tooNarrow(Place where, Dust dust, Length piece, Length bore) {
        Source plain = Source.ownReading("a piece wider than the bore does not pass");
        Step step = new Step(
                "CON-43",
                "D ≥ d_max",
                List.of(new Term("D", "bore, or a round hole of the tool's opening", bore)),
                new Term("d_max", "largest piece of " + dust.name(), piece),
                plain);
        return Finding.of(
                FindingCode.LUMP,
                where,
                duty.state().name(),
                Side.AT_LEAST,
                bore,
                piece,
                new Derivation(List.of(step), plain));
    }

    private Finding finding(
            FindingCode code,
            LegResult leg,
            Side side,
            Velocity value,
            Velocity limit,
            Supplier<List<Step>> steps,
            Source limitSource) {
        return Finding.of(
                code, place(leg), duty.state().name(), side, value, limit, new Derivation(steps, limitSource));
    }

    static Place place(LegResult leg) {
        return leg.kind() == LegResult.Kind.RUN ? new Place(Place.Kind.RUN, leg.id()) : hose(leg.id());
    }

    /** The hose at an inlet. */
    static Place hose(String inlet) {
        return new Place(Place.Kind.HOSE, "at " + inlet);
    }
}
