/**
 * Photographs and documents: files that lie beside the database under the name of their content.
 *
 * <p>Lives here: {@link lyewright.records.file.Photographs}, the door; {@link lyewright.records.file.DocumentFiles}, the files of
 * documents, which other rooms attach to what they keep.
 *
 * <p>May use: the engine's measures, {@code lyewright.records.store}. Used by: stock, backups, the application.
 *
 * <p>Change freely: whatever is package-private. Change with a decision record: how a file is named and when it counts as kept.
 */
@NullMarked
package lyewright.records.file;

import org.jspecify.annotations.NullMarked;
