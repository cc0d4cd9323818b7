package lyewright.records.backup;

import java.time.Instant;
import java.util.Optional;

/**
 * What is in a backup.
 *
 * @param madeAt when it was made
 * @param workshop the workshop's name, if it had one
 * @param recipes how many recipes, those deleted with them
 * @param versions how many versions of them
 * @param photographs how many photographs
 * @param missingPhotographs photographs whose files had gone when it was made
 * @param moulds how many moulds, those taken out of the list with them, as with all that follow
 * @param balances how many balances
 * @param jugs how many jugs
 * @param materials how many materials of the maker's own
 * @param bytes what all of it takes up unpacked
 */
public record BackupContents(
        Instant madeAt,
        Optional<String> workshop,
        long recipes,
        long versions,
        long photographs,
        long missingPhotographs,
        long moulds,
        long balances,
        long jugs,
        long materials,
        long bytes) {}
