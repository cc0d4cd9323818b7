package lyewright.web.setting;

import java.util.List;
import lyewright.web.Frame;

/**
 * What is in a backup, before it is put in the place of everything.
 *
 * @param frame around it
 * @param token of the file that was sent
 * @param inFile what is in it
 * @param now what is kept now
 */
public record RestorePage(Frame frame, String token, List<SettingPage.About> inFile, String now) {

    /** Copies its list. */
    public RestorePage {
        inFile = List.copyOf(inFile);
    }
}
