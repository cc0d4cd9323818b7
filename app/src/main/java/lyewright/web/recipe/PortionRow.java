package lyewright.web.recipe;

/**
 * One portion of the base batter.
 *
 * @param name what it is called
 * @param share such as {@code 60 %} or {@code rest}
 */
public record PortionRow(String name, String share) {

    static final PortionRow EMPTY = new PortionRow("", "");

    boolean isEmpty() {
        return name.isBlank() && share.isBlank();
    }
}
