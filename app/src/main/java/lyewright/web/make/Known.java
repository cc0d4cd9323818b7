package lyewright.web.make;

/**
 * A figure of the sheet that has a reason.
 *
 * @param path as {@code why} knows it
 * @param value unrounded
 * @param unit that must stand behind it in a sentence; empty where none does
 */
public record Known(String path, double value, String unit) {

    /** Grams. */
    public static Known grams(String path, double value) {
        return new Known(path, value, "g");
    }

    /** Percent. */
    public static Known percent(String path, double value) {
        return new Known(path, value, "%");
    }
}
