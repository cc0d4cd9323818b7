package lyewright.web;

import java.util.Optional;
import lyewright.records.people.Device;
import lyewright.records.people.Role;
import lyewright.records.store.Author;

/**
 * Who asks for a page, and at which device.
 *
 * @param author who signs what is written
 * @param role what they may do
 * @param device the device they are at; empty at the computer that Lyewright runs on, and for a stranger
 * @param isAtDesk whether they sit at that computer
 */
public record Visitor(Author author, Role role, Optional<Device> device, boolean isAtDesk) {

    /** The maker at the computer that Lyewright runs on. */
    public static final Visitor DESK = new Visitor(Author.DESK, Role.MAKER, Optional.empty(), true);

    /** Somebody who was not let in. There is nobody of that id, so that they could write nothing even if a page let them. */
    static final Visitor STRANGER = new Visitor(
            new Author("00000000-0000-0000-0000-000000000000", Optional.empty()), Role.HELPER, Optional.empty(), false);

    /** A thread answers one request at a time, from its first handler to its last. */
    private static final ThreadLocal<Visitor> NOW = ThreadLocal.withInitial(() -> DESK);

    /** Somebody at a device that was let in. */
    public static Visitor at(Device device) {
        return new Visitor(
                new Author(device.person().id(), Optional.of(device.id())),
                device.person().role(),
                Optional.of(device),
                false);
    }

    /** Who asks for what this thread is answering; what the application does by itself it does as the maker at the desk. */
    public static Visitor now() {
        return NOW.get();
    }

    /** Begins to answer somebody. Every request begins so, which is why none is answered as the one before it. */
    static void begin(Visitor visitor) {
        NOW.set(visitor);
    }

    /** Whether they may change recipes, lots and prices. */
    public boolean isMaker() {
        return role == Role.MAKER;
    }
}
