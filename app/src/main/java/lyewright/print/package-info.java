/**
 * Paper: documents as PDF. They say the same words as pages and have templates of their own, in src/main/jte/print.
 *
 * <p>Lives here: {@link lyewright.print.SheetPaper}, the door for a making sheet; the typeface that every paper embeds; the press
 * that turns a well-formed page into a PDF without looking at anything outside the application.
 *
 * <p>May use: engine, words, picture, template. Used by: web, cli.
 *
 * <p>Change freely: layout. Keep: every weighed mass that a page shows is on the paper too.
 */
@NullMarked
package lyewright.print;

import org.jspecify.annotations.NullMarked;
