/**
 * Why: the formula, inputs and sources of one figure of a sheet, as a page or beside the figure, and a list of all figures.
 *
 * <p>Lives here: {@link lyewright.web.why.WhyPages} (the addresses), {@link lyewright.web.why.ReasonShown} and {@link
 * lyewright.web.why.FigureList} (what they show).
 *
 * <p>What is being typed is asked about with its form: {@link lyewright.web.why.TypedWhy}.
 *
 * <p>May use: web, web.make (which turns a choice into its sheet), web.recipe and web.start (which read what is typed), picture,
 * words, engine. Used by: app.
 *
 * <p>Change freely: everything but the names of the parameters, which other pages link to.
 */
@NullMarked
package lyewright.web.why;

import org.jspecify.annotations.NullMarked;
