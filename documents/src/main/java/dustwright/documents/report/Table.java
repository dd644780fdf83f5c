package dustwright.documents.report;

import dustwright.documents.writing.Element;
import java.util.ArrayList;
import java.util.List;

/** A table with units in its head; numbers stand right. */
final class Table {
    private static final int LONGEST_WORD = 16;

    private final List<Column> columns;
    private final List<Element> rows = new ArrayList<>();

    private Table(List<Column> columns) {
        this.columns = columns;
    }

    /** A column: name and unit in the head, numbers right. */
    record Column(String name, String unit, String cssClass) {}

    static Column words(String name) {
        return new Column(name, "", "");
    }

    static Column number(String name, String unit) {
        return new Column(name, unit, "num");
    }

    /** Margins: never broken over two lines. */
    static Column margins() {
        return new Column("Margin", "", "tight");
    }

    /** Words in a column of its own width, by a class of the style sheet. */
    static Column sized(String name, String cssClass) {
        return new Column(name, "", cssClass);
    }

    static Table of(Column... columns) {
        return new Table(List.of(columns));
    }

    /** One row; a cell is a text or an element. */
    Table row(Object... cells) {
        Element row = Element.of("tr");
        for (int i = 0; i < cells.length; i++) {
            Element cell = Element.of("td");
            if (!columns.get(i).cssClass().isEmpty()) {
                cell.with("class", columns.get(i).cssClass());
            }
            if (cells[i] instanceof Element element) {
                row.add(cell.add(element));
            } else {
                String text = (String) cells[i];
                row.add(hasLongWord(text) ? cell.with("class", "long").text(text) : cell.text(text));
            }
        }
        rows.add(row);
        return this;
    }

    /** A word no column can be asked to hold: it may be broken anywhere. */
    private static boolean hasLongWord(String text) {
        for (String word : text.split(" ", -1)) {
            if (word.length() > LONGEST_WORD) {
                return true;
            }
        }
        return false;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    Element element(String cssClass) {
        Element head = Element.of("tr");
        for (Column column : columns) {
            Element cell = Element.of("th").text(column.name());
            if (!column.cssClass().isEmpty()) {
                cell.with("class", column.cssClass());
            }
            if (!column.unit().isEmpty()) {
                cell.add(Element.of("br"), Element.of("span", "u", column.unit()));
            }
            head.add(cell);
        }
        Element table = Element.of("table")
                .with("class", cssClass)
                .add(Element.of("thead").add(head), Element.of("tbody").addAll(rows));
        return Element.of("div").with("class", "scroll").add(table);
    }
}
