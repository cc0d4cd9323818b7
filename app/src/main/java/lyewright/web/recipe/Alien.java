package lyewright.web.recipe;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;

/** Files that are no text at all, or another kind of text, told by their first bytes: their lines would say nothing. */
final class Alien {

    private static final int LOOKED_AT = 512;
    private static final Pattern PAGE = Pattern.compile(
            "(?is)^\\s*(<\\?xml[^>]*>\\s*)?(<!--.*?-->\\s*)?<(!doctype|html|head|body|svg|script)\\b.*");

    private Alien() {}

    static Optional<String> kind(byte[] bytes) {
        String first = new String(bytes, 0, Math.min(bytes.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
        if (first.startsWith("PK\u0003\u0004")) {
            return Optional.of("a zip archive or an office document");
        }
        if (first.startsWith("%PDF")) {
            return Optional.of("a PDF");
        }
        if (first.startsWith("\u00FF\u00D8\u00FF") || first.startsWith("\u0089PNG") || first.startsWith("GIF8")) {
            return Optional.of("a picture");
        }
        if (first.startsWith("\u00FF\u00FE") || first.startsWith("\u00FE\u00FF")) {
            return Optional.of("text in UTF-16, and only UTF-8 is read: save it as UTF-8");
        }
        return PAGE.matcher(first).matches() ? Optional.of("a web page or a drawing") : Optional.empty();
    }
}
