package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How far margins may lie below those of the worst sets found, where only a bound is known of velocities (equation COV-6).
 *
 * @param greatest the widest distance [-]
 * @param doubt why the verdict is open, or empty
 */
record Widening(double greatest, String doubt) {
    static Widening of(List<Worst> worst, List<Extreme> extremes, int users) {
        Map<String, Finding> found = new HashMap<>();
        for (Worst one : worst) {
            if (one.finding().where().kind() == Place.Kind.RUN) {
                found.put(one.finding().code() + "/" + one.finding().where().id(), one.finding());
            }
        }
        double greatest = 0;
        String doubt = "";
        for (Extreme extreme : extremes) {
            Finding finding = extreme.requirement()
                    .map(code -> found.get(code + "/" + extreme.place()))
                    .orElse(null);
            if (finding != null && extreme.users() == users && extreme.beyond() != 1) {
                double least = least(finding, extreme.beyond());
                greatest = Math.max(greatest, finding.margin() - least);
                if (finding.holds() && least < 0 && doubt.isEmpty()) {
                    doubt = "the bound for " + extreme.place() + " is as low as " + (float) least
                            + ", though the worst set found has " + (float) finding.margin();
                }
            }
        }
        return new Widening(greatest, doubt);
    }

    private static double least(Finding finding, double beyond) {
        return finding.side() == Side.AT_LEAST
                ? (1 + finding.margin()) * beyond - 1
                : 1 - (1 - finding.margin()) * beyond;
    }
}
