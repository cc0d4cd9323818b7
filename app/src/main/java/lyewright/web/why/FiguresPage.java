package lyewright.web.why;

import lyewright.web.Frame;

/**
 * The figures of a sheet on a page.
 *
 * @param frame around it
 * @param asked whose figures they are
 * @param list the figures
 */
public record FiguresPage(Frame frame, WhyAsked asked, FigureList list) {}
