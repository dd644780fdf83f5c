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
 * @param limits the requirements with the least margins after it that are known, least first; empty where nothing is asked
 * @param newlyFails what holds today and does not hold then
 * @param newlyUnknown what is judged today, or not asked, and not known then
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
        List<SetView.Row> failsToday,
        List<SetView.Row> newlyUnknown,
        List<SetView.Row> unknownToday) {
    private static final int MOST = 12;

    private static final int MOST_LIMITS = 3;

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
        List<Comparison.Judged> compared = Comparison.of(today, then).findings();
        List<SetView.Row> newly = compared.stream()
                .filter(j -> j.after().filter(Finding::fails).isPresent())
                .filter(j -> j.before().map(Finding::holds).orElse(true))
                .map(j -> SetView.Row.of(j.after().orElseThrow(), "", show))
                .toList();
        List<SetView.Row> newlyUnknown = compared.stream()
                .filter(j -> j.after().filter(f -> !f.decided()).isPresent())
                .filter(j -> j.before().map(Finding::decided).orElse(true))
                .map(j -> SetView.Row.of(j.after().orElseThrow(), "", show))
                .toList();
        long unknown = compared.stream()
                .filter(j -> j.before().filter(f -> !f.decided()).isPresent())
                .filter(j -> j.after().filter(Finding::fails).isPresent())
                .count();
        List<Finding> before = today.worstPerPlace();
        List<Finding> limits = then.worstPerPlace().stream()
                .filter(f -> f.decided() && !f.nothingByDesign())
                .limit(MOST_LIMITS)
                .toList();
        return new Extension(
                was.usage().simultaneousUsers(),
                is.usage().simultaneousUsers(),
                was.inlets().size(),
                is.inlets().size(),
                rows,
                verdict(then, newly.size(), unknown, limits),
                rows(limits.stream(), show),
                newly.stream().limit(MOST).toList(),
                rows(before.stream().filter(Finding::fails), show),
                newlyUnknown.stream().limit(MOST).toList(),
                rows(before.stream().filter(f -> !f.decided()), show));
    }

    private static List<SetView.Row> rows(Stream<Finding> findings, Show show) {
        return findings.limit(MOST).map(f -> SetView.Row.of(f, "", show)).toList();
    }

    private static int rank(Row row) {
        return List.of("new", "gone", "changed", "stands").indexOf(row.what());
    }

    private static String verdict(Study then, int newly, long unknown, List<Finding> limits) {
        long unsolved = then.states().stream()
                .filter(a -> !(a.duty() instanceof Outcome.Solved))
                .count();
        if (unsolved > 0) {
            return "No answer for " + Wording.counted(unsolved, "set", "sets") + " of the extended plant.";
        }
        List<String> said = new ArrayList<>();
        if (newly > 0) {
            said.add(
                    Wording.counted(newly, "requirement holds today and does not", "requirements hold today and do not")
                            + " hold then.");
        }
        if (unknown > 0) {
            said.add(Wording.counted(
                            unknown, "requirement not known today does not", "requirements not known today do not")
                    + " hold then.");
        }
        long open = then.worstPerPlace().stream().filter(f -> !f.decided()).count();
        if (said.isEmpty()) {
            boolean all = open == 0 && limits.stream().allMatch(Finding::holds);
            said.add(
                    all
                            ? "Every requirement holds then in the sets asked."
                            : "Nothing that is known to hold today fails then.");
            limits.stream()
                    .findFirst()
                    .filter(Finding::holds)
                    .ifPresent(f -> said.add("What gives out first has " + Show.margin(f) + "."));
        }
        if (open > 0) {
            said.add(Wording.counted(open, "requirement is not known then.", "requirements are not known then."));
        }
        return String.join(" ", said);
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
