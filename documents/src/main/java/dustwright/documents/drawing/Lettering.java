package dustwright.documents.drawing;

/** Widths of lettering in the face of the papers, so that labels can be placed without a font engine. */
public final class Lettering {
    /** Advance of the signs 32 to 126 of DejaVu Sans Condensed in thousandths of the size, read from the font's own metrics. */
    private static final int[] ADVANCE = {
        286, 360, 414, 754, 572, 855, 702, 247, 351, 351, 450, 754, 286, 325, 286, 303, 572, 572, 572, 572, 572, 572,
                572,
        572, 572, 572, 303, 303, 754, 754, 754, 478, 900, 615, 617, 628, 693, 568, 518, 697, 677, 265, 265, 590, 501,
                776,
        673, 708, 542, 708, 625, 571, 549, 659, 615, 890, 616, 549, 616, 351, 303, 351, 754, 450, 450, 551, 571, 495,
                571,
        554, 316, 571, 570, 250, 250, 521, 250, 876, 570, 550, 571, 571, 370, 469, 353, 570, 532, 736, 532, 532, 472,
                572,
        303, 572, 754
    };

    /** Signs outside that list are taken wide. */
    private static final int OTHER = 800;

    /** Bold is up to this much wider. */
    private static final double BOLD = 1.13;

    private Lettering() {}

    /** Width of a text in the unit of its size, on the wide side. */
    public static double width(String text, double size, boolean bold) {
        double sum = text.codePoints()
                .map(sign -> sign >= 32 && sign <= 126 ? ADVANCE[sign - 32] : OTHER)
                .sum();
        return sum / 1000 * size * (bold ? BOLD : 1);
    }

    /** The text, cut with an ellipsis in the middle where it is wider than allowed: both ends of a long id tell pieces apart. */
    public static String fitted(String text, double size, double width) {
        if (width(text, size, false) <= width) {
            return text;
        }
        int[] signs = text.codePoints().toArray();
        for (int keep = signs.length - 1; keep >= 2; keep--) {
            int head = (keep + 1) / 2;
            int tail = keep - head;
            String cut = new String(signs, 0, head) + "…" + new String(signs, signs.length - tail, tail);
            if (width(cut, size, false) <= width) {
                return cut;
            }
        }
        return "…";
    }
}
