package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.SetPoint;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.CakeResistance;
import dustwright.engine.quantity.ClothLoad;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.quantity.GasConstant;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.WorkingTime;
import dustwright.engine.receiver.Filter;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.receiver.FilterDrop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** How hard a filter works, how its pressure drop grows, and how long it runs from one off-line cleaning to the next. */
final class FilterSheet {
    private static final Source COST_MANUAL =
            Source.published("EPA Air Pollution Control Cost Manual, 6th ed., EPA/452/B-02-001, Section 6 Chapter 1");
    private static final Source NETWORK =
            Source.published("laminar flow through cloth, filter drag Δp = S V, as in EPA/452/B-02-001");
    private static final String NO_DUST =
            "No dust reaches this filter: enter \"feed\" of the inlets that are open together.";
    private static final Source A_SHIFT = Source.ownReading(
            "no \"cleaning interval\" is stated: the filter is cleaned off line between shifts, so it lasts while a shift vacuums");
    private static final Source START = Source.ownReading("a cleaning brings the cloth back to its normal resistance");
    private static final String NAME = ": runs until a tool falls short";
    private static final String DUE = ": runs until the default sequence asks for a cleaning";
    private static final String HELD = ": runs until the default sequence holds, filter drop too high";
    private static final String BEYOND = ", beyond the drop at which the default sequence holds";
    private static final String BEARS = "Pressure difference that elements and cages bear";
    /** Dust on the cloth beyond which no formula here is asked [kg/m²]. */
    private static final double GREATEST_LOAD_kgPerM2 = 50;

    private static final List<Duration> TIMES =
            List.of(new Duration(600), new Duration(1800), new Duration(3600), new Duration(4 * 3600));

    private final Arrivals arrivals;
    private final StationDust load;
    private final Plant plant;
    private final Station station;
    private final Filter filter;
    private final Writing writing;
    private final Map<State, LoadedCloth> cloths = new HashMap<>();

    /** Whether a time between cleanings is not known. */
    private boolean open;

    private FilterSheet(Arrivals arrivals, StationDust load) {
        this.arrivals = arrivals;
        this.load = load;
        this.plant = arrivals.plant();
        this.station = arrivals.station();
        this.filter = station.filter();
        this.writing = new Writing(station.id());
    }

    static Sheet of(Arrivals arrivals, StationDust load) {
        return new FilterSheet(arrivals, load).sheet();
    }

    private Sheet sheet() {
        writing.given("cloth", "Cloth area", filter.cloth());
        arrivals.fastest().ifPresent(this::velocities);
        Optional<DustArrival> dustiest = arrivals.dustiest();
        dustiest.ifPresentOrElse(this::growth, () -> writing.unknown("cake", "Growth of the pressure drop", NO_DUST));
        bears();
        cleaning();
        ClothRatios.write(writing, arrivals);
        ClothChoice.write(writing, arrivals);
        return writing.sheet("filter", "Filter", Place.Kind.FILTER);
    }

    // ---- velocity and pressure drop

    private void velocities(DustArrival arrival) {
        StationResult result = arrival.station();
        writing.known("filtration", "Filtration velocity, " + arrival.state(), velocity(result), filtration(result));
        for (FilterCondition condition : FilterCondition.values()) {
            String words = condition.name().toLowerCase(Locale.ROOT);
            Step stated =
                    Writing.stated("S", "resistance, cloth " + words, filter.resistance(condition), Source.entered());
            solvedDrop(
                    "drop-" + words,
                    "Pressure drop in that set at the flow it then has, cloth " + words,
                    arrival,
                    filter.resistance(condition),
                    List.of(stated));
        }
    }

    private List<Step> filtration(StationResult result) {
        return List.of(
                step(
                        "FLT-9",
                        "Q = w R T / p",
                        Source.published("ideal gas law"),
                        new Term("Q", "actual flow in the receiver", result.receiverFlow()),
                        new Term("w", "air through the filter", result.throughFilter()),
                        new Term("p", "static pressure in the receiver", result.receiver()),
                        new Term(
                                "T",
                                "air temperature at the cloth",
                                station.filter().temperature(plant.site().air().temperature()))),
                step(
                        "FLT-8",
                        "V = Q / A",
                        Source.published("definition"),
                        new Term("V", "filtration velocity", velocity(result)),
                        new Term("Q", "actual flow in the receiver", result.receiverFlow()),
                        new Term("A", "cloth area", filter.cloth())));
    }

    /** By the network solved with the cloth at a resistance: a greater one lets less air through. */
    private void solvedDrop(
            String what, String name, DustArrival arrival, FilterResistance resistance, List<Step> before) {
        LoadedCloth cloth = cloth(arrival);
        cloth.at(resistance)
                .match(
                        duty -> {
                            List<Step> steps = new ArrayList<>(before);
                            steps.add(drop(cloth.here(duty), resistance));
                            PressureDifference loss = cloth.here(duty).filterLoss();
                            boolean beyond = loss.compareTo(SetPoint.FILTER_HIGH.drop()) > 0;
                            writing.known(what, name + (beyond ? BEYOND : ""), loss, steps);
                            return true;
                        },
                        why -> {
                            writing.unknown(what, name, "The network has no solution with such a cloth: " + why);
                            return false;
                        });
    }

    private LoadedCloth cloth(DustArrival arrival) {
        return cloths.computeIfAbsent(
                arrival.duty().state().withFilter(FilterCondition.NORMAL),
                state -> new LoadedCloth(plant, station, state));
    }

    private Step drop(StationResult result, FilterResistance resistance) {
        return step(
                "FLT-1",
                "Δp = p − √(p² − 2 S R T w / A)",
                NETWORK,
                new Term("Δp", "pressure drop over the filter", result.filterLoss()),
                new Term("p", "static pressure in the receiver, the network solved with this cloth", result.receiver()),
                new Term("S", "resistance", resistance),
                new Term(
                        "R",
                        "gas constant of the moist air",
                        new GasConstant(plant.site().air().gasConstant_JPerKgK())),
                new Term(
                        "T",
                        "air temperature at the cloth",
                        filter.temperature(plant.site().air().temperature())),
                new Term("w", "air through the filter, the network solved with this cloth", result.throughFilter()),
                new Term("A", "cloth area", filter.cloth()));
    }

    /** Pressure drop over time with nothing cleaned: dust goes on coming, and the air falls as the cloth loads. */
    private void growth(DustArrival arrival) {
        Optional<CakeResistance> cake = cake(arrival);
        if (cake.isEmpty()) {
            writing.unknown("cake", "Growth of the pressure drop", missingCake(arrival));
            return;
        }
        for (Duration time : TIMES) {
            long minutes = Math.round(time.seconds() / 60);
            String what = "drop-" + minutes + "min";
            String name = setName(arrival) + ": pressure drop after " + minutes + " min, at the flow it then has";
            try {
                List<Step> steps = loaded(arrival, time, cake.get());
                FilterResistance grown =
                        (FilterResistance) steps.get(steps.size() - 1).result().value();
                solvedDrop(what, name, arrival, grown, steps);
            } catch (OutOfRangeException outside) {
                writing.unknown(what, name, "Outside its formula: " + outside.getMessage() + ".");
            }
        }
    }

    /** Steps to the resistance of the cloth after a time. */
    private List<Step> loaded(DustArrival arrival, Duration time, CakeResistance cake) {
        Step reaching = reaching(arrival);
        ClothLoad load = new ClothLoad(
                reaching.result().value().si() * time.seconds() / filter.cloth().squareMetres());
        FilterResistance grown = new FilterResistance(FilterDrop.resistance_PaSPerM(
                filter.normal().pascalSecondsPerMetre(), cake.perSecond(), load.kgPerSquareMetre()));
        Term onCloth = new Term("W", "dust on the cloth", load);
        return List.of(
                reaching,
                step(
                        "FLT-3",
                        "W = ṁ t / A",
                        COST_MANUAL,
                        onCloth,
                        reaching.result(),
                        new Term("t", "running time since the cleaning", time),
                        new Term("A", "cloth area", filter.cloth())),
                step(
                        "FLT-2",
                        "S = S_e + K2 W",
                        COST_MANUAL,
                        new Term("S", "resistance with the new cake", grown),
                        new Term("S_e", "resistance without it, the normal one", filter.normal()),
                        new Term("K2", "specific resistance of the cake", cake),
                        onCloth));
    }

    private Step reaching(DustArrival arrival) {
        Ratio before = station.receiver().preSeparation();
        MassFlow reaching = new MassFlow(arrival.total().kgPerSecond() * (1 - before.value()));
        return step(
                "FLT-7",
                "ṁ = ṁ_in (1 − η)",
                Source.published("mass balance"),
                new Term("ṁ", "dust that reaches the cloth", reaching),
                new Term("ṁ_in", "dust into the receiver, " + setName(arrival), arrival.total()),
                new Term("η", "share that falls out before the cloth", before));
    }

    // ---- off-line cleaning

    private void cleaning() {
        List<Run> runs = new ArrayList<>();
        List<DustArrival> dusty = sets().stream().filter(DustArrival::any).toList();
        for (DustArrival arrival : dusty) {
            runs.addAll(runs(arrival));
        }
        if (dusty.isEmpty() && arrivals.noFeedStated()) {
            intervalNotKnown(Sheet.ANY_SET, NO_DUST);
        }
        runs.stream().min(Comparator.comparing(Run::time)).ifPresent(this::first);
        if (!dusty.isEmpty()) {
            bySequence();
        }
    }

    /**
     * How long one set runs after a cleaning until something ends it.
     *
     * @param byTool whether a tool falls short then, else the default sequence holds for the filter drop
     * @param atLeast whether it runs longer, and no formula tells how much
     */
    private record Run(String set, WorkingTime time, boolean byTool, boolean atLeast, List<Step> steps) {}

    private void first(Run run) {
        writing.words(
                "ends-first",
                "First to end a run between cleanings" + (open ? ", of the times that are known" : ""),
                (run.byTool() ? "a tool that falls short" : "the hold of the default sequence for the filter drop")
                        + ", in set " + run.set(),
                run.steps(),
                START);
        leastInterval().ifPresent(limit -> {
            if (run.atLeast() && run.time().compareTo(limit.value()) < 0) {
                intervalNotKnown(
                        run.set(),
                        "By then more than 50 kg/m² (10 lb/ft²) lie on the cloth, beyond which the pressure drop is not known.");
            } else {
                writing.asked(
                        FindingCode.CLEANING_INTERVAL,
                        Place.Kind.FILTER,
                        run.set(),
                        Side.AT_LEAST,
                        run.time(),
                        limit,
                        run.steps());
            }
        });
    }

    /** What is asked; where nothing is, a filter that is cleaned between shifts must last while a shift vacuums. */
    private Optional<Limit<WorkingTime>> leastInterval() {
        return plant.requirements()
                .receiver()
                .cleaningInterval()
                .map(limit -> new Limit<>(new WorkingTime(limit.value().seconds()), limit.source()))
                .or(() -> plant.operation()
                        .shifts()
                        .flatMap(shifts -> load.cleaning_s()
                                .map(time_s -> Math.min(time_s, shifts.length().seconds())))
                        .map(time_s -> new Limit<>(new WorkingTime(time_s), A_SHIFT)));
    }

    /** What ends the runs of a set; a tool of which nobody can say leaves the set open, unless the sequence holds too soon anyway. */
    private List<Run> runs(DustArrival arrival) {
        String set = setName(arrival);
        Optional<CakeResistance> cake = cake(arrival);
        if (cake.isEmpty()) {
            String why = "The specific resistance of the cake is not known: enter \"cake resistance\" of its dusts.";
            toolNotKnown(set, why);
            intervalNotKnown(set, why);
            return List.of();
        }
        Outcome<Run> tool = tool(arrival, cake.get());
        held(arrival, cake.get(), SetPoint.CLEANING_DUE, "due-", DUE);
        Optional<Run> held = held(arrival, cake.get(), SetPoint.FILTER_HIGH, "hold-", HELD);
        writing.tried(
                "service-" + set,
                set + ": runs until the cloth is dirty",
                () -> timeSteps(arrival, cake.get(), filter.dirty(), "resistance at which it is serviced"));
        return tool.match(run -> Stream.concat(Stream.of(run), held.stream()).toList(), why -> {
            List<Run> tooSoon = held
                    .filter(run -> leastInterval()
                            .filter(limit -> run.time().compareTo(limit.value()) < 0)
                            .isPresent())
                    .stream()
                    .toList();
            if (tooSoon.isEmpty()) {
                intervalNotKnown(set, why);
            }
            return tooSoon;
        });
    }

    private Outcome<Run> tool(DustArrival arrival, CakeResistance cake) {
        String set = setName(arrival);
        if (!CleaningInterval.limited(plant)) {
            return toolNotKnown(set, "No limit is stated: enter \"tool flow\" or \"inlet vacuum\" under requirements.");
        }
        Optional<CleaningInterval.Found> end =
                CleaningInterval.ofTools(cloth(arrival), arrival.inlets()).find();
        if (end.isEmpty()) {
            return toolNotKnown(set, "No resistance of this filter was found at which a tool falls below its limit.");
        }
        if (end.get().already()) {
            return toolNotKnown(
                    set,
                    "Inlet " + end.get().tool().inlet()
                            + " gets less than asked on the cleaned cloth already, before any dust lies on it: what it lacks, no cleaning"
                            + " brings. See what is said of that inlet; the time is known once it gets enough.");
        }
        Optional<Run> run = until("interval-" + set, NAME, arrival, cake, end.get(), limit(end.get()), true);
        return run.<Outcome<Run>>map(Outcome.Solved::new)
                .orElseGet(() ->
                        new Outcome.NotSolved<>("Outside the formula of the running time, see the filter's sheet."));
    }

    /** Until the drop reaches a set point of the default sequence; nothing where it never comes so high. */
    private Optional<Run> held(DustArrival arrival, CakeResistance cake, SetPoint point, String what, String name) {
        String set = setName(arrival);
        Optional<CleaningInterval.Found> end =
                CleaningInterval.ofDrop(cloth(arrival), point.drop()).find();
        if (end.isEmpty() && !(cloth(arrival).at(filter.normal()) instanceof Outcome.Solved)) {
            writing.unknown(what + set, set + name, "The network has no solution with a clean cloth.");
            return Optional.empty();
        }
        if (end.isEmpty()) {
            writing.words(
                    what + set,
                    set + name,
                    "never: the drop does not come so high, however much lies on the cloth.",
                    List.of(),
                    point.source());
            return Optional.empty();
        }
        return until(what + set, name, arrival, cake, end.get(), setPoint(end.get(), point), false);
    }

    /** The time to a resistance; where more dust lies on the cloth by then than any formula here is asked, the time to that. */
    private Optional<Run> until(
            String id,
            String name,
            DustArrival arrival,
            CakeResistance cake,
            CleaningInterval.Found end,
            Step limit,
            boolean byTool) {
        String set = setName(arrival);
        if (load(cake, end.end()).kgPerSquareMetre() > GREATEST_LOAD_kgPerM2) {
            writing.words(
                    id,
                    set + name,
                    "not before 50 kg/m² (10 lb/ft²) lie on the cloth, which other things end first: the bag, the level probe, the shift.",
                    List.of(limit),
                    START);
            Step reaching = reaching(arrival);
            Step least = running(arrival, new ClothLoad(GREATEST_LOAD_kgPerM2), reaching);
            return Optional.of(
                    new Run(set, (WorkingTime) least.result().value(), byTool, true, List.of(limit, reaching, least)));
        }
        List<Step> steps = new ArrayList<>();
        return writing.tried(id, set + name, () -> {
                    steps.add(limit);
                    steps.addAll(
                            timeSteps(arrival, cake, end.end(), limit.result().meaning()));
                    return steps;
                })
                .map(time -> new Run(set, (WorkingTime) time, byTool, false, List.copyOf(steps)));
    }

    private Outcome<Run> toolNotKnown(String set, String why) {
        open = true;
        writing.unknown("interval-" + set, set + NAME, why);
        return new Outcome.NotSolved<>(why);
    }

    private void intervalNotKnown(String set, String why) {
        open = true;
        plant.requirements()
                .receiver()
                .cleaningInterval()
                .ifPresent(limit -> writing.unjudged(
                        FindingCode.CLEANING_INTERVAL, Place.Kind.FILTER, set, Side.AT_LEAST, limit, why));
    }

    /** The default sequence cleans of its own accord, and sooner: by its clock and by the drop. */
    private void bySequence() {
        List<Sequence.Timer> timers =
                DefaultSequence.of(station.id(), Options.of(station, Set.of())).timers();
        double pause_s = time_s(timers, "settle") + time_s(timers, "rounds") + time_s(timers, "dust_fall");
        WorkingTime clock = new WorkingTime(time_s(timers, "interval"));
        String sooner = leastInterval()
                .filter(limit -> limit.value().compareTo(clock) > 0)
                .map(limit -> "; that is sooner than the " + UnitSystem.SI.format(limit.value())
                        + " for which the cloth is asked to last: set its clock and the contact that asks to suit, or have the filters"
                        + " cleaned by hand")
                .orElse("");
        writing.words(
                "sequence-cleaning",
                "Cleaning by the default sequence",
                "by itself and off load, after " + UnitSystem.SI.format(clock)
                        + " of vacuuming and whenever the filter drop asks for it (" + SetPoint.CLEANING_DUE.tag()
                        + "); users wait about " + Math.round(pause_s) + " s each time" + sooner + ".",
                List.of(),
                SetPoint.CLEANING_DUE.source());
    }

    private static double time_s(List<Sequence.Timer> timers, String name) {
        return timers.stream()
                .filter(timer -> timer.name().equals(name))
                .findFirst()
                .orElseThrow()
                .time_s();
    }

    /** What elements and cages bear, against the drop at which the default sequence holds. */
    private void bears() {
        filter.service()
                .greatestDifference()
                .ifPresentOrElse(
                        bears -> {
                            writing.given("bears", BEARS, bears);
                            writing.asked(
                                    FindingCode.FILTER_DIFFERENCE,
                                    Place.Kind.FILTER,
                                    Sheet.ANY_SET,
                                    Side.AT_LEAST,
                                    bears,
                                    new Limit<>(SetPoint.FILTER_HIGH.drop(), SetPoint.FILTER_HIGH.source()));
                        },
                        () -> writing.unknown(
                                "bears",
                                BEARS,
                                "Enter \"greatest difference\" of the filter, as the maker of the elements states it. Until then no figure"
                                        + " here says that they stand the drops of this sheet, nor that at which the default sequence holds."));
    }

    private static Step limit(CleaningInterval.Found end) {
        CleaningInterval.Tightest tool = end.tool();
        return step(
                "FLT-21",
                "S* = greatest S at which every open tool keeps its limit, the network solved at each S",
                START,
                new Term("S*", "resistance at which the first tool is at its limit", end.end()),
                new Term("S", "resistance after a cleaning, where the search starts", end.start()),
                new Term("x", "inlet " + tool.inlet() + ", the first to fall", tool.value()),
                new Term("x_min", "least asked", tool.limit()));
    }

    private static Step setPoint(CleaningInterval.Found end, SetPoint point) {
        boolean already = end.already();
        return step(
                "FLT-21",
                already
                        ? "S* = S: the cleaned cloth takes more than the set point, the network solved at S"
                        : "S* = greatest S at which the drop is below its set point, the network solved at each S",
                point.source(),
                new Term(
                        "S*",
                        already
                                ? "resistance at which the drop is beyond its set point already"
                                : "resistance at which the drop is at its set point",
                        end.end()),
                new Term("S", "resistance after a cleaning, where the search starts", end.start()),
                new Term("Δp", "drop over the filter then", end.tool().value()),
                new Term("Δp_set", "set point of " + point.tag(), end.tool().limit()));
    }

    private ClothLoad load(CakeResistance cake, FilterResistance end) {
        double grown = end.pascalSecondsPerMetre() - filter.normal().pascalSecondsPerMetre();
        return new ClothLoad(Math.max(0, grown) / cake.perSecond());
    }

    private List<Step> timeSteps(DustArrival arrival, CakeResistance cake, FilterResistance end, String words) {
        ClothLoad load = load(cake, end);
        Step reaching = reaching(arrival);
        return List.of(
                step(
                        "FLT-6",
                        "W = (S* − S) / K2",
                        COST_MANUAL,
                        new Term("W", "dust the cloth may take", load),
                        new Term("S*", words, end),
                        new Term("S", "resistance after a cleaning, the normal one", filter.normal()),
                        new Term("K2", "specific resistance of the cake", cake)),
                reaching,
                running(arrival, load, reaching));
    }

    private Step running(DustArrival arrival, ClothLoad load, Step reaching) {
        double time_s = FilterDrop.interval_s(
                load.kgPerSquareMetre(),
                filter.cloth().squareMetres(),
                arrival.total().kgPerSecond(),
                station.receiver().preSeparation().value());
        return step(
                "FLT-7",
                "t = W A / ṁ",
                Source.published("mass balance over the cloth"),
                new Term("t", "running time from cleaning to cleaning", new WorkingTime(time_s)),
                new Term("W", "dust the cloth may take", load),
                new Term("A", "cloth area", filter.cloth()),
                reaching.result());
    }

    /** The dustiest state of each design set, or of each set asked where none of them is a design set. */
    private List<DustArrival> sets() {
        Map<List<String>, DustArrival> bySet = new LinkedHashMap<>();
        for (DustArrival arrival : arrivals.all()) {
            bySet.merge(arrival.duty().state().open(), arrival, FilterSheet::dustier);
        }
        List<DustArrival> designed = plant.usage().designSets().stream()
                .map(DesignSet::open)
                .flatMap(open -> Optional.ofNullable(bySet.get(open)).stream())
                .toList();
        return designed.isEmpty() ? List.copyOf(bySet.values()) : designed;
    }

    private static DustArrival dustier(DustArrival one, DustArrival other) {
        return other.total().kgPerSecond() > one.total().kgPerSecond() ? other : one;
    }

    private String setName(DustArrival arrival) {
        List<String> open = arrival.duty().state().open();
        return plant.usage().designSets().stream()
                .filter(set -> set.open().equals(open))
                .map(DesignSet::name)
                .findFirst()
                .orElse(String.join("+", open));
    }

    // ---- what is known

    /** The greatest specific resistance among the dusts that arrive; absent where one of them has none. */
    private static Optional<CakeResistance> cake(DustArrival arrival) {
        boolean all =
                arrival.dusts().stream().allMatch(s -> s.dust().onCloth().cake().isPresent());
        return all
                ? arrival.dusts().stream()
                        .flatMap(s -> s.dust().onCloth().cake().stream())
                        .max(Comparator.naturalOrder())
                : Optional.empty();
    }

    private static String missingCake(DustArrival arrival) {
        return "The specific resistance of the cake is not known for "
                + String.join(
                        ", ",
                        arrival.dusts().stream()
                                .map(DustArrival.Share::dust)
                                .filter(dust -> dust.onCloth().cake().isEmpty())
                                .map(Dust::name)
                                .toList())
                + ": enter \"cake resistance\" under \"on cloth\". To measure it, run without cleaning and read the filter's"
                + " pressure drop before and after a known mass of dust, at one flow.";
    }

    private Velocity velocity(StationResult result) {
        return velocity(filter, result);
    }

    /** Actual flow in the receiver over the cloth area. */
    static Velocity velocity(Filter filter, StationResult result) {
        return new Velocity(
                result.receiverFlow().cubicMetresPerSecond() / filter.cloth().squareMetres());
    }
}
