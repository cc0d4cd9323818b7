package lyewright.records.csv;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from running a cell. A text that begins with {@code = + - @}, a tab or a carriage return is one it may run (OWASP,
 * "CSV Injection"; the list is from memory). Such a text gets an apostrophe before it, and so does one that has got apostrophes before
 * such a sign already: then taking one away gives every text back as it was.
 */
final class FormulaGuard {

    private static final Pattern RUNS = Pattern.compile("'*[=+\\-@\t\r].*", Pattern.DOTALL);
    private static final Pattern GUARDED = Pattern.compile("'+[=+\\-@\t\r].*", Pattern.DOTALL);

    private FormulaGuard() {}

    static String guarded(String text) {
        return RUNS.matcher(text).matches() ? "'" + text : text;
    }

    static String bare(String cell) {
        return GUARDED.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
