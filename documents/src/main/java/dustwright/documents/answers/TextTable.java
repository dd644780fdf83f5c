package dustwright.documents.answers;

import java.util.ArrayList;
import java.util.List;

/** A table for a terminal: numbers right, words left, the widest column of words wrapped where the line is too short. */
final class TextTable {
    private static final String GAP = "  ";
    private static final int LEAST_WORDS = 8;

    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    private TextTable(List<Column> columns) {
        this.columns = columns;
    }

    /** A column with its head, unit included; the head of a column of numbers may have several lines. */
    record Column(String head, boolean number) {}

    static Column words(String head) {
        return new Column(head, false);
    }

    static Column number(String head) {
        return new Column(head, true);
    }

    static TextTable of(Column... columns) {
        return new TextTable(List.of(columns));
    }

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The lines of the table, head first, none longer than {@code width} where words can be wrapped. */
    List<String> lines(int width) {
        int[] widths = new int[columns.size()];
        for (int c = 0; c < widths.length; c++) {
            for (String line : lines(columns.get(c).head())) {
                widths[c] = Math.max(widths[c], length(line));
            }
            for (List<String> row : rows) {
                widths[c] = Math.max(widths[c], length(row.get(c)));
            }
        }
        narrow(widths, width);
        List<String> lines = new ArrayList<>();
        lines.addAll(rows(columns.stream().map(Column::head).toList(), widths));
        rows.forEach(row -> lines.addAll(rows(row, widths)));
        return lines;
    }

    private void narrow(int[] widths, int width) {
        int total = GAP.length() * (widths.length - 1);
        for (int w : widths) {
            total += w;
        }
        while (total > width) {
            int widest = -1;
            for (int c = 0; c < widths.length; c++) {
                if (!columns.get(c).number() && widths[c] > LEAST_WORDS && (widest < 0 || widths[c] > widths[widest])) {
                    widest = c;
                }
            }
            if (widest < 0) {
                return;
            }
            widths[widest]--;
            total--;
        }
    }

    /** A row; words that do not fit their column go on below it. */
    private List<String> rows(List<String> cells, int[] widths) {
        List<List<String>> parts = new ArrayList<>();
        int most = 1;
        for (int c = 0; c < widths.length; c++) {
            List<String> wrapped = columns.get(c).number() ? lines(cells.get(c)) : wrapped(cells.get(c), widths[c]);
            parts.add(wrapped);
            most = Math.max(most, wrapped.size());
        }
        List<String> lines = new ArrayList<>();
        for (int n = 0; n < most; n++) {
            lines.add(line(parts, n, widths));
        }
        return lines;
    }

    private String line(List<List<String>> parts, int n, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < widths.length; c++) {
            String cell = n < parts.get(c).size() ? parts.get(c).get(n) : "";
            String padding = " ".repeat(widths[c] - length(cell));
            line.append(c == 0 ? "" : GAP).append(columns.get(c).number() ? padding + cell : cell + padding);
        }
        return line.toString().stripTrailing();
    }

    private static List<String> wrapped(String cell, int width) {
        List<String> lines = new ArrayList<>();
        String rest = cell;
        while (length(rest) > width) {
            int end = rest.offsetByCodePoints(0, width);
            int space = rest.lastIndexOf(' ', end);
            boolean atSpace = space > rest.indexOf(rest.strip());
            lines.add(rest.substring(0, atSpace ? space : end));
            // following lines are set in a little, so that they read as one cell
            rest = " " + rest.substring(atSpace ? space + 1 : end);
        }
        lines.add(rest);
        return lines;
    }

    private static List<String> lines(String cell) {
        return cell.lines().toList();
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
