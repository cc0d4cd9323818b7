package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;
import lyewright.web.TextField;
import lyewright.words.Labelled;

/**
 * Making a lot of others.
 *
 * @param frame around it
 * @param token tells this from anything sent before
 * @param name what is made
 * @param parts of what
 * @param lots that can be taken from
 * @param water field
 * @param day field
 * @param bestBefore field
 * @param far whether that is right though it is far off
 * @param asks whether it is asked if so strong a lye is right
 * @param sure whether it was said that it is
 * @param troubles what is wrong that belongs to no field
 */
public record MadePage(
        Frame frame,
        String token,
        TextField name,
        List<Part> parts,
        List<Labelled> lots,
        TextField water,
        TextField day,
        TextField bestBefore,
        DeliveryPage.Ask far,
        boolean asks,
        boolean sure,
        List<String> troubles) {

    /** Copies its lists. */
    public MadePage {
        parts = List.copyOf(parts);
        lots = List.copyOf(lots);
        troubles = List.copyOf(troubles);
    }

    /**
     * So much of a lot.
     *
     * @param number from 1
     * @param lot the id of the lot that is chosen, or empty
     * @param amount field
     */
    public record Part(int number, String lot, TextField amount) {}
}
