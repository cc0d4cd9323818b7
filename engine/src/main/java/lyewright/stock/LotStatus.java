package lyewright.stock;

import java.util.Arrays;
import java.util.Optional;

/** What may be done with a lot: to receive, hold and release raw materials is clause 6 of ISO 22716:2007. */
public enum LotStatus {
    /** Not judged yet; nothing is taken from it. */
    QUARANTINE("quarantine"),
    /** May be used. */
    USABLE("usable"),
    /** Must not be used; what is left is sent back or thrown away. */
    REFUSED("refused");

    private final String word;

    LotStatus(String word) {
        this.word = word;
    }

    /**
     * As it is kept and shown.
     *
     * @return one word
     */
    public String word() {
        return word;
    }

    /**
     * The status of a word.
     *
     * @param word as {@link #word()} gives it
     * @return the status, empty for any other word
     */
    public static Optional<LotStatus> ofWord(String word) {
        return Arrays.stream(values())
                .filter(status -> status.word.equals(word))
                .findFirst();
    }
}
