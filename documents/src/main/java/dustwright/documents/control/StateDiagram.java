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
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Steps and the ways between them. Steps stand one below the other; the way on to the next step is the arrow between them, ways back run on the left, ways that pass over steps on the right:
 * all that lead to one step, a fault or a STOP, are one line with a dot where each joins. Beside each step stands where it leads and when; the number is that of the table below.
 */
public final class StateDiagram {
    private static final String CAUTION =
            "Design aid: tests on the finished panel show what it does. Local code, the authority having jurisdiction and a licensed engineer decide.";
    private static final List<String> LEGEND = List.of(
            "Bold box: where power on begins. Arrow down: the way to the next step; arrow on the left: a way back. Line on the right: all ways that",
            "pass over steps and lead to one step; at each dot a step joins it, by the number of its way.");
    /** As wide as the text of a paper, and no higher than its page. */
    private static final int PAPER = 630;

    private static final int PAGE = 880;
    private static final int BOX_WIDTH = 124;
    private static final int BOX_HEIGHT = 40;
    private static final int WORDS_WIDTH = 400;
    private static final int LINE = 13;
    private static final int GAP = 22;
    private static final int TOP = 14;
    private static final int LANE = 15;
    /** Between two lines on the right, and before the first of them, where the numbers stand. */
    private static final int LINES = 11;

    private static final int STUB = 26;
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
        Lines lines = new Lines(rows);
        Row last = rows.get(rows.size() - 1);
        int legend = last.top() + last.height() + TOP;
        int foot = legend + LEGEND.size() * LINE;
        int height = foot + TOP;
        int width = lines.wordsLeft() + WORDS_WIDTH;
        double scale = Math.min((double) PAPER / width, (double) PAGE / height);
        Element svg = Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("width", String.valueOf(Math.round(width * scale)))
                .with("height", String.valueOf(Math.round(height * scale)))
                .with("viewBox", "0 0 " + width + " " + height)
                .with("font-family", "DejaVu Sans Condensed, sans-serif")
                .with("font-size", "12")
                .with("role", "img")
                .add(Element.of("title").text("Steps of " + sequence.title()));
        for (int l = 0; l < LEGEND.size(); l++) {
            svg.add(text(TOP, legend + l * LINE, "start", LEGEND.get(l)).with("font-size", "10"));
        }
        svg.add(text(TOP, foot, "start", CAUTION).with("font-size", "10"));
        lines.to().forEach(to -> svg.addAll(lines.line(to)));
        int lane = lines.boxLeft() - LANE;
        for (int r = 0; r < rows.size(); r++) {
            Row row = rows.get(r);
            svg.addAll(box(row, lines.boxLeft(), r == 0));
            svg.addAll(words(row, lines.wordsLeft()));
            int leaving = 0;
            for (Way way : row.ways()) {
                int to = at(rows, way.to());
                if (to == r + 1) {
                    svg.addAll(onward(way, row, rows.get(to), lines.boxLeft()));
                } else if (to < r) {
                    svg.addAll(back(way, row, rows.get(to), lines.boxLeft(), lane, leaving++));
                    lane -= LANE;
                }
            }
        }
        return svg;
    }

    /** Where lines stand: on the left one for each way back, on the right one for each step that ways pass over others to. */
    private static final class Lines {
        private final List<Row> rows;
        /** Numbers of the steps that have a line, the nearest to the boxes first, with the steps that join it and the way by which they do. */
        private final Map<Integer, Map<Integer, Way>> joining = new TreeMap<>();

        private final int backwards;

        Lines(List<Row> rows) {
            this.rows = rows;
            int back = 0;
            for (int r = 0; r < rows.size(); r++) {
                for (Way way : rows.get(r).ways()) {
                    int to = at(rows, way.to());
                    if (to > r + 1) {
                        joining.computeIfAbsent(to, t -> new TreeMap<>()).put(r, way);
                    }
                    back += to < r ? 1 : 0;
                }
                Optional<Way> everywhere = rows.get(r).arriving();
                for (int from = 0; everywhere.isPresent() && from < rows.size(); from++) {
                    if (from != r) {
                        joining.computeIfAbsent(r, t -> new TreeMap<>()).put(from, everywhere.get());
                    }
                }
            }
            backwards = back;
        }

        Set<Integer> to() {
            return joining.keySet();
        }

        int boxLeft() {
            return TOP + 8 + LANE * backwards;
        }

        private int boxRight() {
            return boxLeft() + BOX_WIDTH;
        }

        int wordsLeft() {
            return boxRight() + STUB + LINES * joining.size();
        }

        /** Where on the right of a step its line to a step begins, or the line to itself ends: from top to bottom, the nearest line first. */
        private int port(int row, int to) {
            List<Integer> here = joining.entrySet().stream()
                    .filter(j -> j.getKey() == row || j.getValue().containsKey(row))
                    .map(Map.Entry::getKey)
                    .toList();
            return rows.get(row).top() + (2 * here.indexOf(to) + 1) * BOX_HEIGHT / (2 * here.size());
        }

        List<Element> line(int to) {
            int x = boxRight()
                    + STUB
                    - 6
                    + LINES * List.copyOf(joining.keySet()).indexOf(to);
            List<Element> all = new ArrayList<>();
            int arrive = port(to, to);
            int top = arrive;
            int bottom = arrive;
            for (Map.Entry<Integer, Way> join :
                    Objects.requireNonNull(joining.get(to)).entrySet()) {
                int y = port(join.getKey(), to);
                top = Math.min(top, y);
                bottom = Math.max(bottom, y);
                all.add(StateDiagram.line("M" + boxRight() + " " + y + " L" + x + " " + y));
                all.add(Element.of("circle")
                        .with("cx", String.valueOf(x))
                        .with("cy", String.valueOf(y))
                        .with("r", "2")
                        .with("fill", WAY));
                all.addAll(label(List.of(), boxRight() + 10, y, join.getValue().number(), 8));
            }
            all.add(StateDiagram.line("M" + x + " " + top + " L" + x + " " + bottom));
            all.add(StateDiagram.line("M" + x + " " + arrive + " L" + (boxRight() + 8) + " " + arrive));
            all.add(head(boxRight(), arrive, "l9 -4 l0 8 z"));
            return all;
        }
    }

    /** A step with what stands beside it. */
    private record Row(Sequence.Step step, int top, Optional<Way> arriving, List<Way> ways, List<String> lines) {
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
            Optional<Way> arriving = Optional.empty();
            for (Way way : all) {
                if (way.from().isEmpty() && way.to().equals(step.name())) {
                    arriving = Optional.of(way);
                    lines.addAll(wrapped(way.number() + "  from every other step when " + told(sequence, way)));
                } else if (way.from().filter(step.name()::equals).isPresent()) {
                    ways.add(way);
                    lines.addAll(wrapped(way.number() + "  to " + name(way.to()) + " when " + told(sequence, way)));
                }
            }
            Row row = new Row(step, top, arriving, List.copyOf(ways), List.copyOf(lines));
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

    private static List<Element> box(Row row, int left, boolean first) {
        Element box = Element.of("rect")
                .with("x", String.valueOf(left))
                .with("y", String.valueOf(row.top()))
                .with("width", String.valueOf(BOX_WIDTH))
                .with("height", String.valueOf(BOX_HEIGHT))
                .with("fill", "#ffffff")
                .with("stroke", INK)
                .with("stroke-width", first ? "3" : "1.5");
        return List.of(
                box,
                text(
                        left + BOX_WIDTH / 2,
                        row.top() + BOX_HEIGHT / 2 + 5,
                        "middle",
                        name(row.step().name())));
    }

    private static List<Element> words(Row row, int left) {
        List<Element> lines = new ArrayList<>();
        for (int l = 0; l < row.lines().size(); l++) {
            lines.add(text(left, row.top() + 10 + l * LINE, "start", row.lines().get(l))
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
    private static List<Element> onward(Way way, Row from, Row to, int left) {
        int x = left + BOX_WIDTH / 2;
        int end = to.top() - 8;
        return label(
                List.of(
                        line("M" + x + " " + (from.top() + BOX_HEIGHT) + " L" + x + " " + end),
                        head(x, to.top(), "l-4 -9 l8 0 z")),
                x,
                (from.top() + BOX_HEIGHT + end) / 2,
                way.number(),
                12);
    }

    /** Left, up in a lane of its own, and right to an earlier step. */
    private static List<Element> back(Way way, Row from, Row to, int left, int lane, int leaving) {
        int leave = from.middle() - 8 + 8 * leaving;
        int arrive = to.middle() + (left - lane) / LANE * 5 % 25 - 12;
        String path = "M" + left + " " + leave + " L" + lane + " " + leave + " L" + lane + " " + arrive + " L"
                + (left - 8) + " " + arrive;
        return label(
                List.of(line(path), head(left, arrive, "l-9 -4 l0 8 z")), lane, (leave + arrive) / 2, way.number(), 12);
    }

    private static Element line(String path) {
        return Element.of("path").with("d", path).with("fill", "none").with("stroke", WAY);
    }

    private static Element head(int x, int y, String shape) {
        return Element.of("path").with("d", "M" + x + " " + y + " " + shape).with("fill", WAY);
    }

    /** The number on a white ground: not every reader of drawings paints an outline below its letters. */
    private static List<Element> label(List<Element> below, int x, int y, int number, int size) {
        int width = (number > 9 ? 16 : 10) * size / 12;
        List<Element> all = new ArrayList<>(below);
        all.add(Element.of("rect")
                .with("x", String.valueOf(x - width / 2))
                .with("y", String.valueOf(y - size * 7 / 12))
                .with("width", String.valueOf(width))
                .with("height", String.valueOf(size * 7 / 6))
                .with("fill", "#ffffff"));
        all.add(text(x, y + size / 3, "middle", String.valueOf(number)).with("font-size", String.valueOf(size)));
        return all;
    }
}
