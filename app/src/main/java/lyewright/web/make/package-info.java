/**
 * Make: a recipe, a mould and how much become the sheet to work from; what another oil in its place would do; print and paper.
 *
 * <p>Lives here: {@link lyewright.web.make.MakePages} (the addresses), {@link lyewright.web.make.MakeChoice} (what was chosen, as
 * text), {@link lyewright.web.make.Workbench} (which turns a choice into a sheet with what the workshop has).
 *
 * <p>May use: web, web.recipe, print, picture, words, records, engine. Used by: web.start, web.why, app.
 *
 * <p>Change freely: everything but the names of the parameters, which makers keep as bookmarks.
 */
@NullMarked
package lyewright.web.make;

import org.jspecify.annotations.NullMarked;
