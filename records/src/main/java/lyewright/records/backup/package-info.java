/**
 * Backups: everything a workshop keeps in one file, written while it works and put back as a whole.
 *
 * <p>Lives here: {@link lyewright.records.backup.Backups}, the door; the format is written in {@code docs/decisions/0015-what-is-kept-and-how.md}.
 *
 * <p>May use: the engine's formulas and chain, {@code lyewright.records.store}, {@code lyewright.records.file}, the
 * ledger's head. Used by: the application.
 *
 * <p>Change freely: how it is done. Change with a decision record: the format, for every backup ever written has to stay readable.
 */
@NullMarked
package lyewright.records.backup;

import org.jspecify.annotations.NullMarked;
