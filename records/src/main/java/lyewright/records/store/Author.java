package lyewright.records.store;

import java.util.Optional;

/**
 * Who does something, and where.
 *
 * @param person the id of who does it
 * @param device the id of the device; empty for the computer that Lyewright runs on
 */
public record Author(String person, Optional<String> device) {

    /** Whoever sits at the computer that Lyewright runs on: its maker, who is always there. */
    public static final Author DESK = new Author("00000000-0000-7000-8000-000000000001", Optional.empty());

    /** Whether it is the maker who is always there, at whichever device. */
    public boolean isFirst() {
        return person.equals(DESK.person());
    }
}
