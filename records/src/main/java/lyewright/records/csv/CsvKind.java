package lyewright.records.csv;

import java.util.Arrays;
import java.util.Optional;

/** What the rows of a file are. */
public enum CsvKind {
    MATERIALS("materials", "a material", "materials"),
    LOTS("lots", "a lot", "lots, or opening stock"),
    SUPPLIERS("suppliers", "a supplier", "suppliers");

    private final String word;
    private final String one;
    private final String label;

    CsvKind(String word, String one, String label) {
        this.word = word;
        this.one = one;
        this.label = label;
    }

    /** As it stands in addresses and file names. */
    public String word() {
        return word;
    }

    /** What a row is. */
    public String one() {
        return one;
    }

    /** As it is shown. */
    public String label() {
        return label;
    }

    /** The kind of a word. */
    public static Optional<CsvKind> ofWord(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
