package lyewright.records.people;

import lyewright.records.store.Author;

/**
 * Somebody who works here.
 *
 * @param id its id
 * @param name what they are called
 * @param role what they may do
 */
public record Person(String id, String name, Role role) {

    /** Whether they are the maker at the computer that Lyewright runs on, who is always there. */
    public boolean isFirst() {
        return id.equals(Author.DESK.person());
    }
}
