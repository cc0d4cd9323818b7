package lyewright.print;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps a figure with its unit, and what is said of it in a few words, on one line. */
final class NoBreaks {

    private static final String SPACE = "\u00a0";

    private static final Pattern UNIT =
            Pattern.compile("(?<=\\d) (?=(?:g|kg|mg|oz|lb|ml|l|mm|cm|in|h|min|s|days|weeks|bars)\\b|[%°])");

    private static final Pattern OFF_BY = Pattern.compile("off by (?=[+-]?\\d)");

    /** Degrees in running text: the library would end a line after their sign. Neither in tags nor in what is no text. */
    private static final Pattern DEGREES = Pattern.compile(
            "<(title|desc|style|text)\\b.*?</\\1>|<[^>]*>|(\\d+" + SPACE + "°[CF]\\*?)", Pattern.DOTALL);

    private NoBreaks() {}

    /** The same page with lines that do not end there. */
    static String in(String page) {
        String units = UNIT.matcher(page).replaceAll(SPACE);
        String words = OFF_BY.matcher(units).replaceAll("off" + SPACE + "by" + SPACE);
        return DEGREES.matcher(words)
                .replaceAll(found -> Matcher.quoteReplacement(
                        found.group(2) == null ? found.group() : "<span class=\"nb\">" + found.group(2) + "</span>"));
    }
}
