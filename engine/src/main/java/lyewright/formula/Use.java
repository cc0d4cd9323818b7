package lyewright.formula;

/** What the bars are for. */
public enum Use {
    /** Own use: free to tinker. */
    OWN("own"),
    /** For sale: bound to an assessment. */
    SALE("sale");

    private final String word;

    Use(String word) {
        this.word = word;
    }

    /**
     * As written.
     *
     * @return own or sale
     */
    public String word() {
        return word;
    }
}
