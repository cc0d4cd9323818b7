/**
 * Photographs, and later documents: files that lie beside the database under the name of their content.
 *
 * <p>Lives here: {@link lyewright.records.file.Photographs}, the door.
 *
 * <p>May use: {@code lyewright.records.store}. Used by: the application.
 *
 * <p>Change freely: whatever is package-private. Change with a decision record: how a file is named and when it counts as kept.
 */
@NullMarked
package lyewright.records.file;

import org.jspecify.annotations.NullMarked;
