package lyewright.web.stores;

import lyewright.web.Frame;

/**
 * The tables, searched.
 *
 * @param frame around it
 * @param edition of the tables
 * @param found what was found
 */
public record TablesPage(Frame frame, String edition, TablesFound found) {}
