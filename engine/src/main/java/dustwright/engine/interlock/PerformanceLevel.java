package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Performance level of a safety function by the simplified method of ISO 13849-1: the level a risk asks for, and the level an architecture with its
 * parts reaches. Screening only: the risk assessment sets the level, data of the real parts and a validation show whether it is reached.
 *
 * @source ISO 13849-1:2015, risk graph of Annex A and simplified table of clause 4.5.4, partly from memory
 */
public enum PerformanceLevel {
    A,
    B,
    C,
    D,
    E;

    /** How badly somebody may be hurt: slightly, or seriously. */
    public enum Severity {
        S1,
        S2
    }

    /** How often or how long somebody is exposed: seldom, or often. */
    public enum Exposure {
        F1,
        F2
    }

    /** Whether harm can be avoided: sometimes, or hardly. */
    public enum Avoidance {
        P1,
        P2
    }

    /** Architecture of the control's parts. */
    public enum Category {
        B,
        ONE,
        TWO,
        THREE,
        FOUR
    }

    /** Mean time to dangerous failure of a channel: 3 to 10, 10 to 30, 30 to 100 years. */
    public enum Endurance {
        LOW,
        MEDIUM,
        HIGH;

        /**
         * Class of a mean time to dangerous failure.
         *
         * @param years MTTFd [years]
         * @return nothing below three years: not usable
         */
        public static Optional<Endurance> of(double years) {
            if (!(years >= 3)) {
                return Optional.empty();
            }
            return Optional.of(years < 10 ? LOW : years < 30 ? MEDIUM : HIGH);
        }
    }

    /** How much of the dangerous failures is noticed: under 60 %, to 90 %, to 99 %, above. */
    public enum Coverage {
        NONE,
        LOW,
        MEDIUM,
        HIGH;

        /**
         * Class of an average diagnostic coverage.
         *
         * @param share DCavg [-], 0 to 1
         */
        public static Coverage of(double share) {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("diagnostic coverage " + share + " is not between 0 and 1");
            }
            return share < 0.6 ? NONE : share < 0.9 ? LOW : share < 0.99 ? MEDIUM : HIGH;
        }
    }

    /** One way to build a function. */
    public record Build(Category category, Coverage coverage, Endurance endurance) {}

    /** The level a risk asks for. */
    public static PerformanceLevel required(Severity severity, Exposure exposure, Avoidance avoidance) {
        int steps = (severity == Severity.S2 ? 2 : 0)
                + (exposure == Exposure.F2 ? 1 : 0)
                + (avoidance == Avoidance.P2 ? 1 : 0);
        return values()[steps];
    }

    /** The level a build reaches; nothing where the simplified table does not cover it. */
    public static Optional<PerformanceLevel> reached(Build build) {
        // one letter per class of endurance, - where the table has none
        String row = switch (build.category()) {
            case B -> build.coverage() == Coverage.NONE ? "AB-" : "---";
            case ONE -> build.coverage() == Coverage.NONE ? "--C" : "---";
            case TWO -> row(build.coverage(), "ABC", "BCD");
            case THREE -> row(build.coverage(), "BCD", "CDD");
            case FOUR -> build.coverage() == Coverage.HIGH ? "--E" : "---";
        };
        int place = switch (build.endurance()) {
            case LOW -> 0;
            case MEDIUM -> 1;
            case HIGH -> 2;
        };
        char level = row.charAt(place);
        return level == '-' ? Optional.empty() : Optional.of(valueOf(String.valueOf(level)));
    }

    private static String row(Coverage coverage, String low, String medium) {
        return coverage == Coverage.LOW ? low : coverage == Coverage.MEDIUM ? medium : "---";
    }

    /** Every build of the simplified table that reaches this level or a better one. */
    public List<Build> buildsThatReach() {
        List<Build> builds = new ArrayList<>();
        for (Category category : Category.values()) {
            for (Coverage coverage : Coverage.values()) {
                for (Endurance endurance : Endurance.values()) {
                    Build build = new Build(category, coverage, endurance);
                    if (reached(build).filter(l -> l.compareTo(this) >= 0).isPresent()) {
                        builds.add(build);
                    }
                }
            }
        }
        return builds;
    }
}
