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
            JsonNode body = JSON.readTree(request.body());
            if (!body.isObject()) {
                throw new BadRequestResponse("A request is one JSON object; this is none.");
            }
            return body;
        } catch (JsonProcessingException wrong) {
            throw new BadRequestResponse("This is no JSON.");
        }
    }

    /** A text that may be left out. */
    static String text(JsonNode body, String key) {
        return body.path(key).isMissingNode() || body.path(key).isNull() ? "" : neededText(body, key);
    }

    /** A text that must be there; what is missing or of another kind is refused by its name. */
    static String neededText(JsonNode body, String key) {
        JsonNode value = body.path(key);
        if (!value.isTextual()) {
            throw unfit(value, key, "a text");
        }
        return value.asText();
    }

    /** A whole number that must be there. */
    static long neededNumber(JsonNode body, String key) {
        JsonNode value = body.path(key);
        if (!value.isIntegralNumber() || !value.canConvertToLong()) {
            throw unfit(value, key, "a whole number");
        }
        return value.asLong();
    }

    /** Why a field of a request cannot be taken. */
    static Guard.Refusal unfit(JsonNode value, String key, String expected) {
        return new Guard.Refusal(
                422,
                value.isMissingNode() || value.isNull()
                        ? "The request has no " + key + ", which is " + expected + ". Nothing was done."
                        : "In the request " + key + " is not " + expected + ". Nothing was done.");
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
