package lyewright.chain;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;

/**
 * Seals entries, and goes along a chain of sealed ones to see whether each still is as it was sealed. One pass holds no more than the
 * last seal, however long the chain is. Not for several threads.
 */
public final class Chain {

    /** The seal before the first entry. */
    public static final String BEFORE_ALL = "0".repeat(64);

    /** So many first digits of a head are printed. */
    public static final int PRINTED_DIGITS = 12;

    private static final char END = '\n';

    private String seal = BEFORE_ALL;
    private long number;

    /** An empty chain. */
    public Chain() {}

    /**
     * The seal of an entry: SHA-256 (FIPS 180-4), lower-case hexadecimal, over the seal before it and the entry's number, time, person,
     * device, kind and text, in UTF-8, each followed by a line end; before each stands its length in bytes and a line end, so that no
     * two entries read alike.
     *
     * @param before the seal of the entry before it, or {@link #BEFORE_ALL}
     * @param entry the entry
     * @return 64 digits
     */
    public static String seal(String before, Entry entry) {
        MessageDigest digest = sha256();
        part(digest, before);
        part(digest, Long.toString(entry.number()));
        part(digest, Long.toString(entry.atEpochMs()));
        part(digest, entry.person());
        part(digest, entry.device().orElse(""));
        part(digest, entry.kind());
        part(digest, entry.text());
        return HexFormat.of().formatHex(digest.digest());
    }

    private static void part(MessageDigest digest, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update((Integer.toString(bytes.length) + END).getBytes(StandardCharsets.US_ASCII));
        digest.update(bytes);
        digest.update((byte) END);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * Goes on to the next entry.
     *
     * @param entry as it is kept now
     * @param sealed the seal that is kept with it
     * @return what is wrong with it, if anything; the next entry is then held against the seal that is kept
     */
    public Optional<Finding> next(Entry entry, String sealed) {
        Optional<Finding> found = Optional.empty();
        if (entry.number() != number + 1) {
            found = Optional.of(Finding.gap(number, entry.number()));
        } else if (!seal(seal, entry).equals(sealed)) {
            found = Optional.of(Finding.changed(entry));
        }
        number = entry.number();
        seal = sealed;
        return found;
    }

    /**
     * The seal of the last entry so far.
     *
     * @return 64 digits
     */
    public String head() {
        return seal;
    }

    /**
     * The number of the last entry so far.
     *
     * @return 0 where there was none
     */
    public long length() {
        return number;
    }

    /**
     * A head as it is printed: the entry's number and the first digits of its seal, such as {@code 214-3f09ab51c2d7}.
     *
     * @param number the entry's number
     * @param seal its seal
     * @return number and digits
     */
    public static String printed(long number, String seal) {
        return number + "-" + seal.substring(0, PRINTED_DIGITS).toLowerCase(Locale.ROOT);
    }
}
