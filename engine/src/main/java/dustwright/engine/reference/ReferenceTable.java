package dustwright.engine.reference;

import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Source;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A published table bundled with the program. It opens with lines that start with {@code #} and say quantity, source, confidence and
 * validity: a table without one of them is refused. Then comes one header line; fields are parted by semicolons; an empty field is not
 * defined there.
 */
public final class ReferenceTable {
    private static final List<String> REQUIRED = List.of("quantity", "source", "confidence", "validity");

    private final String name;
    private final Map<String, String> provenance;
    private final Source source;
    private final List<Row> rows;

    private ReferenceTable(String name, Map<String, String> provenance, Source source, List<Row> rows) {
        this.name = name;
        this.provenance = provenance;
        this.source = source;
        this.rows = rows;
    }

    /** Reads a bundled table, for example {@code electrical/copper-75c.csv}. */
    public static ReferenceTable bundled(String name) {
        try (InputStream in = Objects.requireNonNull(
                ReferenceTable.class.getResourceAsStream("/reference/" + name), "no bundled table " + name)) {
            return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException("bundled table " + name + " cannot be read", e);
        }
    }

    /** Reads a table from its text. */
    static ReferenceTable parse(String name, String text) {
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        Map<String, String> provenance = provenance(lines);
        for (String key : REQUIRED) {
            if (provenance.getOrDefault(key, "").isEmpty()) {
                throw new IllegalArgumentException("table " + name + " does not state its " + key);
            }
        }
        List<String> data = lines.stream().filter(line -> !line.startsWith("#")).toList();
        if (data.size() < 2) {
            throw new IllegalArgumentException("table " + name + " has no rows");
        }
        Source source = new Source(
                Objects.requireNonNull(provenance.get("source")),
                confidence(name, Objects.requireNonNull(provenance.get("confidence"))));
        return new ReferenceTable(name, provenance, source, rows(name, data));
    }

    private static Map<String, String> provenance(List<String> lines) {
        Map<String, String> stated = new LinkedHashMap<>();
        for (String line : lines) {
            int colon = line.indexOf(':');
            if (line.startsWith("#") && colon > 0) {
                stated.putIfAbsent(
                        line.substring(1, colon).strip(),
                        line.substring(colon + 1).strip());
            }
        }
        return stated;
    }

    private static Confidence confidence(String name, String words) {
        String constant = words.toUpperCase(Locale.ROOT).replace(' ', '_');
        for (Confidence confidence : List.of(
                Confidence.PUBLISHED, Confidence.FROM_MEMORY, Confidence.COMMON_PRACTICE, Confidence.OWN_READING)) {
            if (confidence.name().equals(constant)) {
                return confidence;
            }
        }
        throw new IllegalArgumentException("table " + name + " states the confidence '" + words
                + "'; known are published, from memory, common practice, own reading");
    }

    private static List<Row> rows(String name, List<String> data) {
        String[] header = data.get(0).split(";", -1);
        List<Row> rows = new ArrayList<>();
        for (String line : data.subList(1, data.size())) {
            String[] fields = line.split(";", -1);
            if (fields.length != header.length) {
                throw new IllegalArgumentException("table " + name + " has " + fields.length + " fields instead of "
                        + header.length + ": " + line);
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int n = 0; n < header.length; n++) {
                cells.put(header[n], fields[n]);
            }
            rows.add(new Row(name, cells));
        }
        return List.copyOf(rows);
    }

    /** What the table tabulates, with unit. */
    public String quantity() {
        return Objects.requireNonNull(provenance.get("quantity"));
    }

    /** Where the figures come from and how far they can be trusted. */
    public Source source() {
        return source;
    }

    /** Where the figures hold. */
    public String validity() {
        return Objects.requireNonNull(provenance.get("validity"));
    }

    /** All rows, in the table's order. */
    public List<Row> rows() {
        return rows;
    }

    /** The row whose column holds exactly this text; refused, with what the table does hold, where there is none. */
    public Row row(String column, String text) {
        return rows.stream()
                .filter(row -> row.text(column).equals(text))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no " + column + " '" + text
                        + "'; it holds: "
                        + String.join(
                                ", ", rows.stream().map(row -> row.text(column)).toList())));
    }

    /** The row whose column holds exactly this number; refused, with what the table does hold, where there is none. */
    public Row row(String column, double number) {
        return rows.stream()
                .filter(row -> row.number(column) == number)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no " + column + " " + number
                        + "; it holds: "
                        + String.join(
                                ", ", rows.stream().map(row -> row.text(column)).toList())));
    }

    /** One row, by column name. */
    public record Row(String table, Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }

        /** The text of a cell; empty where the table does not define it. */
        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalArgumentException("table " + table + " has no column " + column);
            }
            return cell;
        }

        /** The number in a cell that the table defines. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** The number in a cell, where the table defines one. */
        public Optional<Double> find(String column) {
            return text(column).isEmpty() ? Optional.empty() : Optional.of(number(column));
        }
    }
}
