package lyewright.records.stock;

import java.util.Arrays;
import java.util.Optional;

/** How much there is of a thing is said in whole milligrams or in pieces. */
public enum Counting {
    /** Weighed; amounts are milligrams. */
    MASS("mass"),
    /** Counted; amounts are pieces. */
    PIECES("pieces");

    private final String word;

    Counting(String word) {
        this.word = word;
    }

    /** As it is kept. */
    public String word() {
        return word;
    }

    /** The counting of a word. */
    public static Optional<Counting> ofWord(String word) {
        return Arrays.stream(values()).filter(it -> it.word.equals(word)).findFirst();
    }
}
