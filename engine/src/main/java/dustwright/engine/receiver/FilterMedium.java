package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;
import dustwright.engine.reference.ReferenceTable;
import dustwright.engine.reference.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A fibre for filter bags and how it suits a duty, with the reasons. Potting, end caps and backing may limit further than the fibre.
 *
 * @param fibre name in the table
 * @param continuous_K limit in continuous service [K]
 * @param surge_K limit in short surges [K]
 */
public record FilterMedium(String fibre, double continuous_K, double surge_K, String acid, String alkali) {
    private static final ReferenceTable TABLE = ReferenceTable.bundled("receiver/filter-media.csv");
    private static final Set<String> NATURAL = Set.of("cotton", "wool");
    private static final Range TEMPERATURE = new Range("the choice of filter media", "T", "K", 200, 700);

    /** All fibres with a tabulated temperature limit, in the table's order. */
    public static List<FilterMedium> all() {
        return TABLE.rows().stream()
                .filter(row -> row.find("continuous_F").isPresent())
                .map(FilterMedium::of)
                .toList();
    }

    /** The fibre of this name; refused where the table gives it no limit of its own. */
    public static FilterMedium named(String fibre) {
        return of(TABLE.row("fibre", fibre));
    }

    private static FilterMedium of(Row row) {
        double continuous = row.find("continuous_F")
                .orElseThrow(() -> new IllegalArgumentException(
                        row.text("fibre") + " has no published limit: ask the maker, its potting and end caps decide"));
        return new FilterMedium(
                row.text("fibre"),
                kelvin(continuous),
                kelvin(row.number("surge_F")),
                row.text("acid"),
                row.text("alkali"));
    }

    private static double kelvin(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    /**
     * What the medium has to bear.
     *
     * @param continuous_K air temperature in continuous service [K]
     * @param surge_K highest temperature in short surges [K]
     * @param combustible whether the dust is combustible, or nobody has tested it
     * @param sticky whether the dust cakes or smears
     * @param hotAndMoist whether the air is warm and damp
     */
    public record Duty(double continuous_K, double surge_K, boolean combustible, boolean sticky, boolean hotAndMoist) {
        public Duty {
            TEMPERATURE.check(continuous_K);
            TEMPERATURE.check(surge_K);
            if (surge_K < continuous_K) {
                throw new IllegalArgumentException(
                        "surge temperature " + surge_K + " K lies below the continuous one, " + continuous_K + " K");
            }
        }
    }

    /** Why a medium suits a duty or does not, and what to ask of it. */
    public enum Reason {
        TOO_HOT_CONTINUOUS("the air is hotter than the fibre bears in continuous service", true),
        TOO_HOT_SURGE("surges are hotter than the fibre bears", true),
        LOSES_STRENGTH_MOIST("polyester loses strength in hot moist air", true),
        ROTS_MOIST("natural fibres rot in moist air", true),
        ASK_DISSIPATIVE("combustible dust: take a static-dissipative make of it and bond every cage to ground", false),
        ASK_NON_STICK("dust that cakes: take a membrane or non-stick finish, so that pulses free it", false),
        ASK_MAKER("potting, end caps and backing may bear less than the fibre: ask the maker", false);

        private final String words;
        private final boolean excludes;

        Reason(String words, boolean excludes) {
            this.words = words;
            this.excludes = excludes;
        }

        /** The reason in plain words. */
        public String words() {
            return words;
        }

        /** Whether the reason rules the medium out. */
        public boolean excludes() {
            return excludes;
        }
    }

    /** The reasons that speak about this medium in a duty; it suits where none of them excludes. */
    public List<Reason> reasons(Duty duty) {
        List<Reason> reasons = new ArrayList<>();
        if (duty.continuous_K() > continuous_K) {
            reasons.add(Reason.TOO_HOT_CONTINUOUS);
        }
        if (duty.surge_K() > surge_K) {
            reasons.add(Reason.TOO_HOT_SURGE);
        }
        if (duty.hotAndMoist() && fibre.equals("polyester")) {
            reasons.add(Reason.LOSES_STRENGTH_MOIST);
        }
        if (duty.hotAndMoist() && NATURAL.contains(fibre)) {
            reasons.add(Reason.ROTS_MOIST);
        }
        if (duty.combustible()) {
            reasons.add(Reason.ASK_DISSIPATIVE);
        }
        if (duty.sticky()) {
            reasons.add(Reason.ASK_NON_STICK);
        }
        reasons.add(Reason.ASK_MAKER);
        return List.copyOf(reasons);
    }

    /** Whether no reason rules this medium out. */
    public boolean suits(Duty duty) {
        return reasons(duty).stream().noneMatch(Reason::excludes);
    }

    /**
     * The usual choice: polyester felt wherever it suits, else the fibre with the lowest limit that bears the duty; empty where none
     * does.
     */
    public static Optional<FilterMedium> choose(Duty duty) {
        FilterMedium usual = named("polyester");
        if (usual.suits(duty)) {
            return Optional.of(usual);
        }
        return all().stream()
                .filter(medium -> medium.suits(duty))
                .min((one, other) -> Double.compare(one.continuous_K(), other.continuous_K()));
    }
}
