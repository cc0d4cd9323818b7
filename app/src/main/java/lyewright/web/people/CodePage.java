package lyewright.web.people;

import java.util.List;
import lyewright.web.Frame;

/**
 * A code, to be typed at the device that is to come in.
 *
 * @param frame around it
 * @param ref the page's name
 * @param code in groups of four
 * @param who for whom, with what they may do
 * @param personId of them
 * @param fate what became of it, in one word: open, used, over, void
 * @param told what there is to say of that
 * @param addresses what to type at the device first
 * @param pictures each address, with the code in it, as squares for a camera
 * @param secret whether what is sent cannot be read on the way
 */
public record CodePage(
        Frame frame,
        String ref,
        String code,
        String who,
        String personId,
        String fate,
        String told,
        List<String> addresses,
        List<QrPicture> pictures,
        boolean secret) {

    /** Copies its lists. */
    public CodePage {
        addresses = List.copyOf(addresses);
        pictures = List.copyOf(pictures);
    }
}
