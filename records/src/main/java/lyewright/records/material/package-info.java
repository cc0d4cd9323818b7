/**
 * Materials of the maker's own, kept for every recipe.
 *
 * <p>Lives here: {@link lyewright.records.material.OwnMaterials}, the door.
 *
 * <p>May use: the engine's formulas, {@code lyewright.records.store}. Used by: the application.
 *
 * <p>Change freely: whatever is package-private. Change with a decision record: the form a material is kept in.
 */
@NullMarked
package lyewright.records.material;

import org.jspecify.annotations.NullMarked;
