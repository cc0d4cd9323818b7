package lyewright.web.ledger;

import java.util.List;
import java.util.Optional;
import lyewright.chain.Finding;
import lyewright.chain.PrintedHead;
import lyewright.records.ledger.Verified;

/** What verifying found, in words. */
final class VerifiedWords {

    private VerifiedWords() {}

    static LedgerPage.Said said(Verified verified, Optional<PrintedHead> held) {
        long entries = verified.head().number();
        if (!verified.isWhole()) {
            long found = verified.findings().size() + verified.more();
            boolean paperAlone =
                    verified.more() == 0 && verified.findings().stream().allMatch(Finding::isOfPaper);
            return new LedgerPage.Said(
                    false,
                    paperAlone
                            ? "The head that you typed does not fit."
                            : found == 1
                                    ? "One thing is not as it was written."
                                    : found + " things are not as they were written.",
                    "Verifying changed nothing. Ask who else can get at the files of this workshop; a backup from before"
                            + " shows what stood there.",
                    verified.findings().stream().map(Finding::what).toList(),
                    verified.more(),
                    verified.looked());
        }
        String sentence = entries == 0
                ? "Nothing was written in the ledger yet."
                : entries == 1
                        ? "The one entry is as it was written."
                        : "All " + entries + " entries are as they were written.";
        String paper = held.map(head -> "Entry " + head.number() + " is the one on your paper"
                        + (entries > head.number() ? "; " + (entries - head.number()) + " came after it." : "."))
                .orElse("You gave no head from your paper, so nobody can tell whether the last entries were cut off.");
        return new LedgerPage.Said(true, sentence, paper, List.of(), 0, verified.looked());
    }
}
