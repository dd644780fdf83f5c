package dustwright.plantfile;

import java.util.regex.Pattern;

/** How a text is written as a YAML scalar: bare where that is harmless everywhere, otherwise in double quotes. */
final class Scalars {
    /** Words and quantities: nothing in here means anything to YAML, in block or flow style. */
    private static final Pattern HARMLESS = Pattern.compile(
            "(?:[\\p{L}\\p{N}(°]|[-+.](?=[0-9]))(?:[\\p{L}\\p{N} _./()%+°²³·'\"=-]*[\\p{L}\\p{N}_./()%+°²³'\"])?");

    private Scalars() {}

    static String written(String text) {
        boolean bare = HARMLESS.matcher(text).matches() && !text.equals("null");
        return bare ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                default -> {
                    if (Character.getType(c) == Character.SURROGATE) {
                        throw new PlantEditor.Cannot("the text holds half a character (a lone surrogate)");
                    }
                    boolean printable = c >= 0x20
                            && c != 0x7F
                            && (c < 0x80 || Character.isLetterOrDigit(c) || "°²³µ·×€äöü".indexOf(c) >= 0);
                    if (printable) {
                        quoted.appendCodePoint(c);
                    } else {
                        quoted.append(c > 0xFFFF ? String.format("\\U%08X", c) : String.format("\\u%04X", c));
                    }
                }
            }
        });
        return quoted.append('"').toString();
    }
}
