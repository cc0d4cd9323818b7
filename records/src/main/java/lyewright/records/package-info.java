/**
 * What the workshop keeps: recipes, what is being typed, equipment, settings, materials and photographs, on SQLite or PostgreSQL.
 *
 * <p>Lives here: {@link lyewright.records.Records}, which opens a {@link lyewright.records.Place} and hands out a door for each feature.
 * Each door lives in a package of its own below this one and keeps its rows package-private. {@code store} is what they all are built
 * on.
 *
 * <p>May use: the engine. Used by: the application.
 *
 * <p>Change freely: whatever is behind a door. Change with a decision record: a door, and what is stored, for all that
 * was kept before has to stay readable.
 */
@NullMarked
package lyewright.records;

import org.jspecify.annotations.NullMarked;
