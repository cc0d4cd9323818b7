package lyewright.records.ledger;

import java.util.List;
import lyewright.chain.Finding;

/**
 * What verifying found.
 *
 * @param head how far the ledger goes
 * @param findings what is not as it was written, the first ones; empty where all is
 * @param more how many findings there are beyond those
 * @param looked what was looked at beside the entries and how far, where that is not plain, as sentences
 */
public record Verified(Head head, List<Finding> findings, long more, List<String> looked) {

    /** Copies its lists. */
    public Verified {
        findings = List.copyOf(findings);
        looked = List.copyOf(looked);
    }

    /** Whether all is as it was written. */
    public boolean isWhole() {
        return findings.isEmpty();
    }
}
