package lyewright.measure;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Measures as people say and type them, turned into what is read here. What is not understood stays as it was typed. */
public final class Said {

    private static final Pattern INCH_SIGN = Pattern.compile("''|[\"\u201c\u201d\u2033]");

    private static final Pattern TIMES_SIGN = Pattern.compile("[*\u00d7]");

    private static final Pattern SPACES = Pattern.compile("[\\s\u00a0\u2007\u2009\u202f]+");

    private static final Pattern POUNDS_AND_OUNCES =
            Pattern.compile("(?<![0-9.,])([0-9]{1,6}) ?lb,? (?:and )?([0-9]{1,2}(?:\\.[0-9]{1,5})?) ?oz(?!\\p{L})");

    private static final BigDecimal OUNCES = BigDecimal.valueOf(16);

    private static final Map<Pattern, String> WORDS = words();

    /** A count and what is counted, at the beginning. */
    private static final Pattern COUNTED = Pattern.compile("^([0-9]{1,5})\\s?(?:"
            + "(?:x\\s?)?(?:cavit(?:y|ies)|holes?|bars?|moulds?|molds?)(?:\\s?(?:of|at|à|x|holding|that hold|,|:))?"
            + "|of|at|à)\\s?(?=[0-9.])");

    private static final Pattern EACH = Pattern.compile("\\s(?:each|apiece|a piece)$");

    private Said() {}

    private static Map<Pattern, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("mm|milli?met(?:re|er)s?|mms", "mm");
        words.put("cm|centimet(?:re|er)s?|cms", "cm");
        words.put("in|inch(?:es)?|ins", "in");
        words.put("ml|millilit(?:re|er)s?|mls|cc|cm3|cm³", "ml");
        words.put("l|lit(?:re|er)s?|ltr", "l");
        words.put("kg|kilo(?:gram(?:me)?)?s?|kgs", "kg");
        words.put("g|gram(?:me)?s?|gm|gr|gs", "g");
        words.put("oz|ounces?|ozs", "oz");
        words.put("lb|pounds?|lbs", "lb");
        words.put("by|times", "x");
        Map<Pattern, String> patterns = new LinkedHashMap<>();
        words.forEach((typed, unit) -> patterns.put(
                Pattern.compile("(?<![\\p{L}])(?<!fl\\.?\\s?)(?:" + typed + ")(?!(?!x\\s?[0-9.])\\p{L})\\.?"), unit));
        return patterns;
    }

    /**
     * A measure with its units and signs as they are read: {@code 12" by 3 1/2" by 2½"} becomes
     * {@code 12 in x 3.5 in x 2.5 in}.
     *
     * @param typed a measure
     * @return the same, in small letters
     */
    public static String measure(String typed) {
        String text = SPACES.matcher(typed.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
        text = INCH_SIGN.matcher(text).replaceAll(" in ");
        text = TIMES_SIGN.matcher(text).replaceAll("x");
        text = Fractions.decimals(text);
        for (Map.Entry<Pattern, String> word : WORDS.entrySet()) {
            text = word.getKey().matcher(text).replaceAll(Matcher.quoteReplacement(word.getValue()));
        }
        text = SPACES.matcher(text).replaceAll(" ").strip();
        return POUNDS_AND_OUNCES.matcher(text).replaceAll(Said::inOunces);
    }

    private static String inOunces(MatchResult both) {
        BigDecimal ounces = new BigDecimal(both.group(2));
        return ounces.compareTo(OUNCES) < 0
                ? new BigDecimal(both.group(1)).multiply(OUNCES).add(ounces).toPlainString() + " oz"
                : Matcher.quoteReplacement(both.group());
    }

    /**
     * A count of equal things, cavities or bars.
     *
     * @param typed such as {@code 12 cavities of 95 ml each}
     * @return {@code 12 x 95 ml}
     */
    public static String counted(String typed) {
        String text = measure(typed);
        Matcher counted = COUNTED.matcher(text);
        return counted.find()
                ? counted.group(1) + " x "
                        + EACH.matcher(text.substring(counted.end())).replaceAll("")
                : EACH.matcher(text).replaceAll("");
    }
}
