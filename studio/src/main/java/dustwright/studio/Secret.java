package dustwright.studio;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Passwords as they are kept: Argon2id (RFC 9106) in the text form of its reference program, which carries its own salt and cost, so that
 * the cost can be raised later. Cost as in the OWASP cheat sheet on keeping passwords, first choice for Argon2id: 19 MiB, two passes.
 */
final class Secret {
    private static final int MEMORY_KiB = 19 * 1024;
    private static final int PASSES = 2;
    private static final int SALT_bytes = 16;
    private static final int HASH_bytes = 32;
    /** Each takes 19 MiB and a core for a while. */
    private static final Semaphore AT_ONCE = new Semaphore(2, true);

    private static final Pattern KEPT = Pattern.compile(
            "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,2})\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secret() {}

    /** A password as it is kept. */
    static String kept(char[] password) {
        byte[] salt = new byte[SALT_bytes];
        RANDOM.nextBytes(salt);
        Base64.Encoder text = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + MEMORY_KiB + ",t=" + PASSES + ",p=1$" + text.encodeToString(salt) + "$"
                + text.encodeToString(hash(password, salt, MEMORY_KiB, PASSES, 1, HASH_bytes));
    }

    /** Whether a password is the one that is kept. */
    static boolean is(char[] password, String kept) {
        Matcher parts = KEPT.matcher(kept);
        if (!parts.matches()) {
            return false;
        }
        byte[] expected = Base64.getDecoder().decode(parts.group(5));
        byte[] given = hash(
                password,
                Base64.getDecoder().decode(parts.group(4)),
                Integer.parseInt(parts.group(1)),
                Integer.parseInt(parts.group(2)),
                Integer.parseInt(parts.group(3)),
                expected.length);
        return MessageDigest.isEqual(given, expected);
    }

    private static byte[] hash(char[] password, byte[] salt, int cost_KiB, int passes, int lanes, int length) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withSalt(salt)
                .withMemoryAsKB(cost_KiB)
                .withIterations(passes)
                .withParallelism(lanes)
                .build());
        byte[] hash = new byte[length];
        AT_ONCE.acquireUninterruptibly();
        try {
            generator.generateBytes(password, hash);
            return hash;
        } finally {
            AT_ONCE.release();
        }
    }

    /** What a page keeps of being signed in: 256 bits nobody guesses. */
    static String token() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** A token as it is kept: who reads the database cannot use it. */
    static String digest(String token) {
        try {
            return Base64.getUrlEncoder()
                    .withoutPadding()
                    .encodeToString(
                            MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException none) {
            throw new IllegalStateException(none);
        }
    }
}
