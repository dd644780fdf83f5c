package dustwright.documents.report;

import dustwright.documents.writing.Element;
import dustwright.documents.writing.Wording;
import dustwright.engine.finding.Source;
import java.util.ArrayList;
import java.util.List;

/** Sources of a document, each printed once in full and called by its number. */
final class Footnotes {
    private final List<String> sources = new ArrayList<>();

    /** What stands in a cell: one or two words as they are, a longer source as its number. */
    Element of(Source source) {
        return Element.of("span", "mark", mark(Wording.source(source)));
    }

    /** The same for a source that is already in words. */
    String mark(String source) {
        if (source.length() <= SHORT) {
            return source;
        }
        if (!sources.contains(source)) {
            sources.add(source);
        }
        return "[" + (sources.indexOf(source) + 1) + (source.contains(MEMORY) ? "m]" : "]");
    }

    /** Every source that was called. */
    Element list() {
        Table table = Table.of(Table.sized("No.", "note-no"), Table.words("Source"));
        for (int n = 0; n < sources.size(); n++) {
            table.row("[" + (n + 1) + "]", sources.get(n));
        }
        return table.element("notes");
    }

    /** What a reader has to know of the mark. */
    static final String KEY = "m: from memory, to be read again before anybody relies on it.";

    private static final int SHORT = 24;
    private static final String MEMORY = "from memory";
}
