/**
 * What the workshop keeps: recipes, equipment, stock, batches and sales, in a database.
 *
 * <p>Lives here: nothing yet; the package holds the room's place. Each feature will have one public door, in a package
 * of its own below this one, and keep its rows package-private.
 *
 * <p>May use: the engine. Used by: the application.
 *
 * <p>Change freely: whatever is behind a door. Change with a decision record: a door, and what is stored, for all that
 * was kept before has to stay readable.
 */
@NullMarked
package lyewright.records;

import org.jspecify.annotations.NullMarked;
