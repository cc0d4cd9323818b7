package lyewright.records.recipe;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.records.store.Author;
import org.jdbi.v3.core.Handle;

/** Drafts as they lie in the table. */
final class DraftRows {

    /** When something was typed, and who did. */
    record Stamp(long at, Author by) {}

    private DraftRows() {}

    static Draft create(Handle handle, String id, Optional<String> recipeId, int basedOn, String form, Stamp stamp) {
        Optional<Draft> there = recipeId.flatMap(recipe -> forRecipe(handle, recipe));
        if (there.isPresent()) {
            return there.get();
        }
        handle.createUpdate("""
                        INSERT INTO draft (id, recipe_id, based_on, form_json, revision, changed_epoch_ms, person_id, device_id)
                        VALUES (:id, :recipe, :basedOn, :form, 1, :at, :person, :device)
                        """)
                .bind("id", id)
                .bind("recipe", recipeId.orElse(null))
                .bind("basedOn", basedOn)
                .bind("form", form)
                .bind("at", stamp.at())
                .bind("person", stamp.by().person())
                .bind("device", stamp.by().device())
                .execute();
        return new Draft(id, recipeId, basedOn, form, 1, Instant.ofEpochMilli(stamp.at()), Optional.of(stamp.by()));
    }

    static Optional<Draft> forRecipe(Handle handle, String recipeId) {
        return handle.createQuery("SELECT * FROM draft WHERE recipe_id = :recipe")
                .bind("recipe", recipeId)
                .map((row, context) -> draft(row))
                .findOne();
    }

    static Optional<Draft> find(Handle handle, String id) {
        return handle.createQuery("SELECT * FROM draft WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> draft(row))
                .findOne();
    }

    static List<Draft> all(Handle handle) {
        return handle.createQuery("SELECT * FROM draft ORDER BY changed_epoch_ms DESC, id")
                .map((row, context) -> draft(row))
                .list();
    }

    static List<Draft> ofNewRecipes(Handle handle, int most) {
        return handle.createQuery("""
                        SELECT * FROM draft WHERE recipe_id IS NULL ORDER BY changed_epoch_ms DESC, id LIMIT :most
                        """)
                .bind("most", most)
                .map((row, context) -> draft(row))
                .list();
    }

    static Kept keep(Handle handle, String id, int expectedRevision, String form, Stamp stamp) {
        int written = handle.createUpdate("""
                        UPDATE draft SET form_json = :form, revision = revision + 1, changed_epoch_ms = :at,
                          person_id = :person, device_id = :device
                        WHERE id = :id AND revision = :expected
                        """)
                .bind("form", form)
                .bind("at", stamp.at())
                .bind("person", stamp.by().person())
                .bind("device", stamp.by().device())
                .bind("id", id)
                .bind("expected", expectedRevision)
                .execute();
        return written == 1
                ? new Kept.Saved(expectedRevision + 1)
                : find(handle, id).<Kept>map(Kept.Conflict::new).orElseGet(Kept.Gone::new);
    }

    static int discard(Handle handle, String id) {
        return handle.createUpdate("DELETE FROM draft WHERE id = :id")
                .bind("id", id)
                .execute();
    }

    /** Lets go of a draft that was just saved, unless another window has kept more in it or saved it first. */
    static Outcome<Boolean> settle(Handle handle, DraftAt draft) {
        int gone = handle.createUpdate("DELETE FROM draft WHERE id = :id AND revision = :revision")
                .bind("id", draft.id())
                .bind("revision", draft.revision())
                .execute();
        return gone == 1
                ? Outcome.ok(true)
                : Outcome.refused(
                        "another window has changed or saved what you are typing",
                        "look at what it has, then save from there");
    }

    private static Draft draft(ResultSet row) throws SQLException {
        Optional<String> device = Optional.ofNullable(row.getString("device_id"));
        return new Draft(
                row.getString("id"),
                Optional.ofNullable(row.getString("recipe_id")),
                row.getInt("based_on"),
                row.getString("form_json"),
                row.getInt("revision"),
                Instant.ofEpochMilli(row.getLong("changed_epoch_ms")),
                Optional.ofNullable(row.getString("person_id")).map(person -> new Author(person, device)));
    }
}
