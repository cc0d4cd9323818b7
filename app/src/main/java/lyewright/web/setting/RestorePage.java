package lyewright.web.setting;

import java.util.List;
import lyewright.records.backup.Overtaken;
import lyewright.web.Frame;
import lyewright.words.Sentences;

/**
 * What is in a backup, before it is put in the place of everything.
 *
 * @param frame around it
 * @param token of the file that was sent
 * @param inFile what is in it
 * @param now what is kept now
 * @param overtaken how the ledger that is kept now stands to the backup's
 * @param unticked whether it was to be put back without the tick that it needs
 */
public record RestorePage(
        Frame frame, String token, List<SettingPage.About> inFile, String now, Overtaken overtaken, boolean unticked) {

    /** Copies its list. */
    public RestorePage {
        inFile = List.copyOf(inFile);
    }

    /** What of the ledger would be lost, as sentences; none where nothing would. */
    public List<String> lost() {
        if (overtaken.lost() == 0) {
            return List.of();
        }
        String where = overtaken.differs()
                ? "From entry " + (overtaken.common() + 1)
                        + " on this backup's ledger tells something else than the one here: it is of another workshop, or "
                        + "was written on elsewhere."
                : "The ledger here has gone on since this backup was made.";
        return List.of(
                Sentences.upperFirst(overtaken.entries()) + (overtaken.lost() == 1 ? " is" : " are")
                        + " not in this backup and would be lost: " + overtaken.lost() + " of "
                        + overtaken.here().number() + ".",
                where);
    }

    /** How far the ledger went when this was asked. */
    public long upTo() {
        return overtaken.here().number();
    }

    /** What has to be ticked. */
    public String tick() {
        return "Put it back although " + overtaken.entries() + (overtaken.lost() == 1 ? " is" : " are") + " lost";
    }
}
