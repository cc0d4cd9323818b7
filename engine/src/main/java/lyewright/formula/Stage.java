package lyewright.formula;

/**
 * When an addition goes in.
 *
 * @param kind the moment
 * @param portion which portion, empty unless the kind is {@link Kind#PORTION}
 */
public record Stage(Kind kind, String portion) {

    /** The moments, in the order of making. */
    public enum Kind {
        /** Into the lye jug, before the alkali. */
        LYE("lye"),
        /** Into the oils, before the lye. */
        OILS("oils"),
        /** Into the whole batter, at trace. */
        TRACE("trace"),
        /** Into every portion; without portions into the whole batter. */
        EVERY_PORTION("every portion"),
        /** Into one portion. */
        PORTION("portion"),
        /** On top, in the mould. */
        TOP("top");

        private final String word;

        Kind(String word) {
            this.word = word;
        }
    }

    /**
     * A stage that names no portion.
     *
     * @param kind which
     * @return the stage
     */
    public static Stage of(Kind kind) {
        return new Stage(kind, "");
    }

    /**
     * Into one portion.
     *
     * @param name the portion's name
     * @return the stage
     */
    public static Stage portion(String name) {
        return new Stage(Kind.PORTION, name);
    }

    /** As written: {@code portion kelp}, {@code trace}. */
    @Override
    public String toString() {
        return kind == Kind.PORTION ? kind.word + " " + portion : kind.word;
    }
}
