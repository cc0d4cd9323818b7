package lyewright.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.chain.Finding;
import lyewright.chain.PrintedHead;
import lyewright.measure.Outcome;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.ledger.Verified;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code verify}: whether the ledger is as it was written. */
final class VerifyCommand implements Command {

    private static final String NAME = "verify";
    private static final String HEAD = "--head";

    @Override
    public CommandSpec spec() {
        CommandSpec spec =
                Specs.command(NAME, "Go through the ledger: is every entry as it was written? The pages may be open.");
        spec.addOption(Specs.value(
                HEAD, "HEAD", "A head that you hold on paper: the number, a dash, twelve digits of its seal."));
        WorkshopFolder.addTo(spec);
        Specs.footer(
                spec,
                "",
                "It shows edits since a head that you hold. Without one, entries cut off at the end and a ledger",
                "that was sealed anew throughout stay hidden. It never shows whether an entry was true.",
                "",
                "Exit code 0 where all is as it was written, 3 where something is not, 2 where it was not looked at.",
                "",
                "Examples:",
                "  lyewright verify",
                "  lyewright verify --head 214-3f09ab51c2d7");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Optional<String> head = Optional.ofNullable(typed.<String>matchedOptionValue(HEAD, null));
        Outcome<Optional<PrintedHead>> printed = head.isEmpty()
                ? Outcome.ok(Optional.empty())
                : PrintedHead.parse(head.get()).then(read -> Outcome.ok(Optional.of(read)));
        if (!(printed instanceof Outcome.Ok<Optional<PrintedHead>> held)) {
            return WorkshopFolder.refused(HEAD, printed.problems());
        }
        Outcome<Records> opened =
                WorkshopFolder.place(typed, folder).then(place -> Records.openToRead(place, Clock.systemUTC()));
        if (!(opened instanceof Outcome.Ok<Records> ok)) {
            return WorkshopFolder.refused(NAME, opened.problems());
        }
        try (Records records = ok.value()) {
            Verified verified = records.ledger().verify(held.value());
            return new Answer.Printed(told(verified, held.value()), verified.isWhole() ? Answer.FINE : Answer.STOPPED);
        } catch (RecordsTrouble e) {
            return Answer.refuse(NAME, e.problem().what(), e.problem().remedy());
        }
    }

    private static String told(Verified verified, Optional<PrintedHead> held) {
        if (!verified.isWhole()) {
            return findings(verified);
        }
        if (verified.head().isEmpty()) {
            return "Nothing was written in the ledger yet.\n";
        }
        long entries = verified.head().number();
        return (entries == 1 ? "The one entry is as it was" : "All " + entries + " entries are as they were")
                + " written; lots, moves and documents say what the ledger says.\n"
                + looked(verified)
                + "The head is " + verified.head().printed() + ".\n"
                + held.map(head -> "Entry " + head.number() + " is the one on your paper.\n")
                        .orElse("Without a printed head (--head) this cannot show what was cut off at the end.\n");
    }

    private static String looked(Verified verified) {
        return verified.looked().stream().map(sentence -> sentence + "\n").collect(Collectors.joining());
    }

    private static String findings(Verified verified) {
        StringBuilder text = new StringBuilder("Not as it was written:\n");
        for (Finding finding : verified.findings()) {
            text.append("  ").append(finding.what()).append('\n');
        }
        if (verified.more() > 0) {
            text.append("  and ").append(verified.more()).append(" more\n");
        }
        return text.append(looked(verified))
                .append(
                        "Verifying changed nothing. Ask who else can get at these files; a backup from before shows what stood there.\n")
                .toString();
    }
}
