package lyewright.web.start;

import lyewright.web.Frame;

/**
 * The notebook's page.
 *
 * @param frame around it
 * @param notebook what it shows
 */
public record NotebookPage(Frame frame, NotebookView notebook) {}
