package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;

/**
 * What a certificate of a lot would gain.
 *
 * @param frame around it
 * @param code the lot's
 * @param item what it is a lot of
 * @param address of the lot
 * @param gains recipe by recipe; none where nothing would be gained
 */
public record GainPage(Frame frame, String code, String item, String address, List<Gain> gains) {

    /** Copies its list. */
    public GainPage {
        gains = List.copyOf(gains);
    }

    /**
     * For a recipe.
     *
     * @param recipe its name
     * @param address its page
     * @param says what the superfat is narrowed to
     */
    public record Gain(String recipe, String address, String says) {}
}
