package lyewright.web.stores;

import java.util.List;
import java.util.Optional;
import lyewright.picture.Drawing;
import lyewright.web.Frame;

/**
 * What is it? The first question where the answer says what else is asked.
 *
 * @param frame around it
 * @param title the question
 * @param groups the answers
 */
public record KindsPage(Frame frame, String title, List<Group> groups) {

    /** Copies its list. */
    public KindsPage {
        groups = List.copyOf(groups);
    }

    /**
     * Answers that belong together.
     *
     * @param label above them, perhaps empty
     * @param kinds the answers
     */
    public record Group(String label, List<Kind> kinds) {
        /** Copies its list. */
        public Group {
            kinds = List.copyOf(kinds);
        }

        /** Whether any of them has a shape. */
        public boolean pictured() {
            return kinds.stream().anyMatch(kind -> kind.drawing().isPresent());
        }
    }

    /**
     * One answer.
     *
     * @param label what it is called
     * @param what what it is
     * @param address where it leads
     * @param drawing what it looks like, if it has a shape
     */
    public record Kind(String label, String what, String address, Optional<Drawing> drawing) {}
}
