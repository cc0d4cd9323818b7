package lyewright.chain;

import java.util.Optional;

/**
 * One entry of the ledger, as it was written.
 *
 * @param number its place: 1, 2, 3 and on, without a gap
 * @param atEpochMs when, milliseconds since 1970 in UTC; a clock that was set back may put it before the one before
 * @param person the id of who did it
 * @param device the id of the device it was done at; empty for the computer it runs on
 * @param kind what sort of thing it tells, such as {@code stock move}
 * @param text all that it tells, as it is kept; what it names by SHA-256 (documents) is sealed with it
 */
public record Entry(long number, long atEpochMs, String person, Optional<String> device, String kind, String text) {}
