package dustwright.studio;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dustwright.documents.writing.Show;
import dustwright.engine.quantity.UnitSystem;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.io.UncheckedIOException;

/** What pages send and get. */
final class Exchange {
    private static final ObjectMapper JSON = new ObjectMapper();

    private Exchange() {}

    static JsonNode body(Context request) {
        try {
            return JSON.readTree(request.body());
        } catch (JsonProcessingException wrong) {
            throw new BadRequestResponse("This is no JSON.");
        }
    }

    static String text(JsonNode body, String key) {
        return body.path(key).asText("");
    }

    static void answer(Context request, Object value) {
        request.contentType("application/json; charset=utf-8").result(json(value));
    }

    static byte[] json(Object value) {
        try {
            return JSON.writeValueAsBytes(value);
        } catch (JsonProcessingException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    static UnitSystem units(Context request) {
        return "us".equals(request.queryParam("units")) ? UnitSystem.US : UnitSystem.SI;
    }

    static Show show(Context request) {
        return new Show(units(request));
    }
}
