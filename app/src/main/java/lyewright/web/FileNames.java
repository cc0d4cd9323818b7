package lyewright.web;

import java.text.Normalizer;
import java.util.Locale;

/** Names of files that are sent, in letters that any computer takes. */
public final class FileNames {

    private static final int LONGEST = 60;

    private FileNames() {}

    /**
     * A name in small letters, figures and hyphens.
     *
     * @param name any text
     * @param otherwise what it is called where the name has none of them, as in another script
     */
    public static String plain(String name, String otherwise) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String some = plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
        String trimmed = some.replaceAll("^-+|-+$", "");
        return trimmed.isEmpty() ? otherwise : trimmed;
    }
}
