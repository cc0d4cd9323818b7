package lyewright.records.store;

import java.util.List;
import java.util.Optional;
import lyewright.formula.NameRules;
import lyewright.measure.Problem;
import org.jdbi.v3.core.Handle;

/**
 * Two things of one name could not be told apart where one is chosen. Asked within the transaction that writes the name, of which
 * there is one at a time; such as had one name before this was asked may still be changed.
 */
public final class Namesakes {

    private Namesakes() {}

    private record Named(String id, String name) {}

    /**
     * What stands in the way of a name.
     *
     * @param handle of the transaction that writes
     * @param table of the things, which is also what one of them is called
     * @param column that holds their names
     * @param name what one of them is to be called
     * @param id of that one
     * @return that another one is called so, if one is
     */
    public static Optional<Problem> of(Handle handle, String table, String column, String name, String id) {
        List<Named> there = handle.createQuery(
                        "SELECT id, " + column + " AS name FROM " + table + " WHERE removed_epoch_ms IS NULL")
                .map((row, context) -> new Named(row.getString("id"), row.getString("name")))
                .list();
        Optional<String> before = there.stream()
                .filter(one -> one.id().equals(id))
                .map(Named::name)
                .findFirst();
        if (before.filter(name::equals).isPresent()) {
            return Optional.empty();
        }
        boolean keeps = before.filter(own -> NameRules.areSame(own, name)).isPresent();
        return there.stream()
                .filter(other -> !other.id().equals(id))
                .filter(other -> keeps ? other.name().equals(name) : NameRules.areSame(other.name(), name))
                .findFirst()
                .map(other -> new Problem(
                        column,
                        "there is a " + table + " '" + other.name() + "' already",
                        "give this one another name, or change that one"));
    }
}
