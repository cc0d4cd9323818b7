package lyewright.records.people;

import java.time.Instant;
import java.util.OptionalInt;
import lyewright.records.store.Author;

/**
 * What somebody did.
 *
 * @param at when
 * @param author who, and at which device
 * @param deed what
 * @param thingId to which of those things
 * @param version to which version of it, where it has versions
 */
public record SignedLine(Instant at, Author author, Deed deed, String thingId, OptionalInt version) {}
