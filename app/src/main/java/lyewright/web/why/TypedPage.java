package lyewright.web.why;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.web.Frame;

/**
 * Why a figure of what is being typed is what it is.
 *
 * @param frame around it
 * @param form the id of the form that holds what is typed
 * @param back where the typing goes on
 * @param press the button that goes back, name and value
 * @param fields what is typed, by field
 * @param reason the reason; empty where it cannot be reckoned
 * @param troubles why it cannot
 */
public record TypedPage(
        Frame frame,
        String form,
        String back,
        Map.Entry<String, String> press,
        Map<String, List<String>> fields,
        Optional<ReasonShown> reason,
        List<String> troubles) {

    /** Copies its list. */
    public TypedPage {
        troubles = List.copyOf(troubles);
    }
}
