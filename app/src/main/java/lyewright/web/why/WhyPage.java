package lyewright.web.why;

import lyewright.web.Frame;
import lyewright.web.make.MakeChoice;

/**
 * A figure's reason on a page of its own.
 *
 * @param frame around it
 * @param recipe whose sheet it is
 * @param version which version
 * @param choice the sheet
 * @param reason the reason
 */
public record WhyPage(Frame frame, String recipe, int version, MakeChoice choice, ReasonShown reason) {}
