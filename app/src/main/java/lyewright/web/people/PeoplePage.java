package lyewright.web.people;

import java.util.List;
import java.util.Optional;
import lyewright.web.Frame;

/**
 * The page of people and devices.
 *
 * @param frame around it
 * @param door the door for other devices
 * @param people who works here
 * @param lately what was done last
 * @param added the form for somebody new, as it was typed
 * @param troubles what is wrong, as sentences
 */
public record PeoplePage(
        Frame frame, Door door, List<Somebody> people, List<Done> lately, Added added, List<String> troubles) {

    /** Copies its lists. */
    public PeoplePage {
        people = List.copyOf(people);
        lately = List.copyOf(lately);
        troubles = List.copyOf(troubles);
    }

    /**
     * The door for other devices.
     *
     * @param signIn whether everybody signs in, so that there is none
     * @param open whether it is open
     * @param secret whether what goes through can be read on the way
     * @param addresses what to type at another device
     */
    public record Door(boolean signIn, boolean open, boolean secret, List<String> addresses) {

        /** Copies its list. */
        public Door {
            addresses = List.copyOf(addresses);
        }
    }

    /**
     * Somebody who works here.
     *
     * @param id of them
     * @param name what they are called
     * @param helper whether they are a helper
     * @param may what they may do, a sentence
     * @param first whether they are the maker at the computer itself
     * @param password whether they have a password
     * @param devices theirs
     */
    public record Somebody(
            String id, String name, boolean helper, String may, boolean first, boolean password, List<Theirs> devices) {

        /** Copies its list. */
        public Somebody {
            devices = List.copyOf(devices);
        }
    }

    /**
     * A device.
     *
     * @param id of it
     * @param name what it is called
     * @param seen when it was last there
     * @param out whether it has to be let in anew
     */
    public record Theirs(String id, String name, String seen, boolean out) {}

    /**
     * Something that was done.
     *
     * @param when in words
     * @param who and where
     * @param what in words
     * @param address of the thing's page; empty where it has none
     */
    public record Done(String when, String who, String what, Optional<String> address) {}

    /**
     * Somebody who is being added.
     *
     * @param name as it was typed
     * @param maker whether they are to be a maker
     */
    public record Added(String name, boolean maker) {}
}
