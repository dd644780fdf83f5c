package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.body;
import static dustwright.studio.Exchange.neededText;

import dustwright.studio.People.Person;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Signing in and out, and who is signed in. */
final class SigningIn {
    private final People people;
    private final Guard guard;

    SigningIn(People people, Guard guard) {
        this.people = people;
        this.guard = guard;
    }

    /** Whether signing in is asked, and who is signed in. */
    record Session(boolean signIn, String name, String role) {}

    void routes(JavalinConfig config) {
        config.routes.get("/api/session", request -> answer(request, session(request)));
        config.routes.post("/api/session", this::signIn);
        config.routes.post("/api/session/password", this::password);
        config.routes.post("/api/session/end", request -> {
            guard.token(request).ifPresent(people::signOut);
            request.removeCookie(guard.cookie(), "/");
            answer(request, Map.of("why", ""));
        });
    }

    private Session session(Context request) {
        Optional<Person> person = Guard.person(request);
        return new Session(
                guard.signInAsked(),
                person.map(Person::name).orElse(""),
                person.map(p -> p.role().name().toLowerCase(Locale.ROOT)).orElse(""));
    }

    private void password(Context request) {
        var asked = body(request);
        char[] old = neededText(asked, "old").toCharArray();
        char[] next = neededText(asked, "new").toCharArray();
        String name = Guard.person(request)
                .map(Person::name)
                .orElseThrow(() -> new Guard.Refusal(422, "Nobody signs in to this studio, so there is no password."));
        People.NewPassword changed = people.change(
                name,
                old,
                next,
                Guard.network(request.ip()),
                guard.token(request).orElse(""));
        tooMany(request, changed.wait_s());
        if (!changed.why().isEmpty()) {
            throw new Guard.Refusal(422, changed.why());
        }
        answer(request, Map.of("why", ""));
    }

    private static void tooMany(Context request, long wait_s) {
        if (wait_s > 0) {
            request.header("Retry-After", Long.toString(wait_s));
            throw new Guard.Refusal(429, "Too many tries. Try again in " + wait_s + " s.");
        }
    }

    private void signIn(Context request) {
        var asked = body(request);
        People.Entry entry = people.signIn(
                neededText(asked, "name"),
                neededText(asked, "password").toCharArray(),
                Guard.network(request.ip()),
                guard.token(request));
        tooMany(request, entry.wait_s());
        String token = entry.token()
                .orElseThrow(() -> new Guard.Refusal(401, "This name and this password do not belong together."));
        request.cookie(new Cookie(
                guard.cookie(), token, "/", -1, request.scheme().equals("https"), true, null, SameSite.STRICT));
        answer(request, Map.of("why", ""));
    }
}
