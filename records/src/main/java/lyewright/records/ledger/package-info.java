/**
 * The ledger: everything that must not be altered afterwards, one entry after the other, each sealed over the one before.
 *
 * <p>Lives here: {@link lyewright.records.ledger.Ledger}, the door; {@link lyewright.records.ledger.LedgerBook}, by which other rooms
 * of the records write within their own transaction; {@link lyewright.records.ledger.EntryText}, what an entry tells, as text.
 *
 * <p>May use: the engine's chain, people, {@code lyewright.records.store}. Used by: stock and everything that comes after it, the
 * application.
 *
 * <p>Change freely: whatever is package-private. Never changed: what is sealed.
 */
@NullMarked
package lyewright.records.ledger;

import org.jspecify.annotations.NullMarked;
