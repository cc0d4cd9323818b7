package lyewright.records.people;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.concurrent.Semaphore;

/**
 * What is kept of a password: its Argon2id digest with a salt of its own, as one text that names its costs. The costs are the second
 * of the two that RFC 9106, section 4, recommends: 3 passes over 64 MiB in 4 lanes, a salt of 128 bits, a digest of 256.
 */
final class PasswordDigest {

    private static final int KIBIBYTES = 65_536;
    private static final int PASSES = 3;
    private static final int LANES = 4;
    private static final int DIGEST_BYTES = 32;
    private static final int SALT_BYTES = 16;

    private static final SecureRandom RANDOM = new SecureRandom();

    /** Each takes 64 MiB and a processor for a while: whoever tries many at once waits. */
    private static final Semaphore AT_ONCE = new Semaphore(2, true);

    private PasswordDigest() {}

    static String of(String password) {
        byte[] salt = new byte[SALT_BYTES];
        RANDOM.nextBytes(salt);
        Argon2Function argon2 = Argon2Function.getInstance(KIBIBYTES, PASSES, LANES, DIGEST_BYTES, Argon2.ID);
        AT_ONCE.acquireUninterruptibly();
        try {
            return argon2.hash(bytes(password), salt).getResult();
        } finally {
            AT_ONCE.release();
        }
    }

    static boolean matches(String password, String digest) {
        AT_ONCE.acquireUninterruptibly();
        try {
            return Argon2Function.getInstanceFromHash(digest).check(typed(password), digest);
        } finally {
            AT_ONCE.release();
        }
    }

    private static byte[] bytes(String password) {
        return typed(password).getBytes(StandardCharsets.UTF_8);
    }

    /** The same letters, whichever keyboard wrote them in however many pieces. */
    private static String typed(String password) {
        return Normalizer.normalize(password, Normalizer.Form.NFKC);
    }
}
