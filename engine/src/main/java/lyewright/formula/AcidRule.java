package lyewright.formula;

/** What is done about additions that take alkali: acids, bicarbonate, the fat of milk. */
public enum AcidRule {
    /** More alkali, so that the superfat stays as asked. */
    COMPENSATE("compensate"),
    /** The alkali stays, so that the superfat rises. */
    AS_WRITTEN("as written");

    private final String word;

    AcidRule(String word) {
        this.word = word;
    }

    /**
     * As written.
     *
     * @return compensate, or as written
     */
    public String word() {
        return word;
    }
}
