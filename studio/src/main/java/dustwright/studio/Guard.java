package dustwright.studio;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.util.List;
import java.util.Optional;

/**
 * Lets only this machine's own pages in: the name in the address must be the loopback's, so that no name of somebody else's can be made to
 * point here; whatever changes something must come from a page of the studio itself.
 */
final class Guard {
    /** Sent with every change; no other site can make a browser send it. */
    static final String OWN_HEADER = "X-Dustwright";

    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:;"
                    + " font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final List<String> NAMES = List.of("127.0.0.1", "localhost");

    private Guard() {}

    static void check(Context request) {
        request.header("Content-Security-Policy", POLICY);
        request.header("X-Content-Type-Options", "nosniff");
        request.header("Referrer-Policy", "no-referrer");
        request.header("Cache-Control", "no-store");
        String host = Optional.ofNullable(request.header("Host")).orElse("");
        if (!NAMES.contains(host.replaceFirst(":[0-9]+$", ""))) {
            throw new ForbiddenResponse("The studio answers on this machine only.");
        }
        if (!request.method().name().equals("GET") && !request.method().name().equals("HEAD")) {
            String origin = Optional.ofNullable(request.header("Origin")).orElse("http://" + host);
            if (request.header(OWN_HEADER) == null || !origin.equals("http://" + host)) {
                throw new ForbiddenResponse("Changes are taken from the studio's own pages only.");
            }
        }
    }
}
