package lyewright.web.ledger;

import lyewright.web.Frame;

/**
 * A head to be kept on paper.
 *
 * @param frame around it
 * @param workshop whose
 * @param head as it is printed
 * @param count how many entries
 * @param when it was so
 */
public record HeadPaper(Frame frame, String workshop, String head, long count, String when) {}
