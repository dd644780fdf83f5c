package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Opening;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Stress;
import dustwright.engine.receiver.FlowFunction;
import dustwright.engine.receiver.Hopper;
import dustwright.engine.receiver.HopperDust;
import dustwright.engine.receiver.HopperFlow;
import dustwright.engine.receiver.HopperOutlet;
import dustwright.engine.receiver.HopperOutlet.Shape;
import dustwright.engine.receiver.PowderFlow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether each dust leaves the hopper, as far as it was tested. */
final class HopperLines {
    private static final double GRAVITY_mPerS2 = 9.80665;
    private static final Source JENIKE =
            Source.published("Jenike, Bulletin 123, Utah Engineering Experiment Station, 1964");
    private static final Source RADIAL =
            Source.published("bound of Jenike's radial stress field, as in Leung et al., J. Pharm. Sci. 108, 2019");
    private static final Source ARNOLD = Source.fromMemory("Arnold and McLean, Powder Technology 13, 1976");
    private static final Source INTERLOCKING = Source.fromMemory(
            "Jenike and Johanson: a round outlet of at least six times the largest piece against interlocking");
    private static final Source USP = Source.published("USP <1174>");

    private static final Source BELOW_POINTS = Source.ownReading(
            "Jenike's arch; below the measured points the larger strength of power law and straight line is taken, so that no outlet"
                    + " is asked too narrow");
    private static final String CARRIED_ON = ", carried on beyond the measured points";

    private final Writing writing;
    private final Optional<Hopper> hopper;
    /** Why bridging of a tested dust has no figure in this hopper. */
    private final List<String> withoutFigure = new ArrayList<>();

    private HopperLines(Writing writing, Optional<Hopper> hopper) {
        this.writing = writing;
        this.hopper = hopper;
    }

    /** @param dusts that may lie in the hopper */
    static void write(Writing writing, Optional<Hopper> hopper, List<Dust> dusts) {
        HopperLines lines = new HopperLines(writing, hopper);
        List<List<Step>> least = new ArrayList<>();
        for (Dust dust : dusts) {
            lines.flow(dust);
            lines.settling(dust);
            lines.pattern(dust);
            lines.bridging(dust).ifPresent(least::add);
            lines.interlocking(dust).ifPresent(least::add);
        }
        Optional<List<Step>> widest = least.stream().max(Comparator.comparing(HopperLines::diameter));
        hopper.ifPresent(cone -> lines.judge(cone, widest));
    }

    /** An outlet too narrow for one dust fails; one wide enough for what has a figure is not judged while another dust has none here. */
    private void judge(Hopper cone, Optional<List<Step>> widest) {
        boolean narrow = widest.map(HopperLines::diameter)
                .filter(least -> new Opening(cone.outlet()).compareTo(least) < 0)
                .isPresent();
        if (!withoutFigure.isEmpty() && !narrow) {
            writing.notSaid(FindingCode.HOPPER_OUTLET, Place.Kind.RECEIVER, JENIKE, String.join(" ", withoutFigure));
            return;
        }
        widest.ifPresent(steps -> writing.asked(
                FindingCode.HOPPER_OUTLET,
                Place.Kind.RECEIVER,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                new Opening(cone.outlet()),
                new Limit<>(diameter(steps), steps.get(steps.size() - 1).source()),
                Writing.statedThen(
                        Writing.stated("B_out", "outlet of the hopper", new Opening(cone.outlet()), Source.entered()),
                        steps)));
    }

    private static Opening diameter(List<Step> steps) {
        return (Opening) steps.get(steps.size() - 1).result().value();
    }

    /** The words of USP for how it flows, by its angle of repose. */
    private void flow(Dust dust) {
        String name = "Flow by angle of repose, " + dust.name();
        dust.inHopper()
                .repose()
                .ifPresentOrElse(
                        angle -> writing.words(
                                "powder-flow-" + dust.id(),
                                name,
                                PowderFlow.ofRepose(angle.radians()).words(),
                                List.of(step(
                                        "RCV-21",
                                        "class by angle of repose",
                                        USP,
                                        new Term("φ_r", "angle of repose", angle))),
                                USP),
                        () -> writing.unknown(
                                "powder-flow-" + dust.id(), name, "Enter \"repose\" under \"in hopper\"."));
    }

    /** The same words by how much it settles. */
    private void settling(Dust dust) {
        if (dust.looseBulkDensity().isPresent() && dust.tappedBulkDensity().isPresent()) {
            Density loose = dust.looseBulkDensity().get();
            Density tapped = dust.tappedBulkDensity().get();
            double hausner = PowderFlow.hausner(loose.kgPerCubicMetre(), tapped.kgPerCubicMetre());
            writing.words(
                    "settling-" + dust.id(),
                    "Flow by settling, " + dust.name(),
                    PowderFlow.ofHausner(hausner).words(),
                    List.of(step(
                            "RCV-15",
                            "H = ρ_tapped/ρ_loose",
                            USP,
                            new Term("H", "Hausner ratio", new Ratio(hausner)),
                            new Term("ρ_tapped", "settled bulk density", tapped),
                            new Term("ρ_loose", "loose bulk density", loose))),
                    USP);
        }
    }

    // ---- mass flow

    private void pattern(Dust dust) {
        String id = "mass-flow-" + dust.id();
        String name = "Mass flow up to a half angle of, " + dust.name();
        HopperDust flow = dust.inHopper();
        if (flow.wallFriction().isEmpty() || flow.effectiveAngle().isEmpty()) {
            writing.unknown(
                    id,
                    name,
                    "Test it in a shear cell, on the hopper's wall too: enter \"wall friction\" and"
                            + " \"effective angle\" under \"in hopper\".");
            return;
        }
        writing.tried(id, name, () -> List.of(limit(flow)));
    }

    private static Step limit(HopperDust flow) {
        Angle effective = flow.effectiveAngle().orElseThrow();
        Angle wall = flow.wallFriction().orElseThrow();
        double limit_rad = HopperFlow.massFlowHalfAngle_rad(effective.radians(), wall.radians());
        return step(
                "RCV-17",
                "θ = 90° − ½ arccos[(1 − sin δ)/(2 sin δ)] − ½ [φ_w + arcsin(sin φ_w/sin δ)]",
                RADIAL,
                new Term("θ", "half angle at which mass flow ends; stay 3° steeper", new Angle(limit_rad)),
                new Term("δ", "effective angle of internal friction", effective),
                new Term("φ_w", "wall friction", wall));
    }

    // ---- bridging

    private Optional<List<Step>> bridging(Dust dust) {
        String id = "bridging-" + dust.id();
        String name = "Outlet against bridging, " + dust.name();
        HopperDust flow = dust.inHopper();
        if (flow.wallFriction().isEmpty()
                || flow.effectiveAngle().isEmpty()
                || flow.flowFunction().isEmpty()) {
            writing.unknown(
                    id,
                    name,
                    "Test it in a shear cell, on the hopper's wall too: enter \"wall friction\","
                            + " \"effective angle\" and \"flow function\" under \"in hopper\".");
            notTested(dust);
            return Optional.empty();
        }
        if (dust.looseBulkDensity().isEmpty()) {
            writing.unknown(id, name, "Enter the bulk density of " + dust.name() + ".");
            withoutFigure.add("Bridging of " + dust.name() + " is not known: enter its \"bulk density\".");
            return Optional.empty();
        }
        if (hopper.isEmpty()) {
            writing.unknown(id, name, "Enter \"hopper: {half angle, outlet}\" of the receiver.");
            return Optional.empty();
        }
        if (tooFlat(flow, hopper.get())) {
            writing.unknown(
                    id,
                    name,
                    "The cone is too flat for mass flow of this dust: it flows in a core, and a rat hole decides,"
                            + " which no figure here covers. Steepen the cone or smooth its wall.");
            withoutFigure.add("The cone is too flat for mass flow of " + dust.name()
                    + ": whether a rat hole stays over the outlet is not known. Steepen the cone or smooth its wall.");
            return Optional.empty();
        }
        Optional<Quantity> least =
                writing.tried(id, name + carriedOn(dust, hopper.get()), () -> archSteps(dust, hopper.get()));
        if (least.isEmpty()) {
            withoutFigure.add("Bridging of " + dust.name() + " is outside its formula here, see the sheet.");
        }
        return least.map(l -> archSteps(dust, hopper.get()));
    }

    /** A dust that flows by itself wedges by its lumps only; one that does not, or of which nobody knows, may span the outlet. */
    private void notTested(Dust dust) {
        List<PowderFlow> classes = new ArrayList<>();
        dust.inHopper().repose().ifPresent(angle -> classes.add(PowderFlow.ofRepose(angle.radians())));
        dust.looseBulkDensity()
                .ifPresent(loose -> dust.tappedBulkDensity()
                        .filter(tapped -> tapped.compareTo(loose) >= 0)
                        .ifPresent(tapped -> classes.add(PowderFlow.ofHausner(
                                PowderFlow.hausner(loose.kgPerCubicMetre(), tapped.kgPerCubicMetre())))));
        Optional<PowderFlow> worst = classes.stream().max(Comparator.naturalOrder());
        if (worst.isEmpty()) {
            withoutFigure.add(
                    "Whether " + dust.name() + " bridges is not known: enter \"repose\" under \"in hopper\", and"
                            + " where it flows poorly test it in a shear cell.");
        } else if (!worst.get().flowsByItself()) {
            withoutFigure.add("Whether " + dust.name() + " bridges is not known, and it flows "
                    + worst.get().words() + ": test it in a shear cell.");
        }
    }

    /** Whether the strength of its arch lies beyond what was measured. */
    private static String carriedOn(Dust dust, Hopper cone) {
        try {
            return archSteps(dust, cone).stream().anyMatch(s -> s.source().equals(BELOW_POINTS)) ? CARRIED_ON : "";
        } catch (OutOfRangeException outside) {
            return "";
        }
    }

    /** False also where the formula refuses what was tested: then the arch's steps say why. */
    private static boolean tooFlat(HopperDust flow, Hopper cone) {
        try {
            double limit_rad = HopperFlow.massFlowHalfAngle_rad(
                    flow.effectiveAngle().orElseThrow().radians(),
                    flow.wallFriction().orElseThrow().radians());
            return cone.halfAngle().radians() > limit_rad;
        } catch (OutOfRangeException outside) {
            return false;
        }
    }

    private static List<Step> archSteps(Dust dust, Hopper cone) {
        HopperDust flow = dust.inHopper();
        Angle effective = flow.effectiveAngle().orElseThrow();
        Angle wall = flow.wallFriction().orElseThrow();
        FlowFunction function = flow.flowFunction().orElseThrow();
        Density density = dust.looseBulkDensity().orElseThrow();
        double theta = cone.halfAngle().radians();
        double factor = HopperFlow.flowFactor(effective.radians(), wall.radians(), theta);
        FlowFunction.Power power = function.power();
        double strength_Pa = HopperOutlet.criticalStrength_Pa(power.coefficient(), power.exponent(), factor);
        Term ff = new Term("ff", "flow factor of the cone", new Ratio(factor));
        boolean below = function.startsAbove(strength_Pa * factor);
        double line_Pa = below ? function.lineStrength_Pa(factor).orElse(0) : 0;
        double taken_Pa = Math.max(strength_Pa, line_Pa);
        double outlet_m =
                HopperOutlet.archingOutlet_m(Shape.CONE, theta, taken_Pa, density.kgPerCubicMetre(), GRAVITY_mPerS2);
        String where = function.covers(strength_Pa * factor) ? "" : CARRIED_ON;
        Term byPower = new Term(
                "σ_crit",
                "strength of the arch" + where + (line_Pa > strength_Pa ? ", by the power law" : ""),
                new Stress(strength_Pa));
        Term strength = line_Pa > strength_Pa
                ? new Term(
                        "σ_line",
                        "strength of the arch, by the straight line of the two lowest points",
                        new Stress(line_Pa))
                : byPower;
        List<Step> steps = new ArrayList<>(List.of(
                limit(flow),
                step(
                        "RCV-18",
                        "ff = H Y (1 + sin δ)/(2 (X − 1) sin θ)",
                        ARNOLD,
                        ff,
                        new Term("θ", "half angle of the cone", cone.halfAngle()),
                        new Term("δ", "effective angle of internal friction", effective),
                        new Term("φ_w", "wall friction", wall)),
                step(
                        "RCV-5",
                        "σ_c = (ff k)^(1/(1 − n)), σ_crit = σ_c/ff, in kPa; σ_y = k σ_c^n through the measured points (RCV-19)",
                        JENIKE,
                        byPower,
                        ff,
                        new Term("k", "strength at 1 kPa of consolidation, in kPa", new Ratio(power.coefficient())),
                        new Term("n", "exponent of the flow function", new Ratio(power.exponent())))));
        if (line_Pa > strength_Pa) {
            steps.add(step(
                    "RCV-19",
                    "σ_line = (y_1 − b x_1)/(1 − b ff), b = (y_2 − y_1)/(x_2 − x_1); the larger of both is taken",
                    BELOW_POINTS,
                    strength,
                    ff,
                    new Term(
                            "x_1",
                            "lowest consolidation measured",
                            function.points().get(0).consolidation()),
                    new Term("y_1", "strength there", function.points().get(0).strength()),
                    new Term("x_2", "the next", function.points().get(1).consolidation()),
                    new Term("y_2", "strength there", function.points().get(1).strength())));
        }
        steps.add(step(
                "RCV-4",
                "B = (2 + θ/60°) " + strength.symbol() + "/(ρ_B g)",
                where.isEmpty() ? JENIKE : BELOW_POINTS,
                new Term("B", "least outlet at which an arch breaks", new Opening(outlet_m)),
                strength,
                new Term("θ", "half angle of the cone", cone.halfAngle()),
                new Term("ρ_B", "loose bulk density", density)));
        return steps;
    }

    /** Lumps that wedge against each other over the outlet. */
    private Optional<List<Step>> interlocking(Dust dust) {
        String id = "lumps-" + dust.id();
        String name = "Outlet against lumps, " + dust.name();
        Optional<Length> lump = dust.inHopper().largestLump();
        if (lump.isEmpty()) {
            writing.unknown(id, name, "Enter \"largest lump\" under \"in hopper\".");
            return Optional.empty();
        }
        List<Step> steps = List.of(lumps(lump.get()));
        writing.known(id, name, diameter(steps), steps);
        return Optional.of(steps);
    }

    /** Least opening for a lump. */
    static Step lumps(Length lump) {
        return step(
                "RCV-22",
                "B = 6 d",
                INTERLOCKING,
                new Term("B", "least opening against interlocking", new Opening(6 * lump.metres())),
                new Term("d", "largest lump", lump));
    }
}
