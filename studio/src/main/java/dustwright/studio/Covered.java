package dustwright.studio;

import dustwright.documents.report.Conclusion;
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
import dustwright.engine.receiver.FilterCondition;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;

/**
 * Proves behind the page's back that every requirement holds whichever inlets are open, or finds the worst sets, and reads the sheets beside
 * it, for each version of the plant anew: the next change ends the work on the one before.
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

    /**
     * One for all plants of this program, so that pages are answered however many plants there are; plants take turns. What is done in
     * several parts is done here too, so that whoever gives way holds nobody up who is asked something.
     */
    private static final ExecutorService BEHIND = new ForkJoinPool(1);

    /**
     * What there is to tell of a version.
     *
     * @param study of the sets that {@code verify} asks, with sheets: what does not go by sets of open inlets
     */
    private record Found(Coverage coverage, Study study) {}

    /**
     * The work on one version.
     *
     * @param found once it is done
     * @param why there is none, where there is none
     */
    private record Work(long version, double share, Optional<Found> found, String why) {
        static Work begun(long version) {
            return new Work(version, 0, Optional.empty(), "");
        }

        static Work without(long version, String why) {
            return new Work(version, 1, Optional.empty(), why);
        }
    }

    private volatile Work work = Work.begun(-1);

    /** The coverage of a version as far as it is known, in the reader's units; begins it when nobody has. */
    synchronized Progress of(long version, Plant plant, Show show) {
        if (work.version() != version) {
            if (plant.inlets().isEmpty() || plant.usage().simultaneousUsers() < 1) {
                work = Work.without(version, "Nobody is asked to be on, so there are no sets to cover.");
            } else {
                work = Work.begun(version);
                BEHIND.execute(() -> cover(version, plant));
            }
        }
        Work now = work;
        return now.found()
                .map(found -> new Progress(
                        version,
                        1,
                        true,
                        Conclusion.of(found.coverage(), found.study(), show),
                        CoverWording.asked(plant, found.coverage()),
                        scale(found.coverage())))
                .orElseGet(() -> new Progress(version, now.share(), !now.why().isEmpty(), now.why(), "", List.of()));
    }

    /** Ends the work on a version; the next change begins it anew. */
    synchronized void stop(long version) {
        if (work.version() == version && work.found().isEmpty() && work.why().isEmpty()) {
            work = Work.without(version, "Covering every set was stopped; the next change begins it anew.");
        }
    }

    private void cover(long version, Plant plant) {
        if (work.version() != version) {
            return;
        }
        List<Integer> users = IntStream.rangeClosed(1, plant.usage().simultaneousUsers())
                .boxed()
                .toList();
        List<State> conditions = States.conditions(plant, List.of(FilterCondition.CLEAN, FilterCondition.DIRTY));
        Question question = new Question(users, Question.zonesOf(plant), conditions);
        Effort effort = new Effort(
                1,
                MOST_SOLVED,
                Effort.FEW,
                false,
                false,
                () -> gone(version),
                share -> told(version, share),
                List.of());
        try {
            Coverage coverage = Coverage.of(plant, question, duty -> Study.judge(plant, duty), effort);
            Study study = Study.of(plant, States.usual(plant), done -> {
                        if (gone(version)) {
                            throw new CancellationException();
                        }
                    })
                    .withSheets();
            done(new Work(version, 1, Optional.of(new Found(coverage, study)), ""));
        } catch (CancellationException gone) {
            // a newer version is on the desk or somebody stopped it: nobody waits for this one
        } catch (RuntimeException fault) {
            done(Work.without(version, "Not covered, by a fault of the program: " + fault + "."));
        }
    }

    /** Gives way first to whoever asks something. */
    private boolean gone(long version) {
        Turns.giveWay();
        return work.version() != version || !work.why().isEmpty();
    }

    private synchronized void done(Work done) {
        if (work.version() == done.version() && work.why().isEmpty()) {
            work = done;
        }
    }

    private synchronized void told(long version, double share) {
        if (work.version() == version && work.found().isEmpty() && work.why().isEmpty() && share > work.share()) {
            work = new Work(version, share, Optional.empty(), "");
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
        Map<List<Object>, Sets.Worst> distinct = new LinkedHashMap<>();
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
    public synchronized void close() {
        work = Work.begun(-1);
    }
}
