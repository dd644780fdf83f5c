package dustwright.engine;

import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * Reads the tables of outside values under {@code reference/} of the test resources. Lines that start with {@code #} say where a
 * table comes from; then comes one header line; fields may be quoted; an empty field is a value that is not defined there.
 */
public final class Reference {
    private Reference() {}

    /** All rows of a table that may fail a build: those read from memory are printed and left out. */
    public static List<Row> rows(String table) {
        List<Row> all = everyRow(table);
        all.stream().filter(Row::fromMemory).forEach(row -> report(row, "from memory, not asserted"));
        return all.stream().filter(Predicate.not(Row::fromMemory)).toList();
    }

    /** All rows of a table, also those that must never fail a build. */
    public static List<Row> everyRow(String table) {
        List<String> lines = lines(table);
        List<String> header = fields(lines.get(0));
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> fields = fields(line);
            if (fields.size() != header.size()) {
                throw new IllegalStateException(
                        table + ": " + fields.size() + " fields instead of " + header.size() + ": " + line);
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int n = 0; n < fields.size(); n++) {
                cells.put(header.get(n), fields.get(n));
            }
            rows.add(new Row(table, rows.size() + 1, cells));
        }
        return List.copyOf(rows);
    }

    /** Prints what is known about a row that does not decide anything. */
    public static void report(Row row, String what) {
        System.out.println("[reference] " + row + ": " + what);
    }

    /** Two-sided comparison with a relative tolerance of the expected value. */
    public static void assertClose(String what, double actual, double expected, double relative) {
        assertClose(what, actual, expected, relative, 0);
    }

    /** As {@link #assertClose(String, double, double, double)}; near zero an absolute difference is allowed as well. */
    public static void assertClose(String what, double actual, double expected, double relative, double absolute) {
        double allowed = Math.max(relative * Math.abs(expected), absolute);
        if (!(Math.abs(actual - expected) <= allowed)) {
            fail(
                    "%s: %s instead of %s, off by %.3g (allowed %.3g)",
                    what, actual, expected, actual - expected, allowed);
        }
    }

    private static List<String> lines(String table) {
        try (InputStream in =
                Objects.requireNonNull(Reference.class.getResourceAsStream("/reference/" + table), table)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isEmpty())
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException(table, e);
        }
    }

    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int n = 0; n < line.length(); n++) {
            char c = line.charAt(n);
            if (c == '"') {
                boolean doubled = quoted && n + 1 < line.length() && line.charAt(n + 1) == '"';
                if (doubled) {
                    field.append('"');
                    n++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        fields.add(field.toString());
        return fields;
    }

    /** One row of a table, by column name. */
    public record Row(String table, int number, Map<String, String> cells) {
        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalArgumentException(table + " has no column " + column);
            }
            return cell;
        }

        public double value(String column) {
            return Double.parseDouble(text(column));
        }

        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        public double tolerance() {
            return value("tolerance_rel");
        }

        /** Whether the row as a whole was remembered, not read; a source may also name one such column among others. */
        public boolean fromMemory() {
            String mark = cells.getOrDefault("status", "") + cells.getOrDefault("confidence", "");
            String source = text("source");
            return mark.contains("memory")
                    || source.contains("from memory, not confirmed")
                    || source.endsWith("definition, from memory");
        }

        /** A comparison that decides where the row was read or computed; of a remembered row it is printed what it came to. */
        public void judge(Runnable comparison) {
            if (!fromMemory()) {
                comparison.run();
                return;
            }
            String came = "as ours";
            try {
                comparison.run();
            } catch (AssertionError off) {
                came = "not as ours: " + off.getMessage();
            }
            report(this, "from memory, not asserted, " + came);
        }

        /** Compares a value with a column of this row at the row's tolerance. */
        public void assertClose(String column, double actual) {
            Reference.assertClose(this + " " + column, actual, value(column), tolerance());
        }

        /** As {@link #assertClose(String, double)}, where the value may be close to zero. */
        public void assertClose(String column, double actual, double absolute) {
            Reference.assertClose(this + " " + column, actual, value(column), tolerance(), absolute);
        }

        @Override
        public String toString() {
            return table + " row " + number;
        }
    }
}
