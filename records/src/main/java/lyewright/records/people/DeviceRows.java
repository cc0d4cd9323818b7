package lyewright.records.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** The tables of devices. */
final class DeviceRows {

    private static final String WITH_PERSON = """
            SELECT d.*, p.name AS person_name, p.role AS person_role, s.seen_epoch_ms
            FROM device d JOIN person p ON p.id = d.person_id LEFT JOIN device_session s ON s.device_id = d.id
            """;

    private final Handle handle;

    DeviceRows(Handle handle) {
        this.handle = handle;
    }

    List<Device> list() {
        return handle.createQuery(WITH_PERSON + "WHERE d.removed_epoch_ms IS NULL ORDER BY d.added_epoch_ms, d.id")
                .map((row, context) -> device(row))
                .list();
    }

    List<Device> of(String personId) {
        return handle.createQuery(WITH_PERSON + "WHERE d.removed_epoch_ms IS NULL AND d.person_id = :person")
                .bind("person", personId)
                .map((row, context) -> device(row))
                .list();
    }

    Optional<Device> find(String id) {
        return handle.createQuery(WITH_PERSON + "WHERE d.removed_epoch_ms IS NULL AND d.id = :id")
                .bind("id", id)
                .map((row, context) -> device(row))
                .findOne();
    }

    /** What they are called, those shown the door too. */
    Map<String, String> names() {
        return handle
                .createQuery("SELECT id, name FROM device")
                .map((row, context) -> Map.entry(row.getString("id"), row.getString("name")))
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    void insert(Device device, String tokenDigest) {
        handle.createUpdate("""
                        INSERT INTO device (id, person_id, name, let_in_by, added_epoch_ms)
                        VALUES (:id, :person, :name, :way, :now)
                        """)
                .bind("id", device.id())
                .bind("person", device.person().id())
                .bind("name", device.name())
                .bind("way", device.way().word())
                .bind("now", device.addedAt().toEpochMilli())
                .execute();
        handle.createUpdate(
                        "INSERT INTO device_session (token_sha256, device_id, seen_epoch_ms) VALUES (:digest, :id, :now)")
                .bind("digest", tokenDigest)
                .bind("id", device.id())
                .bind("now", device.addedAt().toEpochMilli())
                .execute();
    }

    /** The device that shows a token, unless it was silent since a moment. */
    Optional<Device> known(String tokenDigest, long silentSince) {
        return handle.createQuery(WITH_PERSON + """
                        WHERE s.token_sha256 = :digest AND s.seen_epoch_ms > :since AND d.removed_epoch_ms IS NULL
                          AND p.removed_epoch_ms IS NULL
                        """)
                .bind("digest", tokenDigest)
                .bind("since", silentSince)
                .map((row, context) -> device(row))
                .findOne();
    }

    void seen(String id, long now) {
        handle.createUpdate(
                        "UPDATE device_session SET seen_epoch_ms = :now WHERE device_id = :id AND seen_epoch_ms < :now")
                .bind("id", id)
                .bind("now", now)
                .execute();
    }

    void remove(String id, long now) {
        handle.createUpdate("DELETE FROM device_session WHERE device_id = :id")
                .bind("id", id)
                .execute();
        handle.createUpdate("UPDATE device SET removed_epoch_ms = :now WHERE id = :id")
                .bind("id", id)
                .bind("now", now)
                .execute();
    }

    private static Device device(ResultSet row) throws SQLException {
        Person person = new Person(
                row.getString("person_id"),
                row.getString("person_name"),
                Role.ofWord(row.getString("person_role")).orElseThrow());
        long seen = row.getLong("seen_epoch_ms");
        Optional<Instant> seenAt = row.wasNull() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(seen));
        return new Device(
                row.getString("id"),
                row.getString("name"),
                person,
                Device.Way.ofWord(row.getString("let_in_by")),
                Instant.ofEpochMilli(row.getLong("added_epoch_ms")),
                seenAt);
    }
}
