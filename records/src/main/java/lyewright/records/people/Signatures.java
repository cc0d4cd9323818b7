package lyewright.records.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import lyewright.records.store.Author;
import lyewright.records.store.Database;

/** Who did what, as far as no ledger says so. */
public final class Signatures {

    private final Database database;

    /** The signatures of a database; the records open it. */
    public Signatures(Database database) {
        this.database = database;
    }

    /** What was done last, the newest first. */
    public List<SignedLine> last(int most) {
        return database.read(
                handle -> handle.createQuery("SELECT * FROM signature ORDER BY at_epoch_ms DESC, id DESC LIMIT :most")
                        .bind("most", most)
                        .map((row, context) -> line(row))
                        .list());
    }

    /** What things of the stores are called, by their ids; those that were taken away too, and none that no list has any more. */
    public Map<String, String> names(List<SignedLine> lines) {
        Map<String, String> names = new HashMap<>();
        database.read(handle -> {
            for (Deed.Thing thing : Deed.Thing.values()) {
                List<String> ids = lines.stream()
                        .filter(line -> line.deed().thing() == thing)
                        .map(SignedLine::thingId)
                        .distinct()
                        .toList();
                called(thing)
                        .filter(from -> !ids.isEmpty())
                        .ifPresent(from -> handle.createQuery("SELECT id, " + from + " WHERE id IN (<ids>)")
                                .bindList("ids", ids)
                                .map((row, context) -> Map.entry(row.getString("id"), row.getString("called")))
                                .forEach(named -> names.put(named.getKey(), named.getValue())));
            }
            return names;
        });
        return names;
    }

    private static Optional<String> called(Deed.Thing thing) {
        return switch (thing) {
            case MOULD -> Optional.of("name AS called FROM mould");
            case BALANCE -> Optional.of("name AS called FROM balance");
            case JUG -> Optional.of("name AS called FROM jug");
            case MATERIAL -> Optional.of("key AS called FROM material");
            case SUPPLIER -> Optional.of("name AS called FROM supplier");
            case STOCKED_MATERIAL -> Optional.of("name AS called FROM stock_item");
            case RECIPE, SETTINGS, PERSON, DEVICE, PASSWORD, NETWORK -> Optional.empty();
        };
    }

    /** Who wrote the versions of a recipe last, by their numbers; versions of a time before anybody signed are not among them. */
    public Map<Integer, Person> versions(String recipeId) {
        Map<Integer, Person> authors = new TreeMap<>();
        database.read(handle -> handle.createQuery("""
                                SELECT s.version AS number, p.* FROM signature s JOIN person p ON p.id = s.person_id
                                WHERE s.thing = 'recipe' AND s.thing_id = :id AND s.deed = 'kept' AND s.version IS NOT NULL
                                ORDER BY s.at_epoch_ms, s.id
                                """)
                        .bind("id", recipeId)
                        .map((row, context) -> Map.entry(row.getInt("number"), People.person(row)))
                        .list())
                .forEach(line -> authors.put(line.getKey(), line.getValue()));
        return authors;
    }

    private static SignedLine line(ResultSet row) throws SQLException {
        int version = row.getInt("version");
        OptionalInt of = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(version);
        return new SignedLine(
                Instant.ofEpochMilli(row.getLong("at_epoch_ms")),
                new Author(row.getString("person_id"), Optional.ofNullable(row.getString("device_id"))),
                new Deed(
                        ofWord(Deed.Thing.values(), Deed.Thing::word, row.getString("thing")),
                        ofWord(Deed.Act.values(), Deed.Act::word, row.getString("deed"))),
                row.getString("thing_id"),
                of);
    }

    private static <T> T ofWord(T[] all, Function<T, String> word, String kept) {
        return Arrays.stream(all)
                .filter(one -> word.apply(one).equals(kept))
                .findFirst()
                .orElseThrow();
    }
}
