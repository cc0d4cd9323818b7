/**
 * How fast a making sheet is, beside a spreadsheet engine and bare arithmetic that compute the same figures.
 *
 * <p>Lives here: {@link lyewright.benchmarks.MakingSheetBenchmark}, {@link lyewright.benchmarks.SpreadsheetBenchmark} and
 * {@link lyewright.benchmarks.StraightLineBenchmark}; {@link lyewright.benchmarks.Main} runs them and holds their medians
 * against the targets in docs/performance.md. Before any is timed, workbook and bare arithmetic must give the sheet's
 * figures ({@link lyewright.benchmarks.Answers}).
 *
 * <p>May use: the engine. Used by: nothing.
 *
 * <p>Change freely: everything. The formula that is measured is the one the targets are stated for; another one needs
 * its own name.
 */
@NullMarked
package lyewright.benchmarks;

import org.jspecify.annotations.NullMarked;
