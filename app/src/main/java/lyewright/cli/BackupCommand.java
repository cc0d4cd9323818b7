package lyewright.cli;

import java.nio.file.Path;
import java.time.Clock;
import lyewright.measure.Outcome;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.backup.BackupContents;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code backup}: everything the workshop keeps, in one file. */
final class BackupCommand implements Command {

    private static final String NAME = "backup";

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                NAME, "Write everything the workshop keeps into one file; the pages may be open meanwhile.");
        WorkshopFolder.addTo(spec, "The file to write, which must not be there yet.");
        Specs.footer(
                spec,
                "",
                "The file is read back before this says that it is written. Keep a copy on another disk.",
                "",
                "Example:",
                "  lyewright backup workshop.zip");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Outcome<Records> opened =
                WorkshopFolder.place(typed, folder).then(place -> Records.openToRead(place, Clock.systemUTC()));
        if (!(opened instanceof Outcome.Ok<Records> ok)) {
            return WorkshopFolder.refused(NAME, opened.problems());
        }
        Path file = WorkshopFolder.file(typed, folder);
        try (Records records = ok.value()) {
            Outcome<BackupContents> written = records.backups().write(file);
            return written instanceof Outcome.Ok<BackupContents> contents
                    ? Answer.print(told(contents.value(), file))
                    : WorkshopFolder.refused(NAME, written.problems());
        } catch (RecordsTrouble e) {
            return Answer.refuse(NAME, e.problem().what(), e.problem().remedy());
        }
    }

    private static String told(BackupContents contents, Path file) {
        String missing = contents.missingFiles() == 0
                ? ""
                : "Without " + counted(contents.missingFiles(), "photograph or document") + " whose file was gone.\n";
        return what(contents) + " backed up to " + file + ".\n" + ledger(contents) + missing;
    }

    /** What is in a backup, as the beginning of a sentence. */
    static String what(BackupContents contents) {
        return contents.workshop().map(name -> name + ": ").orElse("")
                + counted(contents.recipes(), "recipe") + ", "
                + counted(contents.versions(), "version") + ", "
                + counted(contents.photographs(), "photograph")
                + (contents.lots() == 0 ? "" : ", " + counted(contents.lots(), "lot"))
                + (contents.documents() == 0 ? "" : ", " + counted(contents.documents(), "document"));
    }

    /** How far the ledger in it goes, a line; nothing where nothing was written. */
    static String ledger(BackupContents contents) {
        return contents.ledger()
                .filter(head -> !head.isEmpty())
                .map(head -> "Its ledger goes to " + head.printed() + ".\n")
                .orElse("");
    }

    static String counted(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
