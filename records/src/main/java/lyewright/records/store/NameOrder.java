package lyewright.records.store;

import java.text.Collator;
import java.text.Normalizer;
import java.util.HexFormat;
import java.util.Locale;

/** Names in the order people look for them, and text in the form it is searched in. */
public final class NameOrder {

    /** Far enough to tell names apart, and short enough for an index of any database. */
    private static final int LONGEST = 1200;

    private static final Collator COLLATOR = collator();

    private NameOrder() {}

    private static Collator collator() {
        Collator collator = Collator.getInstance(Locale.ROOT);
        collator.setStrength(Collator.TERTIARY);
        collator.setDecomposition(Collator.CANONICAL_DECOMPOSITION);
        return collator;
    }

    /** A text whose order as plain text is the order of the names. */
    public static String key(String name) {
        String hex = HexFormat.of().formatHex(COLLATOR.getCollationKey(name).toByteArray());
        return hex.length() <= LONGEST ? hex : hex.substring(0, LONGEST);
    }

    /** A text without case, accents and the letters' other dress, so that {@code creme} finds {@code Crème}. */
    public static String folded(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "");
        String small = plain.toLowerCase(Locale.ROOT).toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
        StringBuilder folded = new StringBuilder(small.length());
        small.codePoints().forEach(c -> {
            switch (c) {
                case 'ø' -> folded.append('o');
                case 'đ', 'ð' -> folded.append('d');
                case 'ł' -> folded.append('l');
                case 'æ' -> folded.append("ae");
                case 'œ' -> folded.append("oe");
                case 'þ' -> folded.append("th");
                case 'ı' -> folded.append('i');
                case 'ς' -> folded.append('σ');
                default -> folded.appendCodePoint(c);
            }
        });
        return folded.toString();
    }
}
