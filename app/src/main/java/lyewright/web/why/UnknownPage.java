package lyewright.web.why;

import java.util.List;
import lyewright.web.Frame;
import lyewright.web.make.MakeChoice;

/**
 * A figure that the sheet has not.
 *
 * @param frame around it
 * @param choice the sheet
 * @param what what is wrong
 * @param near figures that may have been meant
 */
public record UnknownPage(Frame frame, MakeChoice choice, String what, List<FigureList.Line> near) {

    /** Copies its list. */
    public UnknownPage {
        near = List.copyOf(near);
    }
}
