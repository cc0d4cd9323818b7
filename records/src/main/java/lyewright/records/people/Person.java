package lyewright.records.people;

/**
 * Somebody who works here.
 *
 * @param id its id
 * @param name what they are called
 * @param role what they may do
 */
public record Person(String id, String name, Role role) {}
