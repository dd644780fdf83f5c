package dustwright.studio;

import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Comparison;
import dustwright.engine.StateAnswer;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A plant that stands beside what is to become of it: which inlets are there, which come and go, what that takes from those who use the
 * plant today, and what gives out first. Both are solved for every set their files name and every single user.
 *
 * @param usersToday who vacuum at once; {@code usersThen} after it
 * @param limits the requirement with the least margin after it; empty where nothing is asked
 * @param newlyFails what holds today and does not hold then
 * @param verdict what stands in the way, in a sentence
 */
record Extension(
        int usersToday,
        int usersThen,
        int inletsToday,
        int inletsThen,
        List<Row> inlets,
        String verdict,
        List<SetView.Row> limits,
        List<SetView.Row> newlyFails,
        List<SetView.Row> failsToday) {
    private static final int MOST = 12;

    /** Less air than before by at least so much is told [-]. */
    private static final double SEEN = 0.005;

    /** A change below this is none: both flows read the same, and a solution is no nearer [-]. */
    private static final double SAME = 0.0005;

    /**
     * One inlet.
     *
     * @param what stands, new, gone, or changed where the file says something else of it
     * @param today least free air at it over the sets asked in which it is open, empty where there is none
     * @param change of that air, signed in per cent, or "same"
     */
    record Row(String id, String what, String today, String then, String change, boolean less) {}

    static Extension of(Study today, Study then, Show show) {
        Plant was = today.plant();
        Plant is = then.plant();
        List<Row> rows = Stream.concat(
                        is.inlets().stream().map(Inlet::id),
                        was.inlets().stream()
                                .map(Inlet::id)
                                .filter(id -> inlet(is, id).isEmpty()))
                .map(id -> row(id, today, then, show))
                .sorted(Comparator.comparingInt(Extension::rank))
                .toList();
        List<SetView.Row> newly = Comparison.of(today, then).findings().stream()
                .filter(j -> j.after().filter(f -> !f.holds()).isPresent())
                .filter(j -> j.before().map(Finding::holds).orElse(true))
                .map(j -> SetView.Row.of(j.after().orElseThrow(), "", show))
                .toList();
        long unknown = Comparison.of(today, then).findings().stream()
                .filter(j -> j.before().filter(f -> !f.decided()).isPresent())
                .filter(j -> j.after().filter(f -> f.decided() && !f.holds()).isPresent())
                .count();
        List<SetView.Row> before = today.worstPerPlace().stream()
                .filter(f -> !f.holds())
                .map(f -> SetView.Row.of(f, "", show))
                .toList();
        Optional<Finding> least = then.worstPerPlace().stream()
                .filter(f -> !f.nothingByDesign())
                .min(Comparator.comparingDouble(Finding::margin));
        return new Extension(
                was.usage().simultaneousUsers(),
                is.usage().simultaneousUsers(),
                was.inlets().size(),
                is.inlets().size(),
                rows,
                verdict(then, newly.size(), unknown, least),
                least.map(f -> SetView.Row.of(f, "", show)).stream().toList(),
                newly.stream().limit(MOST).toList(),
                before.stream().limit(MOST).toList());
    }

    private static int rank(Row row) {
        return List.of("new", "gone", "changed", "stands").indexOf(row.what());
    }

    private static String verdict(Study then, int newly, long unknown, Optional<Finding> least) {
        long unsolved = then.states().stream()
                .filter(a -> !(a.duty() instanceof Outcome.Solved))
                .count();
        if (unsolved > 0) {
            return "No answer for " + Wording.counted(unsolved, "set", "sets") + " of the extended plant.";
        }
        String notKnown = unknown == 0
                ? ""
                : Wording.counted(
                                unknown, "requirement not known today does not", "requirements not known today do not")
                        + " hold then.";
        if (newly > 0) {
            return (Wording.counted(newly, "requirement holds today and does not", "requirements hold today and do not")
                            + " hold then. " + notKnown)
                    .strip();
        }
        if (unknown > 0) {
            return notKnown;
        }
        return least.filter(Finding::holds)
                .map(f -> "Every requirement holds then in the sets asked. What gives out first has " + Show.margin(f)
                        + ".")
                .orElse("Nothing that holds today fails then.");
    }

    private static Optional<Inlet> inlet(Plant plant, String id) {
        return plant.inlets().stream().filter(i -> i.id().equals(id)).findFirst();
    }

    private static Row row(String id, Study today, Study then, Show show) {
        Optional<Inlet> was = inlet(today.plant(), id);
        Optional<Inlet> is = inlet(then.plant(), id);
        OptionalDouble before = least_kgPerS(today, id);
        OptionalDouble after = least_kgPerS(then, id);
        String change = "";
        boolean less = false;
        if (before.isPresent() && after.isPresent() && before.getAsDouble() > 0) {
            double share = after.getAsDouble() / before.getAsDouble() - 1;
            change = Math.abs(share) < SAME ? "same" : Show.margin(share);
            less = share < -SEEN;
        }
        return new Row(
                id,
                was.isEmpty() ? "new" : is.isEmpty() ? "gone" : was.equals(is) ? "stands" : "changed",
                air(before, show),
                air(after, show),
                change,
                less);
    }

    private static String air(OptionalDouble least, Show show) {
        return least.isPresent() ? show.freeAirFull(new MassFlow(least.getAsDouble())) : "";
    }

    private static OptionalDouble least_kgPerS(Study study, String id) {
        List<Double> all = new ArrayList<>();
        for (StateAnswer answer : study.states()) {
            if (answer.state().open().contains(id) && answer.duty() instanceof Outcome.Solved<DutyPoint> solved) {
                solved.value().inlets().stream()
                        .filter(inlet -> inlet.id().equals(id))
                        .map(InletResult::flow)
                        .forEach(flow -> all.add(flow.kgPerSecond()));
            }
        }
        return all.stream().mapToDouble(Double::doubleValue).min();
    }
}
