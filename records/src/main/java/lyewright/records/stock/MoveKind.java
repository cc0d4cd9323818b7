package lyewright.records.stock;

import java.util.Arrays;
import java.util.Optional;

/** Why so much of a lot came or went. */
public enum MoveKind {
    /** It came, or was made here. */
    RECEIPT("receipt"),
    /** It went into a batch, or into a lot that was made here. */
    USE("use"),
    /** It was spilt, spoilt or thrown away. */
    LOSS("loss"),
    /** Somebody looked, and there was more or less than the book said. */
    COUNT("count"),
    /** It went back to whom it came from. */
    RETURN("return");

    private final String word;

    MoveKind(String word) {
        this.word = word;
    }

    /** As it is kept and shown. */
    public String word() {
        return word;
    }

    /** The kind of a word. */
    public static Optional<MoveKind> ofWord(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
