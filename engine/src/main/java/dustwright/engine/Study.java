package dustwright.engine;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.DustWays;
import dustwright.engine.sheet.DustWeek;
import dustwright.engine.sheet.Sheet;
import dustwright.engine.sheet.Sheets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The class to read first: a plant and the states asked for in, all results and findings out.
 *
 * @param states one answer per state asked, in the order asked
 * @param oneUser slowest one-user velocity per run that carries dust, in the order of the plant file; empty if no single user was asked
 * @param charts system against producer, of each station in states of its own; empty until {@link #withCurves()}
 * @param profiles along the path of the open inlet with the worst margin; empty until {@link #withCurves()}
 * @param trials what one change would do where dust settles worst; empty until {@link #withCurves()}
 * @param sheets what each piece of equipment comes to; empty until {@link #withSheets()}
 * @param weeks the dust's way over ordinary weeks, by station where it is known; empty until {@link #withSheets()}
 */
public record Study(
        Plant plant,
        List<StateAnswer> states,
        List<OneUserVelocity> oneUser,
        List<StationCurves> charts,
        List<PressureProfile> profiles,
        List<Trial> trials,
        List<Sheet> sheets,
        List<DustWeek> weeks) {
    /** Fewer states than this are not worth a thread of their own. */
    private static final int LEAST_SHARE = 16;

    /** A study in which nothing was tried and no week of a station gone through. */
    public Study(
            Plant plant,
            List<StateAnswer> states,
            List<OneUserVelocity> oneUser,
            List<StationCurves> charts,
            List<PressureProfile> profiles,
            List<Sheet> sheets) {
        this(plant, states, oneUser, charts, profiles, List.of(), sheets, List.of());
    }

    public Study {
        states = List.copyOf(states);
        oneUser = List.copyOf(oneUser);
        charts = List.copyOf(charts);
        profiles = List.copyOf(profiles);
        trials = List.copyOf(trials);
        sheets = List.copyOf(sheets);
        weeks = List.copyOf(weeks);
    }

    /** Solves and judges every state asked. */
    public static Study of(Plant plant, List<State> asked) {
        return of(plant, asked, done -> {});
    }

    /**
     * The same, telling how many states are done.
     *
     * @param done called from several threads
     */
    public static Study of(Plant plant, List<State> asked, IntConsumer done) {
        List<StateAnswer> answers = answers(plant, asked, duty -> judge(plant, duty), done);
        return new Study(plant, answers, OneUserVelocity.of(answers), List.of(), List.of(), List.of());
    }

    /** Solves every state asked and judges none: a study for sheets alone, which judge what is theirs. */
    public static Study solved(Plant plant, List<State> asked, IntConsumer done) {
        List<StateAnswer> answers = answers(plant, asked, duty -> List.of(), done);
        return new Study(plant, answers, List.of(), List.of(), List.of(), List.of());
    }

    private static List<StateAnswer> answers(
            Plant plant, List<State> asked, Function<DutyPoint, List<Finding>> judge, IntConsumer done) {
        try {
            Network network = Network.compile(plant);
            AtomicInteger solved = new AtomicInteger();
            // every state starts afresh, so how they are shared out changes no figure
            return shares(asked)
                    .parallel()
                    .map(share -> {
                        DutyPointSolver solver = new DutyPointSolver(network);
                        List<StateAnswer> answers = new ArrayList<>();
                        for (State state : share) {
                            answers.add(answer(solver, state, judge));
                            done.accept(solved.incrementAndGet());
                        }
                        return answers;
                    })
                    .flatMap(List::stream)
                    .toList();
        } catch (IllegalArgumentException outsideFormula) {
            String why = String.valueOf(outsideFormula.getMessage());
            return asked.stream().map(state -> notSolved(state, why)).toList();
        }
    }

    /** A formula that refuses what lies outside its range says so in words for people: it is the plant that is wrong. */
    private static StateAnswer answer(DutyPointSolver solver, State state, Function<DutyPoint, List<Finding>> judge) {
        try {
            Outcome<DutyPoint> solved = solver.solve(state);
            return new StateAnswer(state, solved, solved.match(judge, why -> List.of()));
        } catch (IllegalArgumentException outsideFormula) {
            return notSolved(state, String.valueOf(outsideFormula.getMessage()));
        }
    }

    private static StateAnswer notSolved(State state, String why) {
        return new StateAnswer(state, new Outcome.NotSolved<>(why), List.of());
    }

    /** The states in order, in as many parts as are worth a thread. */
    private static Stream<List<State>> shares(List<State> asked) {
        int parts = Math.min(Runtime.getRuntime().availableProcessors(), 1 + asked.size() / LEAST_SHARE);
        return IntStream.range(0, parts)
                .mapToObj(n -> asked.subList(asked.size() * n / parts, asked.size() * (n + 1) / parts));
    }

    /** The same study with the curves a report draws: system against producer, and the profile along the worst path. */
    public Study withCurves() {
        Optional<StateAnswer> worst = worst(states);
        return new Study(
                plant,
                states,
                oneUser,
                StationCurves.of(plant, states),
                worst.map(w -> PressureProfile.of(plant, w)).orElse(List.of()),
                worst.map(w -> Trial.of(plant, w)).orElse(List.of()),
                sheets,
                weeks);
    }

    /** The same study with a sheet for each piece of equipment; findings in them count like those of a state. */
    public Study withSheets() {
        List<DutyPoint> solved = Pauses.solved(states);
        DustWays ways = ways();
        List<DustWeek> weeks = weeks(plant, ways);
        List<StateAnswer> shut = pauses(Pauses.shutStates(plant));
        List<StateAnswer> vented = pauses(Pauses.ventedStates(plant));
        List<DutyPoint> shutSolved = Pauses.solved(shut);
        List<DutyPoint> ventedSolved = Pauses.solved(vented);
        boolean pausesKnown = shutSolved.size() == shut.size() && ventedSolved.size() == vented.size();
        List<Sheet> all = new ArrayList<>(Sheets.of(
                plant,
                new Sheets.Solved(solved, shutSolved.stream().findFirst(), ventedSolved, pausesKnown),
                ways,
                weeks));
        all.addAll(Pauses.shut(plant, shut));
        all.addAll(Pauses.vented(plant, vented, solved));
        return new Study(plant, states, oneUser, charts, profiles, trials, all, weeks);
    }

    /** A study of no state, with the sheets that need none ({@link Sheets#withoutStates}). */
    public static Study sheetsWithoutStates(Plant plant) {
        DustWays ways = ways(plant);
        List<DustWeek> weeks = weeks(plant, ways);
        List<Sheet> sheets = Sheets.withoutStates(plant, ways, weeks);
        return new Study(plant, List.of(), List.of(), List.of(), List.of(), List.of(), sheets, weeks);
    }

    private static List<DustWeek> weeks(Plant plant, DustWays ways) {
        return plant.stations().stream()
                .flatMap(station -> DustWeek.of(plant, station, ways).stream())
                .toList();
    }

    /** Of a pause only stations are asked something. */
    private List<StateAnswer> pauses(List<State> states) {
        return answers(plant, states, duty -> StationChecks.of(plant, duty), done -> {});
    }

    /** The same study with both, found side by side. */
    public Study withSheetsAndCurves() {
        CompletableFuture<Study> curves = CompletableFuture.supplyAsync(this::withCurves);
        Study sheets = withSheets();
        Study drawn = curves.join();
        return new Study(
                plant,
                states,
                oneUser,
                drawn.charts(),
                drawn.profiles(),
                drawn.trials(),
                sheets.sheets(),
                sheets.weeks());
    }

    /** Where the dust goes in the sets of the plant file, which need not be those asked. */
    private DustWays ways() {
        return ways(plant);
    }

    static DustWays ways(Plant plant) {
        try {
            DutyPointSolver solver = new DutyPointSolver(Network.compile(plant));
            return DustWays.of(plant, open -> solver.solve(States.open(plant, open, FilterCondition.CLEAN)));
        } catch (IllegalArgumentException outsideFormula) {
            String why = String.valueOf(outsideFormula.getMessage());
            return DustWays.of(plant, open -> new Outcome.NotSolved<>(why));
        }
    }

    /** Every requirement of a plant in one solved state, in a fixed order. */
    public static List<Finding> judge(Plant plant, DutyPoint duty) {
        List<Finding> findings = new ArrayList<>();
        findings.addAll(InletChecks.of(plant, duty));
        findings.addAll(TubeChecks.of(plant, duty));
        findings.addAll(DustChecks.of(plant, duty));
        findings.addAll(StationChecks.of(plant, duty));
        findings.addAll(BalanceChecks.of(plant, duty));
        return findings;
    }

    /** The solved state with the smallest margin; a state in which nothing is checked counts last. */
    private static Optional<StateAnswer> worst(List<StateAnswer> answers) {
        return answers.stream()
                .filter(a -> a.duty() instanceof Outcome.Solved)
                .min(Comparator.comparingDouble(StateAnswer::leastMargin));
    }

    /** True when every state was solved and every requirement holds, in each state and in the sheets. */
    public boolean holds() {
        return states.stream().allMatch(StateAnswer::holds) && findings().allMatch(Finding::holds);
    }

    /** All findings, those of states and those in sheets, in this order. */
    public Stream<Finding> findings() {
        return Stream.concat(
                states.stream().flatMap(s -> s.findings().stream()),
                sheets.stream().flatMap(s -> s.findings().stream()));
    }

    /**
     * What the sheets of a plant judge and does not hold or is not known, for answers that go through sets of open inlets and do not read
     * sheets: one finding per requirement and place, smallest margin first.
     *
     * @param users sets of the plant file with more than so many open inlets are left out
     */
    public static List<Finding> openInSheets(Plant plant, int users) {
        List<State> asked = States.usual(plant).stream()
                .filter(state -> state.open().size() <= users)
                .toList();
        List<Sheet> sheets = of(plant, asked).withSheets().sheets();
        return new Study(plant, List.of(), List.of(), List.of(), List.of(), sheets)
                .worstPerPlace().stream().filter(finding -> !finding.holds()).toList();
    }

    /** All findings, smallest margin first; equal margins in the order of states. Conflicts that were looked for and not found come last. */
    public List<Finding> worstFirst() {
        return findings()
                .sorted(Comparator.comparingDouble(f -> f.counted() && f.holds() ? Double.MAX_VALUE : f.margin()))
                .toList();
    }

    /**
     * What a person reads: one finding per requirement and place, in the state where its margin is smallest, smallest margin first.
     */
    public List<Finding> worstPerPlace() {
        java.util.Map<String, Finding> worst = new java.util.LinkedHashMap<>();
        for (Finding finding : worstFirst()) {
            worst.putIfAbsent(finding.code() + "/" + finding.where(), finding);
        }
        return List.copyOf(worst.values());
    }
}
