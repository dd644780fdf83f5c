package dustwright.engine.tubing;

import dustwright.engine.reference.ReferenceTable;
import dustwright.engine.reference.ReferenceTable.Row;
import java.util.List;

/**
 * Tabulated roughness of a wall: one figure or a range. Dust polishes a line towards the smooth end.
 *
 * @param least_m smooth end [m]
 * @param greatest_m rough end [m]; the same where one figure is printed
 * @param source of this row
 */
public record WallRoughness(String material, String condition, double least_m, double greatest_m, String source) {
    private static final ReferenceTable TABLE = ReferenceTable.bundled("tubing/roughness.csv");

    /** All walls that have a figure, in the table's order; ribbed hose has none. */
    public static List<WallRoughness> all() {
        return TABLE.rows().stream()
                .filter(row -> !row.text("roughness_mm").isEmpty())
                .map(WallRoughness::of)
                .toList();
    }

    /** The first wall of this material and condition; refused where the table does not hold it. */
    public static WallRoughness of(String material, String condition) {
        return all().stream()
                .filter(wall -> wall.material.equals(material) && wall.condition.equals(condition))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("no tabulated roughness for " + material + ", " + condition));
    }

    private static WallRoughness of(Row row) {
        String[] ends = row.text("roughness_mm").split("-", -1);
        return new WallRoughness(
                row.text("material"),
                row.text("condition"),
                Double.parseDouble(ends[0]) / 1000,
                Double.parseDouble(ends[ends.length - 1]) / 1000,
                row.text("source"));
    }
}
