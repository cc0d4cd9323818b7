/**
 * Recipes, their versions, and what is still being typed.
 *
 * <p>Lives here: {@link lyewright.records.recipe.RecipeBook} and {@link lyewright.records.recipe.Drafts}, the doors; rows and SQL behind
 * them.
 *
 * <p>May use: the engine's formulas, {@code lyewright.records.store}. Used by: the application.
 *
 * <p>Change freely: whatever is package-private. Change with a decision record: when a version may still be altered, what an
 * import does.
 */
@NullMarked
package lyewright.records.recipe;

import org.jspecify.annotations.NullMarked;
