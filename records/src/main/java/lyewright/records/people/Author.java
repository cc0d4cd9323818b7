package lyewright.records.people;

import java.util.Optional;

/**
 * Who does something, and where.
 *
 * @param person the id of who does it
 * @param device the id of the device; empty for the computer that Lyewright runs on
 */
public record Author(String person, Optional<String> device) {}
