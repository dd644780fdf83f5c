package dustwright.engine.receiver;

import dustwright.engine.quantity.Range;
import dustwright.engine.reference.ReferenceTable;
import dustwright.engine.reference.ReferenceTable.Row;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * High-efficiency filter after the bags, by class. Efficiency is at the most penetrating particle size, not at 0.3 µm, and integral and
 * local limit are different numbers.
 *
 * @param name class of EN 1822-1, or of ISO 29463-1 where that has no equal
 * @param integral least efficiency over the whole filter [-]
 * @param local least efficiency at any point, where the class is leak tested [-]
 */
public record AfterFilter(String name, double integral, Optional<Double> local) {
    private static final ReferenceTable CLASSES = ReferenceTable.bundled("receiver/after-filter-classes.csv");
    private static final Range EFFICIENCY = new Range("filters in series", "E", "-", 0, 1);

    /** Names of both standards, each once, in the order of the table. */
    public static List<String> names() {
        return CLASSES.rows().stream()
                .flatMap(row -> Stream.of(row.text("en1822"), row.text("iso29463")))
                .filter(name -> !name.isEmpty())
                .toList();
    }

    /** The class of this name in either standard, for example H13 or "ISO 35 H". */
    public static AfterFilter ofClass(String name) {
        for (Row row : CLASSES.rows()) {
            if (row.text("en1822").equals(name) || row.text("iso29463").equals(name)) {
                return new AfterFilter(
                        name,
                        row.number("integral_percent") / 100,
                        row.find("local_percent").map(percent -> percent / 100));
            }
        }
        throw new IllegalArgumentException(
                "no high-efficiency filter class '" + name + "' in EN 1822-1 or ISO 29463-1");
    }

    /**
     * Share of particles of one size that pass several filters in series [-] (equation FLT-15).
     *
     * <pre>
     * P = Π (1 − E_i)
     * </pre>
     *
     * @param efficiencies E of each filter at that size [-], 0 to 1
     * @source definition; stages taken as independent
     * @example penetration(0.999, 0.9995) = 5e-7
     */
    public static double penetration(double... efficiencies) {
        double passing = 1;
        for (double efficiency : efficiencies) {
            passing *= 1 - EFFICIENCY.check(efficiency);
        }
        return passing;
    }
}
