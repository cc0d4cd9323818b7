package lyewright.records.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.RecordsTrouble;
import lyewright.records.store.Database;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;

/**
 * The devices that may come in, and whether any may knock. A device shows a token that nobody can guess; of that only a digest is
 * kept. Who shows one the door ends it at once: its next request is not answered.
 */
public final class Devices {

    /** A device that asked for nothing for so long has to be let in anew. */
    public static final Duration LONGEST_SILENCE = Duration.ofDays(90);

    /** When a device was last seen is noted to this. */
    private static final Duration NOTED_TO = Duration.ofHours(1);

    private static final int TOKEN_BYTES = 32;

    private static final Logger LOG = Logger.getLogger(Devices.class.getName());

    private static final SecureRandom RANDOM = new SecureRandom();

    private final Database database;

    /** The devices of a database; the records open it. */
    public Devices(Database database) {
        this.database = database;
    }

    /** Those that were let in and not shown out, the oldest first; without those that were silent too long. */
    public List<Device> list() {
        Instant since = Instant.ofEpochMilli(database.now()).minus(LONGEST_SILENCE);
        return database.read(handle -> new DeviceRows(handle).list()).stream()
                .filter(device ->
                        device.seenAt().filter(seen -> !seen.isAfter(since)).isEmpty())
                .toList();
    }

    /** What all are called by their ids, those shown the door too. */
    public Map<String, String> names() {
        return database.read(handle -> new DeviceRows(handle).names());
    }

    /**
     * Lets a device in by a code. The author is the maker who showed the code.
     *
     * @param personId whose it is
     * @param name what it is to be called
     * @return the device with its token, or why not
     */
    public Outcome<LetIn> letIn(String personId, String name) {
        return named(name)
                .then(fine -> database.decide(handle -> Roles.isMaker(handle, database.author())
                        .then(may -> put(handle, personId, name, Device.Way.CODE))));
    }

    /**
     * Lets a browser in in which somebody has just signed in. The author is who did.
     *
     * @param name what it is to be called
     * @return the device with its token, or why not
     */
    public Outcome<LetIn> signIn(String name) {
        String person = database.author().person();
        return named(name)
                .then(fine -> database.decide(handle -> Roles.maySign(handle, database.author())
                        .then(may -> put(handle, person, name, Device.Way.PASSWORD))));
    }

    private Outcome<LetIn> put(Handle handle, String personId, String name, Device.Way way) {
        return People.working(handle, personId, database.now()).then(person -> {
            String token = token();
            Instant now = Instant.ofEpochMilli(database.now());
            Device device = new Device(database.newId(), name, person, way, now, Optional.of(now));
            new DeviceRows(handle).insert(device, digest(token));
            Signed.sign(handle, database, Deed.kept(Deed.Thing.DEVICE), Signed.Subject.of(device.id()));
            return Outcome.ok(new LetIn(device, token));
        });
    }

    private static Outcome<Boolean> named(String name) {
        Optional<Problem> trouble = Typed.name("device", "the device's name", name);
        return trouble.<Outcome<Boolean>>map(Outcome::refused).orElseGet(() -> Outcome.ok(true));
    }

    /**
     * The device that shows a token.
     *
     * @param token as it was shown, whoever sent it
     * @return it; empty where nobody was given that token, or it was shown the door, or was silent too long
     */
    public Optional<Device> known(String token) {
        if (token.length() > 100) {
            return Optional.empty();
        }
        long now = database.now();
        Optional<Device> device =
                database.read(handle -> new DeviceRows(handle).known(digest(token), now - LONGEST_SILENCE.toMillis()));
        device.filter(known -> known.seenAt()
                        .filter(seen -> seen.toEpochMilli() < now - NOTED_TO.toMillis())
                        .isPresent())
                .ifPresent(known -> note(known, now));
        return device;
    }

    private void note(Device device, long now) {
        try {
            database.write(handle -> {
                new DeviceRows(handle).seen(device.id(), now);
                return true;
            });
        } catch (RecordsTrouble e) {
            // on a full disk pages can still be read
            LOG.log(Level.WARNING, e, () -> "when a device was last seen could not be noted");
        }
    }

    /** Shows a device the door: any, where a maker does it; its own, where somebody leaves. */
    public Outcome<Device> remove(String id) {
        return database.decide(handle -> {
            DeviceRows rows = new DeviceRows(handle);
            Optional<Device> device = rows.find(id);
            if (device.isEmpty()) {
                return Outcome.refused("this device is not let in any more", "load the page again");
            }
            boolean own = device.get().person().id().equals(database.author().person());
            Outcome<Boolean> may =
                    own ? Roles.maySign(handle, database.author()) : Roles.isMaker(handle, database.author());
            return may.then(yes -> {
                rows.remove(id, database.now());
                Signed.sign(handle, database, Deed.removed(Deed.Thing.DEVICE), Signed.Subject.of(id));
                return Outcome.ok(device.get());
            });
        });
    }

    /** Whether other devices may knock at this computer. */
    public boolean mayKnock() {
        return database.read(handle -> handle.createQuery("SELECT count(*) FROM network_door")
                        .mapTo(Integer.class)
                        .one()
                > 0);
    }

    /** Says whether they may. */
    public Outcome<Boolean> letKnock(boolean may) {
        Deed deed = may ? Deed.kept(Deed.Thing.NETWORK) : Deed.removed(Deed.Thing.NETWORK);
        return Signed.decide(database, deed, done -> Signed.Subject.of("1"), handle -> {
            handle.createUpdate("DELETE FROM network_door").execute();
            if (may) {
                handle.createUpdate("INSERT INTO network_door (id, opened_epoch_ms) VALUES (1, :now)")
                        .bind("now", database.now())
                        .execute();
            }
            return Outcome.ok(may);
        });
    }

    private static String token() {
        byte[] bytes = new byte[TOKEN_BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static String digest(String token) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
