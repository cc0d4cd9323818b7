package lyewright.web.recipe;

/**
 * A figure with its words, leading to why it is that.
 *
 * @param label what it is
 * @param value the figure with its unit
 * @param why where it says why; empty where nothing more can be said
 * @param setIn whether it is part of the line above that has it not
 */
public record Told(String label, String value, String why, boolean setIn) {

    static Told of(String label, String value, String why) {
        return new Told(label, value, why, false);
    }

    static Told partOf(String label, String value, String why) {
        return new Told(label, value, why, true);
    }
}
