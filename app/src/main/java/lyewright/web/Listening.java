package lyewright.web;

import java.util.Optional;

/**
 * Where the pages are asked for.
 *
 * @param bind the address that the first door listens at
 * @param port of the first door, from 0, which takes a free one, to 65535
 * @param devicesPort of the door for other devices
 * @param doors the names and rules of both
 * @param certificate of whichever door leads to the network
 */
public record Listening(String bind, int port, int devicesPort, Doors doors, Optional<Certificate> certificate) {

    /** The desk's door alone. */
    public static Listening atDesk(String bind, int port) {
        return new Listening(bind, port, 0, Doors.ofDesk(), Optional.empty());
    }
}
