package dustwright.documents.writing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A piece of markup that is well-formed XML and valid HTML at once, so that the same tree goes to a browser, to the PDF writer and into
 * an SVG file. All text and all attribute values are escaped when written: a name from a plant file cannot become markup.
 */
public final class Element {
    private static final Set<String> VOID = Set.of("meta", "br", "col", "hr");
    private static final int REPLACEMENT = 0xFFFD;

    private final String name;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<Object> children = new ArrayList<>();

    private Element(String name) {
        this.name = name;
    }

    public static Element of(String name) {
        return new Element(name);
    }

    /** An element with a class and a text, the commonest kind. */
    public static Element of(String name, String cssClass, String text) {
        return new Element(name).with("class", cssClass).text(text);
    }

    public Element with(String attribute, String value) {
        attributes.put(attribute, value);
        return this;
    }

    public Element text(String text) {
        children.add(text);
        return this;
    }

    public Element add(Element... elements) {
        return addAll(List.of(elements));
    }

    public Element addAll(List<Element> elements) {
        children.addAll(elements);
        return this;
    }

    /** The markup of this element and all it holds. */
    public String markup() {
        StringBuilder out = new StringBuilder(4096);
        writeTo(out);
        return out.toString();
    }

    private void writeTo(StringBuilder out) {
        out.append('<').append(name);
        attributes.forEach((key, value) -> {
            out.append(' ').append(key).append("=\"");
            escape(value, out);
            out.append('"');
        });
        if (VOID.contains(name)) {
            out.append("/>");
            return;
        }
        out.append('>');
        for (Object child : children) {
            if (child instanceof Element element) {
                element.writeTo(out);
            } else if (name.equals("style")) {
                out.append(plainStyle((String) child));
            } else {
                escape((String) child, out);
            }
        }
        out.append("</").append(name).append('>');
    }

    /** A style sheet is written as it is, since a browser does not unescape it; so it may not hold a sign that would need escaping. */
    private static String plainStyle(String css) {
        if (css.indexOf('<') >= 0 || css.indexOf('&') >= 0) {
            throw new IllegalArgumentException("a style sheet holds < or &");
        }
        return css;
    }

    private static void escape(String text, StringBuilder out) {
        text.codePoints().forEach(sign -> {
            switch (sign) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(allowedInXml(sign) ? sign : REPLACEMENT);
            }
        });
    }

    private static boolean allowedInXml(int sign) {
        return sign == '\t'
                || sign == '\n'
                || (sign >= 0x20 && sign <= 0xD7FF && !(sign >= 0x7F && sign <= 0x9F))
                || (sign >= 0xE000 && sign <= 0xFFFD)
                || sign >= 0x10000;
    }
}
