package lyewright.cli;

import java.nio.file.Path;
import java.time.Clock;
import lyewright.measure.Outcome;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.backup.BackupContents;
import lyewright.records.backup.Backups;
import lyewright.records.backup.Restored;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code restore}: a backup in the place of everything the workshop keeps. */
final class RestoreCommand implements Command {

    private static final String NAME = "restore";

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                NAME, "Put a backup in the place of everything the workshop keeps, or into an empty folder.");
        WorkshopFolder.addTo(spec, "The backup.");
        Specs.footer(
                spec,
                "",
                "The file is checked wholly first; one that is damaged or newer changes nothing. What was there is",
                "written to a backup of its own beside the workshop, and said. While the pages are open, restore there.",
                "",
                "Example:",
                "  lyewright restore workshop.zip");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Path file = WorkshopFolder.file(typed, folder);
        // before the folder is opened, for opening makes what is missing there
        Outcome<BackupContents> checked = Backups.check(file);
        if (checked instanceof Outcome.Refused) {
            return WorkshopFolder.refused(NAME, checked.problems());
        }
        Outcome<Records> opened =
                WorkshopFolder.place(typed, folder).then(place -> Records.open(place, Clock.systemUTC()));
        if (!(opened instanceof Outcome.Ok<Records> ok)) {
            return WorkshopFolder.refused(NAME, opened.problems());
        }
        try (Records records = ok.value()) {
            Outcome<Restored> restored = records.backups().restore(file);
            return restored instanceof Outcome.Ok<Restored> done
                    ? Answer.print(told(done.value()))
                    : WorkshopFolder.refused(NAME, restored.problems());
        } catch (RecordsTrouble e) {
            return Answer.refuse(NAME, e.problem().what(), e.problem().remedy());
        }
    }

    private static String told(Restored restored) {
        return BackupCommand.what(restored.contents()) + " restored.\n"
                + restored.before()
                        .map(before -> "What was there before is in " + before + ".\n")
                        .orElse("");
    }
}
