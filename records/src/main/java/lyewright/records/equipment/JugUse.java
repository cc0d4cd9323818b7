package lyewright.records.equipment;

/** What a jug or a pot is for. */
public enum JugUse {
    /** Lye is made in it. */
    LYE_JUG("lye jug"),
    /** Oils are melted in it and the batter is made in it. */
    OIL_POT("oil pot"),
    /** A portion of the batter is coloured in it. */
    PORTION_JUG("portion jug");

    private final String word;

    JugUse(String word) {
        this.word = word;
    }

    /** As it is kept, and as a sheet calls it. */
    public String word() {
        return word;
    }

    static JugUse ofWord(String word) {
        for (JugUse use : values()) {
            if (use.word.equals(word)) {
                return use;
            }
        }
        throw new IllegalArgumentException(word);
    }
}
