package lyewright.records.setting;

import java.util.Locale;

/** The degrees that temperatures are shown in. */
public enum Degrees {
    /** Celsius. */
    CELSIUS,
    /** Fahrenheit. */
    FAHRENHEIT;

    /** As it is kept. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Degrees ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
