package lyewright.records.backup;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A backup that is in its place.
 *
 * @param contents what was in it, and is now all that is kept
 * @param before a backup of what it took the place of, by which that comes back; none where nothing was kept
 */
public record Restored(BackupContents contents, Optional<Path> before) {}
