/**
 * Who works here, at which devices, and what they did. Names of people are kept here and nowhere else; everything else holds their ids.
 *
 * <p>Lives here: the doors {@link lyewright.records.people.People}, {@link lyewright.records.people.Devices},
 * {@link lyewright.records.people.Passwords} and {@link lyewright.records.people.Signatures};
 * {@link lyewright.records.people.Signed}, by which every write that no ledger is of is judged and signed.
 *
 * <p>May use: the engine's measures, {@code lyewright.records.store}. Used by: every room of the records that writes, the application.
 *
 * <p>Change freely: whatever is package-private. Change with a decision record: what a helper may do, how tokens and passwords are kept.
 */
@NullMarked
package lyewright.records.people;

import org.jspecify.annotations.NullMarked;
