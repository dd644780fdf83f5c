package dustwright.engine.conveying;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Velocity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The published laws for the least gas velocity that keeps dust moving, by author, each with the range in which it may be asked.
 *
 * <p>Few of the papers state a range that could be read. Where none could, the range is our own reading and says so: particles of
 * 0.05 to 10 mm (finer dust coheres and travels in lumps), air of 0.3 to 3 kg/m³ (the tests were made near atmospheric pressure),
 * loading of 0.1 to 15 kg/kg (dilute conveying; all these laws tend to no velocity at all when the feed tends to none).
 */
public enum VelocityLaw {
    RIZK_1973(
            "Rizk 1973",
            "CON-10",
            Orientation.LEVEL,
            Source.published(
                    "Rizk, Pneumotransport 3, paper D4, 1973, as in Rhodes, Introduction to Particle Technology"),
            Limits.of(
                    "Rizk's saltation law",
                    5e-5,
                    1e-3,
                    Source.ownReading("sizes of the worked cases in Rhodes reach 1 mm")),
            c -> OptionalDouble.of(Saltation.rizk_mPerS(solids(c), size(c), air(c), bore(c)))),
    MATSUMOTO_1974(
            "Matsumoto 1974",
            "CON-11",
            Orientation.LEVEL,
            Source.published("Matsumoto and others, J. Chem. Eng. Japan 7(6), 1974, 425-430"),
            Limits.of(
                    "Matsumoto's law of 1974",
                    3e-4,
                    1e-2,
                    Source.published("for particles above 0.3 mm: documentation of python3-fluids 1.0.22")),
            c -> OptionalDouble.of(
                    Saltation.matsumoto1974_mPerS(solids(c), heavy(c), size(c), air(c), bore(c), terminal(c)))),
    MATSUMOTO_1975(
            "Matsumoto 1975",
            "CON-12",
            Orientation.LEVEL,
            Source.published("Matsumoto and others, J. Chem. Eng. Japan 8(4), 1975, 331-333"),
            Limits.of(
                    "Matsumoto's law of 1975",
                    3e-4,
                    1e-2,
                    Source.published("for particles above 0.3 mm: documentation of python3-fluids 1.0.22")),
            c -> OptionalDouble.of(
                    Saltation.matsumoto1975_mPerS(solids(c), heavy(c), size(c), air(c), bore(c), terminal(c)))),
    MATSUMOTO_1977(
            "Matsumoto 1977",
            "CON-13",
            Orientation.LEVEL,
            Source.published("Matsumoto and others, J. Chem. Eng. Japan 10(4), 1977, 273-279"),
            Limits.of("Matsumoto's law of 1977", 5e-5, 1e-2, Limits.OWN),
            c -> OptionalDouble.of(
                    Saltation.matsumoto1977_mPerS(solids(c), heavy(c), size(c), air(c), bore(c), terminal(c)))),
    SCHADE_1987(
            "Schade 1987",
            "CON-14",
            Orientation.LEVEL,
            Source.published("Schade, dissertation, Karlsruhe, 1987"),
            Limits.of("Schade's law", 5e-5, 1e-2, Limits.OWN),
            c -> OptionalDouble.of(Saltation.schade_mPerS(solids(c), heavy(c), size(c), air(c), bore(c)))),
    WEBER_1981(
            "Weber 1981",
            "CON-15",
            Orientation.LEVEL,
            Source.published("Weber, Bulk Solids Handling 1, 1981, 57-63"),
            Limits.of("Weber's law", 5e-5, 1e-2, Limits.OWN),
            c -> OptionalDouble.of(Saltation.weber_mPerS(solids(c), size(c), air(c), bore(c), terminal(c)))),
    GELDART_LING_1990(
            "Geldart and Ling 1990",
            "CON-16",
            Orientation.LEVEL,
            Source.published("Geldart and Ling, Powder Technology 62(3), 1990, 243-252"),
            new Limits(
                    new Range("Geldart and Ling's law", "d", "m", 1e-5, 1e-4),
                    new Range("Geldart and Ling's law", "ρ", "kg/m³", 10, 100),
                    new Range("Geldart and Ling's law", "μ", "kg/kg", 0.1, 1000),
                    Source.ownReading("title of the paper: dense phase, fine coal, high total pressures")),
            c -> OptionalDouble.of(Saltation.geldartLing_mPerS(
                    solids(c), air(c), bore(c), c.viscosity().pascalSeconds()))),
    PUNWANI_1976(
            "Punwani 1976",
            "CON-20",
            Orientation.RISING,
            Source.published("Punwani, Modi and Tarman, 1976, as in Rhodes, Introduction to Particle Technology"),
            Limits.of("Punwani's choking law", 5e-5, 1e-2, Limits.OWN),
            c -> velocity(Choking.punwani(c.flux_kgPerM2S(), heavy(c), air(c), bore(c), terminal(c)))),
    YANG_1975(
            "Yang 1975",
            "CON-21",
            Orientation.RISING,
            Source.fromMemory("Yang, AIChE Journal 21(5), 1975, 1013-1015"),
            Limits.of("Yang's choking law", 5e-5, 1e-2, Limits.OWN),
            c -> velocity(Choking.yang(c.flux_kgPerM2S(), heavy(c), bore(c), terminal(c)))),
    LEUNG_1971(
            "Leung 1971",
            "CON-22",
            Orientation.RISING,
            Source.fromMemory("Leung, Wiles and Nicklin, 1971"),
            Limits.of("Leung's choking law", 5e-5, 1e-2, Limits.OWN),
            c -> OptionalDouble.of(Choking.leung_mPerS(c.flux_kgPerM2S(), heavy(c), terminal(c))));

    /** How the tube lies for which a law was made. */
    public enum Orientation {
        LEVEL,
        RISING
    }

    private final String words;
    private final String equation;
    private final Orientation orientation;
    private final Source source;
    private final Limits limits;
    private final Function<Conveyed, OptionalDouble> law;

    VelocityLaw(
            String words,
            String equation,
            Orientation orientation,
            Source source,
            Limits limits,
            Function<Conveyed, OptionalDouble> law) {
        this.words = words;
        this.equation = equation;
        this.orientation = orientation;
        this.source = source;
        this.limits = limits;
        this.law = law;
    }

    /** Author and year, as printed beside every figure. */
    public String words() {
        return words;
    }

    /** Id on the equation page. */
    public String equation() {
        return equation;
    }

    public Orientation orientation() {
        return orientation;
    }

    public Source source() {
        return source;
    }

    /** Where the range comes from. */
    public Source rangeSource() {
        return limits.source();
    }

    /** What the law says about a stream of dust, and whether it may be asked. */
    public LawAnswer about(Conveyed conveyed) {
        OptionalDouble found = law.apply(conveyed);
        if (found.isEmpty()) {
            return new LawAnswer.NoAnswer(
                    words
                            + ": so much dust would fill more than 40 % of the tube, which is no stream of air with dust in it");
        }
        Velocity velocity = new Velocity(found.getAsDouble());
        List<Range.Miss> broken = limits.broken(conveyed, velocity);
        return broken.isEmpty() ? new LawAnswer.Inside(velocity) : new LawAnswer.OutsideRange(velocity, broken);
    }

    /** The range of a law: particle size, air density, and loading at the velocity found. */
    private record Limits(Range size, Range airDensity, Range loading, Source source) {
        static final Source OWN =
                Source.ownReading("no range of the paper could be read; dilute conveying near atmosphere");

        static Limits of(String law, double leastSize_m, double mostSize_m, Source source) {
            return new Limits(
                    new Range(law, "d", "m", leastSize_m, mostSize_m),
                    new Range(law, "ρ", "kg/m³", 0.3, 3),
                    new Range(law, "μ", "kg/kg", 0.1, 15),
                    source);
        }

        List<Range.Miss> broken(Conveyed conveyed, Velocity velocity) {
            List<Range.Miss> broken = new ArrayList<>();
            size.miss(VelocityLaw.size(conveyed)).ifPresent(broken::add);
            airDensity.miss(air(conveyed)).ifPresent(broken::add);
            loading.miss(conveyed.loading(velocity.metresPerSecond())).ifPresent(broken::add);
            return broken;
        }
    }

    private static double solids(Conveyed c) {
        return c.solids().kgPerSecond();
    }

    private static double heavy(Conveyed c) {
        return c.particle().density().kgPerCubicMetre();
    }

    private static double size(Conveyed c) {
        return c.particle().size().metres();
    }

    private static double air(Conveyed c) {
        return c.airDensity().kgPerCubicMetre();
    }

    private static double bore(Conveyed c) {
        return c.bore().metres();
    }

    private static double terminal(Conveyed c) {
        return c.terminal().metresPerSecond();
    }

    private static OptionalDouble velocity(Optional<Choking> choking) {
        return choking.isPresent() ? OptionalDouble.of(choking.get().velocity_mPerS()) : OptionalDouble.empty();
    }
}
