package dustwright.documents.drawing;

import dustwright.documents.writing.Element;
import dustwright.documents.writing.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * One drawing: shapes in layers on a sheet measured in quarter millimetres, the same for page, paper and file.
 *
 * @param title what it shows, read out in place of the picture
 */
public record Scene(double width, double height, String title, List<Layer> layers) {
    /** Full width of the text on A4 and Letter alike: 168 mm. */
    public static final double PAGE_WIDTH = 672;

    private static final double CSS_PIXELS_PER_UNIT = 96 / 25.4 / 4;
    private static final String FACE = "DejaVu Sans Condensed, Sofia Sans, sans-serif";

    public Scene {
        layers = List.copyOf(layers);
    }

    /** Shapes drawn together, in order. */
    public record Layer(String name, List<Shape> shapes) {
        public Layer {
            shapes = List.copyOf(shapes);
        }
    }

    /** The drawing as an SVG element of its size on paper. */
    public Element svg() {
        Element svg = sheet();
        for (Layer layer : layers) {
            svg.add(Element.of("g").with("data-layer", layer.name()).addAll(elements(layer.shapes())));
        }
        return svg;
    }

    /**
     * The same markup in lines: the head with the title, then for each layer its tag, its pieces and its end. A page that shows another drawing
     * of the same sheet reads only the lines it does not have.
     */
    public String lines() {
        String end = "</svg>";
        String head = sheet().markup();
        List<String> lines = new ArrayList<>(List.of(head.substring(0, head.length() - end.length())));
        for (Layer layer : layers) {
            lines.add("<g data-layer=\"" + layer.name() + "\">");
            elements(layer.shapes()).forEach(piece -> lines.add(piece.markup()));
            lines.add("</g>");
        }
        lines.add(end);
        return String.join("\n", lines);
    }

    private Element sheet() {
        return Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("width", Long.toString(Math.round(width * CSS_PIXELS_PER_UNIT)))
                .with("height", Long.toString(Math.round(height * CSS_PIXELS_PER_UNIT)))
                .with("viewBox", "0 0 " + number(width) + " " + number(height))
                .with("role", "img")
                .with("aria-label", title)
                .with("font-family", FACE)
                .add(Element.of("title").text(title));
    }

    /** One element each, but one for all lines in a row that look the same: a plant has hundreds of them. */
    private static List<Element> elements(List<Shape> shapes) {
        List<Element> elements = new ArrayList<>();
        for (int from = 0; from < shapes.size(); ) {
            int to = from + 1;
            while (to < shapes.size() && alike(shapes.get(from), shapes.get(to))) {
                to++;
            }
            elements.add(to == from + 1 ? element(shapes.get(from)) : together(shapes.subList(from, to)));
            from = to;
        }
        return elements;
    }

    private static boolean alike(Shape a, Shape b) {
        return a instanceof Shape.Path one
                && b instanceof Shape.Path other
                && !one.closed()
                && !other.closed()
                && one.line().equals(other.line())
                && one.fill().equals(Ink.NONE)
                && other.fill().equals(Ink.NONE);
    }

    private static Element together(List<Shape> alike) {
        String outlines = alike.stream().map(s -> outline((Shape.Path) s)).collect(Collectors.joining());
        Shape.Path first = (Shape.Path) alike.get(0);
        return drawn(Element.of("path").with("d", outlines), first.line(), first.fill());
    }

    /** The drawing as a file of its own. */
    public String svgFile() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + cautioned().svg().markup() + "\n";
    }

    /** A drawing that leaves its report takes the caution with it. */
    private Scene cautioned() {
        List<Layer> all = new ArrayList<>(layers);
        all.add(new Layer("caution", List.of(Shape.quiet(0, height + 12, Wording.SCREENING, 9.5, Shape.Anchor.START))));
        return new Scene(width, height + 18, title, all);
    }

    private static Element element(Shape shape) {
        if (shape instanceof Shape.Part part) {
            String name = part.kind() == Shape.Part.Kind.RUN ? "data-run" : "data-inlet";
            return Element.of("g").with(name, part.id()).addAll(elements(part.shapes()));
        }
        if (shape instanceof Shape.Tag tag) {
            return Element.of("g")
                    .with("data-tag", tag.rank().name().toLowerCase(Locale.ROOT))
                    .with("data-x", number(tag.at().x()))
                    .with("data-y", number(tag.at().y()))
                    .with("data-clearance", number(tag.clearance()))
                    .with("data-name", tag.name())
                    .with("data-value", tag.value())
                    .with("data-margin", tag.margin());
        }
        if (shape instanceof Shape.Path path) {
            return drawn(Element.of("path").with("d", outline(path)), path.line(), path.fill());
        }
        if (shape instanceof Shape.Circle circle) {
            Element element = Element.of("circle")
                    .with("cx", number(circle.centre().x()))
                    .with("cy", number(circle.centre().y()))
                    .with("r", number(circle.radius()));
            return drawn(element, circle.line(), circle.fill());
        }
        Shape.Text text = (Shape.Text) shape;
        Element element = Element.of("text")
                .with("x", number(text.at().x()))
                .with("y", number(text.at().y()))
                .with("font-size", number(text.size()))
                .with("fill", text.colour());
        if (text.anchor() != Shape.Anchor.START) {
            element.with("text-anchor", text.anchor().word());
        }
        if (text.bold()) {
            element.with("font-weight", "bold");
        }
        return element.text(text.text());
    }

    private static Element drawn(Element element, Line line, String fill) {
        element.with("fill", fill);
        if (line.weight() > 0) {
            element.with("stroke", line.colour()).with("stroke-width", number(line.weight()));
            if (!line.dash().isEmpty()) {
                element.with(
                        "stroke-dasharray",
                        line.dash().stream().map(Scene::number).collect(Collectors.joining(" ")));
            }
            element.with("stroke-linejoin", "round");
        }
        return element;
    }

    private static String outline(Shape.Path path) {
        String points = path.points().stream()
                .map(p -> number(p.x()) + " " + number(p.y()))
                .collect(Collectors.joining("L", "M", ""));
        return path.closed() ? points + "Z" : points;
    }

    /** Two decimals at most: a two-hundredth of a millimetre. */
    private static String number(double value) {
        long hundredths = Math.round(value * 100);
        long rest = Math.abs(hundredths) % 100;
        String whole = (hundredths < 0 ? "-" : "") + Math.abs(hundredths) / 100;
        if (rest == 0) {
            return whole;
        }
        return whole + (rest % 10 == 0 ? "." + rest / 10 : (rest < 10 ? ".0" : ".") + rest);
    }
}
