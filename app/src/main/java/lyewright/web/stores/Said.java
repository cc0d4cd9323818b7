package lyewright.web.stores;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Measures as people say and type them, turned into what the engine reads. What is not understood stays as it was typed. */
final class Said {

    private static final Map<Character, String> FRACTIONS = Map.of(
            '½', "1/2", '¼', "1/4", '¾', "3/4", '⅛', "1/8", '⅜', "3/8", '⅝', "5/8", '⅞', "7/8", '⅓', "1/3", '⅔', "2/3");

    /** A whole number may stand before it; the parts an inch or an ounce is cut into, and no date. */
    private static final Pattern FRACTION =
            Pattern.compile("(?:([0-9]+)[ -]+)?([0-9]{1,2})\\s*[/\u2044]\\s*(2|3|4|8|16|32)(?![0-9/.])");

    private static final int DECIMALS = 5;

    private static final Map<Pattern, String> WORDS = words();

    private Said() {}

    private static Map<Pattern, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("milli?met(?:re|er)s?|mms", "mm");
        words.put("centimet(?:re|er)s?|cms", "cm");
        words.put("inch(?:es)?|ins", "in");
        words.put("millilit(?:re|er)s?|mls|cc|cm3|cm³", "ml");
        words.put("lit(?:re|er)s?|ltr", "l");
        words.put("kilo(?:gram(?:me)?)?s?|kgs", "kg");
        words.put("gram(?:me)?s?|gm|gr|gs", "g");
        words.put("ounces?|ozs", "oz");
        words.put("pounds?|lbs", "lb");
        words.put("by|times", "x");
        Map<Pattern, String> patterns = new LinkedHashMap<>();
        words.forEach(
                (typed, unit) -> patterns.put(Pattern.compile("(?<![\\p{L}])(?:" + typed + ")(?![\\p{L}])\\.?"), unit));
        return patterns;
    }

    /**
     * A measure with its units and signs as the engine writes them: {@code 12" by 3 1/2" by 2½"} becomes
     * {@code 12 in x 3.5 in x 2.5 in}.
     */
    static String measure(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String fraction = FRACTIONS.get(c);
            plain.append(fraction != null ? " " + fraction : Character.isWhitespace(c) || c == '\u00a0' ? " " : c);
        }
        text = plain.toString().replaceAll("''|[\"\u201c\u201d\u2033]", " in ").replaceAll("[*×]", "x");
        text = FRACTION.matcher(text).replaceAll(Said::decimal);
        for (Map.Entry<Pattern, String> word : WORDS.entrySet()) {
            text = word.getKey().matcher(text).replaceAll(Matcher.quoteReplacement(word.getValue()));
        }
        return text.replaceAll("\\s+", " ").strip();
    }

    private static String decimal(MatchResult match) {
        BigDecimal whole = match.group(1) == null ? BigDecimal.ZERO : new BigDecimal(match.group(1));
        BigDecimal part =
                new BigDecimal(match.group(2)).divide(new BigDecimal(match.group(3)), DECIMALS, RoundingMode.HALF_UP);
        return whole.add(part).stripTrailingZeros().toPlainString();
    }

    /** A count of equal cavities: {@code 12 cavities of 95 ml each} becomes {@code 12 x 95 ml}. */
    static String cavities(String typed) {
        String text = measure(typed)
                .replaceAll(
                        "(?<![\\p{L}])(?:cavit(?:y|ies)|holes?|bars?|moulds?|molds?|each|holding|that hold)(?![\\p{L}])",
                        " ")
                .replaceAll("(?<![\\p{L}])(?:of|at|à)(?![\\p{L}])", "x");
        return text.replaceAll("\\s+", " ").replaceAll("x( x)+", "x").strip();
    }
}
