package lyewright.web;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Masses in grams that have no ounces beside them. */
final class GramsAlone {

    private static final String GRAMS = "-?[0-9.]+ k?g";
    private static final String OUNCES = "-?[0-9.]+ oz";

    /** {@code 350 g (12.35 oz)}, {@code 12.35 oz, 350 g}; on paper one stands under the other. */
    private static final Pattern BOTH =
            Pattern.compile(GRAMS + "(?: \\(|, | )" + OUNCES + "\\)?|" + OUNCES + "(?: \\(|, | )" + GRAMS + "\\)?");

    /** What is no mass to be weighed, or is the maker's own typing, or what a balance is. */
    private static final Pattern ALLOWED = Pattern.compile(
            "[0-9.]+ g per kg" + "|g/(?:ml|100 g)" + "|[0-9.]+ k?g in steps of [0-9.]+ g" + "|" + GRAMS + " reads");

    private static final Pattern ALONE = Pattern.compile(".{0,40}(?<![0-9.])" + GRAMS + "(?![\\p{L}/]).{0,20}");

    private GramsAlone() {}

    /** On a page of HTML, pictures with what they say included. */
    static List<String> on(String page) {
        return in(text(page));
    }

    /** A page as it is read, a bar between what does not belong together. What a balance reads is marked. */
    static String text(String page) {
        return page.replaceAll("(?s)<(script|style|head)\\b.*?</\\1>", "")
                .replaceAll("(?s)(<td class=\"number reads\">.*?)(</td>)", "$1 reads$2")
                .replaceAll("</?(?:a|b|strong|em|span|button|output)\\b[^>]*>", "")
                .replaceAll("<[^>]*>", "|")
                .replaceAll("\\s+", " ");
    }

    /** In a text. */
    static List<String> in(String text) {
        String rest = ALLOWED.matcher(BOTH.matcher(text).replaceAll("#")).replaceAll("#");
        return ALONE.matcher(rest).results().map(MatchResult::group).distinct().toList();
    }
}
