package lyewright.records.backup;

import java.time.Instant;
import java.util.Optional;
import lyewright.records.ledger.Head;

/**
 * What is in a backup.
 *
 * @param madeAt when it was made
 * @param workshop the workshop's name, if it had one
 * @param recipes how many recipes, those deleted with them
 * @param versions how many versions of them
 * @param photographs how many photographs
 * @param documents how many documents
 * @param missingFiles photographs and documents whose files had gone when it was made
 * @param moulds how many moulds, those taken out of the list with them, as with all that follow
 * @param balances how many balances
 * @param jugs how many jugs
 * @param materials how many materials of the maker's own
 * @param lots how many lots in the cupboard, used up or not
 * @param moves how many moves of them
 * @param ledger how far its ledger goes; nothing where it was made by a Lyewright that kept none
 * @param bytes what all of it takes up unpacked
 */
public record BackupContents(
        Instant madeAt,
        Optional<String> workshop,
        long recipes,
        long versions,
        long photographs,
        long documents,
        long missingFiles,
        long moulds,
        long balances,
        long jugs,
        long materials,
        long lots,
        long moves,
        Optional<Head> ledger,
        long bytes) {}
