package lyewright.records.people;

import java.util.Arrays;
import java.util.Optional;

/** What somebody may do. */
public enum Role {
    /** Everything. */
    MAKER("maker"),
    /** Weighs and ticks; changes no recipe, no lot, no price. */
    HELPER("helper");

    private final String word;

    Role(String word) {
        this.word = word;
    }

    /** As it is kept. */
    public String word() {
        return word;
    }

    /** The role of a word. */
    public static Optional<Role> ofWord(String word) {
        return Arrays.stream(values()).filter(role -> role.word.equals(word)).findFirst();
    }
}
