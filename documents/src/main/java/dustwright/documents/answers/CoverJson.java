package dustwright.documents.answers;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.ByHand;
import dustwright.engine.coverage.Carry;
import dustwright.engine.coverage.CarryBySize;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Exchanges.Exchange;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.coverage.Users;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** What coverage found: format {@code dustwright/cover/2}. */
public final class CoverJson {
    private CoverJson() {}

    /**
     * The question, and per number of users and condition the verdict with the worst state of every requirement and place.
     *
     * @param mark of the plant file's text, so that a later run takes up no answer about another one
     */
    public static String of(Plant plant, String mark, Coverage coverage, CoverText.Besides besides) {
        return JsonText.of(json -> {
            PlantJson.head(json, "cover", plant);
            json.text("mark", mark);
            json.bool("holds", coverage.holds() && besides.openInSheets().isEmpty());
            json.bool("setsHold", coverage.holds());
            json.list("openInSheets", besides.openInSheets(), finding -> FindingJson.brief(json, finding));
            json.bool("partial", coverage.partial() || besides.partial());
            json.list("atMost", List.copyOf(coverage.question().atMost().entrySet()), zone -> zone(json, zone));
            json.list("answers", coverage.answers(), answer -> answer(json, answer));
            json.list("carries", besides.carried(), carry -> carry(json, carry));
            json.list("remedies", besides.remedies(), remedy -> remedy(json, remedy));
            json.list("sizes", besides.sizes(), size -> size(json, size));
            json.list("exchanges", of(besides, hand -> hand.exchanges().tried()), exchange -> exchange(json, exchange));
            json.list("harms", of(besides, ByHand::harms), harm -> {
                json.text("opened", harm.inlet());
                json.number("margin", harm.margin());
            });
            json.list("path", of(besides, ByHand::path), piece -> piece(json, piece));
        });
    }

    private static <T> List<T> of(CoverText.Besides besides, Function<ByHand, List<T>> part) {
        return besides.byHand().map(part).orElse(List.of());
    }

    private static void size(JsonText json, CarryBySize size) {
        json.text("producer", size.producer().id());
        json.number("motor_W", size.producer().nameplate().watts());
        users(json, size.shown());
        json.count("asked", size.asked());
        json.text("stop", size.stop().map(Answer::words).orElse(""));
    }

    private static void piece(JsonText json, ByHand.Piece piece) {
        json.text("kind", piece.kind() == LegResult.Kind.HOSE ? "hose" : "run");
        json.text("id", piece.id());
        json.texts("users", piece.users());
        json.number("flow_kgPerS", piece.air().kgPerSecond());
        json.number("drop_Pa", piece.drop().pascals());
        piece.otherDrop().ifPresent(drop -> json.number("otherDrop_Pa", drop.pascals()));
    }

    /**
     * What an answer of this format shows, for a run that takes it up.
     *
     * @throws IllegalArgumentException in words for people when the text is not such an answer or about another plant
     */
    public static List<Effort.Known> known(String text, Plant plant, String mark, Map<String, Integer> atMost) {
        List<Effort.Known> known = new ArrayList<>();
        Object name;
        Object about;
        Map<String, Integer> zones = new TreeMap<>();
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.nextToken();
            Object answer = value(parser);
            if (!member(answer, "format").equals(PlantJson.format("cover"))) {
                throw new ClassCastException();
            }
            name = member(member(answer, "plant"), "name");
            about = member(answer, "mark");
            for (Object zone : (List<?>) member(answer, "atMost")) {
                zones.put((String) member(zone, "zone"), ((Long) member(zone, "users")).intValue());
            }
            for (Object one : (List<?>) member(answer, "answers")) {
                known(one).ifPresent(known::add);
            }
        } catch (IOException | ClassCastException notOurs) {
            throw new IllegalArgumentException("it is not an answer of the command cover", notOurs);
        }
        if (!plant.name().equals(name)) {
            throw new IllegalArgumentException("it is about another plant");
        }
        if (!mark.equals(about)) {
            throw new IllegalArgumentException("the plant file has changed since");
        }
        if (!zones.equals(atMost)) {
            throw new IllegalArgumentException("it was asked with other limits of zones");
        }
        return known;
    }

    private static Optional<Effort.Known> known(Object answer) {
        boolean shown = Stream.of(Answer.Verdict.HOLDS, Answer.Verdict.FAILS)
                .anyMatch(v -> v.words().equals(member(answer, "verdict")));
        List<List<String>> worst = new ArrayList<>();
        Map<String, Double> bounds = new TreeMap<>();
        for (Object one : (List<?>) member(answer, "worst")) {
            Object place = member(one, "place");
            String where = (member(place, "kind") + " " + member(place, "id")).strip();
            Object bound = ((Map<?, ?>) one).get("bound");
            if (bound instanceof String || bound instanceof Number) {
                bounds.put(
                        Answer.Worst.key(String.valueOf(member(one, "code")), where), Double.valueOf(bound.toString()));
            }
            List<String> open = ((List<?>) member(one, "open"))
                    .stream().map(String::valueOf).toList();
            if (!worst.contains(open)) {
                worst.add(open);
            }
        }
        return Stream.of(Answer.Method.values())
                .filter(m -> shown && m.words().equals(member(answer, "method")))
                .findFirst()
                .map(method -> new Effort.Known(
                        ((Number) member(answer, "users")).intValue(),
                        String.valueOf(member(answer, "condition")),
                        method,
                        worst,
                        bounds));
    }

    private static Object member(Object object, String key) {
        if (!(object instanceof Map<?, ?> members)) {
            throw new ClassCastException();
        }
        Object found = members.get(key);
        if (found == null) {
            throw new ClassCastException();
        }
        return found;
    }

    /** Objects as maps, arrays as lists, whole numbers as such, all else as text. */
    static Object value(JsonParser parser) throws IOException {
        if (parser.currentToken() == JsonToken.START_OBJECT) {
            Map<String, Object> members = new TreeMap<>();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String key = parser.currentName();
                parser.nextToken();
                members.put(key, value(parser));
            }
            return members;
        }
        if (parser.currentToken() == JsonToken.START_ARRAY) {
            List<Object> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(value(parser));
            }
            return items;
        }
        return parser.currentToken() == JsonToken.VALUE_NUMBER_INT ? parser.getLongValue() : parser.getText();
    }

    private static void remedy(JsonText json, Remedy remedy) {
        json.text("what", remedy.what());
        if (remedy.partial() && remedy.least().isEmpty()) {
            json.nothing("failing");
        } else {
            json.count("failing", remedy.failing());
        }
        json.bool("decided", remedy.decided());
        json.bool("partial", remedy.partial());
        remedy.least().ifPresent(worst -> {
            json.text("least", worst.finding().id());
            FindingJson.margin(json, worst.finding());
        });
    }

    private static void exchange(JsonText json, Exchange exchange) {
        json.text("shut", exchange.shut());
        json.text("opened", exchange.opened());
        json.number("margin", exchange.margin());
    }

    private static void carry(JsonText json, Carry carry) {
        json.text("zone", carry.area());
        json.count("inlets", carry.inlets());
        users(json, carry.shown());
        json.count("asked", carry.asked());
        json.text("stop", carry.stop().map(Answer::words).orElse(""));
    }

    /** Null where the work was stopped before any number was shown to hold or not. */
    private static void users(JsonText json, Users users) {
        if (users.partial() && users.shown() == 0) {
            json.nothing("users");
        } else {
            json.count("users", users.shown());
        }
        json.bool("partial", users.partial());
    }

    private static void zone(JsonText json, Map.Entry<String, Integer> zone) {
        json.text("zone", zone.getKey());
        json.count("users", zone.getValue());
    }

    private static void answer(JsonText json, Answer answer) {
        json.count("users", answer.users());
        json.text("condition", answer.condition());
        json.text("verdict", answer.verdict().words());
        json.text("sets", answer.sets().toString());
        json.text("method", answer.method().words());
        json.count("solved", answer.solved());
        json.text("pruned", answer.pruned().toString());
        bound(json, "widening", answer.widening());
        answer.failing().ifPresent(failing -> json.count("failing", failing));
        json.text("why", answer.why());
        json.list("worst", answer.worst(), worst -> {
            FindingJson.brief(json, worst.finding());
            bound(json, "bound", worst.exact() ? worst.finding().margin() : worst.bound());
            json.texts("open", worst.open());
        });
    }

    /** Null where nothing is known. */
    private static void bound(JsonText json, String key, double bound) {
        if (Double.isFinite(bound)) {
            json.number(key, bound);
        } else {
            json.nothing(key);
        }
    }
}
