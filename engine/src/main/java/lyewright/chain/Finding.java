package lyewright.chain;

/**
 * Something that is not as it was written.
 *
 * @param number the entry that shows it
 * @param what what is wrong, in sentences
 * @param isOfPaper whether it is the head that somebody typed which does not fit, so that it may be mistyped
 */
public record Finding(long number, String what, boolean isOfPaper) {

    /**
     * Something of what is kept.
     *
     * @param number the entry that shows it
     * @param what what is wrong, in a sentence
     */
    public Finding(long number, String what) {
        this(number, what, false);
    }

    static Finding changed(Entry entry) {
        return new Finding(
                entry.number(),
                "Entry " + entry.number() + " (" + entry.kind()
                        + ") is not as it was written: it, or something before it, was changed.");
    }

    static Finding gap(long before, long number) {
        String missing = number == before + 2
                ? "entry " + (before + 1) + " is missing"
                : number > before + 1
                        ? "entries " + (before + 1) + " to " + (number - 1) + " are missing"
                        : "entry " + number + " comes after entry " + before;
        return new Finding(number, "The chain is broken before entry " + number + ": " + missing + ".");
    }
}
