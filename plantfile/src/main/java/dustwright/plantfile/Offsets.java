package dustwright.plantfile;

/** Turns YAML's count of code points into offsets in a Java text; asked for rising places, it walks the text once. */
final class Offsets {
    private final String text;
    private final boolean same;
    private int codePoint;
    private int offset;

    Offsets(String text) {
        this.text = text;
        this.same = text.chars().noneMatch(c -> Character.isSurrogate((char) c));
    }

    int of(int codePointIndex) {
        if (same) {
            return codePointIndex;
        }
        if (codePointIndex < codePoint) {
            codePoint = 0;
            offset = 0;
        }
        offset = text.offsetByCodePoints(offset, codePointIndex - codePoint);
        codePoint = codePointIndex;
        return offset;
    }
}
