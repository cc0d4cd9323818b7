package lyewright.web.recipe;

import lyewright.picture.Drawing;

/**
 * One of two that are compared.
 *
 * @param letter A or B
 * @param name the recipe's name in that version
 * @param version its number
 * @param address of its page
 * @param use what it is for
 * @param oils on a line
 * @param basis for how much its figures are
 * @param mark drawn of its oils
 * @param stopped whether it is not to be made as it stands
 */
public record CompareSide(
        String letter,
        String name,
        int version,
        String address,
        String use,
        String oils,
        String basis,
        Drawing mark,
        boolean stopped) {}
