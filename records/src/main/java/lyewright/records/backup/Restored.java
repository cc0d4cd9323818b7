package lyewright.records.backup;

/**
 * A backup that is in its place.
 *
 * @param contents what was in it, and is now all that is kept
 */
public record Restored(BackupContents contents) {}
