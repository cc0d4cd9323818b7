/**
 * The cupboard as CSV files: read in, and written out.
 *
 * <p>Lives here: the doors {@link lyewright.records.csv.CsvFile}, which understands a file and says how, {@link
 * lyewright.records.csv.CsvImport}, which holds its rows against the cupboard, and {@link lyewright.records.csv.StockFiles}, which
 * writes everything out with a dictionary of its columns. Reading is pure: bytes and a choice in, rows and what is wrong out.
 *
 * <p>May use: the engine, {@code lyewright.records.stock}, people and the records' door, Commons CSV for the format itself. Used by:
 * the application's pages and commands.
 *
 * <p>Change freely: whatever is package-private. Keep: what is written out is read in again as "already there".
 */
@NullMarked
package lyewright.records.csv;

import org.jspecify.annotations.NullMarked;
