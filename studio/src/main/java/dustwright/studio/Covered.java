package dustwright.studio;

import dustwright.documents.writing.CoverWording;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Verdict;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Finding;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.receiver.FilterCondition;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;

/**
 * Proves behind the page's back that every requirement holds whichever inlets are open, or finds the worst sets, for each version of the
 * plant anew: the next change ends the work on the one before.
 */
final class Covered implements AutoCloseable {
    private static final int MOST_SETS = 40;
    private static final long MOST_SOLVED = 200_000;

    /**
     * How far it is.
     *
     * @param share of the work that is done, 0 to 1
     * @param verdict in words; empty until the work is done
     * @param scale one step for each number of users, most first; empty until the work is done
     */
    record Progress(long version, double share, boolean done, String verdict, String asked, List<Sets.Station> scale) {}

    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "coverage");
        thread.setDaemon(true);
        return thread;
    });
    private volatile Progress progress = new Progress(-1, 0, false, "", "", List.of());

    /** The coverage of a version as far as it is known; begins it when nobody has. */
    synchronized Progress of(long version, Plant plant) {
        if (progress.version() != version) {
            if (plant.inlets().isEmpty() || plant.usage().simultaneousUsers() < 1) {
                progress = new Progress(
                        version, 1, true, "", "Nobody is asked to be on, so there are no sets to cover.", List.of());
            } else {
                progress = new Progress(version, 0, false, "", "", List.of());
                behind.execute(() -> cover(version, plant));
            }
        }
        return progress;
    }

    private void cover(long version, Plant plant) {
        List<Integer> users = IntStream.rangeClosed(1, plant.usage().simultaneousUsers())
                .boxed()
                .toList();
        List<State> conditions = States.conditions(plant, List.of(FilterCondition.CLEAN, FilterCondition.DIRTY));
        Question question = new Question(users, Question.zonesOf(plant), conditions);
        Effort effort = new Effort(
                1, MOST_SOLVED, false, () -> progress.version() != version, share -> told(version, share), List.of());
        Coverage coverage = Coverage.of(plant, question, duty -> Study.judge(plant, duty), effort);
        Show show = new Show(UnitSystem.SI);
        Progress done = new Progress(
                version,
                1,
                true,
                CoverWording.verdict(coverage, show),
                CoverWording.asked(plant, coverage),
                scale(coverage));
        synchronized (this) {
            if (progress.version() == version) {
                progress = done;
            }
        }
    }

    private synchronized void told(long version, double share) {
        if (progress.version() == version && !progress.done()) {
            progress = new Progress(version, share, false, "", "", List.of());
        }
    }

    private static List<Sets.Station> scale(Coverage coverage) {
        Map<Integer, List<Answer>> byUsers = new TreeMap<>(Comparator.reverseOrder());
        coverage.answers()
                .forEach(a -> byUsers.computeIfAbsent(a.users(), n -> new ArrayList<>())
                        .add(a));
        List<Sets.Station> scale = new ArrayList<>();
        byUsers.forEach((users, answers) -> scale.add(station(coverage.question(), users, answers)));
        return scale;
    }

    private record Set(State condition, Answer.Worst worst) {}

    private static Sets.Station station(Question question, int users, List<Answer> answers) {
        List<Set> sets = new ArrayList<>();
        for (Answer answer : answers) {
            State condition = question.conditions().stream()
                    .filter(c -> Coverage.words(c).equals(answer.condition()))
                    .findFirst()
                    .orElseThrow();
            answer.worst().forEach(worst -> sets.add(new Set(condition, worst)));
        }
        sets.sort(Comparator.comparingDouble(s -> s.worst().finding().margin()));
        BigInteger all = answers.stream().map(Answer::sets).reduce(BigInteger.ZERO, BigInteger::add);
        Optional<Finding> tightest = sets.stream()
                .map(s -> s.worst().finding())
                .filter(f -> !f.nothingByDesign())
                .findFirst();
        return Sets.station(users, words(all, answers), tightest, worst(sets));
    }

    private static List<Sets.Worst> worst(List<Set> sets) {
        Map<List<Object>, Sets.Worst> distinct = new java.util.LinkedHashMap<>();
        for (Set set : sets) {
            Finding finding = set.worst().finding();
            distinct.putIfAbsent(
                    List.of(
                            set.worst().open(),
                            set.condition().filter(),
                            set.condition().feeding()),
                    new Sets.Worst(
                            finding.state(),
                            set.worst().open(),
                            set.condition().filter().name().toLowerCase(Locale.ROOT),
                            !set.condition().feeding().isEmpty(),
                            Show.margin(finding),
                            Wording.claim(finding)));
        }
        return distinct.values().stream().limit(MOST_SETS).toList();
    }

    private static String words(BigInteger all, List<Answer> answers) {
        String sets = "all " + Figures.count(all) + " sets ";
        if (answers.stream().anyMatch(a -> a.verdict() == Verdict.FAILS)) {
            return sets + "covered: not all hold";
        }
        if (answers.stream().anyMatch(a -> a.verdict() == Verdict.NOT_DONE)) {
            return sets + "not done";
        }
        return sets
                + (answers.stream().anyMatch(a -> a.verdict() == Verdict.UNDECIDED) ? "not decided" : "hold, proven");
    }

    @Override
    public void close() {
        synchronized (this) {
            progress = new Progress(-1, 0, false, "", "", List.of());
        }
        behind.shutdownNow();
    }
}
