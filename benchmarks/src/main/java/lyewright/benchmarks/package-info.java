/**
 * How fast a making sheet is, beside a spreadsheet engine and bare arithmetic that compute the same figures; and how fast the
 * interval of its superfat is drawn, beside a bare loop that draws as many random numbers.
 *
 * <p>Lives here: {@link lyewright.benchmarks.MakingSheetBenchmark}, {@link lyewright.benchmarks.SpreadsheetBenchmark} and
 * {@link lyewright.benchmarks.StraightLineBenchmark}; {@link lyewright.benchmarks.BandBenchmark}, {@link
 * lyewright.benchmarks.DrawingBenchmark} and {@link lyewright.benchmarks.DrawingRoomBenchmark}. {@link
 * lyewright.benchmarks.Main} runs them and holds their medians against the {@link lyewright.benchmarks.Targets} in
 * docs/performance.md. Before any is timed, workbook and bare arithmetic must give the sheet's figures ({@link
 * lyewright.benchmarks.Answers}), and the intervals those of many more draws. {@link lyewright.makingsheet.SheetDraws}, a way
 * into the engine's room, lives here too. {@link lyewright.benchmarks.ManyLots} fills a cupboard with ten years of moves and times
 * its verifying.
 *
 * <p>May use: the engine. Used by: nothing.
 *
 * <p>Change freely: everything. The formula that is measured is the one the targets are stated for; another one needs
 * its own name.
 */
@NullMarked
package lyewright.benchmarks;

import org.jspecify.annotations.NullMarked;
