package lyewright.records.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import lyewright.measure.Outcome;
import lyewright.records.RecordsTrouble;
import lyewright.records.file.FileShelf;
import lyewright.records.store.Database;
import lyewright.records.store.Staging;

/**
 * Everything in one file, and back. A backup is of one moment, whatever is written meanwhile. It is checked wholly before anything is
 * touched, then put in the place of what is there in one transaction. It goes from either kind of database to either.
 */
public final class Backups {

    private final Database database;
    private final FileShelf shelf;
    private final Path workplace;

    /** The backups of a database with its files; the records open them. */
    public Backups(Database database, Path files, Path workplace) {
        this.database = database;
        this.shelf = new FileShelf(files);
        this.workplace = workplace;
    }

    /**
     * Writes a backup.
     *
     * @param out where to; it stays open
     * @throws IOException when it cannot be written there; what was written is no backup then
     */
    public void write(OutputStream out) throws IOException {
        try {
            database.read(handle -> {
                try {
                    new BackupWriter(handle.getConnection(), shelf, out).write(Staging.schemaVersion(), database.now());
                    return true;
                } catch (SQLException e) {
                    throw database.meaning(e);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /**
     * Checks a backup, every byte of it.
     *
     * @param backup the file
     * @return what is in it, or what is wrong with it
     */
    public static Outcome<BackupContents> check(Path backup) {
        return BackupFile.open(backup).then(file -> {
            try (file) {
                return file.check();
            }
        });
    }

    /**
     * Puts a backup in the place of everything that is kept.
     *
     * @param backup the file
     * @return what is there now, or what is wrong with the file; nothing was touched then
     */
    public Outcome<Restored> restore(Path backup) {
        return BackupFile.open(backup).then(file -> {
            try (file) {
                return file.check().then(contents -> restore(file, contents));
            }
        });
    }

    private Outcome<Restored> restore(BackupFile file, BackupContents contents) {
        try {
            Files.createDirectories(workplace);
            if (Files.getFileStore(workplace).getUsableSpace() / 3 < contents.bytes()) {
                return Outcome.refused(
                        "there is not enough room on the disk to put this backup back", "make room and try again");
            }
            try (Staging staging = Staging.in(workplace, file.manifest().schema())) {
                return new RowReader(file, staging).read().then(rows -> swap(file, staging, contents));
            }
        } catch (IOException e) {
            throw new RecordsTrouble(
                    "the backup could not be unpacked",
                    "see that there is room on the disk and leave to write to it",
                    e);
        } catch (SQLException e) {
            throw database.meaning(e);
        }
    }

    /** The photographs first: they harm nobody while nothing says that they are there. */
    private Outcome<Restored> swap(BackupFile file, Staging staging, BackupContents contents) {
        try {
            file.putFiles(shelf);
            staging.update();
            database.replaceAll(TableOrder.TABLES, staging);
            return Outcome.ok(new Restored(contents));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
