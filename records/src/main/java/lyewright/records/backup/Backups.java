package lyewright.records.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.chain.Chain;
import lyewright.measure.Outcome;
import lyewright.records.RecordsTrouble;
import lyewright.records.file.FileShelf;
import lyewright.records.ledger.EntryText;
import lyewright.records.ledger.Head;
import lyewright.records.ledger.Ledger;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.stock.CodesGiven;
import lyewright.records.store.Author;
import lyewright.records.store.Database;
import lyewright.records.store.Staging;
import org.jdbi.v3.core.Handle;

/**
 * Everything in one file, and back. A backup is of one moment, whatever is written meanwhile. It is checked wholly before anything is
 * touched, then put in the place of what is there in one transaction. It goes from either kind of database to either.
 */
public final class Backups {

    /** How the name of a backup ends. */
    public static final String ENDING = ".lyewright";

    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS", Locale.ROOT).withZone(ZoneOffset.UTC);

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
                    new BackupWriter(handle.getConnection(), shelf, out)
                            .write(Staging.schemaVersion(), database.now(), Ledger.head(handle));
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
     * Writes a backup to a file that is not there yet. It has its name only once it is whole and on the disk.
     *
     * @param file where to
     * @return what is in it, read back; or why it was not written
     */
    public Outcome<BackupContents> write(Path file) {
        if (Files.exists(file)) {
            return Outcome.refused("there is a file " + file + " already", "name one that is not there yet");
        }
        try (BackupTarget target = BackupTarget.beside(file)) {
            write(target.out());
            target.done();
        } catch (IOException e) {
            return Outcome.refused(
                    file + " cannot be written",
                    "see that its folder is there, that you may write to it and that there is room");
        }
        return check(file);
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
     * What of the ledger a restore would lose.
     *
     * @param backup the file
     * @return that, or what is wrong with the file
     */
    public Outcome<Overtaken> overtaken(Path backup) {
        return BackupFile.open(backup).then(file -> {
            try (file) {
                return file.check().then(contents -> Outcome.ok(overtaken(file)));
            }
        });
    }

    private Overtaken overtaken(BackupFile file) {
        List<String> seals = new ArrayList<>();
        Head here = database.read(handle -> {
            seals.addAll(Ledger.seals(handle));
            return Ledger.head(handle);
        });
        try {
            Head none = new Head(0, Chain.BEFORE_ALL);
            long common = file.ledger().common(seals);
            Head told = isToldOfLater(common)
                    ? here
                    : new Head(common, common == 0 ? Chain.BEFORE_ALL : seals.get((int) common - 1));
            return new Overtaken(told, file.manifest().ledger().orElse(none), common);
        } catch (IOException e) {
            throw unpacking(e);
        }
    }

    /** Whether the ledger goes on from an entry with anything but restores: undoing one of those loses nothing. */
    private boolean isToldOfLater(long number) {
        return database.read(handle ->
                handle.createQuery("SELECT count(*) FROM ledger_entry WHERE number > :number AND kind <> :restore")
                                .bind("number", number)
                                .bind("restore", CodesGiven.RESTORE)
                                .mapTo(Long.class)
                                .one()
                        > 0);
    }

    /**
     * Puts a backup in the place of everything that is kept. Refused where entries of the ledger would be lost.
     *
     * @param backup the file
     * @return what is there now, or what is wrong with the file; nothing was touched then
     */
    public Outcome<Restored> restore(Path backup) {
        return restore(backup, false);
    }

    /** The same, though entries of the ledger are lost: somebody was told of them and wants that. */
    public Outcome<Restored> restoreOverNewer(Path backup) {
        return restore(backup, true);
    }

    private Outcome<Restored> restore(Path backup, boolean overNewer) {
        return BackupFile.open(backup).then(file -> {
            try (file) {
                return file.check().then(contents -> {
                    Overtaken overtaken = overtaken(file);
                    return overtaken.lost() == 0 || overNewer
                            ? restore(file, contents, overtaken)
                            : Outcome.refused(
                                    "this backup does not know " + overtaken.entries() + ", which would be lost",
                                    "say that they may be, or use a newer backup; nothing was touched");
                });
            }
        });
    }

    private Outcome<Restored> restore(BackupFile file, BackupContents contents, Overtaken overtaken) {
        try {
            Files.createDirectories(workplace);
            if (Files.getFileStore(workplace).getUsableSpace() / 3 < contents.bytes()) {
                return Outcome.refused(
                        "there is not enough room on the disk to put this backup back", "make room and try again");
            }
            try (Staging staging = Staging.in(workplace, file.manifest().schema())) {
                return new RowReader(file, staging).read().then(rows -> swap(file, staging, contents, overtaken));
            }
        } catch (IOException e) {
            throw unpacking(e);
        } catch (SQLException e) {
            throw database.meaning(e);
        }
    }

    /** The files first: they harm nobody while nothing says that they are there. */
    private Outcome<Restored> swap(BackupFile file, Staging staging, BackupContents contents, Overtaken overtaken) {
        try {
            Optional<Path> before = keepWhatIsThere();
            file.putFiles(shelf);
            staging.update();
            Head head = database.read(Ledger::head);
            String codes = database.read(CodesGiven::last);
            database.replaceAll(TableOrder.TABLES, staging, handle -> {
                if (overtaken.lost() > 0 || !CodesGiven.areKnown(handle, codes)) {
                    tell(handle, overtaken.common(), head, codes);
                }
            });
            return Outcome.ok(new Restored(contents, before));
        } catch (IOException e) {
            throw unpacking(e);
        }
    }

    /** What is lost can be told by nobody else: the backup does not know of it, and jars with its codes stand on the shelf. */
    private void tell(Handle handle, long common, Head head, String codes) {
        new LedgerBook(handle, database.now())
                .write(
                        Author.DESK,
                        CodesGiven.RESTORE,
                        new EntryText()
                                .with("lost from", common + 1)
                                .with("lost to", head.number())
                                .with("lost head", head.seal())
                                .with(CodesGiven.CODES, codes));
    }

    private static RecordsTrouble unpacking(IOException e) {
        return new RecordsTrouble(
                "the backup could not be unpacked", "see that there is room on the disk and leave to write to it", e);
    }

    /** So that a restore can be undone by another. */
    private Optional<Path> keepWhatIsThere() throws IOException {
        if (isEmpty()) {
            return Optional.empty();
        }
        Path before =
                workplace.resolve("before-restore-" + MOMENT.format(Instant.ofEpochMilli(database.now())) + ENDING);
        try (BackupTarget target = BackupTarget.beside(before)) {
            write(target.out());
            target.done();
        }
        return Optional.of(before);
    }

    private boolean isEmpty() {
        String count = TableOrder.TABLES.stream()
                .map(table -> "(SELECT count(*) FROM " + table + ")")
                .collect(Collectors.joining(" + ", "SELECT ", ""));
        return database.read(
                handle -> handle.createQuery(count).mapTo(Long.class).one() == 0);
    }
}
