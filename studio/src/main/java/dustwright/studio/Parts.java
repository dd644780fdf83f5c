package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.text;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.documents.writing.Show;
import dustwright.engine.quantity.UnitSystem;
import dustwright.plantfile.PlantEditor;
import dustwright.plantfile.PlantEditor.Value;
import dustwright.plantfile.PlantForm;
import dustwright.plantfile.PlantParts;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Parts of the plant file as pages fill them in. */
final class Parts {
    /** What a page may copy that stands in the plant one begins with. */
    private static final String STARTER = "starter";

    private static final Show SI = new Show(UnitSystem.SI);
    private static final Show US = new Show(UnitSystem.US);

    private Parts() {}

    /**
     * A part.
     *
     * @param above the parts around it, from the whole file down, without itself
     * @param alike whose values a part that is not written yet may take over
     */
    record Part(
            String path,
            List<Above> above,
            String words,
            boolean written,
            String kind,
            List<Line> values,
            List<String> ways,
            List<String> kinds,
            String entry,
            List<Alike> alike) {}

    record Above(String path, String key) {}

    record Alike(String path, String words) {}

    /** One value; {@code unit} is that of a bare number, {@code also} says what was understood in the units of both systems. */
    record Line(
            String path,
            String key,
            String kind,
            String help,
            boolean written,
            boolean needed,
            boolean oneOf,
            String otherwise,
            String text,
            boolean plain,
            String example,
            String range,
            List<String> choices,
            boolean sourced,
            String source,
            List<Line> parts,
            List<Line> item,
            String unit,
            String also) {
        static Line of(PlantForm.Field field) {
            boolean plain = switch (field.kind()) {
                case AMOUNT, WHOLE, TEXT, WORD, YES_NO, ID -> true;
                case PLACE, LIST, GROUP, NAMED, YAML -> false;
            };
            return new Line(
                    field.path(),
                    field.key(),
                    field.kind().name().toLowerCase(Locale.ROOT),
                    field.help(),
                    field.written(),
                    field.needed(),
                    field.oneOf(),
                    field.otherwise(),
                    field.text(),
                    plain,
                    field.example(),
                    field.range(),
                    field.choices(),
                    field.sourced(),
                    field.source(),
                    field.parts().stream().map(Line::of).toList(),
                    field.item().map(Line::of).stream().toList(),
                    field.unit(),
                    field.quantity().map(q -> both(SI.full(q), US.full(q))).orElse(""));
        }

        private static String both(String si, String us) {
            return si.equals(us) ? si : si + " · " + us;
        }
    }

    /** Answers a part by its path, or by what a drawing calls a piece. */
    static void part(Context request, String text) {
        String path = Optional.ofNullable(request.queryParam("path")).orElseGet(() -> pieces(request));
        String kind = Optional.ofNullable(request.queryParam("of")).orElse("");
        Optional<PlantParts> parts = PlantParts.of(text);
        PlantForm.Form form = parts.flatMap(p -> PlantForm.of(p, path, kind))
                .orElseThrow(() -> new NotFoundResponse("A plant file has no part \"" + path + "\"."));
        answer(
                request,
                new Part(
                        path,
                        above(parts.get().steps(path)),
                        form.words(),
                        form.written(),
                        form.kind().name().toLowerCase(Locale.ROOT),
                        form.fields().stream().map(Line::of).toList(),
                        form.ways(),
                        form.kinds(),
                        form.entry(),
                        form.written() ? List.of() : alike(parts.get(), path)));
    }

    private static String pieces(Context request) {
        String id = Optional.ofNullable(request.queryParam("id")).orElse("");
        return switch (Optional.ofNullable(request.queryParam("kind")).orElse("")) {
            case "run" -> "runs." + id;
            case "point" -> "points." + id;
            case "station" -> "stations." + id;
            default -> "inlets." + id;
        };
    }

    private static List<Above> above(List<String> steps) {
        List<Above> above = new ArrayList<>();
        StringBuilder so = new StringBuilder();
        for (String step : steps) {
            above.add(new Above(so.toString(), above.isEmpty() ? "" : steps.get(above.size() - 1)));
            so.append(so.isEmpty() || step.startsWith("[") ? "" : ".").append(step);
        }
        return above;
    }

    /** "REC", "rotary valve of REC": a part by its id, or by what it is of which one. */
    private static String named(String path) {
        String[] steps = path.split("\\.", 3);
        return steps.length < 2
                ? path
                : steps.length == 2 ? steps[1] : steps[2].substring(steps[2].lastIndexOf('.') + 1) + " of " + steps[1];
    }

    private static List<Alike> alike(PlantParts parts, String path) {
        List<Alike> all = new ArrayList<>();
        parts.alike(path).forEach(other -> all.add(new Alike(other, "Like " + named(other))));
        starting(path).ifPresent(other -> all.add(new Alike(STARTER, "With invented starting values")));
        return List.copyOf(all);
    }

    /** What the plant one begins with has in such a place. */
    private static Optional<String> starting(String path) {
        String starter = Studio.starter();
        return PlantParts.of(starter).stream()
                .flatMap(parts -> parts.alike(path).stream())
                .findFirst()
                .or(() -> Optional.of(path)
                        .filter(p -> PlantEditor.onOneLine(starter, p).isPresent()));
    }

    /**
     * What a page asks to be done to a part, as an edit of the text.
     *
     * @param how {@code set} what is written, {@code add} what is not written yet, {@code append} to a list, {@code remove}, or {@code like} another part
     */
    static PlantEditor.Edit edit(String text, String how, String path, JsonNode value) {
        return switch (how) {
            case "set" -> PlantEditor.set(text, path, value(value));
            case "add" -> PlantParts.add(text, path, value(value));
            case "append" -> PlantEditor.append(text, path, value(value));
            case "remove" -> PlantEditor.remove(text, path);
            case "like" -> like(text, path, value.asText(""));
            default -> new PlantEditor.Edit.Refused("a value is added, appended or removed; not \"" + how + "\"");
        };
    }

    private static PlantEditor.Edit like(String text, String path, String other) {
        Optional<String> flow = other.equals(STARTER)
                ? starting(path).flatMap(p -> PlantEditor.onOneLine(Studio.starter(), p))
                : PlantEditor.onOneLine(text, other);
        return flow.<PlantEditor.Edit>map(yaml -> PlantParts.add(text, path, new Value.Flow(yaml)))
                .orElseGet(() -> new PlantEditor.Edit.Refused("there is nothing at " + other));
    }

    /** A text, a list or keys, as a page sends them. */
    static Value value(JsonNode value) {
        if (value.isObject()) {
            Map<String, Value> values = new LinkedHashMap<>();
            value.properties().forEach(e -> values.put(e.getKey(), value(e.getValue())));
            return Value.keys(values);
        }
        if (value.isArray()) {
            List<Value> values = new ArrayList<>();
            value.forEach(one -> values.add(value(one)));
            return Value.list(values);
        }
        return new Value.Plain(value.asText(""));
    }

    /** What is done, for the list of steps. */
    static String what(String how, JsonNode body) {
        String path = text(body, "path");
        return switch (how) {
            case "add", "like" -> path + " added";
            case "append" -> path + ": one more";
            default -> path + " taken away";
        };
    }
}
