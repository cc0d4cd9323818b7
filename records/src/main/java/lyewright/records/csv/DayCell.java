package lyewright.records.csv;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;

/** Reads a day. What could be two days is never guessed. */
final class DayCell {

    private static final Pattern ISO = Pattern.compile("([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})(?:[ T]00:00(?::00)?)?");
    private static final Pattern DOTTED = Pattern.compile("([0-9]{1,2})\\. ?([0-9]{1,2})\\. ?([0-9]{4})");
    private static final Pattern STROKES = Pattern.compile("([0-9]{1,2})[/-]([0-9]{1,2})[/-]([0-9]{4})");
    private static final Pattern SHORT_YEAR = Pattern.compile("[0-9]{1,2}[./-][0-9]{1,2}[./-][0-9]{2}");
    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2149;

    private DayCell() {}

    static Outcome<LocalDate> read(String text, DayOrder order) {
        Matcher iso = ISO.matcher(text);
        if (iso.matches()) {
            return day(text, number(iso, 1), number(iso, 2), number(iso, 3));
        }
        Matcher dotted = DOTTED.matcher(text);
        if (dotted.matches()) {
            return day(text, number(dotted, 3), number(dotted, 2), number(dotted, 1));
        }
        Matcher strokes = STROKES.matcher(text);
        if (strokes.matches()) {
            return strokes(text, number(strokes, 1), number(strokes, 2), number(strokes, 3), order);
        }
        if (SHORT_YEAR.matcher(text).matches()) {
            return Outcome.refused("the year of '" + text + "' has two figures", "write all four, as in 2026-11-25");
        }
        return text.matches("[0-9]{5}")
                ? Outcome.refused(
                        "'" + text + "' is a spreadsheet's own number for a day",
                        "give the column a date format there, and save it again")
                : Outcome.refused("'" + CellReader.shown(text) + "' is no day", "write it as in 2026-11-25");
    }

    private static Outcome<LocalDate> strokes(String text, int first, int second, int year, DayOrder order) {
        boolean either = first <= 12 && second <= 12 && first != second;
        if (either && order == DayOrder.ASKED) {
            return Outcome.refused(
                    "'" + text + "' may be day and month, or month and day",
                    "write it as in 2026-11-25, or say which comes first");
        }
        // what can only be read in one way is read so, whatever the others are
        boolean dayFirst = first > 12 || (second <= 12 && order != DayOrder.MONTH_FIRST);
        return dayFirst ? day(text, year, second, first) : day(text, year, first, second);
    }

    private static Outcome<LocalDate> day(String text, int year, int month, int day) {
        try {
            LocalDate read = LocalDate.of(year, month, day);
            return year < FIRST_YEAR || year > LAST_YEAR
                    ? Outcome.refused("the year of '" + text + "' cannot be meant", "look at the day again")
                    : Outcome.ok(read);
        } catch (DateTimeException e) {
            return Outcome.refused("there is no day '" + text + "'", "look at its day and month again");
        }
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }
}
