package lyewright.web.stores;

import lyewright.web.Frame;

/**
 * What stands where something was removed.
 *
 * @param frame around it
 * @param name what it was called
 * @param putBack where it is put back
 */
public record RemovedPage(Frame frame, String name, String putBack) {}
