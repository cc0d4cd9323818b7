package lyewright.records.csv;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/** What stands before the decimals of a file. */
public enum DecimalSign {
    POINT("point", '.', ','),
    COMMA("comma", ',', '.');

    private static final Pattern SPACED = Pattern.compile("[0-9]{1,3}([ '\u2019\u00a0\u202f][0-9]{3})+([.,][0-9]+)?");

    private final String word;
    private final char sign;
    private final char groups;
    private final Pattern plain;
    private final Pattern grouped;
    private final Pattern sure;

    DecimalSign(String word, char sign, char groups) {
        this.word = word;
        this.sign = sign;
        this.groups = groups;
        String decimal = Pattern.quote(String.valueOf(sign));
        String thousand = Pattern.quote(String.valueOf(groups));
        this.plain = Pattern.compile("[0-9]*(" + decimal + "[0-9]+)?");
        // one group alone may as well be decimals of the other kind
        this.grouped = Pattern.compile(
                "[0-9]{1,3}(" + thousand + "[0-9]{3})+" + decimal + "[0-9]+|[0-9]{1,3}(" + thousand + "[0-9]{3}){2,}");
        this.sure = Pattern.compile("[0-9]*" + decimal + "([0-9]{1,2}|[0-9]{4,})|[0-9]{1,3}(" + thousand + "[0-9]{3})+"
                + decimal + "[0-9]+|0*" + decimal + "[0-9]+");
    }

    /** As it is shown. */
    public String word() {
        return word;
    }

    /** The one of a word. */
    public static Optional<DecimalSign> ofWord(String word) {
        return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
    }

    /** Whether a number can only be meant so. */
    boolean isSureOf(String number) {
        return sure.matcher(number).matches();
    }

    /** A number with a point and nothing else in it, or why it is not clear. */
    Outcome<String> read(String number) {
        String together = SPACED.matcher(number).matches() ? number.replaceAll("[ '\u2019\u00a0\u202f]", "") : number;
        if (!together.isEmpty() && plain.matcher(together).matches()) {
            return Outcome.ok(together.replace(sign, '.'));
        }
        if (grouped.matcher(together).matches()) {
            return Outcome.ok(together.replace(String.valueOf(groups), "").replace(sign, '.'));
        }
        String other = groups == ',' ? "comma" : "point";
        if (together.matches("[1-9][0-9]{0,2}[.,][0-9]{3}")) {
            return Outcome.refused(new Problem(
                    "",
                    "'" + number + "' may be a thousand or more, or a small number with decimals",
                    "write it without the " + other + ", or say that the decimal sign is the " + other));
        }
        if (together.matches("[0-9]*[.,][0-9]+")) {
            return Outcome.refused(new Problem(
                    "",
                    "'" + number + "' has a " + other + " where this file's decimal sign is the " + word,
                    "write it with a " + word + ", or say that the decimal sign is the " + other));
        }
        return Outcome.refused(new Problem("", "'" + number + "' is no number", "write it as in 12" + sign + "5"));
    }
}
