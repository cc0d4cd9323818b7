package lyewright.records.csv;

import java.util.Arrays;
import java.util.Optional;

/** What stands between two cells. */
public enum Separator {
    COMMA("comma", ','),
    SEMICOLON("semicolon", ';'),
    TAB("tab", '\t');

    private final String word;
    private final char sign;

    Separator(String word, char sign) {
        this.word = word;
        this.sign = sign;
    }

    /** As it is shown. */
    public String word() {
        return word;
    }

    /** The sign itself. */
    public char sign() {
        return sign;
    }

    /** The one of a word. */
    public static Optional<Separator> ofWord(String word) {
        return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
    }

    static Optional<Separator> ofSign(char sign) {
        return Arrays.stream(values()).filter(it -> it.sign == sign).findFirst();
    }
}
