/**
 * The first minutes: the page before there is a workshop, a recipe typed as it stands in a notebook with its answer while it
 * is typed, and the demo workshop to look round.
 *
 * <p>Lives here: {@link lyewright.web.start.Start}, whose pages they are; {@link lyewright.web.start.DemoWorkshop}, which fills the
 * demo workshop.
 *
 * <p>May use: engine, records, words, picture, template, {@code lyewright.web}, web.make (which finds figures in sentences), web.recipe.
 * Used by: web.why, app.
 *
 * <p>Change freely: page models, wording, what the demo workshop holds. Keep: what is typed comes back as it was typed, and a
 * notebook is answered before anything else is asked.
 */
@NullMarked
package lyewright.web.start;

import org.jspecify.annotations.NullMarked;
