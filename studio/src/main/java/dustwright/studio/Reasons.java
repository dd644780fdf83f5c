package dustwright.studio;

import static dustwright.studio.Exchange.answer;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.router.EndpointNotFound;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Whatever is not done is answered with its reason in words, as {@code why}: never with a page of the server. */
final class Reasons {
    /** So much of a request that is too large is read and thrown away: a sender hears the answer only once it has sent all. */
    private static final long MOST_THROWN_AWAY_bytes = 200_000_000;

    private static final int PIECE_bytes = 1 << 16;
    private static final int UNPROCESSABLE = 422;
    private static final int OWN_FAULT = 500;
    private static final int TOO_LARGE = 413;
    private static final String LARGE =
            "This is larger than the studio takes: a picture has at most " + Upload.LARGEST_bytes / 1_000_000
                    + " MB, anything else " + Studio.LARGEST_REQUEST_bytes / 1_000_000 + " MB.";

    private Reasons() {}

    static void routes(JavalinConfig config) {
        config.routes.exception(
                Guard.Refusal.class,
                (refusal, request) -> refuse(request, refusal.status(), String.valueOf(refusal.getMessage())));
        config.routes.exception(
                Store.Unkeepable.class,
                (unkeepable, request) -> refuse(request, UNPROCESSABLE, String.valueOf(unkeepable.getMessage())));
        config.routes.exception(
                Store.KeepingFault.class,
                (fault, request) -> refuse(request, OWN_FAULT, "Not kept: " + fault.getMessage()));
        config.routes.exception(
                EndpointNotFound.class,
                (none, request) -> refuse(
                        request,
                        none.getStatus(),
                        "The studio has no call " + request.method() + " " + request.path()
                                + "; /api/openapi.yaml describes those it has."));
        config.routes.exception(HttpResponseException.class, (refusal, request) -> {
            boolean large = refusal.getStatus() == TOO_LARGE;
            if (large) {
                throwAway(request);
            }
            refuse(request, refusal.getStatus(), large ? LARGE : String.valueOf(refusal.getMessage()));
        });
        config.routes.exception(
                Exception.class,
                (fault, request) -> refuse(
                        request,
                        OWN_FAULT,
                        "Not answered, by a fault of the program: " + fault + ". What was kept before is kept."));
    }

    static void refuse(Context request, int status, String why) {
        request.status(status);
        answer(request, Map.of("why", why));
    }

    private static void throwAway(Context request) {
        try (InputStream in = request.req().getInputStream()) {
            byte[] piece = new byte[PIECE_bytes];
            long left = MOST_THROWN_AWAY_bytes;
            int read = in.read(piece);
            while (read >= 0 && left > 0) {
                left -= read;
                read = in.read(piece);
            }
        } catch (IOException gone) {
            // whoever sent it has gone and hears nothing any more
        }
    }

    /** Why a plant file could not be written, and what to do. */
    static String unwritten(Path file, IOException fault) {
        String why;
        if (fault instanceof NoSuchFileException) {
            why = "its folder, or what a link there leads to, is not there. Bring it back: a shared folder may be away";
        } else if (fault instanceof AccessDeniedException) {
            why = "whoever runs the studio may not write there. Have that person be given the right";
        } else if (fault instanceof FileSystemException reason) {
            why = Optional.ofNullable(reason.getReason()).orElse("the system gives no reason") + ". Mend that";
        } else {
            why = fault.getMessage() + ". Mend that";
        }
        return "Not written to " + file + ": " + why
                + ", then write again. Every step is kept in the studio meanwhile.";
    }
}
