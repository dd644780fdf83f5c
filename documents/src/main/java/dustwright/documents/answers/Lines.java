package dustwright.documents.answers;

import java.util.ArrayList;
import java.util.List;

/** Lines for a terminal: words wrapped, typographic spaces and minus made plain so that a number can be copied. */
final class Lines {
    private final int width;
    private final List<String> lines = new ArrayList<>();

    Lines(int width) {
        this.width = width;
    }

    /** Text wrapped at spaces, following lines set in by as many as {@code indent}. */
    Lines text(String indent, String text) {
        StringBuilder line = new StringBuilder(indent);
        boolean empty = true;
        for (String word : plain(text).split(" ", -1)) {
            if (!empty && line.length() + 1 + word.length() > width) {
                lines.add(line.toString().stripTrailing());
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        lines.add(line.toString().stripTrailing());
        return this;
    }

    Lines head(String text) {
        lines.add("");
        lines.add(plain(text));
        return this;
    }

    Lines table(TextTable table) {
        for (String line : table.lines(width - 2)) {
            lines.add("  " + line);
        }
        return this;
    }

    Lines gap() {
        lines.add("");
        return this;
    }

    @Override
    public String toString() {
        return String.join("\n", lines) + "\n";
    }

    /** Signs a terminal or a calculator may stumble over, in plain form; nothing that could steer a terminal gets through. */
    static String plain(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(sign -> {
            switch (sign) {
                case 0x202F -> {}
                case 0x00A0 -> out.append(' ');
                case '−' -> out.append('-');
                default -> {
                    if (Character.isISOControl(sign)) {
                        out.append('\uFFFD');
                    } else {
                        out.appendCodePoint(sign);
                    }
                }
            }
        });
        return out.toString();
    }
}
