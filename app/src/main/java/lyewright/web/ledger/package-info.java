/**
 * The ledger as pages: its head, whether it is whole, its entries in words, and its head on paper.
 *
 * <p>Lives here: {@link lyewright.web.ledger.LedgerPages}, the addresses; {@code EntryWords}, what an entry tells.
 *
 * <p>May use: web, words, the records, the engine's chain. Used by: app; other pages link to {@code /ledger}.
 *
 * <p>Change freely: all but what a seal shows and what it cannot, which says no more than {@code docs/guide/ledger.md}.
 */
@NullMarked
package lyewright.web.ledger;

import org.jspecify.annotations.NullMarked;
