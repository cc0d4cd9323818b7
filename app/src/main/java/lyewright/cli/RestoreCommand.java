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
    private static final String OVER_NEWER = "--over-newer";

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                NAME, "Put a backup in the place of everything the workshop keeps, or into an empty folder.");
        WorkshopFolder.addTo(spec, "The backup.");
        spec.addOption(Specs.flag(
                OVER_NEWER, "Put it back though entries of the ledger, which the backup does not know, are lost."));
        Specs.footer(
                spec,
                "",
                "The file is checked wholly first; one that is damaged or newer changes nothing. What was there is",
                "written to a backup of its own beside the workshop, and said. While the pages are open, restore there.",
                "Where the ledger has entries that the backup does not know, it is refused without --over-newer.",
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
            Outcome<Restored> restored = restore(typed, records.backups(), file);
            return restored instanceof Outcome.Ok<Restored> done
                    ? Answer.print(told(done.value()))
                    : WorkshopFolder.refused(NAME, restored.problems());
        } catch (RecordsTrouble e) {
            return Answer.refuse(NAME, e.problem().what(), e.problem().remedy());
        }
    }

    private static Outcome<Restored> restore(ParseResult typed, Backups backups, Path file) {
        if (typed.hasMatchedOption(OVER_NEWER)) {
            return backups.restoreOverNewer(file);
        }
        return backups.overtaken(file)
                .then(overtaken -> overtaken.lost() == 0
                        ? backups.restore(file)
                        : Outcome.refused(
                                "this backup does not know " + overtaken.entries() + ", which would be lost ("
                                        + overtaken.lost() + " of "
                                        + overtaken.here().number() + ")",
                                "give " + OVER_NEWER + " if they may be; nothing was touched"));
    }

    private static String told(Restored restored) {
        return BackupCommand.what(restored.contents()) + " restored.\n"
                + BackupCommand.ledger(restored.contents())
                + restored.before()
                        .map(before -> "What was there before is in " + before + ".\n")
                        .orElse("");
    }
}
