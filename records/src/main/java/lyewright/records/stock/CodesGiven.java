package lyewright.records.stock;

import java.util.List;
import java.util.stream.Stream;
import lyewright.records.ledger.EntryText;
import org.jdbi.v3.core.Handle;

/**
 * Lot codes that stand on jars though no lot here has them: a backup was put back over lots that it did not know. They are not given
 * again. The ledger keeps them, in the entry that tells of the restore.
 */
public final class CodesGiven {

    /** What a ledger's entry is called that tells of a restore over entries that it lost. */
    public static final String RESTORE = "restore";

    /** The fact that tells the last code of each year. */
    public static final String CODES = "codes";

    private CodesGiven() {}

    /** The last code of each year that was ever given, with commas between them. */
    public static String last(Handle handle) {
        LotCodes codes = new LotCodes();
        Stream.concat(
                        handle.createQuery("SELECT own_code FROM lot").mapTo(String.class).stream(),
                        lost(handle).stream())
                .forEach(codes::taken);
        return String.join(",", codes.last());
    }

    /** Whether codes are not given again anyway, as {@link #last} gave them. */
    public static boolean areKnown(Handle handle, String codes) {
        LotCodes known = new LotCodes();
        Stream.of(last(handle).split(",")).forEach(known::taken);
        List<String> before = known.last();
        Stream.of(codes.split(",")).forEach(known::taken);
        return known.last().equals(before);
    }

    /** Those that restores lost. The kind is written out, so that the index of these few entries serves. */
    static List<String> lost(Handle handle) {
        return handle
                .createQuery("SELECT entry_text FROM ledger_entry WHERE kind = '" + RESTORE + "'")
                .mapTo(String.class)
                .stream()
                .map(EntryText::facts)
                .flatMap(facts -> Stream.of(facts.getOrDefault(CODES, "").split(",")))
                .toList();
    }
}
