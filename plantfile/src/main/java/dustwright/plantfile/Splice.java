package dustwright.plantfile;

import dustwright.plantfile.PlantEditor.Cannot;

/** Cuts and inserts in the text of a plant file at the places the tree knows. */
final class Splice {
    private static final int INDENT = 2;

    private final String text;

    Splice(String text) {
        this.text = text;
    }

    String replace(Tree old, String written) {
        Span span = old.span();
        String before = text.substring(span.start(), span.end());
        if (old instanceof Tree.Scalar scalar && scalar.isNothing() && before.isEmpty()) {
            return insert(span.start(), " " + written);
        }
        if (!isOnePiece(old)) {
            throw new Cannot("it is written over several lines; change its parts");
        }
        String lineEnd = before.endsWith("\n") ? "\n" : "";
        return text.substring(0, span.start()) + written + lineEnd + text.substring(span.end());
    }

    String add(Paths.Found parent, Tree.Entries mapping, String written) {
        if (mapping.flow()) {
            int close = mapping.span().end() - 1;
            return mapping.entries().isEmpty()
                    ? text.substring(0, mapping.span().start() + 1) + written + text.substring(close)
                    : insert(lastEnd(mapping), ", " + written);
        }
        int column = mapping.entries().isEmpty()
                ? parent.entry().map(e -> e.key().span().column() - 1).orElse(0) + INDENT
                : mapping.entries().get(0).key().span().column() - 1;
        int after = mapping.entries().isEmpty() ? mapping.span().end() : lastEnd(mapping);
        return insertLine(after, " ".repeat(column) + written);
    }

    String append(Tree.Items list, String written) {
        if (list.flow()) {
            return list.items().isEmpty()
                    ? insert(list.span().start() + 1, written)
                    : insert(lastEnd(list), ", " + written);
        }
        return insertLine(lastEnd(list), " ".repeat(list.span().column() - 1) + "- " + written);
    }

    String remove(Tree parent, Paths.Found child) {
        int start = child.entry()
                .map(e -> e.key().span().start())
                .orElse(child.value().span().start());
        boolean flow = parent instanceof Tree.Entries entries ? entries.flow() : ((Tree.Items) parent).flow();
        return flow ? removeFromFlow(parent, start, child.value()) : removeLines(parent, start, child.value());
    }

    private String removeFromFlow(Tree parent, int start, Tree value) {
        int end = end(value);
        int comma = skip(end, " \t\r\n");
        if (comma < text.length() && text.charAt(comma) == ',') {
            return cut(start, skip(comma + 1, " \t"));
        }
        int from = start;
        while (from > parent.span().start() + 1 && " \t\r\n,".indexOf(text.charAt(from - 1)) >= 0) {
            from--;
        }
        return cut(from, end);
    }

    private String removeLines(Tree parent, int start, Tree value) {
        int lineStart = text.lastIndexOf('\n', start - 1) + 1;
        String before = text.substring(lineStart, start).strip();
        if (!before.isEmpty() && !(parent instanceof Tree.Items && before.equals("-"))) {
            throw new Cannot("it begins on a line that holds more; remove the whole entry");
        }
        int lineEnd = text.indexOf('\n', Math.max(start, end(value) - 1));
        return cut(lineStart, lineEnd < 0 ? text.length() : lineEnd + 1);
    }

    /** Offset behind the last child of a list or mapping, or of the text of a value. */
    private static int lastEnd(Tree tree) {
        if (tree instanceof Tree.Entries entries && !entries.entries().isEmpty()) {
            return end(entries.entries().get(entries.entries().size() - 1).value());
        }
        if (tree instanceof Tree.Items items && !items.items().isEmpty()) {
            return end(items.items().get(items.items().size() - 1));
        }
        return tree.span().end();
    }

    /** Offset behind what is written; a block's own end mark lies behind the remarks that follow it. */
    private static int end(Tree tree) {
        return isOnePiece(tree) ? tree.span().end() : lastEnd(tree);
    }

    private static boolean isOnePiece(Tree tree) {
        return tree instanceof Tree.Scalar
                || (tree instanceof Tree.Items items && items.flow())
                || (tree instanceof Tree.Entries entries && entries.flow());
    }

    private String insert(int at, String more) {
        return text.substring(0, at) + more + text.substring(at);
    }

    /** A new line behind the line that holds the character before an offset. */
    private String insertLine(int after, String line) {
        int lineEnd = text.indexOf('\n', Math.max(0, after - 1));
        String newline = text.contains("\r\n") ? "\r\n" : "\n";
        return lineEnd < 0
                ? text + newline + line
                : text.substring(0, lineEnd + 1) + line + newline + text.substring(lineEnd + 1);
    }

    private int skip(int from, String characters) {
        int at = from;
        while (at < text.length() && characters.indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return at;
    }

    private String cut(int from, int to) {
        return text.substring(0, from) + text.substring(to);
    }
}
