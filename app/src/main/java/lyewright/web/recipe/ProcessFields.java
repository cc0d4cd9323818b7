package lyewright.web.recipe;

/**
 * How a formula is made.
 *
 * @param make cold, oven or cooked; empty means cold
 * @param oils the oils' temperature
 * @param lye the lye's temperature
 * @param oven such as {@code 55 C then off}
 * @param pour such as {@code fade plain into kelp in 7}
 */
public record ProcessFields(String make, String oils, String lye, String oven, String pour) {

    static final ProcessFields EMPTY = new ProcessFields("", "", "", "", "");
}
