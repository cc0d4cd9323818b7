package lyewright.records.csv;

import java.util.Arrays;
import java.util.Optional;

/** Which comes first in a day with strokes, as in 03/04/2026. */
public enum DayOrder {
    ASKED("asked", "not said: refuse 03/04/2026"),
    DAY_FIRST("day", "the day: 03/04/2026 is 3 April"),
    MONTH_FIRST("month", "the month: 03/04/2026 is March 4");

    private final String word;
    private final String label;

    DayOrder(String word, String label) {
        this.word = word;
        this.label = label;
    }

    /** The word that stands for it in a form. */
    public String word() {
        return word;
    }

    /** As it is shown. */
    public String label() {
        return label;
    }

    /** The one of a word. */
    public static Optional<DayOrder> ofWord(String word) {
        return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
    }
}
