package lyewright.web.recipe;

import java.util.Optional;
import lyewright.picture.Drawing;
import lyewright.picture.Picture;

/**
 * One of two that are compared.
 *
 * @param letter A or B
 * @param name the recipe's name in that version
 * @param version its number
 * @param address of its page
 * @param use what it is for
 * @param oils on a line
 * @param mark drawn of its oils
 * @param superfat of a kilogram's sheet, percent
 * @param stopped whether it is not to be made as it stands
 * @param band how sure its superfat is
 * @param acids its fatty acids
 */
public record CompareSide(
        String letter,
        String name,
        int version,
        String address,
        String use,
        String oils,
        Drawing mark,
        String superfat,
        boolean stopped,
        Picture band,
        Picture acids) {

    /** Its page's address and words; the letter is said before it. */
    public Optional<String> warning() {
        return stopped ? Optional.of("Not to be made as it stands.") : Optional.empty();
    }
}
