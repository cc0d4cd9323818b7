package lyewright.web.why;

import lyewright.web.Frame;

/**
 * The figures of a sheet on a page.
 *
 * @param frame around it
 * @param recipe whose sheet it is
 * @param version which version
 * @param list the figures
 */
public record FiguresPage(Frame frame, String recipe, int version, FigureList list) {}
