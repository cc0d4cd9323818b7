package lyewright.web.why;

import lyewright.web.Frame;

/**
 * Why a figure changes, on a page of its own.
 *
 * @param frame around it
 * @param back where the two are compared
 * @param reason the reason
 */
public record ChangePage(Frame frame, String back, ReasonShown reason) {}
