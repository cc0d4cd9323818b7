package lyewright.records.setting;

import java.util.Locale;

/** The units that masses are shown in first. */
public enum Units {
    /** Grams and kilograms. */
    GRAMS,
    /** Ounces and pounds, by weight. */
    OUNCES;

    /** As it is kept. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Units ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
