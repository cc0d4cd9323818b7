package lyewright.web.start;

import lyewright.web.Frame;
import lyewright.web.Notice;

/**
 * The first page: a notebook, and two other ways to begin.
 *
 * @param frame around it
 * @param notebook the notebook on it
 * @param mine the form to start a workshop with
 * @param hasMine whether the maker's own workshop is started already
 * @param showsDemo whether the demo workshop is shown now
 */
public record StartPage(Frame frame, NotebookView notebook, WorkshopForm mine, boolean hasMine, boolean showsDemo) {

    StartPage telling(Notice notice) {
        return new StartPage(frame.telling(notice), notebook, mine, hasMine, showsDemo);
    }
}
