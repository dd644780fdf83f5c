package dustwright.engine.interlock;

import dustwright.engine.interlock.PerformanceLevel.Avoidance;
import dustwright.engine.interlock.PerformanceLevel.Build;
import dustwright.engine.interlock.PerformanceLevel.Category;
import dustwright.engine.interlock.PerformanceLevel.Coverage;
import dustwright.engine.interlock.PerformanceLevel.Endurance;
import dustwright.engine.interlock.PerformanceLevel.Exposure;
import dustwright.engine.interlock.PerformanceLevel.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A safety function: the risk it is there for, and how it is built. What it reaches is screened by the simplified method of ISO 13849-1; the risk assessment sets the level, data of the real parts and a
 * validation show whether it is reached.
 *
 * @param words what it does
 * @param category architecture, where it is known
 * @param points points against failures of common cause by the list of the standard's Annex F, 0 to 100
 * @param channels parts of each channel, in a row; a test channel of category 2 is not among them
 */
public record SafetyFunction(
        String id,
        String words,
        Severity severity,
        Exposure exposure,
        Avoidance avoidance,
        Optional<Category> category,
        OptionalInt points,
        List<List<Part>> channels) {
    /** Points against failures of common cause that categories 2 to 4 need. */
    public static final int ENOUGH_POINTS = 65;

    /** A channel counts for no more, in years; in category 4 for more. */
    private static final double MOST_years = 100;

    private static final double MOST_IN_FOUR_years = 2500;

    /** Time a part is taken to stay in use, in years. */
    private static final double MISSION_years = 20;

    public SafetyFunction {
        channels = channels.stream().map(List::copyOf).toList();
    }

    /**
     * A part of a channel. Its mean time to a dangerous failure is stated, or comes from how many operations it bears and how often it is operated:
     * {@code MTTFd = B10d / (0.1 nop)}.
     *
     * @param b10d operations until 10 % of such parts have failed dangerously
     * @param operations_perYear mean number of operations [1/year]
     * @param mttfd_years mean time to dangerous failure [years]
     * @param coverage share of dangerous failures that is noticed [-], 0 to 1
     * @source ISO 13849-1:2015, C.4.2, from memory
     */
    public record Part(
            String words,
            OptionalDouble b10d,
            OptionalDouble operations_perYear,
            OptionalDouble mttfd_years,
            OptionalDouble coverage) {
        /** Mean time to dangerous failure [years]; nothing when it is neither stated nor to be had. */
        public OptionalDouble endurance_years() {
            if (mttfd_years.isPresent() || b10d.isEmpty() || operations_perYear.isEmpty()) {
                return mttfd_years;
            }
            return OptionalDouble.of(b10d.getAsDouble() / (0.1 * operations_perYear.getAsDouble()));
        }

        /** When 10 % have failed and it is to be replaced, in years; only of parts that wear with their operations. */
        private OptionalDouble worn_years() {
            return mttfd_years.isPresent() || endurance_years().isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(endurance_years().getAsDouble() / 10);
        }
    }

    /** What a function comes to. */
    public sealed interface Screened {
        /**
         * A level of the table.
         *
         * @param mttfd_years of each channel, two made equal [years]
         * @param coverage average diagnostic coverage [-]
         * @param remarks what goes with it
         */
        record Reached(PerformanceLevel level, double mttfd_years, double coverage, List<String> remarks)
                implements Screened {}

        /** No level: why. */
        record None(String why) implements Screened {}

        /** Not known: what to enter. */
        record Unknown(String enter) implements Screened {}
    }

    /** The level the risk asks for. */
    public PerformanceLevel asked() {
        return PerformanceLevel.required(severity, exposure, avoidance);
    }

    /** What it reaches. */
    public Screened reached() {
        List<String> missing = missing();
        if (category.isEmpty() || !missing.isEmpty()) {
            return new Screened.Unknown(String.join("; ", missing));
        }
        Category built = category.get();
        boolean tested = built.compareTo(Category.TWO) >= 0;
        if (tested && points.getAsInt() < ENOUGH_POINTS) {
            return new Screened.None(points.getAsInt() + " points against failures of common cause, " + ENOUGH_POINTS
                    + " are needed in category 2 to 4");
        }
        double mttfd_years = ofChannels(built);
        double share = averageCoverage();
        return level(built, mttfd_years, tested ? share : 0)
                .<Screened>map(l -> new Screened.Reached(l, mttfd_years, share, remarks(built, share)))
                .orElseGet(() -> new Screened.None(notCovered(mttfd_years)));
    }

    private static String notCovered(double mttfd_years) {
        return mttfd_years < 3
                ? "a channel of less than 3 years to a dangerous failure is not to be used"
                : "the simplified table has no level for this category with this coverage and endurance";
    }

    /** More coverage than the column of a category asks for counts as that column's. */
    private static Optional<PerformanceLevel> level(Category built, double mttfd_years, double share) {
        Coverage coverage = Coverage.of(share);
        Coverage most = built == Category.FOUR ? Coverage.HIGH : Coverage.MEDIUM;
        Coverage counted = coverage.compareTo(most) > 0 ? most : coverage;
        return Endurance.of(mttfd_years).flatMap(e -> PerformanceLevel.reached(new Build(built, counted, e)));
    }

    /** What has to be entered before anything can be said. */
    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (category.isEmpty()) {
            missing.add("category");
        }
        boolean tested = category.filter(c -> c.compareTo(Category.TWO) >= 0).isPresent();
        if (tested && points.isEmpty()) {
            missing.add("common cause");
        }
        if (channels.isEmpty()) {
            missing.add("channels with their parts");
        }
        for (List<Part> channel : channels) {
            for (Part part : channel) {
                if (part.endurance_years().isEmpty()) {
                    missing.add(part.words() + ": MTTFd, or B10d with operated");
                }
                if (tested && part.coverage().isEmpty()) {
                    missing.add(part.words() + ": coverage");
                }
            }
        }
        return missing;
    }

    /** Channels a category has; category 2 has a test channel besides. */
    public static int channels(Category category) {
        return category.compareTo(Category.THREE) >= 0 ? 2 : 1;
    }

    /**
     * Of one channel, or of two made equal: {@code 1/MTTFd = sum 1/MTTFd,i}, {@code 2/3 (a + b - 1/(1/a + 1/b))}.
     *
     * @source ISO 13849-1:2015, D.1 and D.2, from memory
     */
    private double ofChannels(Category built) {
        double most_years = built == Category.FOUR ? MOST_IN_FOUR_years : MOST_years;
        List<Double> each = channels.stream()
                .map(c -> Math.min(
                        most_years,
                        1
                                / c.stream()
                                        .mapToDouble(
                                                p -> 1 / p.endurance_years().getAsDouble())
                                        .sum()))
                .toList();
        if (each.size() == 1) {
            return each.get(0);
        }
        double a = each.get(0);
        double b = each.get(1);
        return 2.0 / 3 * (a + b - 1 / (1 / a + 1 / b));
    }

    /**
     * Each part's coverage, weighed by how often it fails: {@code sum DC_i/MTTFd,i / sum 1/MTTFd,i} over all channels.
     *
     * @source ISO 13849-1:2015, E.2, from memory
     */
    private double averageCoverage() {
        double noticed = 0;
        double all = 0;
        for (List<Part> channel : channels) {
            for (Part part : channel) {
                double rate_perYear = 1 / part.endurance_years().getAsDouble();
                noticed += part.coverage().orElse(0) * rate_perYear;
                all += rate_perYear;
            }
        }
        return noticed / all;
    }

    private List<String> remarks(Category built, double share) {
        List<String> remarks = new ArrayList<>();
        if (built == Category.ONE) {
            remarks.add("category 1 needs well-tried parts and principles");
        }
        if (built == Category.TWO) {
            remarks.add(
                    "category 2 needs a test channel, tests 100 times as often as demands, and a test channel that lasts half as long at least");
        }
        if (built.compareTo(Category.TWO) < 0 && share > 0) {
            remarks.add("diagnostics do not count in category " + (built == Category.B ? "B" : "1"));
        }
        for (List<Part> channel : channels) {
            for (Part part : channel) {
                part.worn_years().ifPresent(years -> replaced(part, years).ifPresent(remarks::add));
            }
        }
        return List.copyOf(remarks);
    }

    private static Optional<String> replaced(Part part, double worn_years) {
        return worn_years < MISSION_years
                ? Optional.of(part.words() + " to be replaced before "
                        + (worn_years < 1 ? "the year is over" : (long) worn_years + " years"))
                : Optional.empty();
    }

    /** What a station of this kind has; severity, exposure and avoidance are our assumption for a screening. */
    public static List<SafetyFunction> usual(boolean guarded) {
        List<SafetyFunction> usual = new ArrayList<>();
        usual.add(asked("emergency_stop", "emergency stop", Severity.S2, Exposure.F1, Avoidance.P1));
        if (guarded) {
            usual.add(asked("guard", "guard of what turns under the receiver", Severity.S2, Exposure.F1, Avoidance.P2));
        }
        usual.add(asked("start", "no start without a deliberate START", Severity.S2, Exposure.F1, Avoidance.P1));
        usual.add(asked("relief", "vacuum relief", Severity.S1, Exposure.F2, Avoidance.P1));
        return List.copyOf(usual);
    }

    /** Whether its risk is the one that is assumed here, be it that nobody changed it or that an assessment found the same. */
    public boolean riskAsAssumed() {
        return usual(true).stream()
                .anyMatch(assumed -> assumed.id.equals(id)
                        && assumed.severity == severity
                        && assumed.exposure == exposure
                        && assumed.avoidance == avoidance);
    }

    private static SafetyFunction asked(
            String id, String words, Severity severity, Exposure exposure, Avoidance avoidance) {
        return new SafetyFunction(
                id, words, severity, exposure, avoidance, Optional.empty(), OptionalInt.empty(), List.of());
    }
}
