package dustwright.documents.report;

import dustwright.engine.quantity.UnitSystem;

/** Paper sizes; text and drawings keep the 168 mm that both share. */
public enum PaperSize {
    A4("A4", "20mm 18mm 20mm 24mm"),
    LETTER("letter", "14mm 23.9mm 15mm 24mm");

    private final String word;
    private final String margins;

    PaperSize(String word, String margins) {
        this.word = word;
        this.margins = margins;
    }

    /** Paper where these units are in use: letter for US units, A4 for SI. */
    public static PaperSize of(UnitSystem units) {
        return units == UnitSystem.US ? LETTER : A4;
    }

    String css() {
        return "@page { size: " + word + "; margin: " + margins + "; }\n";
    }
}
