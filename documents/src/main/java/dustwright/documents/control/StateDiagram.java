package dustwright.documents.control;

import dustwright.documents.writing.Element;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Steps and the ways between them: steps stand one below the other, ways forward bow to the right, ways back to the left; a number at each way leads to
 * its condition in the table below.
 */
public final class StateDiagram {
    private static final int WIDTH = 900;
    private static final int STEP_WIDTH = 190;
    private static final int STEP_HEIGHT = 34;
    private static final int PITCH = 74;
    private static final int TOP = 30;
    private static final int MIDDLE = WIDTH / 2;

    private StateDiagram() {}

    /** One way from a step to another with its conditions. */
    public record Way(int number, String from, String to, List<String> conditions) {}

    /** All ways, numbered; several exits to the same step are one way. */
    public static List<Way> ways(Sequence sequence) {
        Map<String, List<String>> conditions = new LinkedHashMap<>();
        Map<String, String[]> ends = new LinkedHashMap<>();
        for (Sequence.Step step : sequence.steps()) {
            for (Sequence.Exit exit : step.exits()) {
                String key = step.name() + ">" + exit.to();
                ends.put(key, new String[] {step.name(), exit.to()});
                conditions
                        .computeIfAbsent(key, k -> new ArrayList<>())
                        .add(exit.when().text());
            }
        }
        List<Way> ways = new ArrayList<>();
        ends.forEach((key, end) -> ways.add(
                new Way(ways.size() + 1, end[0], end[1], List.copyOf(conditions.getOrDefault(key, List.of())))));
        return ways;
    }

    /** The drawing. */
    public static Element svg(Sequence sequence) {
        List<String> steps = sequence.steps().stream().map(Sequence.Step::name).toList();
        int height = 2 * TOP + (steps.size() - 1) * PITCH + STEP_HEIGHT;
        Element svg = Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("width", String.valueOf(WIDTH))
                .with("height", String.valueOf(height))
                .with("viewBox", "0 0 " + WIDTH + " " + height)
                .with("font-family", "DejaVu Sans Condensed, sans-serif")
                .with("font-size", "12")
                .with("role", "img")
                .add(Element.of("title").text("Steps of " + sequence.title()));
        Map<String, Set<Integer>> used = new LinkedHashMap<>();
        for (Way way : ways(sequence)) {
            svg.addAll(way(way, steps, used));
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
    private static List<Element> way(Way way, List<String> steps, Map<String, Set<Integer>> used) {
        int from = steps.indexOf(way.from());
        int to = steps.indexOf(way.to());
        boolean forward = to > from;
        int side = forward ? 1 : -1;
        int leave = TOP + from * PITCH + STEP_HEIGHT / 2 + place(used, way.from() + side) * 4 - 12;
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
        Element head = Element.of("path")
                .with("d", "M" + edge + " " + arrive + " l" + side * 8 + " -4 l0 8 z")
                .with("fill", "#555555");
        Element number = Element.of("text")
                .with("x", String.valueOf(label))
                .with("y", String.valueOf(Math.round(half) + 4))
                .with("text-anchor", "middle")
                .with("fill", "#1a1a1a")
                .with("stroke", "#ffffff")
                .with("stroke-width", "3")
                .with("paint-order", "stroke")
                .text(String.valueOf(way.number()));
        return List.of(arc, head, number);
    }

    private static int place(Map<String, Set<Integer>> used, String at) {
        Set<Integer> taken = used.computeIfAbsent(at, k -> new LinkedHashSet<>());
        taken.add(taken.size());
        return (taken.size() - 1) % 7;
    }
}
