/**
 * Recipes: their pages, the editor, and the form that a formula is edited in.
 *
 * <p>Lives here: {@link lyewright.web.recipe.FormulaForm}, a formula as the texts of the editor's fields, whatever was typed; how it
 * becomes a formula and back; how it is kept between two keystrokes.
 *
 * <p>May use: engine, records, words, picture, template, and the frame of the pages. Used by: other rooms of web, app.
 *
 * <p>Change freely: page models and routes. Change with care: the names of fields, which drafts are kept under.
 */
@NullMarked
package lyewright.web.recipe;

import org.jspecify.annotations.NullMarked;
