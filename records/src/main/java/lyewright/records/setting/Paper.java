package lyewright.records.setting;

import java.util.Locale;

/** The paper in the printer. */
public enum Paper {
    /** 210 by 297 mm. */
    A4,
    /** 8.5 by 11 inches. */
    LETTER;

    /** As it is kept. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Paper ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
