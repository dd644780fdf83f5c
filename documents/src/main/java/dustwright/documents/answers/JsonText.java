package dustwright.documents.answers;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import dustwright.engine.quantity.Quantity;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;

/** One JSON object being written. */
final class JsonText {
    private final JsonGenerator generator;

    private JsonText(JsonGenerator generator) {
        this.generator = generator;
    }

    static String of(Consumer<JsonText> content) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
            DefaultIndenter lines = new DefaultIndenter(" ", "\n");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
            printer.indentArraysWith(lines);
            printer.indentObjectsWith(lines);
            generator.setPrettyPrinter(printer);
            generator.writeStartObject();
            content.accept(new JsonText(generator));
            generator.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private interface Writing {
        void run() throws IOException;
    }

    private static void write(Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void text(String key, String value) {
        write(() -> generator.writeStringField(key, value));
    }

    void bool(String key, boolean value) {
        write(() -> generator.writeBooleanField(key, value));
    }

    void count(String key, long value) {
        write(() -> generator.writeNumberField(key, value));
    }

    /** A figure nobody knows. */
    void nothing(String key) {
        write(() -> generator.writeNullField(key));
    }

    void number(String key, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(key + " is not a number");
        }
        write(() -> generator.writeNumberField(key, value));
    }

    /** A quantity whose unit the key names. */
    void si(String key, Quantity value) {
        number(key, value.si());
    }

    /** A quantity of any kind, with its unit and what it measures. */
    void quantity(String key, Quantity value) {
        object(key, () -> {
            number("number", value.si());
            text("unit", value.siSymbol());
            text("measures", value.dimension().words());
        });
    }

    void object(String key, Runnable content) {
        write(() -> {
            generator.writeObjectFieldStart(key);
            content.run();
            generator.writeEndObject();
        });
    }

    void texts(String key, Iterable<String> values) {
        write(() -> {
            generator.writeArrayFieldStart(key);
            for (String value : values) {
                generator.writeString(value);
            }
            generator.writeEndArray();
        });
    }

    <T> void list(String key, List<T> items, Consumer<T> content) {
        write(() -> {
            generator.writeArrayFieldStart(key);
            for (T item : items) {
                generator.writeStartObject();
                content.accept(item);
                generator.writeEndObject();
            }
            generator.writeEndArray();
        });
    }
}
