package lyewright.records.setting;

import java.util.Locale;

/** Where bars are sold, which rules what is printed on them. */
public enum Market {
    /** The European Union. */
    EU,
    /** Great Britain. */
    GB,
    /** The United States. */
    US,
    /** Anywhere else. */
    OTHER;

    /** As it is kept. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Market ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
