/**
 * The chain that a workshop's ledger hangs in: each entry's seal is reckoned over the one before it, so that an edit of any entry
 * breaks every seal after it.
 *
 * <p>Lives here: {@link lyewright.chain.Entry}, {@link lyewright.chain.Chain}, which seals and verifies; {@link
 * lyewright.chain.Finding}, what verifying found.
 *
 * <p>What it shows: edits since a head that somebody else holds, on paper or in a backup. What it cannot show: that an entry was true
 * when it was made, or an edit by somebody who also sealed everything after it anew, where nobody holds a head.
 *
 * <p>May use: measure. Used by: records, the application.
 *
 * <p>Change freely: words. Never changed: what a seal is reckoned over; it is told in docs/guide/ledger.md.
 */
@NullMarked
package lyewright.chain;

import org.jspecify.annotations.NullMarked;
