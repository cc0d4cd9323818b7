package lyewright.records.ledger;

import java.util.List;
import lyewright.chain.Finding;

/**
 * What verifying found.
 *
 * @param head how far the ledger goes
 * @param findings what is not as it was sealed, the first ones; empty where all is
 * @param more how many findings there are beyond those
 */
public record Verified(Head head, List<Finding> findings, long more) {

    /** Copies its list. */
    public Verified {
        findings = List.copyOf(findings);
    }

    /** Whether all is as it was sealed. */
    public boolean isWhole() {
        return findings.isEmpty();
    }
}
