package dustwright.documents.answers;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/** An answer in JSON that is read again; what is missing or of another kind is refused in words. */
final class JsonTree {
    private final Object node;
    private final String command;

    private JsonTree(Object node, String command) {
        this.node = node;
        this.command = command;
    }

    static JsonTree read(String text, String command) {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.nextToken();
            JsonTree tree = new JsonTree(CoverJson.value(parser), command);
            if (!tree.text("format").equals(PlantJson.format(command))) {
                throw tree.notOurs();
            }
            return tree;
        } catch (IOException unreadable) {
            throw new IllegalArgumentException("it is not an answer of the command " + command, unreadable);
        }
    }

    private IllegalArgumentException notOurs() {
        return new IllegalArgumentException("it is not an answer of the command " + command);
    }

    boolean has(String key) {
        return node instanceof Map<?, ?> members && members.containsKey(key);
    }

    JsonTree of(String key) {
        Object found = node instanceof Map<?, ?> members ? members.get(key) : null;
        if (found == null) {
            throw notOurs();
        }
        return new JsonTree(found, command);
    }

    String text(String key) {
        if (of(key).node instanceof String found) {
            return found;
        }
        throw notOurs();
    }

    List<JsonTree> list(String key) {
        if (of(key).node instanceof List<?> found) {
            return found.stream()
                    .map(item -> new JsonTree((Object) item, command))
                    .toList();
        }
        throw notOurs();
    }

    List<String> texts(String key) {
        if (of(key).node instanceof List<?> found) {
            return found.stream().map(String::valueOf).toList();
        }
        throw notOurs();
    }
}
