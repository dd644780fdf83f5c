package dustwright.studio;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.StateAnswer;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Side;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Zone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ForkJoinPool;

/**
 * Judges behind the page's back every set the plant file names and every single user, anew for each version of the plant; a version that
 * is gone is not finished.
 */
final class Sets implements AutoCloseable {
    private static final int MOST_SETS = 40;

    /**
     * How far it is.
     *
     * @param scale one step of the users scale for each number of users, most first
     */
    record Progress(long version, int done, int all, List<Station> scale) {}

    /**
     * A number of users.
     *
     * @param words how many sets there are and whether they hold
     */
    record Station(int users, String words, String margin, String marginClass, String glyph, List<Worst> worst) {}

    /** One of the worst sets; {@code dust} where its users pick some up. */
    record Worst(String name, List<String> open, String filter, boolean dust, String margin, String claim) {}

    /**
     * One for all plants of this program, so that pages are answered however many plants there are; of its own, so that whoever gives way here holds nobody up who is asked something.
     */
    private static final ExecutorService BEHIND =
            new ForkJoinPool(Runtime.getRuntime().availableProcessors());

    private volatile Progress progress = new Progress(-1, 0, 0, List.of());

    /** The judgement of a version as far as it is known; begins it when nobody has. */
    Progress of(long version, Plant plant) {
        synchronized (this) {
            if (progress.version() != version) {
                List<State> asked = States.usual(plant);
                progress = new Progress(version, 0, asked.size(), List.of());
                BEHIND.execute(() -> judge(version, plant, asked));
            }
            return progress;
        }
    }

    private void judge(long version, Plant plant, List<State> asked) {
        if (progress.version() != version) {
            return;
        }
        try {
            Study study = Study.of(plant, asked, done -> {
                Turns.giveWay();
                synchronized (this) {
                    if (progress.version() != version) {
                        throw new CancellationException();
                    }
                    progress = new Progress(version, Math.max(done, progress.done()), asked.size(), List.of());
                }
            });
            List<Station> scale = scale(study);
            synchronized (this) {
                if (progress.version() == version) {
                    progress = new Progress(version, asked.size(), asked.size(), scale);
                }
            }
        } catch (CancellationException gone) {
            // a newer version is on the desk: nobody waits for this one
        }
    }

    private static List<Station> scale(Study study) {
        Map<Integer, List<StateAnswer>> byUsers = new TreeMap<>(Comparator.reverseOrder());
        for (StateAnswer answer : study.states()) {
            byUsers.computeIfAbsent(answer.state().open().size(), n -> new ArrayList<>())
                    .add(answer);
        }
        List<Station> scale = new ArrayList<>();
        byUsers.forEach((users, answers) -> scale.add(station(users, answers)));
        return scale;
    }

    private static Station station(int users, List<StateAnswer> answers) {
        List<StateAnswer> sorted =
                answers.stream().sorted(Comparator.comparingDouble(Sets::least)).toList();
        String words = Wording.counted(answers.size(), "set", "sets")
                + (answers.stream().allMatch(StateAnswer::holds) ? ", hold" : ", not all hold");
        return station(
                users,
                words,
                tightest(sorted.get(0)),
                sorted.stream().limit(MOST_SETS).map(Sets::worst).toList());
    }

    /** A station by the finding that is worst in it; none where no set has an answer. */
    static Station station(int users, String words, Optional<Finding> tightest, List<Worst> worst) {
        MarginClass marginClass = tightest.map(MarginClass::of).orElse(MarginClass.UNKNOWN);
        return new Station(
                users,
                words,
                tightest.map(Show::margin).orElse("no answer"),
                marginClass.name().toLowerCase(Locale.ROOT),
                marginClass.glyph(tightest.map(Finding::side).orElse(Side.AT_LEAST)),
                worst);
    }

    /** The set a page shows, beside the stations of those asked. */
    static Station shown(Plant plant, StateAnswer answer) {
        List<String> open = answer.state().open();
        String words = "the set shown"
                + beyond(plant, open).map(why -> "; not asked: " + why).orElse("");
        return station(open.size(), words, tightest(answer), List.of());
    }

    /**
     * Why nobody asks that these inlets are open at once: more than the users of the plant, or of a zone. A set that the plant file names
     * and every single user are asked whatever their number.
     */
    static Optional<String> beyond(Plant plant, List<String> open) {
        Set<String> inlets = Set.copyOf(open);
        if (inlets.size() < 2
                || plant.usage().designSets().stream()
                        .anyMatch(named -> Set.copyOf(named.open()).equals(inlets))) {
            return Optional.empty();
        }
        List<String> why = new ArrayList<>();
        int most = plant.usage().simultaneousUsers();
        if (inlets.size() > most) {
            why.add(Wording.counted(inlets.size(), "user", "users")
                    + (most < 1 ? ", and the plant file asks for none at once" : " of at most " + most));
        }
        for (Zone zone : plant.usage().zones()) {
            long there = inlets.stream()
                    .filter(id -> plant.inlet(id).zone().equals(zone.id()))
                    .count();
            zone.users()
                    .filter(users -> there > users)
                    .ifPresent(users -> why.add(there + " in " + zone.id() + " of at most " + users));
        }
        return why.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", why));
    }

    private static Worst worst(StateAnswer answer) {
        Optional<Finding> tightest = tightest(answer);
        return new Worst(
                answer.state().name(),
                answer.state().open(),
                answer.state().filter().name().toLowerCase(Locale.ROOT),
                !answer.state().feeding().isEmpty(),
                tightest.map(Show::margin).orElse("no answer"),
                tightest.map(Wording::claim).orElse(""));
    }

    /** A set without an answer is worse than any that has one. */
    private static double least(StateAnswer answer) {
        return answer.duty()
                .match(
                        duty -> tightest(answer).map(Finding::margin).orElse(Double.POSITIVE_INFINITY),
                        why -> Double.NEGATIVE_INFINITY);
    }

    private static Optional<Finding> tightest(StateAnswer answer) {
        return answer.findings().stream()
                .filter(f -> !f.nothingByDesign())
                .min(Comparator.comparingDouble(Finding::margin));
    }

    @Override
    public synchronized void close() {
        progress = new Progress(-1, 0, 0, List.of());
    }
}
