package dustwright.documents.control;

import dustwright.documents.writing.Element;
import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Steps and the ways between them. Steps stand one below the other; the way on to the next step is the arrow between them, ways back run on the left. Beside each step stands where else it
 * leads and when, so that no arrows cross; the number is that of the table below.
 */
public final class StateDiagram {
    private static final String CAUTION =
            "Design aid: tests on the finished panel show what it does. Local code, the authority having jurisdiction and a licensed engineer decide.";
    private static final List<String> LEGEND = List.of(
            "Bold box: where power on begins. Arrow down: the way to the next step; arrow on the left: a way back to an earlier one. A way that passes over steps",
            "further down, and one that leads from every other step to one, has no arrow: it stands beside the step it leaves, or comes to, by its number.");
    private static final int WIDTH = 720;
    /** As wide as the text of a paper, and no higher than its page. */
    private static final int PAPER = 630;

    private static final int PAGE = 880;
    private static final int BOX_LEFT = 150;
    private static final int BOX_WIDTH = 150;
    private static final int BOX_HEIGHT = 34;
    private static final int WORDS_LEFT = 322;
    private static final int LINE = 13;
    private static final int GAP = 22;
    private static final int TOP = 14;
    private static final int LANE = 15;
    /** Signs in a line beside a step. */
    private static final int SIGNS = 80;

    private static final String INK = "#1a1a1a";
    private static final String WAY = "#555555";

    private StateDiagram() {}

    /**
     * One way from a step to another with its conditions.
     *
     * @param from the step it leaves; nothing when it leaves every other step by the same condition
     */
    public record Way(int number, Optional<String> from, String to, List<Expr> conditions) {
        private boolean takes(String step, String exitTo) {
            return to.equals(exitTo) && (from.isEmpty() || from.get().equals(step));
        }
    }

    /** All ways, numbered: several exits to the same step are one way, and so is one condition that leads there from every other step. */
    public static List<Way> ways(Sequence sequence) {
        List<Way> ways = new ArrayList<>();
        Set<String> fromEverywhere = new LinkedHashSet<>();
        for (Sequence.Step to : sequence.steps()) {
            common(sequence, to.name()).ifPresent(when -> {
                fromEverywhere.add(to.name());
                ways.add(new Way(ways.size() + 1, Optional.empty(), to.name(), List.of(when)));
            });
        }
        for (Sequence.Step step : sequence.steps()) {
            Map<String, List<Expr>> conditions = new LinkedHashMap<>();
            for (Sequence.Exit exit : step.exits()) {
                if (!fromEverywhere.contains(exit.to())) {
                    conditions
                            .computeIfAbsent(exit.to(), k -> new ArrayList<>())
                            .add(exit.when());
                }
            }
            conditions.forEach(
                    (to, when) -> ways.add(new Way(ways.size() + 1, Optional.of(step.name()), to, List.copyOf(when))));
        }
        return ways;
    }

    /** The one condition under which every other step leaves for this one. */
    private static Optional<Expr> common(Sequence sequence, String to) {
        Set<List<Expr>> conditions = new LinkedHashSet<>();
        for (Sequence.Step step : sequence.steps()) {
            if (!step.name().equals(to)) {
                conditions.add(step.exits().stream()
                        .filter(x -> x.to().equals(to))
                        .map(Sequence.Exit::when)
                        .toList());
            }
        }
        return conditions.size() == 1 && sequence.steps().size() > 2
                ? conditions.iterator().next().stream().findFirst()
                : Optional.empty();
    }

    /** The number of the way that leads from one step to another. */
    public static int number(List<Way> ways, String from, String to) {
        return ways.stream()
                .filter(w -> w.takes(from, to))
                .mapToInt(Way::number)
                .findFirst()
                .orElseThrow();
    }

    /** The drawing. */
    public static Element svg(Sequence sequence) {
        List<Row> rows = rows(sequence);
        Row last = rows.get(rows.size() - 1);
        int legend = last.top() + last.height() + TOP;
        int foot = legend + LEGEND.size() * LINE;
        int height = foot + TOP;
        double scale = Math.min((double) PAPER / WIDTH, (double) PAGE / height);
        Element svg = Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("width", String.valueOf(Math.round(WIDTH * scale)))
                .with("height", String.valueOf(Math.round(height * scale)))
                .with("viewBox", "0 0 " + WIDTH + " " + height)
                .with("font-family", "DejaVu Sans Condensed, sans-serif")
                .with("font-size", "12")
                .with("role", "img")
                .add(Element.of("title").text("Steps of " + sequence.title()));
        for (int l = 0; l < LEGEND.size(); l++) {
            svg.add(text(TOP, legend + l * LINE, "start", LEGEND.get(l)).with("font-size", "10"));
        }
        svg.add(text(TOP, foot, "start", CAUTION).with("font-size", "10"));
        int lane = BOX_LEFT - LANE;
        for (int r = 0; r < rows.size(); r++) {
            Row row = rows.get(r);
            svg.addAll(box(row, r == 0));
            svg.addAll(words(row));
            int leaving = 0;
            for (Way way : row.ways()) {
                int to = at(rows, way.to());
                if (to == r + 1) {
                    svg.addAll(onward(way, row, rows.get(to)));
                } else if (to < r) {
                    svg.addAll(back(way, row, rows.get(to), lane, leaving++));
                    lane -= LANE;
                }
            }
        }
        return svg;
    }

    /** A step with what stands beside it. */
    private record Row(Sequence.Step step, int top, List<Way> ways, List<String> lines) {
        int height() {
            return Math.max(BOX_HEIGHT, lines.size() * LINE);
        }

        int middle() {
            return top + BOX_HEIGHT / 2;
        }
    }

    private static List<Row> rows(Sequence sequence) {
        List<Way> all = ways(sequence);
        List<Row> rows = new ArrayList<>();
        int top = TOP;
        for (Sequence.Step step : sequence.steps()) {
            List<String> lines = new ArrayList<>();
            List<Way> ways = new ArrayList<>();
            for (Way way : all) {
                if (way.from().isEmpty() && way.to().equals(step.name())) {
                    lines.addAll(wrapped(way.number() + "  from every other step when " + told(sequence, way)));
                } else if (way.from().filter(step.name()::equals).isPresent()) {
                    ways.add(way);
                    lines.addAll(wrapped(way.number() + "  to " + name(way.to()) + " when " + told(sequence, way)));
                }
            }
            Row row = new Row(step, top, List.copyOf(ways), List.copyOf(lines));
            rows.add(row);
            top += row.height() + GAP;
        }
        return rows;
    }

    private static String told(Sequence sequence, Way way) {
        return way.conditions().stream()
                .map(c -> Narrative.when(sequence, c))
                .collect(Collectors.joining("; or when "));
    }

    private static String name(String step) {
        return step.replace('_', ' ').toUpperCase(Locale.ROOT);
    }

    private static int at(List<Row> rows, String step) {
        return IntStream.range(0, rows.size())
                .filter(r -> rows.get(r).step().name().equals(step))
                .findFirst()
                .orElseThrow();
    }

    /** Lines of a width; further lines are set in. */
    private static List<String> wrapped(String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() + word.length() >= SIGNS) {
                lines.add(line.toString());
                line = new StringBuilder("\u2003\u2002");
            } else if (!line.isEmpty()) {
                line.append(' ');
            }
            line.append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<Element> box(Row row, boolean first) {
        Element box = Element.of("rect")
                .with("x", String.valueOf(BOX_LEFT))
                .with("y", String.valueOf(row.top()))
                .with("width", String.valueOf(BOX_WIDTH))
                .with("height", String.valueOf(BOX_HEIGHT))
                .with("fill", "#ffffff")
                .with("stroke", INK)
                .with("stroke-width", first ? "3" : "1.5");
        return List.of(
                box,
                text(
                        BOX_LEFT + BOX_WIDTH / 2,
                        row.top() + 22,
                        "middle",
                        name(row.step().name())));
    }

    private static List<Element> words(Row row) {
        List<Element> lines = new ArrayList<>();
        for (int l = 0; l < row.lines().size(); l++) {
            lines.add(text(
                            WORDS_LEFT,
                            row.top() + 10 + l * LINE,
                            "start",
                            row.lines().get(l))
                    .with("font-size", "10"));
        }
        return lines;
    }

    private static Element text(int x, int y, String anchor, String words) {
        return Element.of("text")
                .with("x", String.valueOf(x))
                .with("y", String.valueOf(y))
                .with("text-anchor", anchor)
                .with("fill", INK)
                .text(words);
    }

    /** Straight down to the next step. */
    private static List<Element> onward(Way way, Row from, Row to) {
        int x = BOX_LEFT + BOX_WIDTH / 2;
        int end = to.top() - 8;
        return label(
                List.of(
                        line("M" + x + " " + (from.top() + BOX_HEIGHT) + " L" + x + " " + end),
                        head(x, to.top(), "l-4 -9 l8 0 z")),
                x,
                (from.top() + BOX_HEIGHT + end) / 2,
                way.number());
    }

    /** Left, up in a lane of its own, and right to an earlier step. */
    private static List<Element> back(Way way, Row from, Row to, int lane, int leaving) {
        int leave = from.middle() - 8 + 8 * leaving;
        int arrive = to.middle() + (BOX_LEFT - lane) / LANE * 5 % 25 - 12;
        String path = "M" + BOX_LEFT + " " + leave + " L" + lane + " " + leave + " L" + lane + " " + arrive + " L"
                + (BOX_LEFT - 8) + " " + arrive;
        return label(
                List.of(line(path), head(BOX_LEFT, arrive, "l-9 -4 l0 8 z")), lane, (leave + arrive) / 2, way.number());
    }

    private static Element line(String path) {
        return Element.of("path").with("d", path).with("fill", "none").with("stroke", WAY);
    }

    private static Element head(int x, int y, String shape) {
        return Element.of("path").with("d", "M" + x + " " + y + " " + shape).with("fill", WAY);
    }

    /** The number on a white ground: not every reader of drawings paints an outline below its letters. */
    private static List<Element> label(List<Element> below, int x, int y, int number) {
        int width = number > 9 ? 16 : 10;
        List<Element> all = new ArrayList<>(below);
        all.add(Element.of("rect")
                .with("x", String.valueOf(x - width / 2))
                .with("y", String.valueOf(y - 7))
                .with("width", String.valueOf(width))
                .with("height", "14")
                .with("fill", "#ffffff"));
        all.add(text(x, y + 4, "middle", String.valueOf(number)));
        return all;
    }
}
