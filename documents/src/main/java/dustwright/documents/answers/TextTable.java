package dustwright.documents.answers;

import java.util.ArrayList;
import java.util.List;

/** A table for a terminal: numbers right, words left, the widest column of words cut with an ellipsis where the line is too short. */
final class TextTable {
    private static final String GAP = "  ";
    private static final int LEAST_WORDS = 8;

    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    private TextTable(List<Column> columns) {
        this.columns = columns;
    }

    /** A column with its head, unit included. */
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

    /** The lines of the table, head first, none longer than {@code width} where words can be cut. */
    List<String> lines(int width) {
        int[] widths = new int[columns.size()];
        for (int c = 0; c < widths.length; c++) {
            widths[c] = length(columns.get(c).head());
            for (List<String> row : rows) {
                widths[c] = Math.max(widths[c], length(row.get(c)));
            }
        }
        narrow(widths, width);
        List<String> lines = new ArrayList<>();
        lines.add(line(columns.stream().map(Column::head).toList(), widths));
        rows.forEach(row -> lines.add(line(row, widths)));
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

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < widths.length; c++) {
            String cell = cut(cells.get(c), widths[c]);
            String padding = " ".repeat(widths[c] - length(cell));
            line.append(c == 0 ? "" : GAP).append(columns.get(c).number() ? padding + cell : cell + padding);
        }
        return line.toString().stripTrailing();
    }

    private static String cut(String cell, int width) {
        if (length(cell) <= width) {
            return cell;
        }
        return cell.substring(0, cell.offsetByCodePoints(0, width - 1)) + "…";
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
