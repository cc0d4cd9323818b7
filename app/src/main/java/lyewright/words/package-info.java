/**
 * How sheets are said: figures with their units, the steps of making, cautions in their order, what a bar consists of, in
 * sentences and rows that know nothing of terminals, pages or paper.
 *
 * <p>May use: engine. Used by: cli, picture, print, web.
 *
 * <p>Change freely: wording and layout of rows, as long as every figure comes from the sheet. No business rule lives here.
 */
@NullMarked
package lyewright.words;

import org.jspecify.annotations.NullMarked;
