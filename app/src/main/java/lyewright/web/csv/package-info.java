/**
 * The cupboard in and out as CSV: a file is chosen or pasted, shown as it was understood, and taken in; everything is written out.
 *
 * <p>Lives here: {@link lyewright.web.csv.CsvPages}, the door.
 *
 * <p>May use: records (what a file says is read there), template, and the frame in {@code lyewright.web}. Used by: app.
 *
 * <p>Change freely: everything package-private, and the templates below {@code jte/csv}. Keep: nothing is taken in that was not shown
 * first.
 */
@NullMarked
package lyewright.web.csv;

import org.jspecify.annotations.NullMarked;
