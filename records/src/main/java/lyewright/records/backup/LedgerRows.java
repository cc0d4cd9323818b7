package lyewright.records.backup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import lyewright.chain.Chain;
import lyewright.records.ledger.Head;

/** The ledger that lies in a backup. */
final class LedgerRows {

    static final String TABLE = "ledger_entry";

    private final BackupFile file;
    private final Optional<Part> part;

    LedgerRows(BackupFile file, Optional<Part> part) {
        this.file = file;
        this.part = part;
    }

    /** How far it goes; nothing where the backup is of a time before there was a ledger. */
    Optional<Head> head() throws IOException {
        if (part.isEmpty()) {
            return Optional.empty();
        }
        Head[] last = {new Head(0, Chain.BEFORE_ALL)};
        each(part.get(), head -> {
            last[0] = head.number() > last[0].number() ? head : last[0];
            return true;
        });
        return Optional.of(last[0]);
    }

    /** How many of its first entries have these seals. */
    long common(List<String> seals) throws IOException {
        long[] common = {0};
        if (part.isPresent()) {
            each(part.get(), head -> {
                boolean same = head.number() == common[0] + 1
                        && head.number() <= seals.size()
                        && seals.get((int) head.number() - 1).equals(head.seal());
                common[0] += same ? 1 : 0;
                return same;
            });
        }
        return common[0];
    }

    /** What is done with each entry; false where no more is wanted. */
    private interface Step {
        boolean take(Head head);
    }

    private void each(Part from, Step step) throws IOException {
        try (InputStream in = file.content(from);
                MappingIterator<JsonNode> rows = RowReader.ROWS.readValues(in)) {
            boolean on = true;
            while (on && rows.hasNextValue()) {
                JsonNode row = rows.nextValue();
                on = step.take(new Head(
                        row.path("number").longValue(), row.path("sha256").asText()));
            }
        }
    }
}
