package lyewright.web.why;

import lyewright.web.Frame;

/**
 * A figure's reason on a page of its own.
 *
 * @param frame around it
 * @param asked whose figure it is
 * @param reason the reason
 */
public record WhyPage(Frame frame, WhyAsked asked, ReasonShown reason) {}
