package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import dustwright.engine.Reference.Row;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * Tables of outside values whose inputs are told in words: each row gets an answer coded by hand under its id, and a row without an
 * answer is a fault. Values that a mistake returns must not come out; those from memory are printed beside ours and decide nothing.
 */
public final class ComputedRows {
    private ComputedRows() {}

    /** One test for each row of a table. */
    public static Stream<DynamicTest> tests(String table, String idColumn, Map<String, Supplier<Object>> answers) {
        return tests(table, idColumn, answers, Set.of());
    }

    /** One test for each row of a table but those that other tests hold. */
    public static Stream<DynamicTest> tests(
            String table, String idColumn, Map<String, Supplier<Object>> answers, Set<String> heldElsewhere) {
        List<Row> rows = Reference.everyRow(table).stream()
                .filter(row -> !heldElsewhere.contains(row.text(idColumn)))
                .toList();
        assertThat(answers.keySet())
                .as("rows of %s that have an answer", table)
                .containsExactlyInAnyOrderElementsOf(
                        rows.stream().map(row -> row.text(idColumn)).toList());
        return rows.stream()
                .map(row -> dynamicTest(row.text(idColumn), () -> check(row, answer(row, idColumn, answers))));
    }

    private static Object answer(Row row, String idColumn, Map<String, Supplier<Object>> answers) {
        Supplier<Object> answer = answers.get(row.text(idColumn));
        if (answer == null) {
            throw new IllegalStateException("no answer for " + row);
        }
        return answer.get();
    }

    private static void check(Row row, Object actual) {
        if (remembered(row)) {
            Reference.report(row, "from memory, not asserted: " + row.text("expected") + ", computed " + actual);
        } else if (actual instanceof Number number) {
            checkNumber(row, number.doubleValue());
        } else {
            assertThat(actual).as(row + " " + row.text("source")).isEqualTo(row.text("expected"));
        }
    }

    private static void checkNumber(Row row, double actual) {
        double expected = row.value("expected");
        double relative = Double.parseDouble(cell(row, "tol_rel", "tolerance_rel"));
        double absolute = Double.parseDouble("0" + cell(row, "tol_abs", "tolerance_abs"));
        if (cell(row, "kind", "kind").equals("wrong-value")) {
            assertThat(Math.abs(actual - expected))
                    .as("%s must not return the mistake's value: %s", row, row.cells())
                    .isGreaterThan(relative * Math.abs(expected));
        } else {
            Reference.assertClose(row + " " + row.cells(), actual, expected, Math.max(relative, 1e-12), absolute);
        }
    }

    private static boolean remembered(Row row) {
        return row.fromMemory() || cell(row, "kind", "kind").equals("printed-from-memory");
    }

    private static String cell(Row row, String column, String orElse) {
        return row.cells().getOrDefault(column, row.cells().getOrDefault(orElse, ""));
    }
}
