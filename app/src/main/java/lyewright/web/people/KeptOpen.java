package lyewright.web.people;

import java.util.List;
import lyewright.measure.Outcome;
import lyewright.records.people.Devices;
import lyewright.web.NetworkDoor;

/** Opens the door for other devices so that it is open again after a restart. */
public final class KeptOpen {

    private KeptOpen() {}

    /**
     * Opens it, unless something stands in the way.
     *
     * @param door which
     * @param devices where it is noted
     * @return what to type at another device, or why it stays shut
     */
    public static Outcome<List<String>> open(NetworkDoor door, Devices devices) {
        return door.open().then(addresses -> devices.letKnock(true).then(kept -> Outcome.ok(addresses)));
    }
}
