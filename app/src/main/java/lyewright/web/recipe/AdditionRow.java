package lyewright.web.recipe;

/**
 * One addition.
 *
 * @param of its key or common name
 * @param amount such as {@code 2 % of oils}
 * @param stage when it goes in
 * @param in what it is wetted out in, if it is
 * @param ratio liquid to powder
 * @param ahead how long before
 * @param replaces water, where it is a liquid in place of some
 * @param was its place in the formula that the remarks belong to; empty for a row that is new
 */
public record AdditionRow(
        String of, String amount, String stage, String in, String ratio, String ahead, String replaces, String was) {

    static final AdditionRow EMPTY = new AdditionRow("", "", "trace", "", "", "", "", "");

    /** A stage alone adds nothing. */
    boolean isEmpty() {
        return of.isBlank() && amount.isBlank() && replaces.isBlank() && !isDispersed();
    }

    /** Whether it says more than what, how much and when. */
    public boolean isTold() {
        return isDispersed() || !replaces.isBlank();
    }

    boolean isDispersed() {
        return !in.isBlank() || !ratio.isBlank() || !ahead.isBlank();
    }
}
