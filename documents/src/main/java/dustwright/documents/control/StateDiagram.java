package dustwright.documents.control;

import dustwright.documents.writing.Element;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Steps and the ways between them: steps stand one below the other, ways forward bow to the right, ways back to the left; a number at each way leads to
 * its condition in the table below.
 */
public final class StateDiagram {
    private static final int WIDTH = 900;
    /** What the ways reach at most. */
    private static final int SEEN = 720;
    /** As wide as the text of a paper. */
    private static final int PAPER = 630;

    private static final int STEP_WIDTH = 190;
    private static final int STEP_HEIGHT = 34;
    private static final int PITCH = 74;
    private static final int TOP = 30;
    private static final int MIDDLE = WIDTH / 2;

    private StateDiagram() {}

    /**
     * One way from a step to another with its conditions.
     *
     * @param from the step it leaves; nothing when it leaves every other step by the same condition
     */
    public record Way(int number, Optional<String> from, String to, List<String> conditions) {
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
            Map<String, List<String>> conditions = new LinkedHashMap<>();
            for (Sequence.Exit exit : step.exits()) {
                if (!fromEverywhere.contains(exit.to())) {
                    conditions
                            .computeIfAbsent(exit.to(), k -> new ArrayList<>())
                            .add(exit.when().text());
                }
            }
            conditions.forEach(
                    (to, when) -> ways.add(new Way(ways.size() + 1, Optional.of(step.name()), to, List.copyOf(when))));
        }
        return ways;
    }

    /** The one condition under which every other step leaves for this one. */
    private static Optional<String> common(Sequence sequence, String to) {
        Set<List<String>> conditions = new LinkedHashSet<>();
        for (Sequence.Step step : sequence.steps()) {
            if (!step.name().equals(to)) {
                conditions.add(step.exits().stream()
                        .filter(x -> x.to().equals(to))
                        .map(x -> x.when().text())
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
        List<String> steps = sequence.steps().stream().map(Sequence.Step::name).toList();
        int height = 2 * TOP + (steps.size() - 1) * PITCH + STEP_HEIGHT;
        Element svg = Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("width", String.valueOf(PAPER))
                .with("height", String.valueOf(height * PAPER / SEEN))
                .with("viewBox", (WIDTH - SEEN) / 2 + " 0 " + SEEN + " " + height)
                .with("font-family", "DejaVu Sans Condensed, sans-serif")
                .with("font-size", "12")
                .with("role", "img")
                .add(Element.of("title").text("Steps of " + sequence.title()));
        Map<String, Set<Integer>> used = new LinkedHashMap<>();
        for (Way way : ways(sequence)) {
            svg.addAll(way.from().map(f -> way(way, f, steps, used)).orElseGet(() -> fromEverywhere(way, steps, used)));
        }
        for (int s = 0; s < steps.size(); s++) {
            svg.addAll(step(sequence.steps().get(s), s));
        }
        return svg;
    }

    private static List<Element> step(Sequence.Step step, int at) {
        int y = TOP + at * PITCH;
        Element box = Element.of("rect")
                .with("x", String.valueOf(MIDDLE - STEP_WIDTH / 2))
                .with("y", String.valueOf(y))
                .with("width", String.valueOf(STEP_WIDTH))
                .with("height", String.valueOf(STEP_HEIGHT))
                .with("fill", "#ffffff")
                .with("stroke", "#1a1a1a")
                .with("stroke-width", at == 0 ? "3" : "1.5");
        Element name = Element.of("text")
                .with("x", String.valueOf(MIDDLE))
                .with("y", String.valueOf(y + 22))
                .with("text-anchor", "middle")
                .text(step.name().replace('_', ' ').toUpperCase(Locale.ROOT));
        return List.of(box, name);
    }

    /** An arc whose reach grows with the distance of its ends, with an arrow at its end and its number half way. */
    private static List<Element> way(Way way, String leaves, List<String> steps, Map<String, Set<Integer>> used) {
        int from = steps.indexOf(leaves);
        int to = steps.indexOf(way.to());
        boolean forward = to > from;
        int side = forward ? 1 : -1;
        int leave = TOP + from * PITCH + STEP_HEIGHT / 2 + place(used, leaves + side) * 4 - 12;
        int arrive = TOP + to * PITCH + STEP_HEIGHT / 2 + place(used, way.to() + side) * 4 - 12;
        int edge = MIDDLE + side * STEP_WIDTH / 2;
        int reach = edge + side * (20 + 28 * Math.abs(to - from));
        double half = (leave + arrive) / 2.0;
        int label = (int) Math.round(0.125 * edge + 0.75 * reach + 0.125 * edge);
        Element arc = Element.of("path")
                .with(
                        "d",
                        "M" + edge + " " + leave + " C" + reach + " " + leave + " " + reach + " " + arrive + " "
                                + (edge + side * 7) + " " + arrive)
                .with("fill", "none")
                .with("stroke", "#555555");
        return label(List.of(arc, head(edge, arrive, side)), label, half, way.number());
    }

    /** A short arrow for what every step does alike. */
    private static List<Element> fromEverywhere(Way way, List<String> steps, Map<String, Set<Integer>> used) {
        int edge = MIDDLE - STEP_WIDTH / 2;
        int arrive = TOP + steps.indexOf(way.to()) * PITCH + STEP_HEIGHT / 2 + 10;
        place(used, way.to() + -1);
        Element line = Element.of("path")
                .with("d", "M" + (edge - 70) + " " + arrive + " L" + (edge - 7) + " " + arrive)
                .with("fill", "none")
                .with("stroke", "#555555");
        Element words = Element.of("text")
                .with("x", String.valueOf(edge - 76))
                .with("y", String.valueOf(arrive + 4))
                .with("text-anchor", "end")
                .with("fill", "#1a1a1a")
                .text("every other step");
        return label(List.of(line, head(edge, arrive, -1), words), edge - 40, arrive, way.number());
    }

    private static Element head(int edge, int arrive, int side) {
        return Element.of("path")
                .with("d", "M" + edge + " " + arrive + " l" + side * 8 + " -4 l0 8 z")
                .with("fill", "#555555");
    }

    /** The number on a white ground: not every reader of drawings paints an outline below its letters. */
    private static List<Element> label(List<Element> below, int x, double y, int number) {
        int width = number > 9 ? 16 : 10;
        List<Element> all = new ArrayList<>(below);
        all.add(Element.of("rect")
                .with("x", String.valueOf(x - width / 2))
                .with("y", String.valueOf(Math.round(y) - 7))
                .with("width", String.valueOf(width))
                .with("height", "14")
                .with("fill", "#ffffff"));
        all.add(Element.of("text")
                .with("x", String.valueOf(x))
                .with("y", String.valueOf(Math.round(y) + 4))
                .with("text-anchor", "middle")
                .with("fill", "#1a1a1a")
                .text(String.valueOf(number)));
        return all;
    }

    private static int place(Map<String, Set<Integer>> used, String at) {
        Set<Integer> taken = used.computeIfAbsent(at, k -> new LinkedHashSet<>());
        taken.add(taken.size());
        return (taken.size() - 1) % 7;
    }
}
