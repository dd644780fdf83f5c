package dustwright.studio;

import java.text.Normalizer;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Who may work with a database of plants, and who is signed in. Every studio on that database sees the same people. */
public final class People {
    private static final int SHORTEST_PASSWORD = 12;
    private static final int LONGEST_PASSWORD = 200;
    private static final int LONGEST_NAME = 80;
    private static final long SIGNED_IN_s = 12 * 3600;
    private static final long UNUSED_s = 2 * 3600;
    private static final long NOTED_EACH_s = 60;
    private static final long DAY_s = 24 * 3600;

    /** Tries that are free, and the longest wait after ever more of them. */
    private static final int FREE_FOR_PERSON = 5;

    private static final int FREE_FOR_ADDRESS = 20;
    private static final long LONGEST_WAIT_s = 300;
    private static final int DOUBLINGS = 20;

    /** Checked where there is no such person, so that the answer takes as long. */
    private static final class Nobody {
        private static final String SECRET = Secret.kept(Secret.token().toCharArray());
    }

    private final Store store;
    private final Clock clock;

    /** What a person may do. */
    public enum Role {
        /** Look at everything and rehearse the panel. */
        VIEWER,
        /** Change the plant and accept revisions. */
        DESIGNER,
        /** Sign revisions off that somebody else accepted. */
        CHECKER
    }

    /** Somebody who may sign in. */
    public record Person(String name, Role role) {}

    /** What came of signing in: a new token, or how long to wait; neither where name and password do not belong together. */
    record Entry(Optional<String> token, long wait_s) {}

    /** The people of a database. */
    public People(Store store) {
        this(store, Clock.systemUTC());
    }

    People(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Tells the people of this database from those of another. */
    String mark() {
        return store.mark();
    }

    /** Whether anybody is set up, so that signing in is asked. */
    public boolean any() {
        return store.one("SELECT 1 FROM person LIMIT 1", row -> row.getInt(1)).isPresent();
    }

    /** Everybody, in the order of their names. */
    public List<Person> all() {
        return store.all(
                "SELECT name, role FROM person ORDER BY id",
                row -> new Person(row.getString(1), Role.valueOf(row.getString(2))));
    }

    /** Why a name or a password cannot be taken; empty where they can. */
    public static Optional<String> unfit(String name, char[] password) {
        if (name.isBlank() || name.length() > LONGEST_NAME || name.chars().anyMatch(Character::isISOControl)) {
            return Optional.of("A name has up to " + LONGEST_NAME + " letters.");
        }
        return password.length >= SHORTEST_PASSWORD && password.length <= LONGEST_PASSWORD
                ? Optional.empty()
                : Optional.of("A password has " + SHORTEST_PASSWORD + " to " + LONGEST_PASSWORD + " letters.");
    }

    /** Sets somebody up, or anew; who was signed in by that name no longer is. */
    public void put(String name, Role role, char[] password) {
        String secret = Secret.kept(password);
        store.together(on -> {
            on.change("DELETE FROM session WHERE person=?", id(name));
            on.change("DELETE FROM attempt WHERE who=?", "person " + id(name));
            return on.change(
                    "INSERT INTO person(id, name, role, secret) VALUES(?,?,?,?)"
                            + " ON CONFLICT(id) DO UPDATE SET name=excluded.name, role=excluded.role, secret=excluded.secret",
                    id(name),
                    name.strip(),
                    role.name(),
                    secret);
        });
    }

    /** What came of changing one's own password: how long to wait, or why not; neither where it was changed. */
    record NewPassword(long wait_s, String why) {}

    /**
     * Sets a person's own password anew, who must know the old one; tries are counted as those to sign in are. Wherever else that person
     * is signed in ends.
     *
     * @param token under which the person goes on
     */
    NewPassword change(String name, char[] old, char[] next, String address, String token) {
        Optional<String> unfit = unfit(name, next);
        if (unfit.isPresent()) {
            return new NewPassword(0, unfit.get());
        }
        long wait_s = counted("person " + id(name), "address " + address);
        if (wait_s > 0) {
            return new NewPassword(wait_s, "");
        }
        Optional<String> secret = store.one("SELECT secret FROM person WHERE id=?", row -> row.getString(1), id(name));
        if (old.length > LONGEST_PASSWORD || secret.isEmpty() || !Secret.is(old, secret.get())) {
            return new NewPassword(0, "The old password is not right. Nothing was changed.");
        }
        String kept = Secret.kept(next);
        boolean changed = store.together(on -> {
            on.change("DELETE FROM attempt WHERE who=?", "person " + id(name));
            on.change("UPDATE attempt SET failures=failures-1, until=0 WHERE who=?", "address " + address);
            on.change("DELETE FROM session WHERE person=? AND token<>?", id(name), Secret.digest(token));
            return on.change("UPDATE person SET secret=? WHERE id=? AND secret=?", kept, id(name), secret.get()) == 1;
        });
        return new NewPassword(
                0, changed ? "" : "This password was set anew elsewhere at this moment. Nothing was changed.");
    }

    /** Takes somebody out, who is signed out with it; false where there is nobody of that name. */
    public boolean remove(String name) {
        return store.together(on -> {
            on.change("DELETE FROM session WHERE person=?", id(name));
            return on.change("DELETE FROM person WHERE id=?", id(name)) == 1;
        });
    }

    /** Whether two names are one person's: neither letter case nor spaces nor another form of the same letters makes somebody else of one. */
    static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String name) {
        return id(Normalizer.normalize(name, Normalizer.Form.NFKC).replaceAll("\\s+", " "));
    }

    private static String id(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /**
     * Signs somebody in. The try is counted before the password is looked at, so that tries at once are counted too.
     *
     * @param old the token the page had before; it is worth nothing afterwards
     */
    Entry signIn(String name, char[] password, String address, Optional<String> old) {
        String asked = id(name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name);
        long wait_s = counted("person " + asked, "address " + address);
        if (wait_s > 0) {
            return new Entry(Optional.empty(), wait_s);
        }
        Optional<String> secret = store.one("SELECT secret FROM person WHERE id=?", row -> row.getString(1), asked);
        boolean fits = password.length <= LONGEST_PASSWORD && Secret.is(password, secret.orElse(Nobody.SECRET));
        if (!fits || secret.isEmpty()) {
            return new Entry(Optional.empty(), 0);
        }
        String token = Secret.token();
        store.together(on -> {
            on.change("DELETE FROM attempt WHERE who=?", "person " + asked);
            on.change("UPDATE attempt SET failures=failures-1, until=0 WHERE who=?", "address " + address);
            on.change(
                    "DELETE FROM session WHERE token=? OR begun<? OR seen<?",
                    Secret.digest(old.orElse("")),
                    now_s() - SIGNED_IN_s,
                    now_s() - UNUSED_s);
            return on.change(
                    "INSERT INTO session(token, person, begun, seen) VALUES(?,?,?,?)",
                    Secret.digest(token),
                    asked,
                    now_s(),
                    now_s());
        });
        return new Entry(Optional.of(token), 0);
    }

    /** Counts a try for person and address, or tells how long to wait [s] where it is not let through. */
    private long counted(String person, String address) {
        long now_s = now_s();
        return store.together(on -> {
            on.change("DELETE FROM attempt WHERE until<?", now_s - DAY_s);
            List<String> asked = List.of(person, address);
            List<Integer> failures = new ArrayList<>();
            for (String who : asked) {
                on.change("INSERT INTO attempt(who, failures, until) VALUES(?,0,?) ON CONFLICT DO NOTHING", who, now_s);
                on.change("UPDATE attempt SET failures=failures WHERE who=?", who);
                long until_s = on.one("SELECT until FROM attempt WHERE who=?", row -> row.getLong(1), who)
                        .orElse(0L);
                if (until_s > now_s) {
                    return until_s - now_s;
                }
                failures.add(on.one("SELECT failures FROM attempt WHERE who=?", row -> row.getInt(1), who)
                                .orElse(0)
                        + 1);
            }
            for (int n = 0; n < asked.size(); n++) {
                int beyond = failures.get(n) - (n == 0 ? FREE_FOR_PERSON : FREE_FOR_ADDRESS);
                on.change(
                        "UPDATE attempt SET failures=?, until=? WHERE who=?",
                        failures.get(n),
                        now_s + wait_s(beyond),
                        asked.get(n));
            }
            return 0L;
        });
    }

    private static long wait_s(int beyond) {
        return beyond < 0 ? 0 : Math.min(LONGEST_WAIT_s, 1L << Math.min(beyond, DOUBLINGS));
    }

    /** Who is signed in by a token. */
    Optional<Person> of(String token) {
        long now_s = now_s();
        String digest = Secret.digest(token);
        record Seen(Person person, long seen_s) {}
        Optional<Seen> found = store.one(
                "SELECT p.name, p.role, s.seen FROM session s JOIN person p ON p.id=s.person WHERE s.token=? AND s.begun>=? AND s.seen>=?",
                row -> new Seen(new Person(row.getString(1), Role.valueOf(row.getString(2))), row.getLong(3)),
                digest,
                now_s - SIGNED_IN_s,
                now_s - UNUSED_s);
        if (found.filter(s -> s.seen_s() < now_s - NOTED_EACH_s).isPresent()) {
            store.change("UPDATE session SET seen=? WHERE token=?", now_s, digest);
        }
        return found.map(Seen::person);
    }

    void signOut(String token) {
        store.change("DELETE FROM session WHERE token=?", Secret.digest(token));
    }

    private long now_s() {
        return clock.instant().getEpochSecond();
    }
}
