/**
 * Who works here. Names of people are kept here and nowhere else; everything else holds their ids.
 *
 * <p>Lives here: {@link lyewright.records.people.People}, the door; {@link lyewright.records.people.Author}, who did something and at
 * which device.
 *
 * <p>May use: the engine's measures, {@code lyewright.records.store}. Used by: ledger, stock, the application.
 *
 * <p>Change freely: whatever is package-private.
 */
@NullMarked
package lyewright.records.people;

import org.jspecify.annotations.NullMarked;
