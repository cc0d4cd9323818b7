package lyewright.web.people;

import java.util.List;
import lyewright.web.Frame;

/**
 * The page that asks a stranger who they are.
 *
 * @param frame around it
 * @param signIn whether by name and password; by a code where not
 * @param code as it was typed
 * @param name what the device is to be called, or who signs in
 * @param on where to go then
 * @param troubles what is wrong, as sentences
 * @param secret whether what is sent cannot be read on the way
 */
public record StrangerPage(
        Frame frame, boolean signIn, String code, String name, String on, List<String> troubles, boolean secret) {

    /** Copies its list. */
    public StrangerPage {
        troubles = List.copyOf(troubles);
    }

    /** The same, told what is wrong. */
    StrangerPage with(List<String> wrong) {
        return new StrangerPage(frame, signIn, code, name, on, wrong, secret);
    }
}
