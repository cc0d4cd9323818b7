package lyewright.web.people;

import java.util.List;
import lyewright.web.Frame;

/**
 * Who somebody is here.
 *
 * @param frame around it
 * @param name what they are called
 * @param may what they may do, a sentence
 * @param device what their device is called
 * @param password whether they have a password to change
 * @param troubles what is wrong with a new one, as sentences
 */
public record MePage(Frame frame, String name, String may, String device, boolean password, List<String> troubles) {

    /** Copies its list. */
    public MePage {
        troubles = List.copyOf(troubles);
    }
}
