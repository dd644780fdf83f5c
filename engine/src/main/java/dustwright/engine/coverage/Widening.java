package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Side;
import java.util.List;

/**
 * How far margins may lie below those of the worst sets found, for tables stand for curves (equation COV-10), and of some velocities
 * only a wider bound is known (equation COV-6).
 *
 * @param greatest the widest distance [-]
 * @param doubt why the verdict is open, or empty
 */
record Widening(double greatest, String doubt) {
    static final Widening NONE = new Widening(0, "");

    static Widening of(List<Worst> worst, List<Extreme> extremes, int users) {
        double greatest = 0;
        String doubt = "";
        for (Worst one : worst) {
            Finding finding = one.finding();
            double least = finding.margin();
            for (Extreme extreme : extremes) {
                if (extreme.users() == users && extreme.speaksOf(finding)) {
                    least = Math.min(least, least(finding, extreme));
                }
            }
            greatest = Math.max(greatest, finding.margin() - least);
            if (finding.holds() && least < 0 && doubt.isEmpty()) {
                doubt = "the bound of " + finding.code() + " at " + finding.where() + " is a margin of " + (float) least
                        + ", the worst set found has " + (float) finding.margin();
            }
        }
        return new Widening(greatest, doubt);
    }

    private static double least(Finding finding, Extreme extreme) {
        boolean atLeast = finding.side() == Side.AT_LEAST;
        double pad = extreme.pad() * (1 + Math.abs(finding.margin()));
        return pad == 0 && extreme.beyond() == 1
                ? finding.margin()
                : (atLeast
                                ? (1 + finding.margin()) * extreme.beyond() - 1
                                : 1 - (1 - finding.margin()) * extreme.beyond())
                        - pad;
    }
}
