package dustwright.documents.control;

import dustwright.documents.writing.Wording;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.BorderSide;
import org.dhatim.fastexcel.BorderStyle;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Tables as a workbook, one sheet each. */
public final class Workbooks {
    /** What matrix, lists and program ask of the reader. */
    public static final String REVIEW =
            "Matrix, lists and program are documents for review; code made from them must be tested on the real controller before use."
                    + " Colours and alarms follow conventions that the plant's own standard may override.";

    private static final Pattern CREATED = Pattern.compile("<dcterms:(created|modified)[^>]*>[^<]*</dcterms:[a-z]+>");

    private static final int WIDEST = 48;
    /** Width of the first sheet. */
    private static final int ABOUT = 110;

    private static final double LINE_pt = 15;
    /** No row of a workbook may be taller [pt]. */
    private static final double TALLEST_ROW_pt = 409;

    private static final int FILTER_MARK = 4;
    private static final String HEAD = "E5EAE7";

    /** What a printed page says that lies on a desk without the first one. */
    private static final String FOOT =
            "Draft for review by qualified people; read the first sheet. " + Wording.SCREENING;

    private Workbooks() {}

    /** Writes the tables of a sequence; the stream is left open. */
    public static void write(List<Lists.Rows> tables, OutputStream out) throws IOException {
        write(tables, List.of(ProofText.CAUTION, REVIEW), out);
    }

    /**
     * Writes tables, the same bytes for the same tables; the stream is left open.
     *
     * @param first what is to be read before them
     */
    public static void write(List<Lists.Rows> tables, List<String> first, OutputStream out) throws IOException {
        Path dated = Files.createTempFile("workbook", ".xlsx");
        try {
            try (OutputStream file = Files.newOutputStream(dated)) {
                writeDated(tables, first, file);
            }
            try (ZipFile parts = new ZipFile(dated.toFile())) {
                withoutTimes(parts, out);
            }
        } finally {
            Files.delete(dated);
        }
    }

    /** The parts of the workbook in a new archive, without the time at which it was made. */
    private static void withoutTimes(ZipFile parts, OutputStream out) throws IOException {
        ZipOutputStream written = new ZipOutputStream(out);
        for (ZipEntry part : Collections.list(parts.entries())) {
            byte[] content = parts.getInputStream(part).readAllBytes();
            if (part.getName().equals("docProps/core.xml")) {
                content = CREATED.matcher(new String(content, StandardCharsets.UTF_8))
                        .replaceAll("")
                        .getBytes(StandardCharsets.UTF_8);
            }
            ZipEntry entry = new ZipEntry(part.getName());
            entry.setTimeLocal(LocalDateTime.of(1980, 1, 1, 0, 0));
            written.putNextEntry(entry);
            written.write(content);
            written.closeEntry();
        }
        written.finish();
    }

    private static void writeDated(List<Lists.Rows> tables, List<String> first, OutputStream out) throws IOException {
        Workbook book = new Workbook(out, "dustwright", "1.0");
        about(book.newWorksheet("Read first"), first, tables);
        tables.forEach(table -> sheet(book.newWorksheet(table.title()), table));
        book.finish();
    }

    /** A table with its head frozen, ready to be filtered, and printed across a page with the head on each. */
    private static void sheet(Worksheet sheet, Lists.Rows table) {
        int columns = table.head().size();
        row(sheet, 0, table.head());
        sheet.range(0, 0, 0, columns - 1)
                .style()
                .bold()
                .fillColor(HEAD)
                .wrapText(true)
                .verticalAlignment("center")
                .borderStyle(BorderSide.BOTTOM, BorderStyle.THIN)
                .set();
        sheet.freezePane(1, 1);
        for (int r = 0; r < table.rows().size(); r++) {
            row(sheet, r + 1, table.rows().get(r));
            sheet.rowHeight(
                    r + 1, Math.min(TALLEST_ROW_pt, height(table, table.rows().get(r))));
        }
        sheet.rowHeight(0, Math.min(TALLEST_ROW_pt, height(table, table.head())));
        sheet.range(1, 0, Math.max(1, table.rows().size()), columns - 1)
                .style()
                .wrapText(true)
                .verticalAlignment("top")
                .borderStyle(BorderSide.BOTTOM, BorderStyle.HAIR)
                .set();
        for (int c = 0; c < columns; c++) {
            sheet.width(c, width(table, c));
        }
        sheet.setAutoFilter(0, 0, Math.max(1, table.rows().size()), columns - 1);
        sheet.repeatRows(0);
        sheet.footer(FOOT, Position.LEFT, 8);
        sheet.pageOrientation("landscape");
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
    }

    /** What the tables are and are not, before anybody works with them. */
    private static void about(Worksheet sheet, List<String> first, List<Lists.Rows> tables) {
        List<String> all = new ArrayList<>(first);
        all.add("");
        tables.forEach(t -> all.add(t.title() + ": " + t.key()));
        for (int n = 0; n < all.size(); n++) {
            sheet.value(n, 0, all.get(n));
            sheet.rowHeight(n, LINE_pt * lines(all.get(n), ABOUT - 2) + 2);
        }
        sheet.width(0, ABOUT);
        sheet.range(0, 0, all.size() - 1, 0)
                .style()
                .wrapText(true)
                .verticalAlignment("top")
                .set();
    }

    private static void row(Worksheet sheet, int at, List<String> cells) {
        for (int c = 0; c < cells.size(); c++) {
            sheet.value(at, c, cells.get(c));
        }
    }

    /** As wide as its longest cell up to a limit, and never narrower than the longest word of its head. */
    private static int width(Lists.Rows table, int column) {
        int longest = longestWord(table.head().get(column)) + FILTER_MARK;
        for (List<String> row : table.rows()) {
            longest = Math.max(longest, row.get(column).length() + 2);
        }
        return Math.min(WIDEST, longest);
    }

    private static int longestWord(String text) {
        return Stream.of(text.split(" ", -1)).mapToInt(String::length).max().orElse(0);
    }

    /** Points for as many lines as the fullest cell takes. */
    private static double height(Lists.Rows table, List<String> row) {
        int lines = 1;
        for (int c = 0; c < row.size(); c++) {
            int across = Math.max(4, width(table, c) - 2);
            lines = Math.max(lines, lines(row.get(c), across));
        }
        return LINE_pt * lines + 2;
    }

    /** Lines a text takes that breaks between words, and within one only where it is wider than a line. */
    private static int lines(String text, int across) {
        int lines = 1;
        int used = 0;
        for (String word : text.split(" ", -1)) {
            if (used > 0 && used + 1 + word.length() > across) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? 1 : 0) + word.length();
            lines += Math.max(0, used - 1) / across;
            used -= Math.max(0, used - 1) / across * across;
        }
        return lines;
    }
}
