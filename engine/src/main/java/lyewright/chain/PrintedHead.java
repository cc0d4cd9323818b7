package lyewright.chain;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;

/**
 * A head that somebody holds on paper: which entry, and how its seal begins.
 *
 * @param number the entry's number, 1 or more
 * @param digits the first twelve digits of its seal
 */
public record PrintedHead(long number, String digits) {

    private static final String MISTYPED =
            "You may have mistyped it: compare it letter by letter with the paper. If it stands there so, ";

    private static final Pattern WRITTEN = Pattern.compile("([1-9][0-9]{0,17})\\s*-\\s*([0-9a-f]{12})");

    /**
     * Reads a head as it is printed.
     *
     * @param text such as {@code 214-3f09ab51c2d7}; blanks and capitals do no harm
     * @return the head, or why not
     */
    public static Outcome<PrintedHead> parse(String text) {
        Matcher written = WRITTEN.matcher(text.strip().toLowerCase(Locale.ROOT));
        return written.matches()
                ? Outcome.ok(new PrintedHead(Long.parseLong(written.group(1)), written.group(2)))
                : Outcome.refused(
                        "that is not a printed head",
                        "write the number, a dash and the twelve digits, as they stand on the paper");
    }

    /**
     * Holds what is kept against the paper.
     *
     * @param kept the seal that is kept for that entry; empty where there is none
     * @return what is wrong, if anything
     */
    public Optional<Finding> against(Optional<String> kept) {
        if (kept.isEmpty()) {
            return Optional.of(new Finding(
                    number,
                    "There is no entry " + number + ". " + MISTYPED + "entry " + number
                            + " is gone, and so is whatever came after it.",
                    true));
        }
        return kept.get().startsWith(digits)
                ? Optional.empty()
                : Optional.of(new Finding(
                        number,
                        "Entry " + number + " does not fit the head that you typed. " + MISTYPED + "entry " + number
                                + ", or something before it, was changed.",
                        true));
    }
}
