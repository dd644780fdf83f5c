package dustwright.studio;

import dustwright.studio.People.Person;
import dustwright.studio.People.Role;
import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Who gets in. Without people set up only this machine's own pages: the name in the address must be the loopback's, so that no name of
 * somebody else's can be made to point here. With people set up whoever has signed in, each for what the role may do. Whatever changes
 * something must come from a page of the studio itself.
 */
final class Guard {
    /** Sent with every change; no other site can make a browser send it. */
    static final String OWN_HEADER = "X-Dustwright";

    /** Changes of no plant, so that everybody may ask for them. */
    static final Set<String> FOR_ALL = Set.of(
            "/api/session/end",
            "/api/session/password",
            "/api/alternative/text",
            "/api/panel/begin",
            "/api/panel/go",
            "/api/sequence/prove",
            "/api/papers/make",
            "/api/papers/stop",
            "/api/coverage/stop");

    static final String SIGN = "/api/sign";
    static final String SIGN_IN = "/api/session";

    private static final String PAGE = "/sign-in";
    private static final String PERSON = "person";
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:;"
                    + " font-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final List<String> NAMES = List.of("127.0.0.1", "localhost");
    private static final int NETWORK_bytes = 8;

    private final People people;
    private final boolean beyond;
    private final String cookie;

    /** A guard; {@code beyond} where other machines are answered too. */
    Guard(People people, boolean beyond) {
        this.people = people;
        this.beyond = beyond;
        this.cookie = "dustwright-" + people.mark();
    }

    /** Something that is not let through, with the reason in words. */
    static final class Refusal extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final int status;

        Refusal(int status, String why) {
            super(why);
            this.status = status;
        }

        int status() {
            return status;
        }
    }

    /** Signing in is asked as soon as somebody is set up, and always where other machines are answered. */
    boolean signInAsked() {
        return beyond || people.any();
    }

    void check(Context request) {
        headers(request);
        boolean reads = List.of("GET", "HEAD").contains(request.method().name());
        boolean signIn = signInAsked();
        String host = Optional.ofNullable(request.header("Host")).orElse("");
        if (!signIn && !NAMES.contains(host.replaceFirst(":[0-9]+$", ""))) {
            throw new Refusal(403, "The studio answers on this machine only.");
        }
        ownPage(request, host, reads);
        if (!signIn || open(request, reads)) {
            return;
        }
        Optional<Person> person = token(request).flatMap(people::of);
        if (person.isEmpty()) {
            if (reads && request.path().equals("/")) {
                request.redirect(PAGE);
                request.skipRemainingHandlers();
                return;
            }
            throw new Refusal(
                    401,
                    "You are not signed in, or no longer. Sign in on another page of this browser, then go on here.");
        }
        if (!reads && !may(person.get().role(), request.path())) {
            throw new Refusal(403, refused(person.get().role(), request.path()));
        }
        request.attribute(PERSON, person.get());
    }

    private static void headers(Context request) {
        request.header("Content-Security-Policy", POLICY);
        request.header("X-Content-Type-Options", "nosniff");
        request.header("Referrer-Policy", "no-referrer");
        request.header("Cross-Origin-Resource-Policy", "same-origin");
        request.header("Cache-Control", "no-store");
    }

    /** Three ways to tell a page of somebody else's; a browser sends at least one of them, and a program none it does not want to. */
    private static void ownPage(Context request, String host, boolean reads) {
        String from = Optional.ofNullable(request.header("Sec-Fetch-Site")).orElse("same-origin");
        boolean same = from.equals("same-origin") || from.equals("none");
        if (reads) {
            if (!same && request.path().startsWith("/api/")) {
                throw new Refusal(403, "Answers are given to the studio's own pages only.");
            }
            return;
        }
        String origin = Optional.ofNullable(request.header("Origin")).orElse("http://" + host);
        if (!same
                || request.header(OWN_HEADER) == null
                || !(origin.equals("http://" + host) || origin.equals("https://" + host))) {
            throw new Refusal(403, "Changes are taken from the studio's own pages only.");
        }
    }

    /** Nothing of any plant is in these. */
    private static boolean open(Context request, boolean reads) {
        String path = request.path();
        return reads ? path.equals(PAGE) || path.startsWith("/assets/") : path.equals(SIGN_IN);
    }

    private static boolean may(Role role, String path) {
        return FOR_ALL.contains(path) || role == (path.equals(SIGN) ? Role.CHECKER : Role.DESIGNER);
    }

    private static String refused(Role role, String path) {
        if (path.equals(SIGN)) {
            return "A checker signs off; you are set up as a " + role.name().toLowerCase(Locale.ROOT) + ".";
        }
        return role == Role.CHECKER
                ? "A checker looks and signs off; a designer makes changes."
                : "A viewer looks; a designer makes changes.";
    }

    static Optional<Person> person(Context request) {
        return Optional.ofNullable(request.attribute(PERSON));
    }

    /**
     * Under which a browser keeps who is signed in. Browsers keep cookies by host, whatever the port: studios of one database share one, and
     * those of another sign nobody out.
     */
    String cookie() {
        return cookie;
    }

    Optional<String> token(Context request) {
        return Optional.ofNullable(request.cookie(cookie));
    }

    /** Where tries to sign in are counted by address: of an IPv6 network, of which one person may have all, only the network. */
    static String network(String address) {
        try {
            byte[] bytes = InetAddress.getByName(address).getAddress();
            return HexFormat.of().formatHex(Arrays.copyOf(bytes, Math.min(bytes.length, NETWORK_bytes)));
        } catch (UnknownHostException none) {
            return "unknown";
        }
    }
}
