package dustwright.engine;

import dustwright.engine.finding.Source;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.GasConstant;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.tubing.JunctionLoss;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The calculation sheet of what a converging wye charges to one of the two streams that enter it. */
final class JunctionWorkings {
    private static final Source CRANE =
            Source.published("converging wye: Crane TP-410 (2009), Idelchik; linear between tabulated angles");
    private static final Source CHARGED =
            Source.ownReading("charged to static pressure without recovery, see the decision records");

    private final Plant plant;
    private final Workings sheet;
    private final LegResult leg;
    private final LegResult branch;
    private final LegResult run;
    private final LegResult common;
    private final AbsolutePressure at;

    /** @param leg a leg with a junction loss: it enters a point where exactly two streams join into one */
    JunctionWorkings(Plant plant, Workings sheet, DutyPoint duty, LegResult leg) {
        this.plant = plant;
        this.sheet = sheet;
        this.leg = leg;
        common = duty.legs().stream()
                .filter(l -> l.from().equals(leg.to()))
                .max(Comparator.comparingDouble(JunctionWorkings::flow))
                .orElseThrow();
        branch = entering(duty, true);
        run = entering(duty, false);
        at = duty.pressureAt(leg.to());
    }

    private LegResult entering(DutyPoint duty, boolean atAngle) {
        return duty.legs().stream()
                .filter(l -> l.to().equals(leg.to()) && angle(l).isPresent() == atAngle)
                .max(Comparator.comparingDouble(JunctionWorkings::flow))
                .orElseThrow();
    }

    /** The coefficient by the split of the flow, then the loss. */
    void charge() {
        double split = Math.min(1, flow(branch) / flow(common));
        Angle angle = angle(branch).orElseThrow();
        double areaRatio = Math.min(
                1,
                branch.bore().circle().squareMetres() / common.bore().circle().squareMetres());
        JunctionLoss loss = JunctionLoss.crane(angle.radians(), areaRatio);
        Term q = new Term("q", "w(" + branch.id() + ")/w(" + common.id() + "), the branch's share", new Ratio(split));
        Term a = new Term("a", "area of the branch over that of the common bore", new Ratio(areaRatio));
        Term factor = new Term("F", "by the angle of the branch, 1.41 at 45°", new Ratio(loss.angleFactor()));
        Term entered = new Term("θ", "angle at which the branch enters", angle);
        double k;
        if (angle(leg).isPresent()) {
            k = loss.branch(split);
            sheet.add(
                    "TUB-16",
                    "K_j = C [1 + (q/a)² − 2(1 − q)² − F q²/a]",
                    List.of(
                            q,
                            a,
                            entered,
                            factor,
                            new Term(
                                    "C",
                                    "1 for a ≤ 0.35; else 0.9 (1 − q), from q = 0.42 on 0.55",
                                    new Ratio(loss.correction(split)))),
                    new Term("K_j", "K of the branch, on the common velocity", new Ratio(k)),
                    CRANE);
        } else {
            k = loss.run(split);
            sheet.add(
                    "TUB-16",
                    "K_j = m q − q² − F q²/a",
                    List.of(
                            q,
                            a,
                            entered,
                            factor,
                            new Term("m", "2; at a branch of 90° 1.55", new Ratio(loss.runSlope()))),
                    new Term("K_j", "K of the run, on the common velocity", new Ratio(k)),
                    CRANE);
        }
        loss(k);
    }

    private void loss(double k) {
        double faded = Math.min(1, Math.min(flow(branch), flow(run)) / (JunctionLoss.FULL_FROM * flow(common)));
        List<Term> terms = new ArrayList<>(List.of(
                new Term("K_j", "of this stream, on the common velocity", new Ratio(k)),
                new Term("w", "this stream", leg.flow()),
                new Term("w_c", "common stream, in " + common.id(), common.flow()),
                new Term("A", "cross-section of this stream", leg.bore().circle()),
                new Term(
                        "A_c",
                        "cross-section of the common stream",
                        common.bore().circle()),
                new Term("p", "static pressure at the junction, by the network's solution", at),
                new Term(
                        "R",
                        "gas constant of the moist air",
                        new GasConstant(plant.site().air().gasConstant_JPerKgK())),
                new Term("T", "air temperature", plant.site().air().temperature()),
                new Term("p_v", "velocity pressure of this stream", velocityPressure(leg)),
                new Term("p_vc", "velocity pressure of the common stream", velocityPressure(common))));
        if (faded < 1) {
            terms.add(new Term(
                    "y",
                    "the lesser stream is under a thousandth of the common one: its part of it",
                    new Ratio(faded)));
        }
        String law = "K_j p_vc + max(0, p_vc − p_v)";
        sheet.add(
                "NET-5",
                "Δpj = " + (faded < 1 ? "y [" + law + "]" : law) + ", p_v = (w/A)² R T / (2 p)",
                terms,
                new Term("Δpj", "loss at the junction", leg.junctionLoss()),
                CHARGED);
    }

    private PressureDifference velocityPressure(LegResult stream) {
        double massFlux = flow(stream) / stream.bore().circle().squareMetres();
        return new PressureDifference(massFlux * massFlux * plant.site().air().rt() / (2 * at.pascals()));
    }

    private Optional<Angle> angle(LegResult entering) {
        return entering.kind() == LegResult.Kind.RUN ? plant.run(entering.id()).wye() : Optional.empty();
    }

    private static double flow(LegResult stream) {
        return stream.flow().kgPerSecond();
    }
}
