package dustwright.plantfile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Units;
import dustwright.plantfile.keys.CatalogueKeys;
import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.Need;
import dustwright.plantfile.keys.PlantKeys;
import dustwright.plantfile.keys.Shape;
import java.util.List;
import java.util.TreeSet;

/**
 * JSON Schema (2020-12) of the plant file and of a catalogue file, made from the keys the reader goes by. It knows keys, shapes, units and which keys go
 * together, for editors that complete and underline; bounds of quantities, names that must resolve and tubing that must lead somewhere are
 * the reader's.
 */
public final class PlantSchema {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final String NUMBER =
            "(([0-9]{1,4}[ -] ?)?[0-9]{1,4}/[0-9]{1,4}|[-+]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]{1,3})?)";
    private static final String TITLE = "^[\\p{L}\\p{N}_. -]{1,40}$";
    private static final String ID = "^[\\p{L}\\p{N}_.-]{1,40}$";

    private final TreeSet<Dimension> used = new TreeSet<>();

    private PlantSchema() {}

    /** The schema of the plant file as text. */
    public static String json() {
        return text(new PlantSchema().top("Dustwright plant file, version " + PlantKeys.VERSION, PlantKeys.TOP));
    }

    /** The schema of a catalogue file as text. */
    public static String catalogueJson() {
        return text(new PlantSchema()
                .top("Dustwright catalogue file, version " + CatalogueKeys.VERSION, CatalogueKeys.TOP));
    }

    private static String text(ObjectNode schema) {
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(schema) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of nodes that cannot be written", e);
        }
    }

    private ObjectNode top(String title, Group group) {
        ObjectNode schema = JSON.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", title);
        schema.setAll(group(group));
        ObjectNode definitions = schema.putObject("$defs");
        used.forEach(d -> definitions.set(name(d), quantity(d)));
        return schema;
    }

    private ObjectNode group(Group group) {
        ObjectNode schema = type("object");
        schema.put("additionalProperties", false);
        ObjectNode properties = schema.putObject("properties");
        ArrayNode required = JSON.arrayNode();
        for (Key key : group.keys()) {
            properties.set(key.name(), described(key));
            if (key.need() instanceof Need.Required) {
                required.add(key.name());
            }
        }
        if (!required.isEmpty()) {
            schema.set("required", required);
        }
        ArrayNode all = JSON.arrayNode();
        group.choices().forEach(choice -> addChoice(choice, all));
        if (!all.isEmpty()) {
            schema.set("allOf", all);
        }
        return schema;
    }

    private ObjectNode described(Key key) {
        ObjectNode schema = of(key.shape());
        schema.put("description", key.help());
        if (key.need() instanceof Need.Default otherwise) {
            schema.put("default", otherwise.text());
        }
        return schema;
    }

    private static void addChoice(Group.Choice choice, ArrayNode all) {
        if (choice.required()) {
            ArrayNode ways = all.addObject().putArray("anyOf");
            choice.ways().forEach(way -> ways.addObject().set("required", names(way)));
        }
        for (List<String> way : choice.ways()) {
            for (String key : way) {
                List<String> others = way.stream().filter(k -> !k.equals(key)).toList();
                if (!others.isEmpty()) {
                    all.addObject().putObject("dependentRequired").set(key, names(others));
                }
            }
        }
        for (int i = 0; i < choice.ways().size() && choice.exclusive(); i++) {
            for (int j = i + 1; j < choice.ways().size(); j++) {
                addExclusions(choice.ways().get(i), choice.ways().get(j), all);
            }
        }
    }

    private static void addExclusions(List<String> way, List<String> other, ArrayNode all) {
        for (String a : way) {
            for (String b : other) {
                all.addObject().putObject("not").set("required", names(List.of(a, b)));
            }
        }
    }

    private static ArrayNode names(List<String> names) {
        ArrayNode array = JSON.arrayNode();
        names.forEach(array::add);
        return array;
    }

    private ObjectNode of(Shape shape) {
        if (shape instanceof Shape.Keys keys) {
            return group(keys.group());
        }
        if (shape instanceof Shape.Kinds kinds) {
            ObjectNode schema = JSON.objectNode();
            ArrayNode ways = schema.putArray("oneOf");
            kinds.groups().forEach(g -> ways.add(group(g)));
            if (kinds.byModel().isEmpty()) {
                return schema;
            }
            // a model's keys are known when the catalogue is: an entry by its model may fit more than one group
            ObjectNode byModel = JSON.objectNode();
            ArrayNode any = byModel.putArray("anyOf");
            kinds.byModel().forEach(g -> any.add(group(g)));
            return either(schema, byModel);
        }
        if (shape instanceof Shape.Named named) {
            ObjectNode schema = types("object", "null");
            schema.putObject("propertyNames").put("pattern", named.titled() ? TITLE : ID);
            schema.set("additionalProperties", of(named.entry()));
            return schema;
        }
        if (shape instanceof Shape.ListOf list) {
            ObjectNode schema = list.least() > 0 ? type("array") : types("array", "null");
            schema.set("items", of(list.item()));
            return list.least() > 0 ? schema.put("minItems", list.least()) : schema;
        }
        if (shape instanceof Shape.Parts parts) {
            ArrayNode items = JSON.arrayNode();
            parts.parts().forEach(p -> items.add(of(p)));
            return fixed(items);
        }
        if (shape instanceof Shape.Sourced sourced) {
            return either(of(sourced.value()), group(PlantKeys.sourced(sourced.value())));
        }
        if (shape instanceof Shape.Coordinates) {
            return coordinates();
        }
        if (shape instanceof Shape.CoordinatesOrNothing) {
            return either(coordinates(), type("object").put("maxProperties", 0));
        }
        return value(shape);
    }

    private ObjectNode value(Shape shape) {
        if (shape instanceof Shape.Amount amount) {
            List<ObjectNode> kinds = amount.ranges().stream().map(this::amount).toList();
            return kinds.size() == 1 ? kinds.get(0) : either(kinds.get(0), kinds.get(1));
        }
        if (shape instanceof Shape.Whole whole) {
            return type("integer").put("minimum", whole.least()).put("maximum", whole.greatest());
        }
        if (shape instanceof Shape.YesNo) {
            ObjectNode schema = JSON.objectNode();
            schema.putArray("enum").add(true).add(false).add("yes").add("no");
            return schema;
        }
        if (shape instanceof Shape.Word word) {
            ObjectNode schema = JSON.objectNode();
            schema.set("enum", names(word.words()));
            return schema;
        }
        if (shape instanceof Shape.Text text) {
            return types("string", "number", "boolean").put("maxLength", text.longest());
        }
        return shape instanceof Shape.Anything ? JSON.objectNode() : types("string", "number", "boolean");
    }

    private ObjectNode amount(Shape.Range range) {
        used.add(range.dimension());
        ObjectNode text = JSON.objectNode().put("$ref", "#/$defs/" + name(range.dimension()));
        return range.dimension() == Dimension.RATIO
                ? either(type("number").put("minimum", range.least_si()).put("maximum", range.greatest_si()), text)
                : text;
    }

    private ObjectNode coordinates() {
        used.add(Dimension.LENGTH);
        ArrayNode items = JSON.arrayNode();
        for (int i = 0; i < 3; i++) {
            items.add(either(type("number"), JSON.objectNode().put("$ref", "#/$defs/" + name(Dimension.LENGTH))));
        }
        return fixed(items);
    }

    private static ObjectNode fixed(ArrayNode items) {
        ObjectNode schema = type("array");
        schema.set("prefixItems", items);
        return schema.put("minItems", items.size()).put("maxItems", items.size());
    }

    private static ObjectNode quantity(Dimension dimension) {
        StringBuilder units = new StringBuilder();
        for (String spelling : Units.spellings(dimension)) {
            units.append(units.isEmpty() ? "" : "|").append(loosely(spelling));
        }
        String unit = dimension == Dimension.RATIO ? "(" + units + ")?" : "(" + units + ")";
        return type("string").put("pattern", "^\\s*" + NUMBER + "\\s*" + unit + "\\s*$");
    }

    /** A spelling with its printed variants: m³ for m3, a space or caret anywhere. */
    private static String loosely(String spelling) {
        StringBuilder pattern = new StringBuilder();
        for (int i = 0; i < spelling.length(); i++) {
            char c = spelling.charAt(i);
            pattern.append(i == 0 ? "" : "[ ^]?");
            switch (c) {
                case '2' -> pattern.append("[2²₂]");
                case '3' -> pattern.append("[3³]");
                case '.' -> pattern.append("[.·*×]");
                case '¤' -> pattern.append("(¤|[A-Z]{3})");
                case '[', ']', '(', ')', '/' -> pattern.append('\\').append(c);
                default -> pattern.append(c);
            }
        }
        return pattern.toString();
    }

    private static String name(Dimension dimension) {
        return dimension.words().replace(' ', '-');
    }

    private static ObjectNode type(String type) {
        return JSON.objectNode().put("type", type);
    }

    private static ObjectNode types(String... types) {
        ObjectNode schema = JSON.objectNode();
        schema.set("type", names(List.of(types)));
        return schema;
    }

    private static ObjectNode either(ObjectNode one, ObjectNode other) {
        ObjectNode schema = JSON.objectNode();
        schema.putArray("anyOf").add(one).add(other);
        return schema;
    }
}
