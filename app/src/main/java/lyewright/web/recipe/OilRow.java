package lyewright.web.recipe;

/**
 * One oil.
 *
 * @param name its key or common name
 * @param amount such as {@code 350 g}, {@code 80 %} or {@code rest}
 */
public record OilRow(String name, String amount) {

    static final OilRow EMPTY = new OilRow("", "");

    boolean isEmpty() {
        return name.isBlank() && amount.isBlank();
    }
}
