package lyewright.records.backup;

import lyewright.records.ledger.Head;

/**
 * How the ledger that is kept stands to a backup's: what it tells beyond what the backup knows would be lost by a restore.
 *
 * @param here how far it goes here
 * @param inFile how far it goes in the backup; 0 where there is none
 * @param common the number of the last entry that both have
 */
public record Overtaken(Head here, Head inFile, long common) {

    /** How many entries would be lost. */
    public long lost() {
        return here.number() - common;
    }

    /** Whether the backup tells something else from there on, so that it is not simply older. */
    public boolean differs() {
        return inFile.number() > common;
    }

    /** What would be lost, as the beginning of a sentence: {@code entries 41 to 52 of the ledger}. */
    public String entries() {
        return (lost() == 1 ? "entry " + here.number() : "entries " + (common + 1) + " to " + here.number())
                + " of the ledger";
    }
}
